import type { PlantRow } from '../plan/types.ts';
import type { LightClass, Nine } from './types.ts';

/** Light classes by hours of direct sun a day (Penn State Extension; other sources differ by up to 2 h). */
export function lightClassOf(sunHours: number): LightClass {
  if (sunHours >= 6) return 'full sun';
  if (sunHours >= 4) return 'part sun';
  return sunHours >= 2 ? 'part shade' : 'full shade';
}

/** Whether a place is below a plant's range: by daily light where its row has a minimum, else by hours of sun. */
export function isTooDark(row: PlantRow, light: Nine): boolean {
  return typeof row.minDLI === 'number' ? light.dailyLight < row.minDLI : light.sunHours < row.sunHours[0];
}
