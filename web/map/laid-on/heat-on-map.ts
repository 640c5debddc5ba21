import { effect, signal } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import type { GridSpec } from '../../../engine/index.ts';
import { paintField } from '../../charts/field.ts';
import { RAMP_SHARE, SCALES, paintCells } from '../../charts/ramp.ts';
import type { Scale } from '../../charts/ramp.ts';
import { heat } from '../../state/results.ts';
import { wornTheme } from '../../state/settings.ts';
import { mapBlocks, quantity, stage } from '../../state/view.ts';
import { heatPicture } from './overlays.ts';
import type { HeatPicture } from './overlays.ts';

const OUT_OF_DATE = 0.5;

/** A colour of the ramp as the map shows it on this theme's paper, for legends. */
export function paintedColour(colour: string): string {
  return `color-mix(in srgb, ${colour} ${RAMP_SHARE[wornTheme.value] * 100}%, var(--paper))`;
}

/** Cells as the map shows them: a smooth field, or the blocks themselves where they are asked for. */
export function pictureOf(grid: GridSpec, values: Float64Array, scale: Scale, alpha: number): HeatPicture {
  return mapBlocks.value ? { grid, rgba: paintCells(values, scale, alpha) } : paintField(grid, values, scale, alpha);
}

/** A picture that a card lays over the plan in the heat's place; while it holds `null`, the heat is shown. */
export const standIn = signal<ReadonlySignal<HeatPicture | null> | null>(null);

/** Lays the newest answer over the plan in every stage but the drawing one; paler while it is out of date. */
export function paintHeat(): void {
  effect(() => {
    const { shown, asked } = heat.value;
    if (!shown || stage.value === 'draw') {
      heatPicture.value = null;
      return;
    }
    const instead = standIn.value?.value;
    if (instead) {
      heatPicture.value = instead;
      return;
    }
    const { grid, cells } = shown.value;
    const alpha = 255 * RAMP_SHARE[wornTheme.value] * (shown.args === asked ? 1 : OUT_OF_DATE);
    heatPicture.value = pictureOf(grid, cells[quantity.value], SCALES[quantity.value], alpha);
  });
}
