import type { GridSpec } from '../../../cast/grids/grid-spec.ts';
import { createTrialCaster } from '../../../cast/grids/trial/trial-caster.ts';
import {
  BURNS_FROM,
  byGravity,
  type HeatVerdict,
  heatVerdict,
  judgeLeaf,
  lasts,
  newJudgement,
} from '../../../load/leaf/judge.ts';
import { type Surroundings, underSky } from '../../../load/leaf/surroundings.ts';
import { maskOf } from '../../../load/light/grid-of.ts';
import { isEstablished } from '../../../load/verdict/limit.ts';
import type { Outcome, Verdict } from '../../../load/types.ts';
import { milderBy, verdictOf } from '../../../load/verdict/verdict.ts';
import { yardOf } from '../../../load/yard.ts';
import type { Canopy, Plan, Screen } from '../../../plan/types.ts';
import { inYearlySpan } from '../../../plan/year-span.ts';
import { clothSheets } from '../../../scene/build.ts';
import type { Period } from '../../../sun/samples.ts';
import type { Weather } from '../../../sun/weather.ts';
import { clothArea } from '../../compare/cost.ts';
import { harmPairsOf } from '../search/harm-pairs.ts';
import { leafTables } from './leaf-tables.ts';
import { lightGuard } from '../rules/light-left.ts';
import { type Targets, targetsOf } from '../search/targets.ts';
import { skyRaysOf, togetherScore } from './together.ts';

/** So many places of a bed bring what is told of it within 2 % of today's harm. */
const BED_POINTS = 96;

/** A plant under trial cloth. A bed is judged on a sample of its cells. */
interface TrialPlant {
  readonly id: string;
  /** worth × (harm before − after). [K·h/day] */
  readonly spared: number;
  /** Mean of its points on the heatwave day [K·h/day], and the warmest thirsty leaf of them all. [°C] */
  readonly scorchDose: number;
  readonly peak: number;
  readonly verdict: Verdict;
}

export interface TrialScore {
  /** Mean hot load of each cell, index = j·columns + i; `null` off the property. [MJ/m²] */
  readonly hotLoad: (number | null)[];
  readonly plants: readonly TrialPlant[];
  /** Σ worth × (harm before − after). [K·h/day] */
  readonly spared: number;
  readonly sparedShare: number;
  /** Of the cloth [m²], and what is spared per m² of it. */
  readonly area: number;
  readonly perArea: number;
}

/** A yard laid out once, over which cloth is moved about: a move costs only what it changes. */
export interface Trial {
  readonly grid: GridSpec;
  /**
   * What the cloth does, hung all at once in place of that of the call before. Cloth with an `up` counts in the plants'
   * numbers as if it hung.
   */
  score(cloth: readonly (Canopy | Screen)[]): TrialScore;
}

/**
 * @param plan the yard without the cloth that is tried
 * @param period of the map; plants are judged on the heat days, their light in the season
 * @returns the trial, or why a period cannot be sampled
 */
export function createTrial(plan: Plan, period: Period, grid: GridSpec, weather?: Weather): Outcome<Trial> {
  const laidOut = yardOf(plan, period, weather);
  if (!laidOut.ok) return laidOut;
  const yard = laidOut.value;
  const found = targetsOf(plan, weather, undefined, undefined, BED_POINTS);
  if (!found.ok) return found;
  const targets = found.value;
  const season = period.kind === 'season' ? laidOut : yardOf(plan, { kind: 'season' }, weather);
  if (!season.ok) return season;
  const guard = lightGuard(season.value, false);
  const leaves = leafTables(targets);
  const pairs = harmPairsOf(targets, leaves, 1);
  const together = togetherScore(targets, pairs, leaves);
  const judge = heatJudge(targets);
  const caster = createTrialCaster(yard.scene, grid, yard.passes, [yard.weights.channels.hotLoad]);
  const mask = maskOf(plan, grid);
  const { samples } = yard;
  const hangsOf = ({ up }: Canopy | Screen): Uint8Array | undefined =>
    up && Uint8Array.from(samples.dayOf, (day) => (inYearlySpan(up, samples.days[day].monthDay) ? 1 : 0));
  return {
    ok: true,
    value: {
      grid,
      score(cloth) {
        // The caster hangs all its sheets at the same times; pieces of one trial have the `up` of the first.
        caster.hang(cloth.flatMap(clothSheets), cloth[0] && hangsOf(cloth[0]));
        const [sums] = caster.sums();
        const arounds = roundPoints(targets, cloth);
        const byPlant = together(cloth, arounds);
        const dark = guard.dark(cloth);
        const plants = judge(cloth, arounds).map(({ heat, scorchDose, peak }, k): TrialPlant => {
          const { feature, row } = targets.plants[k];
          const verdict = verdictOf(heat, milderBy(row, isEstablished(plan, feature)), dark.has(feature.id));
          return { id: feature.id, spared: byPlant[k], scorchDose, peak, verdict };
        });
        const spared = byPlant.reduce((sum, each) => sum + each, 0);
        const area = cloth.reduce((sum, one) => sum + clothArea(one), 0);
        return {
          hotLoad: Array.from(sums, (load, index) => (mask[index] === 1 ? null : load)),
          plants,
          spared,
          sparedShare: pairs.harm > 0 ? spared / pairs.harm : 0,
          area,
          perArea: area > 0 ? spared / area : 0,
        };
      },
    },
  };
}

/** What stands round each point while cloth hangs, by point and heat day; its sky is that of the yard without. */
type Arounds = readonly (readonly Surroundings[])[];

/** Walls throw less where the cloth takes their sun, and what it hides of them nothing. */
function roundPoints({ heats, points, walls }: Targets, cloth: readonly (Canopy | Screen)[]): Arounds {
  const under = walls.under(cloth.flatMap(clothSheets));
  return points.map(({ at, own, around }) => {
    const glows = under.changedOn(heats, at, own);
    return around.map((bare, h) => (glows[h] === bare.walls ? bare : { ...bare, walls: glows[h] }));
  });
}

interface HeatJudged {
  heat: HeatVerdict;
  scorchDose: number;
  peak: number;
}

/** Judges every plant on the heatwave day under any cloth, from tables of its leaves. */
function heatJudge(targets: Targets): (cloth: readonly (Canopy | Screen)[], arounds: Arounds) => HeatJudged[] {
  const { heats, plants, points } = targets;
  const hottest = heats.reduce((best, { day }, h) => (day.high > heats[best].day.high ? h : best), 0);
  const heat = heats[hottest];
  const thirsty = leafTables(targets, 'thirsty');
  const watered = leafTables(targets, 'watered');
  const raysOf = skyRaysOf(targets);
  const skies = points.map(({ at, sky }) => raysOf(at, sky[hottest]));
  const shares = new Float64Array(heat.samples.count);
  const [dry, wet] = [newJudgement(), newJudgement()];
  return (cloth, arounds) => {
    const sheets = cloth.flatMap(clothSheets);
    const judged = plants.map((): HeatJudged => ({ heat: 'fine', scorchDose: 0, peak: -Infinity }));
    for (const [index, point] of points.entries()) {
      const plant = judged[point.plant];
      const { limit } = plants[point.plant];
      shares.set(point.shares[hottest]);
      heat.caster.dim(point.at, sheets, shares);
      const open = arounds[index][hottest];
      const around = underSky(open, open.sky - skies[index].takenBy(sheets));
      judgeLeaf(thirsty[point.plant][hottest], shares, around, limit, undefined, dry);
      const parched = lasts(dry.longest);
      const leaf = watered[point.plant][hottest];
      const burns = limit + BURNS_FROM;
      if (parched) judgeLeaf(leaf, shares, around, burns, leaf.hotSamples(burns), wet);
      const inHeat = heatVerdict(dry.longest, parched ? wet.longest : 0);
      if (byGravity(inHeat, plant.heat) > 0) plant.heat = inHeat;
      plant.scorchDose += point.part * dry.dose;
      plant.peak = Math.max(plant.peak, dry.peak);
    }
    return judged;
  };
}
