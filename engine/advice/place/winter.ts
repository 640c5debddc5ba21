/** A pot has two homes where summer and winter want different ones. */

import type { PlantRow } from '../../plan/types.ts';

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
/** Whether a kind wants sun in winter: it keeps its leaves, and is none that grows in shade (common practice). */
export function wantsWinterSun({ id, group, light }: PlantRow): boolean {
  if (light === 'part shade' || light === 'full shade') return false;
  return group === 'citrus' || group === 'succulent' || EVERGREEN.includes(id);
}

/** What to know of a place tried for an evergreen; empty where there is sun enough. @param hours in mid-winter [h] */
export function winterWarning(hours: number | null): string {
  if (hours === null || hours >= WINTER_SUN) return '';
  return hours < 0.5 ? 'No sun there in mid-winter.' : `Only ${hours.toFixed(0)} h of sun there in mid-winter.`;
}
