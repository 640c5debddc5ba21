import { useEffect, useRef } from 'preact/hooks';
import { formatShare } from '../../../engine/index.ts';
import { calledOf } from '../../map/drawing/feature-edits.ts';
import { searching } from '../../state/next.ts';
import { plan, units } from '../../state/yard.ts';
import { FoundOptions } from './FoundOptions.tsx';
import { Limits } from './Limits.tsx';
import { foundMarks } from './marked.ts';
import {
  EVERYONE,
  cancelSearch,
  findTheBest,
  found,
  growing,
  largestSizes,
  lookAhead,
  searchProblem,
  wish,
} from './search.ts';
import type { Wish } from './search.ts';
import { Word } from './Word.tsx';

const KINDS = {
  any: 'A roof or a screen',
  roof: 'A roof',
  'roof with drops': 'A roof with drops',
  screen: 'A screen',
} as const;
const CLOTHS = {
  any: 'of any density',
  0.3: 'that stops 30 %',
  0.5: 'that stops 50 %',
  0.6: 'that stops 60 %',
  0.7: 'that stops 70 %',
} as const;
const COUNTS = { 1: 'one thing', 2: 'two things together' } as const;

/** What to look for, in one sentence whose words can be changed; the search; what it found. */
export function FindBest() {
  const form = useRef<HTMLElement>(null);
  useEffect(() => {
    form.current?.scrollIntoView({ block: 'nearest' });
    form.current?.querySelector('select')?.focus({ preventScroll: true });
    const stopLooking = lookAhead();
    return () => {
      stopLooking();
      foundMarks.value = [];
    };
  }, []);
  const now = wish.value;
  const change = (part: Partial<Wish>): void => {
    wish.value = { ...now, ...part };
  };
  const working = searching.value;
  const isWorking = working !== null;
  const searched = useRef(false);
  useEffect(() => {
    // What was found stands under the form, where nobody would look for it on a phone.
    const list = form.current?.querySelector<HTMLElement>('.found');
    if (searched.current && !isWorking && list) {
      list.scrollIntoView({ block: 'start' });
      list.focus({ preventScroll: true });
    }
    searched.current = isWorking;
  }, [isWorking]);
  return (
    <section ref={form} class="find-best" aria-label="Find the best">
      <h2>Find the best</h2>
      <WishSentence wish={now} onChange={change} />
      <Limits />
      <ForWhom chosen={now.plants} onChange={(plants) => change({ plants })} />
      {working ? (
        <div class="searching" role="status">
          <progress value={working.done} aria-label="The search" />{' '}
          <span>
            {formatShare(working.done)} {working.what}
          </span>{' '}
          <button type="button" onClick={cancelSearch}>
            Cancel
          </button>
        </div>
      ) : (
        <button type="button" class="main" onClick={() => void findTheBest()}>
          Find it
        </button>
      )}
      {searchProblem.value && (
        <p class="said problem" role="alert">
          {searchProblem.value}
        </p>
      )}
      {found.value && <FoundOptions found={found.value} />}
    </section>
  );
}

interface WishProps {
  readonly wish: Wish;
  readonly onChange: (part: Partial<Wish>) => void;
}

function WishSentence({ wish: now, onChange }: WishProps) {
  return (
    <p class="wish">
      <Word
        label="What to put up"
        value={now.kind}
        choices={KINDS}
        onChange={(kind) => onChange({ kind: kind as Wish['kind'] })}
      />{' '}
      up to{' '}
      <Word
        label="Largest size"
        value={now.upTo}
        choices={largestSizes(units.value)}
        onChange={(size) => onChange({ upTo: size as Wish['upTo'] })}
      />
      , <HideFrom wish={now} onChange={(hideFrom) => onChange({ hideFrom })} />, cloth{' '}
      <Word
        label="Cloth"
        value={String(now.density)}
        choices={CLOTHS}
        onChange={(density) => onChange({ density: density === 'any' ? 'any' : Number(density) })}
      />
      ,{' '}
      <Word
        label="How many"
        value={String(now.count)}
        choices={COUNTS}
        onChange={(count) => onChange({ count: Number(count) as Wish['count'] })}
      />
      .
    </p>
  );
}

/**
 * Whose sight it must be out of, among those drawn on the plan. Keys cannot be ids: these carry a mark of their own.
 */
function HideFrom({
  wish: { hideFrom },
  onChange,
}: {
  readonly wish: Wish;
  readonly onChange: (whom: Wish['hideFrom']) => void;
}) {
  const eyes = plan.value.features.filter(({ kind }) => kind === 'eye');
  if (eyes.length === 0) return <>seen or not</>;
  const choices = {
    '': 'seen or not',
    ...Object.fromEntries(eyes.map((eye) => [`eye:${eye.id}`, `hidden from: ${calledOf(eye)}`])),
    ...(eyes.length > 1 && { all: 'hidden from every onlooker' }),
  };
  const value =
    hideFrom === EVERYONE
      ? 'all'
      : hideFrom !== null && eyes.some(({ id }) => id === hideFrom)
        ? `eye:${hideFrom}`
        : '';
  return (
    <Word
      label="Hidden from"
      value={value}
      choices={choices}
      onChange={(key) => onChange(key === 'all' ? EVERYONE : key.slice(4) || null)}
    />
  );
}

function ForWhom({
  chosen,
  onChange,
}: {
  readonly chosen: readonly string[] | null;
  readonly onChange: (ids: readonly string[] | null) => void;
}) {
  const plants = growing(plan.value);
  const all = plants.map(({ id }) => id);
  const counts = new Set(chosen ?? all);
  const words =
    chosen === null
      ? 'every plant'
      : plants
          .filter(({ id }) => counts.has(id))
          .map(calledOf)
          .join(', ') || 'no plant';
  return (
    <details class="for-whom">
      <summary>
        <span>
          For <strong>{words}</strong>
        </span>
      </summary>
      <fieldset>
        <legend class="unseen">For which plants</legend>
        {plants.map((feature) => (
          <label key={feature.id} class="tick">
            <input
              type="checkbox"
              checked={counts.has(feature.id)}
              onChange={(event) => {
                const next = all.filter((id) => (id === feature.id ? event.currentTarget.checked : counts.has(id)));
                onChange(next.length === all.length ? null : next);
              }}
            />
            {calledOf(feature)}
          </label>
        ))}
      </fieldset>
    </details>
  );
}
