/** Posts by their ids, in words. */

const byNumber = new Intl.Collator('en', { numeric: true }).compare;

/** "P1", "P1, P2 and P3", "P1, P2 and 5 more". */
export function idsNamed(unsorted: readonly string[]): string {
  const ids = unsorted.toSorted(byNumber);
  if (ids.length === 1) return ids[0];
  const [shown, last] =
    ids.length <= 4 ? [ids.slice(0, -1), ids[ids.length - 1]] : [ids.slice(0, 2), `${ids.length - 2} more`];
  return `${shown.join(', ')} and ${last}`;
}
