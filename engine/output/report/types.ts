/** What the report is made of, before it is a page. */

import type { Section } from '../../advice/sight/section.ts';
import type { SeasonResult } from '../../advice/year/season/types.ts';
import type { Caution } from '../../frame/work/types.ts';
import type { LoadResult } from '../../load/types.ts';
import type { CivilDate, Plan } from '../../plan/types.ts';
import type { Units } from '../../plan/units/units.ts';
import type { Period } from '../../sun/samples.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import type { Tried } from './options.ts';

export interface ReportRequest {
  readonly units: Units;
  readonly weather?: Weather;
  /** Edge of a cell of the map and its height above the ground. [m] */
  readonly cell?: number;
  readonly height?: number;
  /** The day it is made; a line to write on where it is not known. */
  readonly made?: CivilDate;
  /** What the map and the nine quantities are for; the heatwave day where nothing is said. */
  readonly period?: Period;
  /** The yard without the options that are drawn as if built, and their ids; absent: no option is told of. */
  readonly tried?: { readonly plan: Plan; readonly chosen: readonly string[] };
  /** Whether the yard's latitude and longitude stand in it: they tell where somebody lives. */
  readonly withPlace?: boolean;
  readonly progress?: (done: number, what: string) => void;
}

/** A cut through a canopy and the plant under it that the low sun reaches longest. */
export interface ReportSection {
  readonly canopy: string;
  readonly plant: string;
  readonly section: Section;
}

export interface Report {
  readonly plan: Plan;
  readonly units: Units;
  readonly made: CivilDate | null;
  readonly place: { readonly latitude: number; readonly longitude: number } | null;
  /** Where the climate's figures come from, in a sentence; it says so where they are rough. */
  readonly climate: string;
  readonly rough: boolean;
  /** The one day that the map is for; `null`: the season. */
  readonly day: { readonly date: CivilDate; readonly isHeatwave: boolean } | null;
  readonly load: LoadResult;
  readonly tried: Tried | null;
  readonly sections: readonly ReportSection[];
  readonly season: SeasonResult;
  readonly cautions: readonly Caution[];
}
