import { towns, townWords } from '../../../../engine/index.ts';
import { Field } from '../boxes/Field.tsx';
import { TownEcho } from './TownEcho.tsx';
import type { placeTyped } from './typed-place.ts';

interface Props {
  readonly value: string;
  /** What was read of it, once there is something. */
  readonly read: ReturnType<typeof placeTyped> | null;
  readonly onInput: (text: string) => void;
}

/** Where a yard is, by a town of the list or its coordinates, and the town as it was understood. */
export function PlaceField({ value, read, onInput }: Props) {
  return (
    <>
      <Field
        label="Town, or latitude and longitude"
        value={value}
        usual="Phoenix, or 37°53′N 4°47′W"
        list="towns"
        hint="Half a degree is near enough. Nothing of it leaves this machine."
        onInput={onInput}
      />
      <datalist id="towns">
        {towns().map((town) => (
          <option key={townWords(town)} value={townWords(town)} />
        ))}
      </datalist>
      {read?.ok && <TownEcho place={read.value} onChoose={onInput} />}
    </>
  );
}
