import type { ComparedChoice, ComparedPlant, YardOption } from '../../../engine/index.ts';
import { lazily } from '../../app/Lazy/index.tsx';
import { calledOf, nameOf } from '../../map/feature-edits.ts';
import { selection } from '../../state/view.ts';
import { BeforeAfter } from './BeforeAfter.tsx';
import { RoughEffect } from './RoughEffect.tsx';
import { accept, drop } from './option-edits.ts';
import { compared, comparison, openOption, optionWords } from './tried.ts';
import { harmWords } from './words.ts';

const ClothEditor = lazily(() => import('./ClothEditor.tsx').then((part) => part.ClothEditor), 'The numbers');

/** The open option: what it does to each plant, what it costs, its parts with their numbers, and taking it over. */
export function OptionPaper() {
  const option = openOption.value;
  if (option === null) return null;
  const choice = compared.value?.choices.find(({ options }) => options[0] === option.id);
  const { working, problems } = comparison.value;
  return (
    <section class="option-paper" aria-label={`Option ${option.id}`}>
      <h2>{optionWords(option)}</h2>
      <BeforeAfter choice={choice} />
      <RoughEffect />
      {problems.map(({ message }) => <p key={message} class="said problem" role="alert">{message}</p>)}
      {choice ? <Effect choice={choice} rough={working !== null} /> : working && <p class="quiet">Working out what it does…</p>}
      <Parts option={option} />
      <p class="paper-buttons">
        <button type="button" class="main" onClick={() => accept(option)}>Take it into the yard</button>{' '}
        <button type="button" onClick={() => drop(option)}>Delete option {option.id}</button>
      </p>
    </section>
  );
}

function Effect({ choice, rough }: { readonly choice: ComparedChoice; readonly rough: boolean }) {
  return (
    <>
      <table class="before-after" aria-busy={rough}>
        <caption>Before and after, plant by plant{rough ? ' (out of date, being worked out)' : ''}</caption>
        <thead><tr><th scope="col">Plant</th><th scope="col">Today</th><th scope="col">With it</th><th scope="col">Light left</th></tr></thead>
        <tbody>{choice.plants.map((plant) => <PlantRow key={plant.id} plant={plant} dark={choice.tooDark.includes(plant.id)} />)}</tbody>
      </table>
      <ul class="sentences">{choice.sentences.map((sentence) => <li key={sentence}>{sentence}</li>)}</ul>
    </>
  );
}

function PlantRow({ plant: { name, before, after }, dark }: { readonly plant: ComparedPlant; readonly dark: boolean }) {
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>{before ? <Stand verdict={before.verdict} harm={before.harm} /> : 'not there'}</td>
      <td>{after ? <Stand verdict={after.verdict} harm={after.harm} /> : 'gone'}</td>
      <td>{after ? `${after.light.dailyLight.toFixed(0)} mol/m²` : '–'}{dark && <strong class="too-dark"> too dark</strong>}</td>
    </tr>
  );
}

function Stand({ verdict, harm }: { readonly verdict: string | null; readonly harm: number | null }) {
  return <><span class={verdict === 'will burn' ? 'stand burns' : 'stand'}>{verdict ?? 'kind not known'}</span> <span class="quiet">{harmWords(harm)}</span></>;
}

function Parts({ option }: { readonly option: YardOption }) {
  const adds = option.adds ?? [];
  const moves = Object.keys(option.moves ?? {});
  const chosen = selection.value[0];
  return (
    <>
      <ul class="option-parts">
        {adds.map((feature) => {
          const open = chosen === feature.id;
          return (
            <li key={feature.id}>
              <button type="button" aria-expanded={open} onClick={() => (selection.value = open ? [] : [feature.id])}>{calledOf(feature)}: its numbers</button>
              {open && <ClothEditor feature={feature} />}
            </li>
          );
        })}
        {moves.map((id) => <li key={id}>{nameOf(id)} stands elsewhere.</li>)}
        {(option.removes ?? []).map((id) => <li key={id}>{nameOf(id)} is taken away.</li>)}
      </ul>
      {adds.length > 0 && <p class="quiet">Or take it by its grips on the drawing: arrow keys nudge it, too.</p>}
    </>
  );
}
