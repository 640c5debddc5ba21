import { centroid, openRing } from '../../plan/geometry/shapes.ts';
import type { Bed, Plant, PlantRow, Tree } from '../../plan/types.ts';
import type { Units } from '../../plan/units/units.ts';
import { nameOf } from '../../plan/words/names.ts';
import { clockOf } from '../../sun/days/zone.ts';
import { sunUp } from '../../sun/sun-up.ts';
import type { HeatDay } from '../leaf/heat-day.ts';
import type { Watering } from '../leaf/leaf.ts';
import { spreadOn } from '../leaf/spread.ts';
import { lightClassOf } from '../light/light-class.ts';
import { GRADE_WORDS, meanNine } from '../light/nine.ts';
import { potLoad } from '../pot/pot-load.ts';
import { rootWords } from '../pot/pot-words.ts';
import type { LeafHeat, PlantLoad, SideLoad } from '../types.ts';
import { nineAt, type Yard } from '../yard.ts';
import { nineOfBed } from './bed-load.ts';
import { cameByWords } from './came-by.ts';
import { stretchOf } from './clock.ts';
import { clothNow } from './cloth-now.ts';
import { type Evidence, evidenceOf, verdictIf } from './evidence.ts';
import type { Judged } from './judged.ts';
import type { Limit } from './limit.ts';
import { ninesOf } from './plant-nines.ts';
import { plantPoints } from './plant-points.ts';
import { type PlantFeature, rowOf } from './planted.ts';
import { sentenceOf, unnamedSentence } from './sentence.ts';
import { sunCame } from './sun-came.ts';
import { worstOf } from './verdict.ts';
import { wallHeats } from './wall-heat.ts';

/**
 * What one plant, planted tree or bed gets in a period, and the verdict on it from the heatwave day.
 * @param season by whose light it is too dark @param withPot whether its pot is judged too
 */
export function plantLoad(
  yard: Yard,
  heat: HeatDay,
  feature: PlantFeature,
  units: Units,
  season = yard,
  withPot = true,
): PlantLoad {
  return feature.kind === 'bed'
    ? bedLoad(yard, heat, feature, units, season)
    : crownLoad(yard, heat, feature, units, season, withPot);
}

function crownLoad(
  yard: Yard,
  heat: HeatDay,
  feature: Plant | Tree,
  units: Units,
  season: Yard,
  withPot: boolean,
): PlantLoad {
  const { points, own } = plantPoints(yard.plan, feature);
  const nines = ninesOf(yard, feature);
  const light = isJudgedApart(yard, season, feature) ? nineAt(season, points[0].point, own) : nines[0];
  const evidence = evidenceOf(yard, heat, feature, light);
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
  const isInPot = feature.kind === 'plant' && feature.container === true;
  const pot = withPot && isInPot ? potLoad(yard, heat, feature) : null;
  const found = finding(yard, heat, feature, units, evidence);
  return {
    id: feature.id,
    kind: feature.kind,
    at: feature.at,
    height: feature.height,
    ...meanNine(nines),
    sides,
    pot,
    lightClass: lightClassOf(nines[0].sunHours),
    ...found,
    sentence: found.sentence + (pot === null ? '' : rootWords(pot.roots, units, nameOf(yard.plan, feature.id))),
  };
}

function bedLoad(yard: Yard, heat: HeatDay, bed: Bed, units: Units, season: Yard): PlantLoad {
  const nine = nineOfBed(yard, bed);
  const light = isJudgedApart(yard, season, bed) ? nineOfBed(season, bed) : nine;
  return {
    id: bed.id,
    kind: 'bed',
    at: centroid(openRing(bed.outline)),
    height: bed.plantHeight,
    ...nine,
    pot: null,
    lightClass: lightClassOf(nine.sunHours),
    ...finding(yard, heat, bed, units, evidenceOf(yard, heat, bed, light)),
  };
}

/** What names no plant gets no verdict, and is told by the period alone. */
function isJudgedApart(yard: Yard, season: Yard, feature: PlantFeature): boolean {
  return season !== yard && rowOf(yard.plan, feature) !== undefined;
}

type Finding = Pick<
  PlantLoad,
  'leaf' | 'scorchDose' | 'peak' | 'verdict' | 'close' | 'when' | 'from' | 'cloth' | 'walls' | 'sentence'
>;

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
    const none = { leaf: null, scorchDose: null, peak: null, verdict: null, when: null, from: null, cloth: null };
    return { ...none, sentence, close: false, walls: [] };
  }
  const worst = judged[worstOf(judged.map(({ scorch }) => scorch))];
  const { inHeat } = worst.scorch;
  const verdictIn = (of: 'inHeat' | 'cooler' | 'hotter') => verdictIf(plan, feature, row, light, judged, of);
  const verdict = verdictIn('inHeat');
  const close = verdictIn('cooler') !== verdict || verdictIn('hotter') !== verdict;
  const run = inHeat === 'fine' ? null : worst.scorch.run;
  const when = run && stretchOf(heat.samples, run.first, run.last, plan.site.timeZone);
  const came = run && sunCame(yard, heat, feature, worst, run);
  const leaf = leafHeat(heat, row, limit, worst);
  const cloth = clothNow(plan, came?.by ?? null);
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
      height: feature.kind === 'bed' ? feature.plantHeight : feature.height,
      row,
      verdict,
      close,
      leaf,
      limit,
      when,
      sunUp: sunUp(plan, heat.samples.days[0].date),
      side: worst.side,
      flank: flankBeside(worst, judged),
      sunCame: came && cameByWords(plan, came.by),
      cloth,
      amongWalls: worst.lit.around.walls !== null,
      light,
      plantedYear: feature.planted?.slice(0, 4) ?? null,
      units,
    }),
    close,
    walls: run ? wallHeats(plan, heat, yard.sky, row, worst, worst.lit, run) : [],
    cloth,
  };
}

function leafHeat(heat: HeatDay, row: PlantRow, limit: Limit, { scorch, lit }: Judged): LeafHeat {
  const spread = (watering: Watering) => spreadOn(heat, scorch.warmest, row, watering, lit.shares, lit.around);
  return {
    watered: scorch.watered,
    thirsty: scorch.thirsty,
    limit: limit.celsius,
    spread: { watered: spread('watered'), thirsty: spread('thirsty'), limit: limit.spread },
  };
}

/** The worst of the eight bearings, where the top is the worst point and the same is to be said of the side. */
function flankBeside(worst: Judged, judged: readonly Judged[]): number | null {
  if (worst.side !== 'top') return null;
  const flanks = judged.filter(({ side }) => typeof side === 'number');
  const flank = flanks[worstOf(flanks.map(({ scorch }) => scorch))];
  return typeof flank.side === 'number' && flank.scorch.inHeat === worst.scorch.inHeat ? flank.side : null;
}
