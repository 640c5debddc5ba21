import { expect, test } from 'vitest';
import { demoPlan, pointInRing, shadowEdge, sunAtMs, instantOf } from '../../../../engine/index.ts';
import type { Plan } from '../../../../engine/index.ts';

const DEMO = demoPlan('courtyard');
/** North up, and one thin wall of 2 m from west to east. */
const PLAN: Plan = {
  ...DEMO,
  site: { ...DEMO.site, upBearing: 0 },
  features: [
    {
      kind: 'wall',
      id: 'wall',
      path: [
        [2, 3],
        [8, 3],
      ],
      height: 2,
      thickness: 0.2,
    },
  ],
};

test('at the sun’s highest a wall’s shadow ends its height over the tangent of the sun behind it', () => {
  const when = '2026-06-21T14:26';
  const whenMs = instantOf(when, PLAN.site.timeZone);
  const rings = shadowEdge(PLAN, 'wall', when);
  if (whenMs === null || !rings.ok) throw new Error('No shadow.');
  const { azimuth, altitude } = sunAtMs(whenMs, PLAN.site);
  const length = (2 / Math.tan((altitude * Math.PI) / 180)) * Math.cos(((azimuth - 180) * Math.PI) / 180);
  const inside = (y: number): boolean => rings.value.some((ring) => pointInRing([5, y], ring));
  expect(inside(3.1 + length - 0.02)).toBe(true);
  expect(inside(3.1 + length + 0.02)).toBe(false);
});

test('at night nothing throws a shadow, and a mark without a time is a problem in words', () => {
  expect(shadowEdge(PLAN, 'wall', '2026-06-21T02:00')).toEqual({ ok: true, value: [] });
  expect(shadowEdge(PLAN, 'wall', '')).toMatchObject({ ok: false });
});
