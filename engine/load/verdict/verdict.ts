import type { PlantRow } from '../../plan/types.ts';
import { byGravity, type HeatVerdict } from '../leaf/judge.ts';
import type { Scorch } from '../leaf/scorch.ts';
import type { Verdict } from '../types.ts';

/** Why a plant stands one step milder than its leaf says; `null`: it does not. */
export type Milder = 'no shade needed' | 'fine once established' | null;

export function milderBy(row: PlantRow, established: boolean): Milder {
  if (row.afternoonShade === 'no') return 'no shade needed';
  return row.afternoonShade === 'young' && established ? 'fine once established' : null;
}

/**
 * The verdict on a plant. A sun that burns even a watered leaf outranks want of light; want of light outranks thirst,
 * whose cure is water: a shaded leaf is near the air's temperature, and on a heatwave day that alone can be over a
 * tender plant's limit.
 */
export function verdictOf(heat: HeatVerdict, milder: Milder, tooDark: boolean): Verdict {
  if (heat === 'will burn' && milder === null) return 'will burn';
  if (tooDark) return 'too dark';
  if (heat === 'will burn') return 'at risk';
  if (heat === 'at risk') return milder ?? 'at risk';
  return 'fine';
}

/** The same where light takes long to find: it is asked for where want of it can decide. */
export function verdictInLight(heat: HeatVerdict, milder: Milder, isTooDark: () => boolean): Verdict {
  const [bright, dark] = [false, true].map((tooDark) => verdictOf(heat, milder, tooDark));
  return bright !== dark && isTooDark() ? dark : bright;
}

/**
 * Index of the worst point: of those with the gravest verdict the one with the largest dose, then the warmest, then the
 * first.
 */
export function worstOf(scorches: readonly Scorch[]): number {
  let worst = 0;
  for (let k = 1; k < scorches.length; k++) {
    const [a, b] = [scorches[k], scorches[worst]];
    const graver = byGravity(a.inHeat, b.inHeat) || a.dose - b.dose || a.thirsty - b.thirsty;
    if (graver > 0) worst = k;
  }
  return worst;
}
