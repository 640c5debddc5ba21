import { effect } from '@preact/signals';
import { SCALES, paintCells } from '../charts/ramp.ts';
import { heatPicture } from '../map/overlays.ts';
import { heat } from '../state/results.ts';
import { quantity, stage } from '../state/view.ts';

/** The paper shines through a little, so that the plan's ink stays the stronger. */
const ALPHA = 200;
const ALPHA_OUT_OF_DATE = 110;

/** Lays the newest answer over the plan in every stage but the drawing one; paler while it is out of date. */
export function paintHeat(): void {
  effect(() => {
    const { shown, asked } = heat.value;
    if (!shown || stage.value === 'draw') {
      heatPicture.value = null;
      return;
    }
    const { grid, cells } = shown.value;
    const alpha = shown.args === asked ? ALPHA : ALPHA_OUT_OF_DATE;
    heatPicture.value = { grid, rgba: paintCells(cells[quantity.value], SCALES[quantity.value], alpha) };
  });
}
