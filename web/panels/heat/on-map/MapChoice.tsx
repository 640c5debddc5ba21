import { useState } from 'preact/hooks';
import { formatLength, nameOf, parseLength, QUANTITIES } from '../../../../engine/index.ts';
import type { PlantLoad, Quantity } from '../../../../engine/index.ts';
import { wantedCell } from '../../../state/results.ts';
import { mapBlocks, mapCell, mapHeight, quantity } from '../../../state/view.ts';
import { plan, units } from '../../../state/yard.ts';
import { heightChoices, QUANTITY_WORDS } from '../../parts/quantity-words.ts';
import { Legend } from './Legend.tsx';

/** Tallest height a map is reckoned at. [m] */
const HIGHEST = 20;

/** What the map paints, how high above the ground, and how fine; with its legend. */
export function MapChoice({ plants }: { readonly plants: readonly PlantLoad[] }) {
  const choices = heightChoices(plants, units.value, (id) => nameOf(plan.value, id));
  const at = choices.findIndex(({ height }) => height === mapHeight.value);
  const height = formatLength(mapHeight.value, units.value);
  return (
    <section class="map-choice" aria-label="What the map shows">
      <div class="map-choice-fields">
        <label>
          The map shows
          <select
            value={quantity.value}
            onChange={({ currentTarget }) => (quantity.value = currentTarget.value as Quantity)}
          >
            {QUANTITIES.map((name) => (
              <option key={name} value={name}>
                {QUANTITY_WORDS[name].name}
              </option>
            ))}
          </select>
        </label>
        <label>
          at the height of
          <select
            value={String(at)}
            onChange={({ currentTarget }) =>
              (mapHeight.value = choices[Number(currentTarget.value)]?.height ?? mapHeight.value)
            }
          >
            {at < 0 && <option value="-1">{height}</option>}
            {choices.map(({ words }, index) => (
              <option key={words} value={String(index)}>
                {words}
              </option>
            ))}
          </select>
        </label>
        <label>
          or typed
          <HeightBox />
        </label>
        <label>
          Cells
          <select
            value={String(wantedCell.value)}
            onChange={({ currentTarget }) => (mapCell.value = currentTarget.value === '0.1' ? 0.1 : 0.25)}
          >
            <option value="0.25">{formatLength(0.25, units.value)}, quick</option>
            <option value="0.1">{formatLength(0.1, units.value)}, fine</option>
          </select>
        </label>
        <BlocksChoice />
      </div>
      <Legend quantity={quantity.value} />
    </section>
  );
}

function BlocksChoice() {
  return (
    <label class="hatch-choice">
      <input
        type="checkbox"
        checked={mapBlocks.value}
        onChange={({ currentTarget }) => (mapBlocks.value = currentTarget.checked)}
      />
      Show cells as blocks
    </label>
  );
}

/** Keeps what is being typed while the card around it changes; what is not a height is put back as it was. */
function HeightBox() {
  const [typed, setTyped] = useState<string | null>(null);

  function take(text: string): void {
    const height = parseLength(text, units.value);
    if (height !== null && height >= 0 && height <= HIGHEST) mapHeight.value = height;
    setTyped(null);
  }

  return (
    <input
      type="text"
      inputMode="decimal"
      size={6}
      value={typed ?? formatLength(mapHeight.value, units.value)}
      onInput={({ currentTarget }) => setTyped(currentTarget.value)}
      onChange={({ currentTarget }) => take(currentTarget.value)}
    />
  );
}
