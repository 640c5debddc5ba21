import type { Blocked, Colour, CrownShape, Feature, FeatureOf, PotColour } from '../../../../engine/index.ts';
import {
  CROWN_KINDS,
  colourOf,
  crownGuess,
  crownKindOf,
  crownShapeOf,
  heldAt,
  shadesOf,
} from '../../../../engine/index.ts';
import { CrownPicker } from '../../../map/controls/CrownPicker.tsx';
import { PlantPicker } from '../../../map/controls/PlantPicker.tsx';
import { calledOf, change } from '../../../map/drawing/feature-edits.ts';
import { plan, shownPlan } from '../../../state/yard.ts';
import { ChoiceBox } from '../boxes/ChoiceBox.tsx';
import { TextBox } from '../boxes/TextBox.tsx';
import { DropFields } from './DropFields.tsx';
import { LeaflessFields } from './LeaflessFields.tsx';
import { MOVES } from './move-words.ts';
import { OwnPlantRow } from './OwnPlantRow.tsx';
import { hasPlantsBefore } from './plants-before.ts';
import { ReadingFields } from './ReadingFields.tsx';
import { SpanFields } from './SpanFields.tsx';
import { SURFACES } from './surface-words.ts';

const CROWNS: Readonly<Record<CrownShape, string>> = { round: 'round', cone: 'pointed', column: 'a column' };
const POT_COLOURS: Readonly<Record<PotColour, string>> = {
  white: 'white',
  light: 'light',
  terracotta: 'terracotta',
  dark: 'dark',
  wrapped: 'wrapped in white',
};
const WALL_COLOURS: Readonly<Record<Colour, string>> = {
  white: 'white',
  light: 'light',
  mid: 'middling',
  dark: 'dark',
};
const BLOCKS: Readonly<Record<Blocked, string>> = { posts: 'No posts', pots: 'No pots', canopy: 'No cloth above' };

/** What is not a number: which plant, which shape, what may stand there, when the cloth hangs. */
export function KindFields({ feature }: { readonly feature: Feature }) {
  switch (feature.kind) {
    case 'wall':
    case 'building':
      return (
        <>
          {hasPlantsBefore(feature, shownPlan.value.features) && (
            <ChoiceBox
              label="Colour of its sides"
              value={colourOf(feature)}
              choices={WALL_COLOURS}
              onChange={(colour) => change(feature.id, `Say what colour ${calledOf(feature)} is`, { colour })}
            />
          )}
          <Flag feature={feature} flag="holdsCloth" words="Cloth may hang from it" />
        </>
      );
    case 'ground':
      return (
        <ChoiceBox
          label="What lies there"
          value={feature.surface}
          choices={SURFACES}
          onChange={(surface) => change(feature.id, `Say what lies on ${calledOf(feature)}`, { surface })}
        />
      );
    case 'tree':
      return <TreeFields tree={feature} />;
    case 'plant':
      return <PlantFields plant={feature} />;
    case 'bed':
      return (
        <>
          <WhichPlant feature={feature} />
          <Planted feature={feature} />
          <Shades feature={feature} />
        </>
      );
    case 'canopy':
      return (
        <>
          <DropFields canopy={feature} />
          <Flag feature={feature} flag="onWall" words="Its back hangs from a wall" />
          <SpanFields feature={feature} />
        </>
      );
    case 'screen':
      return <SpanFields feature={feature} />;
    case 'keepout':
      return <KeepoutFields keepout={feature} />;
    case 'reading':
      return <ReadingFields reading={feature} />;
    default:
      return null;
  }
}

type Growing = FeatureOf<'tree'> | FeatureOf<'plant'> | FeatureOf<'bed'>;

function WhichPlant({ feature }: { readonly feature: Growing }) {
  return (
    <>
      <PlantPicker
        value={feature.plant}
        onChange={(plant) => change(feature.id, `Say which plant ${calledOf(feature)} is`, { plant })}
      />
      <OwnPlantRow feature={feature} />
    </>
  );
}

function Planted({ feature }: { readonly feature: Growing }) {
  return (
    <TextBox
      label="Planted in"
      value={feature.planted ?? ''}
      placeholder="2024 or 2024-03-10"
      onChange={(planted) =>
        change(feature.id, `Say when ${calledOf(feature)} was planted`, {
          planted: planted === '' ? undefined : planted,
        })
      }
    />
  );
}

function Shades({ feature }: { readonly feature: FeatureOf<'plant'> | FeatureOf<'bed'> }) {
  return (
    <label class="tick">
      <input
        type="checkbox"
        checked={shadesOf(feature)}
        onChange={(event) =>
          change(feature.id, `Change ${calledOf(feature)}`, { shades: event.currentTarget.checked ? undefined : false })
        }
      />
      Shades what is beside it
    </label>
  );
}

function TreeFields({ tree }: { readonly tree: FeatureOf<'tree'> }) {
  function take(id: string | undefined): void {
    const kind = id === undefined ? undefined : crownKindOf(id);
    if (kind === undefined) return;
    const guess = crownGuess(kind, plan.value.site.latitude);
    change(tree.id, `Take the crown of ${kind.name} for ${calledOf(tree)}`, {
      ...guess,
      how: { ...tree.how, ...guess.how },
      // A name that came with another kind goes with it; one that a person gave stays.
      name: CROWN_KINDS.some(({ name }) => name === tree.name) ? kind.name : (tree.name ?? kind.name),
    });
  }
  return (
    <>
      <CrownPicker value={undefined} onChange={take} />
      <ChoiceBox
        label="Crown"
        value={crownShapeOf(tree)}
        choices={CROWNS}
        onChange={(shape) => change(tree.id, `Change ${calledOf(tree)}`, { shape })}
      />
      <LeaflessFields tree={tree} />
      <WhichPlant feature={tree} />
      <Planted feature={tree} />
    </>
  );
}

function PlantFields({ plant }: { readonly plant: FeatureOf<'plant'> }) {
  const label = `Change ${calledOf(plant)}`;
  return (
    <>
      <WhichPlant feature={plant} />
      <label class="tick">
        <input
          type="checkbox"
          checked={plant.container === true}
          onChange={(event) => change(plant.id, label, { container: event.currentTarget.checked || undefined })}
        />
        In a pot
      </label>
      {plant.container && (
        <>
          <ChoiceBox
            label="Pot"
            value={plant.pot?.colour}
            none="colour not said"
            choices={POT_COLOURS}
            onChange={(colour) => change(plant.id, label, { pot: { ...plant.pot, colour } })}
          />
          <ChoiceBox
            label="Can be moved"
            value={plant.move}
            none="not said"
            choices={MOVES}
            onChange={(move) => change(plant.id, label, { move })}
          />
        </>
      )}
      <Planted feature={plant} />
      <Shades feature={plant} />
    </>
  );
}

/** A yes or no of a thing. */
function Flag({
  feature,
  flag,
  words,
}: {
  readonly feature: FeatureOf<'wall' | 'building' | 'canopy'>;
  readonly flag: 'holdsCloth' | 'onWall';
  readonly words: string;
}) {
  return (
    <label class="tick">
      <input
        type="checkbox"
        checked={heldAt(feature, flag) === true}
        onChange={(event) =>
          change(feature.id, `Say of ${calledOf(feature)}: ${words}`, {
            [flag]: event.currentTarget.checked || undefined,
          })
        }
      />
      {words}
    </label>
  );
}

function KeepoutFields({ keepout }: { readonly keepout: FeatureOf<'keepout'> }) {
  return (
    <fieldset>
      <legend>What must stay out</legend>
      {(Object.keys(BLOCKS) as Blocked[]).map((what) => (
        <label key={what} class="tick">
          <input
            type="checkbox"
            checked={keepout.blocks.includes(what)}
            onChange={(event) =>
              change(keepout.id, `Change ${calledOf(keepout)}`, {
                blocks: event.currentTarget.checked
                  ? [...keepout.blocks, what]
                  : keepout.blocks.filter((each) => each !== what),
              })
            }
          />
          {BLOCKS[what]}
        </label>
      ))}
    </fieldset>
  );
}
