import './style.css';
import { useSignal, useSignalEffect } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { FeatureOf } from '../../../engine/index.ts';
import { cautionsFor } from '../../../engine/index.ts';
import { calledOf } from '../../map/feature-edits.ts';
import { numberedMarks } from '../../map/overlays.ts';
import { isStale } from '../../state/live.ts';
import { heat } from '../../state/results.ts';
import { shownOptions, stage } from '../../state/view.ts';
import { BarredGround } from './BarredGround.tsx';
import { choosePot, places, pot, pots } from './placed.ts';
import { Spot } from './Spot.tsx';

/** Where a pot stands best, summer and winter, with staying among the places. */
export function PlaceCard() {
  useEffect(() => () => {
    numberedMarks.value = [];
    if (stage.peek() !== 'try') shownOptions.value = [];
  }, []);
  const chosen = pot.value;
  if (chosen === null) return <p>There is no pot on the plan. Draw one with the Pot tool, or tick “In a pot” in a plant’s numbers.</p>;
  return (
    <div class="place-card">
      <label class="which-pot">
        Which pot?{' '}
        <select value={chosen.id} onChange={(event) => choosePot(event.currentTarget.value)}>
          {pots.value.map((each) => <option key={each.id} value={each.id}>{calledOf(each)}</option>)}
        </select>
      </label>
      <Now pot={chosen} />
      <Places pot={chosen} />
      <BarredGround />
      <details class="cautions">
        <summary>Before it is carried</summary>
        <ul>
          <li>A pot of 0.5 m holds over 60 kg when wet. Let it dry a little, take a trolley or a second person, lift with the knees, and keep out of the midday heat.</li>
          {cautionsFor(['heat']).map(({ id, text }) => <li key={id}>{text}</li>)}
        </ul>
      </details>
    </div>
  );
}

/** The pot as it stands, also while it is dragged. */
function Now({ pot: { id } }: { readonly pot: FeatureOf<'plant'> }) {
  const plant = heat.value.shown?.value.plants.find((each) => each.id === id);
  return plant ? <p class="pot-now" aria-busy={isStale(heat.value)}>{isStale(heat.value) && '~ '}{plant.sentence}</p> : null;
}

function Places({ pot: chosen }: { readonly pot: FeatureOf<'plant'> }) {
  const open = useSignal(1);
  useSignalEffect(() => {
    const result = places.value.shown?.value;
    const spots = result && result.plant === pot.value?.id ? result.spots : [];
    numberedMarks.value = spots.map(({ at, rank, stay, sentence }) => ({ at, label: String(rank), title: `${rank}${stay ? ', where it stands' : ''}: ${sentence}`, chosen: rank === open.value }));
  });
  const { shown, working, problems } = places.value;
  const result = shown?.value.plant === chosen.id ? shown.value : null;
  if (problems.length > 0) return <>{problems.map(({ message }) => <p key={message} class="said problem" role="alert">{message}</p>)}</>;
  if (!result) return working ? <p class="quiet" role="status">Trying every place on the ground…</p> : null;
  return (
    <section aria-label="Best places" aria-busy={working !== null}>
      <h2>Best places</h2>
      <ol class="pot-spots">
        {result.spots.map((spot) => <Spot key={spot.rank} pot={chosen} spot={spot} chosen={open.value === spot.rank} onChoose={() => (open.value = open.value === spot.rank ? 0 : spot.rank)} />)}
      </ol>
      {result.notes.map((note) => <p key={note} class="said">{note}</p>)}
      {result.winterBest && <p class="winter-best">In winter ({result.winterDay}) another place has most sun: {result.winterBest.sunHours.toFixed(1)} h at {result.winterBest.at[0].toFixed(1)} m across, {result.winterBest.at[1].toFixed(1)} m up.</p>}
      {result.swaps.length > 0 && (
        <>
          <h3>Or let two pots change places</h3>
          <ul>{result.swaps.map(({ with: other, sentence }) => <li key={other}>{sentence}</li>)}</ul>
        </>
      )}
    </section>
  );
}
