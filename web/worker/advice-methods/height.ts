import { heightOfEdge, heightOfTop, heightOfTree, slopeFromPole, slopeFromTime } from '../../../engine/index.ts';
import type { ClockTime, CrownShape, Estimate, Finding, Outcome, Site } from '../../../engine/index.ts';

/** How steep the sun is: by the clock, or by a pole and its shadow of the same minute. */
export type SunAsked =
  | { readonly by: 'clock'; readonly when: ClockTime }
  | { readonly by: 'pole'; readonly pole: Estimate; readonly shadow: Estimate };

export type ThingAsked =
  | { readonly kind: 'top' }
  | { readonly kind: 'edge'; /** True bearing from the edge towards its shadow. [°] */ readonly facing: number }
  | { readonly kind: 'tree'; readonly shape: CrownShape; readonly width: Estimate; readonly base: Estimate };

export interface HeightArgs {
  readonly site: Site;
  readonly sun: SunAsked;
  readonly thing: ThingAsked;
  /** From the foot, or the trunk, to the far tip of the shadow. [m] */
  readonly tip: Estimate;
}

export interface HeightAnswer {
  readonly finding: Finding<Estimate>;
  /** tan of the sun's altitude; `null` where it is not known. */
  readonly tangent: number | null;
}

/** A height from its shadow. */
export function height({ site, sun, thing, tip }: HeightArgs): Outcome<HeightAnswer> {
  const slope = sun.by === 'clock' ? slopeFromTime(site, sun.when) : slopeFromPole(sun.pole, sun.shadow);
  if (!slope.ok) return { ok: true, value: { finding: slope, tangent: null } };
  const finding =
    thing.kind === 'tree'
      ? heightOfTree(slope.value, tip, thing.shape, thing.width, thing.base)
      : thing.kind === 'edge'
        ? heightOfEdge(slope.value, tip, thing.facing)
        : heightOfTop(slope.value, tip);
  return { ok: true, value: { finding, tangent: slope.value.tangent.value } };
}
