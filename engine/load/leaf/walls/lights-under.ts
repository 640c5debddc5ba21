/** How patches are lit under further cloth: their light without it, less what the cloth takes. */

import type { Faces } from '../../../scene/faces/faces.ts';
import type { FacePatch } from '../../../scene/faces/patches.ts';
import type { ClothSheet } from '../../../scene/solids.ts';
import type { LitDays } from './lit-days.ts';
import { type FaceLights, type PatchLight, shineOn } from './patch-light.ts';
import { SheetShadows } from './sheet-shadows.ts';

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

  private dimmedLight(patch: FacePatch, bare: PatchLight, shares: Float64Array): PatchLight {
    const on = bare.on.slice();
    const glow = bare.glow.slice();
    const shine = shineOn(patch, this.days, on, glow);
    const dimmed: number[] = [];
    for (let n = 0, at = 0; n < shares.length; n++) {
      if (bare.shares[n] === 0) continue;
      if (shares[n] !== bare.shares[n]) {
        shine(n, shares[n], at);
        dimmed.push(at);
      }
      at++;
    }
    return { ...bare, shares, on, glow, dimmed: Int32Array.from(dimmed) };
  }
}
