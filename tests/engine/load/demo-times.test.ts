import { describe, expect, it } from 'vitest';
import { createPointCaster } from '../../../engine/cast/points/point-caster.ts';
import { passesOf } from '../../../engine/load/light/passes-of.ts';
import type { PlantSide } from '../../../engine/load/types.ts';
import { plantPoints } from '../../../engine/load/verdict/plant-points.ts';
import { demoPlan } from '../../../engine/plan/demos/index.ts';
import type { SpacePoint } from '../../../engine/plan/geometry/vectors.ts';
import type { Plan } from '../../../engine/plan/types.ts';
import { withOptions } from '../../../engine/plan/yards/options.ts';
import { buildScene } from '../../../engine/scene/build.ts';
import { clockOf } from '../../../engine/sun/days/zone.ts';
import { samplesOf } from '../../../engine/sun/samples.ts';

/**
 * Clock times at which the sun reaches and leaves places of the demo yards, worked out by a calculation apart from this
 * code when the yards were drawn (its sun good to 1 to 2 minutes, eaves left out). More than three minutes apart means
 * one of the two is wrong.
 */
const WITHIN_MINUTES = 3;

function yard(name: 'courtyard' | 'lane', ...options: string[]): Plan {
  const plan = withOptions(demoPlan(name), options);
  if (!plan.ok) throw new Error('No such option.');
  const features = plan.plan.features.map((feature) =>
    feature.kind === 'building' ? { ...feature, eaves: 0 } : feature,
  );
  return { ...plan.plan, features, season: { ...plan.plan.season, stepMinutes: 1 } };
}

function at(plan: Plan, id: string, side: PlantSide): SpacePoint {
  const feature = plan.features.find((each) => each.id === id);
  const found = feature?.kind === 'plant' && plantPoints(plan, feature).points.find((each) => each.side === side);
  if (!found) throw new Error(`No side ${side} of ${id}.`);
  return found.point;
}

/**
 * Minutes since midnight at which the share of the beam comes to lie in or leaves a range: one pair a stretch of five
 * minutes or more.
 */
function stretches(plan: Plan, point: SpacePoint, date: string, least: number, most: number): [number, number][] {
  const sampled = samplesOf(plan, { kind: 'day', date });
  if (!sampled.ok) throw new Error('No samples.');
  const { samples } = sampled;
  const shares = createPointCaster(buildScene(plan), passesOf(buildScene(plan), samples)).sharesAt(point);
  const minute = (k: number) => {
    const [h, m] = clockOf(samples.when[k] - samples.hours[k] * 1_800_000, plan.site.timeZone)
      .split(':')
      .map(Number);
    return 60 * h + m;
  };
  const found: [number, number][] = [];
  for (let k = 0; k < samples.count; k++) {
    if (shares[k] < least || shares[k] > most) continue;
    const first = k;
    while (k + 1 < samples.count && shares[k + 1] >= least && shares[k + 1] <= most) k++;
    if (k - first >= 5) found.push([minute(first), minute(k) + 1]);
  }
  return found;
}

const SUN = [0.999, 1] as const;
const minutes = (clock: string) => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3));
const close = (minute: number, clock: string) =>
  expect(
    Math.abs(minute - minutes(clock)),
    `${Math.floor(minute / 60)}:${minute % 60} against ${clock}`,
  ).toBeLessThanOrEqual(WITHIN_MINUTES);

describe('the well courtyard on 21 July', () => {
  it('the lemon’s top has the sun from 13:28 to 20:38 and nothing between', () => {
    const plan = yard('courtyard');
    const [[from, to], ...more] = stretches(plan, at(plan, 'lemon', 'top'), '07-21', ...SUN);
    expect(more).toEqual([]);
    close(from, '13:28');
    close(to, '20:38');
  });

  it('the west wall takes the sun off the hydrangea at 16:22', () => {
    const plan = yard('courtyard');
    close(stretches(plan, at(plan, 'hydrangea', 'top'), '07-21', ...SUN)[0][1], '16:22');
  });

  it('the geraniums burn from 11:38 to 18:30', () => {
    const [[from, to]] = stretches(yard('courtyard'), [3.5, 7.95, 0.9], '07-21', ...SUN);
    close(from, '11:38');
    close(to, '18:30');
  });

  it(
    'under option A the top is shaded to 18:39, but the west side from 16:38 and the south-west from 17:09 ' +
      'have the sun',
    () => {
      const plan = yard('courtyard', 'A');
      close(stretches(plan, at(plan, 'lemon', 'top'), '07-21', ...SUN)[0][0], '18:39');
      close(stretches(plan, at(plan, 'lemon', 270), '07-21', ...SUN)[0][0], '16:38');
      close(stretches(plan, at(plan, 'lemon', 225), '07-21', ...SUN)[0][0], '17:09');
    },
  );

  it('in option C the lemon has the sun from 10:02 to 16:40', () => {
    const plan = yard('courtyard', 'C');
    const [[from, to]] = stretches(plan, at(plan, 'lemon', 'top'), '07-21', ...SUN);
    close(from, '10:02');
    close(to, '16:40');
  });
});

describe('the lane yard on 21 January', () => {
  it('the gum’s thin shade lies on the apricot from 7:58 to 9:09', () => {
    const plan = yard('lane');
    const [[from, to]] = stretches(plan, at(plan, 'apricot', 'top'), '01-21', 0.01, 0.998);
    close(from, '07:58');
    close(to, '09:09');
  });

  it('the roof of option A lets the sun on the apricot’s top at 19:39', () => {
    const plan = yard('lane', 'A');
    close(stretches(plan, at(plan, 'apricot', 'top'), '01-21', ...SUN).at(-1)?.[0] ?? 0, '19:39');
  });

  it('the raspberries lie in the gum’s shade until 13:09, then burn until 20:01', () => {
    const [[from, to]] = stretches(yard('lane'), [15.25, 10, 0.9], '01-21', ...SUN);
    close(from, '13:09');
    close(to, '20:01');
  });

  it('east of the shed the blueberry has shade from 16:37, and thin shade before 8:53', () => {
    const plan = yard('lane', 'C');
    const [[from, to]] = stretches(plan, at(plan, 'blueberry', 'top'), '01-21', ...SUN);
    close(from, '08:53');
    close(to, '16:37');
  });
});
