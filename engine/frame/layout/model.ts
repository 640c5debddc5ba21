/** A frame as posts, tubes and joints, before anything is bought: what canopies and screens have in common. */

import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import { refusal } from '../../plan/problems.ts';
import type { Cloth, Plan, PlanPoint, StockTube } from '../../plan/types.ts';
import { shownName } from '../../plan/words/shown-name.ts';
import type { TubeSection } from '../strength/tube.ts';
import type { AnchorKind, GroundKind } from '../strength/types.ts';
import type { ClothForm, ClothPlace, JointKind, TubeKind } from './types.ts';

export interface FramePost {
  readonly id: string;
  readonly role: 'corner' | 'edge' | 'inner' | 'end';
  /** Foot, in the frame's own axes. [m] */
  readonly at: readonly [x: number, y: number];
  /** Of the joint on its top. [m] */
  readonly height: number;
  /** Share of the cloth's pull that it holds down; shares add up to 1. */
  readonly share: number;
  /** No post: a bracket on a wall, at the rail's height. */
  readonly onWall?: true;
}

export interface FrameTube {
  readonly part: string;
  readonly kind: TubeKind;
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
  readonly kind: ClothForm;
  readonly where: ClothPlace;
  /** Size of the opening that it fills, along × across, tube centre to tube centre. [m] */
  readonly opening: readonly [number, number];
  /** Bays of each: a tie sits at every post. */
  readonly bays: readonly [number, number];
  readonly density: number;
  readonly corners: readonly SpacePoint[];
  /** Ids of the posts that it hangs between; `null` for a roof. */
  readonly between: readonly [string, string] | null;
}

/** Cloth that stands in the wind, and where the push acts. */
export interface StandingCloth {
  /** What the push runs along: cloths pushed alike are struck by one wind. */
  readonly pushed: 'along the width' | 'along the length' | 'across the screen';
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
  /** Whether there is a way in which nothing but its foot holds a post upright. */
  readonly freeTops: boolean;
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
  /** Dry concrete in a bag. [kg] */
  readonly bag: number;
  /** [m/s] */
  readonly gust: number;
  readonly notes: readonly string[];
}

/** Its posts without the brackets that stand in for some on a wall. */
export function postsOnGround({ posts }: FrameModel): FramePost[] {
  return posts.filter(({ onWall }) => onWall !== true);
}

/** Of the tallest post on the ground. [m] */
export function tallestPost(model: FrameModel): number {
  return Math.max(...postsOnGround(model).map(({ height }) => height));
}

/** What to call a canopy or screen in a sentence. */
export function frameName(thing: Cloth): string {
  return shownName(thing.name ?? `The ${thing.kind} "${thing.id}"`);
}

/** Why a frame cannot be built. @param key of the canopy or screen that is to blame */
export function refuseFrame(plan: Plan, { id }: Cloth, key: string, message: string): ReturnType<typeof refusal> {
  const index = plan.features.findIndex((feature) => feature.id === id);
  return refusal(index < 0 ? '/features' : `/features/${index}/${key}`, message);
}
