import { computed, signal } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import { boundsOf, isCloth } from '../../../engine/index.ts';
import { paintDifference, changedGround } from '../../charts/difference.ts';
import { HEAT_RAMP, RAMP_SHARE, SCALES } from '../../charts/ramp.ts';
import { pictureOf } from '../../map/laid-on/heat-on-map.ts';
import type { HeatPicture } from '../../map/laid-on/overlays.ts';
import { isStale, liveAnswer } from '../../state/live.ts';
import { reckonedPlan } from '../../state/reckoned.ts';
import { heat, usualCellHere } from '../../state/results.ts';
import { wornTheme } from '../../state/settings.ts';
import { quantity, stage } from '../../state/view.ts';
import { plan, preview } from '../../state/yard.ts';
import { openOption } from '../parts/tried.ts';
import { rough } from './live-trial.ts';

/**
 * What the drawing shows: the yard as it is, with the open option, both with a bar between, what the option changes, or
 * where cloth like its first piece would pay.
 */
export type Side = 'before' | 'split' | 'after' | 'difference' | 'payoff';
export const side = signal<Side>('after');

/** Where the bar between before and after stands; `null`: in the middle of the yard. [m] */
export const barAt = signal<number | null>(null);

const alphaNow = (): number => 255 * RAMP_SHARE[wornTheme.value];
const OUT_OF_DATE = 0.5;

/** Darker than the paper in the light, lighter than it in the dark; the textures differ besides. */
const COLOURS = {
  light: { less: '#0b5563', more: '#8a2a0b' },
  bright: { less: '#000000', more: '#8a0000' },
  dark: { less: '#8fdcea', more: '#ffab85' },
} as const;

const wanted = computed(() =>
  stage.value === 'try' &&
  openOption.value !== null &&
  (side.value === 'before' || side.value === 'split' || side.value === 'difference')
    ? heat.value.asked
    : null,
);

/** The yard as it is, reckoned as the open option's is. */
export const unchanged = liveAnswer('load', () => wanted.value && { ...wanted.value, options: [] });

/** The first cloth of the open option: for its height and density the payoff is drawn. */
export const firstCloth = computed(() => openOption.value?.adds?.find(isCloth) ?? null);

export const paying = liveAnswer('payoff', () => {
  const cloth = firstCloth.value;
  if (stage.value !== 'try' || side.value !== 'payoff' || cloth === null || preview.value !== null) return null;
  return { plan: reckonedPlan.value, height: cloth.height, density: cloth.density, cell: usualCellHere.value };
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

/** The yard as it is in the map's colours, paler while it is out of date. */
const beforePicture = computed<HeatPicture | null>(() => {
  const before = unchanged.value.shown;
  if (wanted.value === null || !before) return null;
  const alpha = alphaNow() * (isStale(unchanged.value) ? OUT_OF_DATE : 1);
  return pictureOf(before.value.grid, before.value.cells[quantity.value], SCALES[quantity.value], alpha);
});

/** The yard with the cloth where it is now, while the full answer is not there yet. */
const roughPicture = computed<HeatPicture | null>(() =>
  quantity.value === 'hotLoad' && rough.value
    ? pictureOf(rough.value.grid, rough.value.hotLoad, SCALES.hotLoad, alphaNow())
    : null,
);

const afterPicture = computed<HeatPicture | null>(() => {
  if (roughPicture.value) return roughPicture.value;
  const after = heat.value.shown;
  if (!after) return null;
  const alpha = alphaNow() * (isStale(heat.value) ? OUT_OF_DATE : 1);
  return pictureOf(after.value.grid, after.value.cells[quantity.value], SCALES[quantity.value], alpha);
});

/** Before to the left of the bar, after to the right. */
const splitPicture = computed<HeatPicture | null>(() => {
  const [before, after] = [beforePicture.value, afterPicture.value];
  if (!before || !after || before.rgba.length !== after.rgba.length) return after ?? before;
  const { x0, cell, columns, rows } = after.grid;
  const left = 4 * Math.min(columns, Math.max(0, Math.round((barPlace.value - x0) / cell)));
  const rgba = after.rgba.slice();
  for (let j = 0; j < rows; j++)
    rgba.set(before.rgba.subarray(4 * j * columns, 4 * j * columns + left), 4 * j * columns);
  return { grid: after.grid, rgba };
});

/** How far across the plan the bar may be taken. [m] */
export const barRange = computed(() => {
  const { minX, maxX } = boundsOf(plan.value.site.boundary);
  return { from: minX, to: maxX };
});

export const barPlace = computed(() => barAt.value ?? (barRange.value.from + barRange.value.to) / 2);

const payoffPicture = computed<HeatPicture | null>(() => {
  const pays = paying.value.shown?.value;
  if (!pays) return null;
  const blank = pays.perArea.map((value) => (value > 0 ? value : NaN));
  const scale = { ...SCALES[quantity.value], ramp: HEAT_RAMP, from: 0, to: pays.most };
  return pictureOf(pays.grid, blank, scale, alphaNow());
});

const differencePicture = computed<HeatPicture | null>(() => {
  const both = pair.value;
  return (
    both &&
    paintDifference(
      both.before.cells[quantity.value],
      both.after.cells[quantity.value],
      both.before.grid,
      SCALES[quantity.value],
      COLOURS[wornTheme.value],
      255,
    )
  );
});

const PICTURES: Readonly<Record<Side, ReadonlySignal<HeatPicture | null>>> = {
  before: beforePicture,
  split: splitPicture,
  after: roughPicture,
  difference: differencePicture,
  payoff: payoffPicture,
};

/** What lies over the plan instead of the option's own heat; `null`: that. */
export const heldPicture = computed<HeatPicture | null>(() => PICTURES[side.value].value);

/** Ground that changes. [m²] */
export const changed = computed(() => {
  const both = pair.value;
  return (
    both &&
    changedGround(
      both.before.cells[quantity.value],
      both.after.cells[quantity.value],
      both.before.grid,
      SCALES[quantity.value],
    )
  );
});
