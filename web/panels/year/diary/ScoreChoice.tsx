import { useId } from 'preact/hooks';
import { DAMAGE_SCALE } from '../../../../engine/index.ts';
import { LeafScore } from './LeafScore.tsx';

interface Props {
  readonly score: number;
  onChange(score: number): void;
}

/** How bad, on the scale from 0 to 5: a leaf and a few words each. */
export function ScoreChoice({ score, onChange }: Props) {
  const name = useId();
  return (
    <fieldset class="scores">
      <legend>How bad</legend>
      {DAMAGE_SCALE.map((words, value) => (
        <label key={words} class={value === score ? 'score chosen' : 'score'}>
          <input type="radio" name={name} value={value} checked={value === score} onChange={() => onChange(value)} />
          <LeafScore score={value} />
          <span>
            <strong>{value}</strong> {words}
          </span>
        </label>
      ))}
    </fieldset>
  );
}
