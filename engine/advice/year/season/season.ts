/** The year's advice: cloth, hardening, clay, water and frost, dated, with a page a month. */
import { cautionsFor } from '../../../frame/work/cautions.ts';
import { harmOf, type PlantHarm } from '../../../load/verdict/harm-of.ts';
import { plantLoadsOf } from '../../../load/load-of.ts';
import { plantFeatures } from '../../../load/verdict/planted.ts';
import type { Outcome, PlantLoad } from '../../../load/types.ts';
import type { CivilDate, Plan } from '../../../plan/types.ts';
import { dateIn, daysAfter } from '../../../sun/calendar.ts';
import { seasonDates, seasonMonths } from '../../../sun/season.ts';
import { isRough, type Weather } from '../../../sun/weather.ts';
import { clayAdvice } from '../clay/clay.ts';
import { frostAdvice } from '../frost/frost.ts';
import { clothNotes, clothSeasons } from '../cloth/cloth.ts';
import { eventsOf, type SeasonParts } from './events.ts';
import { monthPages } from './months.ts';
import { risksOf } from './risks.ts';
import { stretchAbove, withWidenedSeason } from '../span.ts';
import type { Newcomer, SeasonResult } from './types.ts';
import { withUsualHeat } from '../usual-heat.ts';
import { waterOf } from '../water/water.ts';
import { withoutCloth } from '../../../plan/without-cloth.ts';

/** @returns the advice of a year around the plan's season, or what the plan lacks for it */
export function seasonOf(plan: Plan, weather?: Weather): Outcome<SeasonResult> {
  const wide = withWidenedSeason(plan);
  if (!wide.ok) return wide;
  const own = seasonDates(plan);
  const dates = seasonDates(wide.value);
  const months = seasonMonths(wide.value);
  if (!own.ok) return own;
  if (!dates.ok) return dates;
  if (!months.ok) return months;
  const span = { first: dates.value[0], last: dates.value[dates.value.length - 1] };
  const heatDates = months.value.map(
    ({ month, year }) => dateIn(year, `${String(month).padStart(2, '0')}-21`) ?? span.first,
  );
  const harms = harmOf(wide.value, weather);
  if (!harms.ok) return harms;
  const cloth = clothSeasons(plan, wide.value, harms.value, weather);
  if (!cloth.ok) return cloth;
  const year = withUsualHeat(wide.value);
  const usual = harmOf(year, weather);
  if (!usual.ok) return usual;
  // When heat comes is the weather's matter: cloth neither puts it off nor makes it last.
  const clothless = withoutCloth(year);
  const heat = clothless === year ? usual : harmOf(clothless, weather);
  if (!heat.ok) return heat;
  // Verdicts are the heatwave day's in any case.
  const loads = plantLoadsOf(plan, { period: { kind: 'heatwave' }, weather });
  if (!loads.ok) return loads;
  const clay = clayAdvice(plan, loads.value, usual.value, heatDates, span, weather);
  if (!clay.ok) return clay;
  const water = waterOf(plan, weather);
  if (!water.ok) return water;
  const frost = frostAdvice(plan);
  if (!frost.ok) return frost;
  const parts = {
    cloth: cloth.value,
    clay: clay.value,
    water: water.value,
    frost: frost.value,
    newcomers: newcomersOf(plan, span.first, span.last, loads.value),
    heat: heatTime(heat.value, heatDates, span),
  };
  const events = eventsOf(plan, parts);
  const rough = isRough(plan, weather);
  return {
    ok: true,
    value: {
      from: own.value[0],
      to: own.value[own.value.length - 1],
      cloth: parts.cloth,
      clay: parts.clay,
      water: parts.water,
      frost: parts.frost,
      months: monthPages(plan, events, parts.water),
      events,
      cautions: cautionsFor(risksOf(events), plan.cautions),
      rough,
      notes: [...parts.cloth.flatMap((one) => clothNotes(plan, one)), ...(rough ? [ROUGH_DATES] : [])],
    },
  };
}

/** Said where nothing beside the dates says so of the climate. */
export const ROUGH_DATES = 'The climate is rough: every date below is too.';

/** A hot day counts from this share of what the worst month's does. Our choice. */
const WORTH_WATCHING = 0.25;

function heatTime(
  harms: readonly PlantHarm[],
  heatDates: readonly CivilDate[],
  span: { readonly first: CivilDate; readonly last: CivilDate },
): SeasonParts['heat'] {
  const doses = heatDates.map((date, day) => ({
    date,
    value: harms.reduce((sum, { worth, byHeatDay }) => sum + worth * byHeatDay[day], 0),
  }));
  const worst = Math.max(0, ...doses.map(({ value }) => value));
  return worst > 0 ? stretchAbove(doses, WORTH_WATCHING * worst, span.first, span.last) : null;
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
