import { AimedField } from '../../parts/AimedField.tsx';
import { Choices } from '../../parts/boxes/Field.tsx';
import { SIDE_CHOICES } from '../../parts/side-choices.ts';
import { answer, answers } from '../answers.ts';
import { NORTH_WAYS, SHEET_WAYS } from '../north-of.ts';

/** Without what only a side of a plant can be. */
const FACING = (({ NW, N, NE, W, E, SW, S, SE }) => ({ NW, N, NE, W, E, SW, S, SE }))(SIDE_CHOICES);

export function NorthQuestion() {
  const { northBy, facing, shadowTo, heading } = answers.value;
  return (
    <>
      <Choices
        legend="How can you tell?"
        name="north-by"
        value={northBy}
        choices={NORTH_WAYS}
        onChange={(next) => answer({ northBy: next, shadowAtMs: Date.now() })}
      />
      {northBy === 'unknown' && <p class="quiet">Until you find out, an answer about one side is only “could be”.</p>}
      {northBy === 'facing' && (
        <Choices
          legend="Stand at the bottom of the sheet and look to its top. You look"
          name="facing"
          value={facing}
          choices={FACING}
          class="choices-rose"
          onChange={(next) => answer({ facing: next })}
        />
      )}
      {northBy === 'shadow' && (
        <Choices
          legend="On the sheet, your shadow now falls"
          name="shadow-to"
          value={shadowTo}
          choices={SHEET_WAYS}
          class="choices-rose"
          onChange={(next) => answer({ shadowTo: next, shadowAtMs: Date.now() })}
        />
      )}
      {northBy === 'phone' && <CompassField heading={heading} />}
    </>
  );
}

function CompassField({ heading }: { readonly heading: string }) {
  return (
    <AimedField
      label="It reads, towards the top of the sheet"
      value={heading}
      usual="0 to 360°"
      hint="Two metres from cars, steel and reinforced walls."
      angle="bearing"
      aim="Lay the phone flat, its top to the top of the sheet, then tap here"
      onInput={(text) => answer({ heading: text })}
    />
  );
}
