import { compassWord } from '../../../engine/index.ts';
import type { DayTable } from '../../../engine/index.ts';

/** "sun 38° high", or "the sun is down". */
export function heightWords(table: DayTable, minute: number): string {
  const altitude = table.altitude[minute];
  return altitude <= 0 ? 'the sun is down' : `sun ${Math.round(altitude)}° high`;
}

/** " in the west"; empty while the sun is down. */
export function whereWords(table: DayTable, minute: number): string {
  return table.altitude[minute] <= 0 ? '' : ` in the ${compassWord(table.azimuth[minute])}`;
}

/** How likely hot sun is at that minute, in a few words; empty when it is not, or not known. */
export function harmWords(harm: number): string {
  if (harm >= 0.5) return 'hot';
  return harm >= 0.1 ? 'hot on some days' : '';
}
