import {
  type ComparedChoice,
  type SeenFrom,
  formatShare,
  effectCell,
  formatLength,
  formatPerArea,
  hoursWords,
} from '../../../engine/index.ts';
import { harmWords, moneyWords, sureMarks, sureWords } from '../../common/figures.ts';
import { calledById } from '../../map/drawing/feature-edits.ts';
import { plan, units } from '../../state/yard.ts';
import { compared, comparison, openTheOption } from '../parts/tried.ts';
import { found } from './search.ts';

/** Every option in a row, what it changes for whom behind its name; on a narrow page each row is a card. */
export function CompareTable() {
  const result = compared.value;
  const { working } = comparison.value;
  if (!result || !plan.value.options?.length)
    return working ? (
      <p class="quiet" role="status">
        Holding the options against today… {formatShare(working.done)}
      </p>
    ) : null;
  const { choices, served } = result;
  const rules = found.value?.plan.features === plan.value.features ? found.value.result.rules : [];
  return (
    <section aria-label="Compare">
      <table class="side-by-side" role="table" aria-busy={working !== null}>
        <thead role="rowgroup">
          <tr role="row">
            {['Option', 'Heat damage', 'Cost', 'Work'].map((label) => (
              <th key={label} scope="col" role="columnheader">
                {label}
              </th>
            ))}
          </tr>
        </thead>
        {choices.map((choice) => (
          <Choice
            key={choice.options.join()}
            choice={choice}
            served={served}
            short={(name) => shortOf(choices, name)}
          />
        ))}
      </table>
      {rules.map(({ rule, sentence }) => (
        <p key={rule} class="rule-price">
          {sentence}
        </p>
      ))}
      <p class="quiet">{result.weights}</p>
    </section>
  );
}

function shortOf(choices: readonly ComparedChoice[], name: string): string {
  return name === 'today' ? name : (choices.find((choice) => choice.name === name)?.options.join(' + ') ?? name);
}

interface ChoiceProps {
  readonly choice: ComparedChoice;
  /** Ids of the plants that one option or another is for. */
  readonly served: readonly string[];
  readonly short: (name: string) => string;
}

function Choice({ choice, served, short }: ChoiceProps) {
  const { options, name, spared, sparedPm, cost, clothArea } = choice;
  return (
    <tbody role="rowgroup">
      <tr role="row">
        <th scope="row" role="rowheader">
          <button type="button" title={name} onClick={() => openTheOption(options[0])}>
            {options.join(' + ')}
          </button>
        </th>
        <td role="cell" data-label="Heat damage">
          {changeWords(choice, served)}{' '}
          <span title={sureWords(spared, sparedPm)} aria-label={sureWords(spared, sparedPm)} role="img">
            {sureMarks(spared, sparedPm)}
          </span>
        </td>
        <td role="cell" data-label="Cost">
          {moneyWords(cost.total, cost.currency)}
        </td>
        <td role="cell" data-label="Work">
          {clothArea === 0 ? 'none' : hoursWords(cost.hours)}
        </td>
      </tr>
      <tr role="row">
        <td colSpan={4} role="cell" class="choice-more">
          {moreWords(choice, short).join(' ')}
        </td>
      </tr>
    </tbody>
  );
}

/** "46 % less"; where options are for several plants: "Young apricot 73 % less; 10 % in all". */
function changeWords(choice: ComparedChoice, served: readonly string[]): string {
  const { effect, together, sparedShare } = choice;
  if (together === null) return sparedShare === null ? 'none today' : 'no less';
  const change = formatShare(Math.abs(together.share));
  const which = together.share < 0 ? 'more' : 'less';
  if (served.length === 1 || effect.plants.length === 0) return `${change} ${which}`;
  return `${effectCell(choice, served)} less; ${change} ${which === 'less' ? '' : 'more '}in all`;
}

/** Whose verdict it changes, whom it leaves too dark, who sees it, and what is as good or better. */
function moreWords(
  { plants, tooDark, seenFrom, asGoodAs, beatenBy }: ComparedChoice,
  short: ChoiceProps['short'],
): string[] {
  const changed = plants.flatMap(({ name, before, after }) =>
    before && after && before.verdict !== after.verdict ? [`${name}: ${before.verdict} → ${after.verdict}.`] : [],
  );
  const dark = plants.filter(({ id, before }) => tooDark.includes(id) && before?.light.standing !== 'too dark');
  return [
    ...(changed.length > 0 ? changed : ['No verdict changes.']),
    ...(dark.length > 0 ? [`Too dark for ${dark.map(({ name }) => name).join(', ')}.`] : []),
    ...seenWords(seenFrom),
    ...(asGoodAs.length > 0 ? [`As good as ${asGoodAs.map(short).join(', ')}.`] : []),
    ...(beatenBy === null ? [] : [`In all, ${short(beatenBy)} is as good for no more money.`]),
  ];
}

function seenWords(seen: readonly SeenFrom[]): string[] {
  return seen
    .filter(({ hidden }) => !hidden)
    .map(({ eye, shows }) => `${calledById(eye)}: ${formatLength(shows, units.value)} shows.`);
}

/** The measure behind the shares, with how far it may be off. */
export function CuriousFigures() {
  const result = compared.value;
  if (!result) return null;
  return (
    <ul class="curious-figures" aria-label="The measure behind the shares">
      <li>Today: {harmWords(result.today.harm)} over the limits a hot day.</li>
      {result.choices.map(({ options, spared, sparedPm, payoff }) => (
        <li key={options.join()}>
          {options.join(' + ')}: spares {spared.toFixed(1)} ± {sparedPm.toFixed(1)} K·h
          {payoff.perSquareMetre !== null && `, ${formatPerArea(payoff.perSquareMetre, 'K·h', units.value)} of cloth`}.
        </li>
      ))}
    </ul>
  );
}
