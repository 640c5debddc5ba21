import type { Plan } from '../types.ts';

/** The yard without what was noted of it, moves apart: a plant in a new place bears less for two weeks. */
export function withoutDiary(plan: Plan): Plan {
  const moves = (plan.journal ?? []).filter(({ what }) => what === 'moved');
  return { ...plan, journal: moves.length > 0 ? moves : undefined, summers: undefined, past: undefined };
}
