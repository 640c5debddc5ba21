import { computed, signal } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import { namedInside, isCloth, drawnAnywhere, formatShare } from '../../engine/index.ts';
import type { Feature, Plan, PlantLoad } from '../../engine/index.ts';
import type { Progress } from './ask.ts';
import type { Live } from './live.ts';
import { isStale } from './live.ts';
import { heat } from './results.ts';
import { findOut, goToStage, selection, stage } from './view.ts';
import type { Stage } from './view.ts';
import { plan, preview } from './yard.ts';

/** The single most useful thing to do now. */
export interface NextThing {
  readonly text: string;
  readonly run?: () => void;
}

/**
 * A stage's card may say the next thing itself; `null` leaves the word to the rules below. Cleared when the stage is
 * left.
 */
export const cardNext = signal<NextThing | null>(null);

/** What the open stage answers, in one sentence; `null` while it is not known, and in a card that answers nothing. */
export const headline = signal<string | null>(null);

/** A search for cloth under way, which goes on in every stage; `null`: there is none. */
export const searching = signal<Progress | null>(null);

/** `null` when nothing is left to do. */
export const nextThing: ReadonlySignal<NextThing | null> = computed(
  () => cardNext.value ?? generalNext(plan.value, heat.value, stage.value),
);

/** A few words under each stage's name. */
export const stageNotes: ReadonlySignal<Readonly<Record<Stage, string>>> = computed(() => {
  const { features, options = [], journal = [] } = plan.value;
  const cloth = drawnAnywhere(plan.value).filter(isCloth).length;
  return {
    draw: guessNote(plan.value),
    heat: heatNote(heat.value),
    place: count(features.filter((feature) => feature.kind === 'plant' && feature.container).length, 'pot', 'no pots'),
    try: searching.value
      ? `searching, ${formatShare(searching.value.done)}`
      : count(options.length, 'option', 'not started'),
    build: count(cloth, 'to build', 'nothing chosen', 'to build'),
    year: count(journal.length, 'note', 'not started'),
  };
});

/** Every number of the plan that is a guess. */
export function guessesOf({
  features,
  site,
  climate,
}: Plan): { readonly feature: Feature | null; readonly key: string }[] {
  const guesses = (how: Feature['how'], feature: Feature | null): { feature: Feature | null; key: string }[] =>
    Object.entries(how ?? {})
      .filter(([, known]) => known.by === 'guess')
      .map(([key]) => ({ feature, key }));
  return [
    ...guesses(site.how, null),
    ...guesses(climate.how, null),
    ...features.flatMap((feature) => guesses(feature.how, feature)),
  ];
}

function generalNext(current: Plan, live: Live<'load'>, at: Stage): NextThing | null {
  if (current.features.length === 0) return { text: 'Draw walls, house and trees', run: () => goToStage('draw') };
  if (live.problems.length > 0)
    return { text: 'See why the yard could not be worked out.', run: () => goToStage('heat') };
  const plants = live.shown?.value.plants ?? [];
  if (plants.length === 0 && live.shown && !isStale(live))
    return { text: 'Draw a plant', run: () => goToStage('draw') };
  const guesses = guessesOf(current);
  const north = guesses.find(({ key }) => key === 'upBearing');
  if (north)
    return {
      text: 'Find north by a pole’s shadow: it is a guess, and everything turns with it.',
      run: () => findOut('north'),
    };
  const guessed = guesses.find(({ feature }) => feature !== null)?.feature;
  const measure = guessed && {
    text: `Measure ${namedInside(current, guessed.id)}`,
    run: () => show(guessed.id, 'draw'),
  };
  if (measure && at === 'draw') return measure;
  const burning =
    plants.find(({ verdict }) => verdict === 'will burn') ?? plants.find(({ verdict }) => verdict === 'at risk');
  if (burning && at === 'heat') return cureOf(current, burning.id);
  if (burning)
    return {
      text: `See what the sun does to ${namedInside(current, burning.id)}.`,
      run: () => show(burning.id, 'heat'),
    };
  return measure ?? null;
}

/** Where the cheapest cure of a plant that burns is looked for: a pot is carried, over all else cloth is tried. */
function cureOf(current: Plan, id: string): NextThing {
  const burnt = current.features.find((feature) => feature.id === id);
  return burnt?.kind === 'plant' && burnt.container === true && burnt.move !== 'never'
    ? { text: `Find ${namedInside(current, id)} a better place`, run: () => show(id, 'place') }
    : { text: `See what would help ${namedInside(current, id)}`, run: () => show(id, 'try') };
}

function show(id: string, where: Stage): void {
  selection.value = [id];
  goToStage(where);
}

function guessNote(current: Plan): string {
  const guesses = guessesOf(current).length;
  return guesses === 0 ? 'all measured' : count(guesses, 'guess left', '', 'guesses left');
}

/** Whether the answer shown is the one asked for. While something is dragged the one before it stands. */
function isSettled(live: Live<'load'>): boolean {
  return live.shown !== null && (!isStale(live) || preview.value !== null);
}

function heatNote(live: Live<'load'>): string {
  if (live.problems.length > 0) return 'not worked out';
  return live.shown && isSettled(live) ? verdictNote(live.shown.value.plants) : 'being worked out';
}

function verdictNote(plants: readonly PlantLoad[]): string {
  const burning = plants.filter(({ verdict }) => verdict === 'will burn').length;
  if (burning > 0) return `${burning} burn${burning === 1 ? 's' : ''}`;
  const risk = plants.filter(({ verdict }) => verdict === 'at risk').length;
  if (risk > 0) return `${risk} at risk`;
  return plants.length > 0 ? 'none burns' : 'no plants yet';
}

function count(amount: number, one: string, none: string, many = `${one}s`): string {
  return amount === 0 ? none : `${amount} ${amount === 1 ? one : many}`;
}
