/** Joints by kind and count, and the check that no tube end is left over. */

import { spaceDistance } from '../../plan/geometry/vectors.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { FrameJoint, FrameModel } from './model.ts';
import type { Fitting, JointKind, JointName, Piece, SocketCheck, TubeKind } from './types.ts';

/**
 * Tube ends that each kind of joint takes. A clamp slides on a tube that runs through it and takes the end of another.
 */
const SOCKETS: Readonly<Record<JointKind, number>> = {
  '2-way corner': 2,
  '3-way corner': 3,
  '3-way tee': 3,
  '4-way': 4,
  '5-way': 5,
  'flat 4-way cross': 4,
  'side clamp': 1,
  'brace clamp': 1,
  'wall bracket': 0,
  foot: 1,
};

const JOINT_WORDS: Readonly<Record<JointKind, string>> = {
  '2-way corner': 'one rail and one post, or two rails at a wall',
  '3-way corner': 'two rails and one post',
  '3-way tee': 'two rails in line and a post between them',
  '4-way': 'three rails (two in line) and a post',
  '5-way': 'four rails crossing over a post',
  'flat 4-way cross': 'four rails crossing in one plane, no post',
  'side clamp': 'closes round a post anywhere and takes the end of a rail',
  'brace clamp': 'closes round a tube anywhere and takes the end of a brace at an angle',
  'wall bracket': 'plate for the wall with a ring that the rail runs through; screws and plugs by whoever fixes it',
  foot: 'plate with one socket',
};

/** What joints of a kind do, in words for the shop. */
export function jointWords({ joint, adjustable }: Pick<Fitting, 'joint' | 'adjustable'>): string {
  return `${JOINT_WORDS[joint]}${adjustable ? ', at an angle' : ''}`;
}

export function socketsOf(kind: JointKind): number {
  return SOCKETS[kind];
}

/** The name of a joint with what must be said when it is bought. */
function jointName(joint: JointKind, adjustable: boolean): JointName {
  return adjustable ? `${joint}, adjustable` : joint;
}

/** In the order of the list of kinds, square ones before adjustable ones. */
export function fittingsOf(joints: readonly FrameJoint[]): Fitting[] {
  const fittings: Fitting[] = [];
  for (const joint of Object.keys(SOCKETS) as JointKind[]) {
    for (const adjustable of [false, true]) {
      const count = joints.filter((one) => one.kind === joint && one.adjustable === adjustable).length;
      if (count > 0)
        fittings.push({ joint, adjustable, kind: jointName(joint, adjustable), count, socketsEach: SOCKETS[joint] });
    }
  }
  return fittings;
}

/** Σ sockets + ends in the ground = 2 × tubes. */
export function checkSockets(model: FrameModel): SocketCheck {
  const tubes = model.tubes.length;
  const sockets = model.joints.reduce((sum, joint) => sum + SOCKETS[joint.kind], 0);
  return { tubes, sockets, inGround: model.inGround, holds: sockets + model.inGround === 2 * tubes };
}

/** Tubes by part and length, to 0.1 mm, in the order they were laid out. */
export function piecesOf(model: FrameModel): Piece[] {
  const pieces = new Map<string, { part: string; kind: TubeKind; length: number; count: number }>();
  for (const tube of model.tubes) {
    const length = tenthsOf(tube.length) / TENTHS_PER_METRE;
    const key = `${tube.part} ${length}`;
    const piece = pieces.get(key);
    if (piece) piece.count += 1;
    else pieces.set(key, { part: tube.part, kind: tube.kind, length, count: 1 });
  }
  return [...pieces.values()];
}

/**
 * What a clamp slides on is cut so: a saw holds no tenths, and down rather than up, as a brace must not push its post
 * out. [m]
 */
const SLANT_STEP = 0.005;

/** What is cut for a brace or stay between two points of the frame. [m] */
export function slantCut(from: SpacePoint, to: SpacePoint): number {
  const bare = spaceDistance(from, to);
  return bare < SLANT_STEP ? bare : (Math.floor(bare / SLANT_STEP + 1e-6) * tenthsOf(SLANT_STEP)) / TENTHS_PER_METRE;
}

/** Tubes are cut in whole tenths of a millimetre: floating point breaks the fits that are exact. */
export const TENTHS_PER_METRE = 10_000;

export function tenthsOf(metres: number): number {
  return Math.round(metres * TENTHS_PER_METRE);
}
