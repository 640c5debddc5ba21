import type { Candidate } from './choose.ts';
import { thinner } from './choose.ts';
import type { LaidOut } from './lay-out.ts';
import { named, optionOf, type Proposal } from './option.ts';
import { type Progress, stretch } from './progress.ts';

/** A candidate worked out exactly. */
export interface InFull {
  readonly option: Proposal;
  /** How far the search's points are off what it spares. [K·h/day] */
  readonly error: number;
}

/** About so many are worked out. */
const EXPECTED = 4;

/** Casts the yard anew with what is asked about, once each. */
export function inFull(laidOut: LaidOut, progress: Progress): (candidate: Candidate) => InFull {
  const { plan, targets, leaves, before, units, standings, counting, prices } = laidOut;
  const thin = thinner(laidOut);
  const known = new Map<Candidate, InFull>();
  const workOut = (candidate: Candidate): InFull => {
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
    return { option, error: Math.abs(option.spared - spared) };
  };
  return (candidate) => {
    let full = known.get(candidate);
    if (full === undefined) known.set(candidate, (full = workOut(candidate)));
    return full;
  };
}
