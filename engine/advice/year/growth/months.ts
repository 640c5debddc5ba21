/** Months in which a kind does something, told for the north. */

/** 1 to 12; from the later to the earlier is across New Year. */
export type Span = readonly [from: number, to: number];

/** Whether a month lies in a span of the north: half a year on in the south. @param latitude [°] */
export function isInSpan([from, to]: Span, month: number, latitude: number): boolean {
  const northern = latitude >= 0 ? month : ((month + 5) % 12) + 1;
  return from <= to ? northern >= from && northern <= to : northern >= from || northern <= to;
}
