import { useId } from 'preact/hooks';
import { CROWN_KINDS, crownKindOf, crownSourceWords, formatShare } from '../../../engine/index.ts';

interface Props {
  /** Id of the chosen kind. */
  readonly value: string | undefined;
  readonly onChange: (id: string | undefined) => void;
}

/** Which tree it is: fills in how much light passes, the crown's shape and when it stands bare, as a first guess. */
export function CrownPicker({ value, onChange }: Props) {
  const id = useId();
  const chosen = value === undefined ? undefined : crownKindOf(value);
  return (
    <div class="number-box">
      <label for={id}>Which tree?</label>
      <select
        id={id}
        value={value ?? ''}
        aria-describedby={`${id}-from`}
        onChange={(event) => onChange(event.currentTarget.value === '' ? undefined : event.currentTarget.value)}
      >
        <option value="">another, or not known</option>
        {CROWN_KINDS.map((kind) => (
          <option key={kind.id} value={kind.id}>
            {kind.name}
          </option>
        ))}
      </select>
      <p id={`${id}-from`} class="plant-limit">
        {chosen
          ? `A first guess for its crown: ${formatShare(chosen.openness)} of the sun passes, ` +
            `± ${Math.round(100 * chosen.pm)}. ${crownSourceWords(chosen)}`
          : 'Fills in its crown as a first guess: light through, shape, and when it is bare.'}
      </p>
    </div>
  );
}
