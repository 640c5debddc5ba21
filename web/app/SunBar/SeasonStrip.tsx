import { dayWords, inYearlySpan, MONTHS, offsetOf } from '../../../engine/index.ts';
import type { MonthDay } from '../../../engine/index.ts';
import { HEAT_RAMP, colourOf } from '../../charts/ramp.ts';
import { dateAt, placeOn, stripOf } from '../../common/strip-days.ts';
import { shortDayWords } from '../../common/words.ts';
import { periodKind } from '../../state/view.ts';
import { shownPlan } from '../../state/yard.ts';
import { Slider } from './Slider.tsx';

const HEIGHT = 30;
const BAND = 14;
/** Mean daily highs, from a cool day to a scorching one. [°C] */
const TINT = { ramp: HEAT_RAMP, from: 14, to: 42, contours: [] } as const;

/** Months that are named where the season's ends leave room. */
const NAMED: readonly number[] = [1, 4, 7, 10];
/** Half of what an end's date takes, and what keeps a month's name off it. [px] */
const END_ROOM = 22;

function clearOf(x: number, ends: readonly number[]): boolean {
  return ends.every((end) => Math.abs(end - x) > 2 * END_ROOM);
}

interface Props {
  readonly date: string;
  readonly onChange: (date: string) => void;
}

/** The year as a strip of days tinted by how hot they are, the season marked on it, with a bead for the date. */
export function SeasonStrip({ date, onChange }: Props) {
  const { season, climate } = shownPlan.value;
  const strip = stripOf(season, season.year);
  const placeOf = (monthDay: MonthDay): number => placeOn(strip, `${season.year}-${monthDay}`);
  const inSeason = inYearlySpan(season, date);
  return (
    <Slider
      class="season-strip"
      label="Date"
      value={Math.round(placeOf(date) * strip.days)}
      max={strip.days - 1}
      step={1}
      words={`${dayWords(date)}${inSeason ? '' : ', outside the season'}`}
      onChange={(place) => onChange(dateAt(strip, place))}
    >
      {(width) => {
        const x = (monthDay: MonthDay): number => (placeOf(monthDay) + 0.5 / strip.days) * width;
        return (
          <svg width={width} height={HEIGHT} aria-hidden="true">
            {MONTHS.map((name, index) => {
              const month = index + 1;
              const left = placeOf(`${String(month).padStart(2, '0')}-01`) * width;
              const right = (placeOf(`${String((month % 12) + 1).padStart(2, '0')}-01`) || 1) * width;
              const known = climate.months.find((one) => one.month === month);
              return (
                <g key={name}>
                  <rect
                    class={known ? '' : 'season-strip-unknown'}
                    x={left}
                    y={2}
                    width={right - left}
                    height={BAND}
                    fill={known ? colourOf(known.high + offsetOf(climate), TINT) : undefined}
                  />
                  {NAMED.includes(month) && clearOf((left + right) / 2, [x(season.from), x(season.to)]) && (
                    <text class="day-arc-small" x={(left + right) / 2} y={HEIGHT - 3} text-anchor="middle">
                      {name.slice(0, 3)}
                    </text>
                  )}
                </g>
              );
            })}
            <path class="season-strip-season" d={`M${x(season.from)},${BAND + 6}V1H${x(season.to)}V${BAND + 6}`} />
            {[season.from, season.to].map((end) => (
              <EndDate key={end} day={end} x={x(end)} width={width} />
            ))}
            <circle
              class={`season-strip-bead ${periodKind.value === 'season' ? 'season-strip-idle' : ''}`}
              cx={x(date)}
              cy={2 + BAND / 2}
              r={7}
            />
          </svg>
        );
      }}
    </Slider>
  );
}

/** The date of one end of the season, kept within the strip. */
function EndDate({ day, x, width }: { readonly day: MonthDay; readonly x: number; readonly width: number }) {
  const kept = Math.min(width - END_ROOM, Math.max(END_ROOM, x));
  return (
    <text class="day-arc-small season-strip-end" x={kept} y={HEIGHT - 3} text-anchor="middle">
      {shortDayWords(day)}
    </text>
  );
}
