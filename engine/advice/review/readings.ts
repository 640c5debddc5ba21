/** Readings of leaves against the estimate of the same minute. */

import { type HeatDay, heatDayOf } from '../../load/leaf/heat-day.ts';
import { surfaceTemperature } from '../../load/leaf/leaf.ts';
import { type LeafCase, spreadOf, spreadParts } from '../../load/leaf/spread.ts';
import { surroundingsAt } from '../../load/leaf/surroundings-at.ts';
import { createSkyViewer, type SkyViewer } from '../../load/light/sky-viewer.ts';
import { plantPoints } from '../../load/verdict/plant-points.ts';
import { plantFeatures } from '../../load/verdict/planted.ts';
import { CATALOGUE, plantRowOf } from '../../plan/catalogue/plants.ts';
import { yearOf, monthDayOf, dateOfMoment } from '../../plan/dates/parts.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { CivilDate, Plan, PlantRow, Reading } from '../../plan/types.ts';
import { formatTemperature } from '../../plan/units/shown.ts';
import { unitsOf } from '../../plan/units/units.ts';
import { momentWords } from '../../plan/words/moment-words.ts';
import { withoutCloth } from '../../plan/yards/without-cloth.ts';
import { buildScene } from '../../scene/build.ts';
import type { OwnCrown, Scene } from '../../scene/solids.ts';
import { instantOf } from '../../sun/days/zone.ts';
import { nearestOfEight } from '../why/side.ts';
import type { ReadingCheck } from './types.ts';

/** Where a reading names no plant: a leaf of this width at this height. [m] */
const ANY_LEAF_WIDTH = 0.05;
const ANY_HEIGHT = 1;
/** Air warmer by this than the hottest day known was read in the sun or beside a hot wall. Our choice. [K] */
const NO_SUCH_AIR = 3;
/** A cloth that takes less of the beam than this is none. */
const NO_CLOTH = 1e-6;

export type LeafReading = Reading & { readonly leaf: number; readonly air: number };

/** Readings that can be compared: of a leaf, with the air beside it. */
export function leafReadings(plan: Plan): LeafReading[] {
  return plan.features.filter(
    (feature): feature is LeafReading =>
      feature.kind === 'reading' && feature.leaf !== undefined && feature.air !== undefined,
  );
}

/**
 * Each reading against the estimate at its minute, one that was taken in the open without the plan's cloth. Readings at
 * night, of a month without climate, or said to be under a cloth that the plan does not have there, are named in
 * `left`.
 * @param stepMinutes how finely the day is cut: 1 for the answer, more while trying corrections
 */
export function checkReadings(
  plan: Plan,
  readings: readonly LeafReading[],
  stepMinutes = 1,
): { checks: ReadingCheck[]; cases: ReadonlyMap<string, LeafCase>; left: string[] } {
  const checks: ReadingCheck[] = [];
  const cases = new Map<string, LeafCase>();
  const left: string[] = [];
  const drawn = readYard(plan, stepMinutes);
  const clothless = readYard(withoutCloth(plan), stepMinutes);
  for (const reading of readings) {
    const leaf = leafRead(plan, reading, drawn, clothless);
    if ('isLeft' in leaf) {
      left.push(`The reading of ${momentWords(reading.when, unitsOf(plan))} ${leaf.isLeft}`);
      continue;
    }
    const { check, leafCase } = heldAgainst(reading, leaf);
    checks.push(check);
    cases.set(reading.id, leafCase);
  }
  return { checks, cases, left };
}

/** A yard as leaves are read in it. */
interface ReadYard {
  readonly sky: SkyViewer;
  /** A day by its date, laid out once; `null` where the climate has no figures for its month. */
  dayIn(date: CivilDate): HeatDay | null;
}

function readYard(plan: Plan, stepMinutes: number): ReadYard {
  const scene = buildScene(plan);
  const days = new Map<CivilDate, HeatDay | null>();
  return {
    sky: createSkyViewer(scene),
    dayIn(date) {
      const known = days.get(date);
      if (known !== undefined) return known;
      const day = dayOf(plan, scene, date, stepMinutes);
      days.set(date, day);
      return day;
    },
  };
}

/** A leaf at the minute of its reading; whether it has water is for the reading to say. */
type LeafRead = Omit<LeafCase, 'watering'>;

/** @returns the leaf, or the end of the sentence that says why the reading is left */
function leafRead(
  plan: Plan,
  reading: LeafReading,
  drawn: ReadYard,
  clothless: ReadYard,
): LeafRead | { readonly isLeft: string } {
  const date = dateOfMoment(reading.when);
  const hottest = hottestKnown(plan);
  if (reading.air > hottest + NO_SUCH_AIR) return { isLeft: inTheSun(plan, reading.air, hottest) };
  // A leaf read in the open beside a covered one of the same plant had no cloth over it, whatever hangs on the plan.
  const { sky, dayIn } = reading.covered === false ? clothless : drawn;
  const day = dayIn(date);
  if (day === null) return { isLeft: 'is left out: the climate has no figures for its month.' };
  const ms = instantOf(reading.when, plan.site.timeZone);
  const sample = ms === null ? -1 : nearestSample(day, ms);
  if (sample < 0) return { isLeft: 'is left out: the sun was down.' };
  const { point, own, row } = leafPlace(plan, reading);
  const share = day.caster.sharesAt(point, own)[sample];
  if (reading.covered === true) {
    const bare = clothless.dayIn(date)?.caster.sharesAt(point, own)[sample] ?? share;
    if (bare > 0 && bare - share < NO_CLOTH)
      return {
        isLeft:
          'was taken under cloth, but no cloth in the plan shades that leaf at that minute, so it is not held ' +
          'against the estimate: draw the cloth, or take the option that has it.',
      };
  }
  const moment = { ...day.moments[sample], air: reading.air, airMax: reading.air };
  return { moment, sample, shelter: day.shelter, row, share, around: surroundingsAt(sky, day, point, own) };
}

/** As far as anybody said: of the climate, or of a summer as it was. [°C] */
function hottestKnown({ climate, summers = [] }: Plan): number {
  return Math.max(climate.heatwaveHigh, ...summers.flatMap(({ hottest }) => hottest ?? []));
}

function inTheSun(plan: Plan, air: number, hottest: number): string {
  const [read, known] = [air, hottest].map((celsius) => formatTemperature(celsius, unitsOf(plan)));
  return (
    `is left out: air of ${read} is more than the hottest day brings here (${known}). The thermometer stood in the ` +
    `sun or at a hot wall: hang it in the shade, and read again.`
  );
}

function heldAgainst(reading: LeafReading, leaf: LeafRead): { check: ReadingCheck; leafCase: LeafCase } {
  const { moment, row, share, around } = leaf;
  const watered = surfaceTemperature(moment, row, 'watered', share, around);
  const thirsty = surfaceTemperature(moment, row, 'thirsty', share, around);
  const difference =
    reading.leaf > thirsty ? reading.leaf - thirsty : reading.leaf < watered ? reading.leaf - watered : 0;
  const leafCase: LeafCase = { ...leaf, watering: reading.leaf < watered ? 'watered' : 'thirsty' };
  const spread = spreadOf(spreadParts(leafCase, thirsty));
  const { id, when, air } = reading;
  return {
    leafCase,
    check: {
      id,
      plant: reading.plant ?? null,
      when,
      leaf: reading.leaf,
      air,
      share,
      watered,
      thirsty,
      difference,
      spread,
      outside: Math.abs(difference) > spread,
    },
  };
}

/** The date of a reading as a day of the plan; its own year counts. */
function dayOf(plan: Plan, scene: Scene, date: CivilDate, stepMinutes: number): HeatDay | null {
  const monthDay = monthDayOf(date);
  const season = { ...plan.season, year: yearOf(date), from: monthDay, to: monthDay, stepMinutes };
  const day = heatDayOf({ ...plan, season }, scene, { kind: 'day', date: monthDay });
  return day.ok ? day.value : null;
}

function nearestSample({ samples }: HeatDay, ms: number): number {
  let nearest = -1;
  for (let k = 0; k < samples.count; k++)
    if (nearest < 0 || Math.abs(samples.when[k] - ms) < Math.abs(samples.when[nearest] - ms)) nearest = k;
  const reach = nearest < 0 ? 0 : samples.hours[nearest] * 3_600_000;
  return nearest >= 0 && Math.abs(samples.when[nearest] - ms) <= reach ? nearest : -1;
}

/**
 * Where the leaf was: the side of its plant, the plant's top, or a metre above the spot. Always a leaf, also of a plant
 * judged by its fruit.
 */
function leafPlace(plan: Plan, reading: Reading): { point: SpacePoint; own?: OwnCrown; row: PlantRow } {
  const feature = plantFeatures(plan).find(({ id }) => id === reading.plant);
  const found = feature?.plant === undefined ? undefined : plantRowOf(plan, feature.plant);
  const row: PlantRow = {
    ...(found ?? { ...CATALOGUE[0], leafWidth: ANY_LEAF_WIDTH, bothSides: false }),
    limitOf: 'leaf',
  };
  const [x, y] = reading.at;
  if (feature === undefined) return { point: [x, y, ANY_HEIGHT], row };
  if (feature.kind === 'bed') return { point: [x, y, feature.plantHeight], row };
  const { points, own } = plantPoints(plan, feature);
  const side = typeof reading.side === 'number' ? nearestOfEight(reading.side) : 'top';
  return { point: (points.find((candidate) => candidate.side === side) ?? points[0]).point, own, row };
}
