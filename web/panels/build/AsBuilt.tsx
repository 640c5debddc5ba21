import { useState } from 'preact/hooks';
import { formatCut, parseLength, withAsBuilt } from '../../../engine/index.ts';
import type { BuildSheet } from '../../../engine/index.ts';
import { commitEdit } from '../../state/edit.ts';
import { say } from '../../state/speech.ts';
import { plan, units } from '../../state/yard.ts';
import { TextBox } from '../parts/boxes/TextBox.tsx';
import { forgetAll, keepText, keptText } from '../parts/kept-stock.ts';
import { chosen, keptPrefix } from './chosen.ts';

/** What was really built, typed in from the tape: half a form is kept, and a whole one moves the thing on the plan. */
export function AsBuilt({ sheet }: { readonly sheet: BuildSheet }) {
  const [fault, setFault] = useState<string | null>(null);
  const prefix = `${keptPrefix.value}built/`;
  const measured = Object.fromEntries(
    sheet.asBuilt.flatMap(({ id }) => {
      const metres = parseLength(keptText(prefix + id), units.value);
      return metres === null ? [] : [[id, metres]];
    }),
  );
  const count = Object.keys(measured).length;

  function putIn(): void {
    const result = withAsBuilt(plan.value, sheet.id, measured, chosen.value?.optionId ?? undefined);
    if (!result.ok) return setFault(result.problems[0].message);
    setFault(null);
    if (!commitEdit(`Put in ${sheet.name} as built`, result.plan)) return;
    forgetAll(prefix);
    say(`${sheet.name} as built: ${result.changes.join('; ')}.`.replace('..', '.'));
  }

  return (
    <>
      <p>When it stands, measure it and type what the tape says. Leave out what you did not measure.</p>
      <div class="as-built">
        {sheet.asBuilt.map(({ id, label, planned }) => (
          <TextBox
            key={prefix + id}
            label={label}
            value={keptText(prefix + id)}
            placeholder={`planned ${formatCut(planned, units.value)}`}
            onChange={(text) => {
              if (text !== '' && !(Number(parseLength(text, units.value)) > 0))
                return `"${text}" is not a length such as ${formatCut(planned, units.value)}.`;
              keepText(prefix + id, text);
              return null;
            }}
          />
        ))}
      </div>
      <button type="button" disabled={count === 0} onClick={putIn}>
        Put {count === 0 ? 'them' : `${count} ${count === 1 ? 'number' : 'numbers'}`} into the plan
      </button>
      {fault && (
        <p class="box-said fault" role="alert">
          {fault}
        </p>
      )}
    </>
  );
}
