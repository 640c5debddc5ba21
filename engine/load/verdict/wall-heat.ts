/** What walls and buildings add to a leaf's heat, told by the hour. */

import type { Plan, PlantRow } from '../../plan/types.ts';
import { formatClock, formatStretch, clockAt, minutesOf } from '../../plan/units/clock.ts';
import { formatTemperatureDifference } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { listWords } from '../../plan/words/list-words.ts';
import { namedInside } from '../../plan/words/names.ts';
import type { HeatDay } from '../leaf/heat-day.ts';
import { type HotRun, lasts } from '../leaf/judge.ts';
import type { LitPoint } from '../leaf/scorch.ts';
import type { Surroundings, WallGlow } from '../leaf/surroundings.ts';
import type { SkyViewer } from '../light/sky-viewer.ts';
import type { WallHeat } from '../types.ts';
import { stretchOf } from './clock.ts';
import type { JudgePoint } from './judged.ts';

/** Less than this is not told. [K] */
const LEAST = 0.5;
/** The hours told are those in which it adds at least this share of what it adds at most. Our choice. */
const MOSTLY = 0.5;

/**
 * What each wall or building adds to the thirsty leaf at a point while it is hot: against one that threw back no light,
 * was no warmer than the air and hid no ground. The most first; those that add less than 0.5 K, or for less than half
 * an hour, are left out, and a fruit's estimate knows no walls.
 * @param run when it is hot
 */
export function wallHeats(
  plan: Plan,
  heat: HeatDay,
  sky: SkyViewer,
  row: PlantRow,
  { point, own }: JudgePoint,
  { shares, around }: LitPoint,
  run: HotRun,
): WallHeat[] {
  const { walls } = around;
  if (walls === null) return [];
  const leaf = heat.leaves('thirsty', row);
  return [...sky.walls.each(heat, point, own)]
    .flatMap(([id, alone]): WallHeat[] => {
      const without: Surroundings = { ...around, walls: less(walls, alone) };
      const adds = (k: number) => leaf.on(k, shares, around) - leaf.on(k, shares, without);
      const most = stretchOfMost(adds, leaf.hours, run);
      if (most.adds < LEAST || !lasts(most.hours)) return [];
      return [{ id, adds: most.adds, ...stretchOf(heat.samples, most.first, most.last, plan.site.timeZone) }];
    })
    .toSorted((a, b) => b.adds - a.adds);
}

/** The samples round the most of a run, their hours and mean. */
function stretchOfMost(adds: (k: number) => number, hours: Float64Array, run: HotRun) {
  let top = run.first;
  for (let k = run.first; k <= run.last; k++) if (adds(k) > adds(top)) top = k;
  const least = Math.max(LEAST, MOSTLY * adds(top));
  let first = top;
  while (first > run.first && adds(first - 1) >= least) first--;
  let last = top;
  while (last < run.last && adds(last + 1) >= least) last++;
  let sum = 0;
  let long = 0;
  for (let k = first; k <= last; k++) {
    sum += adds(k) * hours[k];
    long += hours[k];
  }
  return { first, last, hours: long, adds: sum / long };
}

function less(all: WallGlow, part: WallGlow): WallGlow {
  const minus = (a: Float64Array, b: Float64Array) => a.map((value, k) => value - b[k]);
  return {
    sky: all.sky - part.sky,
    ground: all.ground - part.ground,
    light: minus(all.light, part.light),
    above: minus(all.above, part.above),
    below: minus(all.below, part.below),
  };
}

/** "the white wall adds 2 °C from 15:00 to 19:00", to the full hour; of none "". */
export function wallWords(plan: Plan, walls: readonly WallHeat[], units: Units): string {
  return listWords(
    walls.map(({ id, adds, from, to }) => {
      const by = formatTemperatureDifference(adds, units, adds < 1 ? 1 : 0);
      const hours = { from: wholeHour(from), to: wholeHour(to) };
      const name = namedInside(plan, id);
      const pause = name.includes(',') ? ',' : '';
      const when =
        hours.from === hours.to ? `about ${formatClock(hours.from, units)}` : `from ${formatStretch(hours, units)}`;
      return `${name}${pause} adds ${by} ${when}`;
    }),
  );
}

function wholeHour(clock: string): string {
  return clockAt(60 * Math.round(minutesOf(clock) / 60));
}
