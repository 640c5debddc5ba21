import type { Outcome, PlantLoad } from '../../load/types.ts';
import { plantLoad } from '../../load/verdict/plant-load.ts';
import { rowOf } from '../../load/verdict/planted.ts';
import { isPot } from '../../plan/kinds.ts';
import { refusal } from '../../plan/problems.ts';
import type { Plan, PlanPoint, Plant, PlantRow } from '../../plan/types.ts';
import { type Units, unitsOf } from '../../plan/units/units.ts';
import { agreeingWith } from '../../plan/words/agreement.ts';
import { namedInside, nameOf } from '../../plan/words/names.ts';
import { spotWords } from '../words/spot-words.ts';
import { hardeningOf } from './hardening.ts';
import { createPotJudges, type PotJudge } from './judge.ts';
import { rankingOf, SPOTS, type Tried } from './rank.ts';
import { swapsOf } from './swaps.ts';
import type { PlaceRequest, PlaceResult, PlaceSpot } from './types.ts';
import type { Way } from './way.ts';
import { winterDayOf } from './winter-day.ts';
import { wantsWinterSun, WINTER_SUN } from './winter.ts';
import { placeNotesOf, spotSentence } from './words.ts';

/**
 * Ranked spots for a potted plant: those with enough light first, the least harmed first among them; "stay" is always
 * one of them.
 * @returns the spots, or what is wrong: no such plant, not in a pot, too heavy to move, its kind not known
 */
export function placeOf(plan: Plan, request: PlaceRequest): Outcome<PlaceResult> {
  const found = potToMove(plan, request.plant);
  if (!found.ok) return found;
  const { plant, row } = found.value;
  const judges = createPotJudges(plan, request.weather);
  if (!judges.ok) return judges;
  const judge = judges.value.of(plant, row);
  const ranking = rankingOf(plan, plant, row, judge);
  const { stay, places } = ranking;
  const count = request.count ?? SPOTS;
  const evergreen = wantsWinterSun(row);
  const ranked = ranking.ranked(count);
  const named = ranked.filter((each) => each !== stay).slice(0, count);
  const units = request.units ?? unitsOf(plan);
  const spots = ranked
    .filter((one) => one === stay || named.includes(one))
    .map((each, k) => spotOf(plan, plant, each, k + 1, stay, judge, { ...request, units, evergreen }));
  const swaps = swapsOf(plan, { plant, row, stay, judge }, judges.value, request.weather);
  if (!swaps.ok) return swaps;
  const winterBest = evergreen ? winterPlace(plan, plant, places, judge, spots[0], units) : null;
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

/** Where it has most sun in winter, if that is more than at the best place. */
function winterPlace(
  plan: Plan,
  plant: Plant,
  places: readonly PlanPoint[],
  judge: PotJudge,
  { winterSunHours }: PlaceSpot,
  units: Units,
): PlaceResult['winterBest'] {
  const [winter] = places.map((at) => ({ at, sunHours: judge.winterAt(at) })).sort((a, b) => b.sunHours - a.sunHours);
  const here = winterSunHours ?? 0;
  if (winter === undefined || here >= winter.sunHours - 1) return null;
  return { ...winter, where: spotWords(plan, winter.at, plant.id, units), isWanted: here < WINTER_SUN };
}

function potToMove(plan: Plan, id: string): Outcome<{ plant: Plant; row: PlantRow }> {
  const feature = plan.features.find((each) => each.id === id);
  const refuse = (message: string): Outcome<never> => refusal('--plant', message);
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
  const name = nameOf(plan, id);
  const { they, them, are, does } = agreeingWith(name);
  if (!isPot(feature))
    return refuse(`${name} ${does('do')} not stand in a pot, so there is no other place for ${them}.`);
  if (feature.move === 'never')
    return refuse(
      `${name} ${are} marked as too heavy to move. Say "carry" or "trolley" to see where ${they} would do better.`,
    );
  const row = rowOf(plan, feature);
  return row
    ? { ok: true, value: { plant: feature, row } }
    : refuse(`Say what plant ${namedInside(plan, id)} ${are}: then light and limit are known.`);
}

function spotOf(
  plan: Plan,
  plant: Plant,
  tried: Tried,
  rank: number,
  now: Tried,
  judge: PotJudge,
  { on, units, evergreen }: PlaceRequest & { readonly units: Units; readonly evergreen: boolean },
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
    winterSunHours: evergreen ? judge.winterAt(tried.at) : null,
    ...wayOf(tried),
    hardening: stay ? null : hardeningOf(now.light.sunHours, tried.light.sunHours, on),
  };
  return { ...bare, sentence: spotSentence(plan, plant.id, bare, units) };
}

function wayOf({ metres, steps, round, led, gate }: Way): Way {
  return { metres, steps, round, ...(led && { led }), ...(gate !== undefined && { gate }) };
}

/** The full judgement of the plant at a place, as if it stood there in the plan. */
function loadAt(at: PlanPoint, { movedTo }: PotJudge, units: Units): PlantLoad {
  const { yard, heatwave, pot } = movedTo(at);
  return plantLoad(yard, heatwave, pot, units);
}
