import { useId, useState } from 'preact/hooks';

interface WordProps {
  readonly label: string;
  readonly value: string;
  readonly choices: Readonly<Record<string, string>>;
  readonly onChange: (key: string) => void;
}

/** A word of a sentence that can be tapped and changed. */
export function Word({ label, value, choices, onChange }: WordProps) {
  return (
    <select class="word" aria-label={label} value={value} onChange={(event) => onChange(event.currentTarget.value)}>
      {Object.entries(choices).map(([key, words]) => (
        <option key={key} value={key}>
          {words}
        </option>
      ))}
    </select>
  );
}

interface WordBoxProps {
  readonly label: string;
  readonly value: string;
  /** What an empty box stands for. */
  readonly empty: string;
  /** Takes what was typed, or says why not. */
  readonly onChange: (text: string) => string | null;
}

/** A word of a sentence that can be typed over; taken on Enter or on leaving it. */
export function WordBox({ label, value, empty, onChange }: WordBoxProps) {
  const id = useId();
  const [fault, setFault] = useState<string | null>(null);
  return (
    <>
      <input
        class="word typed"
        aria-label={label}
        aria-describedby={fault === null ? undefined : id}
        aria-invalid={fault !== null}
        type="text"
        autocomplete="off"
        placeholder={empty}
        size={Math.max(4, (value || empty).length)}
        value={value}
        onChange={(event) => setFault(event.currentTarget.value === value ? null : onChange(event.currentTarget.value))}
      />
      {fault !== null && (
        <span id={id} role="alert" class="said problem">
          {fault}
        </span>
      )}
    </>
  );
}
