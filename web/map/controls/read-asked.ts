import type { crownGuess, FeatureChanges, Knowledge, Units } from '../../../engine/index.ts';
import { knownAs } from '../../common/fields/known-by.ts';
import type { NumberField } from '../../common/fields/number-field.ts';
import { readField } from '../../common/fields/read-field.ts';

/** What a tree's kind says of its crown, and how the kind is called. */
type CrownGuess = ReturnType<typeof crownGuess> & { readonly name: string };

/** What was typed into the boxes of a thing just drawn: what it changes, and a question where a number is odd. */
type Asked =
  | { readonly kind: 'fault'; readonly message: string }
  | { readonly kind: 'read'; readonly changes: FeatureChanges; readonly unusual: string | null };

/** What an empty box stands for. */
export function suggestedFor({ key, suggested }: NumberField, guess: CrownGuess | undefined): number | undefined {
  return key === 'openness' && guess ? guess.openness : suggested;
}

/** Reads the boxes; one left empty takes what is suggested and is marked as guessed. */
export function readAsked(
  fields: readonly NumberField[],
  typed: FormData,
  units: Units,
  guess: CrownGuess | undefined,
): Asked {
  const changes: Record<string, unknown> = {};
  const how: Record<string, Knowledge> = {};
  let unusual: string | null = null;
  const name = String(typed.get('name') ?? '').trim();
  if (name !== '') changes.name = name;
  for (const field of fields) {
    const text = String(typed.get(field.key) ?? '').trim();
    const first = suggestedFor(field, guess);
    if (text === '' && first !== undefined) {
      changes[field.key] = first;
      how[field.key] =
        (field.key === 'openness' ? guess?.how.openness : undefined) ?? knownAs('guess', first, field.unit);
      continue;
    }
    const entry = readField(field, text, units);
    if (!entry.ok) return { kind: 'fault', message: entry.message };
    unusual ??= entry.unusual;
    if (entry.value !== undefined) changes[field.key] = entry.value;
  }
  if (guess) {
    changes.shape = guess.shape;
    if (guess.leafless) changes.leafless = guess.leafless;
    changes.name ??= guess.name;
  }
  if (Object.keys(how).length > 0) changes.how = how;
  return { kind: 'read', changes: changes as FeatureChanges, unusual };
}
