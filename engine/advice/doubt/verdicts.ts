import { isTooDark } from '../../load/light/light-class.ts';
import type { Nine, Outcome, Verdict } from '../../load/types.ts';
import { isEstablished } from '../../load/verdict/limit.ts';
import { milderBy, verdictOf } from '../../load/verdict/verdict.ts';
import { nineAt, type Yard, yardOf } from '../../load/yard.ts';
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
  const known = new Map<string, Nine>();
  const lightFor = (judge: Judge): Nine => {
    const light = known.get(judge.feature.id) ?? seasonLight(season.value, judge);
    known.set(judge.feature.id, light);
    return light;
  };
  const value: VerdictOf = (drawn, now) => {
    const { feature, row } = drawn.judge;
    const milder = milderBy(row, isEstablished(plan, feature));
    const [bright, dark] = [false, true].map((tooDark) => verdictOf(now.inHeat, milder, tooDark));
    if (bright === dark) return bright;
    const light = lightFor(drawn.judge);
    const left = {
      ...light,
      sunHours: light.sunHours * ratio(now.light.sunHours, drawn.light.sunHours),
      dailyLight: light.dailyLight * ratio(now.light.energy, drawn.light.energy),
    };
    return isTooDark(row, left) ? dark : bright;
  };
  return { ok: true, value };
}

function ratio(a: number, b: number): number {
  return b > 0 ? a / b : 1;
}

/** At the top; of a bed the mean of its points. */
function seasonLight(yard: Yard, { feature, points, own }: Judge): Nine {
  if (feature.kind !== 'bed') return nineAt(yard, points[0], own);
  const nines = points.map((point) => nineAt(yard, point));
  const mean = (key: keyof Nine) => nines.reduce((sum, nine) => sum + nine[key], 0) / nines.length;
  return { ...nines[0], sunHours: mean('sunHours'), dailyLight: mean('dailyLight') };
}
