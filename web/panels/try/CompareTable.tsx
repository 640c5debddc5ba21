import type { ComparedChoice, ComparedPlant, PlantStand, SeenFrom } from '../../../engine/index.ts';
import { formatArea, formatPerArea, hoursWords, seenWords } from '../../../engine/index.ts';
import { aside } from '../../state/view.ts';
import { plan, units } from '../../state/yard.ts';
import { found } from './search.ts';
import { Stand } from './Stand.tsx';
import { compared, comparison, openTheOption } from '../parts/tried.ts';
import { LESS_LIGHT, harmWords, moneyWords, percentWords, sureMarks, sureWords } from '../../common/figures.ts';

/** Today and every option side by side. */
export function CompareTable() {
  const result = compared.value;
  const { working } = comparison.value;
  if (!result || !plan.value.options?.length)
    return working ? (
      <p class="quiet" role="status">
        Holding the options against today… {percentWords(working.done)}
      </p>
    ) : null;
  const { today, choices, ranked } = result;
  const short = (name: string): string =>
    name === 'today' ? name : (choices.find((choice) => choice.name === name)?.options.join(' + ') ?? name);
  const list = (names: readonly string[]): string => names.map(short).join(', ') || '–';
  const row = (label: string, first: string, of: (choice: ComparedChoice) => string) => (
    <tr>
      <th scope="row">{label}</th>
      <td>{first}</td>
      {choices.map((choice) => (
        <td key={choice.options.join()}>{of(choice)}</td>
      ))}
    </tr>
  );
  const rules = found.value?.plan.features === plan.value.features ? found.value.result.rules : [];
  return (
    <section aria-label="Side by side">
      <h2>Side by side</h2>
      <Winner choice={choices.find(({ name }) => name === ranked[0])} short={short} />
      <div class="wide-table" tabIndex={0} role="region" aria-label="Table of options, scrolls sideways">
        <table class="side-by-side" aria-busy={working !== null}>
          <caption>
            Under each verdict: heat over the plant’s limit on a hot day, and the light left for growing.
          </caption>
          <thead>
            <tr>
              <td />
              <th scope="col">Today</th>
              {choices.map(({ options, name }) => (
                <th key={options.join()} scope="col">
                  <button type="button" title={name} onClick={() => openTheOption(options[0])}>
                    {options.join(' + ')}
                  </button>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {today.plants.map(({ id, name, before }) => (
              <tr key={id}>
                <th scope="row">{name}</th>
                <td>{before ? <Cell stand={before} dark={before.light.standing === 'too dark'} /> : '–'}</td>
                {choices.map(({ options, plants, tooDark }) => (
                  <td key={options.join()}>
                    <After plant={plants.find((each) => each.id === id)} dark={tooDark.includes(id)} />
                  </td>
                ))}
              </tr>
            ))}
            {row('Harm a hot day', harmWords(today.harm), ({ harm }) => harmWords(harm))}
            {row('Spared', '', ({ sparedShare }) => (sparedShare === null ? '–' : percentWords(sparedShare)))}
            <tr>
              <th scope="row">
                <button type="button" class="in-words" onClick={() => (aside.value = 'sure')}>
                  How sure
                </button>
              </th>
              <td />
              {choices.map(({ options, spared, sparedPm }) => (
                <td key={options.join()}>
                  <span title={sureWords(spared, sparedPm)} aria-hidden="true">
                    {sureMarks(spared, sparedPm)}
                  </span>{' '}
                  <span class="stand">
                    {spared.toFixed(1)} ± {sparedPm.toFixed(1)} K·h
                  </span>
                </td>
              ))}
            </tr>
            {row('Cost', '0', ({ cost }) => moneyWords(cost.total, cost.currency))}
            {row('Work of one person', '–', ({ clothArea, cost }) => (clothArea === 0 ? 'none' : hoursWords(cost)))}
            {row('Cloth', '–', ({ clothArea }) => (clothArea === 0 ? 'none' : formatArea(clothArea, units.value)))}
            {row('Spared for its cloth', '', ({ payoff }) =>
              payoff.perSquareMetre === null ? '–' : formatPerArea(payoff.perSquareMetre, 'K·h', units.value),
            )}
            {row('Seen from', '', ({ seenFrom }) => seenBy(seenFrom))}
            {row(
              'Too dark for',
              '',
              ({ tooDark, plants }) =>
                tooDark.map((id) => plants.find((each) => each.id === id)?.name ?? id).join(', ') || 'none',
            )}
            {row('As good as', '', ({ asGoodAs }) => list(asGoodAs))}
            {row('Beaten by', '', ({ beatenBy }) => list(beatenBy === null ? [] : [beatenBy]))}
          </tbody>
        </table>
      </div>
      {rules.map(({ rule, sentence }) => (
        <p key={rule} class="rule-price">
          {sentence}
        </p>
      ))}
      <p class="quiet">
        {result.weights} “As good as”: the difference is less than the guesses are worth. “Beaten by”: that one is no
        worse in anything and better in something.
      </p>
    </section>
  );
}

/** The one that spares most is named, and not praised where it takes too much light. */
function Winner({
  choice,
  short,
}: {
  readonly choice: ComparedChoice | undefined;
  readonly short: (name: string) => string;
}) {
  if (!choice || choice.spared <= 0) return null;
  const dark = choice.plants.flatMap(({ id, name, before, after }) => {
    const [was, is] = [before?.light.dailyLight ?? 0, after?.light.dailyLight ?? 0];
    return choice.tooDark.includes(id) && was - is >= LESS_LIGHT
      ? [`${name} (light ${was.toFixed(0)} → ${is.toFixed(0)} mol/m²)`]
      : [];
  });
  const alike = choice.asGoodAs.map(short);
  return (
    <p class="finding">
      {short(choice.name)} spares most, {percentWords(choice.sparedShare ?? 0)} of the harm
      {alike.length > 0 && `, but ${alike.join(', ')} may be as good`}.
      {dark.length > 0 && <strong class="too-dark"> It leaves {dark.join(', ')} too dark.</strong>}
    </p>
  );
}

function After({ plant, dark }: { readonly plant: ComparedPlant | undefined; readonly dark: boolean }) {
  return plant?.after ? <Cell stand={plant.after} dark={dark} /> : <>gone</>;
}

function Cell({ stand: { verdict, harm, light }, dark }: { readonly stand: PlantStand; readonly dark: boolean }) {
  return (
    <>
      <Stand verdict={verdict} harm={harm} />
      <span class="quiet">, {light.dailyLight.toFixed(0)} mol/m²</span>
      {dark && verdict !== 'too dark' && <strong class="too-dark"> too dark</strong>}
    </>
  );
}

function seenBy(seen: readonly SeenFrom[]): string {
  const open = seen.filter(({ hidden }) => !hidden);
  if (seen.length === 0) return '–';
  return open.length === 0 ? 'nowhere' : open.map((one) => seenWords(plan.value, one, units.value)).join('; ');
}
