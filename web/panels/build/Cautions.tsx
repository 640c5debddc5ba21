import { cautionsFor } from '../../../engine/index.ts';
import type { BuildSheet, Caution } from '../../../engine/index.ts';
import { plan, units } from '../../state/yard.ts';
import { keepText, keptText } from '../parts/kept-stock.ts';
import { keptPrefix } from './chosen.ts';
import { mindedAt, mindedFirst } from './minded.ts';
import type { MindedBlock } from './minded.ts';

/** The stops that nobody has ticked yet. */
export function openStops(sheet: BuildSheet): readonly Caution[] {
  return sheet.cautions.filter(({ id, stop }) => stop && keptText(tickKey(id)) === '');
}

/** Stops to answer one by one before the sheet is printed, then what no single work tells. */
export function Stops({ sheet }: { readonly sheet: BuildSheet }) {
  const left = openStops(sheet).length;
  return (
    <>
      <p>
        Local rules and a licensed tradesperson or engineer come before this sheet.{' '}
        {left === 0 ? 'All stops are answered.' : `Tick each stop once it is answered: ${left} left.`}
      </p>
      <ul class="cautions">
        {mindedFirst(sheet.cautions).map((caution) => (
          <li key={caution.id} class={caution.stop ? 'stop' : undefined}>
            {caution.stop ? (
              <label class="tick">
                <input
                  type="checkbox"
                  checked={keptText(tickKey(caution.id)) !== ''}
                  onChange={(event) => keepText(tickKey(caution.id), event.currentTarget.checked ? 'answered' : '')}
                />
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

interface MindProps {
  readonly sheet: BuildSheet;
  readonly block: MindedBlock;
}

/** What there is to mind at the work that one block tells of. */
export function MindAt({ sheet, block }: MindProps) {
  return (
    <ul class="cautions">
      {mindedAt(block, sheet.cautions, units.value).map(({ id, stop, text }) => (
        <li key={id} class={stop ? 'stop' : undefined}>
          {text}
        </li>
      ))}
    </ul>
  );
}

/** For paper that is not the sheet itself: what is printed of this stage never goes without its cautions. */
export function CautionsOnPaper({ sheet }: { readonly sheet: BuildSheet | null }) {
  const cautions = sheet?.cautions ?? cautionsFor(['build', 'dig', 'climb', 'wind', 'cloth'], plan.value);
  return (
    <div class="paper-only">
      <p>This is the plan alone. The build sheet is printed with its own button, once each stop below is answered.</p>
      <ul>
        {cautions.map(({ id, text }) => (
          <li key={id}>{text}</li>
        ))}
      </ul>
    </div>
  );
}

function tickKey(id: string): string {
  return `${keptPrefix.value}caution/${id}`;
}
