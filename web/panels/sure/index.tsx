import '../parts/advice-card.css';
import './style.css';
import { type DoubtBar, type DoubtResult, movedBy, formatShare } from '../../../engine/index.ts';
import { isStale, liveAnswer } from '../../state/live.ts';
import { reckonedPlan } from '../../state/reckoned.ts';
import { aside, findOut, goToStage, selection } from '../../state/view.ts';
import { plan, preview, units } from '../../state/yard.ts';

/** Inputs drawn as bars; the rest are behind a fold. */
const FIRST_BARS = 5;

/** Asked only while somebody looks, and not while something is dragged. */
const doubts = liveAnswer('doubt', () =>
  aside.value === 'sure' && preview.value === null ? { plan: reckonedPlan.value, units: units.value } : null,
);

/**
 * How far the harm moves with each number that is a guess, which one to measure first, and what each plant's verdict
 * may become.
 */
export function SureCard() {
  const { shown, working, problems } = doubts.value;
  return (
    <div class="advice-card sure-card">
      {problems.map(({ message }) => (
        <p key={message} class="said problem" role="alert">
          {message}
        </p>
      ))}
      {working && (
        <p class="quiet" role="status">
          Shifting every guess by what it may be off… {formatShare(working.done)}
        </p>
      )}
      {shown && <Doubts result={shown.value} rough={isStale(doubts.value)} />}
    </div>
  );
}

function Doubts({ result, rough }: { readonly result: DoubtResult; readonly rough: boolean }) {
  const most = Math.max(...result.inputs.map(({ moves }) => moves), Number.MIN_VALUE);
  const moving = result.inputs.filter(({ moves }) => moves >= 0.05);
  const list = (bars: readonly DoubtBar[]) => (
    <ol class="doubt-bars">
      {bars.map((bar) => (
        <Bar
          key={bar.key}
          bar={bar}
          most={most}
          harm={result.harm}
          first={bar.key === result.measureNext && bar.advice !== ''}
        />
      ))}
    </ol>
  );
  return (
    <div aria-busy={rough}>
      <p class="finding">
        {rough && '~ '}
        {result.sentence}
      </p>
      <section aria-label="What hangs on each number">
        <h2>What hangs on each number</h2>
        <p class="quiet">Each bar: how much more or less heat damage a hot day does if that number alone is off.</p>
        {list(moving.slice(0, FIRST_BARS))}
        {moving.length > FIRST_BARS && (
          <details>
            <summary>{moving.length - FIRST_BARS} more that move it less</summary>
            {list(moving.slice(FIRST_BARS))}
          </details>
        )}
      </section>
      <section aria-label="Plant by plant">
        <h2>Plant by plant</h2>
        <ul class="sentences">
          {result.plants.map(({ id, sentence }) => (
            <li key={id}>{sentence}</li>
          ))}
        </ul>
        {result.notes.map((note) => (
          <p key={note} class="said">
            {note}
          </p>
        ))}
      </section>
      <section aria-label="Hold it against the yard">
        <h2>Hold it against the yard</h2>
        <p>
          A shadow shows whether north and the heights are right.{' '}
          <button type="button" onClick={() => findOut('marks')}>
            Mark where a shadow’s edge really lies
          </button>
        </p>
      </section>
    </div>
  );
}

function Bar({
  bar: { name, pmText, moves, feature, measurable, key },
  most,
  harm,
  first,
}: {
  readonly bar: DoubtBar;
  readonly most: number;
  /** Of the yard as it is. [K·h/day] */
  readonly harm: number;
  readonly first: boolean;
}) {
  const drawn = feature !== null && plan.value.features.some(({ id }) => id === feature);
  const measure = (): void => {
    selection.value = [feature!];
    goToStage('draw');
  };
  return (
    <li class={first ? 'doubt-bar first' : 'doubt-bar'}>
      <span class="doubt-name">
        {name}, ± {pmText}
      </span>{' '}
      <span class="doubt-moves">{movedBy(moves, harm)}</span>
      <svg class="doubt-length" aria-hidden="true" viewBox="0 0 100 1" preserveAspectRatio="none">
        <rect width={(100 * moves) / most} height="1" />
      </svg>
      {first && <strong>Measure this first. </strong>}
      {measurable && drawn && (
        <button type="button" onClick={measure}>
          To its numbers
        </button>
      )}
      {key === 'site.upBearing' && (
        <button type="button" onClick={() => findOut('north')}>
          Find north
        </button>
      )}
    </li>
  );
}
