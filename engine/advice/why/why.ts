import { heatDayOf } from '../../load/leaf/heat-day.ts';
import { rootsOf } from '../../load/pot/pot-load.ts';
import type { Outcome, Roots } from '../../load/types.ts';
import { type PlantFeature, plantFeatures } from '../../load/verdict/planted.ts';
import { yardOf } from '../../load/yard.ts';
import { monthOfDate, yearOf, monthDayOf } from '../../plan/dates/parts.ts';
import { upBearingOf } from '../../plan/defaults.ts';
import { refusal } from '../../plan/problems.ts';
import type { CivilDate, JournalEntry, Plan, Side } from '../../plan/types.ts';
import { unitsOf } from '../../plan/units/units.ts';
import { seasonMonths } from '../../sun/days/season.ts';
import type { Period } from '../../sun/samples.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import { defaultPm } from '../../survey/known-by.ts';
import { heatBySide, type SideHeat } from './points.ts';
import { type Rival, rivalsOf } from './rivals.ts';
import { nearestOfEight } from './side.ts';
import {
  DAMAGE_PARTS,
  type DamagePart,
  type RankedSide,
  type WhyAnswer,
  type WhyRequest,
  type WhyResult,
} from './types.ts';
import { whyWords } from './words.ts';

/** Sides ranked farther down are not the ones that the sun burns first. */
const BURNS_FIRST = 2;
/** A side with this share of the worst side's dose burns as well, be it the fifth. Our choice. */
const LIKE_THE_WORST = 0.5;
/** Doses this near to the second's count as second: the estimate is no finer. Our choice. */
const AS_GOOD_AS = 0.9;
const STEPS: readonly WhyAnswer[] = ['explains', 'could be', 'does not'];

/**
 * Whether the sun explains a plant's damage: the sun explains it when the damaged side ranks first or second of eight
 * in scorch dose, or as good as second, and its leaf comes as near to the limit as both may be off on a hot day of that
 * month; each rival cause answered yes lowers the answer a step.
 * @returns the answer, or what is wrong: no such plant, no damage noted and no side given, a month without climate
 */
export function whyBurnt(plan: Plan, request: WhyRequest): Outcome<WhyResult> {
  const entry = latestDamage(plan, request.plant);
  const date = request.date ?? entry?.date ?? null;
  const { plan: thatYear, notes } = planOfYear(plan, request.plant, date);
  const feature = plantFeatures(thatYear).find(({ id }) => id === request.plant);
  if (feature === undefined) return refusal('--plant', unknownPlant(plan, request.plant));
  const side = request.side ?? entry?.side ?? (entry === undefined && feature.kind !== 'bed' ? undefined : 'unknown');
  if (side === undefined)
    return refusal(
      '--side',
      `No damage to "${request.plant}" is in the journal: say on which side it burnt, or "unknown".`,
    );
  const judged = judge(thatYear, feature, date, request.weather);
  if (!judged.ok) return judged;
  const { limit, sides, heatDay, roots } = judged.value;
  const part = request.part ?? damagePartOf(entry?.part) ?? 'leaf';
  const rivals = rivalsOf(plan, request.plant, date, request.rivals ?? [], roots, unitsOf(plan));
  const accused = accusedOf(sides, side);
  const bySun = isNorthKnown(thatYear) ? answerBySun(sides, side, accused, limit, part) : 'could be';
  const answer = lowered(bySun, rivals);
  const remarks = [...notes, ...(isNorthKnown(thatYear) ? [] : [NORTH_UNKNOWN]), ...judged.value.notes];
  const words = whyWords({
    plan: thatYear,
    feature,
    side,
    part,
    heatDay,
    bySun,
    answer,
    accused,
    sides,
    limit,
    rivals,
    roots,
  });
  const when = answer === 'does not' ? null : accused.when;
  return {
    ok: true,
    value: {
      plant: request.plant,
      side,
      part,
      date,
      heatDay,
      answer,
      when,
      limit,
      sides,
      rivals,
      roots,
      ...words,
      notes: remarks,
    },
  };
}

/** The latest damage noted of a plant. */
export function latestDamage(plan: Plan, plantId: string): JournalEntry | undefined {
  return (plan.journal ?? [])
    .filter(({ what, feature }) => what === 'damage' && feature === plantId)
    .toSorted((a, b) => a.date.localeCompare(b.date))
    .at(-1);
}

interface Judgement {
  readonly heatDay: CivilDate;
  readonly limit: number | null;
  readonly sides: readonly RankedSide[];
  readonly roots: Roots | null;
  readonly notes: readonly string[];
}

function judge(plan: Plan, feature: PlantFeature, date: CivilDate | null, weather?: Weather): Outcome<Judgement> {
  const { heatPeriod, meanPeriod, notes } = periodsOf(plan, date);
  const yard = yardOf(plan, meanPeriod, weather);
  if (!yard.ok) return yard;
  const heat = heatDayOf(plan, yard.value.scene, heatPeriod, weather);
  if (!heat.ok) return heat;
  const { limit, points } = heatBySide(yard.value, heat.value, feature, date);
  const roots =
    feature.kind === 'plant' && feature.container === true ? rootsOf(plan, yard.value.sky, heat.value, feature) : null;
  return { ok: true, value: { heatDay: heat.value.day.date, limit, sides: ranked(points), roots, notes } };
}

/**
 * The hot day of the damage's month, and the mean day of its date; of a month outside the season, or none, the heatwave
 * day and the season.
 */
function periodsOf(plan: Plan, date: CivilDate | null): { heatPeriod: Period; meanPeriod: Period; notes: string[] } {
  const months = seasonMonths(plan);
  const month = date === null ? null : monthOfDate(date);
  if (date !== null && month !== null && months.ok && months.value.some((candidate) => candidate.month === month)) {
    // A leap day is judged by the day before.
    const monthDay = monthDayOf(date) === '02-29' ? '02-28' : monthDayOf(date);
    return { heatPeriod: { kind: 'heatDay', month }, meanPeriod: { kind: 'day', date: monthDay }, notes: [] };
  }
  const notes = date === null ? [] : [`${date} lies outside the season's months: judged on the heatwave day.`];
  return { heatPeriod: { kind: 'heatwave' }, meanPeriod: { kind: 'season' }, notes };
}

function ranked(points: readonly SideHeat[]): RankedSide[] {
  const order = points
    .filter(({ side }) => typeof side === 'number')
    .toSorted((a, b) => weightOf(b) - weightOf(a) || (b.peak ?? 0) - (a.peak ?? 0));
  return points.map((point) => ({ ...point, rank: typeof point.side === 'number' ? order.indexOf(point) + 1 : null }));
}

/** The point that stands for the side named; for no side in particular the worst of all. */
function accusedOf(sides: readonly RankedSide[], side: Side): RankedSide {
  const named = typeof side === 'number' ? nearestOfEight(side) : side;
  return sides.find((candidate) => candidate.side === named) ?? worstOf(sides);
}

/** What sides are compared by: scorch dose, or hot hours where the plant's kind is not known. */
function weightOf({ scorchDose, hotHours }: SideHeat): number {
  return scorchDose ?? hotHours;
}

function worstOf(sides: readonly RankedSide[]): RankedSide {
  return sides.reduce((worst, side) => (weightOf(side) > weightOf(worst) ? side : worst));
}

/** Beyond an eighth of the circle either way nobody can say which side the sun is on. [°] */
const NORTH_LOST = 45;
const NORTH_UNKNOWN = 'Which way the yard lies is not known, so no side can be named: find north, and ask again.';

function isNorthKnown(plan: Plan): boolean {
  const known = plan.site.how?.upBearing;
  return known === undefined || (known.pm ?? defaultPm(known.by, upBearingOf(plan), 'bearing')) < NORTH_LOST;
}

function answerBySun(
  sides: readonly RankedSide[],
  side: Side,
  accused: RankedSide,
  limit: number | null,
  part: DamagePart,
): WhyAnswer {
  const kindKnown = accused.peak !== null && limit !== null;
  // A leaf that never comes near its limit while the sun is on it has no `when`.
  if (kindKnown ? accused.when === null : accused.hotHours === 0) return 'does not';
  // The sun burns from one side; roots in a pot cook and dry alike; where nobody saw the side, nothing can be matched.
  if (side === 'all') return allAlike(sides) ? 'could be' : 'does not';
  if (part === 'pot' || side === 'unknown' || accused.side === null) return 'could be';
  // A flank is held against flanks: the top has the whole sky.
  const rivals = accused.rank === null ? sides : sides.filter(({ rank }) => rank !== null);
  const likeTheWorst = weightOf(accused) >= LIKE_THE_WORST * weightOf(worstOf(rivals));
  const explains = kindKnown ? 'explains' : 'could be';
  if (accused.rank === null) return likeTheWorst ? explains : 'could be';
  const second = sides.find(({ rank }) => rank === BURNS_FIRST);
  if (accused.rank <= BURNS_FIRST || (second !== undefined && weightOf(accused) >= AS_GOOD_AS * weightOf(second)))
    return explains;
  return likeTheWorst ? 'could be' : 'does not';
}

/** Whether the least burnt side gets at least half of the worst one's dose. */
function allAlike(sides: readonly RankedSide[]): boolean {
  const doses = sides.flatMap((point) => (point.side === 'top' ? [] : [weightOf(point)]));
  return Math.min(...doses) >= LIKE_THE_WORST * Math.max(...doses);
}

function lowered(answer: WhyAnswer, rivals: readonly Rival[]): WhyAnswer {
  return STEPS[Math.min(STEPS.length - 1, STEPS.indexOf(answer) + rivals.filter(({ yes }) => yes).length)];
}

function damagePartOf(text: string | undefined): DamagePart | undefined {
  return DAMAGE_PARTS.find((part) => part === text);
}

/** Damage of a year that was frozen is judged in that year's yard. */
function planOfYear(plan: Plan, plantId: string, date: CivilDate | null): { plan: Plan; notes: string[] } {
  const past = plan.past?.find(({ year }) => date !== null && year === yearOf(date));
  if (past !== undefined && past.plan.features.some(({ id }) => id === plantId))
    return { plan: past.plan, notes: [`Judged in the yard as it was in ${past.year}.`] };
  const older = date !== null && yearOf(date) < plan.season.year;
  return { plan, notes: older ? [`Judged in the yard as it is drawn now; the damage is of ${yearOf(date)}.`] : [] };
}

function unknownPlant(plan: Plan, id: string): string {
  const ids = plantFeatures(plan).map((feature) => `"${feature.id}"`);
  return `There is no plant, bed or planted tree "${id}"${ids.length > 0 ? `; there are ${ids.join(', ')}` : ''}.`;
}
