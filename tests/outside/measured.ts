/** What the engine says to a published measurement, and whether the measured value lies inside it. */

import { CLAY_ABSORPTANCE } from '../../engine/advice/year/clay/clay.ts';
import { createPointCaster } from '../../engine/cast/points/point-caster.ts';
import { groundRise } from '../../engine/load/leaf/ground.ts';
import { LEAF_WIND_SHARE } from '../../engine/load/leaf/heat-day.ts';
import { airPressure, saturationVapour } from '../../engine/load/leaf/leaf-balance.ts';
import { surfaceTemperature, type Watering } from '../../engine/load/leaf/leaf.ts';
import type { LeafMoment } from '../../engine/load/leaf/receives.ts';
import { coolerBy, type LeafCase, spreadOf, spreadParts } from '../../engine/load/leaf/spread.ts';
import { createSkyViewer } from '../../engine/load/light/sky-viewer.ts';
import { CATALOGUE } from '../../engine/plan/catalogue/plants.ts';
import type { Feature, PlantRow } from '../../engine/plan/types.ts';
import { buildScene } from '../../engine/scene/build.ts';
import { yardPlan } from '../engine/load/yard-plan.ts';
import type { Measured, MeasuredMoment } from './measured-rows.ts';

/** What the page would say. [K] */
export interface Said {
  /** Over the air, or the difference: from a watered leaf's to a thirsty one's. */
  readonly ours: readonly number[];
  readonly spread: number;
  /** With the spread, and of a difference with the pores that open. */
  readonly range: readonly [number, number];
  readonly inside: boolean;
}

const SOLAR_CONSTANT = 1361.1;
const SOLD_AS_PM = 0.08;
const CLAY_PM = 0.05;
/** Where there is no cloth. */
const OPEN = { share: 1, sky: 1 } as const;

export function saidOf(row: Measured): Said {
  const [low, high, ours, spread] = row.kind === 'rise' ? riseOf(row) : changeOf(row);
  return { ours, spread, range: [low, high], inside: row.measured >= low && row.measured <= high };
}

function riseOf(row: Measured): [number, number, number[], number] {
  const leaf = caseOf(row, OPEN);
  const waterings: readonly Watering[] = row.water ? [row.water] : ['watered', 'thirsty'];
  const each = waterings.map((watering) => {
    const { moment, share, around } = leaf;
    const temperature = surfaceTemperature(moment, leaf.row, watering, share, around);
    return { rise: temperature - moment.air, spread: spreadOf(spreadParts({ ...leaf, watering }, temperature)) };
  });
  const low = Math.min(...each.map(({ rise, spread }) => rise - spread));
  const high = Math.max(...each.map(({ rise, spread }) => rise + spread));
  return [low, high, each.map(({ rise }) => rise), Math.max(...each.map(({ spread }) => spread))];
}

/** Differences are told as the sources do: below zero where the treated one is cooler. */
function changeOf(row: Measured): [number, number, number[], number] {
  const before = caseOf(row, OPEN);
  const treatedAs = (off: number) =>
    row.clay
      ? { ...before, absorptance: CLAY_ABSORPTANCE + off * CLAY_PM }
      : caseOf(row, clothOver((row.cloth ?? 0) + off * SOLD_AS_PM, row.moment.altitude));
  const after = treatedAs(0);
  const byOwn = (off: number) => coolerBy(before, treatedAs(off)).more;
  const own = Math.abs(byOwn(1) - byOwn(-1)) / 2;
  const { less, more, spread, opened } = coolerBy(before, after, [own]);
  const most = row.fruit ? more : Math.max(more, opened);
  return [-(most + spread), -(less - spread), [-less, -more], spread];
}

function caseOf(row: Measured, cloth: { readonly share: number; readonly sky: number }): Omit<LeafCase, 'watering'> {
  const plan = yardPlan();
  const scene = buildScene({ ...plan, site: { ...plan.site, surface: row.surface } });
  return {
    moment: momentOf(row.moment),
    sample: 0,
    shelter: 'open',
    row: rowOf(row),
    share: (row.share ?? 1) * cloth.share,
    around: { sky: (row.sky ?? 1) * cloth.sky, groundRise: groundRise(scene, [6, 4, 1]), walls: null },
  };
}

function rowOf({ leafWidth = 0.05, bothSides = false, fruit, fruitWidth }: Measured): PlantRow {
  return { ...CATALOGUE[0], leafWidth, bothSides, fruitWidth, limitOf: fruit ? 'fruit' : 'leaf' };
}

/** The glow round the sun is taken from the sky and given to what faces it, as on a heat day. */
function momentOf({ air, humidity, wind, beam, diffuse, altitude, elevation = 0 }: MeasuredMoment): LeafMoment {
  const sinAltitude = Math.sin((altitude * Math.PI) / 180);
  const glow = (beam / SOLAR_CONSTANT) * diffuse;
  const facing = beam + glow / Math.max(0.1, sinAltitude);
  const sky = diffuse - glow;
  return {
    air,
    airMax: air,
    vapour: (humidity / 100) * saturationVapour(air),
    pressure: airPressure(elevation),
    wind: Math.max(0.15, LEAF_WIND_SHARE.open * wind),
    beam: facing,
    diffuse: sky,
    sinAltitude,
    hour: { first: 0, beam: facing, diffuse: sky, openMost: facing + 0.15 * sky },
  };
}

/** What a wide roof of cloth leaves of the beam and of the sky, cast by the engine. */
function clothOver(density: number, altitude: number): { share: number; sky: number } {
  const roof: Feature = {
    id: 'roof',
    kind: 'canopy',
    center: [6, 4],
    length: 200,
    width: 200,
    height: 2.5,
    density: Math.min(1, Math.max(0, density)),
  };
  const scene = buildScene(yardPlan([roof]));
  const sun = {
    count: 1,
    azimuth: Float64Array.of(180),
    altitude: Float64Array.of(altitude),
    state: Uint16Array.of(0),
  };
  const [share] = createPointCaster(scene, sun).sharesAt([6, 4, 1]);
  return { share, sky: createSkyViewer(scene).at([6, 4, 1], 0) };
}
