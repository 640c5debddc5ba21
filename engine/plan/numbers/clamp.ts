/** A number, or the end of a range that it lies beyond. */
export function clamp(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
