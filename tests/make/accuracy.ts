/**
 * Prints the README's accuracy table: `node --import tsx tests/make/accuracy.ts`. Each row is measured here, against a
 * source outside the project or against the plain reference ray; `tests/outside` and `tests/engine/cast` assert the
 * same comparisons.
 */

import { Body, Equator, Horizon, Observer } from 'astronomy-engine';
import { castGrid } from '../../engine/cast/grids/cast-grid.ts';
import { castRay } from '../../engine/cast/points/ray.ts';
import {
  absorbedByLeaf,
  blackBody,
  clearSkyEmissivity,
  leafTemperature,
  saturationVapour,
} from '../../engine/load/leaf/leaf-balance.ts';
import { buildScene, stateOf } from '../../engine/scene/build.ts';
import { sunPosition } from '../../engine/sun/position.ts';
import { airSunrise, airTemperature } from '../../engine/sun/sky/air.ts';
import { ineichenPerez } from '../../engine/sun/sky/ineichen-perez.ts';
import { randomPlan } from '../engine/cast/random-plans.ts';
import { separation } from '../outside/directions.ts';
import { measuredPots } from '../outside/measured-pots.ts';
import { type Measured, MEASURED } from '../outside/measured-rows.ts';
import { saidOf } from '../outside/measured.ts';
import { randomFrom } from '../parts/random.ts';

const RAD = Math.PI / 180;

console.log('| what | held against | cases | mean off | most off |\n|---|---|---|---|---|');
row('direction of the sun above 1°', 'astronomy-engine 2.1.19', sunErrors(), '°', 4);
row('clear-sky beam, global, diffuse', 'pvlib test values of Ineichen & Perez (2002)', clearSkyErrors(), 'W/m²', 6);
row('air through a mean day', 'Phoenix TMY3 hourly means, June to August', airErrors(), 'K', 2);
row('leaf temperature', 'worked cases of Campbell & Norman (1998), from memory', leafErrors(), 'K', 3);
row('share of the beam in a grid cell', 'the plain reference ray, 40 random yards', gridErrors(), '', 12);

console.log('\n| measured by others | cases | inside what is told, with its ± |\n|---|---|---|');
for (const [what, cases] of [
  ['leaves in the sun, in shade, under nets and clay', MEASURED.filter(({ fruit }) => !fruit).map(isInside)],
  ['fruit in the sun and under nets', MEASURED.filter(({ fruit }) => fruit).map(isInside)],
  ['roots in pots, and what cools them', measuredPots().map(({ off, spread }) => off <= spread)],
] as const)
  console.log(`| ${what} | ${cases.length} | ${cases.filter(Boolean).length} |`);

function isInside(measured: Measured): boolean {
  return saidOf(measured).inside;
}

function row(what: string, against: string, errors: readonly number[], unit: string, digits: number): void {
  const mean = errors.reduce((sum, error) => sum + error, 0) / errors.length;
  const most = errors.reduce((a, b) => Math.max(a, b), 0);
  const shown = (value: number) =>
    (value < 10 ** -digits ? `below ${(10 ** -digits).toPrecision(1)}` : value.toFixed(digits)) +
    (unit ? ` ${unit}` : '');
  console.log(`| ${what} | ${against} | ${errors.length.toLocaleString('en')} | ${shown(mean)} | ${shown(most)} |`);
}

function sunErrors(): number[] {
  const random = randomFrom(20_260_621);
  const errors: number[] = [];
  while (errors.length < 2000) {
    const when = Date.UTC(2000, 0, 1) + random() * 50 * 365.25 * 86_400_000;
    const latitude = 90 * random() - 45;
    const longitude = 360 * random() - 180;
    const observer = new Observer(latitude, longitude, 0);
    const equator = Equator(Body.Sun, new Date(when), observer, true, true);
    const theirs = Horizon(new Date(when), observer, equator.ra, equator.dec, 'normal');
    if (theirs.altitude > 1) errors.push(separation(sunPosition(when, latitude, longitude), theirs));
  }
  return errors;
}

// pvlib-python 6382338a tests/test_clearsky.py, solar constant 1364, turbidity 3: zenith, absolute air mass, elevation,
// global, beam, diffuse.
function clearSkyErrors(): number[] {
  const rows = [
    [10, 1, 0, 1038.159219, 942.208186, 110.265293],
    [10, 1, 2000, 1134.243124, 994.953778, 154.404929],
    [34.86074109, 1.12008114, 0, 853.020657, 922.061247, 96.429095],
    [46.0467599, 1.32355476, 0, 704.696813, 888.90147, 87.736013],
    [72.41687122, 3.01614096, 0, 251.994277, 655.449252, 53.990135],
    [82.85457044, 6.97935524, 0, 65.494266, 321.160922, 25.54562],
  ];
  return rows.flatMap(([zenith, airMass, elevation, global, beam, diffuse]) => {
    const sky = ineichenPerez({
      sinAltitude: Math.cos(zenith * RAD),
      airMass,
      extraterrestrial: 1364,
      elevation,
      turbidity: 3,
    });
    return [Math.abs(sky.global - global), Math.abs(sky.beam - beam), Math.abs(sky.diffuse - diffuse)];
  });
}

// Mean hourly dry bulb, hour ending 1 to 24, UTC−7: TMY3 statistics, NREL/EnergyPlus
// weather/USA_AZ_Phoenix-Sky.Harbor…TMY3.stat.
function airErrors(): number[] {
  const rows = [
    [
      30.8, 29.8, 29.1, 28.1, 27.5, 27.1, 28.2, 30.2, 32.2, 34.2, 36, 37.3, 38.6, 39.5, 39.9, 40.1, 39.9, 39.4, 38.1,
      36.5, 35.1, 33.8, 32.7, 31.8,
    ],
    [
      32.9, 32, 31.3, 30.5, 30.1, 29.9, 30.5, 31.9, 33.7, 35.4, 37, 38.4, 39.4, 40.4, 41, 41.4, 41.2, 40, 38.9, 37.6,
      36.4, 35.5, 34.4, 33.8,
    ],
    [
      31.3, 30.3, 29.9, 29.1, 28.5, 28.1, 28.2, 29.9, 31.8, 33.7, 35.2, 36.5, 37.5, 38.3, 38.7, 39.1, 39.2, 38.9, 37.8,
      36.5, 35.1, 33.6, 32.8, 31.9,
    ],
  ];
  return rows.flatMap((hours, k) => {
    const sunrise = airSunrise(33.45, [166, 196, 227][k]);
    return hours.map((published, index) => {
      const { solarHour } = sunPosition(Date.UTC(2026, 5 + k, 15, 8 + index), 33.45, -111.98);
      return Math.abs(airTemperature(solarHour, Math.max(...hours), Math.min(...hours), sunrise) - published);
    });
  });
}

// Air 42 °C, humidity 12 %, beam 900, diffuse 110 W/m², sun at 60°, ground 60 °C, leaf 0.06 m wide: wind, lower
// stomata, leaf.
function leafErrors(): number[] {
  const air = 42;
  const vapour = 0.12 * saturationVapour(air);
  const light = {
    beam: 900,
    sky: 110,
    ground: 900 * Math.sin(60 * RAD) + 110,
    above: clearSkyEmissivity(air, vapour) * blackBody(air),
    below: blackBody(60),
  };
  return [
    [0.3, 0.1, 47.8],
    [3, 0.1, 44.6],
    [0.3, 0.005, 55.2],
    [0.3, 0.4, 40.9],
  ].map(([wind, lower, leaf]) =>
    Math.abs(
      leafTemperature(absorbedByLeaf(light, 0.25), {
        air,
        vapour,
        pressure: 101.3,
        wind,
        width: 0.06,
        lower,
        upper: 0,
      }) - leaf,
    ),
  );
}

/** Cells whose own ray changes within a millionth of a metre are ties and left out. */
function gridErrors(): number[] {
  const errors: number[] = [];
  for (let seed = 1; seed <= 40; seed++) {
    const random = randomFrom(seed);
    const scene = buildScene(randomPlan(seed));
    const grid = { x0: 0, y0: 0, cell: 0.5, columns: 20, rows: 16, height: 0.5 };
    const azimuth = Float64Array.from({ length: 12 }, () => 360 * random());
    const altitude = Float64Array.from({ length: 12 }, () => 90 * random());
    const channels = Array.from({ length: 12 }, (_, k) =>
      Float64Array.from({ length: 12 }, (__, at) => Number(at === k)),
    );
    const sums = castGrid(
      scene,
      grid,
      { count: 12, azimuth, altitude, state: new Uint16Array(12).fill(stateOf(scene, '07-01')) },
      channels,
    );
    for (let k = 0; k < 12; k++) {
      for (let index = 0; index < grid.columns * grid.rows; index++) {
        const x = grid.x0 + ((index % grid.columns) + 0.5) * grid.cell;
        const y = grid.y0 + (Math.floor(index / grid.columns) + 0.5) * grid.cell;
        const share = (dx: number, dy: number) =>
          castRay(scene, [x + dx, y + dy, grid.height], azimuth[k], altitude[k], '07-01').share;
        const off = Math.abs(share(0, 0) - sums[k][index]);
        const near = off > 1e-9 ? [share(1e-6, 0), share(-1e-6, 0), share(0, 1e-6), share(0, -1e-6)] : [];
        if (off <= 1e-9 || Math.max(...near) - Math.min(...near) < off / 2) errors.push(off);
      }
    }
  }
  return errors;
}
