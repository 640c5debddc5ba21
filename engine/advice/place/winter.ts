/** A pot has two homes where summer and winter want different ones. */
import type { PlantRow } from '../../plan/types.ts';
import type { Tried } from './rank.ts';

/**
 * Kinds that keep their leaves and grow in the sun; all citrus and succulents do. Common practice, no source: in a hard
 * winter some of them drop theirs.
 */
const EVERGREEN: readonly string[] = [
  'olive',
  'loquat',
  'date',
  'mango',
  'mango-young',
  'avocado',
  'avocado-young',
  'lychee',
  'guava',
  'papaya',
  'banana',
  'passion',
  'dragon',
  'rosemary',
  'lavender',
  'thyme',
  'bougainvillea',
  'oleander',
  'hibiscus',
  'geranium',
  'jasmine',
  'salvia',
];

/** With less sun than this on a clear day in mid-winter an evergreen wants another place then. Our choice. [h] */
export const WINTER_SUN = 2;
/** To carry a pot to and fro every year is worth this share of today's harm. Our choice. */
const CARRYING = 0.1;
/** Places whose worth is this near are alike. [K·h/day] */
const ALIKE = 0.5;

/** Whether a kind wants sun in winter: it keeps its leaves, and is none that grows in shade (common practice). */
export function wantsWinterSun({ id, group, light }: PlantRow): boolean {
  if (light === 'part shade' || light === 'full shade') return false;
  return group === 'citrus' || group === 'succulent' || EVERGREEN.includes(id);
}

/**
 * Places in the order in which they suit an evergreen the whole year: one without winter sun must spare a tenth of
 * today's harm more, for it has to be left every autumn. Light decides before that, as in the order they come in.
 * @param inSummer the best in summer first @param harmNow where it stands [K·h/day]
 * @param winterAt sun in mid-winter [h]
 */
export function weighedWithWinter(
  inSummer: readonly Tried[],
  harmNow: number,
  winterAt: (tried: Tried) => number,
): Tried[] {
  const cost = (tried: Tried): number =>
    Math.round((tried.harm + (winterAt(tried) < WINTER_SUN ? CARRYING * harmNow : 0)) / ALIKE);
  const firstUnsuited = inSummer.findIndex(({ standing }) => standing !== 'enough');
  const end = firstUnsuited < 0 ? inSummer.length : firstUnsuited;
  return [...inSummer.slice(0, end).toSorted((a, b) => cost(a) - cost(b)), ...inSummer.slice(end)];
}

/** What to know of a place tried for an evergreen; empty where there is sun enough. @param hours in mid-winter [h] */
export function winterWarning(hours: number | null): string {
  if (hours === null || hours >= WINTER_SUN) return '';
  return hours < 0.5 ? 'No sun there in mid-winter.' : `Only ${hours.toFixed(0)} h of sun there in mid-winter.`;
}
