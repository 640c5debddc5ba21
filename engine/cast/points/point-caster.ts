import type { SpacePoint } from '../../plan/geometry/shapes.ts';
import { lengthInCrown, shareOfLength } from '../../scene/crown.ts';
import { isConvex, SEGMENT, unionOutline } from '../../scene/outline.ts';
import type { Crown, Lid, OwnCrown, Prism, Scene, ClothSheet, Solid, Stand } from '../../scene/solids.ts';
import { lengthInStand, standShare } from '../../scene/stand.ts';
import { TOUCH, UPRIGHT } from '../../scene/ties.ts';
import type { Directions, Passes } from '../passes.ts';
import { directionsOf } from '../passes.ts';
import { ClothFrame } from './cloth-frame.ts';
import { passesToward, viewOfDisc, viewOfOutline, windingOf } from './view.ts';

/**
 * Casts many directions at single points: shares only, equal to `castRay`'s, nothing allocated in a loop over passes.
 */
export interface PointCaster {
  /**
   * Share of each pass's beam that reaches a point.
   * @param own A plant's own crown, in the way for this point alone; what the plant throws over others is not.
   * @param into Receives the shares, one a pass; a new array if absent.
   */
  sharesAt(point: SpacePoint, own?: OwnCrown, into?: Float64Array): Float64Array;
  /**
   * Multiplies shares that `sharesAt` gave for a point by what further solids let through: cloth that is only tried.
   * @param hangs 1 for the passes in which they stand, 0 for the others; absent: in all.
   */
  dim(point: SpacePoint, solids: readonly Solid[], shares: Float64Array, hangs?: Uint8Array | null): void;
}

/**
 * A solid, the passes in which it stands (1 or 0 each; null: all) and its outline on the plan (empty for round ones).
 */
interface Standing {
  /** Of the feature that it belongs to. */
  readonly id: string;
  readonly solid: Solid;
  readonly stands: Uint8Array | null;
  readonly outline: Float64Array;
}

/** Lays scene and passes out for `sharesAt`. */
export function createPointCaster(scene: Scene, passes: Passes): PointCaster {
  return createDirectionCaster(scene, directionsOf(scene, passes));
}

/** The same along directions that several scenes of one yard share. */
export function createDirectionCaster(scene: Scene, directions: Directions): PointCaster {
  const standing = standingSolids(scene, directions);
  const candidates = new Int32Array(directions.count);
  return {
    sharesAt(point, own, into = new Float64Array(directions.count)) {
      for (let k = 0; k < directions.count; k++) into[k] = 1 - directions.dark[k];
      for (const each of standing) if (each.id !== own?.of) dim(each, point, directions, candidates, into);
      if (own !== undefined) {
        dim({ id: own.of, solid: own, stands: null, outline: NO_OUTLINE }, point, directions, candidates, into);
      }
      return into;
    },
    dim(point, solids, shares, hangs = null) {
      for (const solid of solids)
        dim({ id: '', solid, stands: hangs, outline: outlineOf(solid) }, point, directions, candidates, shares);
    },
  };
}

const NO_OUTLINE = new Float64Array(0);

function standingSolids(scene: Scene, { state }: Directions): Standing[] {
  const states = new Map<Solid, { readonly id: string; readonly inStates: Set<number> }>();
  scene.states.forEach((occluders, index) => {
    for (const { id, solids } of occluders) {
      for (const solid of solids) {
        const known = states.get(solid) ?? { id, inStates: new Set() };
        known.inStates.add(index);
        states.set(solid, known);
      }
    }
  });
  return [...states].map(([solid, { id, inStates }]) => ({
    id,
    solid,
    stands:
      inStates.size === scene.states.length ? null : Uint8Array.from(state, (index) => (inStates.has(index) ? 1 : 0)),
    outline: outlineOf(solid),
  }));
}

function outlineOf(solid: Solid): Float64Array {
  if (solid.kind === 'prism') return unionOutline(solid.rings);
  // What a bent outline covers beyond its eaves' rectangles, the building below stops as well.
  if (solid.kind === 'lid') return unionOutline(solid.rings.filter(isConvex));
  if (solid.kind === 'stand') return unionOutline([solid.ring]);
  if (solid.kind !== 'cloth') return NO_OUTLINE;
  const {
    corner: [x, y],
    u,
    v,
  } = solid;
  return Float64Array.of(
    x,
    y,
    x + u[0],
    y + u[1],
    x + u[0],
    y + u[1],
    x + u[0] + v[0],
    y + u[1] + v[1],
    x + u[0] + v[0],
    y + u[1] + v[1],
    x + v[0],
    y + v[1],
    x + v[0],
    y + v[1],
    x,
    y,
  );
}

/** Multiplies the shares of a point by what a solid lets through. */
function dim(
  { solid, stands, outline }: Standing,
  [x, y, z]: SpacePoint,
  directions: Directions,
  list: Int32Array,
  shares: Float64Array,
): void {
  switch (solid.kind) {
    case 'prism': {
      const view = viewOfOutline(outline, x, y, -z, solid.height - z);
      return dimByPrism(
        solid,
        outline,
        x,
        y,
        z,
        directions,
        list,
        passesToward(view, directions, stands, shares, list),
        shares,
      );
    }
    case 'lid': {
      const view = viewOfOutline(outline, x, y, solid.height - z, solid.height - z);
      return dimByLid(
        solid,
        outline,
        x,
        y,
        z,
        directions,
        list,
        passesToward(view, directions, stands, shares, list),
        shares,
      );
    }
    case 'cloth': {
      const foot = Math.min(0, solid.u[2]) + Math.min(0, solid.v[2]) + solid.corner[2] - z;
      const top = Math.max(0, solid.u[2]) + Math.max(0, solid.v[2]) + solid.corner[2] - z;
      const view = viewOfOutline(outline, x, y, foot, top);
      return dimByCloth(solid, x, y, z, directions, list, passesToward(view, directions, stands, shares, list), shares);
    }
    case 'stand': {
      const view = viewOfOutline(outline, x, y, -z, solid.height - z);
      return dimByStand(solid, x, y, z, directions, list, passesToward(view, directions, stands, shares, list), shares);
    }
    default: {
      const view = viewOfDisc(solid.x - x, solid.y - y, solid.radius, solid.base - z, solid.top - z);
      return dimByCrown(solid, x, y, z, directions, list, passesToward(view, directions, stands, shares, list), shares);
    }
  }
}

/** A beam's crossings: one if it starts inside, and one for each edge of the outline by which it enters. */
function dimByPrism(
  { height, openness }: Prism,
  outline: Float64Array,
  x: number,
  y: number,
  z: number,
  directions: Directions,
  list: Int32Array,
  found: number,
  shares: Float64Array,
): void {
  for (let n = 0; n < found; n++) {
    const k = list[n];
    const dx = directions.x[k];
    const dy = directions.y[k];
    const dz = directions.z[k];
    // Both ends pulled in by what does not count, so that a face through the point itself is no matter of rounding.
    const from = Math.max(0, -z / dz) + TOUCH;
    const to = (height - z) / dz - TOUCH;
    if (to <= from) continue;
    const px = x + from * dx;
    const py = y + from * dy;
    const farthest = directions.level[k] < UPRIGHT ? 0 : (to - from) * (dx * dx + dy * dy);
    let winding = 0;
    let crossings = 0;
    for (let e = 0; e < outline.length; e += SEGMENT) {
      const ax = outline[e] - px;
      const ay = outline[e + 1] - py;
      const bx = outline[e + 2] - px;
      const by = outline[e + 3] - py;
      winding += windingOf(ax, ay, bx, by);
      // Entered from right to left: a on the beam's left, b on its right.
      const aside = dx * ay - dy * ax;
      const bside = dx * by - dy * bx;
      if (aside <= 0 || bside > 0) continue;
      const along = aside / (aside - bside);
      const reach = dx * (ax + along * (bx - ax)) + dy * (ay + along * (by - ay));
      if (reach > 0 && reach < farthest) crossings++;
    }
    if (winding !== 0) crossings++;
    if (crossings > 0) shares[k] *= openness ** crossings;
  }
}

function dimByCloth(
  sheet: ClothSheet,
  x: number,
  y: number,
  z: number,
  directions: Directions,
  list: Int32Array,
  found: number,
  shares: Float64Array,
): void {
  if (found === 0) return;
  const frame = new ClothFrame(sheet, x, y, z);
  for (let n = 0; n < found; n++) {
    const k = list[n];
    shares[k] *= frame.transmittance(directions.x[k], directions.y[k], directions.z[k]);
  }
}

function dimByStand(
  stand: Stand,
  x: number,
  y: number,
  z: number,
  directions: Directions,
  list: Int32Array,
  found: number,
  shares: Float64Array,
): void {
  for (let n = 0; n < found; n++) {
    const k = list[n];
    shares[k] *= standShare(stand, lengthInStand(stand, x, y, z, directions.x[k], directions.y[k], directions.z[k]));
  }
}

function dimByLid(
  { height }: Lid,
  outline: Float64Array,
  x: number,
  y: number,
  z: number,
  directions: Directions,
  list: Int32Array,
  found: number,
  shares: Float64Array,
): void {
  for (let n = 0; n < found; n++) {
    const k = list[n];
    const reach = (height - z) / directions.z[k];
    if (reach <= TOUCH) continue;
    const px = x + reach * directions.x[k];
    const py = y + reach * directions.y[k];
    let winding = 0;
    for (let e = 0; e < outline.length; e += SEGMENT) {
      winding += windingOf(outline[e] - px, outline[e + 1] - py, outline[e + 2] - px, outline[e + 3] - py);
    }
    if (winding !== 0) shares[k] = 0;
  }
}

function dimByCrown(
  crown: Crown,
  x: number,
  y: number,
  z: number,
  directions: Directions,
  list: Int32Array,
  found: number,
  shares: Float64Array,
): void {
  for (let n = 0; n < found; n++) {
    const k = list[n];
    shares[k] *= shareOfLength(crown, lengthInCrown(crown, x, y, z, directions.x[k], directions.y[k], directions.z[k]));
  }
}
