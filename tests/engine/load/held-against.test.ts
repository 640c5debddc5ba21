import { expect, test } from 'vitest';
import { plantLoadsOf } from '../../../engine/load/load-of.ts';
import { harmOf } from '../../../engine/load/verdict/harm-of.ts';
import { demoPlan } from '../../../engine/plan/demos/index.ts';
import type { Plan } from '../../../engine/plan/types.ts';
import { withOptions } from '../../../engine/plan/yards/options.ts';
import { mustBeOk, valueOf } from '../../parts/outcome.ts';

/** Every number in it, by its place, beside all that is no number. */
function partsOf(value: unknown): { numbers: number[]; rest: string } {
  const numbers: number[] = [];
  const rest = JSON.stringify(value, (_, part: unknown) =>
    typeof part === 'number' ? (numbers.push(part), '#') : part,
  );
  return { numbers, rest };
}

const told = (plan: Plan) => partsOf([valueOf(plantLoadsOf(plan)), valueOf(harmOf(plan))]);

test('a yard looked at after another one like it is told as if it had come alone', () => {
  const drawn = demoPlan('courtyard');
  const plan: Plan = { ...drawn, season: { ...drawn.season, from: '07-10', to: '07-12', stepMinutes: 30 } };
  const today = told(plan);
  const wall = plan.features.find(({ kind }) => kind === 'wall');
  const yards = [
    valueOfPlan(withOptions(plan, [plan.options?.[0].id ?? ''])),
    { ...plan, features: plan.features.filter((feature) => feature !== wall) },
    { ...plan, climate: { ...plan.climate, heatwaveHigh: plan.climate.heatwaveHigh + 2 } },
  ];
  for (const yard of yards) {
    const [after, alone] = [told(yard), told(structuredClone(yard))];
    expect(after.rest).toEqual(alone.rest);
    after.numbers.forEach((value, k) => expect(Math.abs(value - alone.numbers[k])).toBeLessThan(1e-9));
    expect(after.numbers).not.toEqual(today.numbers);
  }
});

function valueOfPlan(changed: ReturnType<typeof withOptions>): Plan {
  mustBeOk(changed);
  return changed.plan;
}
