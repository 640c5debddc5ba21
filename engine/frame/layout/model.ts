/** A frame as posts, tubes and joints, before anything is bought: what canopies and screens have in common. */
import type { SpacePoint } from '../../plan/geometry/shapes.ts';
import type { Canopy, Plan, PlanPoint, Problem, Screen, StockTube } from '../../plan/types.ts';
import { MAX_BAY } from './bays.ts';
import { ANCHOR_KINDS, GROUND_KINDS, groundName } from '../strength/grounds.ts';
import { tubeChoice } from '../shop/stock.ts';
import { sectionOf } from '../strength/tube.ts';
import type { TubeSection } from '../strength/tube.ts';
import type { AnchorKind, ClothPiece, GroundKind, JointKind } from '../types.ts';

export interface FramePost {
  readonly id: string;
  readonly role: 'corner' | 'edge' | 'inner' | 'end';
  /** Foot, in the frame's own axes. [m] */
  readonly at: readonly [x: number, y: number];
  /** Of the joint on its top. [m] */
  readonly height: number;
  /** Share of the cloth's pull that it holds down; shares add up to 1. */
  readonly share: number;
}

export interface FrameTube {
  readonly part: string;
  readonly kind: 'top rail' | 'low rail' | 'post' | 'brace';
  readonly from: SpacePoint;
  readonly to: SpacePoint;
  /** To cut. [m] */
  readonly length: number;
}

export interface FrameJoint {
  readonly kind: JointKind;
  readonly adjustable: boolean;
  readonly at: SpacePoint;
}

/** A rail between two posts and what pulls on it. */
export interface FrameRail {
  readonly name: string;
  readonly span: number;
  /** Width of cloth that hangs on it and pulls on it. [m] */
  readonly tributary: number;
  /** What hangs from it and pushes it sideways; `null` for most rails. [m] */
  readonly drop: { readonly depth: number; readonly density: number } | null;
}

export interface FrameCloth {
  readonly where: ClothPiece['where'];
  /** Size of the opening that it fills, along × across, tube centre to tube centre. [m] */
  readonly opening: readonly [number, number];
  readonly density: number;
  readonly corners: readonly SpacePoint[];
  /** Ids of the posts that it hangs between; `null` for a roof. */
  readonly between: readonly [string, string] | null;
}

/** Cloth that stands in the wind, and where the push acts. */
export interface StandingCloth {
  readonly where: ClothPiece['where'];
  readonly area: number;
  readonly density: number;
  /** Height of its middle. [m] */
  readonly height: number;
  /** Horizontal distance between the rows of posts that take the push, 0 for a single row. [m] */
  readonly base: number;
  /** Posts in the row that the push would lift. */
  readonly posts: number;
}

export interface FrameModel {
  readonly kind: 'canopy' | 'screen';
  readonly posts: readonly FramePost[];
  readonly tubes: readonly FrameTube[];
  readonly joints: readonly FrameJoint[];
  /** Tube ends that stand in the ground. */
  readonly inGround: number;
  readonly rails: readonly FrameRail[];
  readonly cloths: readonly FrameCloth[];
  readonly standing: readonly StandingCloth[];
  /** Of the roof's own cloth, along its slope; 0 for a screen. [m²] */
  readonly roofArea: number;
  readonly pitchDeg: number;
  readonly braced: boolean;
  /** Own axes to the plan. */
  readonly toPlan: (point: readonly [number, number]) => PlanPoint;
  /** Remarks about how the frame was laid out. */
  readonly notes: readonly string[];
}

/** How a frame is to be built: what the plan says, else the defaults. */
export interface FrameBrief {
  readonly tube: StockTube;
  readonly section: TubeSection;
  /** Every length in which the tube is sold, shortest first. */
  readonly lengths: readonly StockTube[];
  /** Whether they are out of the plan's own stock list, prices too. */
  readonly ownTubes: boolean;
  readonly maxBay: number;
  readonly takeOff: number;
  readonly bottomRails: boolean;
  readonly braces: boolean;
  readonly ground: GroundKind | null;
  readonly anchor: AnchorKind;
  /** [m/s] */
  readonly gust: number;
  readonly notes: readonly string[];
}

/** Gust to anchor for where nobody named one: 72 km/h, this project's own. [m/s] */
const DEFAULT_GUST = 20;

/** Reads a canopy's or screen's `frame`, or says why it cannot be built. */
export function briefOf(
  thing: Canopy | Screen,
  plan: Plan,
): { ok: true; brief: FrameBrief } | { ok: false; problems: readonly Problem[] } {
  const frame = thing.frame ?? {};
  const choice = tubeChoice(plan, frame.tube);
  if (choice === null) {
    const message =
      frame.tube === undefined
        ? 'The stock list has no tube to build with.'
        : `${nameOf(thing)} is to be built of tube "${frame.tube}", but the stock list has none of that name.`;
    return { ok: false, problems: [{ pointer: pointerOf(plan, thing.id, 'frame/tube'), message, severity: 'error' }] };
  }
  const takeOff = frame.takeOff ?? 0;
  const longest = choice.lengths[choice.lengths.length - 1].length;
  const ground = GROUND_KINDS.find((kind) => kind === frame.soil) ?? null;
  const onGround = ground === 'paving' || ground === 'wheels';
  const asked = ANCHOR_KINDS.find((kind) => kind === frame.anchor);
  const anchor = asked ?? (onGround ? 'ballast' : thing.kind === 'screen' ? 'sunk' : 'footing');
  const onRails = thing.kind === 'canopy' && (frame.bottomRails ?? false) && asked === 'sunk';
  const cannotDig = onGround && anchor !== 'ballast';
  const notes: string[] = [];
  if (frame.soil !== undefined && ground === null)
    notes.push(
      `The ground is noted as "${frame.soil}", which says too little about what holds in it: choose one of the ` +
        `kinds of ground.`,
    );
  if (frame.anchor !== undefined && asked === undefined)
    notes.push(
      `"${frame.anchor}" is not a way of anchoring that this sheet can work out; it shows the usual one for ` +
        `the ground.`,
    );
  if (onRails && !cannotDig)
    notes.push('Posts on bottom rails cannot stand in the ground: the rails are bolted down to footings.');
  if (cannotDig)
    notes.push(`Nothing can be dug or driven into ${groundName(ground)}, so the posts are held down by weight.`);
  return {
    ok: true,
    brief: {
      tube: choice.tube,
      section: sectionOf(choice.tube.outside, choice.tube.wall),
      lengths: choice.lengths,
      ownTubes: choice.own,
      maxBay: frame.maxBay ?? Math.min(MAX_BAY, longest + 2 * takeOff),
      takeOff,
      bottomRails: thing.kind === 'canopy' && (frame.bottomRails ?? false),
      braces: frame.braces ?? false,
      ground,
      anchor: cannotDig ? 'ballast' : onRails ? 'footing' : anchor,
      gust: frame.gust ?? plan.climate.gust ?? DEFAULT_GUST,
      notes,
    },
  };
}

/** What to call a canopy or screen in a sentence. */
export function nameOf(thing: Canopy | Screen): string {
  return thing.name ?? `The ${thing.kind} "${thing.id}"`;
}

/** JSON Pointer of a key of a feature, or of the feature list when it is not in it. */
export function pointerOf(plan: Plan, id: string, key: string): string {
  const index = plan.features.findIndex((feature) => feature.id === id);
  return index < 0 ? '/features' : `/features/${index}/${key}`;
}
