/** Features and options together: ids that are unique, changes that can be made, plants that have a row. */

import { nearestPlantIds, plantRowOf } from '../catalogue/plants.ts';
import { pointerOf } from '../file/pointer.ts';
import type { FEATURE } from '../schema/feature.ts';
import type { Sound, SoundKeys } from '../schema/held.ts';
import type { OPTION, THIS_YEAR } from '../schema/plan.ts';
import { byId, eitherOf, quote } from '../schema/say.ts';
import type { PlantRow } from '../types.ts';
import type { Tell } from './spot.ts';

/** A thing of the yard or of an option, as far as it is right, and where it stands. */
interface Placed {
  readonly thing: Sound<typeof FEATURE>;
  readonly at: readonly (string | number)[];
}

/** @param pointer of the plan itself */
export function checkReferences(plan: SoundKeys<typeof THIS_YEAR>, tell: Tell, pointer: string): void {
  const options = plan.options ?? [];
  const placed = [
    ...placedIn(plan.features, ['features']),
    ...options.flatMap((option, index) => placedIn(option?.adds, ['options', index, 'adds'])),
  ];
  const kinds = kindsById(placed, tell, pointer);
  checkPlants(plan, placed, tell);
  for (const [index, option] of options.entries()) if (option !== undefined) checkChanges(option, index, kinds, tell);
}

function placedIn(things: readonly (Sound<typeof FEATURE> | undefined)[] = [], list: Placed['at']): Placed[] {
  return things.flatMap((thing, index) => (thing === undefined ? [] : [{ thing, at: [...list, index] }]));
}

/** The kind of every id; reports an id that is there twice. */
function kindsById(placed: readonly Placed[], tell: Tell, pointer: string): Map<string, string | undefined> {
  const first = new Map<string, Placed>();
  for (const one of placed) {
    const { id } = one.thing;
    if (id === undefined) continue;
    const before = first.get(id);
    if (before === undefined) first.set(id, one);
    else
      tell(
        [...one.at, 'id'],
        `The id ${quote(id)} is there twice; the first is at ${pointer}${pointerOf(before.at)}.`,
        '',
      );
  }
  return new Map([...first].map(([id, { thing }]) => [id, thing.kind]));
}

/** Only rows whose id is text can be named. */
function checkPlants({ plants = [] }: SoundKeys<typeof THIS_YEAR>, placed: readonly Placed[], tell: Tell): void {
  const own = plants.flatMap((row): Pick<PlantRow, 'id' | 'name'>[] =>
    row?.id === undefined ? [] : [{ id: row.id, name: row.name ?? '' }],
  );
  const rows = { plants: own };
  const hints = new Map<string, string>();
  for (const { thing, at } of placed) {
    if (!('plant' in thing) || thing.plant === undefined || thing.kind === 'reading') continue;
    if (plantRowOf(rows, thing.plant) !== undefined) continue;
    const hint = hints.get(thing.plant) ?? plantHint(rows, thing.plant, hints.size);
    hints.set(thing.plant, hint);
    tell([...at, 'plant'], `There is no plant ${quote(thing.plant)} in the catalogue or among your own; ${hint}`, '');
  }
}

/** Comparing spellings takes its time, so a plan with many strange words gets it for the first ones only. */
function plantHint(rows: Parameters<typeof nearestPlantIds>[0], word: string, hintsSoFar: number): string {
  const near = hintsSoFar < 20 ? nearestPlantIds(rows, word) : [];
  return near.length > 0
    ? `did you mean ${eitherOf(near)}?`
    : 'choose one of the list, or add a row of your own under "plants".';
}

function checkChanges(
  { id, moves = {}, removes = [] }: Sound<typeof OPTION>,
  index: number,
  kinds: ReadonlyMap<string, string | undefined>,
  tell: Tell,
): void {
  const subject = byId('Option')({ id }, index);
  for (const moved of Object.keys(moves)) {
    const why = !kinds.has(moved)
      ? 'but there is nothing with that id.'
      : kinds.get(moved) !== 'plant'
        ? 'but only plants can be moved.'
        : null;
    if (why !== null) tell(['options', index, 'moves', moved], `it moves ${quote(moved)}, ${why}`, subject);
  }
  const removed = new Set<string>();
  for (const [place, gone] of removes.entries()) {
    if (gone === undefined) continue;
    const why = !kinds.has(gone) ? ', but there is nothing with that id.' : removed.has(gone) ? ' twice.' : null;
    if (why !== null) tell(['options', index, 'removes', place], `it removes ${quote(gone)}${why}`, subject);
    removed.add(gone);
  }
}
