import './stick-dial.css';
import { radiansOf } from '../../../engine/index.ts';
import type { StickMark } from '../../charts/shadow-clock.ts';
import { hourNumber } from '../../common/words.ts';

/** A stick's length on the picture; longer shadows than this many sticks are left out. */
const STICK = 30;
const LONGEST = 3.4;
/** Round midday the shadows are short and the hours would stand on each other. [sticks] */
const NEAREST_HOUR = 0.75;

interface Props {
  /** Lengths in sticks. */
  readonly marks: readonly StickMark[];
  /** The shadow at the time of the sun bar, drawn thick. */
  readonly now: StickMark | null;
  /** True bearing of the top of the picture. [°] */
  readonly up: number;
  readonly clock: '24' | '12';
  /** What each ring is called, at one stick's length, two and so on. */
  readonly rings: readonly string[];
  /** What it shows, in one sentence. */
  readonly finding: string;
}

/** The shadow clock: a stick's shadows round its foot, to scale. */
export function StickDial({ marks, now, up, clock, rings, finding }: Props) {
  const at = (bearing: number, sticks: number): readonly [number, number] => {
    const angle = radiansOf(bearing - up);
    return [sticks * STICK * Math.sin(angle), -sticks * STICK * Math.cos(angle)];
  };
  const drawn = marks.filter(({ length }) => length <= LONGEST);
  const [northX, northY] = at(0, LONGEST + 0.35);
  return (
    <svg class="stick-dial" viewBox="-124 -124 248 248" role="img" aria-label={finding}>
      {rings.map((words, k) => (
        <g key={words}>
          <circle r={(k + 1) * STICK} class="dial-ring" />
          <text class="dial-metres" x={at(up + 135, k + 1)[0]} y={at(up + 135, k + 1)[1]}>
            {words}
          </text>
        </g>
      ))}
      <polyline
        class="dial-tips"
        points={drawn
          .map(({ bearing, length }) =>
            at(bearing, length)
              .map((value) => value.toFixed(1))
              .join(','),
          )
          .join(' ')}
      />
      {drawn.map(({ clock: minutes, bearing, length }) => {
        const [x, y] = at(bearing, length);
        const [wordX, wordY] = at(bearing, Math.max(NEAREST_HOUR, length + 0.25));
        const full = minutes % 60 === 0;
        return (
          <g key={minutes}>
            <line class={full ? 'dial-shadow full' : 'dial-shadow'} x2={x} y2={y} />
            {full && (
              <text class="dial-hour" x={wordX} y={wordY + 3}>
                {hourNumber(minutes / 60, clock)}
              </text>
            )}
          </g>
        );
      })}
      {now && now.length <= LONGEST && (
        <line class="dial-now" x2={at(now.bearing, now.length)[0]} y2={at(now.bearing, now.length)[1]} />
      )}
      <circle r="3" class="dial-stick" />
      <text class="dial-north" x={northX} y={northY + 3}>
        N
      </text>
    </svg>
  );
}
