/** How patches are lit in a yard as it stands: each is cast when it is first looked at, for all the days at once. */

import type { Directions } from '../../../cast/passes.ts';
import { createStandingCaster, type PointCaster } from '../../../cast/points/point-caster.ts';
import { Change } from '../../../cast/points/remembering-caster.ts';
import { type Standing, standingSolids } from '../../../cast/points/standing.ts';
import { dot, type SpacePoint } from '../../../plan/geometry/vectors.ts';
import { isBefore, reachOf } from '../../../scene/between.ts';
import type { Faces } from '../../../scene/faces/faces.ts';
import type { FacePatch } from '../../../scene/faces/patches.ts';
import type { Scene } from '../../../scene/solids.ts';
import type { Facing, LitDays } from './lit-days.ts';
import { type FaceLights, litPatch, outOf, type PatchLight } from './patch-light.ts';

/** Casts what reaches patches from the sun before a face. */
interface FaceCaster {
  readonly caster: PointCaster;
  readonly standing: readonly Standing[];
  readonly directions: Directions;
  /** Against the yard that is like it. */
  change: Change | null;
}

/** Lights of a yard as it stands. */
export class CastLights implements FaceLights {
  readonly days: LitDays;
  /** Of a yard with the very same faces and suns: what reaches a patch is cast only where it may be another. */
  readonly like: CastLights | undefined;
  private readonly scene: Scene;
  private readonly faces: Faces;
  private readonly near: CastLights | undefined;
  private readonly lights: (PatchLight | undefined)[] = [];
  /** By the way out of each face. */
  private readonly casters = new Map<SpacePoint, FaceCaster>();
  private readonly standing = new Map<Facing, readonly Standing[]>();
  /** The lights by their patches' places, once another yard asked. */
  private byPlace: Map<string, PatchLight> | null = null;

  /**
   * @param near of a yard that differs in little: what reaches patches that stand there as well is taken from it,
   *   though it may be a little another
   */
  constructor(scene: Scene, faces: Faces, days: LitDays, like?: CastLights, near?: CastLights) {
    this.scene = scene;
    this.faces = faces;
    this.days = days;
    this.like = like;
    this.near = near;
  }

  of(index: number): PatchLight {
    return (this.lights[index] ??= this.cast(index));
  }

  private cast(index: number): PatchLight {
    const patch = this.faces.patch(index);
    const known = this.like?.lights[index];
    const untouched = known && this.isAsInLike(patch) ? known : this.near?.at(patch);
    const shares = untouched?.shares ?? this.castShares(patch);
    // Much that may be in the way is not.
    const like = untouched ?? (known && isSame(known.shares, shares) ? known : undefined);
    const isSameDay = like === known && this.like?.days.isLike(this.days);
    const isKept = like?.reflects === patch.reflects && (like !== known || isSameDay);
    const light = like && isKept ? like : litPatch(patch, this.days, shares);
    this.byPlace?.set(whereabouts(patch), light);
    return light;
  }

  /** Whether all that reaches a patch of the yard that is like this one reaches it here. */
  private isAsInLike(patch: FacePatch): boolean {
    const { like } = this;
    if (!like) return false;
    if (like.scene === this.scene) return true;
    const its = like.before(patch);
    const mine = this.before(patch);
    mine.change ??= new Change(its.standing, mine.standing, mine.directions);
    return mine.change.leaves(outOf(patch));
  }

  private castShares(patch: FacePatch): Float64Array {
    return this.before(patch).caster.sharesAt(outOf(patch));
  }

  /** What stands before a patch's face: nothing else is ever in its way. */
  private before(patch: FacePatch): FaceCaster {
    const { outward } = patch;
    let caster = this.casters.get(outward);
    if (!caster) {
      const facing = this.days.before(outward);
      const { directions } = facing;
      let all = this.standing.get(facing);
      if (!all) this.standing.set(facing, (all = standingSolids(this.scene, directions)));
      const away = dot(outward, outOf(patch));
      const standing = all.filter(({ solid }) => isBefore(reachOf(solid), outward, away));
      caster = { caster: createStandingCaster(standing, directions), standing, directions, change: null };
      this.casters.set(outward, caster);
    }
    return caster;
  }

  /** The light of the patch that stands where another yard's does. */
  private at(patch: FacePatch): PatchLight | undefined {
    this.byPlace ??= new Map(
      this.lights.flatMap((light, index) => (light ? [[whereabouts(this.faces.patch(index)), light]] : [])),
    );
    return this.byPlace.get(whereabouts(patch));
  }
}

function isSame(a: Float64Array, b: Float64Array): boolean {
  return a.every((each, n) => each === b[n]);
}

function whereabouts({ middle, outward }: FacePatch): string {
  return [...middle, ...outward].join();
}
