import type { GridSpec } from '../../cast/grids/grid-spec.ts';
import { joinedCells } from '../../cast/grids/joined-cells.ts';
import { radiansOf, degreesOf, wrapBearing, turnBetween } from '../../plan/geometry/angles.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import { countUp } from '../../plan/numbers/tolerances.ts';
import { formatStretch, clockAt } from '../../plan/units/clock.ts';
import { formatArea, formatDistance } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { compassWord } from '../../plan/words/compass-word.ts';
import type { Cells, HotSpot, Stretch } from '../types.ts';
import { type CameBy, cameBy, cameByWords } from '../verdict/came-by.ts';
import type { Yard } from '../yard.ts';
import { cellCenter } from './grid-of.ts';
import { gradeOf, GRADE_WORDS } from './nine.ts';

/** Grades from this on make a hot spot. */
const HOT_GRADE = 4;
/** Smaller ones are not told. [m²] */
const LEAST_AREA = 0.25;
/** From this share of the ground on, where that is large, nobody looks for a spot by its middle. Our choice. */
const NEARLY_ALL = 0.8;
/** [m²] */
const LARGE = 20;
/** The worst hours are this many halves of an hour on end. */
const WORST_HALF_HOURS = 6;
const MS_PER_HALF_HOUR = 1_800_000;
const HALF_HOURS_PER_DAY = 50; // a day may have 25 h

/** Cells of grade 4 or 5 joined by edges, at least 0.25 m², the one with the most hot load over its area first. */
export function hotSpotsOf(yard: Yard, grid: GridSpec, cells: Cells, units: Units): HotSpot[] {
  const leastCells = countUp(LEAST_AREA / grid.cell ** 2);
  const hot = Uint8Array.from(cells.grade, (grade) => (grade >= HOT_GRADE ? 1 : 0));
  return joinedCells(grid.columns, grid.rows)
    .parts(hot)
    .filter((area) => area.length >= leastCells)
    .map((area) => describe(yard, grid, cells, area, units))
    .toSorted((a, b) => b.area * b.hotLoad - a.area * a.hotLoad);
}

/** "About 70 m²": an edge by cells is no nearer than that. @param squareMetres [m²] */
function aboutArea(squareMetres: number, units: Units): string {
  const step = squareMetres < 3 ? 0.5 : squareMetres < 20 ? 1 : 5;
  const rounded = Math.max(step, step * Math.round(squareMetres / step));
  return `About ${formatArea(rounded, units).replace('.0 ', ' ')}`;
}

function describe(yard: Yard, grid: GridSpec, cells: Cells, area: readonly number[], units: Units): HotSpot {
  const hotLoad = area.reduce((sum, index) => sum + cells.hotLoad[index], 0) / area.length;
  const hottest = area.reduce((best, index) => (cells.hotLoad[index] > cells.hotLoad[best] ? index : best), area[0]);
  const [x, y] = cellCenter(grid, hottest);
  const worst = worstHours(yard, [x, y, grid.height]);
  const center = meanCenter(grid, area);
  const size = area.length * grid.cell ** 2;
  const grade = gradeOf(hotLoad);
  const open = cells.hotLoad.reduce((count, load) => (Number.isNaN(load) ? count : count + 1), 0);
  const isNearlyAll = size >= LARGE && area.length >= NEARLY_ALL * open;
  const place = `${formatDistance(center[0], units)} across, ${formatDistance(center[1], units)} up`;
  const sentence =
    `${isNearlyAll ? 'Nearly all of the ground' : `${aboutArea(size, units)} round ${place}`}: ` +
    `${GRADE_WORDS[grade - 1]}; ` +
    `worst ${formatStretch(worst.when, units)}, the sun from the ${compassWord(worst.from)}, ` +
    `${cameByWords(yard.plan, worst.came)}.`;
  return {
    center,
    area: size,
    cells: area.length,
    grade,
    hotLoad,
    when: worst.when,
    from: worst.from,
    past: worst.came ? [worst.came.id] : [],
    sentence,
  };
}

function meanCenter(grid: GridSpec, area: readonly number[]): [number, number] {
  let sumX = 0;
  let sumY = 0;
  for (const index of area) {
    const [x, y] = cellCenter(grid, index);
    sumX += x;
    sumY += y;
  }
  return [sumX / area.length, sumY / area.length];
}

/** The three hours on end with the most hot load at a point, over all days of the period, and how that sun comes. */
function worstHours(yard: Yard, point: SpacePoint): { when: Stretch; from: number; came: CameBy | null } {
  const { samples, scene, plan } = yard;
  const weight = yard.weights.channels.hotLoad;
  const shares = yard.caster.sharesAt(point);
  const binOf = (k: number) =>
    Math.floor((samples.when[k] - samples.days[samples.dayOf[k]].startMs) / MS_PER_HALF_HOUR);
  const bins = new Float64Array(HALF_HOURS_PER_DAY);
  for (let k = 0; k < samples.count; k++) bins[binOf(k)] += shares[k] * weight[k];
  let first = 0;
  let most = -1;
  for (let start = 0; start + WORST_HALF_HOURS <= bins.length; start++) {
    const sum = bins.subarray(start, start + WORST_HALF_HOURS).reduce((total, bin) => total + bin, 0);
    if (sum > most) [first, most] = [start, sum];
  }
  const inWindow = (k: number) => shares[k] * weight[k] > 0 && binOf(k) >= first && binOf(k) < first + WORST_HALF_HOURS;
  let east = 0;
  let north = 0;
  for (let k = 0; k < samples.count; k++) {
    if (!inWindow(k)) continue;
    const load = shares[k] * weight[k];
    east += load * Math.sin(radiansOf(samples.azimuth[k]));
    north += load * Math.cos(radiansOf(samples.azimuth[k]));
  }
  const from = wrapBearing(degreesOf(Math.atan2(east, north)));
  const apart = (k: number) => Math.abs(turnBetween(from, samples.azimuth[k]));
  let typical = -1;
  for (let k = 0; k < samples.count; k++) if (inWindow(k) && (typical < 0 || apart(k) < apart(typical))) typical = k;
  const day = samples.days[samples.dayOf[typical]];
  const came = cameBy(scene, plan, point, samples.azimuth[typical], samples.altitude[typical], day.monthDay);
  return { when: { from: clockAt(30 * first), to: clockAt(30 * (first + WORST_HALF_HOURS)) }, from, came };
}
