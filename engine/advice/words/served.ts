/** A plant that gets less than this share of what a change spares is not named as a reason for it. Our choice. */
const NAMED_FROM = 0.1;

interface Spared {
  readonly id: string;
  /** worth × (harm before − harm after). [K·h/day] */
  readonly spared: number;
}

/** The plants for whose sake a change is made: those that get a good part of what it spares. */
function servedOf<T extends Spared>(plants: readonly T[]): T[] {
  const all = plants.reduce((sum, { spared }) => sum + Math.max(0, spared), 0);
  return plants.filter(({ spared }) => spared > 0 && spared >= NAMED_FROM * all);
}

/** A plant without and with a change. */
export interface Harmed {
  readonly id: string;
  readonly worth: number;
  /** [K·h/day] */
  readonly before: number;
  readonly after: number;
}

/** What is taken off a plant's heat damage, 0 to 1; below 0 it gets more. */
export interface PlantEffect {
  readonly id: string;
  readonly share: number;
}

/** What a change takes off the heat damage of the plants for whose sake it is made: the one basis of what is told. */
export interface Effect {
  /** Those plants, the one that gains most first; empty: none gains. */
  readonly plants: readonly PlantEffect[];
  /** Off all of theirs together, each counting what it is worth, 0 to 1. */
  readonly share: number;
}

export function effectOn(plants: readonly Harmed[]): Effect {
  const served = servedOf(plants.map((plant) => ({ ...plant, spared: plant.worth * (plant.before - plant.after) })));
  return {
    plants: served
      .toSorted((a, b) => b.spared - a.spared)
      .map(({ id, before, after }) => ({ id, share: before > 0 ? 1 - after / before : 0 })),
    share: sharedBy(served),
  };
}

/** What is taken off the heat damage of some plants together, 0 to 1. */
export function sharedBy(plants: readonly Harmed[]): number {
  const before = plants.reduce((sum, plant) => sum + plant.worth * plant.before, 0);
  const spared = plants.reduce((sum, plant) => sum + plant.worth * (plant.before - plant.after), 0);
  return before > 0 ? spared / before : 0;
}
