import type { ClockTime, CrownShape, Site } from '../../plan/types.ts';
import type { Estimate, Finding } from '../estimate.ts';
import { heightOfEdge, heightOfTop, heightOfTree, slopeFromPole, slopeFromTime } from './height.ts';

/** How steep the sun is: by the clock, or by a pole and its shadow of the same minute. */
type SunAsked =
  | { readonly by: 'clock'; readonly when: ClockTime }
  | { readonly by: 'pole'; readonly pole: Estimate; readonly shadow: Estimate };

type ThingAsked =
  | { readonly kind: 'top' }
  | { readonly kind: 'edge'; /** True bearing from the edge towards its shadow. [°] */ readonly facing: number }
  | { readonly kind: 'tree'; readonly shape: CrownShape; readonly width: Estimate; readonly base: Estimate };

export interface ShadowSeen {
  readonly site: Site;
  readonly sun: SunAsked;
  readonly thing: ThingAsked;
  /** From the foot, or the trunk, to the far tip of the shadow. [m] */
  readonly tip: Estimate;
}

export interface HeightFound {
  readonly finding: Finding<Estimate>;
  /** tan of the sun's altitude; `null` where it is not known. */
  readonly tangent: number | null;
}

/** A height from its shadow. */
export function heightFromShadow({ site, sun, thing, tip }: ShadowSeen): HeightFound {
  const slope = sun.by === 'clock' ? slopeFromTime(site, sun.when) : slopeFromPole(sun.pole, sun.shadow);
  if (!slope.ok) return { finding: slope, tangent: null };
  const finding =
    thing.kind === 'tree'
      ? heightOfTree(slope.value, tip, thing.shape, thing.width, thing.base)
      : thing.kind === 'edge'
        ? heightOfEdge(slope.value, tip, thing.facing)
        : heightOfTop(slope.value, tip);
  return { finding, tangent: slope.value.tangent.value };
}
