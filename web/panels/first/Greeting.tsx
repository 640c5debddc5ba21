import '../parts/boxes/asked.css';
import { signal } from '@preact/signals';
import { courtyard } from '../../../engine/index.ts';
import { aside, goToStage, minute, periodKind, selection, slipHeight, stage } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';
import { answers } from './answers.ts';

const STOPS = [
  {
    text:
      'The drawing: the more yellow the ground, the more hot sun reaches it. The hatched houses and walls ' +
      'throw the shade.',
    go: () => goToStage('heat'),
  },
  {
    text: 'The sun bar: its arc over this day, the hot hours filled dark. Drag the bead, or use the arrow keys.',
    go: () => (minute.value = 17 * 60),
  },
  {
    text: 'The lemon: chosen now. Its sides are judged one by one, for low sun comes in from the side.',
    go: chooseBurnt,
  },
  {
    text: 'The drawing stage: every wall, tree and pot with its numbers, and how each is known.',
    go: () => goToStage('draw'),
  },
] as const;

const stop = signal(-1);

/** What the demo yard says first, and the way to one's own. */
export function Greeting() {
  const demo = plan.value.name === courtyard.name;
  const unfinished = answers.value.open;
  if (aside.value !== null || (!demo && !unfinished)) return null;
  const shown = STOPS[stop.value];
  // The round leads through other stages; the greeting itself belongs to the first one.
  if (!shown && stage.value !== 'heat') return null;
  if (shown) {
    return (
      <section class="greeting" aria-label="Round this yard">
        <p aria-live="polite">
          {stop.value + 1} of {STOPS.length}. {shown.text}
        </p>
        <button key="next" type="button" class="main" onClick={() => go(stop.value + 1)}>
          {stop.value === STOPS.length - 1 ? 'Done' : 'Next stop'}
        </button>{' '}
        <button key="leave" type="button" onClick={() => (stop.value = -1)}>
          Leave the round
        </button>
      </section>
    );
  }
  return (
    <section class="greeting" aria-label="First minute">
      <button type="button" class="main" onClick={openQuestions}>
        {unfinished ? 'Go on: what happened in my yard?' : 'What happened in my yard?'}
      </button>{' '}
      {demo && (
        <button type="button" onClick={() => go(0)}>
          Show me round this one
        </button>
      )}{' '}
      {demo && (
        <button
          type="button"
          onClick={() => {
            chooseBurnt();
            aside.value = 'why';
          }}
        >
          Why did this lemon burn?
        </button>
      )}
    </section>
  );
}

function openQuestions(): void {
  aside.value = 'happened';
  slipHeight.value = 'full';
}

function go(next: number): void {
  stop.value = next < STOPS.length ? next : -1;
  STOPS[stop.value]?.go();
}

function chooseBurnt(): void {
  const burnt = plan.value.journal?.find(({ what }) => what === 'damage')?.feature;
  if (burnt !== undefined) selection.value = [burnt];
  periodKind.value = 'heatwave';
}
