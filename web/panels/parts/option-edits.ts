import {
  acceptOption,
  addOption,
  addToOption,
  freshId,
  middleOf,
  moveInOption,
  removeOption,
  toCentimetre,
  upBearingOf,
  withOptions,
  radiansOf,
  capital,
} from '../../../engine/index.ts';
import type {
  Canopy,
  Feature,
  Plan,
  PlanPoint,
  PlantLoad,
  PotMove,
  Screen,
  YardOption,
} from '../../../engine/index.ts';
import { commitEdit } from '../../state/edit.ts';
import { heat } from '../../state/results.ts';
import { say } from '../../state/speech.ts';
import { selection } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';
import { openOption, openTheOption, optionWords } from './tried.ts';

/** A first roof and screen, to be changed by hand. [m] */
const FIRST = {
  side: 2.5,
  density: 0.5,
  overPlant: 0.6,
  leastHeight: 2.2,
  screenAway: 0.4,
  screenHeight: 1.8,
} as const;

/** The sun of a summer afternoon stands in the west in both hemispheres. [°] */
const AFTERNOON = 270;

/** The next letter that no option has: A, B, … Z, then numbers. */
export function freshOptionId({ options = [] }: Plan): string {
  const taken = new Set(options.map(({ id }) => id));
  for (let code = 65; code <= 90; code++) if (!taken.has(String.fromCharCode(code))) return String.fromCharCode(code);
  let number = 1;
  while (taken.has(`option-${number}`)) number++;
  return `option-${number}`;
}

/** The plan with things in an option, a new one where none is named; their ids are made free ones. */
function withInOption(
  before: Plan,
  things: readonly Feature[],
  optionId: string | null,
  name?: string,
): { readonly next: Plan; readonly optionId: string; readonly ids: readonly string[] } {
  const id = optionId ?? freshOptionId(before);
  const ids: string[] = [];
  let next = optionId === null ? addOption(before, name === undefined ? { id } : { id, name }) : before;
  for (const thing of things) {
    const free = freshId(next, thing.id);
    ids.push(free);
    next = addToOption(next, id, { ...thing, id: free });
  }
  return { next, optionId: id, ids };
}

/** Puts things, and pots elsewhere, into the open option, or with `intoNew` into one of their own, and opens it. */
export function putIntoOption(
  things: readonly Feature[],
  what: string,
  intoNew: boolean,
  moves: readonly PotMove[] = [],
): void {
  const put = withInOption(
    plan.value,
    things,
    intoNew ? null : (openOption.value?.id ?? null),
    intoNew || openOption.value === null ? what : undefined,
  );
  const next = moves.reduce((all, { plant, at }) => moveInOption(all, put.optionId, plant, at), put.next);
  if (!commitEdit(`Put ${what} into option ${put.optionId}`, next)) return;
  openTheOption(put.optionId);
  selection.value = put.ids.slice(0, 1);
  say(`${capital(what)} is in option ${put.optionId}. The yard itself is as it was.`);
}

/** A roof over the plant that is worst off, or a screen between it and its worst sun. */
export function putFirstCloth(kind: 'canopy' | 'screen'): void {
  const worst = worstPlant(heat.value.shown?.value.plants ?? []);
  const feature = plan.value.features.find(({ id }) => id === worst?.id);
  // Where it stands in the open option, which may have moved it.
  const at: PlanPoint =
    worst?.at ?? middleOf({ id: '', kind: 'keepout', outline: plan.value.site.boundary, blocks: [] });
  if (kind === 'canopy') {
    const height = Math.max(FIRST.leastHeight, toCentimetre((worst?.height ?? 0) + FIRST.overPlant));
    const roof: Canopy = {
      id: 'canopy',
      kind: 'canopy',
      center: withinYard(at),
      length: FIRST.side,
      width: FIRST.side,
      height,
      density: FIRST.density,
    };
    return putIntoOption([roof], 'a roof', false);
  }
  const bearing = radiansOf(worstSide(worst) - upBearingOf(plan.value));
  const [dx, dy] = [Math.sin(bearing), Math.cos(bearing)];
  const away = FIRST.screenAway + (feature?.kind === 'plant' ? feature.spread / 2 : 0.5);
  const end = (along: number): PlanPoint => [
    toCentimetre(at[0] + away * dx - along * dy),
    toCentimetre(at[1] + away * dy + along * dx),
  ];
  const screen: Screen = {
    id: 'screen',
    kind: 'screen',
    path: [end(-FIRST.side / 2), end(FIRST.side / 2)],
    height: FIRST.screenHeight,
    density: FIRST.density,
  };
  return putIntoOption([screen], 'a screen', false);
}

/** As near to a place as a first roof fits between the yard's outermost lines; in their middle where it does not. */
function withinYard(at: PlanPoint): PlanPoint {
  const fit = (axis: 0 | 1): number => {
    const along = plan.value.site.boundary.map((corner) => corner[axis]);
    const [low, high] = [Math.min(...along) + FIRST.side / 2, Math.max(...along) - FIRST.side / 2];
    return toCentimetre(low > high ? (low + high) / 2 : Math.min(high, Math.max(low, at[axis])));
  };
  return [fit(0), fit(1)];
}

function worstPlant(plants: readonly PlantLoad[]): PlantLoad | null {
  return plants.reduce<PlantLoad | null>(
    (worst, each) => ((each.scorchDose ?? 0) > (worst?.scorchDose ?? 0) ? each : worst),
    null,
  );
}

/** True bearing of the flank that is harmed most; of a plant without flanks where the afternoon sun stands. [°] */
function worstSide(plant: PlantLoad | null): number {
  const flanks = (plant?.sides ?? []).filter(({ side }) => side !== 'top');
  const worst = flanks.toSorted((a, b) => (b.scorchDose ?? 0) - (a.scorchDose ?? 0))[0]?.side;
  return typeof worst === 'number' ? worst : AFTERNOON;
}

/** Makes an option's changes part of the yard. */
export function accept(option: YardOption): void {
  const tried = withOptions(plan.value, [option.id]);
  if (!tried.ok) return say(tried.problems[0].message, 'problem');
  if (!commitEdit(`Take option ${option.id} into the yard`, acceptOption(plan.value, option.id))) return;
  openTheOption(null);
  say(`${optionWords(option)} is part of the yard now. Undo takes it out again.`);
}

export function drop(option: YardOption): void {
  if (!commitEdit(`Delete option ${option.id}`, removeOption(plan.value, option.id))) return;
  openTheOption(null);
  say(`Deleted option ${option.id}. Undo brings it back.`);
}
