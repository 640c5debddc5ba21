import { directionsOf } from '../../../cast/passes.ts';
import { createPointCaster } from '../../../cast/points/point-caster.ts';
import { fanOf, PointRays } from '../../../cast/points/point-rays.ts';
import { skyPasses, skyRays } from '../../../cast/sky.ts';
import { darkBelow, leastLight } from '../../../load/light/light-class.ts';
import { plantPoints } from '../../../load/verdict/plant-points.ts';
import { type PlantFeature, plantFeatures, rowOf } from '../../../load/verdict/planted.ts';
import type { Yard } from '../../../load/yard.ts';
import type { SpacePoint } from '../../../plan/geometry/vectors.ts';
import { ROUNDING } from '../../../plan/numbers/tolerances.ts';
import type { Cloth } from '../../../plan/types.ts';
import { clothSheets } from '../../../scene/build.ts';
import type { OwnCrown, ClothSheet } from '../../../scene/solids.ts';
import { bedSample } from '../bed-sample.ts';
import type { Progress } from '../progress.ts';
import { densestFor } from './suits.ts';

/** A plant that is short of light loses no more of it than this share: less than anyone could measure. */
const LOSES_NOTHING = 0.01;
/** Cloth that takes more than this share of a plant's light must suit it. */
const HANGS_OVER = 0.1;

/** Rules of light that cloth may break. */
export type LightRule = 'light' | 'density';

/** Guards the plants' light through the season. */
export interface LightGuard {
  /**
   * 'light': a plant that has enough would not with this cloth, or one that is short loses more. 'density': the cloth
   * is denser than suits a plant whose light it takes.
   */
  objections(cloth: readonly Cloth[]): readonly LightRule[];
  /** One of them, sooner told; `null`: there are none. */
  brokenFirst(cloth: readonly Cloth[]): LightRule | null;
  readonly plants: readonly Guarded[];
  /** Ids of all plants for which it is too dark with this cloth. */
  dark(cloth: readonly Cloth[]): ReadonlySet<string>;
}

/** A plant and all that brings light to it. */
export interface Guarded {
  readonly id: string;
  /** Daily light that the plant wants at least, and what it has as the yard is. [mol/m² a day] */
  readonly least: number;
  readonly light: number;
  /** Cloth no denser than this suits it, 0 to 1. */
  readonly densest: number;
  /** Below this it is too dark for it. [mol/m² a day] */
  readonly dark: number;
  /**
   * All that makes up `light`: of each of its places the sun, and the sky of each part of the year where its light
   * counts.
   */
  readonly rays: readonly PointRays[];
}

/**
 * @param yard laid out for the season
 * @param suits whether cloth must suit the plants; else whoever asks has chosen it
 */
export function lightGuard(yard: Yard, suits: boolean, progress?: Progress): LightGuard {
  const { plan } = yard;
  const raysOf = rayReader(yard);
  const plants = plantFeatures(plan);
  const all: Guarded[] = [];
  for (const [k, feature] of plants.entries()) {
    progress?.(k / plants.length, 'the light the plants have');
    const row = rowOf(plan, feature);
    if (!row) continue;
    const least = leastLight(row);
    const points = lightPointsOf(yard, feature);
    const rays = points.flatMap(({ at, own, part }) => raysOf(at, own, part));
    all.push({
      id: feature.id,
      least,
      densest: suits ? densestFor(row) : Infinity,
      dark: darkBelow(row),
      light: rays.reduce((sum, each) => sum + each.all, 0),
      rays,
    });
  }
  const inTurn = [...all];
  return {
    plants: all,
    objections(cloth) {
      const sheets = cloth.flatMap(clothSheets);
      const broken = new Set<LightRule>();
      for (let k = 0; k < inTurn.length && broken.size < 2; k++)
        for (const rule of brokenFor(inTurn[k], sheets)) broken.add(rule);
      return [...broken];
    },
    brokenFirst(cloth) {
      const sheets = cloth.flatMap(clothSheets);
      for (let k = 0; k < inTurn.length; k++) {
        const [broken] = brokenFor(inTurn[k], sheets);
        if (broken === undefined) continue;
        // Cloth is asked about in swarms: who went short of light under one is asked first about the next.
        if (k > 0) inTurn.unshift(...inTurn.splice(k, 1));
        return broken;
      }
      return null;
    },
    dark(cloth) {
      const sheets = cloth.flatMap(clothSheets);
      return new Set(all.filter((plant) => isDarkUnder(plant, sheets)).map(({ id }) => id));
    },
  };
}

/** The rules that sheets which hang all at once break for one plant. */
function brokenFor(plant: Guarded, sheets: readonly ClothSheet[]): LightRule[] {
  const { light, density } = mayTake(plant, Math.max(...sheets.map(({ share }) => 1 - share)));
  const taken = lightTaken(plant, sheets, Math.min(light, density));
  return [...(taken > light ? ['light' as const] : []), ...(taken > density ? ['density' as const] : [])];
}

function isDarkUnder(plant: Guarded, sheets: readonly ClothSheet[]): boolean {
  const spare = plant.light - plant.dark;
  return spare < 0 || lightTaken(plant, sheets, spare) > spare;
}

/** How much of a plant's light cloth of a density may take before it breaks one rule or the other. [mol/m² a day] */
export function mayTake(
  { light, least, densest }: Pick<Guarded, 'light' | 'least' | 'densest'>,
  density: number,
): Readonly<Record<LightRule, number>> {
  return {
    light: light >= least ? light - least : LOSES_NOTHING * light,
    density: density > densest + ROUNDING ? HANGS_OVER * light : Infinity,
  };
}

/** Light that cloth takes; how far below or above `most` it stays is not told. [mol/m² a day] */
function lightTaken({ rays }: Guarded, sheets: readonly ClothSheet[], most: number): number {
  const mosts = rays.map((each) => each.mostTakenBy(sheets));
  let rest = mosts.reduce((sum, each) => sum + each, 0);
  let taken = 0;
  // Ray by ray only until it is plain on which side it ends.
  for (let k = 0; k < rays.length && taken <= most && taken + rest > most; k++) {
    if (mosts[k] > 0) taken += rays[k].takenBy(sheets);
    rest -= mosts[k];
  }
  return taken;
}

/** Reads what brings light to a point, which stands for a part of its plant. */
function rayReader({
  scene,
  passes,
  caster,
  weights: { channels, sky },
}: Yard): (at: SpacePoint, own: OwnCrown | undefined, part: number) => PointRays[] {
  const sun = fanOf(directionsOf(scene, passes));
  const { weight } = skyRays();
  const skies = sky.map(({ state, light }) => {
    const rays = skyPasses(state);
    return { light, caster: createPointCaster(scene, rays), fan: fanOf(directionsOf(scene, rays)) };
  });
  return (at, own, part) => {
    const fromSun = new PointRays(
      at,
      sun,
      caster.sharesAt(at, own).map((share, k) => share * channels.beamLight[k] * part),
    );
    return [
      fromSun,
      ...skies.map(
        ({ light, caster: toSky, fan }) =>
          new PointRays(
            at,
            fan,
            toSky.sharesAt(at, own).map((share, k) => share * weight[k] * light * part),
          ),
      ),
    ];
  };
}

function lightPointsOf({ plan }: Yard, feature: PlantFeature): { at: SpacePoint; own?: OwnCrown; part: number }[] {
  if (feature.kind === 'bed') return bedSample(plan, feature);
  const { points, own } = plantPoints(plan, feature);
  return [{ at: points[0].point, own, part: 1 }];
}
