import { centroid, openRing } from '../../plan/geometry/shapes.ts';
import type { Bed, Plant, PlantRow, Tree } from '../../plan/types.ts';
import type { Units } from '../../plan/units.ts';
import type { Crown } from '../../scene/solids.ts';
import { bedNine, bedPlaces } from './bed-load.ts';
import { cameBy, cameByWords } from './came-by.ts';
import { clockOf, stretchOf } from './clock.ts';
import type { HeatDay } from '../leaf/heat-day.ts';
import { isTooDark, lightClassOf } from '../light/light-class.ts';
import { isEstablished, type Limit, limitOf } from './limit.ts';
import { type Judged, type JudgedPlant, judgedPlant } from './judged.ts';
import { nameOf } from '../../plan/names.ts';
import { GRADE_WORDS, meanNine } from '../light/nine.ts';
import { plantPoints, potPoints } from './plant-points.ts';
import { type PlantFeature, rowOf } from './planted.ts';
import { SHADED_SHARE } from '../leaf/judge.ts';
import { sentenceOf, unnamedSentence } from './sentence.ts';
import type { Nine, PlantLoad, SideLoad } from '../types.ts';
import { milderBy, verdictOf, worstOf } from './verdict.ts';
import { nineAt, type Yard } from '../yard.ts';

/** What one plant, planted tree or bed gets in a period, and the verdict on it from the heatwave day. */
export function plantLoad(yard: Yard, heat: HeatDay, feature: PlantFeature, units: Units): PlantLoad {
  return feature.kind === 'bed' ? bedLoad(yard, heat, feature, units) : crownLoad(yard, heat, feature, units);
}

function crownLoad(yard: Yard, heat: HeatDay, feature: Plant | Tree, units: Units): PlantLoad {
  const { points, own } = plantPoints(yard.plan, feature);
  const nines = points.map(({ point }) => nineAt(yard, point, own));
  const evidence = evidenceOf(yard, heat, feature, nines[0]);
  const sides = points.map(({ side }, k): SideLoad => {
    const scorch = evidence.judged[k]?.scorch ?? null;
    return {
      side,
      ...nines[k],
      scorchDose: scorch && scorch.dose,
      peak: scorch && scorch.thirsty,
      peakAt: scorch && scorch.dose > 0 ? clockOf(heat.samples.when[scorch.warmest], yard.plan.site.timeZone) : null,
    };
  });
  return {
    id: feature.id,
    kind: feature.kind,
    at: feature.at,
    height: feature.height,
    ...meanNine(nines),
    sides,
    pot: feature.kind === 'plant' && feature.container === true ? potLoad(yard, feature, own) : null,
    lightClass: lightClassOf(nines[0].sunHours),
    ...finding(yard, heat, feature, units, evidence),
  };
}

function bedLoad(yard: Yard, heat: HeatDay, bed: Bed, units: Units): PlantLoad {
  const nine = bedNine(yard, bedPlaces(yard.plan, bed));
  return {
    id: bed.id,
    kind: 'bed',
    at: centroid(openRing(bed.outline)),
    height: bed.plantHeight,
    ...nine,
    pot: null,
    lightClass: lightClassOf(nine.sunHours),
    ...finding(yard, heat, bed, units, evidenceOf(yard, heat, bed, nine)),
  };
}

/** Sun and hot hours on a pot's wall. */
function potLoad(yard: Yard, plant: Plant, own?: Crown): { sunHours: number; hotHours: number } {
  const sides = potSides(yard, plant, own);
  const mean = (key: 'sunHours' | 'hotHours') => sides.reduce((sum, side) => sum + side[key], 0) / sides.length;
  return { sunHours: mean('sunHours'), hotHours: mean('hotHours') };
}

/**
 * Sun and hot hours on each side of a pot's wall: lit only while the sun is less than a right angle from its bearing.
 */
export function potSides(
  yard: Yard,
  plant: Plant,
  own?: Crown,
): { side: number; sunHours: number; hotHours: number }[] {
  const { channels } = yard.weights;
  const { azimuth, count } = yard.passes;
  return potPoints(yard.plan, plant).map(({ side, point }) => {
    const shares = yard.caster.sharesAt(point, own);
    let sunHours = 0;
    let hotHours = 0;
    for (let k = 0; k < count; k++) {
      if (!isLit(azimuth[k], Number(side))) continue;
      sunHours += shares[k] * channels.sunHours[k];
      hotHours += shares[k] * channels.hotHours[k];
    }
    return { side: Number(side), sunHours, hotHours };
  });
}

function isLit(azimuth: number, bearing: number): boolean {
  const apart = Math.abs(azimuth - bearing) % 360;
  return Math.min(apart, 360 - apart) < 90;
}

/** What a verdict rests on. */
interface Evidence extends JudgedPlant {
  readonly row: PlantRow | undefined;
  readonly limit: Limit | undefined;
  /** At the top; a bed's mean. */
  readonly light: Nine;
}

function evidenceOf({ plan, scene, sky }: Yard, heat: HeatDay, feature: PlantFeature, light: Nine): Evidence {
  const row = rowOf(plan, feature);
  if (!row) return { row, limit: undefined, judged: [], dose: 0, light };
  const limit = limitOf(plan, feature, row, heat.day.date);
  return { row, limit, ...judgedPlant(plan, scene, sky, heat, feature, row, limit.celsius), light };
}

type Finding = Pick<PlantLoad, 'leaf' | 'scorchDose' | 'peak' | 'verdict' | 'when' | 'from' | 'sentence'>;

function finding(
  yard: Yard,
  heat: HeatDay,
  feature: PlantFeature,
  units: Units,
  { row, limit, judged, dose, light }: Evidence,
): Finding {
  const { plan } = yard;
  const name = nameOf(plan, feature.id);
  if (!row || !limit) {
    const sentence = unnamedSentence(name, light, GRADE_WORDS[light.grade - 1]);
    return { leaf: null, scorchDose: null, peak: null, verdict: null, when: null, from: null, sentence };
  }
  const worst = judged[worstOf(judged.map(({ scorch }) => scorch))];
  const { inHeat } = worst.scorch;
  const verdict = verdictOf(inHeat, milderBy(row, isEstablished(plan, feature)), isTooDark(row, light));
  const run = inHeat === 'fine' ? null : worst.scorch.run;
  const when = run && stretchOf(heat.samples, run.first, run.last, plan.site.timeZone);
  const leaf = { watered: worst.scorch.watered, thirsty: worst.scorch.thirsty, limit: limit.celsius };
  return {
    leaf,
    scorchDose: dose,
    peak: Math.max(...judged.map(({ scorch }) => scorch.thirsty)),
    verdict,
    when,
    from: run ? worst.side : null,
    sentence: sentenceOf({
      name,
      kind: feature.kind,
      row,
      verdict,
      leaf,
      limit,
      when,
      side: worst.side,
      flank: flankBeside(worst, judged),
      sunCame: run && sunCameWords(yard, heat, worst, run.first, run.last),
      light,
      plantedYear: feature.planted?.slice(0, 4) ?? null,
      units,
    }),
  };
}

/** The worst of the eight bearings, where the top is the worst point and the same is to be said of the side. */
function flankBeside(worst: Judged, judged: readonly Judged[]): number | null {
  if (worst.side !== 'top') return null;
  const flanks = judged.filter(({ side }) => typeof side === 'number');
  const flank = flanks[worstOf(flanks.map(({ scorch }) => scorch))];
  return typeof flank.side === 'number' && flank.scorch.inHeat === worst.scorch.inHeat ? flank.side : null;
}

/** How the sun came in the middle of a hot run's light; `null` where the point was as good as shaded. */
function sunCameWords(yard: Yard, heat: HeatDay, { point, lit }: Judged, first: number, last: number): string | null {
  const { shares } = lit;
  let sum = 0;
  for (let k = first; k <= last; k++) sum += shares[k];
  if (sum / (last - first + 1) < SHADED_SHARE) return null;
  let middle = first;
  for (let half = 0; middle < last && half + shares[middle] < sum / 2; middle++) half += shares[middle];
  const { azimuth, altitude } = heat.samples;
  return cameByWords(
    yard.plan,
    cameBy(yard.scene, yard.plan, point, azimuth[middle], altitude[middle], heat.day.monthDay),
  );
}
