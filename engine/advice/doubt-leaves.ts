/** Leaf temperatures of a heat day by table, for the many points and yards that a question of doubt or of place asks about. */
import type { HeatDay } from '../load/heat-day.ts';
import { surfaceTemperature, type Watering } from '../load/leaf.ts';
import type { PlantRow } from '../plan/types.ts';

/** Steps of share and of sky view between which a leaf's temperature is taken as linear: within 0.1 K. */
const SHARE_STEPS = 16;
const SKY_STEPS = 4;

/** A leaf's temperature by sample, share and sky view. [°C] */
export type LeafTable = (sample: number, share: number, sky: number) => number;
export type Leaves = (watering: Watering, row: PlantRow) => LeafTable;

/** Tables of one heat day, made as they are asked for; a limit does not change them. */
export function createLeaves(heat: HeatDay): Leaves {
  const tables = new Map<string, LeafTable>();
  return (watering, row) => {
    const key = `${watering} ${row.leafWidth} ${row.bothSides} ${row.limitOf}`;
    let table = tables.get(key);
    if (!table) tables.set(key, (table = leafTable(heat, row, watering)));
    return table;
  };
}

function leafTable(heat: HeatDay, row: PlantRow, watering: Watering): LeafTable {
  const across = SKY_STEPS + 1;
  const size = (SHARE_STEPS + 1) * across;
  const known = new Float64Array(size * heat.moments.length).fill(NaN);
  const at = (k: number, s: number, v: number): number => {
    const index = k * size + s * across + v;
    if (Number.isNaN(known[index])) known[index] = surfaceTemperature(heat.moments[k], row, watering, s / SHARE_STEPS, v / SKY_STEPS);
    return known[index];
  };
  return (k, share, sky) => {
    const s = Math.min(SHARE_STEPS - 1, Math.floor(share * SHARE_STEPS));
    const v = Math.min(SKY_STEPS - 1, Math.floor(sky * SKY_STEPS));
    const ds = share * SHARE_STEPS - s;
    const dv = sky * SKY_STEPS - v;
    const low = at(k, s, v) * (1 - dv) + at(k, s, v + 1) * dv;
    return ds === 0 ? low : low * (1 - ds) + (at(k, s + 1, v) * (1 - dv) + at(k, s + 1, v + 1) * dv) * ds;
  };
}
