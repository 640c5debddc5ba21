import type { ComparedChoice } from '../../../engine/index.ts';
import { plan } from '../../state/yard.ts';
import { compared, comparison, openTheOption } from './tried.ts';
import { harmWords, moneyWords, percentWords } from './words.ts';

/** Today and every option side by side. */
export function CompareTable() {
  const result = compared.value;
  const { working } = comparison.value;
  if (!result || !plan.value.options?.length) return working ? <p class="quiet" role="status">Holding the options against today… {percentWords(working.done)}</p> : null;
  const { today, choices } = result;
  const words = (text: string): string => (text === 'today' ? text : (choices.find(({ name }) => name === text)?.options.join(' + ') ?? text));
  const row = (label: string, first: string, of: (choice: ComparedChoice) => string) => (
    <tr><th scope="row">{label}</th><td>{first}</td>{choices.map((choice) => <td key={choice.options.join()}>{of(choice)}</td>)}</tr>
  );
  return (
    <section aria-label="Side by side">
      <h2>Side by side</h2>
      <div class="wide-table" tabIndex={0} role="region" aria-label="Table of options, scrolls sideways">
        <table class="side-by-side" aria-busy={working !== null}>
          <thead>
            <tr>
              <td />
              <th scope="col">Today</th>
              {choices.map(({ options, name }) => <th key={options.join()} scope="col"><button type="button" title={name} onClick={() => openTheOption(options[0])}>{options.join(' + ')}</button></th>)}
            </tr>
          </thead>
          <tbody>
            {today.plants.map(({ id, name, before }) => row(name, before?.verdict ?? '–', ({ plants }) => {
              const after = plants.find((each) => each.id === id)?.after;
              return after ? (after.verdict ?? '–') : 'gone';
            }))}
            {row('Harm a hot day', harmWords(today.harm), ({ harm }) => harmWords(harm))}
            {row('Spared', '', ({ sparedShare }) => (sparedShare === null ? '–' : percentWords(sparedShare)))}
            {row('How sure', '', ({ spared, sparedPm }) => `${spared.toFixed(1)} ± ${sparedPm.toFixed(1)} K·h`)}
            {row('Cost', '0', ({ cost }) => moneyWords(cost.total, cost.currency))}
            {row('Cloth', '–', ({ clothArea }) => (clothArea === 0 ? 'none' : `${clothArea.toFixed(1)} m²`))}
            {row('Spared a m² of cloth', '', ({ payoff }) => (payoff.perSquareMetre === null ? '–' : `${payoff.perSquareMetre.toFixed(1)} K·h`))}
            {row('Too dark for', '', ({ tooDark, plants }) => tooDark.map((id) => plants.find((each) => each.id === id)?.name ?? id).join(', ') || 'none')}
            {row('As good as', '', ({ asGoodAs }) => asGoodAs.map(words).join(', ') || '–')}
          </tbody>
        </table>
      </div>
      <p class="quiet">{result.weights}</p>
    </section>
  );
}
