import { plantLoadsOf } from '../../load/load-of.ts';
import { rootWords } from '../../load/pot/pot-words.ts';
import type { Outcome, PlantLoad } from '../../load/types.ts';
import { clothClause } from '../../load/verdict/cloth-now.ts';
import { isCoolCrop, sowCool } from '../../load/verdict/cool-season.ts';
import { plantFeatures, rowOf } from '../../load/verdict/planted.ts';
import { isMovable } from '../../plan/kinds.ts';
import type { Plan, Plant, PlantRow } from '../../plan/types.ts';
import { type Units, unitsOf } from '../../plan/units/units.ts';
import { agreeingWith } from '../../plan/words/agreement.ts';
import { namedInside, nameOf } from '../../plan/words/names.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import { placeOf } from '../place/place.ts';
import { wayWords } from '../place/way.ts';
import { gainWords } from '../place/words.ts';
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
  const { they, them, are, does: verb } = agreeingWith(nameOf(plan, id));
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
    return step('look', `Say which plant ${name} ${are}: then the limit is known, and what helps ${them}.`);
  const need = noNeedOf(load.verdict);
  // Where it stays, its pot does too.
  const roots = load.pot === null ? '' : rootWords(load.pot.roots, units, nameOf(plan, id));
  if (need === 'no shade needed')
    return step(
      'nothing',
      `No cloth for ${name}: ${they} ${verb('need')} no shade. Free: water ${them} well before a heatwave.${roots}`,
    );
  if (need === 'too dark')
    return step('light', `More light for ${name}, not less: morning sun, and no cloth over it.${roots}`);
  return isMovable(feature)
    ? moveFirst(plan, feature, row, `${stayWords(nameOf(plan, id), row, load)}${roots}`, { weather, units })
    : step(stayDo(row), `${stayWords(nameOf(plan, id), row, load)}${roots}`);
}

/** What is done first where it stands: water does not cool fruit. */
function stayDo({ limitOf }: PlantRow): 'water' | 'leaves' {
  return limitOf === 'fruit' ? 'leaves' : 'water';
}

/** @param load its height, and cloth that hangs there already */
function stayWords(name: string, row: PlantRow, load: Pick<PlantLoad, 'cloth' | 'height'>): string {
  const { them } = agreeingWith(name);
  const first =
    stayDo(row) === 'leaves'
      ? 'Leave every leaf that hangs over the fruit: free, and water does not cool fruit.'
      : 'Mulch, and water in the morning: free.';
  const clause = clothClause(row, load.cloth, load.height);
  const cool = isCoolCrop(row) ? `; or ${sowCool(them)}` : '';
  if (clause !== null) return `${first} Then ${clause}${cool}.`;
  return load.cloth === null
    ? `${first} Then cloth against the hot sun${cool}.`
    : `${first} The cloth there is as thick as suits ${them}${cool}.`;
}

function moveFirst(
  plan: Plan,
  pot: Plant,
  row: PlantRow,
  staying: string,
  { weather, units }: { readonly weather?: Weather; readonly units: Units },
): Outcome<NextStep> {
  const places = placeOf(plan, { plant: pot.id, count: 1, weather, units });
  if (!places.ok) return places;
  const { spots, winterBest } = places.value;
  const [best] = spots;
  const stay = spots.find((spot) => spot.stay);
  if (stay === undefined || best === stay || best.standing === 'too dark')
    return {
      ok: true,
      value: {
        do: stayDo(row),
        cost: 0,
        sentence: `No place on your ground is worth carrying ${agreeingWith(nameOf(plan, pot.id)).them} to. ${staying}`,
      },
    };
  const { roots } = best.pot;
  const name = nameOf(plan, pot.id);
  const { they, their, does } = agreeingWith(name);
  const wrap =
    roots.verdict === 'cooking'
      ? ` ${stay.pot.roots.verdict === 'cooking' ? 'There too' : 'There'} ${their} pot must be kept cool.` +
        rootWords(roots, units, name)
      : '';
  const winter = winterBest?.isWanted === true ? ` In winter ${they} ${does('stand')} best ${winterBest.where}.` : '';
  const sentence =
    `Move ${namedInside(plan, pot.id)} ${best.where}, ${wayWords(plan, best, units)}: free, and ` +
    `${gainWords(best, stay)}.${wrap}${winter}`;
  return { ok: true, value: { do: 'move', cost: 0, sentence } };
}
