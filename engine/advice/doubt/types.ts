import type { Verdict } from '../../load/types.ts';
import type { KnownBy, Plan } from '../../plan/types.ts';
import type { Units } from '../../plan/units/units.ts';
import type { Weather } from '../../sun/weather/weather.ts';

export type DoubtKind =
  | 'north'
  | 'height'
  | 'size'
  | 'place'
  | 'thickness of shade'
  | 'colour'
  | 'shelter'
  | 'climate'
  | 'limits';

export interface DoubtInput {
  /** "house.height", "site.upBearing", "site.shelter", "climate.heatwaveHigh", "limits". */
  readonly key: string;
  readonly kind: DoubtKind;
  /** The feature it belongs to; `null` for north, climate and limits. */
  readonly feature: string | null;
  /** The number's own key. */
  readonly of: string;
  readonly by: KnownBy | null;
  /** How far it may be off, in the number's own unit: m, °, K, a share; of a word one step. */
  readonly pm: number;
  /** The plan with it off by `pm`: up and down; of a place to all four sides. */
  readonly shifts: readonly Plan[];
}

export interface DoubtRequest {
  readonly weather?: Weather;
  readonly units?: Units;
  /** Called with how far the work has come, 0 to 1. */
  readonly progress?: (done: number, what: string) => void;
}

/** One number in doubt, and what hangs on it. */
export interface DoubtBar {
  /** "house.height", "site.upBearing", "site.shelter", "climate.heatwaveHigh", "limits". */
  readonly key: string;
  readonly kind: DoubtKind;
  /** The feature it belongs to; `null` for north, climate and limits. */
  readonly feature: string | null;
  /** "the height of the shed". */
  readonly name: string;
  readonly by: KnownBy | null;
  /** In the number's own unit: m, °, K, or a share; 1 of a word that may be one step off. */
  readonly pm: number;
  /** With its unit: "0.40 m", "8°", "2 K", "10 %", "one class". */
  readonly pmText: string;
  /** Σ worth × |change of harm| at the worse of its shifts. [K·h/day] */
  readonly moves: number;
  /** Whether a person can find it out in the yard; climate, limits and a shelter that was said not. */
  readonly measurable: boolean;
  /** Plants whose verdict is another one at a shift, which ones, and the shift of the first of them. */
  readonly verdicts: readonly {
    readonly plant: string;
    readonly verdict: Verdict;
    readonly may: readonly Verdict[];
    readonly shift: number;
  }[];
  /** Another order of today and the options at a shift, the least harm first; `null`: the order stays. */
  readonly order: readonly string[] | null;
  /** Another option that is the best at a shift; `null`: the best stays. */
  readonly first: { readonly option: string; readonly shift: number } | null;
  /**
   * What the best option takes off the harm of the plants that it serves, as drawn and at a shift, 0 to 1; `null`: much
   * the same.
   */
  readonly effect: {
    readonly option: string;
    /** Ids of the plants that it serves: the shares are of their harm. */
    readonly served: readonly string[];
    readonly from: number;
    readonly to: number;
    readonly shift: number;
  } | null;
  /** What of the advice changes, and with which shift; "": nothing. */
  readonly advice: string;
}

export interface PlantDoubt {
  readonly id: string;
  readonly name: string;
  readonly worth: number;
  readonly verdict: Verdict;
  /** Mean scorch dose over the season's heat days. [K·h/day] */
  readonly harm: number;
  /** By how much harm may be off: the root of the inputs' squares, each at its worse shift. [K·h/day] */
  readonly pm: number;
  /** Verdicts it may have when one input is off; empty: it stays. */
  readonly may: readonly { readonly verdict: Verdict; /** Keys. */ readonly inputs: readonly string[] }[];
  readonly sentence: string;
}

export interface DoubtResult {
  /** Σ worth × harm, and by how much it may be off. [K·h/day] */
  readonly harm: number;
  readonly pm: number;
  readonly plants: readonly PlantDoubt[];
  /** Those that change the advice first, then the farthest-moving. */
  readonly inputs: readonly DoubtBar[];
  /** "today" and the names of the plan's options, the least harm first; empty where there are none. */
  readonly order: readonly string[];
  /** Key of what to measure next; `null` when nothing that can be measured in the yard moves the harm. */
  readonly measureNext: string | null;
  readonly sentence: string;
  /** Remarks on verdicts and on the order of the options. */
  readonly notes: readonly string[];
}
