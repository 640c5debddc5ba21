import { signal } from '@preact/signals';
import type { CivilDate } from '../../../engine/index.ts';

export const PAGES = ['Dates', 'Tomorrow', 'Diary', 'Did it work?', 'Next year'] as const;

/** Which page of the year is open; kept while one goes to another stage and back. */
export const page = signal<(typeof PAGES)[number]>('Dates');

/** Damage that the comparison of years misses, on its way into the diary; when it is noted, one is back there. */
export const missing = signal<{ readonly feature: string; readonly date: CivilDate } | null>(null);
