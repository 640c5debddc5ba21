/** The garden plants that come with the project, each number with its source, and the person's own rows, which win. */

import type { PlantRow } from '../types.ts';
import catalogue from './plants.json' with { type: 'json' };

/** Every row of the catalogue, in the file's order. */
export const CATALOGUE: readonly PlantRow[] = catalogue.plants as readonly unknown[] as readonly PlantRow[];

const BY_ID: ReadonlyMap<string, PlantRow> = new Map(CATALOGUE.map((row) => [row.id, row]));

/** What names a row. */
type RowName = Pick<PlantRow, 'id' | 'name'>;

/** The row of an id: the person's own if there is one, else the catalogue's. */
export function plantRowOf<R extends RowName = PlantRow>(
  plan: { readonly plants?: readonly R[] },
  rowId: string,
): R | PlantRow | undefined {
  return plan.plants?.find((row) => row.id === rowId) ?? BY_ID.get(rowId);
}

/** Ids of rows spelt most like a word, nearest first, at most three; none if none is near. */
export function nearestPlantIds(plan: { readonly plants?: readonly RowName[] }, word: string): string[] {
  const wanted = word.toLowerCase();
  const rows: readonly RowName[] = [...(plan.plants ?? []), ...CATALOGUE];
  const scored = rows.map((row) => ({
    id: row.id,
    misses: Math.min(editDistance(wanted, row.id), editDistance(wanted, row.name.toLowerCase())),
  }));
  const near = scored.filter(({ id, misses }) => misses <= Math.max(2, Math.ceil(id.length / 3)));
  near.sort((a, b) => a.misses - b.misses);
  return [...new Set(near.map(({ id }) => id))].slice(0, 3);
}

/** Letters to insert, delete or replace to turn one word into the other (Levenshtein). Long words are not compared. */
export function editDistance(a: string, b: string): number {
  if (a.length > 40 || b.length > 40) return Infinity;
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      next.push(Math.min(row[j] + 1, next[j - 1] + 1, row[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1)));
    }
    row = next;
  }
  return row[b.length];
}
