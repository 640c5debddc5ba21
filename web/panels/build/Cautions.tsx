import type { BuildSheet, Caution } from '../../../engine/index.ts';
import { keptPrefix } from './chosen.ts';
import { keepText, keptText } from './kept.ts';

/** The stops that nobody has ticked yet. */
export function openStops(sheet: BuildSheet): readonly Caution[] {
  return sheet.cautions.filter(({ id, stop }) => stop && keptText(tickKey(id)) === '');
}

/** Stops to answer one by one before the sheet is printed, then what to mind. */
export function Cautions({ sheet }: { readonly sheet: BuildSheet }) {
  const left = openStops(sheet).length;
  return (
    <>
      <p>Local rules and a licensed tradesperson or engineer come before this sheet. {left === 0 ? 'All stops are answered.' : `Tick each stop once it is answered: ${left} left.`}</p>
      <ul class="cautions">
        {sheet.cautions.map((caution) => (
          <li key={caution.id} class={caution.stop ? 'stop' : undefined}>
            {caution.stop ? (
              <label class="tick">
                <input type="checkbox" checked={keptText(tickKey(caution.id)) !== ''} onChange={(event) => keepText(tickKey(caution.id), event.currentTarget.checked ? 'answered' : '')} />
                <span>{caution.text}</span>
              </label>
            ) : (
              caution.text
            )}
          </li>
        ))}
      </ul>
    </>
  );
}

function tickKey(id: string): string {
  return `${keptPrefix.value}caution/${id}`;
}
