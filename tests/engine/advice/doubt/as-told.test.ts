import { describe, expect, test } from 'vitest';
import { asTold } from '../../../../engine/advice/doubt/as-told.ts';
import { doubtOf } from '../../../../engine/advice/doubt/doubt.ts';
import type { DoubtInput } from '../../../../engine/advice/doubt/types.ts';
import { plantLoadsOf } from '../../../../engine/load/load-of.ts';
import type { Verdict } from '../../../../engine/load/types.ts';
import type { Feature, Plan, PlanPoint } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../../load/yard-plan.ts';

const judged = (harm: number, verdict: Verdict) => ({ id: 'lemon', worth: 1, harm, verdict });
const INPUT = { key: 'climate' } as DoubtInput;

/** The verdict under a shift, of a plant that is told `told` and roughly is `rough` with a harm of 10. */
function under(told: Verdict, rough: Verdict, harm: number, verdict: Verdict): Verdict {
  const yard = { base: [judged(10, rough)], inputs: [{ input: INPUT, under: [[judged(harm, verdict)]] }] };
  const { base, inputs } = asTold(yard, new Map([['lemon', told]]));
  expect(base[0].verdict).toBe(told);
  return inputs[0].under[0][0].verdict;
}

describe('a verdict in doubt begins with the one that is told', () => {
  test.each([
    // The rough look agrees: what a shift does stands.
    ['will burn', 'will burn', 6, 'at risk', 'at risk'],
    // It is milder than what is told: less harm makes it so, more harm does not.
    ['will burn', 'at risk', 6, 'at risk', 'at risk'],
    ['will burn', 'at risk', 12, 'at risk', 'will burn'],
    ['will burn', 'at risk', 14, 'will burn', 'will burn'],
    ['will burn', 'at risk', 2, 'fine', 'fine'],
    // It is graver: the other way about.
    ['at risk', 'will burn', 12, 'will burn', 'will burn'],
    ['at risk', 'will burn', 6, 'will burn', 'at risk'],
    ['at risk', 'too dark', 6, 'too dark', 'at risk'],
  ] as const)('told %s, roughly %s, harm 10 and then %d, roughly %s: %s', (told, rough, harm, verdict, expected) => {
    expect(under(told, rough, harm, verdict)).toBe(expected);
  });
});

/** A court of white walls about a lemon, hotter and hotter: somewhere the call is close. */
test('in a white court the doubt names the verdict that the load tells, however close the call', () => {
  const path: PlanPoint[] = [
    [0, 6],
    [0, 0],
    [7, 0],
    [7, 6],
  ];
  const court: Feature = { id: 'court', kind: 'wall', path, height: 2.6, thickness: 0.25, colour: 'white' };
  const lemon: Feature = { id: 'lemon', kind: 'plant', at: [5.6, 4.9], height: 1.4, spread: 0.9, plant: 'lemon' };
  const plan: Plan = yardPlan([court, lemon]);
  const told = new Set<Verdict | null>();
  for (const heatwaveHigh of [42, 44, 46, 48]) {
    const hot: Plan = { ...plan, climate: { ...plan.climate, heatwaveHigh } };
    const [{ verdict }] = valueOf(plantLoadsOf(hot));
    expect(valueOf(doubtOf(hot)).plants[0].verdict).toBe(verdict);
    told.add(verdict);
  }
  expect(told.size).toBeGreaterThan(1);
});
