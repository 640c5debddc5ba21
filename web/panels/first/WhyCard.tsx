import '../parts/boxes/asked.css';
import { useEffect, useState } from 'preact/hooks';
import { latestDamage, shownName } from '../../../engine/index.ts';
import type { RivalId, Side, WhyResult } from '../../../engine/index.ts';
import { keptForYard } from '../../state/kept.ts';
import { guessesOf } from '../../state/next.ts';
import { aside, selection } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';
import { askEngine } from '../../state/ask.ts';
import { Choices } from '../parts/boxes/Field.tsx';
import { guessWords } from './guess-words.ts';
import { SIDE_CHOICES } from '../parts/side-choices.ts';

const ANSWER_WORDS: Readonly<Record<WhyResult['answer'], string>> = {
  explains: 'The sun explains it',
  'could be': 'It could be the sun',
  'does not': 'The sun does not explain it',
};

interface Said {
  readonly plant: string;
  readonly side: keyof typeof SIDE_CHOICES;
  readonly rivals: readonly RivalId[];
}

/** What was said of the plant asked about last. */
const said = keptForYard<Said>('why', { plant: '', side: 'unknown', rivals: [] });

/** Why a plant burnt: which sun did it, what else may have, and how sure that is. */
export function WhyCard() {
  const current = plan.value;
  const planted = current.features.filter(({ kind }) => kind === 'plant' || kind === 'tree' || kind === 'bed');
  const burnt =
    planted.find(({ id }) => selection.value.includes(id)) ??
    planted.find(({ id }) => latestDamage(current, id)) ??
    planted[0];
  const [result, setResult] = useState<WhyResult | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const id = burnt?.id;
  const mine = said.value.plant === id ? said.value : null;
  const side = mine?.side ?? sideKey(id === undefined ? undefined : latestDamage(current, id)?.side);
  const rivals = mine?.rivals ?? [];

  useEffect(() => {
    if (id === undefined) return undefined;
    const asking = new AbortController();
    void askEngine(
      'why',
      { plan: current, request: { plant: id, side: bearingOf(side), rivals } },
      { signal: asking.signal },
    ).then(
      (found) => {
        setResult(found.ok ? found.value : null);
        setFault(found.ok ? null : (found.problems[0]?.message ?? null));
      },
      () => {},
    );
    return () => asking.abort();
  }, [current, id, side, rivals.join()]);

  if (id === undefined) return <p>There is no plant on the plan yet. Draw the one that burnt first.</p>;
  const change = (next: { readonly side?: keyof typeof SIDE_CHOICES; readonly rivals?: readonly RivalId[] }): void => {
    said.value = { plant: id, side, rivals, ...next };
  };
  return (
    <div class="why-card">
      <p class="asked-field">
        <label for="why-plant">The plant that burnt</label>
        <select id="why-plant" value={id} onChange={(event) => (selection.value = [event.currentTarget.value])}>
          {planted.map((one) => (
            <option key={one.id} value={one.id}>
              {shownName(one.name ?? one.id)}
            </option>
          ))}
        </select>
      </p>
      {fault && (
        <p class="box-said fault" role="alert">
          {fault}
        </p>
      )}
      {result && (
        <section aria-label="Answer" class={`why-answer why-${result.answer.replace(' ', '-')}`} aria-live="polite">
          <h2>{ANSWER_WORDS[result.answer]}</h2>
          <p>{result.sentence}</p>
          {result.notes.map((note) => (
            <p key={note} class="quiet">
              {note}
            </p>
          ))}
        </section>
      )}
      <HowSure />
      <Choices
        legend="Side that burnt"
        name="why-side"
        value={side}
        choices={SIDE_CHOICES}
        class="choices-rose"
        onChange={(next) => change({ side: next })}
      />
      {result && (
        <fieldset class="asked-choices">
          <legend>What else could it have been?</legend>
          {result.rivals.map((rival) => (
            <label key={rival.id} class="choice">
              <input
                type="checkbox"
                checked={rival.noted !== null || rivals.includes(rival.id)}
                disabled={rival.noted !== null}
                onChange={(event) =>
                  change({
                    rivals: event.currentTarget.checked
                      ? [...rivals, rival.id]
                      : rivals.filter((other) => other !== rival.id),
                  })
                }
              />
              {rival.question}
              {rival.noted ? ` ${rival.noted}` : ''}
            </label>
          ))}
          <p class="quiet">Each yes makes the answer one step less sure.</p>
        </fieldset>
      )}
    </div>
  );
}

function HowSure() {
  const guesses = guessesOf(plan.value);
  if (guesses.length === 0) return <p>How sure: every number of the plan is measured.</p>;
  const rough = plan.value.climate.from === 'rough' ? 'rough climate, ' : '';
  return (
    <section aria-label="How sure">
      <p>
        How sure: rough, {rough}
        {guesses.length} {guesses.length === 1 ? 'guess' : 'guesses'}:{' '}
        <button type="button" class="in-words" onClick={() => (aside.value = 'sure')}>
          what hangs on them?
        </button>
      </p>
      <ul class="guess-list">
        {guesses.map(({ feature, key }) => (
          <li key={`${feature?.id}/${key}`}>{guessWords(feature, key)}</li>
        ))}
      </ul>
    </section>
  );
}

function sideKey(side: Side | undefined): keyof typeof SIDE_CHOICES {
  if (side === 'top' || side === 'all') return side;
  return typeof side === 'number'
    ? (['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'] as const)[Math.round(side / 45) % 8]
    : 'unknown';
}

const BEARINGS: Readonly<Record<string, number>> = { N: 0, NE: 45, E: 90, SE: 135, S: 180, SW: 225, W: 270, NW: 315 };

function bearingOf(side: keyof typeof SIDE_CHOICES): Side {
  return BEARINGS[side] ?? (side as Side);
}
