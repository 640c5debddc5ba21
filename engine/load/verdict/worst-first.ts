import type { PlantLoad, Verdict } from '../types.ts';

const RANK: Readonly<Record<Verdict, number>> = {
  'will burn': 5,
  'at risk': 4,
  'too dark': 3,
  fine: 2,
  'fine once established': 1,
  'no shade needed': 0,
};

/**
 * Worst first: by verdict, then by scorch dose times what the plant is worth; what has no verdict comes last, by hot
 * load.
 */
export function worstFirst(plants: readonly PlantLoad[], worth: (id: string) => number): readonly PlantLoad[] {
  const rank = ({ verdict }: PlantLoad): number => (verdict === null ? -1 : RANK[verdict]);
  const weight = (plant: PlantLoad): number => (plant.scorchDose ?? plant.hotLoad) * worth(plant.id);
  return plants.toSorted((a, b) => rank(b) - rank(a) || weight(b) - weight(a) || a.id.localeCompare(b.id));
}
