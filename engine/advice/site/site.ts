import type { Outcome } from '../../load/types.ts';
import type { Plan } from '../../plan/types.ts';
import { choose } from './choose.ts';
import { clothSteps } from './cloth-steps.ts';
import { type InFull, inFull } from './in-full.ts';
import { type LaidOut, layOut } from './lay-out.ts';
import { type Progress, stretch } from './progress.ts';
import type { Contest } from './search/contest.ts';
import { searchYard } from './search-yard.ts';
import type { SiteRequest, SiteResult, SiteTried } from './types.ts';
import { notesOf, rulePrices, sensibleOf, sentenceOf } from './words.ts';

/**
 * Where cloth would spare the plants most. Whoever wants to stop it ends the thread that it runs on.
 * @returns the options, or what is wrong with the request or the plan
 */
export function siteOf(
  plan: Plan,
  request: SiteRequest = {},
  progress: Progress = () => undefined,
): Outcome<SiteResult> {
  const laidOut = layOut(plan, request, stretch(progress, 0, 0.1));
  if (!laidOut.ok) return laidOut;
  const contest = searchYard(laidOut.value, stretch(progress, 0.1, 0.75));
  progress(0.75, 'which of them differ');
  const full = inFull(laidOut.value, choose(laidOut.value, contest), stretch(progress, 0.8, 1));
  return full.ok ? { ok: true, value: resultOf(laidOut.value, contest, full.value) } : full;
}

function resultOf(laidOut: LaidOut, contest: Contest, full: InFull): SiteResult {
  const { options, harm } = full;
  const { count } = laidOut.request;
  const finished = contest.isOpen;
  const best = options[0]?.spared ?? 0;
  const single = Math.max(contest.best, contest.unseen);
  const bound = Math.max(best, count === 1 ? single : Math.min(harm, count * single));
  return {
    options,
    bound,
    gap: bound > 0 ? (bound - best) / bound : 0,
    proven: finished && count === 1,
    tried: triedOf(laidOut, contest, full),
    harm,
    sensible: sensibleOf(options),
    rules: rulePrices(laidOut, contest),
    ladder: clothSteps(options, harm),
    notes: notesOf(laidOut),
    sentence: sentenceOf(harm, options, finished),
  };
}

function triedOf(
  { lattice, sizes, request, targets, pairs }: LaidOut,
  { candidates, forbidden, scored }: Contest,
  { bedSampleError }: InFull,
): SiteTried {
  return {
    kinds: lattice.kinds,
    sizes,
    heights: lattice.roof.heights,
    densities: request.densities,
    turns: lattice.turns.length,
    step: lattice.step,
    candidates,
    outbid: candidates - forbidden - scored,
    forbidden,
    scored,
    points: targets.points.length,
    heatDays: targets.heats.length,
    harmfulPairs: pairs.count,
    bedSampleError,
  };
}
