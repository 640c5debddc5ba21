import { formatTemperature, formatTemperatureDifference } from '../../../../engine/index.ts';
import type { PairCheck, ReadingCheck } from '../../../../engine/index.ts';
import { units } from '../../../state/yard.ts';

const SIDE = 240;
const ROOM = 34;

interface Props {
  readonly readings: readonly ReadingCheck[];
  readonly pairs: readonly PairCheck[];
  /** Half the band. [K] */
  readonly spread: number;
}

/**
 * Measured against estimated leaves: the slanting band is where both agree within our spread; a line runs from the
 * watered estimate to the thirsty one, the dot sits in its middle. The covered one of a pair is a square, joined to its
 * open one. Everything in it stands in the sentences below.
 */
export function ReadingDots({ readings, pairs, spread }: Props) {
  const axes = axesOf(readings, spread);
  const band = formatTemperatureDifference(spread, units.value);
  const covered = new Set(pairs.map((pair) => pair.covered));
  const placeOf = (id: string): readonly [number, number] | null => {
    const reading = readings.find((each) => each.id === id);
    return reading ? dotOf(reading, axes) : null;
  };
  return (
    <figure class="reading-dots">
      <svg
        viewBox={`0 0 ${SIDE + 12} ${SIDE + ROOM / 2}`}
        role="img"
        aria-label={
          `${readings.length} ${readings.length === 1 ? 'reading' : 'readings'} against the estimate ` +
          `and its band of ± ${band}`
        }
      >
        <Band axes={axes} spread={spread} />
        {pairs.map(({ open, covered: under }) => {
          const [a, b] = [placeOf(open), placeOf(under)];
          return a && b && <line key={under} class="pair" x1={a[0]} y1={a[1]} x2={b[0]} y2={b[1]} />;
        })}
        {readings.map((reading) => (
          <Dot key={reading.id} reading={reading} isCovered={covered.has(reading.id)} axes={axes} />
        ))}
        <AxisEnds axes={axes} />
      </svg>
      <figcaption>
        Up: measured. Across: estimated, from a watered leaf to a thirsty one. Grey: within ± {band}. Hollow: outside.
        {pairs.length > 0 && ' Round: in the open; square: under cloth.'}
      </figcaption>
    </figure>
  );
}

/** Both axes have the same ends. */
interface Axes {
  /** [°C] */
  readonly low: number;
  readonly high: number;
  /** From a temperature to the picture, across and up. */
  at(celsius: number): number;
  up(celsius: number): number;
}

function axesOf(readings: readonly ReadingCheck[], spread: number): Axes {
  const all = readings.flatMap(({ leaf, watered, thirsty }) => [leaf, watered, thirsty]);
  const low = Math.floor((Math.min(...all) - spread) / 5) * 5;
  const high = Math.ceil((Math.max(...all) + spread) / 5) * 5;
  const at = (celsius: number): number => ROOM + ((celsius - low) / (high - low)) * (SIDE - ROOM);
  return { low, high, at, up: (celsius) => SIDE - at(celsius) + ROOM / 2 };
}

function dotOf({ leaf, watered, thirsty }: ReadingCheck, { at, up }: Axes): readonly [number, number] {
  return [at((watered + thirsty) / 2), up(leaf)];
}

function Band({ axes: { low, high, at, up }, spread }: { readonly axes: Axes; readonly spread: number }) {
  const corner = (estimate: number, measured: number): string => `${at(estimate)},${up(measured)}`;
  const frame = { x: ROOM, y: up(high), width: SIDE - ROOM, height: up(low) - up(high) };
  return (
    <>
      <clipPath id="reading-frame">
        <rect {...frame} />
      </clipPath>
      <g clip-path="url(#reading-frame)">
        <polygon
          class="band"
          points={[
            corner(low, low - spread),
            corner(low, low + spread),
            corner(high, high + spread),
            corner(high, high - spread),
          ].join(' ')}
        />
        <line class="even" x1={at(low)} y1={up(low)} x2={at(high)} y2={up(high)} />
      </g>
      <rect class="frame" {...frame} />
    </>
  );
}

interface DotProps {
  readonly reading: ReadingCheck;
  readonly isCovered: boolean;
  readonly axes: Axes;
}

function Dot({ reading, isCovered, axes }: DotProps) {
  const [x, y] = dotOf(reading, axes);
  return (
    <g class={reading.outside ? 'outside' : undefined}>
      <line x1={axes.at(reading.watered)} x2={axes.at(reading.thirsty)} y1={y} y2={y} />
      {isCovered ? (
        <rect class="dot" x={x - 5} y={y - 5} width="10" height="10" />
      ) : (
        <circle class="dot" cx={x} cy={y} r="5" />
      )}
    </g>
  );
}

function AxisEnds({ axes: { low, high, at, up } }: { readonly axes: Axes }) {
  return (
    <>
      {[low, high].map((end) => (
        <g key={end}>
          <text x={ROOM - 4} y={up(end) + 4} text-anchor="end">
            {formatTemperature(end, units.value).replace(' ', '')}
          </text>
          <text x={at(end)} y={SIDE + 10} text-anchor={end === low ? 'start' : 'end'}>
            {formatTemperature(end, units.value)}
          </text>
        </g>
      ))}
    </>
  );
}
