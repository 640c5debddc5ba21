import { nameOf } from '../../plan/names.ts';
import { plantLoad } from '../../load/verdict/plant-load.ts';
import { rowOf } from '../../load/verdict/planted.ts';
import type { Outcome, PlantLoad } from '../../load/types.ts';
import { worthOf } from '../../plan/defaults.ts';
import type { Feature, Plan, PlanPoint, Plant, PlantRow } from '../../plan/types.ts';
import { type Units, unitsOf } from '../../plan/units.ts';
import type { Weather } from '../../sun/weather.ts';
import { hardeningOf } from './hardening.ts';
import { potGround } from './ground.ts';
import { createPotJudge, type PotJudge } from './judge.ts';
import { winterDayOf } from './winter-day.ts';
import { better, LIGHT_ORDER, rankingOf, SPOTS, type Tried } from './rank.ts';
import type { PlaceRequest, PlaceResult, PlaceSpot, PotSwap } from './types.ts';
import { spotWords } from '../words/spot-words.ts';
import { isEvergreen, weighedWithWinter, WINTER_SUN } from './winter.ts';
import { placeNotesOf, spotSentence, swapSentence } from './words.ts';

/**
 * Ranked spots for a potted plant: those with enough light first, the least harmed first among them; "stay" is always
 * one of them.
 * @returns the spots, or what is wrong: no such plant, not in a pot, too heavy to move, its kind not known
 */
export function placeOf(plan: Plan, request: PlaceRequest): Outcome<PlaceResult> {
  const found = potToMove(plan, request.plant);
  if (!found.ok) return found;
  const { plant, row } = found.value;
  const judged = createPotJudge(plan, plant, row, request.weather);
  if (!judged.ok) return judged;
  const judge = judged.value;
  const ranking = rankingOf(plan, plant, row, judge);
  const { stay, places } = ranking;
  const count = request.count ?? SPOTS;
  // As many are weighed however few are asked for, so that the count does not change which come first.
  const inSummer = ranking.best(2 * Math.max(SPOTS, count));
  const evergreen = isEvergreen(row);
  const weighed = evergreen
    ? weighedWithWinter([...inSummer, stay].sort(better), stay.harm, ({ at }) => judge.winterAt(at))
    : [...inSummer, stay].sort(better);
  const named = weighed.filter((each) => each !== stay).slice(0, count);
  const units = request.units ?? unitsOf(plan);
  const spots = weighed
    .filter((one) => one === stay || named.includes(one))
    .map((each, k) => spotOf(plan, plant, each, k + 1, stay, judge, { ...request, units }));
  const swaps = swapsOf(plan, plant, row, stay, request.weather);
  if (!swaps.ok) return swaps;
  const winter = places.map((at) => ({ at, sunHours: judge.winterAt(at) })).sort((a, b) => b.sunHours - a.sunHours)[0];
  const winterBest =
    winter !== undefined && spots[0].winterSunHours < winter.sunHours - 1
      ? {
          ...winter,
          where: spotWords(plan, winter.at, plant.id, units),
          isWanted: evergreen && spots[0].winterSunHours < WINTER_SUN,
        }
      : null;
  const notes = placeNotesOf({
    plan,
    plant,
    row,
    spots,
    tried: ranking.tried(),
    allowed: places.length,
    winterBest,
    units,
  });
  return {
    ok: true,
    value: { plant: plant.id, spots, swaps: swaps.value, winterDay: winterDayOf(plan), winterBest, notes },
  };
}

function potToMove(plan: Plan, id: string): Outcome<{ plant: Plant; row: PlantRow }> {
  const feature = plan.features.find((each) => each.id === id);
  const refuse = (message: string): Outcome<never> => ({
    ok: false,
    problems: [{ pointer: '--plant', message, severity: 'error' }],
  });
  if (feature === undefined) {
    const pots = plan.features
      .filter(isPot)
      .map((each) => `"${each.id}"`)
      .join(', ');
    return refuse(
      `There is nothing called "${id}"; ` +
        `${pots === '' ? 'no plant of this plan stands in a pot' : `the plants in pots are ${pots}`}.`,
    );
  }
  if (!isPot(feature)) return refuse(`${nameOf(plan, id)} does not stand in a pot, so it has no other place to go.`);
  if (feature.move === 'never')
    return refuse(
      `${nameOf(plan, id)} is marked as too heavy to move. Say "carry" or "trolley" to see where it would do better.`,
    );
  const row = rowOf(plan, feature);
  return row
    ? { ok: true, value: { plant: feature, row } }
    : refuse(`${nameOf(plan, id)} does not say what plant it is, so its light and its limit are not known.`);
}

function isPot(feature: Feature): feature is Plant {
  return feature.kind === 'plant' && feature.container === true;
}

function spotOf(
  plan: Plan,
  plant: Plant,
  tried: Tried,
  rank: number,
  now: Tried,
  judge: PotJudge,
  { on, units }: PlaceRequest & { readonly units: Units },
): PlaceSpot {
  const { scorchDose, peak, verdict, pot } = loadAt(tried.at, judge, units);
  if (scorchDose === null || peak === null || verdict === null || pot === null)
    throw new Error('A pot whose plant is known is judged.');
  const stay = tried === now;
  const bare: Omit<PlaceSpot, 'sentence'> = {
    rank,
    stay,
    at: tried.at,
    where: spotWords(plan, tried.at, plant.id, units),
    harm: tried.harm,
    spared: now.harm - tried.harm,
    scorchDose,
    peak,
    verdict,
    light: tried.light,
    standing: tried.standing,
    overRange: tried.over,
    pot,
    winterSunHours: judge.winterAt(tried.at),
    metres: tried.metres,
    steps: tried.steps,
    hardening: stay ? null : hardeningOf(now.light.sunHours, tried.light.sunHours, on),
  };
  return { ...bare, sentence: spotSentence(bare, units) };
}

/** The full judgement of the plant at a place, as if it stood there in the plan. */
function loadAt(at: PlanPoint, { movedTo }: PotJudge, units: Units): PlantLoad {
  const { yard, heatwave, pot } = movedTo(at);
  return plantLoad(yard, heatwave, pot, units);
}

/** A change that spares both together less is not worth the carrying. Our choice. [K·h/day] */
const WORTH_SWAPPING = 0.5;

/** Whether a place stands worse for light than another. */
function darkens(from: Pick<Tried, 'standing'>, to: Pick<Tried, 'standing'>): boolean {
  return LIGHT_ORDER.indexOf(to.standing) > LIGHT_ORDER.indexOf(from.standing);
}

/**
 * Every other pot that can be moved, if that spares something and darkens neither, and if both fit where the other
 * stands: the most spared first.
 */
function swapsOf(plan: Plan, plant: Plant, own: PlantRow, stay: Tried, weather?: Weather): Outcome<PotSwap[]> {
  const swaps: PotSwap[] = [];
  for (const other of plan.features.filter(isPot)) {
    const row = rowOf(plan, other);
    if (other.id === plant.id || other.move === 'never' || !row) continue;
    const without = (id: string): Plan => ({ ...plan, features: plan.features.filter((feature) => feature.id !== id) });
    if (
      potGround(without(other.id), plant).reasonAt(other.at) !== null ||
      potGround(without(plant.id), other).reasonAt(plant.at) !== null
    )
      continue;
    const before = createPotJudge(plan, other, row, weather);
    if (!before.ok) return before;
    // Each is judged in the yard in which the other stands where it stood, and shades it from there.
    const [there, here] = [
      { ...plant, at: other.at },
      { ...other, at: plant.at },
    ];
    const swapped: Plan = {
      ...plan,
      features: plan.features.map((feature) =>
        feature.id === plant.id ? there : feature.id === other.id ? here : feature,
      ),
    };
    const [plantJudge, otherJudge] = [
      createPotJudge(swapped, there, own, weather),
      createPotJudge(swapped, here, row, weather),
    ];
    if (!plantJudge.ok) return plantJudge;
    if (!otherJudge.ok) return otherJudge;
    const now = worthOf(plant) * stay.harm + worthOf(other) * before.value.harmAt(other.at);
    const then = worthOf(plant) * plantJudge.value.harmAt(there.at) + worthOf(other) * otherJudge.value.harmAt(here.at);
    const isDarker =
      darkens(stay, plantJudge.value.lightAt(there.at)) ||
      darkens(before.value.lightAt(other.at), otherJudge.value.lightAt(here.at));
    const spared = now - then;
    if (spared < WORTH_SWAPPING || isDarker) continue;
    swaps.push({ with: other.id, spared, sentence: swapSentence(plan, plant.id, other.id, spared / now) });
  }
  return { ok: true, value: swaps.sort((a, b) => b.spared - a.spared) };
}
