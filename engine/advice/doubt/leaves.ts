/**
 * Leaf temperatures of heat days by table, for the many points and yards that a question of doubt or of place asks
 * about.
 */
import type { HeatDay } from '../../load/leaf/heat-day.ts';
import { surfaceTemperature, type Watering } from '../../load/leaf/leaf.ts';
import type { PlantRow } from '../../plan/types.ts';

/** Steps of share and of sky view between which a leaf's temperature is taken as linear: within 0.1 K. */
const SHARE_STEPS = 16;
const SKY_STEPS = 4;

/** A leaf's temperature by sample, share and sky view. [°C] */
export interface LeafTable {
  at(sample: number, share: number, sky: number): number;
  /**
   * The samples at which a leaf can be at a limit at all: it is warmest in the whole beam, under no sky or under all of
   * it.
   */
  hotSamples(limit: number): Int32Array;
}

/**
 * Tables of one heat day, made as they are asked for; a limit does not change them.
 * @param absorptance to sunlight, a bare leaf's where nothing is said
 */
export type Leaves = (watering: Watering, row: PlantRow, absorptance?: number) => LeafTable;

export function createLeaves(heat: HeatDay): Leaves {
  const tables = new Map<string, LeafTable>();
  return (watering, row, absorptance) => {
    const key = `${watering} ${row.leafWidth} ${row.bothSides} ${row.limitOf} ${absorptance}`;
    let table = tables.get(key);
    if (!table) tables.set(key, (table = leafTable(heat, row, watering, absorptance)));
    return table;
  };
}

/**
 * Leaves of the heat days of yards that differ in nothing but their features and the heatwave's high: each day's are
 * made once.
 */
export function createLeafStore(): (heat: HeatDay) => Leaves {
  const known = new Map<string, Leaves>();
  return (heat) => {
    const key = `${heat.day.date} ${heat.day.high} ${heat.day.low}`;
    let leaves = known.get(key);
    if (!leaves) known.set(key, (leaves = createLeaves(heat)));
    return leaves;
  };
}

function leafTable({ moments }: HeatDay, row: PlantRow, watering: Watering, absorptance?: number): LeafTable {
  const across = SKY_STEPS + 1;
  const size = (SHARE_STEPS + 1) * across;
  const known = new Float64Array(size * moments.length).fill(NaN);
  const hot = new Map<number, Int32Array>();
  const node = (k: number, s: number, v: number): number => {
    const index = k * size + s * across + v;
    if (Number.isNaN(known[index]))
      known[index] = surfaceTemperature(moments[k], row, watering, s / SHARE_STEPS, v / SKY_STEPS, absorptance);
    return known[index];
  };
  const hotSamples = (limit: number) =>
    Int32Array.from(moments.keys()).filter(
      (k) => Math.max(node(k, SHARE_STEPS, 0), node(k, SHARE_STEPS, SKY_STEPS)) >= limit,
    );
  return {
    at(k, share, sky) {
      const s = Math.min(SHARE_STEPS - 1, Math.floor(share * SHARE_STEPS));
      const v = Math.min(SKY_STEPS - 1, Math.floor(sky * SKY_STEPS));
      const ds = share * SHARE_STEPS - s;
      const dv = sky * SKY_STEPS - v;
      const low = node(k, s, v) * (1 - dv) + node(k, s, v + 1) * dv;
      return ds === 0 ? low : low * (1 - ds) + (node(k, s + 1, v) * (1 - dv) + node(k, s + 1, v + 1) * dv) * ds;
    },
    hotSamples(limit) {
      let samples = hot.get(limit);
      if (!samples) hot.set(limit, (samples = hotSamples(limit)));
      return samples;
    },
  };
}
