/** The year's advice: cloth, hardening, clay, water and frost, dated, with a page a month. */

import { cautionsFor } from '../../../frame/work/cautions.ts';
import { plantLoadsOf } from '../../../load/load-of.ts';
import type { Outcome, PlantLoad } from '../../../load/types.ts';
import { plantFeatures } from '../../../load/verdict/planted.ts';
import { KeptByContent } from '../../../plan/kept.ts';
import type { CivilDate, Plan } from '../../../plan/types.ts';
import { withoutCloth } from '../../../plan/yards/without-cloth.ts';
import { withoutDiary } from '../../../plan/yards/without-diary.ts';
import { daysAfter } from '../../../sun/days/calendar.ts';
import { seasonDates } from '../../../sun/days/season.ts';
import { isRough, type Weather } from '../../../sun/weather/weather.ts';
import { clayAdvice } from '../clay/clay.ts';
import { clothSeasons } from '../cloth/cloth.ts';
import { hungAsTold } from '../cloth/hung-on.ts';
import { clothNotes } from '../cloth/words.ts';
import { frostAdvice } from '../frost/frost.ts';
import {
  countedFrom,
  countingDays,
  expectedHarm,
  hotDatesOf,
  hotDaysOf,
  LEAST_EXPECTED,
  spanOf,
  wantsShade,
} from '../hot-days.ts';
import type { HotDates, HotDays } from '../hot-days.ts';
import { potsToCool } from '../pots.ts';
import { withWidenedSeason } from '../span.ts';
import { waterOf } from '../water/water.ts';
import { eventsOf, type SeasonParts } from './events.ts';
import { monthPages } from './months.ts';
import { risksOf } from './risks.ts';
import type { Newcomer, SeasonResult } from './types.ts';

/** @returns the advice of a year around the plan's season, or what the plan lacks for it */
export function seasonOf(plan: Plan, weather?: Weather): Outcome<SeasonResult> {
  const own = seasonDates(plan);
  if (!own.ok) return own;
  const yard = yearOfYard(withoutDiary(plan), weather);
  if (!yard.ok) return yard;
  const { stands, bare, dates, loads, cloth, water, frost } = yard.value;
  const clay = clayAdvice(plan, loads, stands.usual, dates, weather);
  if (!clay.ok) return clay;
  const parts = {
    cloth,
    clay: clay.value,
    water,
    frost,
    newcomers: newcomersOf(plan, dates.first, dates.last, loads),
    heat: heatTime(plan, bare, dates),
    pots: potsToCool(loads.map(({ id, pot }) => ({ plant: id, roots: pot?.roots ?? null }))),
  };
  const events = eventsOf(plan, parts);
  const rough = isRough(plan, weather);
  return {
    ok: true,
    value: {
      from: own.value[0],
      to: own.value[own.value.length - 1],
      cloth,
      clay: parts.clay,
      water,
      frost,
      months: monthPages(plan, events, water),
      events,
      cautions: cautionsFor(risksOf(events), plan),
      rough,
      notes: [...cloth.flatMap((one) => clothNotes(plan, one)), ...(rough ? [ROUGH_DATES] : [])],
    },
  };
}

/** What a year holds for a yard, whatever was noted of it. */
interface YearOfYard {
  /** What hot days do in the yard as it stands, and without any cloth. */
  readonly stands: HotDays;
  readonly bare: HotDays;
  readonly dates: HotDates;
  /** Of the heatwave day, as verdicts are in any case. */
  readonly loads: readonly PlantLoad[];
  readonly cloth: SeasonResult['cloth'];
  readonly water: SeasonResult['water'];
  readonly frost: SeasonResult['frost'];
}

/** Something is noted far more often than a yard is changed. */
const known = new KeptByContent<Outcome<YearOfYard>>(2);

function yearOfYard(plan: Plan, weather?: Weather): Outcome<YearOfYard> {
  // A weather file is too long to be compared.
  return weather === undefined ? known.of(plan, () => workedOut(plan)) : workedOut(plan, weather);
}

function workedOut(plan: Plan, weather?: Weather): Outcome<YearOfYard> {
  const wide = withWidenedSeason(plan);
  if (!wide.ok) return wide;
  const dates = hotDatesOf(wide.value);
  if (!dates.ok) return dates;
  const stands = hotDaysOf(wide.value, weather);
  if (!stands.ok) return stands;
  // When heat comes is the weather's matter: cloth neither puts it off nor makes it last.
  const clothless = withoutCloth(wide.value);
  const bare = clothless === wide.value ? stands : hotDaysOf(clothless, weather);
  if (!bare.ok) return bare;
  const cloth = clothSeasons(plan, wide.value, stands.value, bare.value, weather);
  if (!cloth.ok) return cloth;
  const loads = plantLoadsOf(plan, { period: { kind: 'heatwave' }, weather });
  if (!loads.ok) return loads;
  const water = waterOf(cloth.value.length === 0 ? plan : hungAsTold(plan, cloth.value), weather);
  if (!water.ok) return water;
  const frost = frostAdvice(plan);
  if (!frost.ok) return frost;
  return {
    ok: true,
    value: {
      stands: stands.value,
      bare: bare.value,
      dates: dates.value,
      loads: loads.value,
      cloth: cloth.value,
      water: water.value,
      frost: frost.value,
    },
  };
}

/** Said where nothing beside the dates says so of the climate. */
export const ROUGH_DATES = 'The climate is rough: every date below is too.';

/** The days on which hot days count for any plant that wants shade, and who is hurt first. */
function heatTime(plan: Plan, bare: HotDays, dates: HotDates): SeasonParts['heat'] {
  const each = bare.usual.flatMap(({ id }) => {
    const days = wantsShade(plan, id) ? countingDays(countedFrom(expectedHarm(bare, id), LEAST_EXPECTED), dates) : null;
    return days === null ? [] : [{ id, ...days }];
  });
  const span = spanOf(each);
  if (span === null) return null;
  return {
    ...span,
    earlierUnknown: span.first === dates.first,
    laterUnknown: span.last === dates.last,
    plants: each.filter(({ first }) => first === span.first).map(({ id }) => id),
  };
}

/** A plant's direct sun is taken to have been this before, where nobody knows: a shop's shade. Our choice. [h] */
const UNKNOWN_SUN = 2;

/** Plants planted, bought or moved from eight weeks before the summer on. @param loads of the heatwave day */
function newcomersOf(plan: Plan, first: CivilDate, last: CivilDate, loads: readonly PlantLoad[]): Newcomer[] {
  const earliest = daysAfter(first, -56);
  return plantFeatures(plan).flatMap(({ id, planted }): Newcomer[] => {
    const moves = (plan.journal ?? [])
      .filter(({ what, feature }) => what === 'moved' && feature === id)
      .map(({ date }) => date);
    if (planted !== undefined && planted.length === 10) moves.push(planted);
    const since = moves
      .filter((date) => date >= earliest && date <= last)
      .toSorted()
      .at(-1);
    if (since === undefined) return [];
    const before = sunBefore(plan, id);
    return [
      {
        plant: id,
        since,
        from: before ?? UNKNOWN_SUN,
        to: loads.find((load) => load.id === id)?.sunHours ?? UNKNOWN_SUN,
        fromKnown: before !== null,
      },
    ];
  });
}

/** Sun of this year's heatwave day where a plant stood in last year's yard; `null` where it was not there. [h] */
function sunBefore(plan: Plan, id: string): number | null {
  const before = plan.past?.at(-1)?.plan;
  if (!before?.features.some((feature) => feature.id === id)) return null;
  const loads = plantLoadsOf(
    { ...before, site: plan.site, season: plan.season, climate: plan.climate },
    { period: { kind: 'heatwave' } },
  );
  return loads.ok ? (loads.value.find((load) => load.id === id)?.sunHours ?? null) : null;
}
