import type { ComponentChildren } from 'preact';
import { setSite } from '../../../engine/index.ts';
import type { Site } from '../../../engine/index.ts';
import { commitEdit } from '../../state/edit.ts';
import { plan } from '../../state/yard.ts';
import { ChoiceBox } from '../parts/boxes/ChoiceBox.tsx';
import { Choices } from '../parts/boxes/Field.tsx';
import { SURFACES } from '../parts/feature/surface-words.ts';
import { NorthBox } from '../parts/NorthBox.tsx';

type Shelter = NonNullable<Site['shelter']>;
const UNSAID = 'unsaid';

/** The yard from the side, what keeps the wind off it, and the wind. */
const SHELTERS: Readonly<Record<Shelter | typeof UNSAID, ComponentChildren>> = {
  open: (
    <>
      <SidePicture walls="" wind="M4 6H58M4 12H58" />
      open: wind comes from most sides
    </>
  ),
  sheltered: (
    <>
      <SidePicture walls="M14 22V8M18 22V8" wind="M4 5Q22 1 34 5T62 9" />
      sheltered: walls, hedges or houses on some sides
    </>
  ),
  court: (
    <>
      <SidePicture walls="M14 22V6M18 22V6M48 22V6M52 22V6" wind="M4 3H62" />a court: closed on nearly all sides
    </>
  ),
  [UNSAID]: 'not said: taken from what is drawn',
};

/** What holds for the whole yard and has no place on the drawing: how the wind reaches it, what lies on its ground. */
export function YardFields() {
  const { shelter, surface } = plan.value.site;
  const say = (label: string, changes: Partial<Site>): void => {
    commitEdit(label, setSite(plan.value, changes));
  };
  return (
    <section class="yard-fields" aria-label="The whole yard">
      <h2>The whole yard</h2>
      <NorthBox />
      <Choices
        legend="How far does the wind reach the plants?"
        name="shelter"
        class="choices-shapes"
        value={shelter ?? UNSAID}
        choices={SHELTERS}
        onChange={(word) => say('Say how sheltered the yard is', { shelter: word === UNSAID ? undefined : word })}
      />
      <ChoiceBox
        label="What lies on most of the ground"
        value={surface}
        none="not said"
        choices={SURFACES}
        onChange={(word) => say('Say what lies on the ground', { surface: word })}
      />
    </section>
  );
}

function SidePicture({ walls, wind }: { readonly walls: string; readonly wind: string }) {
  return (
    <svg class="shape-picture" viewBox="0 0 66 26" width="66" height="26" aria-hidden="true" fill="none">
      <path d="M2 22H64M33 22V15" stroke="currentColor" />
      <circle cx="33" cy="13" r="3" stroke="currentColor" />
      <path d={walls} stroke="currentColor" stroke-width="2" />
      <path d={wind} stroke="currentColor" stroke-dasharray="4 2" />
    </svg>
  );
}
