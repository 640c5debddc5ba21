import { computed, signal } from '@preact/signals';
import {
  addOption,
  appendJournal,
  changeFeature,
  featureOf,
  moveInOption,
  dateOfMoment,
} from '../../../engine/index.ts';
import type { CivilDate, FeatureOf, Hardening, Plan, PlanPoint } from '../../../engine/index.ts';
import { siteClock } from '../../common/site-clock.ts';
import { calledOf } from '../../map/drawing/feature-edits.ts';
import { commitEdit } from '../../state/edit.ts';
import { say } from '../../state/speech.ts';
import { shownOptions } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';
import { freshOptionId } from '../parts/option-edits.ts';

/** The option in which pots are tried elsewhere; `null`: none is open, the next is a new one. */
export const openOptionId = computed(
  () => plan.value.options?.find(({ id }) => id === shownOptions.value[0])?.id ?? null,
);

/** The hardening of the move just made, kept while the card is open. */
export const justMoved = signal<{
  readonly pot: string;
  readonly date: CivilDate;
  readonly hardening: Hardening;
} | null>(null);

function potOf(id: string): FeatureOf<'plant'> | null {
  const feature = featureOf(plan.value, id);
  return feature?.kind === 'plant' && feature.container ? feature : null;
}

function withMoves(moves: readonly (readonly [pot: FeatureOf<'plant'>, at: PlanPoint])[]): {
  readonly next: Plan;
  readonly id: string;
} {
  const id = openOptionId.value ?? freshOptionId(plan.value);
  const name = `${moves.map(([pot]) => calledOf(pot)).join(' and ')} moved`;
  const base = openOptionId.value === null ? addOption(plan.value, { id, name }) : plan.value;
  return { next: moves.reduce((moved, [pot, at]) => moveInOption(moved, id, pot.id, at), base), id };
}

/** The plan with a pot elsewhere in the open option, or in a new one: the yard stays as it is. */
export function withPotThere(id: string, at: PlanPoint): Plan | null {
  const pot = potOf(id);
  return pot && withMoves([[pot, at]]).next;
}

/** Tries a pot elsewhere. */
export function tryThere(id: string, at: PlanPoint, undo: 'now' | 'merge'): void {
  const pot = potOf(id);
  if (!pot) return;
  const { next, id: option } = withMoves([[pot, at]]);
  if (commitEdit(`Try ${calledOf(pot)} elsewhere in option ${option}`, next, undo)) shownOptions.value = [option];
}

/** Puts pots elsewhere in the open option, or in a new one. */
export function putInOption(moves: readonly (readonly [pot: FeatureOf<'plant'>, at: PlanPoint])[]): void {
  const { next, id } = withMoves(moves);
  const names = moves.map(([pot]) => calledOf(pot)).join(' and ');
  if (!commitEdit(`Put ${names} elsewhere in option ${id}`, next)) return;
  shownOptions.value = [id];
  say(
    `${names} ${moves.length === 1 ? 'stands' : 'stand'} there in option ${id}. The yard itself is as it was ` +
      `until you have moved ${moves.length === 1 ? 'it' : 'them'}.`,
  );
}

/** In the open option the pot stands again where it stands in the yard. */
export function putBack(pot: FeatureOf<'plant'>): void {
  const id = openOptionId.value;
  if (id !== null)
    commitEdit(`Put ${calledOf(pot)} back in option ${id}`, moveInOption(plan.value, id, pot.id, undefined));
}

/** The pot stands there now: the yard and its diary say so, in one step. */
export function haveMoved(pot: FeatureOf<'plant'>, at: PlanPoint, hardening: Hardening | null): void {
  const name = calledOf(pot);
  const date: CivilDate = dateOfMoment(siteClock(plan.value.site.timeZone));
  const moved = changeFeature(plan.value, pot.id, { at });
  const next = appendJournal(moved, {
    date,
    what: 'moved',
    feature: pot.id,
    text: `From ${words(pot.at)} to ${words(at)}.`,
  });
  if (!commitEdit(`Move ${name}`, next)) return;
  shownOptions.value = [];
  justMoved.value = hardening && { pot: pot.id, date, hardening };
  say(`${name} has moved, and the diary says so. Undo takes both back.`);
}

function words([x, y]: PlanPoint): string {
  return `${x.toFixed(2)} m across, ${y.toFixed(2)} m up`;
}
