import { QUANTITY_UNITS } from '../../../engine/index.ts';
import type { Quantity } from '../../../engine/index.ts';
import { colourOf, GRADE_EDGES, GRADE_WORDS, SCALES } from '../../charts/ramp.ts';
import { periodKind } from '../../state/view.ts';
import { QUANTITY_WORDS } from './words.ts';

const FOR = { season: 'mean of a season’s day', day: 'on this day', heatwave: 'on the heatwave day' } as const;

/** The ramp with its numbers and unit; the two that are graded also with the five words. */
export function Legend({ quantity }: { readonly quantity: Quantity }) {
  const scale = SCALES[quantity];
  const unit = QUANTITY_UNITS[quantity];
  const graded = quantity === 'hotLoad' || quantity === 'grade';
  const place = (value: number): string => `${((value - scale.from) / (scale.to - scale.from)) * 100}%`;
  return (
    <div class="heat-legend">
      <p><strong>{QUANTITY_WORDS[quantity].name}</strong>{unit && `, ${unit}`}, {FOR[periodKind.value]}: {QUANTITY_WORDS[quantity].says}.</p>
      {graded ? (
        <ol class="grade-steps">
          {GRADE_WORDS.map((word, index) => (
            <li key={word}>
              <span class="grade-swatch" style={{ background: colourOf(quantity === 'grade' ? index + 1 : gradeMiddle(index), scale) }}>{index + 1}</span>
              {word}<small>{gradeSpan(index)}</small>
            </li>
          ))}
        </ol>
      ) : (
        <div class="ramp" aria-hidden="true">
          <div class="ramp-bar" style={{ background: `linear-gradient(to right, ${scale.ramp.join(', ')})` }} />
          {[scale.from, ...scale.contours, scale.to].map((value) => <span key={value} style={{ left: place(value) }}>{value}</span>)}
        </div>
      )}
    </div>
  );
}

const EDGES = [0, ...GRADE_EDGES, 24] as const;

function gradeMiddle(index: number): number {
  return (EDGES[index] + EDGES[index + 1]) / 2;
}

function gradeSpan(index: number): string {
  if (index === 0) return `< ${EDGES[1]}`;
  return index === 4 ? `${EDGES[4]} +` : `${EDGES[index]}–${EDGES[index + 1]}`;
}
