import { isTooDark } from '../../load/light/light-class.ts';
import type { Outcome, Verdict } from '../../load/types.ts';
import { isEstablished } from '../../load/verdict/limit.ts';
import { milderBy, verdictInLight } from '../../load/verdict/verdict.ts';
import { nineAt, type Yard, yardOf } from '../../load/yard.ts';
import { meanOf } from '../../plan/numbers/mean.ts';
import type { Plan } from '../../plan/types.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import type { Judge } from './judges.ts';
import type { RayHarm } from './suffered.ts';

/**
 * The verdict on a plant.
 * @param drawn what it suffers as the yard is drawn
 * @param now the same or, with an input off, what it suffers then
 */
export type VerdictOf = (drawn: RayHarm, now: RayHarm) => Verdict;

/**
 * Verdicts from what rays tell. The season's light is cast where want of it can decide, once a plant; when what a plant
 * gets on the heatwave day changes, the season's light is taken to change by the same ratio.
 * @returns why the season cannot be sampled, else the verdicts
 */
export function rayVerdicts(plan: Plan, weather?: Weather): Outcome<VerdictOf> {
  const season = yardOf(plan, { kind: 'season' }, weather);
  if (!season.ok) return season;
  const known = new Map<string, number>();
  const lightFor = (judge: Judge): number => {
    const light = known.get(judge.feature.id) ?? seasonLight(season.value, judge);
    known.set(judge.feature.id, light);
    return light;
  };
  const value: VerdictOf = (drawn, now) => {
    const { feature, row } = drawn.judge;
    return verdictInLight(now.inHeat, milderBy(row, isEstablished(plan, feature)), () => {
      const dailyLight = lightFor(drawn.judge) * ratio(now.light, drawn.light);
      return isTooDark(row, { dailyLight });
    });
  };
  return { ok: true, value };
}

function ratio(a: number, b: number): number {
  return b > 0 ? a / b : 1;
}

/** Daily light at the top; of a bed the mean of its points. [mol/m² a day] */
function seasonLight(yard: Yard, { feature, points, own }: Judge): number {
  return meanOf((feature.kind === 'bed' ? points : [points[0]]).map((point) => nineAt(yard, point, own).dailyLight));
}
