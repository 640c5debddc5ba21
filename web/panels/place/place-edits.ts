import { addOption, appendJournal, changeFeature, moveInOption } from '../../../engine/index.ts';
import type { CivilDate, FeatureOf, PlanPoint } from '../../../engine/index.ts';
import { calledOf } from '../../map/feature-edits.ts';
import { siteClock } from '../../map/site-clock.ts';
import { commitEdit } from '../../state/edit.ts';
import { say } from '../../state/speech.ts';
import { shownOptions } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';
import { freshOptionId } from '../try/option-edits.ts';

/** Puts the pot elsewhere in the open option, or in a new one: the yard stays as it is. */
export function putInOption(pot: FeatureOf<'plant'>, at: PlanPoint): void {
  const name = calledOf(pot);
  const open = plan.value.options?.find(({ id }) => id === shownOptions.value[0]);
  const id = open?.id ?? freshOptionId(plan.value);
  const base = open ? plan.value : addOption(plan.value, { id, name: `${name} elsewhere, nothing built` });
  if (!commitEdit(`Put ${name} elsewhere in option ${id}`, moveInOption(base, id, pot.id, at))) return;
  shownOptions.value = [id];
  say(`${name} stands there in option ${id}. The yard itself is as it was until you have moved it.`);
}

/** The pot stands there now: the yard and its diary say so, in one step. */
export function haveMoved(pot: FeatureOf<'plant'>, at: PlanPoint): void {
  const name = calledOf(pot);
  const date: CivilDate = siteClock(plan.value.site.timeZone).slice(0, 10);
  const moved = changeFeature(plan.value, pot.id, { at });
  const next = appendJournal(moved, { date, what: 'moved', feature: pot.id, text: `From ${words(pot.at)} to ${words(at)}.` });
  if (!commitEdit(`Move ${name}`, next)) return;
  shownOptions.value = [];
  say(`${name} has moved, and the diary says so. Undo takes both back.`);
}

function words([x, y]: PlanPoint): string {
  return `${x.toFixed(2)} m across, ${y.toFixed(2)} m up`;
}
