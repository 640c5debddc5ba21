/** What walls throw on a point once further cloth hangs: worked out from what they throw without it. */

import type { SpacePoint } from '../../../plan/geometry/vectors.ts';
import type { Faces } from '../../../scene/faces/faces.ts';
import type { ClothSheet, OwnCrown } from '../../../scene/solids.ts';
import type { HeatDay } from '../heat-day.ts';
import type { WallGlow } from '../surroundings.ts';
import { GlowSum } from './glow-sum.ts';
import { GlowFinder, Glows, isLitAlike, type LightsOn, type WallGlows } from './glows.ts';
import { LightsUnder } from './lights-under.ts';
import type { FaceLights } from './patch-light.ts';
import type { ViewFinder } from './view-finder.ts';
import type { View } from './view.ts';
import { ViewsUnder } from './views-under.ts';

/** Where cloth changes nothing for a point it has the very glow that it has without. */
export interface WallsUnder extends WallGlows {
  /** As `on`, worked out from what is another than without the cloth: the same but for rounding, and cheaper. */
  changedOn(heats: readonly HeatDay[], point: SpacePoint, own?: OwnCrown): (WallGlow | null)[];
}

/** @param bare what the same walls throw with no further cloth */
export function wallsUnder(
  faces: Faces,
  views: ViewFinder,
  lightsOn: LightsOn,
  bare: GlowFinder,
  sheets: readonly ClothSheet[],
): WallsUnder {
  const viewsNow = new ViewsUnder(views, sheets);
  const dimmed = new Map<FaceLights, LightsUnder>();
  const under = (lights: FaceLights): LightsUnder => {
    let now = dimmed.get(lights);
    if (!now) dimmed.set(lights, (now = new LightsUnder(lights, faces, sheets)));
    return now;
  };
  const lightsNow: LightsOn = (heats) => lightsOn(heats).map(({ lights, first }) => ({ lights: under(lights), first }));
  const glows = new GlowFinder(faces, viewsNow, lightsNow);
  const walls: Omit<WallsUnder, 'at'> = {
    on(heats, point, own) {
      const days = lightsOn(heats);
      return heats.map((heat, d) => {
        const { lights, first } = days[d];
        const view = views.from(point, heat.state, own);
        if (view.patches.length === 0) return null;
        const asBare = viewsNow.from(point, heat.state, own) === view && isLitAlike(view, lights, under(lights));
        return asBare ? bare.glows(view, lights).on(heat, first) : glows.on([heat], point, own)[0];
      });
    },
    changedOn(heats, point, own) {
      const days = lightsOn(heats);
      const changed = new Map<FaceLights, Map<View, Glows>>();
      return heats.map((heat, d) => {
        const { lights, first } = days[d];
        const view = views.from(point, heat.state, own);
        if (view.patches.length === 0) return null;
        // Days that somebody asked for before are lit apart from those asked for now.
        const ofLights = changed.get(lights) ?? new Map<View, Glows>();
        changed.set(lights, ofLights);
        let now = ofLights.get(view);
        if (!now) {
          now = changedGlows(view, viewsNow, bare.glows(view, lights), lights, under(lights));
          ofLights.set(view, now);
        }
        return now.on(heat, first);
      });
    },
    each: (heat, point, own) => glows.each(heat, point, own),
  };
  return { ...walls, at: (heat, point, own) => walls.on([heat], point, own)[0] };
}

/** A glow less what of its patches is hidden and what the cloth takes of their light; itself where neither is. */
function changedGlows(view: View, viewsNow: ViewsUnder, bare: Glows, lights: FaceLights, lightsNow: FaceLights): Glows {
  let changed: GlowSum | null = null;
  const { patches, up, down } = view;
  for (let n = 0; n < patches.length; n++) {
    const was = lights.of(patches[n]);
    const now = lightsNow.of(patches[n]);
    if (was === now) continue;
    changed ??= new GlowSum(lights.days, bare.copy());
    changed.exchange(was, now, up[n], down[n]);
  }
  viewsNow.hidden(view, (patch, lostUp, lostDown) => {
    changed ??= new GlowSum(lights.days, bare.copy());
    changed.add(lightsNow.of(patch), -lostUp, -lostDown);
  });
  return changed === null ? bare : new Glows(changed.whole());
}
