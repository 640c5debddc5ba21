import type { PlantRow } from '../../plan/types.ts';
import type { LightClass } from '../types.ts';

/** Light classes by hours of direct sun a day (Penn State Extension; other sources differ by up to 2 h). */
export function lightClassOf(sunHours: number): LightClass {
  if (sunHours >= 6) return 'full sun';
  if (sunHours >= 4) return 'part sun';
  return sunHours >= 2 ? 'part shade' : 'full shade';
}

/**
 * Least daily light of a plant that names none, by its class (greenhouse classes of Torres & Lopez 2010, Purdue
 * Extension HO-238-W, from memory). [mol/m² a day]
 */
const CLASS_LEAST: Readonly<Record<LightClass, number>> = {
  'full sun': 18,
  'part sun': 12,
  'part shade': 6,
  'full shade': 3,
};
/** With this share of its least light a plant still grows, with fewer flowers and fruit. */
const SHORT_FROM = 2 / 3;

/** `short`: it grows, with fewer flowers and fruit. */
export type LightStanding = 'enough' | 'short' | 'too dark';

/** The least daily light that a plant wants, season mean. [mol/m² a day] */
export function leastLight({ minDLI, light, sunHours }: PlantRow): number {
  return minDLI ?? CLASS_LEAST[isLightClass(light) ? light : lightClassOf(sunHours[0])];
}

function isLightClass(word: string | undefined): word is LightClass {
  return word !== undefined && word in CLASS_LEAST;
}

/** Below this a plant's place is too dark. [mol/m² a day] */
export function darkBelow(row: PlantRow): number {
  return SHORT_FROM * leastLight(row);
}

/**
 * Whether a place is bright enough: daily light alone decides. Half of an August sun in a hot climate is more than a
 * northern garden has in the open, so that hours of sun thinned by cloth must never call it dark.
 * @param dailyLight where the plant's light is judged, season mean [mol/m² a day]
 */
export function lightStanding(row: PlantRow, dailyLight: number): LightStanding {
  if (dailyLight >= leastLight(row)) return 'enough';
  return dailyLight >= darkBelow(row) ? 'short' : 'too dark';
}

export function isTooDark(row: PlantRow, { dailyLight }: { readonly dailyLight: number }): boolean {
  return lightStanding(row, dailyLight) === 'too dark';
}
