import { surfaceTemperature, type Watering } from '../../../load/leaf/leaf.ts';
import type { Targets } from '../search/targets.ts';

/**
 * Nodes of a table over the share of the beam; three over the sky view. Between them parabolas: within 1e-3 K of the
 * balance.
 */
const SHARE_NODES = 17;
const SKY_NODES = 3;

/** Stands for every leaf that is never over its limit at a sample. */
const NEVER_HOT = new Float64Array(SHARE_NODES * SKY_NODES).fill(-100);

/** The leaf of each plant at each sample, tabled once: a search asks for each of them hundreds of times. */
export interface LeafTables {
  /** Leaf − limit; below 0 where it is cool enough. [K] @param plant, heat, sample indices of the targets */
  excess(plant: number, heat: number, sample: number, share: number, skyView: number): number;
}

export function leafTables({ plants, heats }: Targets, watering: Watering = 'thirsty'): LeafTables {
  // Plants of one row stand in the same air: they share a table, whatever their limits.
  const rows = [...new Set(plants.map(({ row }) => row))];
  const rowOf = plants.map(({ row }) => rows.indexOf(row));
  const known: (Float64Array | undefined)[][][] = rows.map(() => heats.map(() => []));
  const leastLimit = rows.map((row) =>
    Math.min(...plants.filter((plant) => plant.row === row).map(({ limit }) => limit)),
  );
  const tableOf = (row: number, heat: number, sample: number): Float64Array => {
    const moment = heats[heat].moments[sample];
    // A leaf is hottest in full sun, and at one end or the other of the sky view.
    if ([0, 1].every((skyView) => surfaceTemperature(moment, rows[row], watering, 1, skyView) <= leastLimit[row]))
      return NEVER_HOT;
    const table = new Float64Array(SHARE_NODES * SKY_NODES);
    for (let s = 0; s < SHARE_NODES; s++) {
      for (let v = 0; v < SKY_NODES; v++)
        table[s * SKY_NODES + v] = surfaceTemperature(
          moment,
          rows[row],
          watering,
          s / (SHARE_NODES - 1),
          v / (SKY_NODES - 1),
        );
    }
    return table;
  };
  return {
    excess(plant, heat, sample, share, skyView) {
      const row = rowOf[plant];
      const table = (known[row][heat][sample] ??= tableOf(row, heat, sample));
      // The parabola through the node next to the share and its two neighbours.
      const along = share * (SHARE_NODES - 1);
      const middle = Math.min(SHARE_NODES - 2, Math.max(1, Math.round(along)));
      const x = along - middle;
      const at = (middle - 1) * SKY_NODES;
      return (
        parabola(
          alongSky(table, at, skyView),
          alongSky(table, at + SKY_NODES, skyView),
          alongSky(table, at + 2 * SKY_NODES, skyView),
          x,
        ) - plants[plant].limit
      );
    },
  };
}

function alongSky(table: Float64Array, at: number, skyView: number): number {
  return parabola(table[at], table[at + 1], table[at + 2], 2 * skyView - 1);
}

/** Through (−1, a), (0, b) and (1, c). */
function parabola(a: number, b: number, c: number, x: number): number {
  return b + (x / 2) * (c - a + x * (a + c - 2 * b));
}
