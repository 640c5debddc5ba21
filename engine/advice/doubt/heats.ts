/** The days by which doubt judges a yard's heat. */

import { heatDayOf, heatDaysOf, type SharedLeaves } from '../../load/leaf/heat-day.ts';
import type { Outcome } from '../../load/types.ts';
import { Kept } from '../../plan/kept.ts';
import type { Plan } from '../../plan/types.ts';
import type { Scene } from '../../scene/solids.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import { type HeatRays, heatRaysOf } from './heat-rays.ts';

/** The season's heat days, and which of them is the heatwave day. */
export interface Heats {
  readonly rays: HeatRays;
  readonly heatwave: number;
  /** Stands for the air of the days: the same object of all yards in the same air. */
  readonly air: object;
}

const knownAirs = new Kept<object>();

export function heatsOf(plan: Plan, scene: Scene, shareLeaves: SharedLeaves, weather?: Weather): Outcome<Heats> {
  const days = heatDaysOf(plan, scene, weather);
  if (!days.ok) return days;
  const heatwave = heatDayOf(plan, scene, { kind: 'heatwave' }, weather);
  if (!heatwave.ok) return heatwave;
  const rays = heatRaysOf(days.value.map(shareLeaves));
  const air = knownAirs.of(
    rays.days.map(({ leaves }) => leaves),
    '',
    () => ({}),
  );
  const hottest = days.value.findIndex(({ day }) => day.date === heatwave.value.day.date);
  return { ok: true, value: { rays, heatwave: hottest, air } };
}
