import type { Correction, ReviewResult } from '../../../../engine/index.ts';
import { commitEdit } from '../../../state/edit.ts';
import { isStale } from '../../../state/live.ts';
import { plan } from '../../../state/yard.ts';
import { timesIn } from '../../parts/times.ts';
import { review } from '../season.ts';
import { ReadingDots } from './ReadingDots.tsx';
import { YearAgainstYear } from './YearAgainstYear.tsx';

/** Readings against the estimate, what to correct, and this year against the last. */
export function Review() {
  const { shown, working, problems } = review.value;
  return (
    <section aria-label="Did it work?" aria-busy={working !== null}>
      <h2 class="unseen">Did it work?</h2>
      {problems.map(({ message }) => (
        <p key={message} class="box-said fault">
          {message}
        </p>
      ))}
      {shown ? <Opinion result={shown.value} /> : working && <p>Holding the readings against the estimate…</p>}
    </section>
  );
}

function Opinion({ result }: { readonly result: ReviewResult }) {
  const { readings, pairs, sentences, corrections, damage, years, notes } = result;
  const offered = new Set([...corrections, ...years].map(({ sentence }) => sentence));
  return (
    <>
      {readings.length > 0 && (
        <ReadingDots readings={readings} pairs={pairs} spread={Math.max(...readings.map((each) => each.spread))} />
      )}
      <ul class="opinion">
        {sentences
          .filter((sentence) => !offered.has(sentence))
          .map((sentence) => (
            <li key={sentence}>{timesIn(sentence)}</li>
          ))}
      </ul>
      {corrections.map((correction) => (
        <Offer key={correction.pointer} correction={correction} />
      ))}
      <YearAgainstYear damage={damage} years={years} />
      {notes.map((note) => (
        <p key={note} class="quiet">
          {timesIn(note)}
        </p>
      ))}
    </>
  );
}

/** A correction is offered with what it gains, never made by itself. */
function Offer({ correction }: { readonly correction: Correction }) {
  const { what, sentence } = correction;
  function take(): void {
    const { site, climate, features } = correction.plan;
    // The picture to trace over stayed behind when the question was asked.
    const { underlay } = plan.value.site;
    commitEdit(`Correct ${what}`, { ...plan.value, climate, features, site: underlay ? { ...site, underlay } : site });
  }
  return (
    <p>
      {sentence}{' '}
      <button type="button" disabled={isStale(review.value)} onClick={take}>
        Correct {what}
      </button>
    </p>
  );
}
