import { createPointCaster, type PointCaster } from '../../../cast/points/point-caster.ts';
import { type PlantHarm, plantHarm } from '../../../load/verdict/harm-of.ts';
import { type HeatDay, heatDayOf, heatDaysOf } from '../../../load/leaf/heat-day.ts';
import { isTooDark } from '../../../load/light/light-class.ts';
import { createWallsRound, type WallsRound } from '../../../load/leaf/walls/walls-round.ts';
import { plantLoad } from '../../../load/verdict/plant-load.ts';
import { plantFeatures, rowOf } from '../../../load/verdict/planted.ts';
import { createSkyViewer } from '../../../load/light/sky-viewer.ts';
import type { Outcome, PlantLoad } from '../../../load/types.ts';
import type { Yard } from '../../../load/yard.ts';
import type { Canopy, Screen } from '../../../plan/types.ts';
import { unitsOf } from '../../../plan/units.ts';
import { buildScene, clothSheets } from '../../../scene/build.ts';
import type { ClothSheet } from '../../../scene/solids.ts';
import type { Weather } from '../../../sun/weather.ts';
import type { PlantState } from '../types.ts';

export interface PlantStanding {
  readonly id: string;
  readonly worth: number;
  readonly state: PlantState;
  readonly tooDark: boolean;
}

/** A yard laid out once, to be asked how its plants stand under one cloth after the other. */
export interface Standings {
  /**
   * How every plant stands: harm over the heat days, the season's nine, the verdict of the heatwave day. All exact: as
   * if the cloth stood in the plan.
   * @param cloth that hangs all year
   * @param tell hears the share of the plants that is done
   */
  under(cloth: readonly (Canopy | Screen)[], tell?: (done: number) => void): PlantStanding[];
}

/** @param season the yard laid out for the season @returns or why a heat day cannot be made */
export function standingsOf(season: Yard, weather?: Weather): Outcome<Standings> {
  const { plan, scene } = season;
  const found = heatDaysOf(plan, scene, weather);
  if (!found.ok) return found;
  const hottest = heatDayOf(plan, scene, { kind: 'heatwave' }, weather);
  if (!hottest.ok) return hottest;
  const walls = createWallsRound(scene);
  const yard: Yard = { ...season, caster: rememberingCaster(season.caster), sky: createSkyViewer(scene, walls) };
  const [heats, heatwave] = [found.value, hottest.value];
  const plants = plantFeatures(plan);
  return {
    ok: true,
    value: {
      under(cloth, tell) {
        const under = yardUnder(yard, walls, cloth);
        const heatsUnder = heats.map((heat) => heatDayIn(under, heat));
        const heatwaveUnder = heatDayIn(under, heatwave);
        const standings: PlantStanding[] = [];
        for (const feature of plants) {
          const load = plantLoad(under, heatwaveUnder, feature, unitsOf(plan));
          const harm = plantHarm(under.plan, under.scene, under.sky, heatsUnder, heatwave.day.date, feature);
          const row = rowOf(plan, feature);
          standings.push({
            id: feature.id,
            worth: harm?.worth ?? 0,
            state: stateOf(load, harm),
            tooDark: row !== undefined && isTooDark(row, topOf(load)),
          });
          tell?.(standings.length / plants.length);
        }
        return standings;
      },
    },
  };
}

/** The yard with cloth in it. Cloth that hangs all year changes neither the samples nor which days are alike. */
function yardUnder(yard: Yard, walls: WallsRound, cloth: readonly (Canopy | Screen)[]): Yard {
  if (cloth.length === 0) return yard;
  const plan = { ...yard.plan, features: [...yard.plan.features, ...cloth] };
  const scene = buildScene(plan);
  const sheets = cloth.flatMap(clothSheets);
  return {
    ...yard,
    plan,
    scene,
    caster: casterUnder(yard.caster, sheets),
    sky: createSkyViewer(scene, walls.under(sheets)),
  };
}

function heatDayIn({ scene }: Yard, heat: HeatDay): HeatDay {
  return { ...heat, caster: createPointCaster(scene, heat.passes) };
}

/** Casts each point once. A plant asks for the same points under every cloth. */
function rememberingCaster(caster: PointCaster): PointCaster {
  const known = new Map<string, Float64Array>();
  return {
    ...caster,
    sharesAt(point, own, into) {
      const key = point.join(' ');
      let shares = known.get(key);
      if (!shares) known.set(key, (shares = caster.sharesAt(point, own)));
      into?.set(shares);
      return into ?? shares.slice();
    },
  };
}

/** A plant's own crown is opaque, so that it is no matter whether the cloth or the crown is met first. */
function casterUnder(caster: PointCaster, sheets: readonly ClothSheet[]): PointCaster {
  return {
    ...caster,
    sharesAt(point, own, into) {
      const shares = caster.sharesAt(point, own, into);
      caster.dim(point, sheets, shares);
      return shares;
    },
  };
}

function topOf(load: PlantLoad): PlantLoad | NonNullable<PlantLoad['sides']>[number] {
  return load.sides?.[0] ?? load;
}

function stateOf(load: PlantLoad, harm: PlantHarm | null): PlantState {
  const top = topOf(load);
  return {
    sunHours: load.sunHours,
    morningHours: load.morningHours,
    afternoonHours: load.afternoonHours,
    hotHours: load.hotHours,
    beamDose: load.beamDose,
    hotLoad: load.hotLoad,
    dailyLight: load.dailyLight,
    skyView: load.skyView,
    grade: load.grade,
    harm: harm?.harm ?? null,
    scorchDose: load.scorchDose,
    peak: load.peak,
    verdict: load.verdict,
    topLight: top.dailyLight,
    topSunHours: top.sunHours,
  };
}
