import { compareOptions } from '../../advice/compare/compare.ts';
import { type Section, sectionOf } from '../../advice/sight/section.ts';
import { seasonOf } from '../../advice/year/season/season.ts';
import { cautionsFor } from '../../frame/work/cautions.ts';
import { loadOf } from '../../load/load-of.ts';
import type { Outcome } from '../../load/types.ts';
import { canopyRing } from '../../plan/geometry/cloth-shapes.ts';
import { pointInRing, distanceToEdge } from '../../plan/geometry/shapes.ts';
import { isCloth } from '../../plan/kinds.ts';
import type { Canopy, Plan, Plant } from '../../plan/types.ts';
import { minutesOf } from '../../plan/units/clock.ts';
import type { Units } from '../../plan/units/units.ts';
import { periodDays } from '../../sun/days/period-days.ts';
import { isRough, type Weather } from '../../sun/weather/weather.ts';
import { oneLine } from '../text/plain-text.ts';
import type { Tried } from './options.ts';
import type { Report, ReportRequest, ReportSection } from './types.ts';

/** Share of the work that the map is. */
const MAP_SHARE = 0.4;
const YEAR_SHARE = 0.9;
/** A plant this near a canopy's edge is cut through with it. [m] */
const NEAR = 1;

/**
 * Everything that stands in the report of a yard.
 * @returns or why the load or the year's advice cannot be worked out
 */
export function reportOf(plan: Plan, request: ReportRequest): Outcome<Report> {
  const { units, weather, cell, height, progress, period = { kind: 'heatwave' } } = request;
  const load = loadOf(plan, {
    period,
    units,
    weather,
    cell,
    height,
    progress: (done, what) => progress?.(done * MAP_SHARE, what),
  });
  if (!load.ok) return load;
  progress?.(MAP_SHARE, 'the options');
  const tried = triedOf(request);
  if (!tried.ok) return tried;
  progress?.(YEAR_SHARE, 'the year');
  const season = seasonOf({ ...plan, units }, weather);
  if (!season.ok) return season;
  const days = periodDays(plan, period, weather);
  if (!days.ok) return days;
  const { latitude, longitude } = plan.site;
  const hasCloth = plan.features.some(isCloth);
  const sprays = season.value.events.some(({ kind }) => kind === 'clay');
  progress?.(1, 'done');
  return {
    ok: true,
    value: {
      plan,
      units,
      made: request.made ?? null,
      place: request.withPlace === true ? { latitude, longitude } : null,
      climate: climateSentence(plan, weather),
      rough: isRough(plan, weather),
      day: period.kind === 'season' ? null : { date: days.value[0].date, isHeatwave: period.kind === 'heatwave' },
      load: load.value,
      tried: tried.value,
      sections: plan.features.flatMap((feature) =>
        feature.kind === 'canopy' ? sectionThrough(plan, feature, units) : [],
      ),
      season: season.value,
      cautions: cautionsFor(
        [
          ...(['cloth', 'heat', 'winter'] as const),
          ...(sprays ? (['spray'] as const) : []),
          ...(hasCloth ? (['wind'] as const) : []),
        ],
        { ...plan, units },
      ),
    },
  };
}

/** The plan's options held against today; `null` where there are none, or nobody asks. */
function triedOf({ tried, units, weather, progress }: ReportRequest): Outcome<Tried | null> {
  if (tried === undefined || (tried.plan.options ?? []).length === 0) return { ok: true, value: null };
  const { chosen, plan } = tried;
  const alone = (plan.options ?? []).map(({ id }) => [id]);
  const compared = compareOptions(plan, {
    choices: chosen.length > 1 ? [...alone, chosen] : alone,
    units,
    weather,
    progress: (done, what) => progress?.(MAP_SHARE + done * (YEAR_SHARE - MAP_SHARE), what),
  });
  return compared.ok ? { ok: true, value: { plan, compared: compared.value, chosen } } : compared;
}

/** The plant beside or under a canopy that the low sun reaches longest; of plants that it does not reach, the first. */
function sectionThrough(plan: Plan, canopy: Canopy, units: Units): ReportSection[] {
  const edge = canopyRing(canopy);
  const near = plan.features.filter(
    (feature): feature is Plant =>
      feature.kind === 'plant' && (pointInRing(feature.at, edge) || distanceToEdge(feature.at, edge) < NEAR),
  );
  const cuts = near.flatMap(({ id }): ReportSection[] => {
    const found = sectionOf(plan, { canopy: canopy.id, plant: id, units });
    return found.ok ? [{ canopy: canopy.id, plant: id, section: found.value }] : [];
  });
  return cuts.toSorted((a, b) => minutesUnder(b.section) - minutesUnder(a.section)).slice(0, 1);
}

function minutesUnder({ sides }: Section): number {
  return Math.max(
    ...sides
      .flatMap(({ evening, morning }) => [evening, morning])
      .map((each) => (each === null ? 0 : minutesOf(each.to) - minutesOf(each.from))),
  );
}

function climateSentence({ climate }: Plan, weather?: Weather): string {
  if (weather !== undefined) return 'Sun and air by the hour from a weather file.';
  const source = climate.source === undefined ? '' : ` Source: ${oneLine(climate.source)}`;
  const what = {
    rough: 'Rough climate: a guess from the kind of climate. Every number and date here is rough too.',
    months: 'Climate by month, typed in.',
    file: 'Climate by month, from a weather file.',
  };
  return climate.from === undefined ? `Climate as the plan gives it.${source}` : `${what[climate.from]}${source}`;
}
