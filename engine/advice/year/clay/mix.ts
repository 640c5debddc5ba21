/**
 * Powder in water. Orchard trials and extension: 50 lb, then 25 lb in 100 gallons. A garden's light coat is half a cup
 * to the gallon. [g/L]
 */
export const CLAY_FIRST = 60;
export const CLAY_NEXT = 30;
export const CLAY_LIGHT = 17;
