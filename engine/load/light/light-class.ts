import type { PlantRow } from '../../plan/types.ts';
import type { LightClass, Nine } from '../types.ts';

/** Light classes by hours of direct sun a day (Penn State Extension; other sources differ by up to 2 h). */
export function lightClassOf(sunHours: number): LightClass {
  if (sunHours >= 6) return 'full sun';
  if (sunHours >= 4) return 'part sun';
  return sunHours >= 2 ? 'part shade' : 'full shade';
}

/** The least light of a plant's range: daily light where its row has a minimum [mol/m²], else hours of sun [h]. */
export function leastLight({ minDLI, sunHours }: PlantRow): {
  readonly of: 'dailyLight' | 'sunHours';
  readonly least: number;
} {
  return typeof minDLI === 'number' ? { of: 'dailyLight', least: minDLI } : { of: 'sunHours', least: sunHours[0] };
}

/** Whether a place is below a plant's range. */
export function isTooDark(row: PlantRow, light: Nine): boolean {
  const { of, least } = leastLight(row);
  return light[of] < least;
}
