import { currencyOf, fewNames } from '../../../engine/index.ts';
import type { LadderStep } from '../../../engine/index.ts';
import { moneyWords } from '../../common/figures.ts';
import { plan } from '../../state/yard.ts';
import { ShareBar } from '../parts/answer/ShareBar.tsx';
import { cheaper } from '../parts/tried.ts';

/** What to try first, the cheapest at the top, with what it takes off today's heat damage; its why behind its name. */
export function Ladder() {
  const { shown, problems } = cheaper.value;
  if (shown?.value.steps.length === 0) return null;
  return (
    <section aria-label="Cheaper first">
      <h2 class="unseen">Cheaper first</h2>
      {problems.map(({ message }) => (
        <p key={message}>{message}</p>
      ))}
      <ol class="ladder">
        {shown?.value.steps.map((rung) => (
          <li key={rung.id}>
            <details>
              <summary>
                <span class="rung-line">
                  <strong>{rung.name}:</strong> <Effect rung={rung} />
                </span>
                {typeof rung.sparedShare === 'number' && <ShareBar spared={rung.sparedShare} />}
              </summary>
              <p>
                {forWhom(rung)}
                {rung.sentence}
              </p>
            </details>
          </li>
        ))}
      </ol>
    </section>
  );
}

/** Where pots go, the sentence names each. */
function forWhom({ moves, sparedShare, serves }: LadderStep): string {
  return moves !== undefined || sparedShare === null ? '' : `For ${fewNames(plan.value, serves)}. `;
}

function Effect({ rung: { gain, cost } }: { readonly rung: LadderStep }) {
  const money =
    cost === undefined || cost === null ? '' : cost === 0 ? ', free' : `, ${moneyWords(cost, currencyOf(plan.value))}`;
  return (
    <span class="rung-effect">
      {gain}
      {money}.
    </span>
  );
}
