import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shadowMarks } from '../../../../engine/advice/marks/shadow-marks.ts';
import type { ShadowMark } from '../../../../engine/advice/marks/types.ts';
import { upBearingOf } from '../../../../engine/plan/defaults.ts';
import type { Feature, How, Plan, PlanPoint, Wall } from '../../../../engine/plan/types.ts';
import { instantOf } from '../../../../engine/sun/days/zone.ts';
import { sunAtMs } from '../../../../engine/survey/place/sun-at.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../../load/yard-plan.ts';

const WALL: Wall = {
  id: 'wall',
  kind: 'wall',
  name: 'Long wall',
  path: [
    [-20, 4],
    [30, 4],
  ],
  height: 1.9,
  thickness: 0.2,
};
/** Along the plan's y. */
const FENCE: Wall = {
  id: 'fence',
  kind: 'wall',
  name: 'Fence',
  path: [
    [14, -30],
    [14, 30],
  ],
  height: 1.4,
  thickness: 0.1,
};
const MORNING = '2026-10-12T09:20';
const NOON = '2026-10-12T12:10';
const AFTERNOON = '2026-10-12T15:40';

function yard(change: { up?: number; wall?: number; fence?: number; how?: How; northPm?: number } = {}): Plan {
  const { up = 0, wall = 1.9, fence = 1.4, how, northPm } = change;
  const plan = yardPlan([
    { ...WALL, height: wall, how },
    { ...FENCE, height: fence, how },
  ] as Feature[]);
  return {
    ...plan,
    site: {
      ...plan.site,
      upBearing: up,
      ...(northPm === undefined ? {} : { how: { upBearing: { by: 'compass', pm: northPm } } }),
    },
  };
}

/**
 * Where the far edge of a wall's shadow crosses a line square to the wall, worked out on paper: half its thickness, and
 * its height over the sun's tangent.
 */
function farEdge(plan: Plan, id: 'wall' | 'fence', along: number, when: string, minutes = 0): PlanPoint {
  const feature = plan.features.find((each) => each.id === id) as Wall;
  const { azimuth, altitude } = sunAtMs(instantOf(when, plan.site.timeZone)! + minutes * 60_000, plan.site);
  const bearing = ((azimuth - upBearingOf(plan)) * Math.PI) / 180;
  const reach = feature.height / Math.tan((altitude * Math.PI) / 180);
  if (id === 'wall') return [along, 4 - Math.sign(Math.cos(bearing)) * 0.1 - reach * Math.cos(bearing)];
  return [14 - Math.sign(Math.sin(bearing)) * 0.05 - reach * Math.sin(bearing), along];
}

const markOf = (plan: Plan, feature: 'wall' | 'fence', along: number, when: string, minutes = 0): ShadowMark => ({
  feature,
  at: farEdge(plan, feature, along, when, minutes),
  when,
});

describe('one marked edge', () => {
  test('on the predicted edge the residual is nothing', () => {
    const { marks, together } = valueOf(shadowMarks(yard(), [markOf(yard(), 'wall', 5, NOON)]));
    expect(Math.abs(marks[0].residual ?? NaN)).toBeLessThan(0.1);
    expect(marks[0].sentence).toBe('The plan has this edge right, to 0.01 m.');
    expect(together).toBeNull();
  });

  test('the residual is how far out the mark lies, whatever the side', () => {
    fc.assert(
      fc.property(fc.integer({ min: -60, max: 90 }), (offCm) => {
        const { at, ...mark } = markOf(yard(), 'wall', 5, NOON);
        const [check] = valueOf(shadowMarks(yard(), [{ ...mark, at: [at[0], at[1] + offCm / 100] }])).marks;
        expect(check.residual).toBeCloseTo(offCm, 1);
      }),
      { seed: 11, numRuns: 12 },
    );
  });

  test('a wall drawn 0.35 m too low is cured by 0.35 m', () => {
    const [{ cures, sentence }] = valueOf(
      shadowMarks(yard({ how: { height: { by: 'guess', pm: 0.4 } } }), [markOf(yard({ wall: 2.25 }), 'wall', 5, NOON)]),
    ).marks;
    expect(cures[0]).toMatchObject({ what: 'height', feature: 'wall' });
    expect(cures[0].by).toBeCloseTo(0.35, 2);
    expect(cures[0].inPm).toBeCloseTo(0.35 / 0.4, 2);
    expect(cures[0].to).toBeCloseTo(1.9 + 0.35, 2);
    expect(sentence).toContain('the long wall 0.35 m higher would cure it');
  });

  test('the likelier cure is the one that is fewer of its own ± off', () => {
    const mark = markOf(yard({ up: 7 }), 'fence', 3, MORNING);
    const [rough] = valueOf(shadowMarks(yard({ northPm: 8 }), [mark])).marks;
    expect(rough.cures[0].what).toBe('north');
    expect(rough.cures[0].by).toBeCloseTo(7, 1);
    const [sure] = valueOf(
      shadowMarks(yard({ northPm: 0.5, how: { height: { by: 'guess', pm: 0.6 } } }), [mark]),
    ).marks;
    expect(sure.cures[0].what).toBe('height');
  });

  test('a cure by far more than a number may be off is doubted aloud: a taped wall is not 35 cm higher', () => {
    const [{ cures, sentence }] = valueOf(shadowMarks(yard(), [markOf(yard({ wall: 2.25 }), 'wall', 5, NOON)])).marks;
    expect(cures.every(({ inPm }) => inPm > 5)).toBe(true);
    expect(sentence).toContain('That is far more than it may be off');
  });

  test('the predicted edge is shown where it is nearest, and nothing lies between it and the mark', () => {
    const mark = markOf(yard(), 'wall', 5, NOON);
    const [{ nearest }] = valueOf(shadowMarks(yard(), [{ ...mark, at: [mark.at[0], mark.at[1] - 0.4] }])).marks;
    expect(nearest?.[0]).toBeCloseTo(mark.at[0], 6);
    expect(nearest?.[1]).toBeCloseTo(mark.at[1], 6);
  });

  test('a mark with no edge in reach asks for the clock', () => {
    const [{ residual, sentence }] = valueOf(shadowMarks(yard(), [{ feature: 'wall', at: [5, -9], when: NOON }])).marks;
    expect(residual).toBeNull();
    expect(sentence).toContain('was the clock right?');
  });

  test('what cannot be used is said, by number', () => {
    const words = (mark: Partial<ShadowMark>) => {
      const outcome = shadowMarks(yard(), [{ feature: 'wall', at: [5, 5], when: NOON, ...mark }]);
      return outcome.ok ? '' : outcome.problems[0].message;
    };
    expect(words({ feature: 'nobody' })).toContain('Mark 1: no wall, hedge');
    expect(words({ when: 'noon' })).toContain('is no date and time');
    expect(words({ when: '2026-10-12T23:00' })).toContain('the sun was down');
  });
});

describe('three marks and more', () => {
  const how: How = { height: { by: 'guess', pm: 0.4 } };
  const seen = (truth: Plan, minutes = 0) => [
    markOf(truth, 'wall', 3, MORNING, minutes),
    markOf(truth, 'fence', 2, MORNING, minutes),
    markOf(truth, 'wall', 6, NOON, minutes),
    markOf(truth, 'fence', 1, AFTERNOON, minutes),
  ];

  test('north and two heights are found together by least squares', () => {
    const { together } = valueOf(
      shadowMarks(yard({ how, northPm: 6 }), seen(yard({ up: 4.2, wall: 2.2, fence: 1.25 }))),
    );
    expect(together?.contradict).toBe(false);
    const [north, wall, fence] = together?.changes ?? [];
    expect(north.by).toBeCloseTo(4.2, 1);
    expect(wall.by).toBeCloseTo(0.3, 2);
    expect(fence.by).toBeCloseTo(-0.15, 2);
    for (const left of together?.left ?? []) expect(Math.abs(left)).toBeLessThan(1);
    expect(together?.sentence).toContain('the plan’s up turned by 4.2° clockwise');
  });

  test('marks that agree with the plan change nothing', () => {
    const { together } = valueOf(shadowMarks(yard({ how, northPm: 6 }), seen(yard())));
    expect(together?.sentence).toBe('All the marks agree with the plan, within 0.00 m.');
  });

  test('marks that no plan can meet contradict each other, and the clock is asked for', () => {
    const marks = seen(yard());
    const apart = marks.map((mark, k): ShadowMark =>
      k === 2
        ? { ...mark, at: [mark.at[0], mark.at[1] + 2.4] }
        : k === 0
          ? { ...mark, at: [mark.at[0], mark.at[1] - 1.2] }
          : mark,
    );
    const { together } = valueOf(shadowMarks(yard({ how, northPm: 6 }), apart));
    expect(together?.contradict).toBe(true);
    expect(together?.sentence).toContain('was the clock right?');
  });

  test('marks noted by a clock an hour fast contradict each other, and the hour is named', () => {
    const { together } = valueOf(shadowMarks(yard({ how, northPm: 6 }), seen(yard(), -60)));
    expect(together).toMatchObject({ contradict: true, clock: -60 });
    expect(together?.sentence).toContain('With it an hour earlier they agree.');
  });
});
