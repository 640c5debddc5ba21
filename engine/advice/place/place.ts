import { nameOf } from '../../plan/names.ts';
import { plantLoad } from '../../load/verdict/plant-load.ts';
import { rowOf } from '../../load/verdict/planted.ts';
import type { Outcome, PlantLoad } from '../../load/types.ts';
import type { Plan, PlanPoint, Plant, PlantRow } from '../../plan/types.ts';
import { type Units, unitsOf } from '../../plan/units/units.ts';
import { hardeningOf } from './hardening.ts';
import { createPotJudges, type PotJudge } from './judge.ts';
import { winterDayOf } from './winter-day.ts';
import { isPot } from './movable.ts';
import { better, rankingOf, SPOTS, type Tried } from './rank.ts';
import type { PlaceRequest, PlaceResult, PlaceSpot } from './types.ts';
import { spotWords } from '../words/spot-words.ts';
import { wantsWinterSun, weighedWithWinter, WINTER_SUN } from './winter.ts';
import { swapsOf } from './swaps.ts';
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
  // As many are weighed however few are asked for, so that the count does not change which come first.
  const inSummer = ranking.best(2 * Math.max(SPOTS, count));
  const evergreen = wantsWinterSun(row);
  const weighed = evergreen
    ? weighedWithWinter([...inSummer, stay].sort(better), stay.harm, ({ at }) => judge.winterAt(at))
    : [...inSummer, stay].sort(better);
  const named = weighed.filter((each) => each !== stay).slice(0, count);
  const units = request.units ?? unitsOf(plan);
  const spots = weighed
    .filter((one) => one === stay || named.includes(one))
    .map((each, k) => spotOf(plan, plant, each, k + 1, stay, judge, { ...request, units }));
  const swaps = swapsOf(plan, { plant, row, stay, judge }, judges.value, request.weather);
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
    round: tried.round,
    ...(tried.led && { led: tried.led }),
    hardening: stay ? null : hardeningOf(now.light.sunHours, tried.light.sunHours, on),
  };
  return { ...bare, sentence: spotSentence(plan, bare, units) };
}

/** The full judgement of the plant at a place, as if it stood there in the plan. */
function loadAt(at: PlanPoint, { movedTo }: PotJudge, units: Units): PlantLoad {
  const { yard, heatwave, pot } = movedTo(at);
  return plantLoad(yard, heatwave, pot, units);
}
