import type { SharedLeaves } from '../../load/leaf/heat-day.ts';
import type { Outcome } from '../../load/types.ts';
import type { Plan } from '../../plan/types.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import { doubtInputs } from '../doubt/inputs.ts';
import { createRayYard } from '../doubt/rays.ts';
import { weighedHarm } from '../doubt/yards.ts';

/** What a yard's plants suffer, Σ worth × harm, as it is and with each doubtful input off. [K·h/day] */
export interface HarmInDoubt {
  readonly harm: number;
  /** By input key: harm under each of its shifts. */
  readonly shifted: ReadonlyMap<string, readonly number[]>;
}

/** @param shareLeaves of all the yards that are compared */
export function harmInDoubt(plan: Plan, shareLeaves: SharedLeaves, weather?: Weather): Outcome<HarmInDoubt> {
  const yard = createRayYard(plan, weather, shareLeaves);
  if (!yard.ok) return yard;
  const shifted = new Map<string, number[]>();
  for (const { key, feature, shifts } of doubtInputs(plan)) {
    const sums: number[] = [];
    for (const shift of shifts) {
      const harms = yard.value.under(shift, feature);
      if (!harms.ok) return harms;
      sums.push(weighedHarm(harms.value));
    }
    shifted.set(key, sums);
  }
  return { ok: true, value: { harm: weighedHarm(yard.value.base), shifted } };
}

/**
 * How far two yards differ, and by how much that difference may be off: the root of the inputs' squares, each at its
 * worse shift.
 */
export function differenceOf(a: HarmInDoubt, b: HarmInDoubt): { readonly difference: number; readonly pm: number } {
  const difference = a.harm - b.harm;
  let squares = 0;
  for (const key of new Set([...a.shifted.keys(), ...b.shifted.keys()])) {
    const [inA, inB] = [a.shifted.get(key), b.shifted.get(key)];
    const shifts = Math.max(inA?.length ?? 0, inB?.length ?? 0);
    let worst = 0;
    for (let s = 0; s < shifts; s++)
      worst = Math.max(worst, Math.abs((inA?.[s] ?? a.harm) - (inB?.[s] ?? b.harm) - difference));
    squares += worst ** 2;
  }
  return { difference, pm: Math.sqrt(squares) };
}
