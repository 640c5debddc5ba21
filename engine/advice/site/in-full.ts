import type { Candidate } from './choose.ts';
import { thinner } from './choose.ts';
import type { LaidOut } from './lay-out.ts';
import { named, optionOf, type Proposal } from './option.ts';
import type { Progress } from './progress.ts';

/** A candidate worked out exactly. */
export interface InFull {
  readonly option: Proposal;
  /** How far the search's points are off what it spares. [K·h/day] */
  readonly error: number;
}

/** Casts the yard anew with a candidate. */
export function inFull(laidOut: LaidOut): (candidate: Candidate, progress: Progress) => InFull {
  const { plan, targets, leaves, before, units, standings, counting, prices } = laidOut;
  const thin = thinner(laidOut);
  return (candidate, progress) => {
    const { kind, cloth, spared } = thin(candidate);
    const features = named(
      plan,
      cloth.map((one) => prices.fit(one)?.cloth ?? one),
    );
    const after = standings
      .under(features, (done) => progress(done, 'an answer in full'))
      .map((plant) => (counting.ids.has(plant.id) ? plant : { ...plant, worth: 0 }));
    const option = optionOf({ plan, targets, leaves, before, units }, kind, features, after);
    return { option, error: Math.abs(option.spared - spared) };
  };
}
