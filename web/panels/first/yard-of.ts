import {
  CATALOGUE,
  climateOfPlace,
  defaultPm,
  knownElevationOf,
  parseLength,
  parseSide,
  parseTemperature,
  toCentimetre,
  yearOf,
} from '../../../engine/index.ts';
import type { Climate, JournalEntry, Plan, PlanPoint, Plant, Site, Units } from '../../../engine/index.ts';
import { bySeaOf } from '../parts/world/sea.ts';
import { placeTyped } from '../parts/world/typed-place.ts';
import type { Answers, StepName } from './answers.ts';
import { northOf } from './north-of.ts';
import { type Ground, sidesOf } from './sides-of.ts';
import { guess, USUAL } from './usual.ts';

export type Built =
  | { readonly ok: true; readonly plan: Plan; readonly plant: string }
  | { readonly ok: false; readonly step: StepName; readonly message: string };

/**
 * The yard that the answers describe, every number that nobody gave marked as a guess.
 * @param around The yard that is open: its place, climate and season hold where those questions were passed over.
 * @param today "YYYY-MM-DD": damage is never dated after it.
 */
export async function yardOf(answers: Answers, around: Plan, today: string): Promise<Built> {
  const units = answers.units === '' ? (around.units ?? 'metric') : answers.units;
  const passed = (step: StepName): boolean => answers.skipped.includes(step);
  const place = passed('place') || answers.place.trim() === '' ? null : placeTyped(answers.place);
  if (place && !place.ok) return fault('place', place.reason);
  const { latitude, longitude, elevation, timeZone }: Omit<Site, 'boundary'> = place ? place.value : around.site;
  const where = { latitude, longitude, elevation, timeZone };
  const climate = await climateOf(answers, where, around, place !== null, units);
  if (typeof climate === 'string') return fault('summer', climate);

  const ground = groundTyped(answers, passed('ground'), units);
  if (typeof ground === 'string') return fault('ground', ground);
  const north = northOf(passed('north') ? { ...answers, northBy: 'unknown' } : answers, where);
  if (!north.ok) return fault('north', north.message);
  const wallHeight = passed('walls') ? USUAL.wallHeight : lengthOf(answers.wallHeight, USUAL.wallHeight, 0, 15, units);
  if (wallHeight === null)
    return fault('walls', 'That is no height of a wall: type it as 1.8 m or 6 ft, at most 15 m. 0 is no walls.');
  const plantHeight = passed('plant')
    ? USUAL.plantHeight
    : lengthOf(answers.plantHeight, USUAL.plantHeight, 0.05, 30, units);
  if (plantHeight === null)
    return fault('plant', 'That is no height of a plant: type it as 1.5 m or 5 ft, up to 30 m.');

  const heightGuessed = passed('walls') || answers.wallHeight.trim() === '' || answers.wallsKnown === 'guess';
  const plant = plantOf(answers, ground, plantHeight, passed('plant') || answers.plantHeight.trim() === '');
  const site: Site = {
    ...where,
    boundary: rectangleOf(ground),
    upBearing: north.upBearing,
    how: { upBearing: north.how, ...(ground.how && { boundary: ground.how }) },
  };
  const features = [...sidesOf(answers, ground, wallHeight, heightGuessed), plant];
  const season = seasonAt(where.latitude, around, place !== null, yearOf(today));
  const journal = answers.ahead || passed('damage') ? undefined : [damageOf(answers, plant.id, today)];
  return {
    ok: true,
    plant: plant.id,
    plan: {
      format: 'shadewright-plan',
      version: 1,
      name: 'My yard',
      units: answers.units === '' ? around.units : units,
      site,
      season,
      climate,
      features,
      journal,
    },
  };
}

function groundTyped(answers: Answers, passed: boolean, units: Units): Ground | string {
  const counts = answers.measure === 'steps';
  const read = (text: string, usual: number): number | null => {
    if (passed || text.trim() === '') return usual;
    const typed = counts ? Number(text.trim().replace(',', '.')) * USUAL.step : parseLength(text, units);
    return typed !== null && typed >= 1 && typed <= 200 ? typed : null;
  };
  const across = read(answers.across, USUAL.across);
  const deep = read(answers.deep, USUAL.deep);
  if (across === null || deep === null) {
    const span = units === 'metric' ? '1 and 200 m: type it as 12 m' : '4 and 650 ft: type it as 40 ft';
    return `${across === null ? 'Across' : 'Deep'} must be between ${span}, or a number of steps.`;
  }
  const guessed = passed || answers.across.trim() === '' || answers.deep.trim() === '';
  return {
    across,
    deep,
    how: guessed ? guess(0.2 * across) : counts ? { by: 'paced', pm: defaultPm('paced', across) } : undefined,
  };
}

function rectangleOf({ across, deep }: Ground): PlanPoint[] {
  return [
    [0, 0],
    [across, 0],
    [across, deep],
    [0, deep],
  ];
}

function plantOf(
  { plant, pot, spot }: Answers,
  { across, deep }: Ground,
  height: number,
  heightGuessed: boolean,
): Plant {
  const row = CATALOGUE.find(({ id }) => id === plant);
  const spread = toCentimetre(Math.min(0.7 * height, across / 3, deep / 3));
  // In a corner a plant stands clear of the wall by half its width.
  const clear = USUAL.wallThickness + spread / 2 + 0.2;
  const along = (third: number, length: number): number =>
    toCentimetre(third === 0 ? clear : third === 2 ? length - clear : length / 2);
  const name = `${row ? row.name : 'Plant'}${pot ? ' in a pot' : ''}`;
  return {
    id: 'plant',
    kind: 'plant',
    name,
    at: [along(spot[0], across), along(spot[1], deep)],
    height,
    spread,
    plant: row?.id,
    container: pot || undefined,
    how: { spread: guess(0.3 * spread), ...(heightGuessed && { height: guess(0.2 * height) }) },
  };
}

async function climateOf(
  answers: Answers,
  where: Pick<Site, 'latitude' | 'longitude' | 'elevation' | 'timeZone'>,
  around: Plan,
  elsewhere: boolean,
  units: Units,
): Promise<Climate | string> {
  const typed = answers.skipped.includes('summer') ? [] : [answers.high, answers.low, answers.hottest];
  const filled = typed.filter((text) => text.trim() !== '').length;
  if (filled === 0 && !elsewhere) return around.climate;
  const [high, low, hottest] = typed.map((text) => parseTemperature(text, units));
  const known =
    high !== undefined &&
    low !== undefined &&
    hottest !== undefined &&
    high !== null &&
    low !== null &&
    hottest !== null
      ? { high, low, hottest }
      : undefined;
  if (filled > 0 && !known) return 'Type all three temperatures, as 36, 18 and 43, or skip the question.';
  const rough = await climateOfPlace({
    ...where,
    elevation: knownElevationOf(where),
    bySea: bySeaOf(answers.sea),
    known,
  });
  return rough.ok ? rough.value.climate : rough.reason;
}

function seasonAt(latitude: number, around: Plan, elsewhere: boolean, year: number): Plan['season'] {
  if (!elsewhere) return around.season;
  return latitude < 0 ? { year, from: '12-01', to: '02-28' } : { year, from: '06-01', to: '08-31' };
}

/** The newest such day that is not after today. */
function damageOf({ month, third, side, part, amount }: Answers, feature: string, today: string): JournalEntry {
  const monthDay = `${String(month).padStart(2, '0')}-${{ early: '05', mid: '15', late: '25' }[third]}`;
  const thisYear = yearOf(today);
  const year = `${thisYear}-${monthDay}` <= today ? thisYear : thisYear - 1;
  return { date: `${year}-${monthDay}`, what: 'damage', feature, amount, side: parseSide(side) ?? 'unknown', part };
}

function lengthOf(text: string, usual: number, least: number, most: number, units: Units): number | null {
  if (text.trim() === '') return usual;
  const typed = parseLength(text, units);
  return typed !== null && typed >= least && typed <= most ? typed : null;
}

function fault(step: StepName, message: string): Built {
  return { ok: false, step, message };
}
