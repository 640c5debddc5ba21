import type { GridSpec } from '../cast/grids/grid-spec.ts';
import type { PlanPoint, Problem } from '../plan/types.ts';

/** The nine quantities of a spot, in the order every output uses. */
export const QUANTITIES = [
  'sunHours',
  'morningHours',
  'afternoonHours',
  'hotHours',
  'beamDose',
  'hotLoad',
  'dailyLight',
  'skyView',
  'grade',
] as const;
export type Quantity = (typeof QUANTITIES)[number];

/**
 * Unit of each quantity as it stands beside a number; '' for a share and a grade. Hours, doses and light are per day.
 */
export const QUANTITY_UNITS: Readonly<Record<Quantity, string>> = {
  sunHours: 'h',
  morningHours: 'h',
  afternoonHours: 'h',
  hotHours: 'h',
  beamDose: 'MJ/m²',
  hotLoad: 'MJ/m²',
  dailyLight: 'mol/m²',
  skyView: '',
  grade: '',
};

/** Means per civil day: hours [h], doses [MJ/m²], light [mol/m²], sky view 0 to 1, grade 1 to 5. */
export type Nine = Readonly<Record<Quantity, number>>;

/**
 * One array a quantity, index = j·columns + i; NaN, written as `null` in JSON, where the cell is off the property or
 * inside a taller solid.
 */
export type Cells = Readonly<Record<Quantity, Float64Array>>;

/** A point round a plant: its top, or a true bearing on its widest ring. [°] */
export type PlantSide = 'top' | number;

export type SideLoad = { readonly side: PlantSide } & Nine & {
    /** [K·h/day] `null` where the feature names no plant. */
    readonly scorchDose: number | null;
    /** Warmest thirsty leaf (or fruit's surface) of the heatwave day. [°C] `null` where the feature names no plant. */
    readonly peak: number | null;
    /** Clock time of that, "HH:MM". `null` with `peak`, and where the point never gets over the limit. */
    readonly peakAt: string | null;
  };

export type LightClass = 'full sun' | 'part sun' | 'part shade' | 'full shade';

export type Verdict = 'fine' | 'fine once established' | 'no shade needed' | 'at risk' | 'will burn' | 'too dark';

/** Warmest leaf of the heatwave day at the worst point, and the limit it is held against. [°C] */
export interface LeafHeat {
  readonly watered: number;
  readonly thirsty: number;
  readonly limit: number;
  /** How far each may be off, for this plant. [K] */
  readonly spread: { readonly watered: number; readonly thirsty: number; readonly limit: number };
}

/** Stretch of the heatwave day, clock times "HH:MM" of the site's zone. */
export interface Stretch {
  readonly from: string;
  readonly to: string;
}

export type RootVerdict = 'fine' | 'hot roots' | 'cooking';

/** What cools roots: white round the pot, a wider pot round it, other pots close by, shade on the pot alone. */
export const ROOT_HELPS = ['white', 'double', 'group', 'shade'] as const;
export type RootHelpId = (typeof ROOT_HELPS)[number];

/** What a pot's wall gets, and what its roots suffer. */
export interface PotLoad {
  /** On its wall, the mean of its eight sides; means of the period. [h/day] */
  readonly sunHours: number;
  readonly hotHours: number;
  /** On the heatwave day. */
  readonly roots: Roots;
}

/** The warmest root zone of a pot, 2 cm inside its wall. */
export interface Roots {
  /** [°C] */
  readonly warmest: number;
  /** Clock time of that, "HH:MM". */
  readonly when: string;
  /** True bearing of that side. [°] */
  readonly side: number;
  /** How far `warmest` may be off. [K] */
  readonly spread: number;
  readonly verdict: RootVerdict;
  /** What to do first, and by how much it cools [K]; `null` where the roots are fine. */
  readonly help: { readonly id: RootHelpId; readonly cooler: number } | null;
}

export type PlantKind = 'plant' | 'tree' | 'bed';

/** Cloth that hangs over or beside a plant already. */
export interface ClothNow {
  /** That sun comes thinned through it, or in under its edge. */
  readonly how: 'through' | 'under';
  readonly id: string;
  /** What it stops of the sun that harms there, 0 to 1. */
  readonly stops: number;
}

/** What one wall or building adds to a leaf while it is hot. */
export interface WallHeat extends Stretch {
  readonly id: string;
  /** Mean of those hours. [K] */
  readonly adds: number;
}

/** What one plant, planted tree or bed gets. Numbers are the mean of its points. */
export type PlantLoad = {
  readonly id: string;
  readonly kind: PlantKind;
  readonly at: PlanPoint;
  /** Of the top; of a bed its `plantHeight`. [m] */
  readonly height: number;
} & Nine & {
    /** A bed has none. */
    readonly sides?: readonly SideLoad[];
    /** `null` of what stands in no pot. */
    readonly pot: PotLoad | null;
    readonly lightClass: LightClass;
    /** `null` where the feature names no plant of the catalogue or the person's own rows. */
    readonly leaf: LeafHeat | null;
    /** [K·h/day] `null` with `leaf`. */
    readonly scorchDose: number | null;
    /** Warmest of all its points. [°C] `null` with `leaf`. */
    readonly peak: number | null;
    readonly verdict: Verdict | null;
    /** A close call: leaves less than 2 K warmer or cooler would get another verdict. */
    readonly close: boolean;
    /** When the leaf is over its limit on the heatwave day; `null` where it never is. */
    readonly when: Stretch | null;
    /** The worst side: 'top' or a true bearing [°]; of a bed `null`. */
    readonly from: PlantSide | null;
    /** Cloth that hangs there already and lets that sun through, or in under it; `null`: that sun comes otherwise. */
    readonly cloth: ClothNow | null;
    /** What walls and buildings add there meanwhile, the most first. */
    readonly walls: readonly WallHeat[];
    /** The verdict as a person would say it. */
    readonly sentence: string;
  };

/** Cells of grade 4 or 5 joined by edges, at least 0.25 m². */
export interface HotSpot {
  /** Mean of its cells' centres. [m] */
  readonly center: PlanPoint;
  /** [m²] */
  readonly area: number;
  readonly cells: number;
  /** Of its mean hot load. */
  readonly grade: number;
  /** Mean of its cells. [MJ/m²] */
  readonly hotLoad: number;
  /** The three hours on end with the most hot load at its hottest cell. */
  readonly when: Stretch;
  /** True bearing from which that sun comes. [°] */
  readonly from: number;
  /** What that sun comes over or past, nearest first: feature ids. */
  readonly past: readonly string[];
  readonly sentence: string;
}

export interface SeasonTotals {
  /** Civil days, both ends included. */
  readonly days: number;
  readonly samples: number;
  /** Means per day with nothing in the way but the skyline. */
  readonly openSunHours: number;
  readonly openBeamDose: number;
  readonly openHotLoad: number;
}

/** `load --json`. */
export interface LoadResult {
  readonly grid: GridSpec;
  readonly cells: Cells;
  readonly hotSpots: readonly HotSpot[];
  readonly plants: readonly PlantLoad[];
  readonly season: SeasonTotals;
}

/** One sample of a day at a spot. */
export interface SpotStep {
  /** Local time of the middle with seconds and offset. */
  readonly when: string;
  readonly hours: number;
  /** True. [°] */
  readonly azimuth: number;
  /** Apparent. [°] */
  readonly altitude: number;
  /** Clear-sky. [W/m²] */
  readonly beam: number;
  readonly diffuse: number;
  readonly sunshine: number;
  readonly air: number;
  readonly share: number;
  /** `passes`: the transmittance of that feature alone. */
  readonly blockers: readonly { readonly id: string; readonly passes: number }[];
}

/** `spot --json` of one day. */
export interface SpotDayResult {
  readonly at: PlanPoint;
  readonly height: number;
  readonly date: string;
  readonly inside: string | null;
  readonly steps: readonly SpotStep[];
  readonly day: Nine;
}

/** `spot --json` of the season. */
export interface SpotSeasonResult {
  readonly at: PlanPoint;
  readonly height: number;
  readonly date: null;
  readonly inside: string | null;
  readonly season: Nine;
  readonly days: readonly ({ readonly date: string } & Nine)[];
}

export type SpotResult = SpotDayResult | SpotSeasonResult;

/** A result, or why there is none. */
export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };
