import type { LeafDay } from '../../../load/leaf/leaf-day.ts';
import type { Watering } from '../../../load/leaf/leaf.ts';
import type { Targets } from '../search/targets.ts';

/** The leaf of each plant on each heat day: [plant][heat day]. Plants of like leaves share one. */
export type LeafTables = readonly (readonly LeafDay[])[];

export function leafTables({ plants, heats }: Targets, watering: Watering = 'thirsty'): LeafTables {
  return plants.map(({ row }) => heats.map(({ leaves }) => leaves(watering, row)));
}
