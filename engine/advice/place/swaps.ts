/** Which two pots would fare better in each other's place. */

import type { Outcome } from '../../load/types.ts';
import { rowOf } from '../../load/verdict/planted.ts';
import { worthOf } from '../../plan/defaults.ts';
import { isMovable } from '../../plan/kinds.ts';
import type { Plan, Plant, PlantRow } from '../../plan/types.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import { potGround } from './ground.ts';
import { createPotJudges, type PotJudge, type PotJudges } from './judge.ts';
import { fateOf, type Judged, LIGHT_ORDER, type RootFate, type Tried, workAt } from './rank.ts';
import type { PotSwap } from './types.ts';
import { swapSentence } from './words.ts';

/** So many are told. */
const TOLD = 3;
/** Of more pots those that spare most, from fewer points and rays, are judged in full, so many of them. */
const JUDGED = 8;

/** The pot that somebody asks about, where it stands. */
interface Asked {
  readonly plant: Plant;
  readonly row: PlantRow;
  readonly stay: Judged;
  readonly judge: PotJudge;
}

interface Rival {
  readonly other: Plant;
  readonly row: PlantRow;
  readonly judge: PotJudge;
}

/**
 * Every other pot that can be moved, if that spares more than the carrying is worth, darkens neither and kills no more
 * roots, and if both fit where the other stands: the most spared first, and no more than somebody would try.
 */
export function swapsOf(plan: Plan, asked: Asked, judges: PotJudges, weather?: Weather): Outcome<PotSwap[]> {
  const rivals = plan.features.filter(isMovable).flatMap((other): Rival[] => {
    const row = rowOf(plan, other);
    return other.id === asked.plant.id || !row ? [] : [{ other, row, judge: judges.of(other, row) }];
  });
  const swaps: PotSwap[] = [];
  for (const rival of likeliest(asked, rivals)) {
    if (!bothFit(plan, asked.plant, rival.other)) continue;
    const swap = judgedSwap(plan, asked, rival, weather);
    if (!swap.ok) return swap;
    if (swap.value !== null) swaps.push(swap.value);
  }
  return { ok: true, value: swaps.sort((a, b) => b.spared - a.spared).slice(0, TOLD) };
}

function likeliest({ plant, judge }: Asked, rivals: readonly Rival[]): readonly Rival[] {
  if (rivals.length <= JUDGED) return rivals;
  const stays = judge.roughHarmAt(plant.at);
  const sparedBy = ({ other, judge: its }: Rival): number =>
    worthOf(plant) * (stays - judge.roughHarmAt(other.at, other.id)) +
    worthOf(other) * (its.roughHarmAt(other.at) - its.roughHarmAt(plant.at, plant.id));
  return rivals
    .map((rival) => ({ rival, spared: sparedBy(rival) }))
    .sort((a, b) => b.spared - a.spared)
    .slice(0, JUDGED)
    .map(({ rival }) => rival);
}

function bothFit(plan: Plan, plant: Plant, other: Plant): boolean {
  const without = (id: string): Plan => ({ ...plan, features: plan.features.filter((feature) => feature.id !== id) });
  return (
    potGround(without(other.id), plant).reasonAt(other.at) === null &&
    potGround(without(plant.id), other).reasonAt(plant.at) === null
  );
}

/** `null` where the change is not worth it. */
function judgedSwap(
  plan: Plan,
  { plant, row: own, stay }: Asked,
  { other, row, judge: before }: Rival,
  weather?: Weather,
): Outcome<PotSwap | null> {
  const now = worthOf(plant) * stay.harm + worthOf(other) * before.harmAt(other.at);
  const carrying = [worthOf(plant) * workAt(stay.harm), worthOf(other) * workAt(before.harmAt(other.at))] as const;
  if (now < carrying[0] + carrying[1]) return { ok: true, value: null };
  // Each is judged in the yard in which the other stands where it stood, and shades it from there.
  const [there, here] = [
    { ...plant, at: other.at },
    { ...other, at: plant.at },
  ];
  const features = plan.features.map((each) => (each.id === plant.id ? there : each.id === other.id ? here : each));
  const judges = createPotJudges({ ...plan, features }, weather);
  if (!judges.ok) return judges;
  const [plantJudge, otherJudge] = [judges.value.of(there, own), judges.value.of(here, row)];
  const then = worthOf(plant) * plantJudge.harmAt(there.at) + worthOf(other) * otherJudge.harmAt(here.at);
  const spared = now - then;
  const isDarker = (): boolean =>
    darkens(stay, plantJudge.lightAt(there.at)) || darkens(before.lightAt(other.at), otherJudge.lightAt(here.at));
  if (spared < carrying[0] + carrying[1] || isDarker()) return { ok: true, value: null };
  const pots = [
    { id: plant.id, from: stay.roots, to: fateOf(plantJudge.rootsAt(there.at)) },
    { id: other.id, from: fateOf(before.rootsAt(other.at)), to: fateOf(otherJudge.rootsAt(here.at)) },
  ];
  const dying = (when: 'from' | 'to'): number => pots.filter((pot) => pot[when] === 'die').length;
  if (dying('to') > dying('from')) return { ok: true, value: null };
  const hotter = pots.map(({ from, to }) => isWorse(from, to));
  // Both are carried, and what stands hotter is kept cool besides.
  const work = carrying.reduce((sum, each, k) => sum + (hotter[k] ? 2 : 1) * each, 0);
  if (spared < work) return { ok: true, value: null };
  const heated = pots.flatMap(({ id }, k) => (hotter[k] ? [id] : []));
  return {
    ok: true,
    value: { with: other.id, spared, sentence: swapSentence(plan, plant.id, other.id, spared / now, heated) },
  };
}

/** Whether a place stands worse for light than another. */
function darkens(from: Pick<Tried, 'standing'>, to: Pick<Tried, 'standing'>): boolean {
  return LIGHT_ORDER.indexOf(to.standing) > LIGHT_ORDER.indexOf(from.standing);
}

const FATES: readonly RootFate[] = ['live', 'live if kept cool', 'die'];

function isWorse(from: RootFate, to: RootFate): boolean {
  return FATES.indexOf(to) > FATES.indexOf(from);
}
