import { inYearlySpan } from '../../../engine/index.ts';
import { HEAT_RAMP, colourOf } from '../../charts/ramp.ts';
import { periodKind } from '../../state/view.ts';
import { shownPlan } from '../../state/yard.ts';
import { MONTHS, dayWords } from '../words.ts';
import { Slider } from './Slider.tsx';
import { DAYS, dayAt, placeOf, stripStart } from './year-days.ts';

const HEIGHT = 30;
const BAND = 14;
/** Mean daily highs, from a cool day to a scorching one. [°C] */
const TINT = { ramp: HEAT_RAMP, from: 14, to: 42, contours: [] } as const;

interface Props {
  readonly date: string;
  readonly onChange: (date: string) => void;
}

/** The year as a strip of days tinted by how hot they are, the season marked on it, with a bead for the date. */
export function SeasonStrip({ date, onChange }: Props) {
  const { season, climate } = shownPlan.value;
  const start = stripStart(season);
  const at = placeOf(date, start);
  const inSeason = inYearlySpan(season, date);
  return (
    <Slider
      class="season-strip"
      label="Date"
      value={at}
      max={DAYS - 1}
      step={1}
      words={`${dayWords(date)}${inSeason ? '' : ', outside the season'}`}
      onChange={(place) => onChange(dayAt(place, start))}
    >
      {(width) => {
        const x = (place: number): number => ((place + 0.5) / DAYS) * width;
        const from = placeOf(season.from, start);
        const to = placeOf(season.to, start);
        return (
          <svg width={width} height={HEIGHT} aria-hidden="true">
            {MONTHS.map((name, index) => {
              const month = index + 1;
              const first = placeOf(`${String(month).padStart(2, '0')}-01`, start);
              const next = placeOf(`${String((month % 12) + 1).padStart(2, '0')}-01`, start) || DAYS;
              const known = climate.months.find((one) => one.month === month);
              const left = (first / DAYS) * width;
              const right = (next / DAYS) * width;
              return (
                <g key={name}>
                  <rect class={known ? '' : 'season-strip-unknown'} x={left} y={2} width={right - left} height={BAND} fill={known ? colourOf(known.high + (climate.offset ?? 0), TINT) : undefined} />
                  <text class="day-arc-small" x={(left + right) / 2} y={HEIGHT - 3} text-anchor="middle">{width < 520 ? name[0] : name.slice(0, 3)}</text>
                </g>
              );
            })}
            <path class="season-strip-season" d={`M${x(from)},${BAND + 6}V1H${x(to)}V${BAND + 6}`} />
            <circle class={`season-strip-bead ${periodKind.value === 'season' ? 'season-strip-idle' : ''}`} cx={x(at)} cy={2 + BAND / 2} r={7} />
          </svg>
        );
      }}
    </Slider>
  );
}
