import type { Outcome } from '../../load/types.ts';
import type { Chosen } from './choose.ts';
import type { LaidOut } from './lay-out.ts';
import { named, optionOf } from './option.ts';
import { type Progress, stretch } from './progress.ts';
import { standingsOf } from './scoring/plant-states.ts';
import type { SiteOption } from './types.ts';

/** What was chosen, worked out exactly. */
export interface InFull {
  /** Best first. */
  readonly options: readonly SiteOption[];
  /** Σ worth × harm as the yard is. [K·h/day] */
  readonly harm: number;
  /** How far the search's points are off that, and off what the options spare, at most. [K·h/day] */
  readonly bedSampleError: number;
}

/** Casts the yard anew as it is and with each of what was chosen. */
export function inFull(
  { plan, request, units, targets, leaves, pairs, season }: LaidOut,
  chosen: readonly Chosen[],
  progress: Progress,
): Outcome<InFull> {
  const standings = standingsOf(season, request.weather);
  if (!standings.ok) return standings;
  const part = (index: number) => stretch(progress, index / (chosen.length + 1), (index + 1) / (chosen.length + 1));
  const before = standings.value.under([], (done) => part(0)(done, 'the yard as it is'));
  const harm = before.reduce((sum, { worth, state }) => sum + worth * (state.harm ?? 0), 0);
  let bedSampleError = Math.abs(harm - pairs.harm);
  const options = chosen.map(({ kind, cloth, spared }, k) => {
    const features = named(plan, cloth);
    const what = `option ${k + 1} of ${chosen.length} in full`;
    const after = standings.value.under(features, (done) => part(k + 1)(done, what));
    const option = optionOf({ plan, targets, leaves, before, units }, kind, features, after);
    bedSampleError = Math.max(bedSampleError, Math.abs(option.spared - spared));
    return option;
  });
  return { ok: true, value: { options: options.sort((a, b) => b.spared - a.spared), harm, bedSampleError } };
}
