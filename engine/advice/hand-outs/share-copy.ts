/** A plan that can be given away: what it takes to work out the sun, and nothing that says whose yard it is. */

import { TUBE_IDS } from '../../frame/shop/stock.ts';
import { CATALOGUE } from '../../plan/catalogue/plants.ts';
import { isPlan } from '../../plan/check/check.ts';
import { elevationOf } from '../../plan/defaults.ts';
import { PLAN } from '../../plan/schema/plan.ts';
import type { Plan, Problem } from '../../plan/types.ts';
import { withoutFreeText } from './without-free-text.ts';

export interface ShareCopy {
  readonly plan: Plan;
  /** What is in the copy, one thing a line: to be read before it leaves. */
  readonly leaves: readonly string[];
  /** What was taken out. */
  readonly removed: readonly string[];
}

/** About this far in any direction a copy's place may be off. [km] */
const ROUNDED_KM = 8;

/**
 * The copy. Latitude and longitude are rounded to 0.1°, the height above the sea to 10 m; the picture, every name and
 * note, the climate's source, parts set aside and keys of other programs are gone; ids become numbers, the same in
 * every place and in every earlier year.
 */
export function shareCopy(plan: Plan): ShareCopy {
  const names = new Map<string, string>();
  const copied = withoutFreeText(PLAN, nearbyOf(plan), (id) => numberedId(names, id));
  const problems: Problem[] = [];
  if (!isPlan(copied, problems)) throw new Error(`The copy would not open: ${problems[0].message}`);
  return { plan: copied, leaves: leavesOf(copied), removed: removedOf(plan) };
}

/** The same yard somewhere near, in every year. */
function nearbyOf(plan: Plan): Plan {
  const { site, past } = plan;
  return {
    ...plan,
    site: {
      ...site,
      latitude: Math.round(site.latitude * 10) / 10,
      longitude: Math.round(site.longitude * 10) / 10,
      ...(site.elevation === undefined ? {} : { elevation: Math.round(elevationOf(site) / 10) * 10 }),
    },
    ...(past === undefined ? {} : { past: past.map((each) => ({ ...each, plan: nearbyOf(each.plan) })) }),
  };
}

/** What the program itself names keeps its name. */
const OWN_NAMES: ReadonlySet<string> = new Set([...CATALOGUE.map(({ id }) => id), ...TUBE_IDS]);

function numberedId(names: Map<string, string>, id: string): string {
  if (OWN_NAMES.has(id)) return id;
  const numbered = names.get(id) ?? `n${names.size + 1}`;
  names.set(id, numbered);
  return numbered;
}

function leavesOf(plan: Plan): string[] {
  const { site, features, climate, season } = plan;
  const readings = features.filter(({ kind }) => kind === 'reading').length;
  const many = (count: number, one: string, more: string) =>
    count === 0 ? [] : [`${count} ${count === 1 ? one : more}`];
  return [
    `The place to the nearest 0.1°, up to ${ROUNDED_KM} km off: latitude ${site.latitude}°, longitude ` +
      `${site.longitude}°; the time zone ${site.timeZone}.`,
    ...(site.elevation === undefined ? [] : [`The height above the sea to the nearest 10 m: ${site.elevation} m.`]),
    'The outline of the yard with its lengths, which way is north, and the skyline.',
    ...many(
      features.length - readings,
      'thing drawn, with its sizes and its kind of plant.',
      'things drawn, with their sizes and kinds of plant.',
    ),
    ...many(plan.options?.length ?? 0, 'option to try.', 'options to try.'),
    `The season of ${season.year} and the climate of ${climate.months.length} months.`,
    ...many(readings, 'reading with its date, time and numbers.', 'readings with their dates, times and numbers.'),
    ...many(
      plan.journal?.length ?? 0,
      'journal entry with its date, without its text.',
      'journal entries with their dates, without their texts.',
    ),
    ...many(
      plan.plants?.length ?? 0,
      'plant row of your own, its numbers alone.',
      'plant rows of your own, their numbers alone.',
    ),
    ...(plan.stock === undefined ? [] : ['What the shop sells, in sizes and prices.']),
    ...many(
      plan.past?.length ?? 0,
      'earlier year, cut down in the same way.',
      'earlier years, cut down in the same way.',
    ),
  ];
}

function removedOf(plan: Plan): string[] {
  const { site, features, journal = [] } = plan;
  const named = features.filter(({ name }) => name !== undefined).length;
  const texts =
    features.filter((feature) => feature.kind === 'reading' && feature.text !== undefined).length +
    journal.filter(({ text }) => text !== undefined).length;
  return [
    'The exact place.',
    ...(site.underlay === undefined ? [] : ['The picture to trace over.']),
    ...(plan.name === undefined ? [] : ['The plan’s name.']),
    ...(named === 0 ? [] : [`${named} ${named === 1 ? 'name' : 'names'} of things drawn.`]),
    ...(texts === 0 ? [] : [`${texts} ${texts === 1 ? 'note' : 'notes'} on readings and in the journal.`]),
    ...(site.rules?.note === undefined ? [] : ['The note on local rules.']),
    ...(plan.cautions === undefined ? [] : ['The cautions of your place.']),
    ...(plan.climate.source === undefined ? [] : ['Where the climate’s figures come from.']),
    'Whatever was set aside or written by another program, and every id: numbers stand in its place.',
  ];
}
