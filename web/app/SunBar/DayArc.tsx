import type { DayTable } from '../../../engine/index.ts';
import { arcPath, harmPath, runsOf, xOf, yOf } from '../../charts/day-arc.ts';
import type { DayArcBox } from '../../charts/day-arc.ts';
import { clockWords } from '../../common/words.ts';
import { shownClock } from '../../state/clock.ts';
import { minute, playing } from '../../state/view.ts';
import { Slider } from './Slider.tsx';
import { heightWords, whereWords } from './words.ts';

interface Props {
  readonly table: DayTable;
  /** [px] */
  readonly height: number;
}

const FOOT = 18;
/** The fill gets darker from step to step of harm. */
const HARM_STEPS = [0.1, 0.3, 0.5, 0.8] as const;
const HARM_WORDS_FROM = 0.5;
/** Under a sun near the zenith the words would stick out over the top. [px] */
const NOON_WORDS_LOWEST = 10;

/** The sun's arc of the day, to scale, hot hours filled, with a bead for the time. */
export function DayArc({ table, height }: Props) {
  const now = Math.min(minute.value, table.minutes);
  return (
    <Slider
      class="day-arc"
      label="Time of day"
      value={now}
      max={table.minutes}
      step={5}
      words={`${clockWords(table.clock[now], shownClock.value)}, ${heightWords(table, now)}${whereWords(table, now)}`}
      onChange={(next) => {
        playing.value = false;
        minute.value = next;
      }}
    >
      {(width) => {
        const box = { width, horizon: height - FOOT, minutes: table.minutes };
        const x = xOf(now, box);
        const y = yOf(Math.max(-4, table.altitude[now]), box);
        return (
          <svg class="day-arc-picture" width={width} height={height} aria-hidden="true">
            {[30, 60].map((altitude) => (
              <g key={altitude}>
                <line class="day-arc-level" x1={0} x2={width} y1={yOf(altitude, box)} y2={yOf(altitude, box)} />
                <text class="day-arc-small" x={2} y={yOf(altitude, box) - 2}>
                  {altitude}°
                </text>
              </g>
            ))}
            {HARM_STEPS.map((least) => (
              <path key={least} class="day-arc-harm" d={harmPath(table.altitude, table.harm, least, box)} />
            ))}
            <line class="day-arc-horizon" x1={0} x2={width} y1={box.horizon} y2={box.horizon} />
            <path class="day-arc-line" d={arcPath(table.altitude, box)} />
            {hourMarks(table, width).map(({ at, text }) => (
              <g key={at}>
                <line class="day-arc-tick" x1={xOf(at, box)} x2={xOf(at, box)} y1={box.horizon} y2={box.horizon + 4} />
                <text class="day-arc-small" x={xOf(at, box)} y={height - 3} text-anchor="middle">
                  {text}
                </text>
              </g>
            ))}
            <ArcWords table={table} box={box} />
            <line class="day-arc-thread" x1={x} x2={x} y1={y} y2={box.horizon + 4} />
            <circle class="day-arc-bead" cx={x} cy={y} r={8} />
          </svg>
        );
      }}
    </Slider>
  );
}

/**
 * When the hot sun begins and ends, in its dark field, and how high the sun stands at its highest, where there is
 * room.
 */
function ArcWords({ table, box }: { readonly table: DayTable; readonly box: DayArcBox }) {
  const noon = table.altitude.indexOf(Math.max(...table.altitude));
  const [from, to] = runsOf(table.harm.length, (minute) => table.harm[minute] >= HARM_WORDS_FROM).reduce(
    (longest, run) => (run[1] - run[0] > longest[1] - longest[0] ? run : longest),
    [0, 0],
  );
  const room = xOf(to, box) - xOf(from, box);
  return (
    <>
      <text
        class="day-arc-small"
        x={xOf(noon, box)}
        y={Math.max(NOON_WORDS_LOWEST, yOf(table.altitude[noon], box) - 4)}
        text-anchor="middle"
      >
        {Math.round(table.altitude[noon])}° at {clockWords(table.clock[noon], shownClock.value)}
      </text>
      {room > 190 && (
        <text class="day-arc-harm-words" x={xOf(from, box) + 8} y={box.horizon - 6}>
          hot {clockWords(table.clock[from], shownClock.value)} to {clockWords(table.clock[to + 1], shownClock.value)}
        </text>
      )}
    </>
  );
}

/** Every third hour of the clocks, fewer where there is little room. */
function hourMarks(table: DayTable, width: number): { at: number; text: string }[] {
  const every = width < 420 ? 6 : 3;
  const marks: { at: number; text: string }[] = [];
  for (let at = 0; at < table.minutes; at++) {
    const minutes = table.clock[at];
    if (minutes % (every * 60) !== 0 || at === 0) continue;
    marks.push({
      at,
      text: shownClock.value === '24' ? String(minutes / 60) : clockWords(minutes, '12').replace(':00', ''),
    });
  }
  return marks;
}
