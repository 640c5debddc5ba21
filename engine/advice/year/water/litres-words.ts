import type { Units } from '../../../plan/units/units.ts';

/** A one-gallon sprayer. [L] */
export const GALLON = 3.785;

/** Below so much, to such a step: what a plant drinks is known to a fifth, and measured with a can. Our choice. */
const STEPS = [
  [2, 0.25],
  [5, 0.5],
  [20, 1],
  [Infinity, 5],
] as const;
const QUARTERS = ['', '¼', '½', '¾'] as const;

/** A volume of water as a can holds it: `2½ L`, `30 L`, `2 gal`, `2½ qt`. @param litres [L] */
export function litresWords(litres: number, units: Units): string {
  const { told, unit } = inACan(litres, units);
  const whole = Math.floor(told);
  const quarter = QUARTERS[Math.round(4 * (told - whole))];
  return told === 0 ? `under ¼ ${unit}` : `${whole === 0 ? '' : whole}${quarter} ${unit}`;
}

/** The same of what is only estimated: `about 2½ L`, `under ¼ L`. @param litres [L] */
export function aboutLitres(litres: number, units: Units): string {
  return `${inACan(litres, units).told === 0 ? '' : 'about '}${litresWords(litres, units)}`;
}

function inACan(litres: number, units: Units): { readonly told: number; readonly unit: string } {
  const gallons = litres / GALLON;
  const [value, unit] = units === 'metric' ? [litres, 'L'] : gallons < 0.95 ? [4 * gallons, 'qt'] : [gallons, 'gal'];
  const step = STEPS.find(([below]) => value < below)?.[1] ?? 5;
  return { told: step * Math.round(value / step), unit };
}
