import type { FEATURE } from './schema/feature.ts';
import type { NumberForm } from './schema/form.ts';
import { heldAt } from './schema/say.ts';
import type { Bed, Building, Colour, Feature, FeatureKind, Plan, Plant, Wall } from './types.ts';

/** What an absent key of the plan file stands for. One home for each. */
export const DEFAULTS = {
  upBearing: 0,
  elevation: 0,
  stepMinutes: 10,
  sunshine: 1,
  wind: 2,
  humidity: 40,
  turbidity: 3.5,
  spread: 3.5,
  offset: 0,
  wallOpenness: 0,
  hedgeOpenness: 0.05,
  plantOpenness: 0.15,
  shades: true,
  colour: 'light',
  turn: 0,
  rise: 0,
  eaves: 0,
  bottom: 0,
  shape: 'round',
  worth: 1,
  potWidth: 0.4,
  potHeight: 0.35,
  foliageShare: 0.2,
  cell: 0.25,
  bedCell: 0.1,
  gridHeight: 0.5,
} as const;

/** True bearing of the plan's +y axis. [°] */
export function upBearingOf(plan: Plan): number {
  return plan.site.upBearing ?? DEFAULTS.upBearing;
}

/** How much a plant, tree or bed counts when spared harm is added up; 0 for what is not planted. */
export function worthOf(feature: Feature): number {
  return feature.kind === 'plant' || feature.kind === 'tree' || feature.kind === 'bed'
    ? (feature.worth ?? DEFAULTS.worth)
    : 0;
}

/** Whether a plant or bed may shade others. */
export function shadesOf(feature: Plant | Bed): boolean {
  return feature.shades ?? DEFAULTS.shades;
}

/** How bright the sides of a wall or building are. */
export function colourOf(feature: Wall | Building): Colour {
  return feature.colour ?? DEFAULTS.colour;
}

/** Size of the pot of a container plant. [m] */
export function potOf(plant: Plant): { width: number; height: number } {
  return { width: plant.pot?.width ?? DEFAULTS.potWidth, height: plant.pot?.height ?? DEFAULTS.potHeight };
}

/**
 * Height above the ground at which a plant's foliage begins. [m] A potted plant's never begins inside its pot unless it
 * says so.
 */
export function foliageFromOf(plant: Plant): number {
  if (plant.foliageFrom !== undefined) return plant.foliageFrom;
  const share = DEFAULTS.foliageShare * plant.height;
  return plant.container ? Math.max(share, potOf(plant).height) : share;
}

type Kinds = typeof FEATURE.kinds;

/**
 * Every number of every kind that may be left out, with what stands for it: one that the schema adds must come here.
 */
type AbsentNumbers = {
  readonly [K in FeatureKind]: {
    readonly [P in keyof Kinds[K] as Kinds[K][P] extends NumberForm & { absent: 'default' } ? P : never]: number | null;
  };
};

const ABSENT: AbsentNumbers = {
  wall: { openness: DEFAULTS.wallOpenness },
  hedge: { openness: DEFAULTS.hedgeOpenness },
  building: { eaves: DEFAULTS.eaves },
  tree: { worth: DEFAULTS.worth },
  canopy: { rise: DEFAULTS.rise, turn: DEFAULTS.turn },
  screen: { bottom: DEFAULTS.bottom },
  bed: { openness: DEFAULTS.plantOpenness, worth: DEFAULTS.worth },
  // Where its leaves begin depends on its height and its pot.
  plant: { foliageFrom: null, openness: DEFAULTS.plantOpenness, worth: DEFAULTS.worth },
  keepout: {},
  ground: {},
  eye: {},
  reading: {},
};

/**
 * The number that holds at a key of a thing, or of a part of it ("pot.width"): what the plan says, else what stands for
 * it; `undefined` where nothing does.
 */
export function numberOf(feature: Feature, key: string): number | undefined {
  if (feature.kind === 'plant') {
    if (key === 'foliageFrom') return foliageFromOf(feature);
    if (key === 'pot.width') return potOf(feature).width;
    if (key === 'pot.height') return potOf(feature).height;
  }
  const value = heldAt(feature, key) ?? heldAt(ABSENT[feature.kind], key);
  return typeof value === 'number' ? value : undefined;
}
