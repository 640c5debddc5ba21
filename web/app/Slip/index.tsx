import type { ComponentType } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { Lazy } from '../../common/Lazy.tsx';
import { cardNext, headline, nextThing } from '../../state/next.ts';
import { heat } from '../../state/results.ts';
import { aside, slipHeight, stage } from '../../state/view.ts';
import { CARDS } from '../cards.ts';
import { ErrorBoundary } from '../ErrorBoundary/index.tsx';
import { STAGE_NAMES } from '../stage-names.ts';
import { ClimateNote } from './ClimateNote.tsx';
import './style.css';

const HEIGHTS = ['line', 'half', 'full'] as const;

const ASIDES = {
  files: {
    name: 'Yard and files',
    load: (): Promise<ComponentType> => import('../later-stages.ts').then((part) => part.FilesCard),
  },
  settings: {
    name: 'Settings',
    load: (): Promise<ComponentType> => import('../first-stages.ts').then((part) => part.SettingsCard),
  },
  happened: {
    name: 'What happened in my yard?',
    load: (): Promise<ComponentType> => import('../first-stages.ts').then((part) => part.HappenedCard),
  },
  why: {
    name: 'Why did it burn?',
    load: (): Promise<ComponentType> => import('../first-stages.ts').then((part) => part.WhyCard),
  },
  survey: {
    name: 'How do I find this?',
    load: (): Promise<ComponentType> => import('../first-stages.ts').then((part) => part.SurveyCard),
  },
  sure: {
    name: 'How sure',
    load: (): Promise<ComponentType> => import('../later-stages.ts').then((part) => part.SureCard),
  },
  sheet: {
    name: 'Field sheet',
    load: (): Promise<ComponentType> => import('../later-stages.ts').then((part) => part.FieldSheetCard),
  },
} as const;

const loadGreeting = (): Promise<ComponentType> => import('../first-stages.ts').then((part) => part.Greeting);

/** The paper note beside the drawing: the one thing to do next, then the card of the stage. */
export function Slip() {
  const current = stage.value;
  const besides = aside.value;
  useEffect(() => {
    cardNext.value = null;
  }, [current]);
  // A card that stands in for a while takes the whole slip; when it goes, the drawing has its room and its tools again.
  const stoodIn = useRef(false);
  useEffect(() => {
    if (besides !== null) slipHeight.value = 'full';
    else if (stoodIn.current && slipHeight.value === 'full') slipHeight.value = 'half';
    stoodIn.current = besides !== null;
  }, [besides]);

  const card = CARDS[current];
  return (
    <section id="slip" class={`slip slip-${slipHeight.value}`} aria-label="Panel" tabIndex={-1}>
      <SlipGrip />
      <FirstLine />
      <div class="slip-card">
        <ClimateNote />
        {heat.value.shown && <Lazy load={loadGreeting} what="The greeting" />}
        {besides !== null ? (
          <>
            <div class="slip-head">
              <h1>{ASIDES[besides].name}</h1>
              <button type="button" onClick={() => (aside.value = null)}>
                Back to {STAGE_NAMES[current].full}
              </button>
            </div>
            <ErrorBoundary key={besides} what={ASIDES[besides].name}>
              <Lazy load={ASIDES[besides].load} what={ASIDES[besides].name} />
            </ErrorBoundary>
          </>
        ) : (
          <>
            <div class="slip-head">
              <h1 class="stage-name">{STAGE_NAMES[current].full}</h1>
            </div>
            <ErrorBoundary key={current} what={STAGE_NAMES[current].full}>
              {card ? <Lazy load={card.load} what={STAGE_NAMES[current].full} /> : <p>{STAGE_NAMES[current].about}</p>}
            </ErrorBoundary>
          </>
        )}
      </div>
    </section>
  );
}

/** On a phone: makes the slip taller and shorter, a tap each way. */
function SlipGrip() {
  const at = HEIGHTS.indexOf(slipHeight.value);
  return (
    <div class="slip-grip">
      <button
        type="button"
        disabled={at === 0}
        aria-label="Show less of the panel"
        onClick={() => (slipHeight.value = HEIGHTS[at - 1])}
      >
        ▾
      </button>
      <button
        type="button"
        disabled={at === 2}
        aria-label="Show more of the panel"
        onClick={() => (slipHeight.value = HEIGHTS[at + 1])}
      >
        ▴
      </button>
    </div>
  );
}

/** Over the card, also where it is folded away: what the stage answers; where it answers nothing, what to do next. */
function FirstLine() {
  if (headline.value !== null) return <p class="next-line headline">{headline.value}</p>;
  const next = nextThing.value;
  if (next === null) return <p class="next-line">{STAGE_NAMES[stage.value].about}</p>;
  return (
    <p class="next-line">
      <strong>Next:</strong>{' '}
      {next.run ? (
        <button type="button" onClick={next.run}>
          {next.text}
        </button>
      ) : (
        <span>{next.text}</span>
      )}
    </p>
  );
}
