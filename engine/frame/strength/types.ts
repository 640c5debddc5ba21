/** What the tube bears, what the wind does to the frame, and what holds it down. */

import type { Plan } from '../../plan/types.ts';

export interface TubeSummary {
  readonly id: string;
  readonly name: string;
  readonly outside: number;
  readonly wall: number;
  /** [kg/m] */
  readonly mass: number;
}

type SpanVerdict = 'holds its line' | 'sags';

/** The longest rail of one direction as a beam between two posts. */
export interface Span {
  readonly rail: string;
  readonly span: number;
  /** Under its own weight and the cloth's. [m] */
  readonly sag: number;
  /** span / sag */
  readonly sagRatio: number;
  readonly verdict: SpanVerdict;
  /** Somebody leans on its middle with 200 N (20 kgf): sag [m] and bending stress. [MPa] */
  readonly leaned: { readonly sag: number; readonly stressMPa: number };
  /** Uniform load at which the bending stress reaches the allowable. [N/m] */
  readonly lineLoad: number;
  /** Gusts at which that load is reached with the cloth up, nothing below the roof and blocked below. [m/s] */
  readonly gust: WindRange;
}

/** The tallest post. */
export interface PostStrength {
  readonly height: number;
  /**
   * Held at its foot only, as a post of screwed joints is, and pushed sideways at its top with 100 N (10 kgf): how far
   * it gives [m] and its bending stress. [MPa]
   */
  readonly leaned: { readonly sag: number; readonly stressMPa: number };
  /** Its bending stress under the same push with what braces or stays it [MPa]; `null` where a way is left free. */
  readonly bracedMPa: number | null;
  /** Nominal strength downwards, and what it carries of tube and wet cloth. [N] */
  readonly strength: number;
  readonly load: number;
}

/** From the kindest case (nothing under or beside the roof) to the hardest (wind caught below it). */
export interface WindRange {
  readonly clear: number;
  readonly blocked: number;
}

export type GroundKind = NonNullable<Plan['site']['soil']>;

export type AnchorKind = 'footing' | 'sunk' | 'stakes' | 'augers' | 'ballast';

/** Of one kind of post. */
export interface PostLoad {
  readonly post: string;
  /** Its posts. */
  readonly ids: readonly string[];
  readonly count: number;
  /** Net pull upwards at the design gust, own weight taken off, before the factor. [N] */
  readonly uplift: WindRange;
  /** Dead weight needed, with the factor. [kg] */
  readonly ballast: WindRange;
  /** Weight to provide at each, at the end of the range that counts here. [kg] */
  readonly hold: number;
  /** Its hole; `null` where none is dug. */
  readonly hole: Hole | null;
  /** Stakes, augers or cans at each; 0 where there are none. */
  readonly each: number;
}

/** Filled with concrete. */
export interface Hole {
  readonly diameter: number;
  readonly depth: number;
  readonly volume: number;
}

export interface AnchorPlan {
  readonly ground: GroundKind | null;
  /** What holds it: the plan's wish, or footings where nobody would drive as many stakes. */
  readonly kind: AnchorKind;
  /** What each post needs, at `gust`. */
  readonly gust: number;
  readonly factor: number;
  readonly posts: readonly PostLoad[];
  /** Weight to provide at the worst post. [kg] */
  readonly perPost: number;
  /** Of holes, stakes, augers or cans in all. */
  readonly count: number;
  /** Of all holes; `bag`: dry mix in one. [m³], [kg] */
  readonly concrete: { readonly volume: number; readonly bags: number; readonly bag: number } | null;
  readonly sentences: readonly string[];
}

export interface GustRow {
  readonly gust: number;
  /** [Pa] */
  readonly pressure: number;
  /** [N] */
  readonly uplift: WindRange;
  /** On all drops that one wind can strike, or on the screen. [N] */
  readonly sidePush: number;
}

export interface UpliftPlan {
  /** Of uplift, for a roof; of the push, where cloth stands or hangs. */
  readonly formula: string;
  readonly sideFormula: string | null;
  /** Of the roof. [m²] */
  readonly area: number;
  readonly coefficient: WindRange;
  /** Kp of the covered share. */
  readonly holes: number;
  readonly rows: readonly GustRow[];
  /** What makes it blocked below, in words; empty when clear. */
  readonly blockedBy: readonly string[];
  /** Weight of tube and cloth. [kg] */
  readonly ownWeight: number;
  readonly wording: string;
}

export interface StormPlan {
  readonly designGust: number;
  readonly takeDownGust: number;
  readonly takeDownWhy: string;
  /** What one sees outside then. */
  readonly signs: string;
  readonly sentences: readonly string[];
}
