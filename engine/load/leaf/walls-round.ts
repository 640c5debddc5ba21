/**
 * What the walls and buildings round a point throw on it: light, and the glow of what the sun has warmed.
 *
 * They take the place of the sky and of the ground behind them. Of the sky's 577 rays and the same 577 mirrored
 * downwards, ended by the ground, each that meets such a face before anything else brings ρ·E of light and the glow of
 * a face at the air's temperature plus (1 − ρ)·E/17 (sol-air temperature, 17 W/m²K: ASHRAE, from memory), E what shines
 * on the face there: the beam that reaches it and half of the sky's light.
 */
import { skyRays } from '../../cast/sky.ts';
import type { SpacePoint } from '../../plan/geometry/shapes.ts';
import { isNear, type Reach, reachOf, standsBetween } from '../../scene/between.ts';
import { planDirection } from '../../scene/direction.ts';
import { type FaceMeeting, Faces } from '../../scene/faces.ts';
import type { OwnCrown, Scene, Solid } from '../../scene/solids.ts';
import type { HeatDay } from './heat-day.ts';
import type { WallGlow } from './surroundings.ts';
import { faceGlow, SKY_ON_FACE } from './wall-light.ts';

/** Faces are lit patch by patch, no wider or higher than this. [m] */
const PATCH = 0.25;
/** A face is looked at so far out of it. [m] */
const OUTSIDE = 0.01;

/** How much of a point's rays end on each patch, and from which feature it comes. */
interface PatchView {
  readonly patch: FaceMeeting;
  /** Sums of the rays' weights from above, and from below. */
  up: number;
  down: number;
}

export interface WallsRound {
  /** @param own the plant's own crown, in the way of this point alone; `null` where no wall or building is in view */
  at(heat: HeatDay, point: SpacePoint, own?: OwnCrown): WallGlow | null;
}

/** Lays a yard's faces out once; patches are lit when they are first looked at. */
export function createWallsRound(scene: Scene): WallsRound {
  const faces = new Faces(scene.states[0] ?? [], PATCH);
  if (faces.none) return { at: () => null };
  const views = new ViewFinder(scene, faces);
  const lit = new WeakMap<HeatDay, Map<string, Float64Array>>();
  return {
    at(heat, point, own) {
      const seen = views.from(point, heat.state, own);
      if (seen.length === 0) return null;
      let patches = lit.get(heat);
      if (!patches) lit.set(heat, (patches = new Map()));
      for (const { patch } of seen) {
        if (!patches.has(patch.key)) patches.set(patch.key, lightOn(patch, scene, heat));
      }
      return glowOf(seen, patches, heat);
    },
  };
}

/** Finds what patches of faces a point looks on. */
class ViewFinder {
  private readonly faces: Faces;
  /** All that hides a face without being one, by yearly state. */
  private readonly others: readonly { readonly id: string; readonly solid: Solid; readonly reach: Reach }[][];
  private readonly directions: readonly SpacePoint[];
  private readonly known = new Map<string, PatchView[]>();

  constructor(scene: Scene, faces: Faces) {
    this.faces = faces;
    this.others = scene.states.map((occluders) =>
      occluders.flatMap(({ id, solids }) =>
        solids
          .filter((solid) => !('reflects' in solid) || solid.reflects === null)
          .map((solid) => ({ id, solid, reach: reachOf(solid) })),
      ),
    );
    const { azimuth, altitude } = skyRays();
    this.directions = Array.from(azimuth, (bearing, k) => planDirection(bearing, altitude[k], scene.upBearing));
  }

  from(point: SpacePoint, state: number, own?: OwnCrown): readonly PatchView[] {
    const key = `${state} ${own?.of} ${point.join()}`;
    let seen = this.known.get(key);
    if (!seen) this.known.set(key, (seen = this.look(point, state, own)));
    return seen;
  }

  private look(point: SpacePoint, state: number, own?: OwnCrown): PatchView[] {
    const seen = new Map<string, PatchView>();
    const { weight } = skyRays();
    const [x, y, z] = point;
    for (let k = 0; k < this.directions.length; k++) {
      const [dx, dy, dz] = this.directions[k];
      for (const way of [1, -1] as const) {
        const patch = this.faces.meet(x, y, z, dx, dy, way * dz);
        if (patch === null || this.isHidden(point, [dx, dy, way * dz], patch.reach, state, own)) continue;
        const view = seen.get(patch.key) ?? { patch, up: 0, down: 0 };
        if (way > 0) view.up += weight[k];
        else view.down += weight[k];
        seen.set(patch.key, view);
      }
    }
    return [...seen.values()];
  }

  private isHidden(point: SpacePoint, d: SpacePoint, reach: number, state: number, own?: OwnCrown): boolean {
    const met: SpacePoint = [point[0] + reach * d[0], point[1] + reach * d[1], point[2] + reach * d[2]];
    const [lower, upper] = d[2] > 0 ? [point, met] : [met, point];
    const up: SpacePoint = d[2] > 0 ? d : [-d[0], -d[1], -d[2]];
    if (own !== undefined && standsBetween(own, lower, upper, up)) return true;
    return this.others[state].some(
      ({ id, solid, reach: near }) =>
        id !== own?.of && isNear(near, lower, upper) && standsBetween(solid, lower, upper, up),
    );
  }
}

/** Sunlight on a patch, one value a sample. [W/m²] */
function lightOn({ middle, outward }: FaceMeeting, scene: Scene, { samples, moments, caster }: HeatDay): Float64Array {
  const out: SpacePoint = [
    middle[0] + OUTSIDE * outward[0],
    middle[1] + OUTSIDE * outward[1],
    middle[2] + OUTSIDE * outward[2],
  ];
  const shares = caster.sharesAt(out);
  return shares.map((share, k) => {
    const [sx, sy, sz] = planDirection(samples.azimuth[k], samples.altitude[k], scene.upBearing);
    const facing = Math.max(0, outward[0] * sx + outward[1] * sy + outward[2] * sz);
    return share * moments[k].beam * facing + SKY_ON_FACE * moments[k].diffuse;
  });
}

function glowOf(
  seen: readonly PatchView[],
  patches: ReadonlyMap<string, Float64Array>,
  { moments }: HeatDay,
): WallGlow {
  const light = new Float64Array(moments.length);
  const above = new Float64Array(moments.length);
  const below = new Float64Array(moments.length);
  let sky = 0;
  let ground = 0;
  for (const { patch, up, down } of seen) {
    const on = patches.get(patch.key);
    if (!on) continue;
    sky += up;
    ground += down;
    for (let k = 0; k < on.length; k++) {
      const warm = faceGlow(moments[k].air, patch.reflects, on[k]);
      light[k] += (up + down) * patch.reflects * on[k];
      above[k] += up * warm;
      below[k] += down * warm;
    }
  }
  return { sky, ground, light, above, below };
}
