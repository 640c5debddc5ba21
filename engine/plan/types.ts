/**
 * The plan file, version 1, as TypeScript: what a person drew, typed and noted. The types follow from `schema/`, where
 * every key stands once.
 *
 * Units are metres, degrees, °C, m/s, hours; humidity in %; shares, densities and sunshine 0 to 1.
 * Plan axes: x right, y up, z up from the level ground z = 0. Bearings run clockwise from true north,
 * `turn` clockwise from the plan's +y. Optional keys have their defaults in `defaults.ts`, nowhere else.
 * Everything is read-only: an edit makes a new plan that shares what did not change.
 * Keys this version does not know are kept untouched in the object they stand in.
 */

import type { FEATURE } from './schema/feature.ts';
import type { Held, HeldKind, Said } from './schema/held.ts';
import type { PLAN, PLANT_ROW } from './schema/plan.ts';
import type { CLIMATE, SEASON, SITE } from './schema/site.ts';

export type { PlanPoint, Side } from './schema/held.ts';

/** A day of the year, "MM-DD", from "01-01" to "12-31" ("02-29" in leap years only). */
export type MonthDay = string;

/** A civil day, "YYYY-MM-DD". */
export type CivilDate = string;

/**
 * Clock time of the site's zone without an offset, "YYYY-MM-DDTHH:MM" (seconds allowed); the first if it comes twice.
 */
export type ClockTime = string;

export type FeatureKind = keyof typeof FEATURE.kinds;
type Kind<K extends FeatureKind> = HeldKind<typeof FEATURE.tag, typeof FEATURE.common, typeof FEATURE.kinds, K>;

export interface Wall extends Kind<'wall'> {}
export interface Hedge extends Kind<'hedge'> {}
export interface Building extends Kind<'building'> {}
export interface Tree extends Kind<'tree'> {}
export interface Canopy extends Kind<'canopy'> {}
export interface Screen extends Kind<'screen'> {}
export interface Bed extends Kind<'bed'> {}
export interface Plant extends Kind<'plant'> {}
interface Keepout extends Kind<'keepout'> {}
interface Ground extends Kind<'ground'> {}
export interface Eye extends Kind<'eye'> {}
export interface Reading extends Kind<'reading'> {}

export type Feature = Wall | Hedge | Building | Tree | Canopy | Screen | Bed | Plant | Keepout | Ground | Eye | Reading;
export type FeatureOf<K extends FeatureKind> = Extract<Feature, { kind: K }>;
/** What is hung up: a roof on posts, or an upright screen. */
export type Cloth = Canopy | Screen;

/** How a number is known, by the key that holds it. */
export type How = NonNullable<Feature['how']>;
export type Knowledge = How[string];
export type KnownBy = Knowledge['by'];
export type Colour = Said<Wall['colour']>;
export type Surface = Ground['surface'];
export type Shelter = Said<Site['shelter']>;
export type CrownShape = Said<Tree['shape']>;
/** Days of every year, both included; across New Year when `to` is before `from`. */
export type YearlySpan = NonNullable<Canopy['up']>;
export type Drop = NonNullable<Canopy['drops']>[number];
export type DropSide = Drop['side'];
export type FrameChoice = NonNullable<Canopy['frame']>;
export type Blocked = Keepout['blocks'][number];

export interface Site extends Held<typeof SITE> {}
export type SkylinePoint = NonNullable<Site['skyline']>[number];
export type Underlay = NonNullable<Site['underlay']>;
export type NorthObservation = NonNullable<Site['northFrom']>[number];

export interface Season extends Held<typeof SEASON> {}
export interface Climate extends Held<typeof CLIMATE> {}
export type ClimateMonth = Climate['months'][number];

export interface PlantRow extends Held<typeof PLANT_ROW> {}
export type AfternoonShade = PlantRow['afternoonShade'];

export interface Plan extends Held<typeof PLAN> {}
export type YardOption = NonNullable<Plan['options']>[number];
/** How warm one summer really was. */
export type Summer = NonNullable<Plan['summers']>[number];
export type JournalEntry = NonNullable<Plan['journal']>[number];
export type JournalWhat = JournalEntry['what'];
export type Stock = NonNullable<Plan['stock']>;
export type StockTube = NonNullable<Stock['tubes']>[number];
export type StockCloth = NonNullable<Stock['cloth']>[number];
/** What to mind in this place, beside the program's own cautions: local words, from an adviser. */
export type LocalCaution = NonNullable<Plan['cautions']>[number];
/** A broken part of a file, kept verbatim so that saving loses nothing; `from` is the list it stood in. */
export type SetAside = NonNullable<Plan['setAside']>[number];

/** Something wrong or odd in a plan, said in one sentence. `pointer` is the JSON Pointer (RFC 6901) of it. */
export interface Problem {
  readonly pointer: string;
  readonly message: string;
  readonly severity: 'error' | 'warning';
}
