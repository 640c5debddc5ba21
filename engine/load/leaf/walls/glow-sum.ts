/** A sum over what patches throw on a point. */

import type { WallGlow } from '../surroundings.ts';
import type { LitDays } from './lit-days.ts';
import type { PatchLight } from './patch-light.ts';

/** A glow that may still be changed. */
export type OpenGlow = { -readonly [key in keyof WallGlow]: WallGlow[key] };

/** Weights of patches of one colour. */
interface OfColour {
  reflects: number;
  over: number;
  under: number;
}

/** Adds up what patches throw: what the sun adds patch by patch, what they throw in the shade colour by colour. */
export class GlowSum {
  private readonly days: LitDays;
  private readonly glow: OpenGlow;
  private readonly colours: OfColour[] = [];

  /** @param glow is added to */
  constructor(days: LitDays, glow: OpenGlow) {
    this.days = days;
    this.glow = glow;
  }

  /** @param over, under the patch's weights from above and from below; below 0: it is taken away */
  add({ reflects, lit, on, glow }: PatchLight, over: number, under: number): void {
    const { light, above, below } = this.glow;
    const colour = this.colour(reflects);
    colour.over += over;
    colour.under += under;
    const bright = (over + under) * reflects;
    const isOver = over !== 0;
    const [first, weight] = isOver ? [above, over] : [below, under];
    for (let n = 0; n < lit.length; n++) {
      const k = lit[n];
      light[k] += bright * on[n];
      first[k] += weight * glow[n];
    }
    // Few patches are seen both above the level of the point and below it.
    if (isOver && under !== 0) for (let n = 0; n < lit.length; n++) below[lit[n]] += under * glow[n];
  }

  /** Puts a patch's light under cloth in the place of what it was. */
  exchange(was: PatchLight, now: PatchLight, over: number, under: number): void {
    const { light, above, below } = this.glow;
    const bright = (over + under) * was.reflects;
    for (const n of now.dimmed) {
      const k = was.lit[n];
      const cooler = now.glow[n] - was.glow[n];
      light[k] += bright * (now.on[n] - was.on[n]);
      above[k] += over * cooler;
      below[k] += under * cooler;
    }
  }

  whole(): WallGlow {
    const { light, above, below } = this.glow;
    for (const { reflects, over, under } of this.colours) {
      const { on, glow } = this.days.shade(reflects);
      const bright = (over + under) * reflects;
      for (let k = 0; k < on.length; k++) {
        light[k] += bright * on[k];
        above[k] += over * glow[k];
        below[k] += under * glow[k];
      }
      this.glow.sky += over;
      this.glow.ground += under;
    }
    return this.glow;
  }

  private colour(reflects: number): OfColour {
    for (const colour of this.colours) if (colour.reflects === reflects) return colour;
    const colour = { reflects, over: 0, under: 0 };
    this.colours.push(colour);
    return colour;
  }
}
