import { plantRowOf, nearestPlantIds } from '../../plan/catalogue/plants.ts';
import { crownShapeOf } from '../../plan/defaults.ts';
import { changeFeature, featureOf, setHow } from '../../plan/edit/edit-feature.ts';
import { setClimate, setPartHow, setSite } from '../../plan/edit/plan.ts';
import { wrapBearing } from '../../plan/geometry/angles.ts';
import { toCentimetre } from '../../plan/numbers/rounding.ts';
import { errorAt } from '../../plan/problems.ts';
import type { CivilDate, Feature, KnownBy, Knowledge, Plan, Problem } from '../../plan/types.ts';
import { parseLength, parseNumber, parseSpeed, parseTemperature } from '../../plan/units/typed.ts';
import { unitsOf } from '../../plan/units/units.ts';
import { knownMonthOf, withKnownTemperatures } from '../../survey/climate/rough-climate.ts';
import { type Estimate, type Finding, found, refused } from '../../survey/estimate.ts';
import { heightOfTop, heightOfTree, slopeFromTime } from '../../survey/height/height.ts';
import { defaultPm } from '../../survey/known-by.ts';
import { type Blank, blanksOf } from './field-sheet.ts';

/** What was typed beside each blank, by the blank's id. An empty answer leaves its blank open. */
export type Answers = Readonly<Record<string, string>>;

export interface Answered {
  /** The plan with every answer that could be read. */
  readonly plan: Plan;
  /** One for each answer that could not; its pointer is the blank's id. */
  readonly problems: readonly Problem[];
}

/** A number read off the paper, and how it is known from now on. */
interface Read {
  readonly value: number;
  readonly known: Knowledge | undefined;
}

const SHADOW = /^(?:shadow|s)\s+(.+?)\s+(?:at\s+)?(\d{1,2})[:.h](\d{2})$/i;

/**
 * Puts typed answers of a field sheet into a plan. A height may be a length, or its shadow and the minute: `shadow 5.2
 * at 10:00` (a tree's crown is minded). What is measured is marked taped or found by its shadow and no longer a guess.
 * @param date The day the person was out, for shadows.
 */
export function withAnswers(plan: Plan, answers: Answers, date: CivilDate): Answered {
  const blanks = blanksOf(plan);
  const problems: Problem[] = [];
  const temperatures: Temperature[] = [];
  let next = plan;
  for (const [id, typed] of Object.entries(answers)) {
    const text = typed.trim();
    if (text === '') continue;
    const blank = blanks.find((candidate) => candidate.id === id);
    const answered =
      blank === undefined
        ? refused('This blank is not on the sheet any more: was it answered already?')
        : answer(next, blank, text, date);
    if (!answered.ok) problems.push(errorAt(id, `${blank === undefined ? id : headOf(blank)}: ${answered.reason}`));
    else if ('celsius' in answered.value) temperatures.push(answered.value);
    else next = answered.value;
  }
  const climate = answerClimate(next, temperatures);
  return { plan: climate.plan, problems: [...problems, ...climate.problems] };
}

/** Highs and lows are judged together: neither is wrong without the other. */
interface Temperature {
  readonly blank: Blank;
  readonly celsius: number;
}

function answer(plan: Plan, blank: Blank, text: string, date: CivilDate): Finding<Plan | Temperature> {
  if (blank.feature === null) return answerOfPlan(plan, blank, text);
  const feature = featureOf(plan, blank.feature);
  if (feature === undefined) return refused('the thing is not on the plan any more.');
  switch (blank.kind) {
    case 'kind':
      return answerKind(plan, feature, text);
    case 'position':
      return answerPosition(plan, feature, blank, text);
    case 'sketch':
      return refused('an outline is drawn on the plan, not typed.');
    default: {
      const read = readNumber(plan, feature, blank, text, date);
      return read.ok ? found(withNumber(plan, feature.id, blank.key, read.value)) : read;
    }
  }
}

function answerOfPlan(plan: Plan, blank: Blank, text: string): Finding<Plan | Temperature> {
  const units = unitsOf(plan);
  if (blank.key === 'upBearing') {
    const bearing = parseNumber(text.replace('°', ''));
    if (bearing === null || Math.abs(bearing) > 360) return refused(`"${text}" is no bearing from 0 to 360°.`);
    return found(setPartHow(setSite(plan, { upBearing: wrapBearing(bearing) }), 'site', 'upBearing', { by: 'shadow' }));
  }
  if (blank.kind === 'speed') {
    const gust = parseSpeed(text, units);
    if (gust === null || !(gust > 0 && gust <= 100))
      return refused(`"${text}" is no wind speed: write 25 m/s, 90 km/h or 56 mph.`);
    return found(setPartHow(setClimate(plan, { gust }), 'climate', blank.key, undefined));
  }
  const celsius = parseTemperature(text, units);
  if (celsius === null || !(celsius >= -30 && celsius <= 60))
    return refused(`"${text}" is no air temperature from −30 to 60 °C.`);
  return found({ blank, celsius });
}

function answerClimate(plan: Plan, temperatures: readonly Temperature[]): Answered {
  if (temperatures.length === 0) return { plan, problems: [] };
  const given = (key: string): number | undefined => temperatures.find(({ blank }) => blank.key === key)?.celsius;
  const known = { high: given('high'), low: given('low'), hottest: given('heatwaveHigh') };
  const month = knownMonthOf(plan.climate, plan.site.latitude);
  const high = known.high ?? month.high;
  const low = known.low ?? month.low;
  const hottest = known.hottest ?? plan.climate.heatwaveHigh;
  const wrong =
    low >= high
      ? `a low of ${low} °C is not below the high of ${high} °C.`
      : hottest < high
        ? `the hottest day, ${hottest} °C, cannot be cooler than the usual high of ${high} °C.`
        : null;
  if (wrong !== null)
    return {
      plan,
      problems: temperatures.map(({ blank }) => errorAt(blank.id, `${headOf(blank)}: ${wrong}`)),
    };
  const shifted: Plan = { ...plan, climate: withKnownTemperatures(plan.climate, plan.site.latitude, known) };
  // Said outright: in a rough climate a number of which nothing is said counts as a guess.
  return {
    plan: temperatures.reduce((next, { blank }) => setPartHow(next, 'climate', blank.key, { by: 'tape' }), shifted),
    problems: [],
  };
}

function headOf(blank: Blank): string {
  return `${blank.number}. ${blank.label}`;
}

function answerKind(plan: Plan, feature: Feature, text: string): Finding<Plan> {
  const wanted = text.toLowerCase();
  const row = plantRowOf(plan, wanted) ?? plantRowOf(plan, nearestPlantIds(plan, wanted)[0] ?? '');
  if (row === undefined)
    return refused(
      `"${text}" is not among the plants: choose the nearest kind from the list, or make a row of your own.`,
    );
  return found(changeFeature(plan, feature.id, { plant: row.id }));
}

function answerPosition(plan: Plan, feature: Feature, blank: Blank, text: string): Finding<Plan> {
  const parts = text.split(/\s*[;/]\s*|,\s+|\s+/);
  const [x, y] = parts.map((part) => parseLength(part, unitsOf(plan)));
  if (parts.length !== 2 || x === null || y === null)
    return refused(`"${text}" is no place: write x; y in metres of the plan.`);
  const moved =
    blank.key === 'center'
      ? changeFeature(plan, feature.id, { center: [x, y] })
      : changeFeature(plan, feature.id, { at: [x, y] });
  return found(setHow(moved, feature.id, blank.key, undefined));
}

function readNumber(plan: Plan, feature: Feature, blank: Blank, text: string, date: CivilDate): Finding<Read> {
  if (blank.kind === 'share') {
    const number = parseNumber(text.replace('%', ''));
    const share = number === null ? null : text.includes('%') || number > 1 ? number / 100 : number;
    return share !== null && share >= 0 && share <= 1
      ? found(taped(share))
      : refused(`"${text}" is no share: write 20 % or 0.2.`);
  }
  if (blank.kind === 'bearing') {
    const bearing = parseNumber(text.replace('°', ''));
    return bearing !== null && Math.abs(bearing) <= 360
      ? found(taped(wrapBearing(bearing)))
      : refused(`"${text}" is no direction from 0 to 360°.`);
  }
  const shadow = blank.kind === 'height' ? SHADOW.exec(text) : null;
  if (shadow !== null) return readShadow(plan, feature, shadow, date);
  const length = parseLength(text, unitsOf(plan));
  if (
    length === null ||
    (length <= 0 && !['rise', 'eaves', 'crownBase', 'foliageFrom', 'bottom'].includes(blank.key))
  ) {
    return refused(
      `"${text}" is no length${blank.kind === 'height' ? ': write 2.4, 6 ft 2, or "shadow 5.2 at 10:00"' : ''}.`,
    );
  }
  return found(taped(length));
}

function readShadow(
  plan: Plan,
  feature: Feature,
  [, length, hour, minute]: RegExpExecArray,
  date: CivilDate,
): Finding<Read> {
  const tip = parseLength(length, unitsOf(plan));
  if (tip === null) return refused(`"${length}" is no length of a shadow.`);
  const slope = slopeFromTime(plan.site, `${date}T${hour.padStart(2, '0')}:${minute}`);
  if (!slope.ok) return slope;
  const distance: Estimate = { value: tip, pm: defaultPm('tape', tip) };
  const height =
    feature.kind === 'tree'
      ? heightOfTree(
          slope.value,
          distance,
          crownShapeOf(feature),
          estimateOf(feature, 'crownWidth', feature.crownWidth),
          estimateOf(feature, 'crownBase', feature.crownBase),
        )
      : heightOfTop(slope.value, distance);
  return height.ok
    ? found({ value: toCentimetre(height.value.value), known: { by: 'shadow', pm: toCentimetre(height.value.pm) } })
    : height;
}

function estimateOf(feature: Feature, key: string, value: number): Estimate {
  const known: { by: KnownBy; pm?: number } = feature.how?.[key] ?? { by: 'tape' };
  return { value, pm: known.pm ?? defaultPm(known.by, value) };
}

function withNumber(plan: Plan, id: string, key: string, { value, known }: Read): Plan {
  return setHow(changeFeature(plan, id, { [key]: value }), id, key, known);
}

function taped(value: number): Read {
  return { value, known: undefined };
}
