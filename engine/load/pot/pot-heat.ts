/**
 * Heat in a pot of soil through one day that repeats itself.
 * The pot is a round slice at half its height, cut into rings and eight sectors; heat flows by conduction between them,
 * in through the wall from the air and the sun on it, and out to the open top and the foot. After Martin & Ingram
 * (1992, J. Amer. Soc. Hort. Sci. 117:571–577; 1993, HortScience 28:18–19), who solved the same for black nursery pots
 * (from memory); numbers our own choice. Not in it: water that runs through, evaporation through an unglazed or cloth
 * wall (both cool), hot paving below (heats).
 */

import { BEARINGS } from '../verdict/plant-points.ts';

const SIDES = BEARINGS.length;
const SECTOR = (2 * Math.PI) / SIDES;
const DAY_SECONDS = 86_400;

/**
 * Moist potting soil. Conductivity [W/(m K)]: peat 0.05 air-dry to 0.5 near saturation, sandy soil 0.5 to 1.5
 * (Heiskanen 2000, Suo 51), so garden mixes lie between; heat capacity [J/(m³ K)] of a mix half full of water (de Vries
 * 1963, from memory).
 */
export const POT_SOIL = { conductivity: 0.6, heatCapacity: 2.1e6 } as const;
/**
 * By longwave, at about 50 °C. [W/(m² K)] A wall sees half cool sky and half warm ground: together about air (ASHRAE,
 * from memory).
 */
const RADIATED = 7;
/**
 * By still air at a wall 25 K warmer, and for each m/s of wind (Watmuff, Charters & Proctor 1977, from memory). [W/(m²
 * K)]
 */
const STILL_AIR = 4;
const PER_WIND = 3;
/**
 * Of a thin plastic wall and the loose soil against it. [m² K/W] (Our choice; a dry wall that has shrunk from its soil
 * has more.)
 */
export const WALL = 0.02;
/** From the soil's open top, in the foliage's shade. [W/(m² K)] The foot stands on ground and passes nothing. */
export const OPEN_TOP = 10;

/**
 * Resistance of a still gap between two pots, 1 cm or wider. [m² K/W] (ISO 6946, from memory; holes and slits make it
 * less)
 */
export const AIR_GAP = 0.15;

const RING = 0.01;
/** Largest share of a cell's heat that may move in one step; explicit steps swing above 1. */
const STABLE = 0.8;
const SETTLED = 0.01;
const MOST_DAYS = 60;

/** Light and air of the day, by true solar time. */
export interface PotDay {
  /** Middle of the sample, rising. [h] Samples with the sun down may be left out. */
  readonly hour: Float64Array;
  /** Sunlight on the outside of the wall. [W/m²] Eight a sample, by `BEARINGS`. */
  readonly light: Float64Array;
  /** Air at an hour from 0 to 24. [°C] */
  readonly airAt: (hour: number) => number;
}

export interface Pot {
  /** Outside. [m] */
  readonly width: number;
  readonly height: number;
  /** Of the wall that the sun meets. */
  readonly absorptance: number;
  /** At the pot. [m/s] */
  readonly wind: number;
  /** Of what lies between that wall and the soil, 0 for a plain pot. [m² K/W] */
  readonly insulation: number;
}

/** The warmest that each side and the middle get in a day. [°C] */
export interface WarmestOfDay {
  /** By `BEARINGS`, and when, by true solar time. [h] */
  readonly sides: Float64Array;
  readonly hours: Float64Array;
  middle: number;
}

/**
 * The day that comes back the same: from the mean of what its wall feels, day after day until none of its cells moves
 * any more. Steps in time and space are its own, whatever the samples'. @param depth inside the wall [m]
 * @throws RangeError where the pot has no room for its rings (below 3 cm of radius) or no height
 */
export function settledDay(day: PotDay, pot: Pot, depth: number): WarmestOfDay {
  const slice = sliceOf(pot);
  const { outside, air } = forcing(day, pot, slice.steps);
  let mean = 0;
  for (const warm of outside) mean += warm / outside.length;
  let cells: Float64Array = new Float64Array((slice.rings + 2) * SIDES).fill(mean);
  const seen: WarmestOfDay = { sides: new Float64Array(SIDES), hours: new Float64Array(SIDES), middle: 0 };
  for (let days = 0, moved = Infinity; moved > SETTLED && days < MOST_DAYS; days++) {
    const before = cells.slice();
    seen.sides.fill(-Infinity);
    seen.middle = -Infinity;
    cells = throughDay(slice, outside, air, cells, depth, seen);
    moved = 0;
    for (let i = 0; i < cells.length - SIDES; i++) moved = Math.max(moved, Math.abs(cells[i] - before[i]));
  }
  return seen;
}

/** Rings from the middle outwards. Rates are shares of a cell's difference to its neighbour that move in one step. */
interface Slice {
  readonly rings: number;
  readonly steps: number;
  readonly inward: Float64Array;
  readonly outward: Float64Array;
  readonly sideways: Float64Array;
  /** Of the middle's disc to each of the eight inmost cells; of any cell to the air over the top. */
  readonly middle: number;
  readonly ends: number;
}

/** Between a wall and the air. [W/(m² K)] @param wind [m/s] */
export function wallConductance(wind: number): number {
  return RADIATED + STILL_AIR + PER_WIND * wind;
}

function sliceOf({ width, height, insulation, wind }: Pot): Slice {
  const radius = width / 2;
  const rings = Math.max(3, Math.floor((0.75 * radius) / RING));
  const disc = radius - rings * RING;
  if (!(disc > 0.005) || !(height > 0))
    throw new RangeError(`A pot ${width} m wide and ${height} m high is too small to reckon.`);
  const { conductivity, heatCapacity } = POT_SOIL;
  const perWidth = conductivity / heatCapacity;
  const atWall = 1 / (1 / wallConductance(wind) + WALL + insulation + RING / 2 / conductivity) / heatCapacity;
  const [inward, outward, sideways] = [new Float64Array(rings), new Float64Array(rings), new Float64Array(rings)];
  const firstGap = (disc + RING) / 2;
  let fastest = 0;
  for (let j = 0; j < rings; j++) {
    const from = disc + j * RING;
    const to = from + RING;
    const area = ((from + to) / 2) * RING * SECTOR;
    inward[j] = (perWidth * from * SECTOR) / (j === 0 ? firstGap : RING) / area;
    outward[j] = j === rings - 1 ? (atWall * to * SECTOR) / area : (perWidth * to * SECTOR) / RING / area;
    sideways[j] = (perWidth * RING) / (((from + to) / 2) * SECTOR) / area;
    fastest = Math.max(fastest, inward[j] + outward[j] + 2 * sideways[j]);
  }
  const middle = (perWidth * disc * SECTOR) / firstGap / (Math.PI * disc * disc);
  // Half-way up a column that is open above and closed below, heat has 4/π² of the height to go (its slowest mode).
  const ends = 1 / ((4 / Math.PI ** 2) * (height / conductivity) + 1 / OPEN_TOP) / (heatCapacity * height);
  fastest = Math.max(fastest, SIDES * middle) + ends;
  const steps = Math.max(288, Math.ceil((DAY_SECONDS * fastest) / STABLE));
  const step = DAY_SECONDS / steps;
  const inSteps = (rates: Float64Array) => rates.map((rate) => rate * step);
  return {
    rings,
    steps,
    inward: inSteps(inward),
    outward: inSteps(outward),
    sideways: inSteps(sideways),
    middle: middle * step,
    ends: ends * step,
  };
}

/**
 * What the wall feels: the air, warmed by the sunlight that it takes in (sol-air temperature). Eight a step; and the
 * air. [°C]
 */
function forcing(day: PotDay, pot: Pot, steps: number): { outside: Float64Array; air: Float64Array } {
  const warmth = pot.absorptance / wallConductance(pot.wind);
  const outside = new Float64Array(steps * SIDES);
  const air = new Float64Array(steps);
  const { hour, light } = day;
  let next = 0;
  for (let step = 0; step < steps; step++) {
    const now = ((step + 0.5) * 24) / steps;
    while (next < hour.length && hour[next] <= now) next++;
    const lit = next > 0 && next < hour.length;
    const part = lit ? (now - hour[next - 1]) / (hour[next] - hour[next - 1]) : 0;
    air[step] = day.airAt(now);
    for (let side = 0; side < SIDES; side++) {
      const sun = lit ? (1 - part) * light[(next - 1) * SIDES + side] + part * light[next * SIDES + side] : 0;
      outside[step * SIDES + side] = air[step] + warmth * sun;
    }
  }
  return { outside, air };
}

/**
 * One day of explicit steps. Eight cells a row: the middle, as often as it has neighbours, the rings, and the air at
 * the wall, so that no step asks where a ring lies. Writes the day's warmest into `seen`, returns the cells after it.
 */
function throughDay(
  slice: Slice,
  outside: Float64Array,
  air: Float64Array,
  start: Float64Array,
  depth: number,
  seen: WarmestOfDay,
): Float64Array {
  const { rings, steps, inward, outward, sideways, middle, ends } = slice;
  const inRings = Math.min(rings - 1, Math.max(0, depth / RING - 0.5));
  const outer = (rings - Math.floor(inRings)) * SIDES;
  const inner = Math.max(SIDES, outer - SIDES);
  const wall = (rings + 1) * SIDES;
  const part = inRings - Math.floor(inRings);
  let cells = start;
  let after: Float64Array = new Float64Array(start.length);
  for (let step = 0; step < steps; step++) {
    const center = cells[0];
    const above = air[step];
    let gained = 0;
    for (let side = 0; side < SIDES; side++) {
      gained += middle * (cells[SIDES + side] - center);
      cells[wall + side] = outside[step * SIDES + side];
    }
    after.fill(center + gained + ends * (above - center), 0, SIDES);
    for (let j = 0; j < rings; j++) {
      const first = (j + 1) * SIDES;
      const toMiddle = inward[j];
      const toWall = outward[j];
      const around = sideways[j];
      let right = cells[first + SIDES - 1];
      let here = cells[first];
      for (let i = first; i < first + SIDES; i++) {
        const left = i === first + SIDES - 1 ? cells[first] : cells[i + 1];
        const across = toMiddle * (cells[i - SIDES] - here) + toWall * (cells[i + SIDES] - here);
        after[i] = here + across + around * (left + right - 2 * here) + ends * (above - here);
        right = here;
        here = left;
      }
    }
    [cells, after] = [after, cells];
    if (cells[0] > seen.middle) seen.middle = cells[0];
    for (let side = 0; side < SIDES; side++) {
      const roots = (1 - part) * cells[outer + side] + part * cells[inner + side];
      if (roots > seen.sides[side]) {
        seen.sides[side] = roots;
        seen.hours[side] = ((step + 1) * 24) / steps;
      }
    }
  }
  return cells;
}
