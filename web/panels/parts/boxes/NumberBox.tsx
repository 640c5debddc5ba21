import { useEffect, useId, useState } from 'preact/hooks';
import type { NumberField } from '../../../common/fields/number-field.ts';
import { readField, showNumber } from '../../../common/fields/read-field.ts';
import { noteOpenBox } from '../../../state/open-boxes.ts';
import { units } from '../../../state/yard.ts';

interface Props {
  readonly field: NumberField;
  /** What the plan holds; `undefined` shows an empty box. */
  readonly value: number | undefined;
  /**
   * Takes a number in the plan's own unit that has been read, is in range, and was confirmed if it is odd. Says why it
   * cannot be taken.
   */
  readonly onChange: (value: number | undefined) => string | null;
}

/**
 * A number with its unit, edited in place: typed in any unit people use, taken on Enter or on leaving the box.
 * An odd one (a wall of 18 m) asks back first. Escape puts the old one back.
 */
export function NumberBox(props: Props) {
  const { id, shown, typed, type, submit, take, forget, asks, fault } = useEntry(props);
  const message = fault ?? asks?.question ?? null;
  return (
    <div class="number-box">
      <label for={id}>{props.field.label}</label>
      <input
        id={id}
        type="text"
        autocomplete="off"
        enterkeyhint="done"
        value={typed ?? shown}
        aria-invalid={fault !== null}
        aria-describedby={message ? `${id}-said` : undefined}
        onFocus={(event) => event.currentTarget.select()}
        onInput={(event) => type(event.currentTarget.value)}
        onBlur={submit}
        onKeyDown={(event) => {
          if (event.key === 'Enter') {
            event.preventDefault();
            submit();
          } else if (event.key === 'Escape' && typed !== null) {
            event.stopPropagation();
            forget();
          }
        }}
      />
      {message && (
        <p id={`${id}-said`} class={fault ? 'box-said fault' : 'box-said'} role="alert">
          {message}
          {asks && (
            <>
              {' '}
              <button type="button" onClick={() => take(asks.value)}>
                Yes, keep it
              </button>{' '}
              <button type="button" onClick={forget}>
                No
              </button>
            </>
          )}
        </p>
      )}
    </div>
  );
}

/** What stands in the box until it is taken, asked about or given up. */
function useEntry({ field, value, onChange }: Props) {
  const id = useId();
  const shown = value === undefined ? '' : showNumber(field, value, units.value);
  const [typed, type] = useState<string | null>(null);
  const [asks, setAsks] = useState<{ readonly value: number | undefined; readonly question: string } | null>(null);
  const [fault, setFault] = useState<string | null>(null);

  useEffect(() => () => noteOpenBox(id, null), [id]);

  function take(next: number | undefined): void {
    const refused = next === value ? null : onChange(next);
    noteOpenBox(id, refused);
    setFault(refused);
    setAsks(null);
    if (refused === null) type(null);
  }

  function submit(): void {
    if (typed === null || typed === shown) return forget();
    const entry = readField(field, typed, units.value);
    const asked = entry.ok && entry.value !== value ? entry.unusual : null;
    noteOpenBox(id, entry.ok ? asked : entry.message);
    if (!entry.ok) return setFault(entry.message);
    setFault(null);
    if (asked !== null) setAsks({ value: entry.value, question: asked });
    else take(entry.value);
  }

  function forget(): void {
    noteOpenBox(id, null);
    type(null);
    setAsks(null);
    setFault(null);
  }

  return { id, shown, typed, type, submit, take, forget, asks, fault };
}
