import '../parts/advice-card.css';
import './style.css';
import { useSignalEffect } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { FeatureOf } from '../../../engine/index.ts';
import { cautionsFor, placeHeadline } from '../../../engine/index.ts';
import { calledOf, change } from '../../map/drawing/feature-edits.ts';
import { numberedMarks } from '../../map/laid-on/overlays.ts';
import { cardNext } from '../../state/next.ts';
import { goToStage, selection } from '../../state/view.ts';
import { plan, units } from '../../state/yard.ts';
import { Fold } from '../parts/answer/Fold.tsx';
import { StageAnswer } from '../parts/answer/StageAnswer.tsx';
import { ChoiceBox } from '../parts/boxes/ChoiceBox.tsx';
import { MOVES } from '../parts/feature/move-words.ts';
import { keepOpenOption } from '../parts/tried.ts';
import { BarredGround } from './BarredGround.tsx';
import { HardeningDates } from './HardeningDates.tsx';
import { Now } from './Now.tsx';
import { justMoved } from './place-edits.ts';
import { choosePot, places, pot, pots } from './placed.ts';
import { Places } from './Places.tsx';
import { elsewhere } from './there.ts';

/** Where a pot stands best, summer and winter, with staying among the places. */
export function PlaceCard() {
  useEffect(() => {
    // In the hand from the start, so that it can be dragged at once.
    if (pot.peek() && selection.peek().length === 0) selection.value = [pot.peek()!.id];
    return () => {
      numberedMarks.value = [];
      justMoved.value = null;
    };
  }, []);
  useEffect(keepOpenOption, []);
  useSignalEffect(sayNext);
  const chosen = pot.value;
  if (chosen === null)
    return (
      <div class="advice-card place-card">
        <StageAnswer
          says="No pot is drawn yet, so there is none to move."
          act={{ text: 'Draw a pot', run: () => goToStage('draw') }}
        />
        <p class="quiet">Take the Pot tool, or tick “In a pot” in a plant’s numbers.</p>
      </div>
    );
  const moved = justMoved.value?.pot === chosen.id ? justMoved.value : null;
  return (
    <div class="advice-card place-card">
      <StageAnswer says={says(chosen.id)} act={null}>
        {pots.value.length > 1 && (
          <ChoiceBox
            label="Which pot?"
            value={chosen.id}
            choices={Object.fromEntries(pots.value.map((each) => [each.id, calledOf(each)]))}
            onChange={(id) => id !== undefined && choosePot(id)}
          />
        )}
        <Now key={chosen.id} pot={chosen} />
        {moved && (
          <HardeningDates
            hardening={moved.hardening}
            from={moved.date}
            title="It stands in more sun now: get it used to it"
          />
        )}
        <Places pot={chosen} />
      </StageAnswer>
      <BarredGround />
      <BeforeCarrying pot={chosen} />
    </div>
  );
}

function says(chosen: string): string | null {
  const { shown, working } = places.value;
  if (shown?.value.plant === chosen) return placeHeadline(plan.value, shown.value, units.value);
  return working && 'Where it would stand better is being worked out.';
}

function sayNext(): void {
  const name = pot.value && calledOf(pot.value);
  cardNext.value =
    name === null
      ? null
      : elsewhere.value
        ? { text: `Carry ${name} there, then say so.` }
        : { text: `Drag ${name} about, or take place 1.` };
}

function BeforeCarrying({ pot: chosen }: { readonly pot: FeatureOf<'plant'> }) {
  return (
    <Fold title="Before carrying">
      <Weight pot={chosen} />
      <ul>
        <li>A wet pot of 0.5 m (20 in) weighs over 60 kg (130 lb): two people. Let it dry; lift with the knees.</li>
        {cautionsFor(['heat']).map(({ id, text }) => (
          <li key={id}>{text}</li>
        ))}
      </ul>
    </Fold>
  );
}

/** Who can move it: nothing else rules a place out for its weight. */
function Weight({ pot }: { readonly pot: FeatureOf<'plant'> }) {
  return (
    <ChoiceBox
      label="Can it be moved?"
      value={pot.move}
      none="not said"
      choices={MOVES}
      onChange={(move) => change(pot.id, `Say how ${calledOf(pot)} can be moved`, { move })}
    />
  );
}
