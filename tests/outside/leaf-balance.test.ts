import { describe, expect, it } from 'vitest';
import {
  absorbedByLeaf,
  blackBody,
  clearSkyEmissivity,
  leafTemperature,
  saturationVapour,
} from '../../engine/load/leaf/leaf-balance.ts';

/**
 * Equations: Campbell, G. S., Norman, J. M. (1998), An Introduction to Environmental Biophysics, 2nd ed., Springer, ch.
 * 14 (from memory; checked against the open implementation mrke/NicheMapR, R/leaf_temperature.R, commit 5017e1f). The
 * worked cases were calculated once from exactly these equations, apart from this code.
 *
 * | case | tolerance |
 * |---|---|
 * | worked cases: leaf | 0.1 K |
 * | worked cases: radiation absorbed | 0.5 % |
 * | tealeaves | 0.5 K |
 */

interface Case {
  readonly name: string;
  readonly air?: number;
  readonly humidity?: number;
  readonly wind?: number;
  readonly beam?: number;
  readonly diffuse?: number;
  readonly ground?: number;
  readonly lower?: number;
  readonly density?: number;
  readonly cloth?: number;
  readonly absorptance?: number;
  readonly absorbed: number;
  readonly leaf: number;
}

const CASES: readonly Case[] = [
  { name: 'A hot, dry, still', absorbed: 851.5, leaf: 47.8 },
  { name: 'B breezy', wind: 3, absorbed: 851.5, leaf: 44.6 },
  { name: 'C 50 % cloth', density: 0.5, ground: 48, cloth: 50, absorbed: 682.2, leaf: 42.3 },
  { name: 'D stomata closed', lower: 0.005, absorbed: 851.5, leaf: 55.2 },
  { name: 'E well watered', lower: 0.4, absorbed: 851.5, leaf: 40.9 },
  { name: 'F clay film', absorptance: 0.4, absorbed: 789.9, leaf: 45.9 },
  { name: 'G 60 % cloth, watered', density: 0.6, ground: 47, cloth: 50, lower: 0.15, absorbed: 653.9, leaf: 39.8 },
  {
    name: 'M clear calm night',
    air: 2,
    humidity: 80,
    beam: 0,
    diffuse: 0,
    ground: 2,
    lower: 0.005,
    absorbed: 269.6,
    leaf: -0.4,
  },
];

const PRESSURE = 101.3;
const WIDTH = 0.06;
const CLOTH_VIEW = 0.6;

function solve(c: Case): { absorbed: number; leaf: number } {
  const {
    air = 42,
    humidity = 12,
    wind = 0.3,
    beam = 900,
    diffuse = 110,
    ground = 60,
    lower = 0.1,
    density = 0,
    cloth = 50,
    absorptance = 0.5,
  } = c;
  const vapour = (humidity / 100) * saturationVapour(air);
  const beamLeft = beam * (1 - density);
  const skyLeft = diffuse * (1 - CLOTH_VIEW * density);
  const covered = CLOTH_VIEW * density;
  const above = (1 - covered) * clearSkyEmissivity(air, vapour) * blackBody(air) + covered * 0.95 * blackBody(cloth);
  const onGround = beamLeft * Math.sin(Math.PI / 3) + skyLeft;
  const absorbed = absorbedByLeaf(
    { beam: beamLeft, sky: skyLeft, ground: onGround, above, below: blackBody(ground) },
    0.25,
    absorptance,
  );
  return {
    absorbed,
    leaf: leafTemperature(absorbed, { air, vapour, pressure: PRESSURE, wind, width: WIDTH, lower, upper: 0 }),
  };
}

describe('leaf energy balance against worked cases', () => {
  it.each(CASES)('$name: $leaf °C', (c) => {
    const { absorbed, leaf } = solve(c);
    expect(Math.abs(absorbed / c.absorbed - 1)).toBeLessThan(0.005);
    expect(Math.abs(leaf - c.leaf)).toBeLessThan(0.1);
  });

  it(
    'solves the default parameters of NicheMapR (Ta 38, ea 1.1 kPa, 750 W/m² absorbed, u 1.5, w 0.10, stomata ' +
      '0.5): 35.1 °C',
    () => {
      const leaf = leafTemperature(750, {
        air: 38,
        vapour: 1.1,
        pressure: 100,
        wind: 1.5,
        width: 0.1,
        lower: 0.5,
        upper: 0,
      });
      expect(Math.abs(leaf - 35.1)).toBeLessThan(0.15);
    },
  );
});

describe('leaf energy balance against another model', () => {
  /**
   * Muir, C. D. (2019), tealeaves: an R package for modelling leaf temperature using energy budgets, AoB PLANTS 11:
   * plz054; README, commit 259d3a4: RH 50 %, sun 1000 W/m² and a fifth of it reflected from below, u 2 m/s, d 0.1 m,
   * absorptance 0.5, half of the stomata a side, sky 20 K below the air, 101.3246 kPa. Its fluxes are sums over both
   * sides, and it has no factor 1.4 for outdoor turbulence. Stomata in µmol m⁻² s⁻¹ Pa⁻¹, 0.1 of them through the
   * cuticle.
   */
  const PA_PER_KPA = 1000;
  const P = 101.3246;
  const toMol = (micromolePerPa: number) => micromolePerPa * 1e-6 * P * PA_PER_KPA;

  it.each([
    { kelvin: 298.15, stomata: 5, published: 301.4181 },
    { kelvin: 298.15, stomata: 4, published: 302.1106 },
    { kelvin: 298.15, stomata: 2, published: 304.2065 },
    { kelvin: 293.15, stomata: 4, published: 298.3474 },
    { kelvin: 293.15, stomata: 2, published: 300.2217 },
  ])('tealeaves, air $kelvin K, stomata $stomata: $published K', ({ kelvin, stomata, published }) => {
    const air = kelvin - 273.15;
    const bothSides = 0.5 * 1000 * 1.2 + 0.97 * (blackBody(air - 20) + blackBody(air));
    if (kelvin === 298.15) expect(bothSides).toBeCloseTo(1363.813, 1);
    const side = toMol(stomata) / 2 + toMol(0.1) / 2;
    const at = {
      air,
      vapour: 0.5 * saturationVapour(air),
      pressure: P,
      wind: 2,
      width: 0.1 / 0.72,
      lower: side,
      upper: side,
    };
    expect(Math.abs(leafTemperature(bothSides / 2, at, 1) + 273.15 - published)).toBeLessThan(0.5);
  });
});

describe('the factor-2 trap', () => {
  it(
    'a leaf absorbs half of what one of its sides gets: 900 W/m² of beam alone, half absorbed, are 225 W/m² of ' +
      'leaf surface',
    () => {
      expect(absorbedByLeaf({ beam: 900, sky: 0, ground: 0, above: 0, below: 0 }, 0.25)).toBe(225);
    },
  );

  it('what is counted per m² of leaf twice over would put case A more than 5 K too high', () => {
    const { absorbed } = solve(CASES[0]);
    const vapour = 0.12 * saturationVapour(42);
    const doubled = absorbed + 0.5 * 0.5 * 900;
    const wrong = leafTemperature(doubled, {
      air: 42,
      vapour,
      pressure: PRESSURE,
      wind: 0.3,
      width: WIDTH,
      lower: 0.1,
      upper: 0,
    });
    expect(wrong - 47.8).toBeGreaterThan(5);
  });
});
