/** What a frame consists of and where it stands: pieces, joints, places of its posts, drawing. */

import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { DropSide, PlanPoint } from '../../plan/types.ts';

/** Tubes of one part cut to one length, centre-line model: centre to centre less the take-off at both ends. */
export interface Piece {
  /** What it is called: its kind, with which way it runs or where it stands. */
  readonly part: string;
  readonly kind: TubeKind;
  readonly length: number;
  readonly count: number;
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
  | 'wall bracket'
  | 'foot';

export type TubeKind = 'top rail' | 'low rail' | 'post' | 'brace' | 'stay';

/** A joint as it is asked for in a shop. */
export type JointName = JointKind | `${JointKind}, adjustable`;

/** Joints of one kind. Each socket takes one tube end; a clamp's own tube runs through it and takes no socket. */
export interface Fitting {
  readonly joint: JointKind;
  /** Where the frame slopes or turns. */
  readonly adjustable: boolean;
  /** Its name for the shop, made of the two. */
  readonly kind: JointName;
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

/** A corner that stays put, to measure from. */
export interface FixedPoint {
  readonly label: 'A' | 'B';
  readonly at: PlanPoint;
  readonly what: string;
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
  /** A bracket on a wall, no post. */
  readonly onWall: boolean;
  /** What already stands there, `null` when it is free. */
  readonly blockedBy: string | null;
  /** Whether its hole would come too near to a wall. */
  readonly tightHole: boolean;
  readonly notes: readonly string[];
}

export interface Diagonal {
  readonly from: string;
  readonly to: string;
  readonly length: number;
}

/** What stands round a frame, for a drawing to find one's way by. */
export interface Surrounding {
  readonly kind: 'building' | 'wall' | 'property line';
  /** `null` where it has none of its own. */
  readonly name: string | null;
  readonly path: readonly PlanPoint[];
  readonly closed: boolean;
}

export interface SettingOut {
  readonly fixed: readonly FixedPoint[];
  readonly posts: readonly PostPlace[];
  readonly diagonals: readonly Diagonal[];
  readonly around: readonly Surrounding[];
  /** True bearing of the plan's +y. [°] */
  readonly upBearing: number;
  readonly sentence: string;
}

export interface AsBuiltField {
  readonly id: string;
  /** Id of the post. */
  readonly post: string;
  /** A height is read to the millimetre, a tape from a fixed point to the centimetre. */
  readonly measures: 'height' | 'distance';
  readonly label: string;
  readonly planned: number;
}

/** What a length of the drawing measures: whole sides, between posts next to each other, or from the ground up. */
export type DimensionKind =
  | 'width'
  | 'length'
  | 'diagonal'
  | 'bay'
  | 'bay crosswise'
  | 'bay lengthwise'
  | 'height'
  | 'height in front';

/**
 * Lines of the frame in its own axes: x along the width, y along the length, z up; the back left post's foot is the
 * origin.
 */
export interface FrameDrawing {
  readonly posts: readonly { readonly id: string; readonly foot: SpacePoint; readonly top: SpacePoint }[];
  readonly tubes: readonly {
    readonly part: string;
    readonly kind: TubeKind;
    readonly from: SpacePoint;
    readonly to: SpacePoint;
  }[];
  readonly cloths: readonly { readonly where: ClothPlace; readonly corners: readonly SpacePoint[] }[];
  readonly dimensions: readonly {
    readonly kind: DimensionKind;
    readonly label: string;
    readonly from: SpacePoint;
    readonly to: SpacePoint;
    readonly length: number;
  }[];
}

export type ClothForm = 'roof' | 'screen' | 'drop';
/** What a cloth is called. */
export type ClothPlace = Exclude<ClothForm, 'drop'> | `drop ${DropSide}`;
