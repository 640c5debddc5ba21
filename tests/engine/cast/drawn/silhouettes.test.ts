import { expect, test } from 'vitest';
import { silhouettesOf } from '../../../../engine/cast/drawn/silhouettes.ts';
import type { SkyPoint } from '../../../../engine/cast/drawn/silhouettes.ts';
import { buildScene, castRay, demoPlan, stateOf, upBearingOf } from '../../../../engine/index.ts';
import type { Plan, SpacePoint } from '../../../../engine/index.ts';
import { domePoint } from '../../../../web/charts/dome.ts';

/** Whether a direction lies in outlines drawn on the dome, the even-odd rule. */
function inside(loops: readonly (readonly SkyPoint[])[], direction: SkyPoint): boolean {
  const [x, y] = domePoint(direction, 'map');
  let odd = false;
  for (const loop of loops) {
    const ring = loop.map((point) => domePoint(point, 'map'));
    ring.forEach(([ax, ay], k) => {
      const [bx, by] = ring[(k + 1) % ring.length];
      if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) odd = !odd;
    });
  }
  return odd;
}

/** Directions at which what is drawn and what the engine finds in the way differ, by feature. */
function disagreements(plan: Plan, eye: SpacePoint): { readonly wrong: number; readonly asked: number } {
  const scene = buildScene(plan);
  const silhouettes = silhouettesOf(scene.states[stateOf(scene, '07-21')], scene.upBearing, eye);
  let wrong = 0;
  let asked = 0;
  for (let azimuth = 1.3; azimuth < 360; azimuth += 6.7) {
    for (let altitude = 0.9; altitude < 90; altitude += 3.1) {
      const hit = new Set(castRay(scene, eye, azimuth, altitude, '07-21').blockers.map(({ id }) => id));
      for (const { id, parts } of silhouettes) {
        asked += 1;
        if (parts.some((loops) => inside(loops, [azimuth, altitude])) !== hit.has(id)) wrong += 1;
      }
      for (const id of hit) if (id !== 'skyline' && !silhouettes.some((one) => one.id === id)) wrong += 1;
    }
  }
  return { wrong, asked };
}

for (const name of ['courtyard', 'lane'] as const) {
  test(`what is drawn of the sky over the ${name} is what the engine finds in the way`, () => {
    for (const eye of [
      [2.3, 3.1, 0.02],
      [4.7, 1.9, 1.2],
      [1.1, 5.2, 2.6],
    ] as const) {
      const { wrong, asked } = disagreements(demoPlan(name), eye);
      expect(asked).toBeGreaterThan(3000);
      expect(wrong / asked).toBeLessThan(0.001);
    }
  });
}

test('a roof over the eye covers the zenith, and a plan turned by 40° turns its silhouettes by 40°', () => {
  const roof = {
    id: 'roof',
    kind: 'canopy',
    center: [3, 4],
    length: 2,
    width: 2.6,
    height: 2.2,
    density: 0.6,
  } as const;
  const plan: Plan = { ...demoPlan('courtyard'), features: [roof] };
  expect(disagreements(plan, [3.2, 4.1, 0.5]).wrong).toBe(0);
  const turned: Plan = { ...plan, site: { ...plan.site, upBearing: upBearingOf(plan) + 40 } };
  expect(disagreements(turned, [0.7, 4.9, 0.5]).wrong).toBe(0);
});
