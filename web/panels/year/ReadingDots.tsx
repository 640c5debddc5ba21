import { formatTemperature } from '../../../engine/index.ts';
import type { ReadingCheck } from '../../../engine/index.ts';
import { units } from '../../state/yard.ts';

const SIDE = 240;
const ROOM = 34;

/**
 * Measured against estimated leaves: the slanting band is where both agree within our spread; a line runs from the watered
 * estimate to the thirsty one, the dot sits in its middle. Everything in it stands in the sentences below.
 */
export function ReadingDots({ readings, spread }: { readonly readings: readonly ReadingCheck[]; readonly spread: number }) {
  const all = readings.flatMap(({ leaf, watered, thirsty }) => [leaf, watered, thirsty]);
  const low = Math.floor((Math.min(...all) - spread) / 5) * 5;
  const high = Math.ceil((Math.max(...all) + spread) / 5) * 5;
  const at = (celsius: number): number => ROOM + ((celsius - low) / (high - low)) * (SIDE - ROOM);
  const up = (celsius: number): number => SIDE - at(celsius) + ROOM / 2;
  const corner = (estimate: number, measured: number): string => `${at(estimate)},${up(measured)}`;
  return (
    <figure class="reading-dots">
      <svg viewBox={`0 0 ${SIDE + 12} ${SIDE + ROOM / 2}`} role="img" aria-label={`${readings.length} readings against the estimate and its band of ± ${spread} K`}>
        <clipPath id="reading-frame"><rect x={ROOM} y={up(high)} width={SIDE - ROOM} height={up(low) - up(high)} /></clipPath>
        <g clip-path="url(#reading-frame)">
          <polygon class="band" points={[corner(low, low - spread), corner(low, low + spread), corner(high, high + spread), corner(high, high - spread)].join(' ')} />
          <line class="even" x1={at(low)} y1={up(low)} x2={at(high)} y2={up(high)} />
        </g>
        <rect class="frame" x={ROOM} y={up(high)} width={SIDE - ROOM} height={up(low) - up(high)} />
        {readings.map(({ id, leaf, watered, thirsty, outside }) => (
          <g key={id} class={outside ? 'outside' : undefined}>
            <line x1={at(watered)} x2={at(thirsty)} y1={up(leaf)} y2={up(leaf)} />
            <circle cx={at((watered + thirsty) / 2)} cy={up(leaf)} r="5" />
          </g>
        ))}
        {[low, high].map((end) => (
          <g key={end}>
            <text x={ROOM - 4} y={up(end) + 4} text-anchor="end">{formatTemperature(end, units.value).replace(' ', '')}</text>
            <text x={at(end)} y={SIDE + 10} text-anchor={end === low ? 'start' : 'end'}>{formatTemperature(end, units.value)}</text>
          </g>
        ))}
      </svg>
      <figcaption>Up: measured. Across: estimated, from a watered leaf to a thirsty one. Grey: within ± {spread} K. Hollow: outside.</figcaption>
    </figure>
  );
}
