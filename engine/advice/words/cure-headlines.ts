/** What the stages that cure something open with: at most twenty words that a person would say. */

import type { PlantLoad } from '../../load/types.ts';
import { areCoolCrops, sowCool } from '../../load/verdict/cool-season.ts';
import type { Plan } from '../../plan/types.ts';
import { type ClockStretch, formatStretch } from '../../plan/units/clock.ts';
import { formatDistance } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { agreeingWith } from '../../plan/words/agreement.ts';
import { capital } from '../../plan/words/first-letter.ts';
import { listWords } from '../../plan/words/list-words.ts';
import { namedInside, nameOf, namesInside } from '../../plan/words/names.ts';
import { lessDamage } from '../../plan/words/spoken.ts';
import { type LadderStep, WORTH_NAMING, worthMoving } from '../cheaper-first/step.ts';
import type { ComparedChoice } from '../compare/types.ts';
import type { PlaceResult } from '../place/types.ts';
import { gainWords } from '../place/words.ts';
import { shortEnough } from './headline-length.ts';

/** Less heat damage than this is not spoken of. [K·h/day] */
const LEAST_TOLD = 0.05;

/** Where a pot should go. */
export function placeHeadline(plan: Plan, { plant, spots, winterBest }: PlaceResult, units: Units): string {
  const name = namedInside(plan, plant);
  const { they, them, their, does } = agreeingWith(nameOf(plan, plant));
  const stay = spots.find((spot) => spot.stay);
  const [best] = spots;
  if (best === undefined || stay === undefined || best === stay) {
    return best?.pot.roots.verdict === 'cooking'
      ? `Leave ${name} where ${they} ${does('stand')}, and keep ${their} pot cool: ${their} roots die there.`
      : `Leave ${name} where ${they} ${does('stand')}: no place on your ground is worth carrying ${them} to.`;
  }
  const away = formatDistance(best.metres, units);
  if (stay.harm < LEAST_TOLD) return `Move ${name} ${best.where}, ${away} away: there ${gainWords(best, stay)}.`;
  const roots = [stay, best].map(({ pot }) => pot.roots.verdict === 'cooking');
  const cool = roots[1] && !roots[0] ? `; keep ${their} pot cool there` : '';
  const gain = `free, and ${gainWords(best, stay)}${cool}`;
  if (winterBest?.isWanted === true)
    return shortEnough(
      `Move ${name} ${best.where} for summer: ${gain}. In winter: elsewhere.`,
      `Move ${name} to place 1 for summer: ${gain}. In winter: elsewhere.`,
    );
  return shortEnough(
    `Move ${name} ${best.where}, ${away} away: ${gain}.`,
    `Move ${name} to place 1, ${away} away: ${gain}.`,
  );
}

/**
 * How a pot fares where it is held, beside where it stands: better or worse, and its hours.
 * @param now scorch dose of the heatwave day where it stands [K·h]
 * @param sunUp of that day
 */
export function triedHeadline(
  { scorchDose, when, verdict }: PlantLoad,
  now: number,
  units: Units = 'metric',
  sunUp: ClockStretch | null = null,
): string {
  const share = now > LEAST_TOLD ? (now - (scorchDose ?? 0)) / now : (scorchDose ?? 0) > LEAST_TOLD ? -1 : 0;
  const beside =
    Math.abs(share) < WORTH_NAMING
      ? 'No better and no worse there'
      : share > 0
        ? `Better there: ${lessDamage(share)} on the heatwave day`
        : 'Worse there: more heat damage';
  const hours = when === null ? 'never over the limit' : `over the limit ${formatStretch(when, units, sunUp)}`;
  return `${beside}, ${hours}${verdict === 'too dark' ? ', and too dark' : ''}.`;
}

/** What to try first, before any cloth. @param steps the cheapest first */
export function cheaperHeadline(plan: Plan, steps: readonly LadderStep[]): string {
  if (steps.length === 0) return 'Nothing to shade: no plant is harmed. You may stop here.';
  if (isOnlyRoots(steps)) return `${steps[0].name}: no leaf is harmed, but roots are. Then you may stop.`;
  const move = worthMoving(steps);
  if (move !== null) {
    const whom = agreeingWith(...move.serves.map((id) => nameOf(plan, id))).them;
    return `${move.name} first: free, and ${lessDamage(move.sparedShare)} to ${whom}. Then try cloth.`;
  }
  const water = steps.find(({ id }) => id === 'water');
  if (water !== undefined && water.sparedShare === null) return `${water.name}; then cloth over the plants that burn.`;
  if (water !== undefined && areCoolCrops(plan, water.serves))
    return shortEnough(
      ...[namesInside(plan, water.serves), 'them'].map(
        (whom) => `${capital(sowCool(whom))}: free. Or mulch, water, and try cloth.`,
      ),
    );
  return 'Mulch and water first; then cloth over the plants that burn.';
}

/** Whether all that is to be cured are roots in pots. */
export function isOnlyRoots(steps: readonly LadderStep[]): boolean {
  return steps.length > 0 && steps.every(({ id }) => id === 'wrap');
}

/** What an option does for the plants that it serves, and for how much. */
export function optionHeadline(plan: Plan, choice: ComparedChoice): string {
  const { name, effect, together, sparedShare, cost, newlyTooDark, plants } = choice;
  if (sparedShare === null) return `${name}: nothing is harmed today, so there is nothing to spare.`;
  if (together === null) return `${name}: no plant gets less heat damage.`;
  const whom = effect.plants.map(({ id }) => namedInside(plan, id));
  const does =
    together.share <= -WORTH_NAMING
      ? 'more heat damage'
      : effect.share < WORTH_NAMING
        ? 'hardly less heat damage'
        : lessDamage(effect.share);
  const money =
    cost.total === null ? '' : cost.total === 0 ? ', free' : `, about ${roundMoney(cost.total)} ${cost.currency}`;
  const darkened = plants.filter(({ id }) => newlyTooDark.includes(id)).map((plant) => plant.name);
  const to = whom.length === 0 ? '' : ` to ${listWords(whom)}`;
  const dark = darkened.length === 0 ? '' : `; too dark for ${listWords(darkened)}`;
  return shortEnough(
    `${name}: ${does}${to}${money}${dark}.`,
    `${name}: ${does}${money}${dark}.`,
    `${name}: ${does}${money}.`,
  );
}

/** To the ten: prices are rough. */
function roundMoney(cost: number): number {
  return cost < 20 ? Math.round(cost) : Math.round(cost / 10) * 10;
}
