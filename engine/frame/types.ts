/**
 * The build sheet as data: how to build a canopy's or a screen's frame, what to buy, and what to mind.
 * Metres, kilograms, newtons, m/s unless a name says otherwise. Sentences are in the plan's `units`.
 */

import type { Problem } from '../plan/types.ts';
import type { CutPlan, CutTube } from './cuts/types.ts';
import type { AsBuiltField, Fitting, FrameDrawing, Piece, SettingOut, SocketCheck } from './layout/types.ts';
import type { ClothPlan, Cost } from './shop/types.ts';
import type { AnchorPlan, PostStrength, Span, StormPlan, TubeSummary, UpliftPlan } from './strength/types.ts';
import type { Caution, HourRange, Step, Tool, WorkEstimate } from './work/types.ts';

export interface BuildSheet {
  readonly id: string;
  readonly name: string;
  readonly kind: 'canopy' | 'screen';
  readonly pieces: readonly Piece[];
  readonly cuts: readonly CutTube[];
  readonly fittings: readonly Fitting[];
  readonly cloth: ClothPlan;
  /** Tie points, spares not counted. */
  readonly clips: number;
  readonly anchors: AnchorPlan;
  readonly uplift: UpliftPlan;
  readonly cost: Cost;
  /** By how much it is dearer than the plan's budget, in a sentence; `null`: it is not. */
  readonly overBudget: string | null;
  readonly steps: readonly Step[];
  readonly cautions: readonly Caution[];
  readonly tube: TubeSummary;
  /** Tubes by socket ends, screws by sockets. */
  readonly sockets: SocketCheck;
  readonly cutting: CutPlan;
  readonly spans: readonly Span[];
  readonly post: PostStrength;
  readonly settingOut: SettingOut;
  readonly tools: readonly Tool[];
  readonly work: WorkEstimate;
  readonly storm: StormPlan;
  readonly asBuilt: readonly AsBuiltField[];
  readonly drawing: FrameDrawing;
  /** Remarks and warnings about this frame, worst first. */
  readonly notes: readonly string[];
}

export type SheetResult =
  | { readonly ok: true; readonly sheet: BuildSheet }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export type CostResult =
  | { readonly ok: true; readonly cost: Cost; readonly hours: HourRange }
  | { readonly ok: false; readonly problems: readonly Problem[] };
