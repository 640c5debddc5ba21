import type { Units } from '../../plan/units.ts';

/** A one-gallon sprayer. [L] */
export const GALLON = 3.785;

/** A volume of water: `6.8 L`, `1.8 gal`, `2.6 qt`. @param litres [L] */
export function litresWords(litres: number, units: Units): string {
  const gallons = litres / GALLON;
  const [value, unit] = units === 'metric' ? [litres, 'L'] : gallons < 0.95 ? [4 * gallons, 'qt'] : [gallons, 'gal'];
  return `${value.toFixed(value < 10 ? 1 : 0)} ${unit}`;
}
