import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { withAsBuilt } from '../../../../engine/frame/layout/as-built.ts';
import { turnOf } from '../../../../engine/plan/defaults.ts';
import { canopyCorners } from '../../../../engine/plan/geometry/cloth-shapes.ts';
import { distance } from '../../../../engine/plan/geometry/shapes.ts';
import type { Canopy, Plan } from '../../../../engine/plan/types.ts';
import { mustBeOk } from '../../../parts/outcome.ts';
import { anyCanopy, built, roof, screen, yardWith } from '../yard.ts';

const SEED = 88;

/** What a tape would read if `real` stood there and the sheet of `planned` were in the hand. */
function readings(planned: Canopy, real: Canopy): Record<string, number> {
  const { settingOut, asBuilt } = built(planned);
  const [a, b] = settingOut.fixed;
  const [frontLeft, backLeft, backRight, frontRight] = canopyCorners(real);
  const ids = [...new Set(asBuilt.map((field) => field.id.split('-')[0]))];
  return Object.fromEntries(
    [backLeft, backRight, frontLeft, frontRight].flatMap(([x, y, z], i) => [
      [`${ids[i]}-height`, z],
      [`${ids[i]}-a`, distance(a.at, [x, y])],
      [`${ids[i]}-b`, distance(b.at, [x, y])],
    ]),
  );
}

function roofOf(plan: Plan): Canopy {
  const found = plan.features.find((feature) => feature.id === 'roof');
  if (found?.kind !== 'canopy') throw new Error('the roof is gone');
  return found;
}

describe('as built', () => {
  test(`what was measured is what the plan then holds (seed ${SEED})`, () => {
    fc.assert(
      fc.property(
        anyCanopy,
        fc.integer({ min: -60, max: 60 }),
        fc.integer({ min: -60, max: 60 }),
        fc.integer({ min: -2, max: 2 }),
        (planned, dx, dy, turn) => {
          const real: Canopy = {
            ...planned,
            center: [planned.center[0] + dx / 1000, planned.center[1] + dy / 1000],
            turn: turnOf(planned) + turn,
            height: planned.height + dy / 1000,
            length: planned.length + 0.031,
            width: planned.width - 0.017,
          };
          const result = withAsBuilt(yardWith([planned]), 'roof', readings(planned, real));
          mustBeOk(result);
          const found = roofOf(result.plan);
          for (const [i, corner] of canopyCorners(found).entries()) {
            const wanted = canopyCorners(real)[i];
            expect(Math.hypot(corner[0] - wanted[0], corner[1] - wanted[1], corner[2] - wanted[2])).toBeLessThan(0.003);
          }
        },
      ),
      { seed: SEED, numRuns: 40 },
    );
  });

  test('heights alone change heights alone', () => {
    const result = withAsBuilt(yardWith([roof]), 'roof', {
      'P1-height': 2.21,
      'P2-height': 2.21,
      'P5-height': 2.31,
      'P6-height': 2.29,
    });
    mustBeOk(result);
    expect(roofOf(result.plan)).toEqual({ ...roof, height: 2.21, rise: 0.09 });
    expect(result.changes).toEqual(['height 2300 mm → 2210 mm', 'rise 0 mm → 90 mm']);
  });

  test('nothing measured changes nothing', () => {
    const plan = yardWith([roof]);
    expect(withAsBuilt(plan, 'roof', {})).toEqual({ ok: true, plan, changes: ['It stands as planned.'] });
  });

  test('a roof of an option is put right in the option', () => {
    const plan = yardWith([], { options: [{ id: 'A', adds: [roof] }] });
    const result = withAsBuilt(
      plan,
      'roof',
      { 'P1-height': 2.2, 'P2-height': 2.2, 'P5-height': 2.2, 'P6-height': 2.2 },
      'A',
    );
    mustBeOk(result);
    expect(result.plan.features).toEqual(plan.features);
    expect(result.plan.options?.[0].adds?.[0]).toMatchObject({ height: 2.2 });
  });

  test('tapes that do not meet, and fields that are not on the form, are told by name', () => {
    const message = (measured: Record<string, number>): string => {
      const result = withAsBuilt(yardWith([roof]), 'roof', measured);
      return result.ok ? '' : result.problems[0].message;
    };
    expect(message({ 'P1-a': 0.4, 'P1-b': 0.3 })).toContain('P1: 0.40 m from A and 0.30 m from B do not meet');
    expect(message({ 'P9-height': 2 })).toContain('"P9-height"');
    expect(message({ 'P1-height': -2 })).toContain('above 0');
  });

  test('a frame out of square is kept as the rectangle that fits best, and said to be so', () => {
    const measured = readings(roof, roof);
    const { settingOut } = built(roof);
    const corner = settingOut.posts[0];
    const [a, b] = settingOut.fixed;
    const moved = [corner.at[0] + 0.2, corner.at[1]] as const;
    const result = withAsBuilt(yardWith([roof]), 'roof', {
      ...measured,
      'P1-a': distance(a.at, moved),
      'P1-b': distance(b.at, moved),
    });
    expect(result.ok && result.changes.join(' ')).toMatch(/off a true rectangle/);
  });

  test('a screen’s posts move to where they were measured', () => {
    const { settingOut, asBuilt } = built(screen);
    const [a, b] = settingOut.fixed;
    const moved = settingOut.posts.map(({ at }) => [at[0] + 0.05, at[1] - 0.02] as const);
    const measured = Object.fromEntries(
      settingOut.posts.flatMap((post, i) => [
        [`${post.id}-a`, distance(a.at, moved[i])],
        [`${post.id}-b`, distance(b.at, moved[i])],
      ]),
    );
    expect(asBuilt.map((field) => field.id)).toEqual(expect.arrayContaining(Object.keys(measured)));
    const result = withAsBuilt(yardWith([screen]), 'screen', measured);
    const found = result.ok ? result.plan.features.find((feature) => feature.id === 'screen') : undefined;
    if (found?.kind !== 'screen') throw new Error('the screen is gone');
    expect(distance(found.path[0], [4.05, 2.98])).toBeLessThan(0.002);
  });

  test('a frame keeps its posts, tube and braces when the tape shows a millimetre more, and says when a bay is too long', () => {
    const planned: Canopy = { ...roof, turn: 0, length: 3.048, width: 3.048, height: 2.4 };
    const grown = (more: number) => {
      const real = { ...planned, length: planned.length + more, width: planned.width + more };
      const result = withAsBuilt(yardWith([planned]), 'roof', readings(planned, real));
      mustBeOk(result);
      return { changes: result.changes.join('; '), feature: roofOf(result.plan) };
    };
    const before = built(planned);
    for (const more of [0.001, 0.009, 0.2]) {
      const { feature, changes } = grown(more);
      const sheet = built(feature);
      expect(feature.length).toBeCloseTo(planned.length + more, 3);
      expect(sheet.settingOut.posts).toHaveLength(4);
      expect(sheet.tube.id).toBe(before.tube.id);
      expect(sheet.fittings).toEqual(before.fittings);
      expect(changes.includes('put a post under its middle')).toBe(more > 0.01);
    }
    // A frame of two bays stays one when it has come out short enough for one.
    const two: Canopy = { ...planned, width: 2, length: 3.051 };
    const short = withAsBuilt(yardWith([two]), 'roof', readings(two, { ...two, length: 3.044 }));
    mustBeOk(short);
    expect(built(roofOf(short.plan)).settingOut.posts).toHaveLength(6);
  });
});
