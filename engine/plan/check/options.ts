/** Features and options together: ids that are unique, changes that can be made, plants that have a row. */
import { nearestPlantIds, plantRowOf } from '../catalogue.ts';
import { checkFeature } from './feature.ts';
import { LIMITS } from '../file/limits.ts';
import {
  eitherOf,
  isRecord,
  quote,
  readList,
  readObject,
  readOwners,
  readPoint,
  readText,
  report,
  show,
} from './reader.ts';
import type { Owner } from './reader.ts';
import type { Plan, PlantRow, Problem } from '../types.ts';

export function checkFeaturesAndOptions(plan: Owner): void {
  const features = readList(plan, 'features', 'required') ?? [];
  const options = readOwners(
    plan,
    'options',
    'optional',
    (item, index) => `Option ${typeof item.id === 'string' ? quote(item.id) : index + 1}`,
    LIMITS.options,
  );
  const adds = options.map((option) => readList(option, 'adds', 'optional') ?? []);
  const placed: { value: unknown; pointer: string }[] = [
    ...features.map((value, index) => ({ value, pointer: `${plan.pointer}/features/${index}` })),
    ...adds.flatMap((list, option) =>
      list.map((value, index) => ({ value, pointer: `${options[option].pointer}/adds/${index}` })),
    ),
  ];
  if (placed.length > LIMITS.features) {
    report(plan, 'features', `there are ${placed.length} things in the plan; at most ${LIMITS.features} are read.`);
    return;
  }
  for (const { value, pointer } of placed) checkFeature(value, pointer, plan.problems);
  const kinds = checkIds(placed, plan.problems);
  checkPlantIds(plan, placed);
  checkOptionIds(options);
  for (const option of options) checkChanges(option, kinds);
}

/** The kind of every id; reports an id that is there twice. */
function checkIds(placed: readonly { value: unknown; pointer: string }[], problems: Problem[]): Map<string, unknown> {
  const first = new Map<string, string>();
  const kinds = new Map<string, unknown>();
  for (const { value, pointer } of placed) {
    if (!isRecord(value) || typeof value.id !== 'string') continue;
    const before = first.get(value.id);
    if (before === undefined) {
      first.set(value.id, pointer);
      kinds.set(value.id, value.kind);
    } else
      problems.push({
        pointer: `${pointer}/id`,
        message: `The id ${quote(value.id)} is there twice; the first is at ${before}.`,
        severity: 'error',
      });
  }
  return kinds;
}

/** Only rows whose id is text can be named. */
function checkPlantIds(plan: Owner, placed: readonly { value: unknown; pointer: string }[]): void {
  const own = Array.isArray(plan.object.plants)
    ? plan.object.plants.filter((row) => isRecord(row) && typeof row.id === 'string')
    : [];
  const plants = own.map((row: PlantRow) => ({ ...row, name: String(row.name) }));
  const lookup = { plants } as unknown as Plan;
  const hints = new Map<string, string>();
  for (const { value, pointer } of placed) {
    if (
      !isRecord(value) ||
      typeof value.plant !== 'string' ||
      value.kind === 'reading' ||
      plantRowOf(lookup, value.plant) !== undefined
    )
      continue;
    const hint = hints.get(value.plant) ?? plantHint(lookup, value.plant, hints.size);
    hints.set(value.plant, hint);
    plan.problems.push({
      pointer: `${pointer}/plant`,
      message: `There is no plant ${quote(value.plant)} in the catalogue or among your own; ${hint}`,
      severity: 'error',
    });
  }
}

/** Comparing spellings takes its time, so a plan with many strange words gets it for the first ones only. */
function plantHint(lookup: Plan, word: string, hintsSoFar: number): string {
  const near = hintsSoFar < 20 ? nearestPlantIds(lookup, word) : [];
  return near.length > 0
    ? `did you mean ${eitherOf(near)}?`
    : 'choose one of the list, or add a row of your own under "plants".';
}

function checkOptionIds(options: readonly Owner[]): void {
  const seen = new Set<string>();
  for (const option of options) {
    const id = readText(option, 'id', 'required');
    readText(option, 'name', 'optional');
    if (id !== undefined && seen.has(id)) report(option, 'id', 'there is already an option with this id.');
    if (id !== undefined) seen.add(id);
  }
}

function checkChanges(option: Owner, kinds: ReadonlyMap<string, unknown>): void {
  const moves = readObject(option, 'moves', option.subject, 'optional');
  if (moves !== undefined) {
    for (const id of Object.keys(moves.object)) {
      if (!kinds.has(id)) report(moves, id, `it moves ${quote(id)}, but there is nothing with that id.`);
      else if (kinds.get(id) !== 'plant') report(moves, id, `it moves ${quote(id)}, but only plants can be moved.`);
      else readPoint(moves, id, 'required', `the place for ${quote(id)}`);
    }
  }
  const removed = new Set<unknown>();
  for (const [index, id] of (readList(option, 'removes', 'optional') ?? []).entries()) {
    const why =
      typeof id !== 'string'
        ? `removes must be a list of ids, got ${show(id)}.`
        : !kinds.has(id)
          ? `it removes ${quote(id)}, but there is nothing with that id.`
          : removed.has(id)
            ? `it removes ${quote(id)} twice.`
            : null;
    if (why !== null) report({ ...option, pointer: `${option.pointer}/removes` }, String(index), why);
    removed.add(id);
  }
}
