/**
 * The plan file, version 1, as TypeScript: what a person drew, typed and noted.
 *
 * Units are metres, degrees, °C, m/s, hours; humidity in %; shares, densities and sunshine 0 to 1.
 * Plan axes: x right, y up, z up from the level ground z = 0. Bearings run clockwise from true north,
 * `turn` clockwise from the plan's +y. Optional keys have their defaults in `defaults.ts`, nowhere else.
 * Everything is read-only: an edit makes a new plan that shares what did not change.
 * Keys this version does not know are kept untouched in the object they stand in.
 */

/** A point of the plan: [x, y]. [m] */
export type PlanPoint = readonly [x: number, y: number];

/** A day of the year, "MM-DD", from "01-01" to "12-31" ("02-29" in leap years only). */
export type MonthDay = string;

/** A civil day, "YYYY-MM-DD". */
export type CivilDate = string;

/**
 * Clock time of the site's zone without an offset, "YYYY-MM-DDTHH:MM" (seconds allowed); the first if it comes twice.
 */
export type ClockTime = string;

/** Days of every year, both included; across New Year when `to` is before `from`. */
export interface YearlySpan {
  readonly from: MonthDay;
  readonly to: MonthDay;
}

/** How a number is known. It never changes a result, only its doubt. */
export type KnownBy = 'tape' | 'shadow' | 'paced' | 'picture' | 'compass' | 'guess' | 'catalogue';

/** `pm` is how far the number may be off, in the number's own unit. */
export interface Knowledge {
  readonly by: KnownBy;
  readonly pm?: number;
}

/** By the name of the key that holds the number: `{"height": {"by": "guess", "pm": 0.4}}`. Absent: taped. */
export type How = Readonly<Record<string, Knowledge>>;

export interface FeatureCommon {
  readonly id: string;
  readonly name?: string;
  readonly how?: How;
}

/** How bright the side of a wall is: how much of the sun's light it throws back. */
export type Colour = 'white' | 'light' | 'mid' | 'dark';

export interface Wall extends FeatureCommon {
  readonly kind: 'wall';
  readonly path: readonly PlanPoint[];
  readonly height: number;
  readonly thickness: number;
  readonly openness?: number;
  readonly colour?: Colour;
}

export interface Hedge extends FeatureCommon {
  readonly kind: 'hedge';
  readonly path: readonly PlanPoint[];
  readonly height: number;
  readonly thickness: number;
  readonly openness?: number;
}

export interface Building extends FeatureCommon {
  readonly kind: 'building';
  readonly outline: readonly PlanPoint[];
  readonly height: number;
  readonly eaves?: number;
  readonly colour?: Colour;
}

export type CrownShape = 'round' | 'cone' | 'column';

export interface Tree extends FeatureCommon {
  readonly kind: 'tree';
  readonly at: PlanPoint;
  readonly height: number;
  readonly crownWidth: number;
  readonly crownBase: number;
  readonly shape?: CrownShape;
  readonly openness: number;
  readonly leafless?: YearlySpan & { readonly openness: number };
  /** Id of a catalogue row or of one of the person's own rows. */
  readonly plant?: string;
  readonly planted?: string;
  readonly worth?: number;
}

export type DropSide = 'front' | 'back' | 'left' | 'right';

export interface Drop {
  readonly side: DropSide;
  readonly depth: number;
  readonly density: number;
}

export type Soil = string;

export interface FrameChoice {
  /** Id of a tube in the stock list. */
  readonly tube?: string;
  readonly bottomRails?: boolean;
  /** Braces in every upright face, also where no drop needs them. */
  readonly braces?: boolean;
  readonly maxBay?: number;
  readonly takeOff?: number;
  readonly anchor?: string;
  readonly soil?: Soil;
  /** [m/s] Wins over the climate's. */
  readonly gust?: number;
}

export interface Canopy extends FeatureCommon {
  readonly kind: 'canopy';
  readonly center: PlanPoint;
  readonly length: number;
  readonly width: number;
  readonly turn?: number;
  readonly height: number;
  readonly rise?: number;
  readonly density: number;
  /** Replaces the roof's `density`; drops keep their own. */
  readonly measuredDensity?: number;
  readonly drops?: readonly Drop[];
  readonly up?: YearlySpan;
  readonly frame?: FrameChoice;
}

export interface Screen extends FeatureCommon {
  readonly kind: 'screen';
  readonly path: readonly PlanPoint[];
  readonly bottom?: number;
  readonly height: number;
  readonly density: number;
  readonly measuredDensity?: number;
  readonly up?: YearlySpan;
  readonly frame?: FrameChoice;
}

export interface Bed extends FeatureCommon {
  readonly kind: 'bed';
  readonly outline: readonly PlanPoint[];
  readonly plantHeight: number;
  /** Share of the light that passes through the planting. */
  readonly openness?: number;
  /** Whether it shades others. */
  readonly shades?: boolean;
  readonly plant?: string;
  readonly planted?: string;
  readonly worth?: number;
}

export interface Pot {
  readonly width?: number;
  readonly height?: number;
  readonly colour?: string;
}

export interface Plant extends FeatureCommon {
  readonly kind: 'plant';
  readonly at: PlanPoint;
  readonly height: number;
  readonly spread: number;
  /** Share of the light that passes through the crown. */
  readonly openness?: number;
  /** Whether it shades others. */
  readonly shades?: boolean;
  readonly plant?: string;
  readonly container?: boolean;
  readonly pot?: Pot;
  readonly move?: 'carry' | 'trolley' | 'never';
  /** YYYY or YYYY-MM-DD. */
  readonly planted?: string;
  readonly foliageFrom?: number;
  readonly worth?: number;
}

export type Blocked = 'posts' | 'pots' | 'canopy';

export interface Keepout extends FeatureCommon {
  readonly kind: 'keepout';
  readonly outline: readonly PlanPoint[];
  readonly blocks: readonly Blocked[];
}

/** What lies on the ground. */
export type Surface = 'lawn' | 'soil' | 'paving' | 'mulch' | 'gravel';

/** Ground that is not as the rest of the yard; the last that holds a point counts. */
export interface Ground extends FeatureCommon {
  readonly kind: 'ground';
  readonly outline: readonly PlanPoint[];
  readonly surface: Surface;
}

/** Who should not see the frame: a line, or one point. */
export interface Eye extends FeatureCommon {
  readonly kind: 'eye';
  readonly path: readonly PlanPoint[];
  readonly height: number;
}

/** A true bearing, or one of four words. */
export type Side = number | 'top' | 'all' | 'unknown';

export interface Reading extends FeatureCommon {
  readonly kind: 'reading';
  readonly at: PlanPoint;
  readonly when: ClockTime;
  readonly air?: number;
  readonly leaf?: number;
  /** [lux] */
  readonly light?: number;
  readonly covered?: boolean;
  readonly pair?: string;
  readonly plant?: string;
  readonly side?: Side;
  readonly text?: string;
}

export type Feature = Wall | Hedge | Building | Tree | Canopy | Screen | Bed | Plant | Keepout | Ground | Eye | Reading;
export type FeatureKind = Feature['kind'];
export type FeatureOf<K extends FeatureKind> = Extract<Feature, { kind: K }>;

/** How far the wind reaches the plants: freely, past some walls or hedges, or into a court. */
export type Shelter = 'open' | 'sheltered' | 'court';

export interface SkylinePoint {
  readonly azimuth: number;
  readonly altitude: number;
}

export interface Underlay {
  readonly image: string;
  readonly at: PlanPoint;
  readonly width: number;
  readonly turn?: number;
  readonly opacity?: number;
}

export type NorthObservation =
  | {
      readonly by: 'shadow';
      readonly line: readonly [PlanPoint, PlanPoint];
      readonly when: ClockTime;
      readonly pm?: number;
    }
  | {
      readonly by: 'vanish';
      readonly along: readonly [PlanPoint, PlanPoint];
      readonly when: ClockTime;
      readonly pm?: number;
    }
  | {
      readonly by: 'compass';
      readonly reading: number;
      readonly along: readonly [PlanPoint, PlanPoint];
      readonly declination?: number;
      readonly pm?: number;
    }
  | { readonly by: 'picture'; readonly bearing: number; readonly pm?: number };

export interface Site {
  readonly latitude: number;
  readonly longitude: number;
  readonly elevation?: number;
  /** IANA name. */
  readonly timeZone: string;
  /** True bearing of the plan's +y axis. */
  readonly upBearing?: number;
  readonly boundary: readonly PlanPoint[];
  /** Absent: guessed from the walls, hedges and buildings drawn. */
  readonly shelter?: Shelter;
  /** Absent: nothing is known of the ground. */
  readonly surface?: Surface;
  readonly skyline?: readonly SkylinePoint[];
  readonly underlay?: Underlay;
  readonly northFrom?: readonly NorthObservation[];
  readonly pace?: { readonly steps: number; readonly length: number };
  readonly rules?: { readonly maxHeight?: number; readonly setback?: number; readonly note?: string };
  readonly tap?: PlanPoint;
  readonly hose?: number;
  readonly how?: How;
}

export interface Season {
  /** Year of `from`. */
  readonly year: number;
  readonly from: MonthDay;
  readonly to: MonthDay;
  /** Divides 60. */
  readonly stepMinutes?: number;
}

export interface ClimateMonth {
  readonly month: number;
  readonly high: number;
  readonly low: number;
  readonly humidity?: number;
  readonly wind?: number;
  readonly sunshine?: number;
  readonly sunshineAfternoon?: number;
  readonly spread?: number;
  readonly turbidity?: number;
}

export interface Climate {
  readonly from?: 'rough' | 'months' | 'file';
  readonly source?: string;
  readonly offset?: number;
  /** [m/s] */
  readonly gust?: number;
  readonly frost?: { readonly first?: MonthDay; readonly last?: MonthDay; readonly lowest?: number };
  readonly turbidity?: number;
  readonly hotAir: number;
  readonly heatwaveHigh: number;
  readonly months: readonly ClimateMonth[];
  readonly how?: How;
}

export interface YardOption {
  readonly id: string;
  readonly name?: string;
  readonly adds?: readonly Feature[];
  readonly moves?: Readonly<Record<string, PlanPoint>>;
  readonly removes?: readonly string[];
}

export type AfternoonShade = 'yes' | 'young' | 'fruit' | 'no';

/** A row of the catalogue, or one of the person's own. A row's `sources` are keys of the catalogue's citations. */
export interface PlantRow {
  readonly id: string;
  readonly name: string;
  readonly botanical?: string;
  readonly group?: string;
  readonly light?: string;
  /** Direct sun preferred in a hot climate, [min, max]. [h/day] */
  readonly sunHours: readonly [number, number];
  /** [mol m⁻² day⁻¹] */
  readonly minDLI?: number | null;
  /** Temperature of `limitOf` above which damage begins. [°C] */
  readonly heatLimit: number;
  readonly limitOf: string;
  readonly limitBasis?: string;
  readonly sensitivity?: string;
  readonly afternoonShade: AfternoonShade;
  /** Nominal density for the hottest months, [min, max]. [%] */
  readonly cloth?: readonly [number, number] | null;
  readonly frost?: string;
  readonly frostDamage?: number;
  /** [m] */
  readonly leafWidth: number;
  readonly bothSides?: boolean;
  readonly sources?: readonly string[];
  readonly note?: string;
}

export type JournalWhat = 'damage' | 'spray' | 'rain' | 'cloth-up' | 'cloth-down' | 'moved' | 'note';

export interface JournalEntry {
  readonly date: CivilDate;
  readonly what: JournalWhat;
  readonly feature?: string;
  /** Damage 0 to 5; rain in mm. */
  readonly amount?: number;
  readonly side?: Side;
  readonly part?: string;
  readonly text?: string;
}

export interface StockTube {
  readonly id: string;
  readonly name: string;
  /** [m] */
  readonly outside: number;
  /** [m] */
  readonly wall: number;
  readonly length: number;
  readonly price?: number;
}

export interface StockCloth {
  readonly width: number;
  readonly length?: number;
  readonly density?: number;
  readonly price?: number;
}

export interface Stock {
  readonly currency?: string;
  readonly kerf?: number;
  readonly tubes?: readonly StockTube[];
  readonly cloth?: readonly StockCloth[];
  readonly prices?: Readonly<Record<string, number>>;
}

export interface PastYear {
  readonly year: number;
  readonly plan: Plan;
}

/** What to mind in this place, beside the program's own cautions: local words, from an adviser. */
export interface LocalCaution {
  readonly text: string;
}

/** A broken part of a file, kept verbatim so that saving loses nothing; `from` is the list it stood in. */
export interface SetAside {
  readonly from: string;
  readonly value: unknown;
}

export interface Plan {
  readonly format: 'shadewright-plan';
  readonly version: 1;
  readonly name?: string;
  readonly units?: 'metric' | 'imperial';
  readonly site: Site;
  readonly season: Season;
  readonly climate: Climate;
  readonly features: readonly Feature[];
  readonly options?: readonly YardOption[];
  readonly plants?: readonly PlantRow[];
  readonly journal?: readonly JournalEntry[];
  readonly stock?: Stock;
  readonly cautions?: readonly LocalCaution[];
  readonly past?: readonly PastYear[];
  readonly setAside?: readonly SetAside[];
}

/** Something wrong or odd in a plan, said in one sentence. `pointer` is the JSON Pointer (RFC 6901) of it. */
export interface Problem {
  readonly pointer: string;
  readonly message: string;
  readonly severity: 'error' | 'warning';
}
