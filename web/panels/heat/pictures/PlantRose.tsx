import { compassWord } from '../../../../engine/index.ts';
import type { PlantLoad } from '../../../../engine/index.ts';
import { wedgeOf } from '../../../charts/rose.ts';
import { clockWords } from '../../../common/words.ts';
import { shownClock } from '../../../state/clock.ts';

const INNER = 18;
const OUTER = 62;
const WORDS_AT = 80;
const QUARTERS = [
  ['N', 0],
  ['E', 90],
  ['S', 180],
  ['W', 270],
] as const;

/**
 * The plant's eight sides and its top, north up: the longer a wedge, the longer and further its leaves are over their
 * limit; beside it the hour at which they are warmest.
 */
export function PlantRose({ plant, name }: { readonly plant: PlantLoad; readonly name: string }) {
  const { sides = [], pot } = plant;
  const dose = ({ scorchDose }: { readonly scorchDose: number | null }): number => scorchDose ?? 0;
  const most = Math.max(1, ...sides.map(dose));
  const top = sides.find(({ side }) => side === 'top');
  const worst = sides.reduce((best, side) => (dose(side) > dose(best) ? side : best), sides[0]);
  const harmed = dose(worst) > 0;
  const finding = harmed
    ? `${name}: worst ${worst.side === 'top' ? 'at its top' : `on its ${compassWord(worst.side)} side`}, ` +
      `${dose(worst).toFixed(0)} K·h over the limit on the heatwave day.`
    : `${name}: no side gets over its limit on the heatwave day.`;
  return (
    <figure class="plant-rose">
      <svg viewBox="-120 -108 240 216" role="img" aria-label={finding}>
        {pot && (
          <circle r={OUTER + 4} class="rose-pot" style={{ strokeDasharray: pot.hotHours > 0 ? 'none' : '2 4' }} />
        )}
        {sides.map((one) => {
          if (one.side === 'top') return null;
          const { path, label } = wedgeOf(one.side, dose(one) / most, INNER, OUTER, WORDS_AT);
          return (
            <g key={one.side} class={one === worst && harmed ? 'rose-side worst' : 'rose-side'}>
              <path d={path} />
              <text x={label[0]} y={label[1]}>
                {one.peakAt === null ? '–' : hourOf(one.peakAt)}
              </text>
            </g>
          );
        })}
        <circle r={INNER - 2} class={worst === top && harmed ? 'rose-top worst' : 'rose-top'} />
        {top && <text>{top.peakAt === null ? '–' : hourOf(top.peakAt)}</text>}
        {QUARTERS.map(([word, bearing]) => {
          const { label } = wedgeOf(bearing, 1, INNER, OUTER, WORDS_AT + (bearing % 180 === 0 ? 19 : 31));
          return (
            <text key={word} class="rose-quarter" x={label[0]} y={label[1]}>
              {word}
            </text>
          );
        })}
      </svg>
      <figcaption>
        {finding} The longer a wedge, the more that side is over its limit; beside it the hour when its leaves are
        warmest. True north up, the top in the middle.
        {pot && ` ${pot.hotHours > 0 ? 'Ring' : 'Broken ring'}: its pot, ${pot.hotHours.toFixed(1)} hot hours.`}
      </figcaption>
    </figure>
  );
}

/** The clock hour of "15:25". */
function hourOf(clock: string): string {
  return clockWords(Number(clock.slice(0, 2)) * 60, shownClock.value).replace(/:00(?= )/, '');
}
