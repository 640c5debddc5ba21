import { batch } from '@preact/signals';
import { useState } from 'preact/hooks';
import { inYearlySpan, dayWords, monthDayOf } from '../../../engine/index.ts';
import type { DayTable, MonthDay } from '../../../engine/index.ts';
import { lazily } from '../../common/Lazy.tsx';
import { clockWords } from '../../common/words.ts';
import { shownClock } from '../../state/clock.ts';
import { day, heat, sunNow } from '../../state/results.ts';
import { minute, monthDay, periodKind, playing } from '../../state/view.ts';
import type { PeriodKind } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';
import { DayArc } from './DayArc.tsx';
import { SeasonStrip } from './SeasonStrip.tsx';
import { harmWords, heightWords, whereWords } from './words.ts';
import './style.css';

const TypedWhen = lazily(() => import('../first-stages.ts').then((part) => part.TypedWhen), '');

const PERIODS: readonly { readonly kind: PeriodKind; readonly words: string }[] = [
  { kind: 'season', words: 'Season' },
  { kind: 'day', words: 'This day' },
  { kind: 'heatwave', words: 'Heatwave day' },
];

/** The window sill: the sun of the day and the heat of the year, each with a bead. */
export function SunBar() {
  const [unfolded, setUnfolded] = useState(false);
  const table = day.value.shown?.value;
  const date = periodKind.value === 'heatwave' && table ? monthDayOf(table.date) : monthDay.value;
  return (
    <section class={`sun-bar ${unfolded ? 'sun-bar-unfolded' : ''}`} aria-label="Sun bar">
      <div class="sun-bar-now">
        <button
          type="button"
          class="sun-bar-play"
          aria-pressed={playing.value}
          aria-label={playing.value ? 'Stop the sun' : 'Let the sun run'}
          onClick={() => (playing.value = !playing.value)}
        >
          {playing.value ? '❙❙' : '▶'}
        </button>
        <NowWords date={date} table={table} />
        <button type="button" class="sun-bar-fold" aria-expanded={unfolded} onClick={() => setUnfolded(!unfolded)}>
          {unfolded ? 'Fold' : 'Date'}
        </button>
      </div>
      <div class="sun-bar-main">
        <div class="sun-bar-arc">
          {table && <DayArc table={table} height={unfolded ? 72 : 84} />}
          {table?.noClimate && <p class="sun-bar-problem">{table.noClimate}</p>}
          {day.value.problems.map(({ message }) => (
            <p key={message} class="sun-bar-problem">
              {message}
            </p>
          ))}
        </div>
        <div class="sun-bar-season">
          <SeasonStrip
            date={date}
            onChange={(next) => {
              monthDay.value = next;
              periodKind.value = 'day';
            }}
          />
          <PeriodChoice date={date} />
        </div>
      </div>
    </section>
  );
}

/** The time and the day, and what the sun does then. @param table `undefined` until the day is known */
function NowWords({ date, table }: { readonly date: MonthDay; readonly table: DayTable | undefined }) {
  const now = sunNow.value;
  const offSeason = !inYearlySpan(plan.value.season, date);
  const at = table ? Math.min(minute.value, table.minutes) : 0;
  return (
    <div class="sun-bar-words">
      <p class="sun-bar-told">
        <strong class="sun-bar-time">{now ? clockWords(now.clock, shownClock.value) : '…'}</strong>{' '}
        <span class="sun-bar-date">{dayWords(date)}</span>
      </p>
      {heat.value.shown && <TypedWhen date={date} table={table} />}
      {table && now && (
        <p class="sun-bar-detail">
          {offSeason && (
            <>
              <b>not your season</b> ·{' '}
            </>
          )}
          {!offSeason && now.harm >= 0.1 && (
            <>
              <b>{harmWords(now.harm)}</b> ·{' '}
            </>
          )}
          {heightWords(table, at)}
          <span class="sun-bar-where">{whereWords(table, at)}</span>
        </p>
      )}
    </div>
  );
}

/** @param date shown now: another kind of numbers leaves it where it is */
function PeriodChoice({ date }: { readonly date: MonthDay }) {
  return (
    <fieldset class="sun-bar-period">
      <legend class="unseen">What the numbers are for</legend>
      {PERIODS.map(({ kind, words }) => (
        <label key={kind}>
          <input
            type="radio"
            name="period"
            checked={periodKind.value === kind}
            onChange={() =>
              batch(() => {
                monthDay.value = date;
                periodKind.value = kind;
              })
            }
          />
          {words}
        </label>
      ))}
    </fieldset>
  );
}
