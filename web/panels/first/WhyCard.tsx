import '../parts/boxes/asked.css';
import { changeJournalEntry, latestDamage, shownName } from '../../../engine/index.ts';
import type { RivalId, WhyResult } from '../../../engine/index.ts';
import { Fault } from '../../common/Fault.tsx';
import { bareSite } from '../../state/bare-site.ts';
import { commitEdit } from '../../state/edit.ts';
import { keptForYard } from '../../state/kept.ts';
import { guessesOf } from '../../state/next.ts';
import { aside, selection } from '../../state/view.ts';
import { plan, units } from '../../state/yard.ts';
import { Choices } from '../parts/boxes/Field.tsx';
import { SIDE_CHOICES, sideKey, sideOfKey } from '../parts/side-choices.ts';
import { useAnswer } from '../parts/use-answer.ts';
import { guessWords } from './guess-words.ts';

interface Said {
  readonly plant: string;
  /** While the diary knows of no damage; else it stands there. */
  readonly side: keyof typeof SIDE_CHOICES;
  readonly rivals: readonly RivalId[];
}

/** What was said of the plant asked about last. */
const said = keptForYard<Said>('why', { plant: '', side: 'unknown', rivals: [] });

/** Why a plant burnt: which sun did it, what else may have, and how sure that is. */
export function WhyCard() {
  const planted = plan.value.features.filter(({ kind }) => kind === 'plant' || kind === 'tree' || kind === 'bed');
  const burnt =
    planted.find(({ id }) => selection.value.includes(id)) ??
    planted.find(({ id }) => latestDamage(plan.value, id)) ??
    planted[0];
  if (burnt === undefined) return <p>There is no plant on the plan yet. Draw the one that burnt first.</p>;
  return (
    <div class="why-card">
      <p class="asked-field">
        <label for="why-plant">The plant that burnt</label>
        <select id="why-plant" value={burnt.id} onChange={(event) => (selection.value = [event.currentTarget.value])}>
          {planted.map((one) => (
            <option key={one.id} value={one.id}>
              {shownName(one.name ?? one.id)}
            </option>
          ))}
        </select>
      </p>
      <WhyItBurnt id={burnt.id} />
    </div>
  );
}

function WhyItBurnt({ id }: { readonly id: string }) {
  const mine = said.value.plant === id ? said.value : null;
  const noted = latestDamage(plan.value, id);
  const side = noted ? sideKey(noted.side) : (mine?.side ?? 'unknown');
  const rivals = mine?.rivals ?? [];
  const { value: result, fault } = useAnswer('why', {
    plan: { ...plan.value, site: bareSite(plan.value.site) },
    request: { plant: id, side: sideOfKey(side), rivals },
  });
  const change = (next: Partial<Said>): void => {
    said.value = { plant: id, side, rivals, ...next };
  };
  const burntOn = (next: Said['side']): void => {
    if (noted) commitEdit('Say which side burnt', changeJournalEntry(plan.value, noted, { side: sideOfKey(next) }));
    else change({ side: next });
  };
  return (
    <>
      <Fault>{fault}</Fault>
      {result && (
        <section aria-label="Answer" class={`why-answer why-${result.answer.replace(' ', '-')}`} aria-live="polite">
          <h2>{result.verdict}</h2>
          <p>{result.evidence}</p>
          {result.notes.map((note) => (
            <p key={note} class="quiet">
              {note}
            </p>
          ))}
          <NextStep key={`${id} ${result.answer}`} plant={id} answer={result.answer} />
        </section>
      )}
      <HowSure />
      <Choices
        legend="Side that burnt"
        name="why-side"
        value={side}
        choices={SIDE_CHOICES}
        class="choices-rose"
        onChange={burntOn}
      />
      {result && <Rivals asked={result.rivals} said={rivals} onChange={(next) => change({ rivals: next })} />}
    </>
  );
}

/** What to do first about it; to find it every place for a pot is tried. */
function NextStep(why: Pick<WhyResult, 'plant' | 'answer'>) {
  const { value, fault } = useAnswer('nextStep', {
    plan: { ...plan.value, site: bareSite(plan.value.site) },
    why,
    units: units.value,
  });
  if (fault !== null) return <Fault>{fault}</Fault>;
  return <p class="why-next">{value === null ? 'What to do first is being worked out…' : `Next: ${value.sentence}`}</p>;
}

interface RivalsProps {
  readonly asked: WhyResult['rivals'];
  readonly said: readonly RivalId[];
  readonly onChange: (said: readonly RivalId[]) => void;
}

function Rivals({ asked, said: yes, onChange }: RivalsProps) {
  return (
    <fieldset class="asked-choices">
      <legend>What else could it have been?</legend>
      {asked.map(({ id, question, noted }) => (
        <label key={id} class="choice">
          <input
            type="checkbox"
            checked={noted !== null || yes.includes(id)}
            disabled={noted !== null}
            onChange={(event) =>
              onChange(event.currentTarget.checked ? [...yes, id] : yes.filter((other) => other !== id))
            }
          />
          {question}
          {noted ? ` ${noted}` : ''}
        </label>
      ))}
      <p class="quiet">Each yes makes the answer one step less sure.</p>
    </fieldset>
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
