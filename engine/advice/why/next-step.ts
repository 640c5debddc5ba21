import { plantLoadsOf } from '../../load/load-of.ts';
import { isCoolCrop, SOW_IT_COOL } from '../../load/verdict/cool-season.ts';
import { plantFeatures, rowOf } from '../../load/verdict/planted.ts';
import { rootWords } from '../../load/pot/pot-words.ts';
import type { Outcome } from '../../load/types.ts';
import { namedInside } from '../../plan/names.ts';
import { lessDamage } from '../../plan/spoken.ts';
import type { Plan, Plant, PlantRow } from '../../plan/types.ts';
import { type Units, unitsOf } from '../../plan/units/units.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import { isMovable } from '../place/movable.ts';
import { wayWords } from '../place/way.ts';
import { placeOf } from '../place/place.ts';
import { noNeedOf } from '../words/no-need.ts';
import type { WhyResult } from './types.ts';

export interface NextStep {
  readonly do: 'look' | 'nothing' | 'light' | 'move' | 'water' | 'leaves';
  /** In the plan's currency: what is told first costs nothing. */
  readonly cost: 0;
  readonly sentence: string;
}

/**
 * What to do first about a plant's damage, as `place` and `site` tell it first too: look elsewhere where the sun did
 * not do it; carry a pot to its best place; else mulch and water (for fruit: leave its leaves), and then cloth.
 * @returns the step, or why a place cannot be judged
 */
export function nextStepOf(
  plan: Plan,
  { plant: id, answer }: Pick<WhyResult, 'plant' | 'answer'>,
  request: { readonly weather?: Weather; readonly units?: Units } = {},
): Outcome<NextStep> {
  const { weather, units = unitsOf(plan) } = request;
  const name = namedInside(plan, id);
  const step = (does: NextStep['do'], sentence: string): Outcome<NextStep> => ({
    ok: true,
    value: { do: does, cost: 0, sentence },
  });
  if (answer === 'does not')
    return step('look', 'Nothing to shade for this: look at the other causes first, and feel the soil before all.');
  const loads = plantLoadsOf(plan, { weather, units });
  if (!loads.ok) return loads;
  const load = loads.value.find((each) => each.id === id);
  const feature = plantFeatures(plan).find((each) => each.id === id);
  const row = feature && rowOf(plan, feature);
  if (load === undefined || feature === undefined || row === undefined)
    return step('look', `Say which plant ${name} is: then its limit is known, and what helps it.`);
  const need = noNeedOf(load.verdict);
  // Where it stays, its pot does too.
  const roots = load.pot === null ? '' : rootWords(load.pot.roots, units);
  if (need === 'no shade needed')
    return step('nothing', `No cloth for ${name}: it needs no shade. Free: water it well before a heatwave.${roots}`);
  if (need === 'too dark')
    return step('light', `More light for ${name}, not less: morning sun, and no cloth over it.${roots}`);
  return isMovable(feature)
    ? moveFirst(plan, feature, row, roots, { weather, units })
    : step(stayDo(row), `${stayWords(row)}${roots}`);
}

/** What is done first where it stands: water does not cool fruit. */
function stayDo({ limitOf }: PlantRow): 'water' | 'leaves' {
  return limitOf === 'fruit' ? 'leaves' : 'water';
}

function stayWords(row: PlantRow): string {
  const first =
    stayDo(row) === 'leaves'
      ? 'Leave every leaf that hangs over the fruit: free, and water does not cool fruit.'
      : 'Mulch, and water in the morning: free.';
  return `${first} Then ${clothWords(row)}${isCoolCrop(row) ? `; or ${SOW_IT_COOL}` : ''}.`;
}

function clothWords({ cloth }: PlantRow): string {
  return !cloth ? 'cloth against the hot sun' : `cloth that stops ${cloth[0]} to ${cloth[1]} %`;
}

function moveFirst(
  plan: Plan,
  pot: Plant,
  row: PlantRow,
  rootsHere: string,
  { weather, units }: { readonly weather?: Weather; readonly units: Units },
): Outcome<NextStep> {
  const places = placeOf(plan, { plant: pot.id, count: 1, weather, units });
  if (!places.ok) return places;
  const { spots, winterBest } = places.value;
  const [best] = spots;
  const stay = spots.find((spot) => spot.stay);
  if (stay === undefined || best === stay || best.spared <= 0 || best.standing === 'too dark')
    return {
      ok: true,
      value: { do: stayDo(row), cost: 0, sentence: `No place suits it better. ${stayWords(row)}${rootsHere}` },
    };
  const { roots } = best.pot;
  const wrap = roots.verdict === 'cooking' ? ` There too its pot must be kept cool.${rootWords(roots, units)}` : '';
  const winter = winterBest?.isWanted === true ? ` In winter it stands best ${winterBest.where}.` : '';
  const sentence =
    `Move ${namedInside(plan, pot.id)} ${best.where}, ${wayWords(plan, best, units)}: free, and ` +
    `${lessDamage(best.spared / stay.harm)}.${wrap}${winter}`;
  return { ok: true, value: { do: 'move', cost: 0, sentence } };
}
