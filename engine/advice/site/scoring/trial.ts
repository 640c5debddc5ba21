import type { GridSpec } from '../../../cast/grids/grid-spec.ts';
import { createTrialCaster } from '../../../cast/grids/trial/trial-caster.ts';
import { passesInRow } from '../../../cast/passes.ts';
import { createPointCaster } from '../../../cast/points/point-caster.ts';
import {
  BURNS_FROM,
  byGravity,
  type HeatVerdict,
  heatVerdict,
  judgeLeaf,
  lasts,
  newJudgement,
} from '../../../load/leaf/judge.ts';
import type { Surroundings, WallGlow } from '../../../load/leaf/surroundings.ts';
import { maskOf } from '../../../load/light/grid-of.ts';
import type { Outcome, Verdict } from '../../../load/types.ts';
import { isEstablished } from '../../../load/verdict/limit.ts';
import { milderBy, verdictOf } from '../../../load/verdict/verdict.ts';
import { yardOf } from '../../../load/yard.ts';
import { inYearlySpan } from '../../../plan/dates/year-span.ts';
import type { SpacePoint } from '../../../plan/geometry/vectors.ts';
import type { Cloth, Plan } from '../../../plan/types.ts';
import { clothSheets } from '../../../scene/build.ts';
import type { ClothSheet } from '../../../scene/solids.ts';
import type { Period } from '../../../sun/samples.ts';
import type { Weather } from '../../../sun/weather/weather.ts';
import { clothArea } from '../../compare/cost.ts';
import { lightGuard } from '../rules/light-left.ts';
import { type Targets, targetsOf } from '../search/targets.ts';
import { leafTables } from './leaf-tables.ts';
import { skyRaysOf } from './together.ts';

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
  score(cloth: readonly Cloth[]): TrialScore;
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
  const judge = trialJudge(targets);
  const caster = createTrialCaster(yard.scene, grid, yard.passes, [yard.weights.channels.hotLoad]);
  const mask = maskOf(plan, grid);
  const { samples } = yard;
  const hangsOf = ({ up }: Cloth): Uint8Array | undefined =>
    up && Uint8Array.from(samples.dayOf, (day) => (inYearlySpan(up, samples.days[day].monthDay) ? 1 : 0));
  return {
    ok: true,
    value: {
      grid,
      score(cloth) {
        const sheets = cloth.flatMap(clothSheets);
        // The caster hangs all its sheets at the same times; pieces of one trial have the `up` of the first.
        caster.hang(sheets, cloth[0] && hangsOf(cloth[0]));
        const [sums] = caster.sums();
        const dark = guard.dark(cloth);
        const plants = judge.under(sheets).map(({ heat, ...judged }, k): TrialPlant => {
          const { feature, row } = targets.plants[k];
          const verdict = verdictOf(heat, milderBy(row, isEstablished(plan, feature)), dark.has(feature.id));
          return { id: feature.id, ...judged, verdict };
        });
        const spared = plants.reduce((sum, each) => sum + each.spared, 0);
        const area = cloth.reduce((sum, one) => sum + clothArea(one), 0);
        return {
          hotLoad: Array.from(sums, (load, index) => (mask[index] === 1 ? null : load)),
          plants,
          spared,
          sparedShare: judge.harm > 0 ? spared / judge.harm : 0,
          area,
          perArea: area > 0 ? spared / area : 0,
        };
      },
    },
  };
}

/** What stands round each point while sheets hang, by point and heat day: as it was where they change nothing. */
function roundPoints(targets: Targets): (sheets: readonly ClothSheet[]) => Surroundings[][] {
  const { heats, points, walls } = targets;
  const raysOf = skyRaysOf(targets);
  const skies = points.map(({ at, sky }) => [...new Set(sky)].map((rays) => ({ rays, laid: raysOf(at, rays) })));
  return (sheets) => {
    const under = walls.under(sheets);
    const glowsAt = new Map<SpacePoint, (WallGlow | null)[]>();
    return points.map(({ wallsAt, own, sky, around }, p) => {
      // Walls throw less where the cloth takes their sun, and what it hides of them nothing.
      let glows = glowsAt.get(wallsAt);
      if (!glows) glowsAt.set(wallsAt, (glows = under.changedOn(heats, wallsAt, own)));
      const taken = skies[p].map(({ laid }) => laid.takenBy(sheets));
      return around.map((bare, h) => {
        const hidden = taken[skies[p].findIndex(({ rays }) => rays === sky[h])];
        return hidden === 0 && glows[h] === bare.walls ? bare : { ...bare, sky: bare.sky - hidden, walls: glows[h] };
      });
    });
  };
}

/** One point on one heat day. */
interface PointJudged {
  /** [K·h] */
  readonly dose: number;
  /** Of the heatwave day alone: its warmest thirsty leaf [°C], and what the day does to it. */
  readonly peak: number;
  readonly heat: HeatVerdict;
}

interface PlantJudged {
  heat: HeatVerdict;
  spared: number;
  scorchDose: number;
  peak: number;
}

/** Judges every plant under any cloth, from tables of its leaves; what cloth does not reach stays as it was judged. */
function trialJudge(targets: Targets): { harm: number; under(sheets: readonly ClothSheet[]): PlantJudged[] } {
  const { scene, heats, plants, points } = targets;
  const hottest = heats.reduce((best, { day }, h) => (day.high > heats[best].day.high ? h : best), 0);
  const aroundsUnder = roundPoints(targets);
  const judge = pointJudge(targets, hottest);
  const bare = points.map(({ shares, around }, p) => heats.map((_, h) => judge(p, h, shares[h], around[h])));
  const caster = createPointCaster(scene, passesInRow(heats.map(({ passes }) => passes)));
  const inRow = points.map(({ shares }) => Float64Array.from(shares.flatMap((ofDay) => [...ofDay])));
  const dimmed = Float64Array.from(inRow[0] ?? []);
  let first = 0;
  const dimmedOn = heats.map(({ samples: { count } }) => dimmed.subarray(first, (first += count)));
  const isDimmed = (p: number, h: number) => points[p].shares[h].some((share, k) => share !== dimmedOn[h][k]);
  return {
    harm: points.reduce((sum, { weight }, p) => bare[p].reduce((all, { dose }) => all + weight * dose, sum), 0),
    under(sheets) {
      const arounds = aroundsUnder(sheets);
      const all = plants.map((): PlantJudged => ({ heat: 'fine', spared: 0, scorchDose: 0, peak: -Infinity }));
      for (const [p, { plant, at, part, weight, around }] of points.entries()) {
        const judged = all[plant];
        dimmed.set(inRow[p]);
        caster.dim(at, sheets, dimmed);
        for (let h = 0; h < heats.length; h++) {
          if (weight === 0 && h !== hottest) continue;
          const isAsBare = arounds[p][h] === around[h] && !isDimmed(p, h);
          const now = isAsBare ? bare[p][h] : judge(p, h, dimmedOn[h], arounds[p][h]);
          judged.spared += weight * (bare[p][h].dose - now.dose);
          if (h !== hottest) continue;
          if (byGravity(now.heat, judged.heat) > 0) judged.heat = now.heat;
          judged.scorchDose += part * now.dose;
          judged.peak = Math.max(judged.peak, now.peak);
        }
      }
      return all;
    },
  };
}

function pointJudge(targets: Targets, hottest: number) {
  const { plants, points } = targets;
  const thirsty = leafTables(targets, 'thirsty');
  const watered = leafTables(targets, 'watered');
  const [dry, wet] = [newJudgement(), newJudgement()];
  return (p: number, h: number, shares: Float64Array, around: Surroundings): PointJudged => {
    const { plant } = points[p];
    const { limit } = plants[plant];
    const leaf = thirsty[plant][h];
    judgeLeaf(leaf, shares, around, limit, h === hottest ? leaf.samples : leaf.hotSamples(limit), dry);
    const { dose, peak } = dry;
    if (h !== hottest || !lasts(dry.longest)) return { dose, peak, heat: 'fine' };
    const burns = limit + BURNS_FROM;
    judgeLeaf(watered[plant][h], shares, around, burns, watered[plant][h].hotSamples(burns), wet);
    return { dose, peak, heat: heatVerdict(dry.longest, wet.longest) };
  };
}
