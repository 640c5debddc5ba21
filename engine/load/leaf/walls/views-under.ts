/** What patches points still look on with further cloth in the yard. */

import { ClothFrame } from '../../../cast/points/cloth-frame.ts';
import { bearingsOfSheets } from '../../../cast/points/point-rays.ts';
import type { SpacePoint } from '../../../plan/geometry/vectors.ts';
import type { ClothSheet, OwnCrown } from '../../../scene/solids.ts';
import { TOUCH } from '../../../scene/ties.ts';
import type { ViewFinder } from './view-finder.ts';
import { type EndedRays, sumsOf, type View, type Views } from './view.ts';

/** Views of a yard with further cloth in it: the rays are known, and only the cloth is asked whether it hides them. */
export class ViewsUnder implements Views {
  private readonly bare: ViewFinder;
  private readonly sheets: readonly ClothSheet[];
  private readonly known = new Map<View, View>();

  constructor(bare: ViewFinder, sheets: readonly ClothSheet[]) {
    this.bare = bare;
    this.sheets = sheets;
  }

  /** @returns the bare view itself where the cloth hides nothing of it */
  from(point: SpacePoint, state: number, own?: OwnCrown): View {
    const bare = this.bare.from(point, state, own);
    let view = this.known.get(bare);
    if (!view) this.known.set(bare, (view = this.hiding(bare)));
    return view;
  }

  /** Hears what weight of each patch the cloth hides from a point, from above and from below. */
  hidden({ rays }: View, hear: (patch: number, up: number, down: number) => void): void {
    const hidden = this.hiddenRays(rays);
    if (hidden.length === 0) return;
    const { patches, up, down } = sumsOf(rays, hidden, this.bare.desk);
    for (let n = 0; n < patches.length; n++) hear(patches[n], up[n], down[n]);
  }

  private hiding(bare: View): View {
    const { rays } = bare;
    const hidden = new Set(this.hiddenRays(rays));
    if (hidden.size === 0) return bare;
    const open = Array.from(rays.ray.keys()).filter((n) => !hidden.has(n));
    return { ...sumsOf(rays, open, this.bare.desk), rays };
  }

  /** Which of a point's rays meet cloth before what they end on: only those towards the cloth are asked. */
  private hiddenRays({ point, ray, reach, ofFan }: EndedRays): number[] {
    const { sheets, bare } = this;
    const { directions, bearings, count } = bare.desk.fan;
    const hidden: number[] = [];
    if (sheets.length === 0 || ray.length === 0) return hidden;
    const frames = sheets.map((sheet) => new ClothFrame(sheet, ...point));
    const { from, to } = bearingsOfSheets(sheets, point[0], point[1]);
    if (to - from > Math.PI) bearings.findAll();
    else bearings.find(from, to);
    for (let at = bearings.first; at < bearings.end; at++) {
      const k = bearings.order[at];
      for (let way = 1; way >= -1; way -= 2) {
        const n = ofFan[way > 0 ? k : count + k];
        if (n < 0) continue;
        const dz = way * directions[3 * k + 2];
        const meets = (frame: ClothFrame) =>
          frame.reachAlong(directions[3 * k], directions[3 * k + 1], dz) < reach[n] - TOUCH;
        if (frames.some(meets)) hidden.push(n);
      }
    }
    return hidden;
  }
}
