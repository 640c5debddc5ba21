import { useEffect, useId, useState } from 'preact/hooks';
import { Fault } from '../../../common/Fault.tsx';
import { noteOpenBox } from '../../../state/open-boxes.ts';

interface Props {
  readonly label: string;
  readonly value: string;
  readonly placeholder?: string;
  /** Says why the text cannot be taken, or `null`. */
  readonly onChange: (text: string) => string | null;
}

/** Words edited in place: taken on Enter or on leaving the box. */
export function TextBox({ label, value, placeholder, onChange }: Props) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);

  useEffect(() => () => noteOpenBox(id, null), [id]);

  function submit(): void {
    if (typed === null) return;
    const refused = typed.trim() === value ? null : onChange(typed.trim());
    noteOpenBox(id, refused);
    setFault(refused);
    if (refused === null) setTyped(null);
  }

  return (
    <div class="number-box text-box">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        dir="auto"
        autocomplete="off"
        value={typed ?? value}
        placeholder={placeholder}
        aria-invalid={fault !== null}
        aria-describedby={fault ? `${id}-said` : undefined}
        onInput={(event) => setTyped(event.currentTarget.value)}
        onBlur={submit}
        onKeyDown={(event) => {
          if (event.key === 'Enter') submit();
          else if (event.key === 'Escape' && typed !== null) {
            event.stopPropagation();
            noteOpenBox(id, null);
            setTyped(null);
            setFault(null);
          }
        }}
      />
      <Fault id={`${id}-said`}>{fault}</Fault>
    </div>
  );
}
