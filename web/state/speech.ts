import { signal } from '@preact/signals';

/** A sentence to the person, at the foot of the map, with at most one thing to do about it. */
export interface Notice {
  readonly text: string;
  readonly kind: 'done' | 'warning' | 'problem';
  readonly action?: { readonly label: string; run(): void };
}

export const notice = signal<Notice | null>(null);

/** Shows a notice and has it read out. */
export function say(text: string, kind: Notice['kind'] = 'done', action?: Notice['action']): void {
  notice.value = { text, kind, action };
  readOut(text);
}

/** What the live region holds: read by a screen reader, seen by nobody. */
export const spoken = signal('');

/** Reads a sentence out, also when it is the same as the last one. */
export function readOut(text: string): void {
  spoken.value = spoken.value === text ? `${text}\u00a0` : text;
}

/** The drawing's next step in one sentence ("Tap the wall's other end"); the shell shows it over the map. */
export const toolHint = signal<string | null>(null);
