import { signal } from '@preact/signals';

const KEY = 'shadewright.build';

/**
 * What is ticked and half typed on build sheets, kept on this machine and no part of any plan: a shopping trip, not a
 * yard. The key names yard, thing and line.
 */
const kept = signal<Readonly<Record<string, string>>>(stored());

export function keptText(key: string): string {
  return kept.value[key] ?? '';
}

/** An empty text forgets the key. */
export function keepText(key: string, text: string): void {
  const { [key]: _, ...rest } = kept.value;
  kept.value = text === '' ? rest : { ...rest, [key]: text };
  try {
    localStorage.setItem(KEY, JSON.stringify(kept.value));
  } catch {
    // A browser that keeps nothing: the ticks hold until the page closes.
  }
}

export function forgetAll(prefix: string): void {
  for (const key of Object.keys(kept.value)) if (key.startsWith(prefix)) keepText(key, '');
}

function stored(): Readonly<Record<string, string>> {
  try {
    const read: unknown = JSON.parse(localStorage.getItem(KEY) ?? '{}');
    if (typeof read !== 'object' || read === null) return {};
    return Object.fromEntries(
      Object.entries(read).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
    );
  } catch {
    return {};
  }
}
