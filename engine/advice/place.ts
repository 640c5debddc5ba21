import { harmOf } from '../load/harm-of.ts';
import { plantLoadsOf } from '../load/load-of.ts';
import { nameOf } from '../load/names.ts';
import { rowOf } from '../load/planted.ts';
import type { Outcome, PlantLoad } from '../load/types.ts';
import { worthOf } from '../plan/defaults.ts';
import { boundsOf, distance } from '../plan/geometry.ts';
import type { Feature, Plan, PlanPoint, Plant, PlantRow } from '../plan/types.ts';
import { unitsOf } from '../plan/units.ts';
import type { Weather } from '../sun/weather.ts';
import { hardeningOf } from './hardening.ts';
import { potGround } from './place-ground.ts';
import { createPotJudge, type PotJudge, type PotStand, winterDayOf } from './place-judge.ts';
import type { LightStanding, PlaceRequest, PlaceResult, PlaceSpot, PotSwap } from './place-types.ts';
import { placeNotesOf, spotSentence, swapSentence } from './place-words.ts';

/** Places are tried this far apart, farther in a large yard, where the best are then tried again half as far; named ones stand at least `APART` from each other. [m] */
const STEP = 0.5;
const MOST_PLACES = 400;
const APART = 1;
const SPOTS = 5;
/** Published factors from energy to light run 7 % to either side; short by less counts as nearly enough. */
const NEARLY = 0.93;
/** Doses this near each other are alike: then the pot's wall and the way decide. [K·h/day] */
const ALIKE = 0.5;
/** More sun than its range by more than this puts a place behind those within it. [h/day] */
const OVER = 1;

interface Tried extends PotStand {
  readonly at: PlanPoint;
  readonly metres: number;
  readonly standing: LightStanding;
  /** Hours of sun beyond the plant's range. */
  readonly over: number;
}

/**
 * Ranked spots for a potted plant: those with enough light first, the least harmed first among them; "stay" is always one of them.
 * @returns the spots, or what is wrong: no such plant, not in a pot, too heavy to move, its kind not known
 */
export function placeOf(plan: Plan, request: PlaceRequest): Outcome<PlaceResult> {
  const found = potToMove(plan, request.plant);
  if (!found.ok) return found;
  const { plant, row } = found.value;
  const judged = createPotJudge(plan, plant, row, request.weather);
  if (!judged.ok) return judged;
  const judge = judged.value;
  const tryAt = (at: PlanPoint): Tried => {
    const stand = judge.at(at);
    return { ...stand, at, metres: distance(plant.at, at), standing: standingOf(stand), over: Math.max(0, stand.light.sunHours - row.sunHours[1]) };
  };
  const stay = tryAt(plant.at);
  const ground = potGround(plan, plant);
  const mayStand = (at: PlanPoint): boolean => distance(at, plant.at) > APART / 2 && ground.reasonAt(at) === null;
  const { step, all } = lattice(plan);
  const places = all.filter(mayStand);
  const tried = places.map(tryAt).sort(better);
  const count = request.count ?? SPOTS;
  const finer = spreadOut(tried, count).flatMap(({ at: [x, y] }) => NEIGHBOURS.map(([dx, dy]): PlanPoint => [x + (dx * step) / 2, y + (dy * step) / 2])).filter(mayStand);
  const named = spreadOut([...tried, ...finer.map(tryAt)].sort(better), count);
  const listed = [...named, stay].sort(better);
  const spots: PlaceSpot[] = [];
  for (const each of listed) {
    const spot = spotOfTried(plan, plant, each, each === stay, spots.length + 1, stay, judge, request);
    if (!spot.ok) return spot;
    spots.push(spot.value);
  }
  const swaps = swapsOf(plan, plant, stay, judge, request.weather);
  if (!swaps.ok) return swaps;
  const winter = places.map((at) => ({ at, sunHours: judge.winterAt(at) })).sort((a, b) => b.sunHours - a.sunHours)[0];
  const winterBest = winter !== undefined && spots[0].winterSunHours < winter.sunHours - 1 ? winter : null;
  const notes = placeNotesOf({ plan, plant, row, spots, tried: [...tried, stay], allowed: places.length, winterBest, units: request.units ?? unitsOf(plan) });
  return { ok: true, value: { plant: plant.id, spots, swaps: swaps.value, winterDay: winterDayOf(plan), winterBest, notes } };
}

function potToMove(plan: Plan, id: string): Outcome<{ plant: Plant; row: PlantRow }> {
  const feature = plan.features.find((each) => each.id === id);
  const refuse = (message: string): Outcome<never> => ({ ok: false, problems: [{ pointer: '--plant', message, severity: 'error' }] });
  if (feature === undefined) {
    const pots = plan.features.filter(isPot).map((each) => `"${each.id}"`).join(', ');
    return refuse(`There is nothing called "${id}"; ${pots === '' ? 'no plant of this plan stands in a pot' : `the plants in pots are ${pots}`}.`);
  }
  if (!isPot(feature)) return refuse(`${nameOf(plan, id)} does not stand in a pot, so it has no other place to go.`);
  if (feature.move === 'never') return refuse(`${nameOf(plan, id)} is marked as too heavy to move. Say "carry" or "trolley" to see where it would do better.`);
  const row = rowOf(plan, feature);
  return row ? { ok: true, value: { plant: feature, row } } : refuse(`${nameOf(plan, id)} does not say what plant it is, so its light and its limit are not known.`);
}

function isPot(feature: Feature): feature is Plant {
  return feature.kind === 'plant' && feature.container === true;
}

const NEIGHBOURS: readonly PlanPoint[] = [[-1, -1], [0, -1], [1, -1], [-1, 0], [1, 0], [-1, 1], [0, 1], [1, 1]];

function lattice(plan: Plan): { step: number; all: PlanPoint[] } {
  const { minX, minY, maxX, maxY } = boundsOf(plan.site.boundary);
  const step = Math.max(STEP, Math.sqrt(((maxX - minX) * (maxY - minY)) / MOST_PLACES));
  const columns = Math.floor((maxX - minX) / step);
  const rows = Math.floor((maxY - minY) / step);
  return { step, all: Array.from({ length: columns * rows }, (_, n): PlanPoint => [minX + ((n % columns) + 0.5) * step, minY + (Math.floor(n / columns) + 0.5) * step]) };
}

function standingOf({ light }: PotStand): LightStanding {
  if (light.least === null || !light.tooDark) return 'enough';
  return light[light.least.quantity] >= NEARLY * light.least.value ? 'nearly' : 'too dark';
}

/** The share of the light it needs, at most 1. */
function shareOfLight({ light }: PotStand): number {
  return light.least === null || light.least.value === 0 ? 1 : Math.min(1, light[light.least.quantity] / light.least.value);
}

/** Light first, too little and then too much, then harm, then the way. Of two places that are too dark the one that misses by less. */
function better(a: Tried, b: Tried): number {
  const dark = Number(a.standing === 'too dark') - Number(b.standing === 'too dark');
  if (dark !== 0) return dark;
  if (a.standing === 'too dark' && b.standing === 'too dark') return shareOfLight(b) - shareOfLight(a) || a.harm - b.harm || a.metres - b.metres;
  const over = Number(a.over > OVER) - Number(b.over > OVER);
  if (over !== 0) return over;
  return Math.round(a.harm / ALIKE) - Math.round(b.harm / ALIKE) || a.metres - b.metres || a.at[0] - b.at[0] || a.at[1] - b.at[1];
}

function spreadOut(tried: readonly Tried[], count: number): Tried[] {
  const named: Tried[] = [];
  for (const each of tried) {
    if (named.length === count) break;
    if (named.every((other) => distance(other.at, each.at) >= APART)) named.push(each);
  }
  return named;
}

function spotOfTried(
  plan: Plan, plant: Plant, tried: Tried, stay: boolean, rank: number, where: Tried, judge: PotJudge, request: PlaceRequest,
): Outcome<PlaceSpot> {
  const load = loadAlone(plan, { ...plant, at: tried.at }, request);
  if (!load.ok) return load;
  const { scorchDose, peak, verdict, pot } = load.value.load;
  if (scorchDose === null || peak === null || verdict === null || pot === null) throw new Error('A pot whose plant is known is judged.');
  const bare: Omit<PlaceSpot, 'sentence'> = {
    rank, stay, at: tried.at, harm: load.value.harm, spared: where.harm - tried.harm, scorchDose, peak, verdict, light: tried.light, standing: tried.standing,
    overRange: tried.over, pot, winterSunHours: judge.winterAt(tried.at), metres: tried.metres,
    hardening: stay ? null : hardeningOf(where.light.sunHours, tried.light.sunHours),
  };
  return { ok: true, value: { ...bare, sentence: spotSentence(bare, request.units ?? unitsOf(plan)) } };
}

/** The full judgement of one plant, every other left out: plants cast no shade on each other. */
function loadAlone(plan: Plan, plant: Plant, { weather, units }: PlaceRequest): Outcome<{ load: PlantLoad; harm: number }> {
  const features = plan.features.flatMap((feature): Feature[] => {
    if (feature.id === plant.id) return [plant];
    if (feature.kind === 'plant' || feature.kind === 'bed') return [];
    return feature.kind === 'tree' ? [{ ...feature, plant: undefined }] : [feature];
  });
  const alone = { ...plan, features };
  const loads = plantLoadsOf(alone, { weather, units });
  if (!loads.ok) return loads;
  const harms = harmOf(alone, weather);
  return harms.ok ? { ok: true, value: { load: loads.value[0], harm: harms.value[0].harm } } : harms;
}

/** Every other pot that can be moved, if both fit where the other stands: the most spared first. */
function swapsOf(plan: Plan, plant: Plant, stay: Tried, judge: PotJudge, weather?: Weather): Outcome<PotSwap[]> {
  const swaps: PotSwap[] = [];
  for (const other of plan.features.filter(isPot)) {
    const row = rowOf(plan, other);
    if (other.id === plant.id || other.move === 'never' || !row) continue;
    const without = (id: string): Plan => ({ ...plan, features: plan.features.filter((feature) => feature.id !== id) });
    if (potGround(without(other.id), plant).reasonAt(other.at) !== null || potGround(without(plant.id), other).reasonAt(plant.at) !== null) continue;
    const otherJudge = createPotJudge(plan, other, row, weather);
    if (!otherJudge.ok) return otherJudge;
    const [mine, theirs, theirStay] = [judge.at(other.at), otherJudge.value.at(plant.at), otherJudge.value.at(other.at)];
    const spared = worthOf(plant) * (stay.harm - mine.harm) + worthOf(other) * (theirStay.harm - theirs.harm);
    const tooDark = [...(standingOf(mine) === 'too dark' ? [plant.id] : []), ...(standingOf(theirs) === 'too dark' ? [other.id] : [])];
    swaps.push({ with: other.id, spared, tooDark, sentence: swapSentence(plan, plant.id, other.id, spared, tooDark) });
  }
  return { ok: true, value: swaps.sort((a, b) => b.spared - a.spared) };
}
