import { signal } from '@preact/signals';

export const PAGES = ['Dates', 'Tomorrow', 'Diary', 'Did it work?', 'Next year'] as const;

/** Which page of the year is open; kept while one goes to another stage and back. */
export const page = signal<(typeof PAGES)[number]>('Dates');
