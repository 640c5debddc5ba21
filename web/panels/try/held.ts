import { computed, signal } from '@preact/signals';
import { paintDifference, changedGround } from '../../charts/difference.ts';
import { HEAT_RAMP, RAMP_SHARE, SCALES, paintCells } from '../../charts/ramp.ts';
import type { HeatPicture } from '../../map/overlays.ts';
import { isStale, liveAnswer } from '../../state/live.ts';
import { reckonedPlan } from '../../state/reckoned.ts';
import { heat } from '../../state/results.ts';
import { wornTheme } from '../../state/settings.ts';
import { mapCell, quantity, stage } from '../../state/view.ts';
import { preview } from '../../state/yard.ts';
import { rough } from './live-trial.ts';
import { openOption } from './tried.ts';

/** What the drawing shows: the yard as it is, with the open option, what the option changes, or where cloth like its first piece would pay. */
export type Side = 'before' | 'after' | 'difference' | 'payoff';
export const side = signal<Side>('after');

const alphaNow = (): number => 255 * RAMP_SHARE[wornTheme.value];
const OUT_OF_DATE = 0.5;

/** Darker than the paper in the light, lighter than it in the dark; the textures differ besides. */
const COLOURS = { light: { less: '#0b5563', more: '#8a2a0b' }, bright: { less: '#000000', more: '#8a0000' }, dark: { less: '#8fdcea', more: '#ffab85' } } as const;

const wanted = computed(() => (stage.value === 'try' && openOption.value !== null && (side.value === 'before' || side.value === 'difference') ? heat.value.asked : null));

/** The yard as it is, reckoned as the open option's is. */
export const unchanged = liveAnswer('load', () => wanted.value && { ...wanted.value, options: [] });

/** The first cloth of the open option: for its height and density the payoff is drawn. */
export const firstCloth = computed(() => openOption.value?.adds?.find((thing) => thing.kind === 'canopy' || thing.kind === 'screen') ?? null);

export const paying = liveAnswer('payoff', () => {
  const cloth = firstCloth.value;
  if (stage.value !== 'try' || side.value !== 'payoff' || cloth === null || preview.value !== null) return null;
  return { plan: reckonedPlan.value, height: cloth.height, density: cloth.density, cell: mapCell.value };
});

/** Both answers where they are for the same ground and the newest. */
const pair = computed(() => {
  const before = unchanged.value.shown;
  const after = heat.value.shown;
  if (!before || !after || wanted.value === null || isStale(heat.value) || isStale(unchanged.value)) return null;
  const { columns, rows } = before.value.grid;
  const same = after.value.grid.columns === columns && after.value.grid.rows === rows;
  return same ? { before: before.value, after: after.value } : null;
});

/** What lies over the plan instead of the option's own heat; `null`: that. */
export const heldPicture = computed<HeatPicture | null>(() => {
  const scale = SCALES[quantity.value];
  if (side.value === 'after' && quantity.value === 'hotLoad' && rough.value) {
    return { grid: rough.value.grid, rgba: paintCells(rough.value.hotLoad, scale, alphaNow()) };
  }
  const pays = paying.value.shown?.value;
  if (side.value === 'payoff' && pays) {
    const blank = pays.perArea.map((value) => (value > 0 ? value : NaN));
    return { grid: pays.grid, rgba: paintCells(blank, { ...scale, ramp: HEAT_RAMP, from: 0, to: pays.most }, alphaNow()) };
  }
  const before = unchanged.value.shown;
  if (wanted.value === null || !before) return null;
  if (side.value === 'before') {
    const alpha = alphaNow() * (isStale(unchanged.value) ? OUT_OF_DATE : 1);
    return { grid: before.value.grid, rgba: paintCells(before.value.cells[quantity.value], scale, alpha) };
  }
  const both = pair.value;
  return both && paintDifference(both.before.cells[quantity.value], both.after.cells[quantity.value], both.before.grid, scale, COLOURS[wornTheme.value], 255);
});

/** Ground that changes. [m²] */
export const changed = computed(() => {
  const both = pair.value;
  return both && changedGround(both.before.cells[quantity.value], both.after.cells[quantity.value], both.before.grid, SCALES[quantity.value]);
});
