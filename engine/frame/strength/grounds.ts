/** Kinds of ground and ways of anchoring: the words of a frame's `soil` and `anchor`, and what to call them. */

import type { AnchorKind, GroundKind } from './types.ts';

const GROUNDS: Readonly<Record<GroundKind, string>> = {
  garden: 'garden soil',
  hard: 'hard ground or caliche',
  loose: 'loose, sandy or freshly dug soil',
  wet: 'wet ground',
  paving: 'paving',
  wheels: 'a floor that must stay free of fixings',
};

/** What a thin steel rod pushed in by hand meets tells the ground well enough for a first price. */
export const ROD_MEETS = { soft: 'loose', firm: 'garden', rock: 'hard', paving: 'paving' } as const satisfies Readonly<
  Record<string, GroundKind>
>;

const ANCHORS: Readonly<Record<AnchorKind, string>> = {
  footing: 'feet bolted to concrete footings',
  sunk: 'posts set in concrete',
  stakes: 'rebar stakes and straps',
  augers: 'garden augers and straps',
  ballast: 'weights on the ground',
};

/** The ground in words. */
export function groundName(ground: GroundKind): string {
  return GROUNDS[ground];
}

/** Ground that nothing is dug or driven into. */
export function isFloor(ground: GroundKind): ground is 'paving' | 'wheels' {
  return ground === 'paving' || ground === 'wheels';
}

/** Where a post stands, in words: "in garden soil", "on paving". */
export function groundPlace(ground: GroundKind): string {
  return `${isFloor(ground) ? 'on' : 'in'} ${GROUNDS[ground]}`;
}

/** Every kind of ground that anchors can be worked out for. */
export const GROUND_KINDS = Object.keys(GROUNDS) as readonly GroundKind[];

/** Every way of anchoring. */
export const ANCHOR_KINDS = Object.keys(ANCHORS) as readonly AnchorKind[];

/** A way of anchoring in words. */
export function anchorName(anchor: AnchorKind): string {
  return ANCHORS[anchor];
}
