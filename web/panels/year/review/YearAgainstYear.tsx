import { DAMAGE_SCALE, nameOf, seasonYearOf } from '../../../../engine/index.ts';
import type { DamageNote, Plan, ReviewResult, YearComparison } from '../../../../engine/index.ts';
import { plan } from '../../../state/yard.ts';
import { LeafScore } from '../diary/LeafScore.tsx';
import { Summers } from './Summers.tsx';

/** Last year and this year side by side, plant by plant, with the verdict in words. */
export function YearAgainstYear({ damage, years }: Pick<ReviewResult, 'damage' | 'years'>) {
  const alone = oneYearOnly(plan.value, damage, years);
  return (
    <>
      <h3>Year against year</h3>
      {years.map((each) => (
        <Compared key={each.plant} compared={each} />
      ))}
      {alone.map(({ plant, year, score }) => (
        <table key={plant} class="two-years">
          <caption>
            <bdi>{nameOf(plan.value, plant)}</bdi>
          </caption>
          <thead>
            <tr>
              <td />
              <th scope="col">{year}</th>
              <th scope="col">{year + 1}</th>
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">Damage</th>
              <td>
                <Score score={score} />
              </td>
              <td>not noted yet</td>
            </tr>
          </tbody>
        </table>
      ))}
      {years.length === 0 && (
        <p>
          {damage.length === 0
            ? 'No damage noted yet. Note it this year and next, also where there is none: '
            : 'Damage of one year only. Note it the other year too, also where there is none: '}
          two years can be held against each other, and a plant that nothing was changed about tells how much the
          weather did.
        </p>
      )}
      <Summers />
    </>
  );
}

function Compared({ compared: { plant, years, damage, headline, sentence } }: { readonly compared: YearComparison }) {
  return (
    <>
      <p>
        <strong>{headline}</strong> {sentence.slice(headline.length + 1)}
      </p>
      <table class="two-years">
        <caption>
          <bdi>{nameOf(plan.value, plant)}</bdi>
        </caption>
        <thead>
          <tr>
            <td />
            <th scope="col">{years[0]}</th>
            <th scope="col">{years[1]}</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">Damage</th>
            <td>
              <Score score={damage[0]} />
            </td>
            <td>
              <Score score={damage[1]} />
            </td>
          </tr>
        </tbody>
      </table>
    </>
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
  of: Plan,
  damage: readonly DamageNote[],
  years: readonly YearComparison[],
): readonly { readonly plant: string; readonly year: number; readonly score: number }[] {
  const plants = [...new Set(damage.map(({ plant }) => plant))].filter(
    (plant) => !years.some((each) => each.plant === plant),
  );
  return plants.map((plant) => {
    const own = damage.filter((note) => note.plant === plant);
    return { plant, year: seasonYearOf(of, own[0].date), score: Math.max(...own.map(({ score }) => score)) };
  });
}
