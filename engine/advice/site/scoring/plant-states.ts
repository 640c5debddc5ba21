import type { PointCaster } from '../../../cast/points/point-caster.ts';
import { createDayDoser } from '../../../load/leaf/doses.ts';
import { type HeatDay, heatDayOf, heatDaysOf } from '../../../load/leaf/heat-day.ts';
import type { WallsRound } from '../../../load/leaf/walls/walls-round.ts';
import { skyCaster } from '../../../load/light/kept-caster.ts';
import { isTooDark } from '../../../load/light/light-class.ts';
import { meanNine } from '../../../load/light/nine.ts';
import { createSkyViewer, skyViewerOf } from '../../../load/light/sky-viewer.ts';
import type { Outcome } from '../../../load/types.ts';
import { bedNine, type BedPlaces, bedPlaces, bedScorches } from '../../../load/verdict/bed-load.ts';
import { verdictIf } from '../../../load/verdict/evidence.ts';
import { plantHarm } from '../../../load/verdict/harm-of.ts';
import { judgedAt, type JudgedPlant, judgedPlant } from '../../../load/verdict/judged.ts';
import { limitOf } from '../../../load/verdict/limit.ts';
import { type PlantPoints, plantPoints } from '../../../load/verdict/plant-points.ts';
import { type PlantFeature, plantFeatures, rowOf } from '../../../load/verdict/planted.ts';
import { nineAt, type Yard } from '../../../load/yard.ts';
import { worthOf } from '../../../plan/defaults.ts';
import { Kept } from '../../../plan/kept.ts';
import type { Cloth, Plan, PlantRow } from '../../../plan/types.ts';
import { buildScene, clothSheets } from '../../../scene/build.ts';
import type { ClothSheet } from '../../../scene/solids.ts';
import type { Weather } from '../../../sun/weather/weather.ts';
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
  under(cloth: readonly Cloth[], tell?: (done: number) => void): readonly PlantStanding[];
}

const known = new Kept<Outcome<Standings>>();

/**
 * Kept by the plan: one search after the other asks it.
 * @param yard laid out for the season @returns or why a heat day cannot be made
 */
export function standingsOf(yard: Yard, weather?: Weather): Outcome<Standings> {
  return known.of([yard.plan, ...(weather ? [weather] : [])], 'season', () => laidOut(yard, weather));
}

function laidOut(yard: Yard, weather?: Weather): Outcome<Standings> {
  const { plan, scene } = yard;
  const found = heatDaysOf(plan, scene, weather);
  if (!found.ok) return found;
  const heatwave = heatDayOf(plan, scene, { kind: 'heatwave' }, weather);
  if (!heatwave.ok) return heatwave;
  const { walls } = skyViewerOf(scene);
  // The heatwave day is one of the heat days; what is found for these then serves both.
  const hottest = found.value.findIndex(({ day }) => day.date === heatwave.value.day.date);
  const plants = plantFeatures(plan).map((feature) => ({ feature, places: placesOf(plan, feature) }));
  const castUnder: Standings['under'] = (cloth, tell) => {
    const under = yardUnder(yard, walls, cloth);
    const sheets = cloth.flatMap(clothSheets);
    const dayUnder = (heat: HeatDay): HeatDay => ({ ...heat, caster: casterUnder(heat.caster, sheets) });
    const heats = found.value.map(dayUnder);
    const heatwaveUnder = heats[hottest] ?? dayUnder(heatwave.value);
    return plants.map((plant, k) => {
      const standing = standingIn(under, heats, heatwaveUnder, plant);
      tell?.((k + 1) / plants.length);
      return standing;
    });
  };
  let bare: readonly PlantStanding[] | null = null;
  return {
    ok: true,
    value: { under: (cloth, tell) => (cloth.length > 0 ? castUnder(cloth, tell) : (bare ??= castUnder([], tell))) },
  };
}

/** A plant and where it is judged: found once, whatever hangs over it. */
interface Placed {
  readonly feature: PlantFeature;
  /** A bed's cells, or the points round a crown. */
  readonly places: BedPlaces | PlantPoints;
}

function placesOf(plan: Plan, feature: PlantFeature): Placed['places'] {
  return feature.kind === 'bed' ? bedPlaces(plan, feature) : plantPoints(plan, feature);
}

function standingIn(
  yard: Yard,
  heats: readonly HeatDay[],
  heatwave: HeatDay,
  { feature, places }: Placed,
): PlantStanding {
  const nines =
    'points' in places ? places.points.map(({ point }) => nineAt(yard, point, places.own)) : [bedNine(yard, places)];
  const [top] = nines;
  const row = rowOf(yard.plan, feature);
  const scorched = row && scorchedOn(yard, heats, heatwave, { feature, places }, row);
  return {
    id: feature.id,
    worth: worthOf(feature),
    state: {
      ...meanNine(nines),
      harm: scorched?.harm ?? null,
      scorchDose: scorched?.dose ?? null,
      peak: scorched ? Math.max(...scorched.judged.map(({ scorch }) => scorch.thirsty)) : null,
      verdict: row && scorched ? verdictIf(yard.plan, feature, row, top, scorched.judged, 'inHeat') : null,
      wateredOver: scorched ? Math.max(...scorched.judged.map(({ scorch }) => scorch.watered)) - scorched.limit : null,
      topLight: top.dailyLight,
      topSunHours: top.sunHours,
    },
    tooDark: row !== undefined && isTooDark(row, top),
  };
}

/** Its leaves on the heatwave day, and its harm over all heat days. [K·h/day] */
function scorchedOn(
  { plan, scene, sky }: Yard,
  heats: readonly HeatDay[],
  heatwave: HeatDay,
  { feature, places }: Placed,
  row: PlantRow,
): JudgedPlant & { readonly harm: number; readonly limit: number } {
  const limit = limitOf(plan, feature, row, heatwave.day.date).celsius;
  if ('points' in places) {
    const harm = plantHarm(plan, scene, sky, heats, heatwave.day.date, feature, createDayDoser)?.harm ?? 0;
    return { ...judgedPlant(plan, scene, sky, heatwave, feature, row, limit), harm, limit };
  }
  const scorches = bedScorches(scene, sky, places, row, limit, heats);
  const harm = scorches.reduce((sum, { dose }) => sum + dose, 0) / heats.length;
  const { dose, worst } =
    scorches[heats.indexOf(heatwave)] ?? bedScorches(scene, sky, places, row, limit, [heatwave])[0];
  return { judged: [judgedAt(heatwave, sky, row, limit, { side: null, point: worst })], dose, harm, limit };
}

/** The yard with cloth in it. Cloth that hangs all year changes neither the samples nor which days are alike. */
function yardUnder(yard: Yard, walls: WallsRound, cloth: readonly Cloth[]): Yard {
  if (cloth.length === 0) return yard;
  const plan = { ...yard.plan, features: [...yard.plan.features, ...cloth] };
  const scene = buildScene(plan);
  const sheets = cloth.flatMap(clothSheets);
  return {
    ...yard,
    plan,
    scene,
    caster: casterUnder(yard.caster, sheets),
    sky: createSkyViewer(scene, walls.under(sheets), (state) => casterUnder(skyCaster(yard.scene, state), sheets)),
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
