import type { Outcome } from '../../load/types.ts';
import type { Plan } from '../../plan/types.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import { answersOf, bestOf } from './answers.ts';
import { type Candidate, candidatesOf } from './choose.ts';
import { inFull } from './in-full.ts';
import { type LaidOut, layOut } from './lay-out.ts';
import type { Proposal } from './option.ts';
import { type Progress, stretch } from './progress.ts';
import { type BetweenSteps, betweenSteps } from './refine/between-steps.ts';
import { resultOf, type Weighed, weighed } from './result.ts';
import { searchYard } from './search-yard.ts';
import type { Standings } from './search/contest.ts';
import type { SiteRequest, SiteResult } from './types.ts';

/**
 * Where cloth would spare the plants most. Whoever wants to stop it ends the thread that it runs on.
 * @returns the options, or what is wrong with the request or the plan
 */
export function siteOf(
  plan: Plan,
  request: SiteRequest = {},
  progress: Progress = () => undefined,
): Outcome<SiteResult> {
  const found = searched(plan, request, progress);
  if (!found.ok) return found;
  const { laidOut, standings, near, full } = found.value;
  return { ok: true, value: resultOf(laidOut, standings, answersOf(near.candidates, full), near.tried) };
}

/**
 * The one that spares most, whatever it costs, without the rest of the answer.
 * @returns `null` where nothing spares anything; or what is wrong with the request or the plan
 */
export function mostSparing(plan: Plan, request: SiteRequest, progress: Progress): Outcome<Proposal | null> {
  const found = searched(plan, request, progress);
  if (!found.ok) return found;
  const { near, full } = found.value;
  const best = bestOf(near.candidates, full);
  return { ok: true, value: best && full(best).option };
}

/** What was found, and each of it in full as it is asked for. */
interface Searched {
  readonly laidOut: LaidOut;
  readonly standings: Standings;
  readonly near: BetweenSteps;
  readonly full: (candidate: Candidate) => Weighed;
}

function searched(plan: Plan, request: SiteRequest, progress: Progress): Outcome<Searched> {
  const found = layOut(plan, request, stretch(progress, 0, 0.15));
  if (!found.ok) return found;
  const laidOut = found.value;
  const standings = searchYard(laidOut, stretch(progress, 0.15, 0.8));
  progress(0.8, 'what to choose between');
  const near = betweenSteps(laidOut, candidatesOf(laidOut, standings));
  const full = inFull(laidOut, stretch(progress, 0.85, 1));
  const value = {
    laidOut,
    standings,
    near,
    full: (candidate: Candidate) => weighed(laidOut, candidate, full(candidate)),
  };
  return { ok: true, value };
}

/**
 * Finds out what every search of a yard asks first. It is kept by the plan and its parts, so that a search that comes
 * after it begins with that known.
 * @returns or what is wrong with the plan
 */
export function lookOver(plan: Plan, weather?: Weather): Outcome<true> {
  const found = layOut(plan, { weather }, () => undefined);
  return found.ok ? { ok: true, value: true } : found;
}
