import { useRef } from 'preact/hooks';
import type { ComparedChoice, ComparedPlant, YardOption } from '../../../engine/index.ts';
import { calledOf, calledById } from '../../map/drawing/feature-edits.ts';
import { selection } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';
import { Fold } from '../parts/answer/Fold.tsx';
import { accept, drop } from '../parts/option-edits.ts';
import { compared, comparison, openOption, openTheOption, optionWords } from '../parts/tried.ts';
import { BeforeAfter } from './BeforeAfter.tsx';
import { ClothEditor } from './ClothEditor.tsx';
import { Faults } from './Faults.tsx';
import { RoughEffect } from './RoughEffect.tsx';
import { SectionPicture } from './SectionPicture.tsx';
import { Stand } from './Stand.tsx';

/** A stroke of the finger sideways that turns a page: at least so long, and so much longer than it is high. [px] */
const STROKE = { least: 60, flat: 2 } as const;

/**
 * The open option: what it does to each plant, the cut through it, its parts with their numbers, and taking it over. A
 * page that is turned by a stroke or a button.
 */
export function OptionPaper() {
  const began = useRef<{ readonly x: number; readonly y: number } | null>(null);
  const option = openOption.value;
  if (option === null) return null;
  const choice = compared.value?.choices.find(({ options }) => options[0] === option.id);
  const { working, problems } = comparison.value;
  const turn = ({ changedTouches: [{ clientX, clientY }] }: TouchEvent): void => {
    const from = began.current;
    if (!from) return;
    const [dx, dy] = [clientX - from.x, clientY - from.y];
    if (Math.abs(dx) >= STROKE.least && Math.abs(dx) >= STROKE.flat * Math.abs(dy)) openBeside(option, dx < 0 ? 1 : -1);
  };
  return (
    <section
      class="option-paper"
      aria-label={`Option ${option.id}`}
      onTouchStart={({ touches, target }) =>
        (began.current =
          touches.length === 1 && !(target as Element).closest('input, select, .wide-table')
            ? { x: touches[0].clientX, y: touches[0].clientY }
            : null)
      }
      onTouchEnd={turn}
    >
      <Pages option={option} />
      <h2>{optionWords(option)}</h2>
      <BeforeAfter choice={choice} />
      <RoughEffect />
      <Faults />
      {problems.map(({ message }) => (
        <p key={message} class="said problem" role="alert">
          {message}
        </p>
      ))}
      <SectionPicture />
      {choice && choice.plants.length > 0 && <Effect choice={choice} rough={working !== null} />}
      <Parts option={option} />
      <p class="paper-buttons">
        <button type="button" class="main" onClick={() => accept(option)}>
          Take it into the yard
        </button>{' '}
        <button type="button" onClick={() => drop(option)}>
          Delete option {option.id}
        </button>
      </p>
    </section>
  );
}

function openBeside({ id }: YardOption, by: 1 | -1): void {
  const options = plan.value.options ?? [];
  const next = options[options.findIndex((each) => each.id === id) + by];
  if (next) openTheOption(next.id);
}

/** Where this page stands among the options, and the way to the next. */
function Pages({ option }: { readonly option: YardOption }) {
  const options = plan.value.options ?? [];
  const at = options.findIndex(({ id }) => id === option.id);
  if (options.length < 2) return null;
  const [before, after] = [options[at - 1], options[at + 1]];
  return (
    <nav class="option-pages" aria-label="Options, a page each">
      <button type="button" disabled={!before} onClick={() => openBeside(option, -1)}>
        ‹ {before ? `Option ${before.id}` : 'no more'}
      </button>
      <span>
        {at + 1} of {options.length}
      </span>
      <button type="button" disabled={!after} onClick={() => openBeside(option, 1)}>
        {after ? `Option ${after.id}` : 'no more'} ›
      </button>
    </nav>
  );
}

function Effect({ choice, rough }: { readonly choice: ComparedChoice; readonly rough: boolean }) {
  return (
    <>
      <table class="before-after" aria-busy={rough}>
        <caption>Before and after, plant by plant{rough ? ' (out of date, being worked out)' : ''}</caption>
        <thead>
          <tr>
            <th scope="col">Plant</th>
            <th scope="col">Today</th>
            <th scope="col">With it</th>
            <th scope="col">Sun left</th>
          </tr>
        </thead>
        <tbody>
          {choice.plants.map((plant) => (
            <PlantRow key={plant.id} plant={plant} dark={choice.tooDark.includes(plant.id)} />
          ))}
        </tbody>
      </table>
      <Fold title="In figures">
        <ul class="sentences">
          {choice.sentences.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </Fold>
    </>
  );
}

function PlantRow({ plant: { name, before, after }, dark }: { readonly plant: ComparedPlant; readonly dark: boolean }) {
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>{before ? <Stand verdict={before.verdict} /> : 'not there'}</td>
      <td>{after ? <Stand verdict={after.verdict} /> : 'gone'}</td>
      <td>
        {after ? `${after.light.sunHours.toFixed(0)} h` : '–'}
        {dark && <strong class="too-dark"> too dark</strong>}
      </td>
    </tr>
  );
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
              <button type="button" aria-expanded={open} onClick={() => (selection.value = open ? [] : [feature.id])}>
                {calledOf(feature)}: its numbers
              </button>
              {open && <ClothEditor feature={feature} />}
            </li>
          );
        })}
        {moves.map((id) => (
          <li key={id}>{calledById(id)} stands elsewhere.</li>
        ))}
        {(option.removes ?? []).map((id) => (
          <li key={id}>{calledById(id)} is taken away.</li>
        ))}
      </ul>
      {adds.length > 0 && (
        <p class="quiet">
          Or take it by its grips on the drawing: drag one, or tap it and then its new place. Corners resize, the row
          above turns, raises and tilts, the middle of an edge pulls a drop out. Arrow keys nudge the whole.
        </p>
      )}
    </>
  );
}
