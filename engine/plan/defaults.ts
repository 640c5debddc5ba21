import type { FEATURE } from './schema/feature.ts';
import type { NumberForm } from './schema/form.ts';
import type { Unsaid } from './schema/held.ts';
import { heldAt } from './schema/say.ts';
import type {
  Bed,
  Building,
  Canopy,
  Climate,
  ClimateMonth,
  Colour,
  CrownShape,
  Feature,
  FeatureKind,
  Hedge,
  Plan,
  Plant,
  PlantRow,
  Screen,
  Season,
  Site,
  Tree,
  Underlay,
  Wall,
} from './types.ts';

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
  underlayOpacity: 0.6,
  rise: 0,
  eaves: 0,
  bottom: 0,
  shape: 'round',
  worth: 1,
  potWidth: 0.4,
  potHeight: 0.35,
  foliageShare: 0.2,
  fruitWidth: 0.075,
  cell: 0.25,
  bedCell: 0.1,
  gridHeight: 0.5,
} as const;

/** What a plan says at a key, else what stands for it. Private: a stand-in has its one home above. */
function or<T>(said: T | Unsaid | undefined, stands: T): T {
  return said === undefined ? stands : (said as T);
}

/** True bearing of the plan's +y axis. [°] */
export function upBearingOf(plan: Plan): number {
  return or(plan.site.upBearing, DEFAULTS.upBearing);
}

/** Height above the sea. [m] */
export function elevationOf({ elevation }: Pick<Site, 'elevation'>): number {
  return or(elevation, DEFAULTS.elevation);
}

/** Height above the sea as far as somebody said it: normals of towns are brought to a known height only. [m] */
export function knownElevationOf({ elevation }: Pick<Site, 'elevation'>): number | undefined {
  return or<number | undefined>(elevation, undefined);
}

/** How far the picture under the drawing is turned clockwise [°], and how strongly it shows, 0 to 1. */
export function lieOf({ turn, opacity }: Pick<Underlay, 'turn' | 'opacity'>): { turn: number; opacity: number } {
  return { turn: or(turn, DEFAULTS.turn), opacity: or(opacity, DEFAULTS.underlayOpacity) };
}

/** Length of a step of the day. [minutes] */
export function stepMinutesOf({ stepMinutes }: Pick<Season, 'stepMinutes'>): number {
  return or(stepMinutes, DEFAULTS.stepMinutes);
}

/** What the yard's own thermometer adds to the air. [K] */
export function offsetOf({ offset }: Pick<Climate, 'offset'>): number {
  return or(offset, DEFAULTS.offset);
}

/** What a month says beside its high and low: humidity [%], wind [m/s], share of sunshine, spread [K]. */
export function monthOf(month: Pick<ClimateMonth, 'humidity' | 'wind' | 'sunshine' | 'spread'>): {
  humidity: number;
  wind: number;
  sunshine: number;
  spread: number;
} {
  return {
    humidity: or(month.humidity, DEFAULTS.humidity),
    wind: or(month.wind, DEFAULTS.wind),
    sunshine: or(month.sunshine, DEFAULTS.sunshine),
    spread: or(month.spread, DEFAULTS.spread),
  };
}

/** Linke turbidity of a month: its own, else the climate's. */
export function turbidityOf(climate: Pick<Climate, 'turbidity'>, month: Pick<ClimateMonth, 'turbidity'>): number {
  return or(month.turbidity, or(climate.turbidity, DEFAULTS.turbidity));
}

/** How much a plant, tree or bed counts when spared harm is added up; 0 for what is not planted. */
export function worthOf(feature: Feature): number {
  return feature.kind === 'plant' || feature.kind === 'tree' || feature.kind === 'bed'
    ? or(feature.worth, DEFAULTS.worth)
    : 0;
}

/** Share of the light that passes through a wall, a hedge, a plant's crown or a bed's planting. */
export function opennessOf(feature: Wall | Hedge | Plant | Bed): number {
  return or(feature.openness, ABSENT[feature.kind].openness);
}

/** Whether a plant or bed may shade others. */
export function shadesOf(feature: Plant | Bed): boolean {
  return or<boolean>(feature.shades, DEFAULTS.shades);
}

/** How bright the sides of a wall or building are. */
export function colourOf(feature: Wall | Building): Colour {
  return or<Colour>(feature.colour, DEFAULTS.colour);
}

/** How far a roof reaches past its walls. [m] */
export function eavesOf(building: Pick<Building, 'eaves'>): number {
  return or(building.eaves, DEFAULTS.eaves);
}

export function crownShapeOf(tree: Pick<Tree, 'shape'>): CrownShape {
  return or<CrownShape>(tree.shape, DEFAULTS.shape);
}

/** How much higher a canopy's front edge is than its back edge. [m] */
export function riseOf(canopy: Pick<Canopy, 'rise'>): number {
  return or(canopy.rise, DEFAULTS.rise);
}

/** How far a canopy is turned, clockwise from the plan's +y. [°] */
export function turnOf(canopy: Pick<Canopy, 'turn'>): number {
  return or(canopy.turn, DEFAULTS.turn);
}

/** Height of a screen's lower edge. [m] */
export function bottomOf(screen: Pick<Screen, 'bottom'>): number {
  return or(screen.bottom, DEFAULTS.bottom);
}

/** Size of the pot of a container plant. [m] */
export function potOf({ pot }: Pick<Plant, 'pot'>): { width: number; height: number } {
  return { width: or(pot?.width, DEFAULTS.potWidth), height: or(pot?.height, DEFAULTS.potHeight) };
}

/** Width of the fruit of a row whose limit is the fruit's; an apple's where nothing is said. [m] */
export function fruitWidthOf({ fruitWidth }: Pick<PlantRow, 'fruitWidth'>): number {
  return or(fruitWidth, DEFAULTS.fruitWidth);
}

/**
 * Height above the ground at which a plant's foliage begins. [m] A potted plant's never begins inside its pot unless it
 * says so.
 */
export function foliageFromOf(plant: Plant): number {
  const share = DEFAULTS.foliageShare * plant.height;
  return or(plant.foliageFrom, plant.container ? Math.max(share, potOf(plant).height) : share);
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

const ABSENT = {
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
} as const satisfies AbsentNumbers;

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
