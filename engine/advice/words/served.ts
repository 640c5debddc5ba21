/** A plant that gets less than this share of what a change spares is not named as a reason for it. Our choice. */
const NAMED_FROM = 0.1;

interface Spared {
  readonly id: string;
  /** worth × (harm before − harm after). [K·h/day] */
  readonly spared: number;
}

/** The plants for whose sake a change is made: those that get a good part of what it spares. */
export function servedOf<T extends Spared>(plants: readonly T[]): T[] {
  const all = plants.reduce((sum, { spared }) => sum + Math.max(0, spared), 0);
  return plants.filter(({ spared }) => spared > 0 && spared >= NAMED_FROM * all);
}
