import type { GridSpec } from '../../cast/grids/grid-spec.ts';
import type { GroundKind } from '../../frame/strength/types.ts';
import type { Nine, Stretch, Verdict } from '../../load/types.ts';
import type { Cloth, DropSide, PlanPoint } from '../../plan/types.ts';
import type { Units } from '../../plan/units/units.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import type { LadderStep } from '../cheaper-first/step.ts';
import type { NoNeed } from '../words/no-need.ts';

/** What may be put up: a roof alone, a roof with drops, an upright screen. */
export type ClothKind = 'roof' | 'roof with drops' | 'screen';

/** Footprint of a roof; a screen of a size is as long as its longer side. [m] */
export interface ClothSize {
  readonly length: number;
  readonly width: number;
}

/** What to search. Whatever is left out has the value of `SITE_DEFAULTS`. */
export interface SiteRequest {
  readonly kinds?: readonly ClothKind[];
  /** 'any': every size from 1 × 1 to 4 × 4 m in half metres. */
  readonly sizes?: readonly ClothSize[] | 'any';
  /**
   * Of the cloth, level. 'any': five heights, the cap itself where there is one, and where eyes bind, heights that hide
   * near the plants. [m]
   */
  readonly heights?: readonly number[] | 'any';
  /** Nominal shares of light the cloth blocks, 0 to 1. Left out: what suits the plants, and the thinnest that does. */
  readonly densities?: readonly number[];
  /** Ids of the plants that count. Left out: all but those that need no shade and those for which it is too dark. */
  readonly forPlants?: readonly string[];
  /** What the posts stand in. Left out: as the plan says it of the yard or of a frame, else the usual. */
  readonly ground?: GroundKind;
  /** To anchor for. Left out: the plan's. [m/s] */
  readonly gust?: number;
  /** Of a drop. [m] */
  readonly dropDepths?: readonly number[];
  /** At most so many drops on one roof; 2, or 1 where more than three sizes × heights are asked for. */
  readonly maxDrops?: 1 | 2;
  /** Step of the positions, along and across the cloth, 0.25 m or a foot. Sizes are rounded to it. [m] */
  readonly step?: number;
  /** Step of the turns. [°] */
  readonly turnStep?: number;
  /** How many things to build together. */
  readonly count?: number;
  /** Besides the plan's own rule. [m] */
  readonly maxHeight?: number;
  /** Most that one option may cost, in the plan's currency. */
  readonly budget?: number;
  /**
   * Ids of the eyes that the cloth must be hidden from; empty: it may be seen; left out: every eye from which cloth can
   * be hidden in most of the yard.
   */
  readonly hideFrom?: readonly string[];
  /** Whether those may see a little: from a tenth of their line, or no more than its uppermost 0.2 m. */
  readonly seenLittle?: boolean;
  /** Whether no plant that has light enough may fall short of it, and none that is short may lose more. */
  readonly keepLight?: boolean;
  /** Whether the most promising are moved about between the steps of the lattice, too. */
  readonly betweenSteps?: boolean;
  readonly weather?: Weather;
  readonly units?: Units;
}

/** A rule of the owner's or the neighbourhood's that a search keeps; ground, plants and walls are no rules. */
export type SiteRule = 'height' | 'hidden' | 'glimpsed' | 'setback' | 'keepout' | 'light' | 'density' | 'budget';

/** A rule that kept something better out, and what it cost. */
export interface RulePrice {
  readonly rule: SiteRule;
  /** Best that could be spared without this rule, all others kept. [K·h/day] */
  readonly spared: number;
  /** Share of that which the rule takes away, 0 to 1. */
  readonly cost: number;
  readonly sentence: string;
}

/** A plant without and with an option. */
export interface PlantState extends Nine {
  /** Mean over the heat days. [K·h/day] `null` where it names no row. */
  readonly harm: number | null;
  /** On the heatwave day. */
  readonly scorchDose: number | null;
  readonly peak: number | null;
  readonly verdict: Verdict | null;
  /** By how much a watered leaf is over its limit then, where it is hottest; below 0 under it. [K] */
  readonly wateredOver: number | null;
  /** Daily light at its top; of a bed its mean. [mol/m²] */
  readonly topLight: number;
  /** Hours of sun at its top; of a bed its mean. */
  readonly topSunHours: number;
}

/** Hot sun on a plant on the heatwave day that the cloth does not stop. */
export interface LowSun {
  /** Between the clock times the sun comes in under the cloth's edge, or past it. */
  readonly when: Stretch;
  readonly how: 'under' | 'past';
  /** True bearing from which it comes. [°] */
  readonly from: number;
  /** Its altitude when it begins. [°] */
  readonly altitude: number;
  readonly sentence: string;
}

export interface OptionPlant {
  readonly id: string;
  readonly name: string;
  readonly before: PlantState;
  readonly after: PlantState;
  /** worth × (harm before − harm after). [K·h/day] */
  readonly spared: number;
  /** Below its range of light with the option though not without. */
  readonly tooDark: boolean;
  readonly lowSun: LowSun | null;
}

/**
 * The cheapest that does at least 80 % of what the best does; the best, whatever it costs; the cheapest that does half
 * of it.
 */
export type AnswerRole = 'most for money' | 'most' | 'least';

/** What an answer adds to a cheaper one. */
export interface Added {
  /** Index of the cheaper answer; `null`: it is the cheapest. */
  readonly to: number | null;
  /** Of the harm of all plants that one or another of the answers serves, 0 to 1: `together` less the cheaper one's. */
  readonly effect: number;
  /** In the plan's currency. */
  readonly cost: number | null;
  /** Whether that is worth the money. */
  readonly isWorth: boolean;
}

/** What our own cautions have against cloth: over 10 m²; a roof under head height; posts over 3 m. */
export type ClothCaution = 'large' | 'low' | 'tall';

/** A plant that counted for nothing, or for which nothing speaks, and why. */
export interface Uncounted {
  readonly id: string;
  readonly because: NoNeed | 'not asked for';
}

/** What cloth was priced for. */
export interface PricedFor {
  readonly ground: GroundKind;
  /** Whether the person or the plan says so. */
  readonly isSaid: boolean;
  /** [m/s] */
  readonly gust: number;
}

/** One proposal. */
export interface SiteOption {
  readonly kind: ClothKind | 'several';
  /** Ready to be added to the plan or to an option of it; their ids are not taken. */
  readonly features: readonly Cloth[];
  /**
   * Of the first feature: its middle, its size (a screen's width is 0), turn [°], height of the cloth or of a screen's
   * top, density.
   */
  readonly center: PlanPoint;
  readonly length: number;
  readonly width: number;
  readonly turn: number;
  readonly height: number;
  readonly density: number;
  readonly drops: readonly { readonly side: DropSide; readonly depth: number }[];
  /** Σ worth × (harm before − after). [K·h/day] */
  readonly spared: number;
  /** Of the harm of all plants that count, 0 to 1. */
  readonly sparedShare: number;
  /** What it answers; empty for none of the three. */
  readonly roles: readonly AnswerRole[];
  /** Ids of the plants for whose sake it hangs there, the one that gains most first. */
  readonly served: readonly string[];
  /** What it takes off their harm, 0 to 1. */
  readonly effect: number;
  /**
   * Off the harm of all plants that one or another of the answers serves, 0 to 1: by this they are held against each
   * other.
   */
  readonly together: number;
  /** What it adds to the next cheaper answer, or to nothing. */
  readonly added: Added;
  /** Cloth, drops too. [m²] */
  readonly area: number;
  readonly cost: number | null;
  readonly currency: string;
  /** Spared per m² of cloth and per unit of money. */
  readonly payoff: { readonly perArea: number; readonly perMoney: number | null };
  readonly plants: readonly OptionPlant[];
  /** What our own cautions have against it. */
  readonly cautions: readonly ClothCaution[];
  /** Where it hangs. */
  readonly where: string;
  /** Why there, what it spares whom. */
  readonly why: string;
  readonly notes: readonly string[];
}

/** What was searched. */
export interface SiteTried {
  readonly kinds: readonly ClothKind[];
  readonly sizes: readonly ClothSize[];
  readonly heights: readonly number[];
  readonly densities: readonly number[];
  readonly turns: number;
  readonly step: number;
  /** Places on the lattice, allowed or not. */
  readonly candidates: number;
  /** Places tried between the steps. */
  readonly between: number;
  /**
   * How far the harm of beds, sampled for the search, is off that of all their cells: without cloth, and at most in the
   * options shown. [K·h/day]
   */
  readonly bedSampleError: number;
}

/** `site --json`. */
export interface SiteResult {
  /** In the order in which they are advised: most for money, most, least; none that another beats in both. */
  readonly options: readonly SiteOption[];
  /** No place on the lattice spares more of all that is planted; between its steps one may. [K·h/day] */
  readonly bound: number;
  /** Whether no place on the lattice spares more than the best: of several together nobody knows. */
  readonly proven: boolean;
  readonly tried: SiteTried;
  /** Σ worth × harm of the plants that count, as the yard is. [K·h/day] */
  readonly harm: number;
  /** Ids of the plants that one or another of the answers serves. */
  readonly served: readonly string[];
  readonly uncounted: readonly Uncounted[];
  /** Ids of plants that count though nothing speaks for cloth over them: the person says so. */
  readonly countedAllTheSame: readonly Uncounted[];
  readonly pricedFor: PricedFor;
  readonly rules: readonly RulePrice[];
  /** What the best screen and the best roof of these options do; cheaper cures stand before them in the ladder. */
  readonly ladder: readonly LadderStep[];
  /** Onlookers from whom nothing can be hidden here, a sentence each. */
  readonly unhidden: readonly string[];
  /** What was not tried. */
  readonly notes: readonly string[];
  /** Beside the answers: why there are none, that none is worth building; "": nothing. */
  readonly besides: string;
  /** The answer in a sentence or two, with all that is to be said beside it. */
  readonly sentence: string;
}

/** What a roof of one height and density would spare through each cell of its plane, if it hung there alone. */
export interface PayoffMap {
  readonly grid: GridSpec;
  /** [K·h/day per m²] index = j·columns + i */
  readonly perArea: Float64Array;
  readonly most: number;
}
