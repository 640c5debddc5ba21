import { useId, useState } from 'preact/hooks';
import { CATALOGUE, PLANT_SOURCES, formatHeatLimit, plantRowOf, capital } from '../../../engine/index.ts';
import type { PlantRow, Units } from '../../../engine/index.ts';
import { plan, units } from '../../state/yard.ts';

/** Rows shown for a search. */
const MOST_SHOWN = 6;

interface Props {
  /** Id of the chosen row. */
  readonly value: string | undefined;
  readonly onChange: (rowId: string | undefined) => void;
}

/**
 * Which plant grows there: searched by name, each row with the temperature that harms it and where that number is from.
 */
export function PlantPicker({ value, onChange }: Props) {
  const id = useId();
  const [search, setSearch] = useState<string | null>(null);
  const chosen = value === undefined ? undefined : plantRowOf(plan.value, value);
  const found = search === null ? [] : rowsFor(search, plan.value.plants ?? []);

  function choose(rowId: string | undefined): void {
    setSearch(null);
    onChange(rowId);
  }

  return (
    <div class="plant-picker">
      <label for={id}>Which plant</label>
      <input
        id={id}
        type="text"
        autocomplete="off"
        enterkeyhint="search"
        placeholder="Search: lemon, tomato, …"
        value={search ?? chosen?.name ?? value ?? ''}
        aria-describedby={`${id}-limit`}
        onFocus={(event) => event.currentTarget.select()}
        onInput={(event) => setSearch(event.currentTarget.value)}
        onKeyDown={(event) => {
          if (event.key === 'Enter' && search !== null) {
            event.preventDefault();
            if (search.trim() === '') choose(undefined);
            else if (found.length > 0) choose(found[0].id);
          } else if (event.key === 'Escape' && search !== null) {
            event.stopPropagation();
            setSearch(null);
          }
        }}
      />
      {search !== null && search.trim() !== '' && (
        <ul class="plant-found" aria-label="Plants found">
          {found.map((row) => (
            <li key={row.id}>
              <button type="button" onClick={() => choose(row.id)}>
                <strong>{row.name}</strong> {row.botanical && <i>{row.botanical}</i>}{' '}
                <span>{limitWords(row, units.value)}</span>
              </button>
            </li>
          ))}
          {found.length === 0 && (
            <li class="none-found">No plant by that name. Take one with leaves like it, or write a row of your own.</li>
          )}
        </ul>
      )}
      <p id={`${id}-limit`} class="plant-limit">
        {chosen
          ? `${capital(limitWords(chosen, units.value))}. ${sourceWords(chosen)}`
          : 'Not said: no limit is known, so no verdict.'}
      </p>
    </div>
  );
}

/**
 * Rows whose name, botanical name or group holds every word searched for; names that begin with it first, the person's
 * own rows before.
 */
function rowsFor(search: string, own: readonly PlantRow[]): readonly PlantRow[] {
  const words = search.trim().toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return [];
  const ownIds = new Set(own.map(({ id }) => id));
  const hits = [...own, ...CATALOGUE.filter(({ id }) => !ownIds.has(id))].filter((row) => {
    const text = `${row.name} ${row.botanical ?? ''} ${row.group ?? ''}`.toLowerCase();
    return words.every((word) => text.includes(word));
  });
  const begins = (row: PlantRow): number => (row.name.toLowerCase().startsWith(words[0]) ? 0 : 1);
  return hits.toSorted((a, b) => begins(a) - begins(b)).slice(0, MOST_SHOWN);
}

function limitWords(row: PlantRow, shownIn: Units): string {
  return `${row.limitOf} harmed from ${formatHeatLimit(row.heatLimit, shownIn)}`;
}

function sourceWords(row: PlantRow): string {
  const sources = (row.sources ?? []).map((key) => PLANT_SOURCES.get(key)?.citation ?? key).join('; ');
  if (row.limitBasis === undefined) return sources === '' ? 'Your own row.' : `Your own row; ${sources}.`;
  if (row.limitBasis === 'class default')
    return `The limit is our own figure for plants of its kind${sources === '' ? '' : `; the rest: ${sources}`}.`;
  return `${capital(row.limitBasis)}${sources === '' ? '' : `: ${sources}`}.`;
}
