import type { ComponentChild } from 'preact';
import { DAMAGE_SCALE, nameOf, seasonYearOf, yearOf, monthDayOf } from '../../../../engine/index.ts';
import type { CivilDate, DamageNote, ReviewResult, YearComparison } from '../../../../engine/index.ts';
import { plan } from '../../../state/yard.ts';
import { LeafScore } from '../diary/LeafScore.tsx';
import { missing, page } from '../page.ts';
import { today } from '../season.ts';
import { Summers } from './Summers.tsx';

/** Last year and this year side by side, plant by plant, with the verdict in words. */
export function YearAgainstYear({ damage, years }: Pick<ReviewResult, 'damage' | 'years'>) {
  const alone = oneYearOnly(damage, years);
  return (
    <>
      <h3 class="unseen">Year against year</h3>
      {years.map((each) => (
        <Compared key={each.plant} compared={each} />
      ))}
      {alone.map(({ plant, date, score }) => {
        const year = seasonYearOf(plan.value, date);
        const [before, after] = [-1, 1].map((by) => aYearAway(date, by));
        // The summer after, or the one before where that is still to come.
        const [year0, lacks] = after <= today() ? [year, after] : [year - 1, before];
        const scores = [<Score key="score" score={score} />, <NoteIt key="note" plant={plant} date={lacks} />];
        return (
          <TwoYears key={plant} plant={plant} years={[year0, year0 + 1]}>
            {lacks === after ? scores : scores.toReversed()}
          </TwoYears>
        );
      })}
      {damage.length === 0 && (
        <p>
          No damage noted yet. Note it this year and next, also where there is none; a plant that nothing was changed
          about tells how much the weather did.
        </p>
      )}
      <Summers compared={years.length > 0} />
    </>
  );
}

function Compared({ compared: { plant, years, damage, headline, sentence } }: { readonly compared: YearComparison }) {
  return (
    <>
      <p>
        <strong>{headline}</strong> {sentence.slice(headline.length + 1)}
      </p>
      <TwoYears plant={plant} years={years}>
        {damage.map((score, k) => (
          <Score key={k} score={score} />
        ))}
      </TwoYears>
    </>
  );
}

interface TwoYearsProps {
  readonly plant: string;
  readonly years: readonly number[];
  /** One a year. */
  readonly children: readonly ComponentChild[];
}

function TwoYears({ plant, years, children }: TwoYearsProps) {
  return (
    <table class="two-years">
      <caption>
        Damage: <bdi>{nameOf(plan.value, plant)}</bdi>
      </caption>
      <thead>
        <tr>
          {years.map((year) => (
            <th key={year} scope="col">
              {year}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        <tr>
          {children.map((score, k) => (
            <td key={k}>{score}</td>
          ))}
        </tr>
      </tbody>
    </table>
  );
}

/** The same day of another year; of 29 February the 28th. */
function aYearAway(date: CivilDate, by: number): CivilDate {
  return `${yearOf(date) + by}-${monthDayOf(date).replace('02-29', '02-28')}`;
}

/** The way to the diary for a summer that nothing is noted of. */
function NoteIt({ plant, date }: { readonly plant: string; readonly date: CivilDate }) {
  function note(): void {
    missing.value = { feature: plant, date };
    page.value = 'Diary';
  }
  return (
    <button type="button" onClick={note}>
      Note {yearOf(date)}
    </button>
  );
}

function Score({ score }: { readonly score: number }) {
  return (
    <span class="two-years-score">
      <LeafScore score={score} />
      {score} of 5: {DAMAGE_SCALE[Math.round(score)]}
    </span>
  );
}

/** Plants scored in one summer, by their worst. */
function oneYearOnly(
  damage: readonly DamageNote[],
  years: readonly YearComparison[],
): readonly { readonly plant: string; readonly date: CivilDate; readonly score: number }[] {
  const plants = [...new Set(damage.map(({ plant }) => plant))].filter(
    (plant) => !years.some((each) => each.plant === plant),
  );
  return plants.map((plant) => {
    const own = damage.filter((note) => note.plant === plant);
    return { plant, date: own[0].date, score: Math.max(...own.map(({ score }) => score)) };
  });
}
