import { useEffect } from 'preact/hooks';
import {
  type OptionPlant,
  type SiteOption,
  type SiteResult,
  type Sight,
  type YardOption,
  formatShare,
  addedWords,
  countingWords,
  formatLength,
  heatwaveWords,
  LEAST_USEFUL,
  roleWords,
  seenWords,
  standsUnder,
  titleOf,
  worthMoving,
  uncapital,
} from '../../../engine/index.ts';
import { harmWords, moneyWords } from '../../common/figures.ts';
import { calledById } from '../../map/drawing/feature-edits.ts';
import { showOnMap } from '../../map/laid-on/overlays.ts';
import { plan, units } from '../../state/yard.ts';
import { putIntoOption } from '../parts/option-edits.ts';
import { cheaper, openOption } from '../parts/tried.ts';
import { foundMarks } from './marked.ts';
import { MoreForms } from './MoreForms.tsx';
import { more } from './search.ts';
import type { Found } from './search.ts';
import { Stand } from './Stand.tsx';

/** What the search looks at; what stands in options it does not. */
const YARD = ['features', 'site', 'climate', 'season', 'plants', 'stock'] as const;

/** What the search found, best first, numbered on the drawing. */
export function FoundOptions({ found: { plan: asked, result, sights } }: { readonly found: Found }) {
  const moved = worthMoving(cheaper.value.shown?.value.steps ?? [])?.serves ?? [];
  const helped = [...moved, ...(more.value?.together?.helped ?? []), ...(more.value?.living?.served ?? [])];
  useEffect(() => {
    foundMarks.value = result.options.map((option, k) => ({
      at: option.center,
      label: String(k + 1),
      chosen: k === 0,
    }));
  }, [result]);
  return (
    <div class="found" tabIndex={-1}>
      {YARD.some((part) => asked[part] !== plan.value[part]) && (
        <p class="said">The yard has changed since this search: find it again to be sure.</p>
      )}
      {result.besides !== '' && <p class="finding">{result.besides}</p>}
      {result.rules.map(({ rule, sentence }) => (
        <p key={rule} class="rule-price">
          {sentence}
        </p>
      ))}
      {[...(result.options.length > 0 ? result.unhidden : []), ...countingWords(asked, result, helped)].map(
        (sentence) => (
          <p key={sentence} class="quiet">
            {sentence}
          </p>
        ),
      )}
      <ol class="found-options">
        {result.options.map((option, k) => (
          <FoundOption key={k} option={option} sights={sights[k]} number={k + 1} options={result.options} />
        ))}
      </ol>
      <MoreForms />
      <Searched result={result} />
    </div>
  );
}

interface FoundOptionProps {
  readonly option: SiteOption;
  readonly sights: readonly Sight[];
  readonly number: number;
  /** All of them: each says what it adds to a cheaper one. */
  readonly options: readonly SiteOption[];
}

function FoundOption({ option, sights, number, options }: FoundOptionProps) {
  const title = `${titleOf(option, units.value)}, stops ${formatShare(option.density)}`;
  return (
    <li>
      <h3>
        {number}. {title}
        <em class="role"> {roleWords(option.roles)}</em>
      </h3>
      <p>
        {option.where}. {option.why}
      </p>
      <p class="figures">
        {[moneyWords(option.cost, option.currency), addedWords(option, options)]
          .filter((words) => words !== '')
          .join(' · ')}
      </p>
      <BeforeAfter plants={option.plants} />
      <details>
        <summary>What low sun it leaves, and who sees it</summary>
        <p class="low-sun">{heatwaveWords(plan.value, standsUnder(option))}</p>
        {option.plants.flatMap(({ id, lowSun }) =>
          lowSun
            ? [
                <p key={id} class="low-sun">
                  {lowSun.sentence}
                </p>,
              ]
            : [],
        )}
        {sights.length > 0 && <p class="sights">{sights.map(sightWords).join(' ')}</p>}
      </details>
      {option.notes.map((note) => (
        <p key={note} class="said">
          {note}
        </p>
      ))}
      <PutIntoOption option={option} what={stepWords(option, title)} number={number} />
    </li>
  );
}

interface PutIntoOptionProps {
  readonly option: SiteOption;
  /** As the step of the history says it. */
  readonly what: string;
  readonly number: number;
}

function PutIntoOption({ option, what, number }: PutIntoOptionProps) {
  const open = openOption.value;
  const put = optionWith(option);
  const holdsOther =
    open !== null && [...(open.adds ?? []), ...(open.removes ?? []), ...Object.keys(open.moves ?? {})].length > 0;
  function take(intoNew: boolean): void {
    putIntoOption(option.features, what, intoNew);
    foundMarks.value = [];
  }
  return (
    <>
      {holdsOther && put === null && (
        <p class="said">These figures are for the yard without what option {open.id} changes already.</p>
      )}
      <p class="paper-buttons">
        {put !== null && <>It is in option {put}. </>}
        {open && put === null && (
          <button type="button" onClick={() => take(false)}>
            Put {number} into option {open.id}
          </button>
        )}{' '}
        {put === null && (
          <button type="button" onClick={() => take(true)}>
            Put {number} into a new option
          </button>
        )}{' '}
        <button type="button" onClick={() => showOnMap(option.center)}>
          Show {number} on the drawing
        </button>
      </p>
    </>
  );
}

/** The option that holds it already, so that nobody puts it there twice; an option gives things ids of its own. */
function optionWith({ features }: SiteOption): string | null {
  const likeness = (thing: object): string => JSON.stringify({ ...thing, id: '' });
  const wanted = features.map(likeness);
  const holds = ({ adds = [] }: YardOption): boolean => wanted.every((one) => adds.map(likeness).includes(one));
  return plan.value.options?.find(holds)?.id ?? null;
}

function BeforeAfter({ plants }: Pick<SiteOption, 'plants'>) {
  return (
    <table class="before-after">
      <caption class="unseen">Plants before and after</caption>
      <thead>
        <tr>
          <th scope="col">Plant</th>
          <th scope="col">Today</th>
          <th scope="col">With it</th>
          <th scope="col">Light left</th>
        </tr>
      </thead>
      <tbody>
        {plants
          .filter(({ spared, tooDark }) => Math.abs(spared) >= 0.05 || tooDark)
          .map((plant) => (
            <FoundPlant key={plant.id} plant={plant} />
          ))}
      </tbody>
    </table>
  );
}

/** "Unseen from the lane." "Seen from: window upstairs, …; there a thing is hidden only up to 0.28 m." */
function sightWords(sight: Sight): string {
  const { eye, hidden, hiddenHeight } = sight;
  if (hidden) return `${calledById(eye)}: does not see it.`;
  const hides =
    hiddenHeight < LEAST_USEFUL
      ? 'nothing can be hidden there'
      : `there a thing is hidden only up to ${formatLength(hiddenHeight, units.value)}`;
  return `Seen from: ${seenWords(plan.value, sight, units.value)}; ${hides}.`;
}

function FoundPlant({ plant: { name, before, after, tooDark } }: { readonly plant: OptionPlant }) {
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>
        <Stand verdict={before.verdict} />
      </td>
      <td>
        <Stand verdict={after.verdict} />
      </td>
      <td>
        {tooDark ? '' : 'enough'}
        {tooDark && <strong class="too-dark"> too dark</strong>}
      </td>
    </tr>
  );
}

/** As a step of the history says what was put: "a roof 2.00 m × 2.00 m, …". */
function stepWords({ kind }: SiteOption, title: string): string {
  return kind === 'several' ? 'several things' : `a ${uncapital(title)}`;
}

function Searched({ result: { tried, bound, notes } }: { readonly result: SiteResult }) {
  return (
    <details>
      <summary>How far it searched</summary>
      <p class="quiet">
        {tried.candidates} places looked at. No place in these steps spares more than {harmWords(bound)} a hot day;
        between them {tried.between} more were tried round the best, and what is found there is not proven.
      </p>
      {notes.map((note) => (
        <p key={note} class="quiet">
          {note}
        </p>
      ))}
    </details>
  );
}
