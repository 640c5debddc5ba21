/**
 * The build sheet as data: how to build a canopy's or a screen's frame, what to buy, and what to mind.
 * Metres, kilograms, newtons, m/s unless a name says otherwise. Sentences are in the plan's `units`.
 */
import type { SpacePoint } from '../plan/geometry/shapes.ts';
import type { DropSide, PlanPoint, Problem } from '../plan/types.ts';

/** Tubes of one part cut to one length, centre-line model: centre to centre less the take-off at both ends. */
export interface Piece {
  readonly part: string;
  readonly length: number;
  readonly count: number;
}

/** One tube as bought and what is cut from it: pieces + lost + left = stock. */
export interface CutTube {
  readonly tube: string;
  readonly stock: number;
  readonly pieces: readonly number[];
  /** Turned to chips by the saw. [m] */
  readonly lost: number;
  readonly left: number;
}

export type JointKind =
  | '2-way corner'
  | '3-way corner'
  | '3-way tee'
  | '4-way'
  | '5-way'
  | 'flat 4-way cross'
  | 'side clamp'
  | 'brace clamp'
  | 'foot';

/** Joints of one kind. Each socket takes one tube end; a clamp's own tube runs through it and takes no socket. */
export interface Fitting {
  /** A `JointKind`, with ", adjustable" where the frame slopes or turns. */
  readonly kind: string;
  readonly count: number;
  readonly socketsEach: number;
}

/** Every tube end sits in exactly one socket or in the ground: sockets + inGround = 2 × tubes. */
export interface SocketCheck {
  readonly tubes: number;
  readonly sockets: number;
  readonly inGround: number;
  readonly holds: boolean;
}

export interface CutPlan {
  readonly tubes: readonly CutTube[];
  readonly kerf: number;
  /** What was made smallest. */
  readonly counted: 'tubes' | 'price' | 'length';
  /** Whether no cheaper way of cutting exists; otherwise `bound` is how little `amount` could be at best. */
  readonly proven: boolean;
  readonly bound: number;
  /** Of all tubes, in the unit of `counted`: a number, money, or metres. */
  readonly amount: number;
  readonly savings: readonly CutSaving[];
}

/** A small change that would save tubes, or their price where the shop sells several lengths. */
export interface CutSaving {
  readonly change: string;
  readonly tubes: number;
  /** `null` where not every length has a price. */
  readonly money: number | null;
}

export interface TubeSummary {
  readonly id: string;
  readonly name: string;
  readonly outside: number;
  readonly wall: number;
  /** [kg/m] */
  readonly mass: number;
}

export type SpanVerdict = 'holds its line' | 'sags';

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

/** The tallest post, held at its foot only, as a post of screwed joints is. */
export interface PostStrength {
  readonly height: number;
  /** Pushed sideways at its top with 100 N (10 kgf): how far it gives [m] and its bending stress. [MPa] */
  readonly leaned: { readonly sag: number; readonly stressMPa: number };
  /** Nominal strength downwards, and what it carries of tube and wet cloth. [N] */
  readonly strength: number;
  readonly load: number;
}

/** From the kindest case (nothing under or beside the roof) to the hardest (wind caught below it). */
export interface WindRange {
  readonly clear: number;
  readonly blocked: number;
}

export interface ClothPiece {
  readonly where: 'roof' | 'screen' | `drop ${DropSide}`;
  /** As it hangs, along × across. [m] */
  readonly finished: readonly [number, number];
  /** As cut from the roll, hems and laps included. [m] */
  readonly cut: readonly [number, number];
  readonly density: number;
  readonly buy: 'ready-made' | 'from the roll';
  /** Width of the roll or panel. [m] */
  readonly rollWidth: number;
  readonly strips: number;
  readonly seams: number;
  /** Length to buy off the roll. [m] */
  readonly rollLength: number;
  readonly ties: number;
  readonly direction: string;
  /** Ids of the posts that it hangs between; `null` for a roof. */
  readonly between: readonly [string, string] | null;
}

export interface FrostCloth {
  /** One sheet over the roof and down to the ground all round. [m] */
  readonly cut: readonly [number, number];
  readonly weights: number;
  readonly sentence: string;
}

export interface ClothPlan {
  readonly pieces: readonly ClothPiece[];
  readonly area: number;
  /** Gap between cloth and tube on each side, filled by the ties. [m] */
  readonly gap: number;
  readonly tieSpacing: number;
  /** Inward pull of a taut cloth on its rails, and at which gust. [N/m], [m/s] */
  readonly pull: { readonly perMetre: number; readonly sag: number; readonly gust: number };
  readonly notes: readonly string[];
  readonly frost: FrostCloth | null;
}

export type GroundKind = 'garden' | 'hard' | 'loose' | 'wet' | 'paving' | 'wheels';
export type AnchorKind = 'footing' | 'sunk' | 'stakes' | 'augers' | 'ballast';

export interface PostLoad {
  readonly post: string;
  readonly count: number;
  /** Net pull upwards at the design gust, own weight taken off, before the factor. [N] */
  readonly uplift: WindRange;
  /** Dead weight needed, with the factor. [kg] */
  readonly ballast: WindRange;
}

export interface AnchorPlan {
  readonly ground: GroundKind | null;
  readonly kind: AnchorKind;
  /** What each post needs, at `gust`. */
  readonly gust: number;
  readonly factor: number;
  readonly posts: readonly PostLoad[];
  /** Weight to provide at the worst post, and what it comes to. [kg] */
  readonly perPost: number;
  readonly count: number;
  readonly footing: {
    readonly diameter: number;
    readonly depth: number;
    readonly volume: number;
    readonly totalVolume: number;
    readonly bags: number;
  } | null;
  readonly ballast: { readonly litresOfWater: number; readonly slabs: number; readonly sandbags: number } | null;
  readonly sentences: readonly string[];
}

export interface GustRow {
  readonly gust: number;
  readonly kmh: number;
  readonly mph: number;
  /** [Pa] */
  readonly pressure: number;
  /** [N] */
  readonly uplift: WindRange;
  /** [kgf] */
  readonly upliftKgf: WindRange;
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
  readonly sources: readonly string[];
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

export interface CostItem {
  readonly id: string;
  readonly aisle: string;
  readonly name: string;
  /** What the frame takes, and what is bought: spares and whole packs. Cloth in m². */
  readonly need: number;
  readonly count: number;
  readonly unit: string;
  /** Pieces in a pack, 1 where sold singly. */
  readonly pack: number;
  /** Of a tube. [m] */
  readonly length?: number;
  readonly price: number | null;
  readonly amount: number | null;
  readonly priceFrom: 'yours' | 'example' | 'none';
  /**
   * Key of the plan's `stock.prices` that sets it; `null` where the stock list itself holds the price (tubes, own
   * cloth).
   */
  readonly priceKey: string | null;
}

export interface Cost {
  readonly currency: string;
  /** Sum of the items that have a price; `null` when none has. */
  readonly total: number | null;
  readonly items: readonly CostItem[];
  /** Names of the items without a price. */
  readonly missing: readonly string[];
  readonly note: string;
}

export interface Step {
  readonly id: string;
  readonly text: string;
  /** Ids of the shopping list and of the tools that it takes. */
  readonly needs: readonly string[];
  /** Ids of the cautions that go with it. */
  readonly cautions: readonly string[];
}

export interface Tool {
  readonly id: string;
  readonly name: string;
}

/** What somebody is about to do, so that the right cautions stand beside it. */
export type RiskyTask = 'build' | 'dig' | 'climb' | 'cut' | 'wind' | 'heat' | 'cloth' | 'drape' | 'spray' | 'winter';

export interface Caution {
  readonly id: string;
  readonly tasks: readonly RiskyTask[];
  /** A stop: not to go on before it is answered. */
  readonly stop: boolean;
  readonly text: string;
}

/** A corner that stays put, to measure from. */
export interface FixedPoint {
  readonly label: 'A' | 'B';
  readonly at: PlanPoint;
  readonly what: string;
}

/** How many hands and hours, an estimate of this project's own. */
export interface WorkEstimate {
  readonly people: number;
  /** Person-hours, from someone who has done it before to someone who has not. */
  readonly parts: readonly { readonly what: string; readonly hours: HourRange }[];
  readonly hours: HourRange;
  /** Cool mornings of four hours for that many people. */
  readonly mornings: HourRange;
  readonly sentences: readonly string[];
}

export interface HourRange {
  readonly low: number;
  readonly high: number;
}

export interface PostPlace {
  readonly id: string;
  readonly at: PlanPoint;
  /** Height of the cloth's frame there. [m] */
  readonly height: number;
  readonly fromA: number;
  readonly fromB: number;
  /** Standing at A and looking at B. */
  readonly hand: 'left' | 'right' | 'on the line';
  /** What already stands there, `null` when it is free. */
  readonly blockedBy: string | null;
  readonly notes: readonly string[];
}

export interface Diagonal {
  readonly from: string;
  readonly to: string;
  readonly length: number;
}

export interface SettingOut {
  readonly fixed: readonly FixedPoint[];
  readonly posts: readonly PostPlace[];
  readonly diagonals: readonly Diagonal[];
  readonly sentence: string;
}

export interface AsBuiltField {
  readonly id: string;
  /** A height is read to the millimetre, a tape from a fixed point to the centimetre. */
  readonly measures: 'height' | 'distance';
  readonly label: string;
  readonly planned: number;
}

/** What a length of the drawing measures: whole sides, between posts next to each other, or from the ground up. */
export type DimensionKind =
  'width' | 'length' | 'diagonal' | 'bay' | 'bay crosswise' | 'bay lengthwise' | 'height' | 'height in front';

/**
 * Lines of the frame in its own axes: x along the width, y along the length, z up; the back left post's foot is the
 * origin.
 */
export interface FrameDrawing {
  readonly posts: readonly { readonly id: string; readonly foot: SpacePoint; readonly top: SpacePoint }[];
  readonly tubes: readonly { readonly part: string; readonly from: SpacePoint; readonly to: SpacePoint }[];
  readonly cloths: readonly { readonly where: ClothPiece['where']; readonly corners: readonly SpacePoint[] }[];
  readonly dimensions: readonly {
    readonly kind: DimensionKind;
    readonly label: string;
    readonly from: SpacePoint;
    readonly to: SpacePoint;
    readonly length: number;
  }[];
}

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
  { readonly ok: true; readonly sheet: BuildSheet } | { readonly ok: false; readonly problems: readonly Problem[] };
export type CostResult =
  | { readonly ok: true; readonly cost: Cost; readonly hours: HourRange }
  | { readonly ok: false; readonly problems: readonly Problem[] };
