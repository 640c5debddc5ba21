import { elevationOf } from '../../plan/defaults.ts';
import { refuseOption } from '../../plan/problems.ts';
import type { Problem } from '../../plan/types.ts';
import { isTimeZone } from '../../sun/days/zone.ts';
import { declinationAt } from '../../survey/north/declination.ts';
import { parseCoordinates } from '../../survey/place/coordinates.ts';
import { ELEVATION_NOTE, placeCheckLine, placeNotes } from '../../survey/place/place.ts';
import { nearestTown, type Town, townMeant, townWords } from '../../survey/place/places.ts';
import type { Place } from '../../survey/place/sun-at.ts';
import { zoneAt } from '../../survey/place/zone-at.ts';
import { wrapped } from '../text/plain-text.ts';
import { numberGiven, type OptionSpec, textGiven, type Verb, type VerbRequest, type VerbResult } from './verb.ts';

/** Taken where neither a plan nor `--year` says: the sun of one year is another's to a minute. */
const ANY_YEAR = 2026;

/** How a place is given where there is no plan. */
export const PLACE_OPTIONS: readonly OptionSpec[] = [
  { name: 'at', kind: 'text', placeholder: 'LAT,LON', summary: 'the place: "37.88, -4.78" or "37°53′N 4°47′W"' },
  { name: 'town', kind: 'text', placeholder: 'NAME', summary: 'the place: a town of the built-in list' },
  { name: 'zone', kind: 'text', placeholder: 'ZONE', summary: 'its time zone, where the one found is not right' },
  {
    name: 'year',
    kind: 'number',
    placeholder: 'YYYY',
    summary: "the year; else the plan's",
    min: 1900,
    minIncluded: true,
    max: 2100,
    integer: true,
  },
];

export type PlaceGiven =
  | { readonly ok: true; readonly place: Place; readonly town?: Town; readonly others?: readonly Town[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The place that a request means: typed, a town's, or the plan's. */
export function placeGiven(request: VerbRequest): PlaceGiven {
  const zone = textGiven(request, 'zone');
  if (zone !== undefined && !isTimeZone(zone))
    return refuseOption('zone', `"${zone}" is not a known time zone: it looks like "Europe/Madrid".`);
  const typed = textGiven(request, 'at');
  if (typed !== undefined) {
    const found = parseCoordinates(typed);
    if (!found.ok) return refuseOption('at', found.reason);
    return {
      ok: true,
      place: { ...found.value, timeZone: zone ?? zoneAt(found.value.latitude, found.value.longitude) },
    };
  }
  const named = textGiven(request, 'town');
  if (named !== undefined) {
    const meant = townMeant(named);
    if (meant === null)
      return refuseOption('town', `No town "${named}" is in the built-in list: give the place with --at "LAT, LON".`);
    const { town, others } = meant;
    return {
      ok: true,
      place: { latitude: town.latitude, longitude: town.longitude, timeZone: zone ?? town.timeZone },
      town,
      others,
    };
  }
  if (request.plan === undefined)
    return refuseOption('at', 'Give a PLAN, or the place with --at "LAT, LON" or --town NAME.');
  const { latitude, longitude, timeZone, elevation } = request.plan.site;
  return { ok: true, place: { latitude, longitude, timeZone: zone ?? timeZone, elevation } };
}

export function yearOf(request: VerbRequest): number {
  return numberGiven(request, 'year') ?? request.plan?.season.year ?? ANY_YEAR;
}

export const surveyPlace: Verb = {
  name: 'survey place',
  summary: 'a place as typed or by its town: zone, declination, and a line to check it by',
  plan: 'optional',
  common: [],
  options: PLACE_OPTIONS,
  examples: ['survey place --at "37°53′N 4°47′W"', 'survey place --town alicante --json', 'survey place demo'],
  run(request): VerbResult {
    const given = placeGiven(request);
    if (!given.ok) return given;
    const { latitude, longitude, timeZone } = given.place;
    const year = yearOf(request);
    const { declination, notes } = declinationAt(latitude, longitude, elevationOf(given.place), year);
    const check = placeCheckLine(given.place, year);
    const near = nearestTown(latitude, longitude);
    const needle =
      `A compass needle points ${Math.abs(declination).toFixed(1)}° ` +
      `${declination < 0 ? 'west' : 'east'} of true north here in ${year}.`;
    const text = [
      `Latitude ${degrees(latitude)}, longitude ${degrees(longitude)}, time zone ${timeZone}`,
      ...(given.town ? [`${townWords(given.town)}?${namesakeWords(given.others ?? [])}`] : []),
      `Nearest town of the list: ${townWords(near.town)}, ` +
        `${near.kilometres < 1 ? 'here' : `${near.kilometres.toFixed(0)} km away`}`,
      check,
      needle,
      ELEVATION_NOTE,
    ]
      .map((line) => `${wrapped(line, request.page.columns)}\n`)
      .join('');
    return {
      ok: true,
      json: { latitude, longitude, timeZone, declination, nearest: near, check },
      text,
      notes: [...placeNotes(latitude), ...notes],
    };
  },
};

/** What to write for the other towns of that name. */
function namesakeWords(others: readonly Town[]): string {
  return others.length === 0 ? '' : ` If not, write ${others.map((other) => `"${townWords(other)}"`).join(' or ')}.`;
}

function degrees(value: number): string {
  return `${value.toFixed(4).replace('-', '−')}°`;
}
