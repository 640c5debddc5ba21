import { METRES_PER_FOOT, formatCut, packWords, parseNumber } from '../../../engine/index.ts';
import type { BuildSheet, CostItem } from '../../../engine/index.ts';
import { units } from '../../state/yard.ts';
import { Fold } from '../parts/answer/Fold.tsx';
import { TextBox } from '../parts/boxes/TextBox.tsx';
import { keepText, keptText } from '../parts/kept-stock.ts';
import { MindAt } from './Cautions.tsx';
import { keptPrefix } from './chosen.ts';
import { changeStock, hasPriceBox, setPrice } from './stock-edits.ts';

/** The shopping list by aisle: ticks stay on this machine, prices stay in the plan. */
export function Shopping({ sheet }: { readonly sheet: BuildSheet }) {
  const { items, total, currency, note } = sheet.cost;
  const aisles = [...new Set(items.map(({ aisle }) => aisle))];
  return (
    <>
      <p aria-live="polite">
        {inHand(items)} of {items.length} lines in hand.
      </p>
      <MindAt sheet={sheet} work="Shopping list" />
      {aisles.map((aisle) => (
        <Aisle
          key={aisle}
          name={aisle}
          items={items.filter((item) => item.aisle === aisle)}
          first={aisle === items[0].aisle}
        />
      ))}
      <Fold title={total === null ? 'No total yet' : `In all ${total.toFixed(2)} ${currency}`}>
        <p>{note}</p>
        <TextBox
          label="Prices are in"
          value={currency}
          onChange={(text) =>
            changeStock('Change the currency', { currency: text === '' ? undefined : text.toUpperCase() })
          }
        />
      </Fold>
    </>
  );
}

interface AisleProps {
  readonly name: string;
  readonly items: readonly CostItem[];
  readonly first: boolean;
}

function Aisle({ name, items, first }: AisleProps) {
  return (
    <Fold title={`${name}: ${inHand(items)} of ${items.length}`} open={first}>
      <ul class="shopping">
        {items.map((item) => (
          <Line key={item.id} item={item} />
        ))}
      </ul>
    </Fold>
  );
}

function Line({ item }: { readonly item: CostItem }) {
  const key = tickKey(item.id);
  const name = `${item.name}${item.of === 'tube' ? `, ${formatCut(item.length, units.value)}` : ''}`;
  return (
    <li>
      <label class="tick">
        <input
          type="checkbox"
          checked={keptText(key) !== ''}
          onChange={(event) => keepText(key, event.currentTarget.checked ? 'in hand' : '')}
        />
        <span>
          <strong>{countOf(item)}</strong> {name}
          {item.pack > 1 && <span class="quiet"> ({packWords(item)})</span>}
        </span>
      </label>
      <PriceBox item={item} name={name} />
    </li>
  );
}

function PriceBox({ item, name }: { readonly item: CostItem; readonly name: string }) {
  if (!hasPriceBox(item)) return <span class="price">{item.price?.toFixed(2) ?? 'no price'}</span>;
  const inFeet = item.unit === 'm²' && units.value === 'imperial' ? METRES_PER_FOOT ** 2 : 1;
  function take(text: string): string | null {
    const price = parseNumber(text);
    return price === null || price < 0 || price > 1e6
      ? `"${text}" is not a price such as 12.50.`
      : setPrice(item, price / inFeet);
  }
  return (
    <span class={`price ${item.priceFrom}`}>
      <TextBox
        label={`Price of ${name}`}
        value={item.price === null ? '' : (item.price * inFeet).toFixed(inFeet === 1 ? 2 : 3)}
        placeholder="price"
        onChange={take}
      />
      <span class="quiet">
        a {item.unit === 'm²' && inFeet !== 1 ? 'ft²' : item.unit}
        {item.priceFrom === 'example' ? ', example' : ''}
      </span>
    </span>
  );
}

function countOf({ count, unit }: CostItem): string {
  if (unit !== 'm²') return `${count} ×`;
  return units.value === 'metric' ? `${count} m²` : `${(count / METRES_PER_FOOT ** 2).toFixed(0)} ft²`;
}

function inHand(items: readonly CostItem[]): number {
  return items.filter(({ id }) => keptText(tickKey(id)) !== '').length;
}

function tickKey(id: string): string {
  return `${keptPrefix.value}have/${id}`;
}
