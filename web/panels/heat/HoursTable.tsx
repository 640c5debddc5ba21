import type { SpotResult } from '../../../engine/index.ts';
import { formatTemperature, dayWords } from '../../../engine/index.ts';
import { clockWords } from '../../common/words.ts';
import { shownClock } from '../../state/clock.ts';
import { isStale } from '../../state/live.ts';
import type { Live } from '../../state/live.ts';
import { minute, monthDay, periodKind } from '../../state/view.ts';
import { shownPlan, units } from '../../state/yard.ts';
import { shapeName } from '../parts/quantity-words.ts';
import { hottestOf, spellsOf } from './spells.ts';
import type { Spell } from './spells.ts';

/** The answer for the very place that is asked about: another place's hours never stand under its name. */
function answerHere({ asked, shown }: Live<'spot'>): SpotResult | undefined {
  if (!asked || !shown) return undefined;
  const { at, height } = shown.args;
  return at[0] === asked.at[0] && at[1] === asked.at[1] && height === asked.height ? shown.value : undefined;
}

/** One day's sun at a place: when it comes, and what stands before it when it does not. */
export function HoursTable({ live, place }: { readonly live: Live<'spot'>; readonly place: string }) {
  const result = answerHere(live);
  if (live.problems.length > 0) return <p role="alert">{live.problems[0].message}</p>;
  if (!result || !('steps' in result)) return <p>Following the sun through the day…</p>;
  const clock = (minutes: number): string => clockWords(minutes, shownClock.value);
  const hottest = hottestOf(result.steps);
  const spells = spellsOf(result.steps);
  const day = periodKind.value === 'heatwave' ? 'the heatwave day' : dayWords(monthDay.value);
  const hour = hottest && Math.floor(hottest.clock / 60) * 60;
  return (
    <div class={isStale(live) ? 'out-of-date' : undefined}>
      {hottest && hour !== null ? (
        <p>
          <strong>
            Hottest hour: {clock(hour)} to {clock(hour + 60)}
          </strong>
          , air {formatTemperature(hottest.air, units.value)} and {shareWords(hottest.share)}.
        </p>
      ) : (
        <p>
          <strong>No direct sun all day.</strong>
        </p>
      )}
      <table class="hours-table">
        <caption>
          The sun at {place} on {day}, by the clocks of {shownPlan.value.site.timeZone}, within 5 minutes
        </caption>
        <thead>
          <tr>
            <th scope="col">From – to</th>
            <th scope="col">Sun</th>
            <th scope="col">What stands before it</th>
          </tr>
        </thead>
        <tbody>
          {spells.map((spell) => (
            <tr key={spell.from}>
              <th scope="row">
                <button
                  type="button"
                  class="hour-link"
                  title="Show this hour on the drawing"
                  onClick={() => (minute.value = Math.round((spell.from + spell.to) / 2))}
                >
                  {clock(spell.from)}–{clock(spell.to)}
                </button>
              </th>
              <td>{shareWords(spell.share)}</td>
              <td>{blockerWords(spell)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function shareWords(share: number): string {
  if (share > 0.995) return 'full sun';
  return share < 0.005 ? 'shade' : `${Math.max(1, Math.round(share * 100))} % of the sun`;
}

/** What hides all of it is one thing, the nearest; what lets some through is all that stands there. */
function blockerWords({ blockers, share }: Spell): string {
  const named = share < 0.005 ? blockers.slice(0, 1) : blockers;
  return named.length === 0 ? 'nothing' : named.map(shapeName).join(', ');
}
