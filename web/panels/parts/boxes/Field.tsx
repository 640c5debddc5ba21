import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

interface FieldProps {
  readonly label: string;
  readonly value: string;
  readonly hint?: string;
  /** What holds when the box stays empty. */
  readonly usual?: string;
  readonly list?: string;
  readonly onInput: (text: string) => void;
}

/** One answer, kept as it is typed. */
export function Field({ label, value, hint, usual, list, onInput }: FieldProps) {
  const id = useId();
  return (
    <p class="asked-field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        dir="auto"
        autocomplete="off"
        value={value}
        placeholder={usual}
        list={list}
        aria-describedby={hint ? `${id}-hint` : undefined}
        onInput={(event) => onInput(event.currentTarget.value)}
      />
      {hint && (
        <span id={`${id}-hint`} class="quiet">
          {hint}
        </span>
      )}
    </p>
  );
}

interface ChoicesProps<Key extends string> {
  readonly legend: string;
  readonly name: string;
  readonly value: Key;
  readonly choices: Readonly<Record<Key, ComponentChildren>>;
  readonly class?: string;
  readonly onChange: (key: Key) => void;
}

/** One of a few, all in sight. */
export function Choices<Key extends string>({
  legend,
  name,
  value,
  choices,
  class: kind = '',
  onChange,
}: ChoicesProps<Key>) {
  return (
    <fieldset class={`asked-choices ${kind}`}>
      <legend>{legend}</legend>
      {(Object.keys(choices) as Key[]).map((key) => (
        <label key={key} class={`choice choice-${key}`}>
          <input type="radio" name={name} checked={key === value} onChange={() => onChange(key)} />
          {choices[key]}
        </label>
      ))}
    </fieldset>
  );
}
