import type { ComponentChildren } from 'preact';
import { Fault } from '../../../common/Fault.tsx';

interface Props {
  readonly title: string;
  readonly fault: string | null;
  readonly children: ComponentChildren;
  onSave(): void;
  onDone(): void;
}

/** What is put into the diary: its boxes, why it cannot be taken yet, and its two ways out. */
export function AddForm({ title, fault, children, onSave, onDone }: Props) {
  return (
    <form
      class="add-form"
      aria-label={title}
      onSubmit={(event) => {
        event.preventDefault();
        onSave();
      }}
    >
      {children}
      <Fault>{fault}</Fault>
      <div class="editor-buttons">
        <button type="submit" class="main">
          Save
        </button>
        <button type="button" onClick={onDone}>
          Leave it
        </button>
      </div>
    </form>
  );
}
