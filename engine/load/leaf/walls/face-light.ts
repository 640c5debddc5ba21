/** How the patches of faces are lit through heat days: cast when one is first looked at, for all the days at once. */
import { type Directions, directionsOf, passesInRow } from '../../../cast/passes.ts';
import { ClothFrame } from '../../../cast/points/cloth-frame.ts';
import { createStandingCaster, type PointCaster } from '../../../cast/points/point-caster.ts';
import { Change } from '../../../cast/points/remembering-caster.ts';
import { type Standing, standingSolids } from '../../../cast/points/standing.ts';
import type { SpacePoint } from '../../../plan/geometry/shapes.ts';
import type { FacePatch, Faces } from '../../../scene/faces.ts';
import type { ClothSheet, Scene } from '../../../scene/solids.ts';
import type { HeatDay } from '../heat-day.ts';
import type { LeafMoment } from '../receives.ts';
import { faceGlow, SKY_ON_FACE } from '../wall-light.ts';

/** A face is looked at so far out of it. [m] */
const OUTSIDE = 0.01;

/** What reaches a patch, and what shines on it and its longwave. [W/m²] */
export interface PatchLight {
  /** Share of sunlight that the patch throws back. */
  readonly reflects: number;
  /** Of the beam, one value a sample in which the sun stands before the face. */
  readonly shares: Float64Array;
  /** One value a sample of all the days. */
  readonly on: Float64Array;
  readonly glow: Float64Array;
  /** The samples in which cloth that is tried takes something of it. */
  readonly dimmed: Int32Array;
}

export interface FaceLights {
  readonly days: LitDays;
  of(patch: number): PatchLight;
}

/** Samples in which the sun stands before a face, and how squarely it meets it. */
interface Facing {
  readonly samples: Int32Array;
  readonly cosine: Float64Array;
  readonly directions: Directions;
}

/** Some heat days, their samples one after the other. */
export class LitDays {
  readonly heats: readonly HeatDay[];
  readonly moments: readonly LeafMoment[];
  private readonly first = new Map<HeatDay['samples'], number>();
  private readonly directions: Directions;
  private readonly facings = new Map<SpacePoint, Facing>();
  /** Faces that look the same way share theirs. */
  private readonly byWay = new Map<string, Facing>();

  constructor(scene: Scene, heats: readonly HeatDay[]) {
    this.heats = heats;
    this.moments = heats.flatMap(({ moments }) => moments);
    this.directions = directionsOf(scene, passesInRow(heats.map(({ passes }) => passes)));
    let at = 0;
    for (const { samples } of heats) {
      this.first.set(samples, at);
      at += samples.count;
    }
  }

  /** Index of a day's first sample; −1: it is none of the days. */
  firstOf({ samples }: HeatDay): number {
    return this.first.get(samples) ?? -1;
  }

  /** Whether the sun stands where it stands on the other's days, in the same order. */
  hasSunsOf(other: LitDays): boolean {
    return (
      this.heats.length === other.heats.length &&
      this.heats.every(({ samples }, d) => samples.azimuth === other.heats[d].samples.azimuth)
    );
  }

  /** Whether the other's samples are these, in the same order. */
  isLike(other: LitDays): boolean {
    return (
      this.heats.length === other.heats.length && this.heats.every((heat, d) => heat.samples === other.heats[d].samples)
    );
  }

  /** @param outward the way out of a face */
  before(outward: SpacePoint): Facing {
    const known = this.facings.get(outward);
    if (known) return known;
    const way = outward.join();
    const facing = this.byWay.get(way) ?? this.facing(outward);
    this.byWay.set(way, facing);
    this.facings.set(outward, facing);
    return facing;
  }

  private facing([nx, ny, nz]: SpacePoint): Facing {
    const { x, y, z, level, state, dark, count } = this.directions;
    const samples = Int32Array.from({ length: count }, (_, k) => k).filter(
      (k) => dark[k] === 0 && nx * x[k] + ny * y[k] + nz * z[k] > 0,
    );
    const of = (values: Float64Array) => Float64Array.from(samples, (k) => values[k]);
    return {
      samples,
      cosine: Float64Array.from(samples, (k) => nx * x[k] + ny * y[k] + nz * z[k]),
      directions: {
        count: samples.length,
        x: of(x),
        y: of(y),
        z: of(z),
        level: of(level),
        state: Uint16Array.from(samples, (k) => state[k]),
        dark: new Uint8Array(samples.length),
      },
    };
  }
}

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
  private readonly casters = new Map<Facing, FaceCaster>();
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
    const like = known && this.isAsInLike(patch) ? known : this.near?.at(patch);
    const isSame = like?.reflects === patch.reflects && (like !== known || this.like?.days.isLike(this.days));
    const light = like && isSame ? like : litPatch(patch, this.days, like?.shares ?? this.castShares(patch));
    this.byPlace?.set(placeOf(patch), light);
    return light;
  }

  /** Whether all that reaches a patch of the yard that is like this one reaches it here. */
  private isAsInLike(patch: FacePatch): boolean {
    const { like } = this;
    if (!like) return false;
    if (like.scene === this.scene) return true;
    const its = like.before(patch.outward);
    const mine = this.before(patch.outward);
    mine.change ??= new Change(its.standing, mine.standing, mine.directions);
    return mine.change.leaves(outOf(patch));
  }

  private castShares(patch: FacePatch): Float64Array {
    return this.before(patch.outward).caster.sharesAt(outOf(patch));
  }

  private before(outward: SpacePoint): FaceCaster {
    const facing = this.days.before(outward);
    let caster = this.casters.get(facing);
    if (!caster) {
      const { directions } = facing;
      const standing = standingSolids(this.scene, directions);
      caster = { caster: createStandingCaster(standing, directions), standing, directions, change: null };
      this.casters.set(facing, caster);
    }
    return caster;
  }

  /** The light of the patch that stands where another yard's does. */
  private at(patch: FacePatch): PatchLight | undefined {
    this.byPlace ??= new Map(
      this.lights.flatMap((light, index) => (light ? [[placeOf(this.faces.patch(index)), light]] : [])),
    );
    return this.byPlace.get(placeOf(patch));
  }
}

/** Lights of a yard with further cloth in it, that hangs all year. */
export class LightsUnder implements FaceLights {
  readonly days: LitDays;
  private readonly bare: FaceLights;
  private readonly faces: Faces;
  private readonly shadows: readonly SheetShadows[];
  private readonly lights: (PatchLight | undefined)[] = [];

  constructor(bare: FaceLights, faces: Faces, sheets: readonly ClothSheet[]) {
    this.days = bare.days;
    this.bare = bare;
    this.faces = faces;
    this.shadows = sheets.map((sheet) => new SheetShadows(sheet, bare.days));
  }

  /** @returns the bare light itself where the cloth takes nothing of it */
  of(index: number): PatchLight {
    return (this.lights[index] ??= this.dimmed(index));
  }

  private dimmed(index: number): PatchLight {
    const bare = this.bare.of(index);
    const patch = this.faces.patch(index);
    let shares: Float64Array | null = null;
    for (const shadow of this.shadows) shares = shadow.dim(patch, shares ?? bare.shares, shares);
    return shares === null ? bare : this.dimmedLight(patch, bare, shares);
  }

  private dimmedLight({ outward, reflects }: FacePatch, bare: PatchLight, shares: Float64Array): PatchLight {
    const { moments } = this.days;
    const { samples, cosine } = this.days.before(outward);
    const on = bare.on.slice();
    const glow = bare.glow.slice();
    const dimmed: number[] = [];
    for (let n = 0; n < shares.length; n++) {
      if (shares[n] === bare.shares[n]) continue;
      const k = samples[n];
      on[k] = shares[n] * moments[k].beam * cosine[n] + SKY_ON_FACE * moments[k].diffuse;
      glow[k] = faceGlow(moments[k].air, reflects, on[k]);
      dimmed.push(k);
    }
    return { reflects, shares, on, glow, dimmed: Int32Array.from(dimmed) };
  }
}

/** What a sheet takes of the sun on faces. */
class SheetShadows {
  private readonly sheet: ClothSheet;
  private readonly days: LitDays;
  /** By the way out of a face: where on its plane the sheet's shadow lies. */
  private readonly bounds = new Map<SpacePoint, Bounds>();

  constructor(sheet: ClothSheet, days: LitDays) {
    this.sheet = sheet;
    this.days = days;
  }

  /** @param into receives what is left of `shares`; `null`: a copy is made if anything is taken @returns it */
  dim(patch: FacePatch, shares: Float64Array, into: Float64Array | null): Float64Array | null {
    const { outward } = patch;
    const { directions } = this.days.before(outward);
    const out = outOf(patch);
    const { all, bounds } = this.boundsOn(outward, out);
    const [s, t] = onAxes(outward, out);
    if (s < all[0] || s > all[1] || t < all[2] || t > all[3]) return into;
    let frame: ClothFrame | null = null;
    let left = into;
    for (let n = 0, at = 0; n < directions.count; n++, at += 4) {
      if (s < bounds[at] || s > bounds[at + 1] || t < bounds[at + 2] || t > bounds[at + 3] || shares[n] === 0) continue;
      frame ??= new ClothFrame(this.sheet, ...out);
      const transmittance = frame.transmittance(directions.x[n], directions.y[n], directions.z[n]);
      if (transmittance === 1) continue;
      left ??= shares.slice();
      left[n] *= transmittance;
    }
    return left;
  }

  private boundsOn(outward: SpacePoint, out: SpacePoint): Bounds {
    let bounds = this.bounds.get(outward);
    if (!bounds) {
      bounds = shadowBounds(this.sheet, outward, dot(outward, out), this.days.before(outward));
      this.bounds.set(outward, bounds);
    }
    return bounds;
  }
}

/** Between what a sheet's shadow lies along the two axes of a plane: from, to, from, to. [m] */
interface Bounds {
  /** Of all samples, 4 numbers. */
  readonly all: Float64Array;
  /** 4 numbers a sample. */
  readonly bounds: Float64Array;
}

/** Wider than any rounding. [m] */
const SLACK = 1e-6;

/** Of the plane outward · p = away; a sheet that is not wholly before it has no bounds there. */
function shadowBounds(
  { corner, u, v }: ClothSheet,
  outward: SpacePoint,
  away: number,
  { directions, cosine }: Facing,
): Bounds {
  const bounds = new Float64Array(4 * directions.count);
  const all = Float64Array.of(Infinity, -Infinity, Infinity, -Infinity);
  const corners = [0, 1, 2, 3].map((c): SpacePoint => [
    corner[0] + (c & 1 ? u[0] : 0) + (c & 2 ? v[0] : 0),
    corner[1] + (c & 1 ? u[1] : 0) + (c & 2 ? v[1] : 0),
    corner[2] + (c & 1 ? u[2] : 0) + (c & 2 ? v[2] : 0),
  ]);
  const before = corners.map((each) => dot(outward, each) - away);
  if (before.every((distance) => distance <= 0)) return { all, bounds };
  if (before.some((distance) => distance < 0)) {
    for (let at = 0; at < bounds.length; at += 2) bounds.set([-Infinity, Infinity], at);
    return { all: Float64Array.of(-Infinity, Infinity, -Infinity, Infinity), bounds };
  }
  const [fromS, fromT] = [0, 1].map((axis) => corners.map((each) => onAxes(outward, each)[axis]));
  for (let n = 0, at = 0; n < directions.count; n++, at += 4) {
    const [goS, goT] = onAxes(outward, [directions.x[n], directions.y[n], directions.z[n]]);
    const along = corners.map((_, c) => fromS[c] - (before[c] / cosine[n]) * goS);
    const up = corners.map((_, c) => fromT[c] - (before[c] / cosine[n]) * goT);
    bounds[at] = Math.min(...along) - SLACK;
    bounds[at + 1] = Math.max(...along) + SLACK;
    bounds[at + 2] = Math.min(...up) - SLACK;
    bounds[at + 3] = Math.max(...up) + SLACK;
    for (let b = 0; b < 4; b += 2) {
      if (bounds[at + b] < all[b]) all[b] = bounds[at + b];
      if (bounds[at + b + 1] > all[b + 1]) all[b + 1] = bounds[at + b + 1];
    }
  }
  return { all, bounds };
}

/** Along an upright face and up it; on a level one along x and y. */
function onAxes([nx, ny, nz]: SpacePoint, [x, y, z]: SpacePoint): [number, number] {
  return nz === 0 ? [y * nx - x * ny, z] : [x, y];
}

function dot(a: SpacePoint, b: SpacePoint): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

function outOf({ middle, outward }: FacePatch): SpacePoint {
  return [middle[0] + OUTSIDE * outward[0], middle[1] + OUTSIDE * outward[1], middle[2] + OUTSIDE * outward[2]];
}

function placeOf({ middle, outward }: FacePatch): string {
  return [...middle, ...outward].join();
}

const NONE = new Int32Array(0);

function litPatch({ outward, reflects }: FacePatch, days: LitDays, shares: Float64Array): PatchLight {
  const { moments } = days;
  const { samples, cosine } = days.before(outward);
  const on = new Float64Array(moments.length);
  const glow = new Float64Array(moments.length);
  for (let n = 0; n < samples.length; n++) on[samples[n]] = shares[n] * moments[samples[n]].beam * cosine[n];
  for (let k = 0; k < on.length; k++) {
    on[k] += SKY_ON_FACE * moments[k].diffuse;
    glow[k] = faceGlow(moments[k].air, reflects, on[k]);
  }
  return { reflects, shares, on, glow, dimmed: NONE };
}
