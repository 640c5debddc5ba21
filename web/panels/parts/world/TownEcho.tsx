import { townWords } from '../../../../engine/index.ts';
import type { PlaceAnswer } from './typed-place.ts';

interface Props {
  readonly place: PlaceAnswer;
  /** A town as one would type it. */
  readonly onChoose: (text: string) => void;
}

/** The town as it was understood, to be nodded at, and its namesakes to choose instead. */
export function TownEcho({ place: { town, others = [] }, onChoose }: Props) {
  if (!town) return null;
  return (
    <p class="town-echo">
      <strong>{townWords(town)}?</strong>
      {others.map(townWords).map((other) => (
        <button key={other} type="button" onClick={() => onChoose(other)}>
          No, {other}
        </button>
      ))}
    </p>
  );
}
