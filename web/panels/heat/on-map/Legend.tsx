import { GRADE_FROM, GRADE_WORDS, QUANTITY_UNITS } from '../../../../engine/index.ts';
import type { Quantity } from '../../../../engine/index.ts';
import { gradeHatchId, SCALES, stretchesOf } from '../../../charts/ramp.ts';
import { paintedColour } from '../../../map/laid-on/heat-on-map.ts';
import { hatched } from '../../../map/laid-on/overlays.ts';
import { periodKind } from '../../../state/view.ts';
import { isGraded, QUANTITY_WORDS } from '../../parts/quantity-words.ts';

const FOR = { season: 'mean of a season’s day', day: 'on this day', heatwave: 'on the heatwave day' } as const;

/**
 * The ramp with its numbers and unit; the two that are graded also with the five words, and with the hatches that stand
 * for them on paper.
 */
export function Legend({ quantity }: { readonly quantity: Quantity }) {
  const scale = SCALES[quantity];
  const unit = QUANTITY_UNITS[quantity];
  const place = (value: number): string => `${((value - scale.from) / (scale.to - scale.from)) * 100}%`;
  return (
    <div class="heat-legend">
      <p>
        <strong>{QUANTITY_WORDS[quantity].name}</strong>
        {unit && `, ${unit}`}, {FOR[periodKind.value]}: {QUANTITY_WORDS[quantity].says}.
      </p>
      {isGraded(quantity) ? (
        <>
          <ol class={hatched.value ? 'grade-steps hatched' : 'grade-steps'}>
            {GRADE_WORDS.map((word, index) => (
              <li key={word}>
                <span class="grade-swatch" style={{ background: swatchOf(quantity, index) }}>
                  <svg aria-hidden="true">
                    <rect width="100%" height="100%" fill={`url(#${gradeHatchId(index + 1)})`} />
                  </svg>
                  <b>{index + 1}</b>
                </span>
                {word}
                <small>{gradeSpan(index)}</small>
              </li>
            ))}
          </ol>
          <label class="hatch-choice screen-only">
            <input
              type="checkbox"
              checked={hatched.value}
              onChange={({ currentTarget }) => (hatched.value = currentTarget.checked)}
            />
            Hatches and numbers instead of colours, as on paper
          </label>
        </>
      ) : (
        <div class="ramp" aria-hidden="true">
          <div
            class="ramp-bar"
            style={{ background: `linear-gradient(to right, ${scale.ramp.map(paintedColour).join(', ')})` }}
          />
          {[scale.from, ...scale.contours, scale.to].map((value) => (
            <span key={value} style={{ left: place(value) }}>
              {value}
            </span>
          ))}
        </div>
      )}
    </div>
  );
}

const EDGES = [0, ...GRADE_FROM] as const;

function gradeSpan(index: number): string {
  if (index === 0) return `< ${EDGES[1]}`;
  return index === GRADE_WORDS.length - 1 ? `${EDGES[4]} +` : `${EDGES[index]}–${EDGES[index + 1]}`;
}

/** A grade's colour; the worst has several. */
function swatchOf(on: 'grade' | 'hotLoad', index: number): string {
  const stretches = stretchesOf(on);
  const last = index === GRADE_WORDS.length - 1 ? stretches.length - 1 : index;
  const [from, to] = [index, last].map((k) => paintedColour(stretches[k].colour));
  return `linear-gradient(to right, ${from}, ${to})`;
}
