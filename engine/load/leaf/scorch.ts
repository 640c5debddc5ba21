import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import { ROUNDING } from '../../plan/numbers/tolerances.ts';
import type { PlantRow } from '../../plan/types.ts';
import type { OwnCrown } from '../../scene/solids.ts';
import type { SkyViewer } from '../light/sky-viewer.ts';
import type { HeatDay } from './heat-day.ts';
import { BURNS_FROM, type HeatVerdict, heatVerdict, type HotRun, judgeWarmth, runsOf, SHADED_SHARE } from './judge.ts';
import { surroundingsAt } from './surroundings-at.ts';
import type { Surroundings } from './surroundings.ts';

/** What the sun of a heat day does to a leaf at one point, with little water and with enough. */
export interface Scorch {
  /** Σ (thirsty leaf − limit)·dt while above it. [K·h/day] */
  readonly dose: number;
  /** Warmest of the day. [°C] */
  readonly thirsty: number;
  readonly watered: number;
  /** Sample at which the thirsty leaf is warmest; −1 on a day without sun. */
  readonly warmest: number;
  readonly inHeat: HeatVerdict;
  /** The same were every leaf all but 2 K cooler, or warmer. */
  readonly cooler: HeatVerdict;
  readonly hotter: HeatVerdict;
  /**
   * The thirsty leaf's run in the sun with the most excess; where the air alone is too hot for it, its run in the
   * shade.
   */
  readonly run: HotRun | null;
}

/** A verdict that less than 2 K would change is a close call. [K] */
const CLOSE = 2 - ROUNDING;

/** A point of the yard on a heat day, as `scorchAt` needs it. */
export interface LitPoint {
  /** Of the beam, one a sample. */
  readonly shares: Float64Array;
  readonly around: Surroundings;
}

/** @param own an extra crown in the way for this point alone */
export function litPoint(heat: HeatDay, sky: SkyViewer, point: SpacePoint, own?: OwnCrown): LitPoint {
  return { shares: heat.caster.sharesAt(point, own), around: surroundingsAt(sky, heat, point, own) };
}

/** @param limit of the leaf, or the fruit [°C] */
export function scorchAt(heat: HeatDay, row: PlantRow, limit: number, { shares, around }: LitPoint): Scorch {
  const leaf = heat.leaves('thirsty', row);
  const { samples, hours } = leaf;
  const [dry, wet] = (['thirsty', 'watered'] as const).map((watering) =>
    heat.leaves(watering, row).through(shares, around, samples, new Float64Array(samples.length)),
  );
  const judged = (temperatures: Float64Array, at: number) => judgeWarmth(temperatures, hours, at, samples);
  const verdictAt = (at: number) => heatVerdict(judged(dry, at).longest, judged(wet, at + BURNS_FROM).longest);
  const runs = (leastShare: number) => hottest(runsOf(leaf, dry, shares, limit, leastShare));

  const thirsty = judged(dry, limit);
  const sunless = heat.samples.count === 0;
  return {
    dose: thirsty.dose,
    thirsty: sunless ? heat.day.high : thirsty.peak,
    watered: sunless ? heat.day.high : judged(wet, limit).peak,
    warmest: thirsty.warmest,
    inHeat: verdictAt(limit),
    cooler: verdictAt(limit + CLOSE),
    hotter: verdictAt(limit - CLOSE),
    run: runs(SHADED_SHARE) ?? runs(0),
  };
}

function hottest(runs: readonly HotRun[]): HotRun | null {
  return runs.reduce<HotRun | null>((best, run) => (best === null || run.excess > best.excess ? run : best), null);
}
