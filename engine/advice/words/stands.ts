/** How a plant stands after a change that was made for it. */
import type { Verdict } from '../../load/types.ts';

export interface Standing {
  readonly verdict: Verdict | null;
  /** [K·h/day] */
  readonly harm: number | null;
}

/**
 * "the lemon pot from “will burn” to “at risk”"; of a verdict that stays, what is left: "less than half of the heat
 * damage is left for the lemon pot, but on the hottest days the sun still burns".
 */
export function standWords(name: string, before: Standing, after: Standing): string {
  if (before.verdict !== after.verdict) return `${name} from “${before.verdict}” to “${after.verdict}”`;
  const left = leftWords(before, after);
  switch (after.verdict) {
    case 'will burn':
      return `${left} for ${name}, but on the hottest days the sun still burns`;
    case 'at risk':
      return `${left} for ${name}, and on hot days water decides`;
    default:
      return `${name} stays “${after.verdict}”`;
  }
}

const PARTS = [
  [0.05, 'next to no heat damage is left'],
  [1 / 4, 'less than a quarter of the heat damage is left'],
  [1 / 3, 'less than a third of the heat damage is left'],
  [1 / 2, 'less than half of the heat damage is left'],
  [0.9, 'more than half of the heat damage is left'],
] as const;

function leftWords({ harm: was }: Standing, { harm: is }: Standing): string {
  const left = was !== null && was > 0 ? (is ?? 0) / was : 1;
  return PARTS.find(([most]) => left <= most)?.[1] ?? 'nearly all the heat damage is left';
}
