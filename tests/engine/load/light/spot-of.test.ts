import { describe, expect, it } from 'vitest';
import { spotOf } from '../../../../engine/load/light/spot-of.ts';
import { type Nine, QUANTITIES, type SpotDayResult, type SpotSeasonResult } from '../../../../engine/load/types.ts';
import type { Canopy, Feature, Plan, Wall } from '../../../../engine/plan/types.ts';
import { samplesOf } from '../../../../engine/sun/samples.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../yard-plan.ts';

const RAD = Math.PI / 180;
const season = (plan: Plan, at: [number, number] = [6, 4], height = 0.5): SpotSeasonResult => {
  const spot = valueOf(spotOf(plan, at, { height }));
  if (spot.date !== null) throw new Error('Not a season.');
  return spot;
};
const day = (plan: Plan, at: [number, number] = [6, 4], height = 0.5, date = '06-21'): SpotDayResult => {
  const spot = valueOf(spotOf(plan, at, { height, period: { kind: 'day', date } }));
  if (spot.date === null) throw new Error('Not a day.');
  return spot;
};
/** A cloth so wide that every ray of the sky meets it. */
const hugeRoof = (density: number, more: Partial<Canopy> = {}): Canopy => ({
  id: 'sky-cloth',
  kind: 'canopy',
  center: [6, 4],
  length: 6000,
  width: 6000,
  height: 2.3,
  density,
  ...more,
});
/** A wall that runs north and south for kilometres, its east face 2 m west of x = 6. */
const longWall = (height: number): Wall => ({
  id: 'west',
  kind: 'wall',
  path: [
    [3.9, -3000],
    [3.9, 3000],
  ],
  height,
  thickness: 0.2,
});

/** The nine quantities but the grade. */
const SUMMED = QUANTITIES.filter((quantity) => quantity !== 'grade');

describe('the nine quantities of a spot', () => {
  it('in the open: every hour of sun, the whole sky', () => {
    const open = season(yardPlan()).season;
    expect(open.skyView).toBeCloseTo(1, 12);
    expect(open.morningHours + open.afternoonHours).toBeCloseTo(open.sunHours, 12);
    expect(open.sunHours).toBeGreaterThan(13);
    expect(open.beamDose).toBeGreaterThan(35);
    expect(open.grade).toBe(5);
  });

  it('under one cloth over the whole sky: each beam’s share at its slant, of all but the grade', () => {
    const open = season(yardPlan()).season;
    const under = season(yardPlan([hugeRoof(0.65)])).season;
    const plan = yardPlan();
    const sampled = samplesOf(plan, { kind: 'season' });
    if (!sampled.ok) throw new Error('a sound season');
    const { samples } = sampled;
    const left = (k: number) => 0.35 ** (1 / Math.max(Math.sin((samples.altitude[k] * Math.PI) / 180), 0.26));
    const sum = (share: (k: number) => number) =>
      samples.hours.reduce((dose, hours, k) => dose + share(k) * samples.beam[k] * samples.sunshine[k] * hours, 0);
    expect(under.beamDose / open.beamDose).toBeCloseTo(sum(left) / sum(() => 1), 9);
    for (const name of SUMMED) {
      expect(under[name], name).toBeLessThan(0.35 * open[name]);
      expect(under[name], name).toBeGreaterThan(0.18 * open[name]);
    }
  });

  it('inside a building: nothing at all, and it says where', () => {
    const house: Feature = {
      id: 'house',
      kind: 'building',
      outline: [
        [4, 3],
        [8, 3],
        [8, 5],
        [4, 5],
      ],
      height: 3,
    };
    const spot = season(yardPlan([house]));
    expect(spot.inside).toBe('house');
    const nothing: Nine = {
      sunHours: 0,
      morningHours: 0,
      afternoonHours: 0,
      hotHours: 0,
      beamDose: 0,
      hotLoad: 0,
      dailyLight: 0,
      skyView: 0,
      grade: 1,
    };
    expect(spot.season).toEqual(nothing);
  });

  it(
    'east of a wall without end: the sun goes where tan(altitude) < rise/distance · |sin(bearing)|, in the ' +
      'afternoon only',
    () => {
      const plan = yardPlan([longWall(3.5)]);
      const sampled = samplesOf(plan, { kind: 'day', date: '06-21' });
      if (!sampled.ok) throw new Error('No samples.');
      const { samples } = sampled;
      let morning = 0;
      let afternoon = 0;
      let dose = 0;
      for (let k = 0; k < samples.count; k++) {
        const west = -Math.sin(samples.azimuth[k] * RAD);
        if (west > 0 && Math.tan(samples.altitude[k] * RAD) < (3 / 2) * west) continue;
        dose += samples.beam[k] * samples.hours[k] * 0.0036;
        if (samples.beam[k] <= 120) continue;
        if (west > 0) afternoon += samples.hours[k];
        else morning += samples.hours[k];
      }
      const spot = day(plan).day;
      expect(spot.morningHours).toBeCloseTo(morning, 9);
      expect(spot.afternoonHours).toBeCloseTo(afternoon, 9);
      expect(spot.beamDose).toBeCloseTo(dose, 9);
      expect(afternoon).toBeLessThan(morning - 2);
    },
  );

  it('east of a wall without end whose top stands at 45°: (1 + cos 45°)/2 of the sky, within what 577 rays can tell', () => {
    expect(Math.abs(day(yardPlan([longWall(2.5)])).day.skyView - (1 + Math.SQRT1_2) / 2)).toBeLessThan(0.01);
  });

  it('hot hours without spread: the sunny hours from hotAir on', () => {
    const plan = yardPlan([], {
      climate: { ...yardPlan().climate, hotAir: 37, months: [{ month: 6, high: 41, low: 22, spread: 0 }] },
    });
    const spot = day(plan);
    const hot = spot.steps
      .filter(({ air, beam }) => air >= 37 && beam > 120)
      .reduce((sum, { hours }) => sum + hours, 0);
    expect(spot.day.hotHours).toBeCloseTo(hot, 9);
    expect(hot).toBeGreaterThan(3);
  });

  it('the sky view of a season is the mean day by day: a cloth that hangs three days of five', () => {
    const plan = yardPlan([hugeRoof(0.5, { up: { from: '06-22', to: '08-31' } })]);
    const { season: mean, days } = season(plan);
    const covered = season(yardPlan([hugeRoof(0.5)])).season.skyView;
    expect(covered).toBeLessThan(0.5);
    expect(mean.skyView).toBeCloseTo((2 * 1 + 3 * covered) / 5, 12);
    expect(days.map(({ skyView }) => skyView)).toEqual(
      [1, 1, covered, covered, covered].map((view) => expect.closeTo(view, 12)),
    );
  });

  it('the season is the mean of its days', () => {
    const plan = yardPlan([
      longWall(2.2),
      { id: 't', kind: 'tree', at: [7, 6], height: 4, crownWidth: 3, crownBase: 1, openness: 0.2 },
    ]);
    const { season: mean, days } = season(plan);
    expect(days.map(({ date }) => date)).toEqual([
      '2026-06-20',
      '2026-06-21',
      '2026-06-22',
      '2026-06-23',
      '2026-06-24',
    ]);
    for (const name of SUMMED) {
      expect(mean[name], name).toBeCloseTo(days.reduce((sum, each) => sum + each[name], 0) / 5, 9);
    }
    expect(day(plan).day.dailyLight).toBeCloseTo(days[1].dailyLight, 9);
  });
});

describe('the steps of a day', () => {
  it('are every sample, also with nothing left, with local time and offset', () => {
    const spot = day(yardPlan([longWall(3.5)]));
    expect(spot.steps.length).toBeGreaterThan(80);
    expect(spot.steps[0].when).toMatch(/^2026-06-21T05:\d\d:00-07:00$/);
    expect(spot.steps.at(-1)?.share).toBe(0);
    expect(spot.steps.at(-1)?.blockers).toEqual([{ id: 'west', passes: 0 }]);
  });

  it('the share is the product of what each blocker alone lets pass', () => {
    const plan = yardPlan([
      hugeRoof(0.3),
      {
        id: 'h',
        kind: 'hedge',
        path: [
          [5, -40],
          [5, 40],
        ],
        height: 4,
        thickness: 0.6,
        openness: 0.2,
      },
    ]);
    const both = day(plan).steps.filter(({ blockers }) => blockers.length === 2);
    expect(both.length).toBeGreaterThan(5);
    for (const { share, blockers } of both)
      expect(share).toBeCloseTo(
        blockers.reduce((product, { passes }) => product * passes, 1),
        12,
      );
  });

  it('the heatwave day is the 21st of the hottest month at its heatwave high', () => {
    const spot = valueOf(spotOf(yardPlan(), [6, 4], { period: { kind: 'heatwave' } }));
    if (spot.date === null) throw new Error('Not a day.');
    expect(spot.date).toBe('2026-06-21');
    expect(Math.max(...spot.steps.map(({ air }) => air))).toBeCloseTo(46, 1);
  });

  it('a day whose month has no climate is refused by a sentence', () => {
    const outcome = spotOf(yardPlan(), [6, 4], { period: { kind: 'day', date: '01-15' } });
    expect(outcome.ok).toBe(false);
  });
});
