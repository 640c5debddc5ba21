import { pin } from '../../state/view.ts';
import { Field } from '../parts/boxes/Field.tsx';
import { pointText } from '../parts/typed.ts';

interface Props {
  readonly label: string;
  readonly value: string;
  readonly onInput: (text: string) => void;
}

/** A point of the drawing: typed, or taken from the spot that was tapped last. */
export function PointField({ label, value, onInput }: Props) {
  const tapped = pin.value;
  return (
    <div class="point-field">
      <Field label={label} value={value} usual="right and up, as 3 2" onInput={onInput} />
      <button
        type="button"
        disabled={tapped === null}
        aria-label={`${label}: use the tapped spot`}
        onClick={() => tapped && onInput(pointText(tapped))}
      >
        Use the tapped spot
      </button>
    </div>
  );
}
