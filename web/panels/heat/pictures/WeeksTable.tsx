import { signal } from '@preact/signals';
import { dayWords, MONTHS, clamp, monthOfDate, monthDayOf } from '../../../../engine/index.ts';
import './pictures.css';
import type { SpotWeek } from '../../../../engine/index.ts';
import { HEAT_RAMP, LIGHT_RAMP } from '../../../charts/ramp.ts';
import { clockWords } from '../../../common/words.ts';
import { shownClock } from '../../../state/clock.ts';
import { isStale } from '../../../state/live.ts';
import { day } from '../../../state/results.ts';
import { minute, monthDay, periodKind } from '../../../state/view.ts';
import { weeksShown } from './pictured.ts';
import type { Pictured, WeeksShown } from './pictured.ts';

const SHOWN = { harmful: 'Hot sun', sun: 'Any sun', year: 'Any sun, whole year' } as const;

/** The cell that the keyboard stands on: week and hour. */
const cursor = signal<{ readonly week: number; readonly hour: number } | null>(null);

const MOVES: Readonly<Record<string, readonly [weeks: number, hours: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Which hours of which weeks bring sun to a spot; a cell sets the sun bar to its hour. */
export function WeeksTable({ pictured, place }: { readonly pictured: Pictured; readonly place: string }) {
  const live = pictured.weeks.value;
  const weeks = live.shown?.value;
  return (
    <details class="picture" onToggle={({ currentTarget }) => (pictured.weeksOpen.value = currentTarget.open)}>
      <summary>Hour by date at {place}</summary>
      {live.problems.map(({ message }) => (
        <p key={message} role="alert">
          {message}
        </p>
      ))}
      {!weeks && live.working && <p>Following the sun through the season…</p>}
      {weeks && live.problems.length === 0 && (
        <figure class={isStale(live) ? 'weeks out-of-date' : 'weeks'}>
          <div class="sky-side">
            {(Object.keys(SHOWN) as WeeksShown[]).map((one) => (
              <button
                key={one}
                type="button"
                aria-pressed={weeksShown.value === one}
                onClick={() => (weeksShown.value = one)}
              >
                {SHOWN[one]}
              </button>
            ))}
          </div>
          <Cells weeks={weeks} caption={findingOf(weeks, place)} />
          <figcaption>
            {findingOf(weeks, place)} A column is a week, a row an hour of the clock. 9 is the whole hour, 0 a trace,
            blank none;{' '}
            {weeksShown.value === 'harmful'
              ? 'an hour counts in full when the air is sure to be at or above your hot limit.'
              : 'under 60 % cloth an hour counts 0.4.'}
            {weeksShown.value === 'year' && ' A month whose climate you have not given counts as clear.'}
            {weeks.some(({ over }) => over?.includes(true)) &&
              ' Outlined: on a heat day of that month a thirsty leaf is over its limit.'}
            {weeks.some(({ clocksChanged }) => clocksChanged) && ' The thick upright line: the clocks change.'} Tap a
            cell to set the sun bar to it.
          </figcaption>
        </figure>
      )}
    </details>
  );
}

function hoursOf(week: SpotWeek): readonly number[] {
  return weeksShown.value === 'harmful' ? week.harmful : week.sun;
}

function findingOf(weeks: readonly SpotWeek[], place: string): string {
  const cells = weeks.flatMap((week) => hoursOf(week).map((value, hour) => ({ week, hour, value })));
  const worst = cells.reduce((most, cell) => (cell.value > most.value ? cell : most), cells[0]);
  const what = weeksShown.value === 'harmful' ? 'hot sun' : 'sun';
  if (!worst || worst.value < 0.05)
    return `No ${what} reaches ${place} in the ${weeksShown.value === 'year' ? 'year' : 'season'}.`;
  const total = (week: SpotWeek): number => hoursOf(week).reduce((sum, hour) => sum + hour, 0);
  const heaviest = weeks.reduce((most, week) => (total(week) > total(most) ? week : most));
  const hours = hoursShown(weeks).filter((hour) => hoursOf(heaviest)[hour] >= 0.25);
  const between = hours.length > 0 ? `, between ${clock(hours[0])} and ${clock(hours[hours.length - 1] + 1)}` : '';
  return (
    `Most ${what} comes to ${place} in the week of ${dayWords(heaviest.from)}: ` +
    `${total(heaviest).toFixed(1)} h a day${between}.`
  );
}

function clock(hour: number): string {
  return clockWords((hour % 24) * 60, shownClock.value);
}

/** From the first hour with any sun to the last. */
function hoursShown(weeks: readonly SpotWeek[]): number[] {
  const sunny = Array.from({ length: 24 }, (_, hour) => hour).filter((hour) =>
    weeks.some(({ sun }) => sun[hour] > 0.005),
  );
  return sunny.length === 0
    ? []
    : Array.from({ length: sunny[sunny.length - 1] - sunny[0] + 1 }, (_, k) => sunny[0] + k);
}

function Cells({ weeks, caption }: { readonly weeks: readonly SpotWeek[]; readonly caption: string }) {
  const hours = hoursShown(weeks);
  const atWeek = clamp(cursor.value?.week ?? 0, 0, weeks.length - 1);
  const atHour = clamp(cursor.value?.hour ?? 0, hours[0], hours[hours.length - 1]);
  const move = (event: KeyboardEvent & { readonly currentTarget: HTMLTableElement }): void => {
    const step = MOVES[event.key];
    if (event.key === 'Enter' || event.key === ' ') setSunBar(weeks[atWeek], atHour);
    else if (step) {
      cursor.value = {
        week: clamp(atWeek + step[0], 0, weeks.length - 1),
        hour: clamp(atHour + step[1], hours[0], hours[hours.length - 1]),
      };
      const table = event.currentTarget;
      requestAnimationFrame(() => table.querySelector<HTMLElement>('[tabindex="0"]')?.focus());
    } else return;
    event.preventDefault();
  };
  return (
    <div class="weeks-scroll">
      <table
        role="grid"
        class={weeks.length > 30 ? 'weeks-grid long' : 'weeks-grid'}
        aria-label={caption}
        onKeyDown={move}
      >
        <WeekHeads weeks={weeks} />
        <tbody>
          {hours.map((hour) => (
            <tr key={hour}>
              <th scope="row">{clock(hour)}</th>
              {weeks.map((week, k) => (
                <Cell
                  key={week.from}
                  week={week}
                  hour={hour}
                  edge={outlineAt(weeks, k, hour)}
                  stop={k === atWeek && hour === atHour}
                  onChoose={() => {
                    cursor.value = { week: k, hour };
                    setSunBar(week, hour);
                  }}
                />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** A month's name where it begins. */
function WeekHeads({ weeks }: { readonly weeks: readonly SpotWeek[] }) {
  return (
    <thead>
      <tr>
        <td />
        {weeks.map((week, k) => (
          <th key={week.from} scope="col" class={week.clocksChanged ? 'clocks-change' : undefined}>
            <span aria-hidden="true">
              {k === 0 || monthOfDate(week.from) !== monthOfDate(weeks[k - 1].from)
                ? MONTHS[monthOfDate(week.from) - 1].slice(0, 3)
                : ''}
            </span>
            <span class="unseen">week of {dayWords(week.from)}</span>
          </th>
        ))}
      </tr>
    </thead>
  );
}

function Cell({
  week,
  hour,
  edge,
  stop,
  onChoose,
}: {
  readonly week: SpotWeek;
  readonly hour: number;
  readonly edge: string;
  readonly stop: boolean;
  readonly onChoose: () => void;
}) {
  const value = hoursOf(week)[hour];
  const ramp = weeksShown.value === 'harmful' ? HEAT_RAMP : LIGHT_RAMP;
  const blank = value < 0.005;
  return (
    <td
      role="gridcell"
      tabIndex={stop ? 0 : -1}
      class={week.clocksChanged ? 'clocks-change' : undefined}
      style={{
        ...(blank ? {} : { background: ramp[Math.min(15, Math.floor(value * 16))], color: '#000' }),
        boxShadow: edge,
      }}
      onClick={onChoose}
    >
      {blank ? <span class="unseen">none</span> : Math.min(9, Math.floor(value * 10))}
      {week.over?.[hour] && <span class="unseen">, leaf over its limit</span>}
    </td>
  );
}

/** The sides on which a cell borders hours that are not too hot, as shadows inside it. */
function outlineAt(weeks: readonly SpotWeek[], k: number, hour: number): string {
  const isOver = (week: number, at: number): boolean => weeks[week]?.over?.[at] ?? false;
  if (!isOver(k, hour)) return 'none';
  const edges = [
    [isOver(k, hour - 1), '0 2px'],
    [isOver(k, hour + 1), '0 -2px'],
    [isOver(k - 1, hour), '2px 0'],
    [isOver(k + 1, hour), '-2px 0'],
  ] as const;
  return (
    edges
      .filter(([goesOn]) => !goesOn)
      .map(([, offset]) => `inset ${offset}`)
      .join(', ') || 'none'
  );
}

function setSunBar(week: SpotWeek, hour: number): void {
  periodKind.value = 'day';
  monthDay.value = monthDayOf(week.middle);
  const clocks = day.value.shown?.value.clock;
  const at = clocks ? clocks.indexOf(hour * 60 + 30) : -1;
  minute.value = at >= 0 ? at : hour * 60 + 30;
}
