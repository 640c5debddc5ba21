import { gradeOf } from '../../../engine/load/light/nine.ts';
import type { LoadResult, PlantLoad } from '../../../engine/load/types.ts';

/** A load of six cells, two rows of three, the hot loads given lower row first; `null`: no value. */
export function smallLoad(
  hotLoads: readonly (number | null)[],
  plants: readonly Partial<PlantLoad>[] = [],
): LoadResult {
  const of = (scale: number) => Float64Array.from(hotLoads, (load) => (load === null ? NaN : load * scale));
  return {
    grid: { x0: 2, y0: 1, cell: 0.5, columns: 3, rows: hotLoads.length / 3, height: 0.5 },
    cells: {
      sunHours: of(0.5),
      morningHours: of(0.2),
      afternoonHours: of(0.3),
      hotHours: of(0.1),
      beamDose: of(1.7),
      hotLoad: of(1),
      dailyLight: of(2.9),
      skyView: of(0.01),
      grade: Float64Array.from(hotLoads, (load) => (load === null ? NaN : gradeOf(load))),
    },
    hotSpots: [],
    plants: plants as PlantLoad[],
    season: { days: 5, samples: 400, openSunHours: 13, openBeamDose: 37, openHotLoad: 21 },
  };
}
