import type { Outcome } from '../../load/types.ts';
import { weighedHarm } from '../../load/verdict/harm-of.ts';
import type { Plan } from '../../plan/types.ts';
import { doubtInputs } from '../doubt/inputs.ts';
import type { RayYard } from '../doubt/rays.ts';

/**
 * What a yard's plants suffer, Σ worth × harm, as it is and with each doubtful input off. Plants that get the very same
 * light in all yards are left as they are where an input is off: of the differences between yards they are no part.
 * [K·h/day]
 */
export interface HarmInDoubt {
  readonly harm: number;
  /** By input key: harm under each of its shifts. */
  readonly shifted: ReadonlyMap<string, readonly number[]>;
}

/** A yard that is held against others, and what its plants suffer by rays. */
export interface DoubtedYard {
  readonly plan: Plan;
  readonly rays: RayYard;
}

/** @returns one entry a yard, or why one cannot be judged with an input off */
export function harmsInDoubt(yards: readonly DoubtedYard[]): Outcome<HarmInDoubt[]> {
  const alike = new Set(
    [...yards[0].rays.light]
      .filter(([id, light]) => yards.every(({ rays }) => rays.light.get(id) === light))
      .map(([id]) => id),
  );
  const standsInAll = (id: string | null) => {
    const [first, ...others] = yards.map(({ plan }) => plan.features.find((feature) => feature.id === id));
    return others.every((feature) => feature === first);
  };
  const value: HarmInDoubt[] = [];
  for (const { plan, rays } of yards) {
    const shifted = new Map<string, number[]>();
    for (const { key, feature, shifts } of doubtInputs(plan)) {
      const among = standsInAll(feature) ? alike : undefined;
      const sums: number[] = [];
      for (const shift of shifts) {
        const harms = rays.under(shift, feature, among);
        if (!harms.ok) return harms;
        sums.push(weighedHarm(harms.value));
      }
      shifted.set(key, sums);
    }
    value.push({ harm: weighedHarm(rays.base), shifted });
  }
  return { ok: true, value };
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
