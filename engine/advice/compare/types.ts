import type { HourRange } from '../../frame/work/types.ts';
import type { LightStanding } from '../../load/light/light-class.ts';
import type { PlantKind, PlantSide, Stretch, Verdict } from '../../load/types.ts';
import type { Units } from '../../plan/units/units.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import type { SeenFrom } from '../sight/seen.ts';
import type { Effect } from '../words/served.ts';

export interface CompareRequest {
  /** Options to try, each a list of ids applied together; every option of the plan alone where nothing is said. */
  readonly choices?: readonly (readonly string[])[];
  readonly weather?: Weather;
  readonly units?: Units;
  /** Called with how far the work has come, 0 to 1. */
  readonly progress?: (done: number, what: string) => void;
}

/** One side of a plant, today and with a choice. */
interface SideStand {
  readonly side: PlantSide;
  /** [K·h/day] */
  readonly scorchDose: number | null;
  /** Of a thirsty leaf on the heatwave day. [°C] */
  readonly peak: number | null;
  /** Of the heatwave day. [h] */
  readonly hotHours: number;
}

/** How a plant stands in one yard. */
export interface PlantStand {
  /**
   * Mean scorch dose over the season's heat days; `null` where the plant's kind is not known, as are the next three.
   * [K·h/day]
   */
  readonly harm: number | null;
  /** On the heatwave day. [K·h/day] */
  readonly scorchDose: number | null;
  /** [°C] */
  readonly peak: number | null;
  readonly verdict: Verdict | null;
  /** Leaves less than 2 K warmer or cooler would get another verdict. */
  readonly close: boolean;
  readonly when: Stretch | null;
  readonly light: PlantLight;
  readonly sides: readonly SideStand[];
}

/** What light is left where light is judged: at the top, in a bed the mean; season means. */
export interface PlantLight {
  /** [h/day] */
  readonly sunHours: number;
  /** [mol/m² a day] */
  readonly dailyLight: number;
  /** The daily light that the plant wants at least; `null` where its kind is not known. [mol/m² a day] */
  readonly least: number | null;
  readonly standing: LightStanding;
}

export interface ComparedPlant {
  readonly id: string;
  readonly name: string;
  readonly kind: PlantKind;
  readonly worth: number;
  /** `null` where the plant is only there in the other yard. */
  readonly before: PlantStand | null;
  readonly after: PlantStand | null;
}

export interface ChoiceCost {
  readonly currency: string;
  /** `null` where nothing has a price. Nothing built costs 0. */
  readonly total: number | null;
  /** One person's hours to build it all, from somebody who has built one before to somebody who has not. [h] */
  readonly hours: HourRange;
  /** Names of what has no price: items of the shopping list, and planted or walled things. */
  readonly missing: readonly string[];
}

export interface ComparedChoice {
  /** Option ids, applied in this order. */
  readonly options: readonly string[];
  readonly name: string;
  readonly plants: readonly ComparedPlant[];
  /** Σ worth × harm. [K·h/day] */
  readonly harm: number;
  /** Σ worth × (harm before − harm after). [K·h/day] */
  readonly spared: number;
  /** `spared` over Σ worth × harm today; `null` where nothing is harmed today. */
  readonly sparedShare: number | null;
  /** By how much `spared` may be off when each doubtful input is off by its ±. [K·h/day] */
  readonly sparedPm: number;
  /** What it takes off the heat damage of the plants that it serves: what is told first. */
  readonly effect: Effect;
  /**
   * What it takes off the heat damage of all plants that one choice or another serves, and by how much that may be off,
   * as shares of it: by this they are ranked. `null`: nothing is harmed today, or no choice serves anything.
   */
  readonly together: { readonly share: number; readonly pm: number } | null;
  /** Of cloth, roofs, drops and screens. [m²] */
  readonly clothArea: number;
  readonly cost: ChoiceCost;
  /** `spared` per m² of cloth, and per unit of money; `null` where there is none of it. */
  readonly payoff: { readonly perSquareMetre: number | null; readonly perMoney: number | null };
  /** Every eye; empty where the choice hangs no cloth, or nobody looks. */
  readonly seenFrom: readonly SeenFrom[];
  /** Which of its posts would stand where something stands already, in words; empty: none. */
  readonly inTheWay: readonly string[];
  /** Plants that get less light than they need with it, and those of them that have enough today. */
  readonly tooDark: readonly string[];
  readonly newlyTooDark: readonly string[];
  /** Names of the choices for all of its plants, "today" among them, that differ from it by less than their doubt. */
  readonly asGoodAs: readonly string[];
  /**
   * Name of a choice for all of its plants that spares as much or more, costs no more, darkens no more plants, stands
   * in no more ways and shows no more, and is better in one of these; `null`: none.
   */
  readonly beatenBy: string | null;
  readonly sentences: readonly string[];
}

export interface CompareResult {
  readonly today: { readonly harm: number; readonly plants: readonly ComparedPlant[] };
  /** In the order asked for. */
  readonly choices: readonly ComparedChoice[];
  /** Names of the choices, the most spared first. */
  readonly ranked: readonly string[];
  /** Ids of the plants that one choice or another serves: `together` is told of their harm. */
  readonly served: readonly string[];
  /** The best choice in a sentence, and what is free. */
  readonly sentence: string;
  /** What every plant counts; and remarks. */
  readonly weights: string;
}
