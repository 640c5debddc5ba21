/**
 * Says that a yard of the person's own was once kept here, in a place that some browsers clear later than the database.
 */
const KEY = 'shadewright.kept';

export function markKept(): void {
  try {
    localStorage.setItem(KEY, '1');
  } catch {
    // Only a mark.
  }
}

export function wasKept(): boolean {
  try {
    return localStorage.getItem(KEY) !== null;
  } catch {
    return false;
  }
}
