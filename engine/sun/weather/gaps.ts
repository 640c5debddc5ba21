/**
 * Fills runs of NaN in place, in a straight line between the values on either side; the array is a ring, its end joins
 * its start. Runs longer than `longest` stay.
 * @returns how many values were filled, and the first index of the first run that stayed, or null
 */
export function bridgeGaps(values: Float64Array, longest: number): { filled: number; firstGap: number | null } {
  const count = values.length;
  const anchor = values.findIndex((value) => !Number.isNaN(value));
  if (anchor === -1) return { filled: 0, firstGap: count > 0 ? 0 : null };
  let filled = 0;
  let firstGap: number | null = null;
  let last = anchor;
  for (let step = 1; step <= count; step++) {
    const index = (anchor + step) % count;
    if (Number.isNaN(values[index])) continue;
    const missing = step - 1 - offsetFrom(anchor, last, count);
    if (missing > longest) {
      const start = (last + 1) % count;
      if (firstGap === null || start < firstGap) firstGap = start;
    } else if (missing > 0) {
      const slope = (values[index] - values[last]) / (missing + 1);
      for (let gap = 1; gap <= missing; gap++) values[(last + gap) % count] = values[last] + slope * gap;
      filled += missing;
    }
    last = index;
  }
  return { filled, firstGap };
}

const offsetFrom = (anchor: number, index: number, count: number): number => (index - anchor + count) % count;
