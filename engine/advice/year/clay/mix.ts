/** Powder in water. Orchard trials and extension: 50 lb, then 25 lb in 100 gallons. [g/L] */
export const CLAY_FIRST = 60;
export const CLAY_NEXT = 30;
