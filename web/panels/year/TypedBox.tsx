import { useId } from 'preact/hooks';

interface Props {
  readonly label: string;
  readonly type: 'text' | 'date' | 'time';
  readonly value: string;
  /** Which keys a phone offers. */
  readonly keys?: 'decimal';
  /** What holds while the box is empty, or how to type it. */
  readonly usual?: string;
  /** First day that can be chosen. */
  readonly from?: string;
  onInput(text: string): void;
}

/**
 * One thing of a note, kept as it is typed; a day and a clock must be there. A day before the first one is a day half
 * typed: nothing is kept of it, and it is left in the box until that is left.
 */
export function TypedBox({ label, type, value, keys, usual, from, onInput }: Props) {
  const id = useId();
  return (
    <div class="number-box">
      <label for={id}>{label}</label>
      {/* The types know one kind of input at a time. */}
      <input
        id={id}
        type={type as 'text'}
        inputmode={keys}
        required={type !== 'text'}
        min={from}
        autocomplete="off"
        dir="auto"
        placeholder={usual}
        value={value}
        onInput={({ currentTarget }) =>
          (from === undefined || currentTarget.validity.valid) && onInput(currentTarget.value)
        }
        onBlur={({ currentTarget }) => {
          if (from !== undefined && !currentTarget.validity.valid) currentTarget.value = value;
        }}
      />
    </div>
  );
}
