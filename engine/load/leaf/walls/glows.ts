/** What the faces in a point's view throw on it, added up patch by patch. */

import type { SpacePoint } from '../../../plan/geometry/vectors.ts';
import type { Faces } from '../../../scene/faces/faces.ts';
import type { OwnCrown } from '../../../scene/solids.ts';
import type { HeatDay } from '../heat-day.ts';
import type { WallGlow } from '../surroundings.ts';
import { CastLights } from './cast-lights.ts';
import { GlowSum, type OpenGlow } from './glow-sum.ts';
import type { FaceLights } from './patch-light.ts';
import { partOf, type View, type Views } from './view.ts';

/** Sunlight and warmth from the walls and buildings round a point. */
export interface WallGlows {
  /** @param own the plant's own crown, in the way of this point alone; `null` where no wall or building is in view */
  at(heat: HeatDay, point: SpacePoint, own?: OwnCrown): WallGlow | null;
  /** The same on some heat days at once, whose light on the walls is cast together. */
  on(heats: readonly HeatDay[], point: SpacePoint, own?: OwnCrown): (WallGlow | null)[];
  /** What each wall or building in view throws alone, by its id: together it is what `at` tells. */
  each(heat: HeatDay, point: SpacePoint, own?: OwnCrown): ReadonlyMap<string, WallGlow>;
}

/** How patches are lit on a day, among the days that were cast with it, and index of its first sample there. */
interface DayLights {
  readonly lights: FaceLights;
  readonly first: number;
}
export type LightsOn = (heats: readonly HeatDay[]) => readonly DayLights[];

/** What is thrown through all the days of some lights, and on each of them. */
export class Glows {
  private readonly whole: WallGlow;
  private readonly byFirst = new Map<number, WallGlow>();

  constructor(whole: WallGlow) {
    this.whole = whole;
  }

  /** The part of one day, the same object each time. */
  on({ moments: { length } }: HeatDay, first: number): WallGlow {
    let glow = this.byFirst.get(first);
    if (!glow) {
      const { light, above, below } = this.whole;
      const part = (values: Float64Array) => values.subarray(first, first + length);
      glow = { ...this.whole, light: part(light), above: part(above), below: part(below) };
      this.byFirst.set(first, glow);
    }
    return glow;
  }

  /** A copy to be changed. */
  copy(): OpenGlow {
    const { light, above, below, ...hidden } = this.whole;
    return { ...hidden, light: light.slice(), above: above.slice(), below: below.slice() };
  }
}

/** Adds up what views bring, each once. */
export class GlowFinder {
  private readonly faces: Faces;
  private readonly views: Views;
  private readonly lightsOn: LightsOn;
  private readonly like: GlowFinder | undefined;
  private readonly known = new WeakMap<View, WeakMap<FaceLights, Glows>>();

  /** @param like of a yard with the very same faces */
  constructor(faces: Faces, views: Views, lightsOn: LightsOn, like?: GlowFinder) {
    this.faces = faces;
    this.views = views;
    this.lightsOn = lightsOn;
    this.like = like;
  }

  on(heats: readonly HeatDay[], point: SpacePoint, own?: OwnCrown): (WallGlow | null)[] {
    const days = this.lightsOn(heats);
    return heats.map((heat, d) => {
      const view = this.views.from(point, heat.state, own);
      return view.patches.length === 0 ? null : this.glows(view, days[d].lights).on(heat, days[d].first);
    });
  }

  each(heat: HeatDay, point: SpacePoint, own?: OwnCrown): Map<string, WallGlow> {
    const { faces } = this;
    const view = this.views.from(point, heat.state, own);
    const [{ lights, first }] = this.lightsOn([heat]);
    const ids = new Set(Array.from(view.patches, (index) => faces.patch(index).id));
    return new Map([...ids].map((id) => [id, new Glows(glowOf(partOf(view, faces, id), lights)).on(heat, first)]));
  }

  glows(view: View, lights: FaceLights): Glows {
    let byLights = this.known.get(view);
    if (!byLights) this.known.set(view, (byLights = new WeakMap()));
    let glows = byLights.get(lights);
    if (!glows) byLights.set(lights, (glows = this.asInLike(view, lights) ?? new Glows(glowOf(view, lights))));
    return glows;
  }

  /** What the yard that is like this one knows of the same view, where all its patches are lit as they are there. */
  private asInLike(view: View, lights: FaceLights): Glows | undefined {
    if (!(lights instanceof CastLights) || lights.like === undefined) return undefined;
    const glows = this.like?.known.get(view)?.get(lights.like);
    return glows && isLitAlike(view, lights.like, lights) ? glows : undefined;
  }
}

export function isLitAlike({ patches }: View, lights: FaceLights, now: FaceLights): boolean {
  return patches.every((patch) => lights.of(patch) === now.of(patch));
}

function glowOf({ patches, up, down }: View, lights: FaceLights): WallGlow {
  const count = lights.days.moments.length;
  const [light, above, below] = [0, 0, 0].map(() => new Float64Array(count));
  const sum = new GlowSum(lights.days, { sky: 0, ground: 0, light, above, below });
  for (let n = 0; n < patches.length; n++) sum.add(lights.of(patches[n]), up[n], down[n]);
  return sum.whole();
}
