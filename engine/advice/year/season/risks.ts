import type { RiskyTask } from '../../../frame/work/types.ts';
import type { SeasonEvent } from './types.ts';

/** What is to be minded with a date of the year; a reminder of it is read alone, far from the page. */
export const RISKS: Readonly<Partial<Record<SeasonEvent['kind'], readonly RiskyTask[]>>> = {
  heat: ['heat'],
  'cloth-up': ['cloth'],
  'cloth-down': ['cloth'],
  clay: ['spray'],
  'winter-cover': ['winter'],
  frost: ['winter'],
  harden: ['heat'],
};

/** What a year's page tells to do: no ladder where nothing hangs, no cover where nothing freezes. */
export function risksOf(events: readonly SeasonEvent[]): RiskyTask[] {
  return ['heat', ...events.flatMap(({ kind }) => RISKS[kind] ?? [])];
}
