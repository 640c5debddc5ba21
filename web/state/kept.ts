import { effect, signal } from '@preact/signals';
import type { Signal } from '@preact/signals';
import { openYard } from './yard.ts';

/**
 * What a person has half typed, kept in this browser so that a locked phone loses none of it. It belongs to no plan; a
 * browser that keeps nothing holds it until the page closes.
 */

/**
 * @param usual what holds at first
 * @param isSound refuses what an older or a broken page has left behind; without it, what is kept must be shaped like
 *   `usual`
 */
export function kept<T>(
  name: string,
  usual: T,
  isSound: (found: unknown) => found is T = (found): found is T => isAlike(found, usual),
): Signal<T> {
  const key = `shadewright.typed.${name}`;
  const value = signal<T>(usual);
  try {
    const found: unknown = JSON.parse(localStorage.getItem(key) ?? 'null');
    if (isSound(found)) value.value = found;
  } catch {
    // Nothing is kept, or it cannot be read.
  }
  effect(() => {
    const text = JSON.stringify(value.value);
    try {
      if (value.value === usual) localStorage.removeItem(key);
      else localStorage.setItem(key, text);
    } catch {
      // It lasts until the page closes.
    }
  });
  return value;
}

/** The same for what is typed about one yard: in another yard the boxes are as at first. */
export function keptForYard<T>(
  name: string,
  usual: T,
  isSound: (found: unknown) => found is T = (found): found is T => isAlike(found, usual),
): { value: T } {
  const nobody = { yard: '', typed: usual };
  const all = kept(
    name,
    nobody,
    (found): found is typeof nobody => hasParts(found) && typeof found.yard === 'string' && isSound(found.typed),
  );
  return {
    get value() {
      return all.value.yard === openYard.value.id ? all.value.typed : usual;
    },
    set value(typed) {
      all.value = { yard: openYard.value.id, typed };
    },
  };
}

/** Texts by any key. */
export function isTexts(found: unknown): found is Readonly<Record<string, string>> {
  return hasParts(found) && Object.values(found).every((text) => typeof text === 'string');
}

/** Whether something has every part that `usual` has, each of the same type. */
export function isAlike(found: unknown, usual: unknown): boolean {
  if (!hasParts(usual)) return typeof found === typeof usual;
  return (
    hasParts(found) &&
    Array.isArray(found) === Array.isArray(usual) &&
    Object.entries(usual).every(([key, part]) => isAlike(found[key], part))
  );
}

function hasParts(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
