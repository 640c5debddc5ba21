import { useId } from 'preact/hooks';

interface Props<Key extends string> {
  readonly label: string;
  readonly value: string | undefined;
  /** Words for "nothing said"; absent: one of the choices must hold. */
  readonly none?: string;
  readonly choices: Readonly<Record<Key, string>>;
  readonly onChange: (key: Key | undefined) => void;
}

/** One of a few words. */
export function ChoiceBox<Key extends string>({ label, value, none, choices, onChange }: Props<Key>) {
  const id = useId();
  return (
    <div class="number-box">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={value ?? ''}
        onChange={(event) =>
          onChange(event.currentTarget.value === '' ? undefined : (event.currentTarget.value as Key))
        }
      >
        {none !== undefined && <option value="">{none}</option>}
        {(Object.keys(choices) as Key[]).map((key) => (
          <option key={key} value={key}>
            {choices[key]}
          </option>
        ))}
      </select>
    </div>
  );
}
