/** What patches of faces the points of a yard look on, ray by ray, each point's view found once. */

import { placeKey } from '../../../cast/points/remembering-caster.ts';
import { skyRays } from '../../../cast/sky.ts';
import type { SpacePoint } from '../../../plan/geometry/vectors.ts';
import { Bearings } from '../../../scene/bearings.ts';
import { isNear, type Reach, reachOf, standsBetween } from '../../../scene/between.ts';
import { planDirection } from '../../../scene/direction.ts';
import type { Faces } from '../../../scene/faces/faces.ts';
import type { RayFan } from '../../../scene/faces/ray-fan.ts';
import { stateIn } from '../../../scene/scene-of.ts';
import type { OwnCrown, Scene, Solid } from '../../../scene/solids.ts';
import { type Desk, makeRoom, type View, viewOf, type Views } from './view.ts';

/** What may hide a face without being one. */
interface Hider {
  readonly id: string;
  readonly solid: Solid;
  readonly reach: Reach;
}

/** Hiders that only the one or only the other of two yards has. */
interface Changed {
  readonly gone: readonly Hider[];
  readonly added: readonly Hider[];
}

/** Farther than anything stands. [m] */
const FAR = 1e4;

/** Finds views, each once. */
export class ViewFinder implements Views {
  readonly desk: Desk;
  private readonly scene: Scene;
  private readonly faces: Faces;
  private readonly hiders: readonly (readonly Hider[])[];
  private readonly like: ViewFinder | undefined;
  /** By yearly state, against the yard that is like it. */
  private readonly changed: (Changed | undefined)[] = [];
  private readonly known = new Map<string, View>();
  /** Where the ray at hand meets a face, and its way upward. */
  private readonly met: [number, number, number] = [0, 0, 0];
  private readonly upward: [number, number, number] = [0, 0, 1];

  /**
   * @param every of the sky's rays: each of fewer counts for as many
   * @param like of a yard with the very same faces: of its views only what other things hide is looked at anew
   */
  constructor(scene: Scene, faces: Faces, every: number, like?: ViewFinder) {
    this.scene = scene;
    this.faces = faces;
    this.like = like;
    this.hiders = scene.states.map((occluders) =>
      occluders.flatMap(({ id, solids }) =>
        solids
          .filter((solid) => !('reflects' in solid) || solid.reflects === null)
          .map((solid) => ({ id, solid, reach: reachOf(solid) })),
      ),
    );
    const { azimuth, altitude } = skyRays();
    const directions = Float64Array.from(
      Array.from(azimuth, (bearing, k) => planDirection(bearing, altitude[k], scene.upBearing)).flat(),
    );
    const fan = fanOf(directions.filter((_, n) => Math.floor(n / 3) % every === 0));
    const met = { patch: new Int32Array(2 * fan.count), reach: new Float64Array(2 * fan.count) };
    this.desk = { directions, every, fan, met, up: new Float64Array(0), down: new Float64Array(0) };
  }

  from(point: SpacePoint, state: number, own?: OwnCrown): View {
    const key = viewKey(point, state, own);
    let view = this.known.get(key);
    if (!view) {
      this.known.set(key, (view = this.asInLike(point, state, own) ?? this.look(point, state, own)));
      makeRoom(this.desk, this.faces.metCount);
    }
    return view;
  }

  /** The view of the yard that is like this one, where it is known and nothing that differs has to do with it. */
  private asInLike(point: SpacePoint, state: number, own?: OwnCrown): View | undefined {
    const { like } = this;
    const was = like?.known.get(viewKey(point, stateIn(like.scene, this.scene, state), own));
    if (!like || !was) return undefined;
    const { gone, added } = (this.changed[state] ??= this.changedFrom(like, state));
    if (gone.length === 0 && added.length === 0) return was;
    const { ofFan, reach } = was.rays;
    const { fan, met } = this.desk;
    const strike = (hiders: readonly Hider[]) =>
      hiders.some((hider) => hider.id !== own?.of && this.strikeOut(hider, point) > 0);
    for (let n = 0; n < ofFan.length; n++) {
      met.patch[n] = ofFan[n];
      met.reach[n] = reach[ofFan[n]];
    }
    if (strike(added)) return undefined;
    // Most of the other rays would not meet what is gone, however far they went.
    for (let n = 0; n < ofFan.length; n++) met.patch[n] = ofFan[n] < 0 ? 0 : -1;
    met.reach.fill(FAR);
    if (!strike(gone)) return was;
    this.faces.meet(...point, fan, met);
    for (let n = 0; n < ofFan.length; n++) if (ofFan[n] >= 0) met.patch[n] = -1;
    return strike(gone) ? undefined : was;
  }

  private changedFrom(like: ViewFinder, state: number): Changed {
    const [mine, its] = [this.hiders[state], like.hiders[stateIn(like.scene, this.scene, state)]];
    const without = (some: readonly Hider[], others: readonly Hider[]) => {
      const had = new Set(others.map(({ solid }) => solid));
      return some.filter(({ solid }) => !had.has(solid));
    };
    return { gone: without(its, mine), added: without(mine, its) };
  }

  private look(point: SpacePoint, state: number, own?: OwnCrown): View {
    const { faces } = this;
    const { fan, met, every } = this.desk;
    const { count } = fan;
    const [x, y, z] = point;
    faces.meet(x, y, z, fan, met);
    makeRoom(this.desk, faces.metCount);
    if (own !== undefined) this.strikeOut({ id: '', solid: own, reach: reachOf(own) }, point);
    for (const hider of this.hiders[state]) if (hider.id !== own?.of) this.strikeOut(hider, point);
    const ofFan = new Int16Array(2 * count).fill(-1);
    const ray: number[] = [];
    const patch: number[] = [];
    const reach: number[] = [];
    for (let k = 0; k < count; k++) {
      for (let way = 1; way >= -1; way -= 2) {
        const n = way > 0 ? k : count + k;
        if (met.patch[n] < 0) continue;
        ofFan[n] = ray.length;
        ray.push(way > 0 ? k * every : -1 - k * every);
        patch.push(met.patch[n]);
        reach.push(met.reach[n]);
      }
    }
    return viewOf(
      { point, ray: Int16Array.from(ray), patch: Int32Array.from(patch), reach: Float64Array.from(reach), ofFan },
      this.desk,
    );
  }

  /**
   * Strikes the rays at hand that one hider stands before out of what they meet: only those towards it are asked.
   * @returns how many
   */
  private strikeOut(hider: Hider, point: SpacePoint): number {
    let struck = 0;
    const { fan, met } = this.desk;
    const { bearings, directions, count } = fan;
    const aside = hider.reach.x - point[0];
    const ahead = hider.reach.y - point[1];
    const distance = Math.sqrt(aside * aside + ahead * ahead);
    if (distance <= hider.reach.radius) bearings.findAll();
    else {
      const middle = Math.atan2(ahead, aside);
      const half = Math.asin(hider.reach.radius / distance);
      bearings.find(middle - half, middle + half);
    }
    for (let at = bearings.first; at < bearings.end; at++) {
      const k = bearings.order[at];
      for (let way = 1; way >= -1; way -= 2) {
        const n = way > 0 ? k : count + k;
        if (met.patch[n] < 0) continue;
        const dz = way * directions[3 * k + 2];
        if (!this.hides(hider, point, directions[3 * k], directions[3 * k + 1], dz, met.reach[n])) continue;
        met.patch[n] = -1;
        struck++;
      }
    }
    return struck;
  }

  private hides({ solid, reach: near }: Hider, point: SpacePoint, dx: number, dy: number, dz: number, reach: number) {
    const { met, upward } = this;
    met[0] = point[0] + reach * dx;
    met[1] = point[1] + reach * dy;
    met[2] = point[2] + reach * dz;
    const way = dz > 0 ? 1 : -1;
    upward[0] = way * dx;
    upward[1] = way * dy;
    upward[2] = way * dz;
    const lower = dz > 0 ? point : met;
    const upper = dz > 0 ? met : point;
    return isNear(near, lower, upper) && standsBetween(solid, lower, upper, upward);
  }
}

function viewKey(point: SpacePoint, state: number, own?: OwnCrown): string {
  return `${state} ${placeKey(point, own)}`;
}

function fanOf(directions: Float64Array): RayFan {
  const along = (axis: number) => directions.filter((_, n) => n % 3 === axis);
  return { count: directions.length / 3, directions, bearings: new Bearings(along(0), along(1)) };
}
