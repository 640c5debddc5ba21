import type { Candidate } from './choose.ts';
import { thinner } from './choose.ts';
import type { LaidOut } from './lay-out.ts';
import { named, optionOf, type Proposal } from './option.ts';
import { type Progress, stretch } from './progress.ts';

/** What was chosen, worked out exactly. */
export interface InFull {
  of(candidate: Candidate): Proposal;
  /** Σ worth × harm as the yard is. [K·h/day] */
  readonly harm: number;
  /** How far the search's points are off that, and off what the options spare, at most, so far. [K·h/day] */
  bedSampleError(): number;
}

/** About so many are worked out. */
const EXPECTED = 4;

/** Casts the yard anew with what is asked about, once each. */
export function inFull(laidOut: LaidOut, progress: Progress): InFull {
  const { plan, targets, leaves, before, pairs, units, standings, counting, prices } = laidOut;
  const known = new Map<Candidate, Proposal>();
  const thin = thinner(laidOut);
  const harm = before.reduce((sum, { worth, state }) => sum + worth * (state.harm ?? 0), 0);
  let error = Math.abs(harm - pairs.harm);
  const workOut = (candidate: Candidate): Proposal => {
    const part = stretch(progress, Math.min(1, known.size / EXPECTED), Math.min(1, (known.size + 1) / EXPECTED));
    const { kind, cloth, spared } = thin(candidate);
    const features = named(
      plan,
      cloth.map((one) => prices.fit(one)?.cloth ?? one),
    );
    const after = standings
      .under(features, (done) => part(done, `answer ${known.size + 1} in full`))
      .map((plant) => (counting.ids.has(plant.id) ? plant : { ...plant, worth: 0 }));
    const option = optionOf({ plan, targets, leaves, before, units }, kind, features, after);
    error = Math.max(error, Math.abs(option.spared - spared));
    return option;
  };
  return {
    harm,
    bedSampleError: () => error,
    of(candidate) {
      let option = known.get(candidate);
      if (option === undefined) known.set(candidate, (option = workOut(candidate)));
      return option;
    },
  };
}
