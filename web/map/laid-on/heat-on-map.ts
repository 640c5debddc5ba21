import { effect, signal } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import { RAMP_SHARE, SCALES, paintCells } from '../../charts/ramp.ts';
import { heatPicture } from './overlays.ts';
import type { HeatPicture } from './overlays.ts';
import { heat } from '../../state/results.ts';
import { wornTheme } from '../../state/settings.ts';
import { quantity, stage } from '../../state/view.ts';

const OUT_OF_DATE = 0.5;

/** A colour of the ramp as the map shows it on this theme's paper, for legends. */
export function paintedColour(colour: string): string {
  return `color-mix(in srgb, ${colour} ${RAMP_SHARE[wornTheme.value] * 100}%, var(--paper))`;
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
    heatPicture.value = { grid, rgba: paintCells(cells[quantity.value], SCALES[quantity.value], alpha) };
  });
}
