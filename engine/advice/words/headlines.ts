/** The one sentence each stage opens with: at most twenty words that a person would say. */
import type { PlantLoad, Stretch } from '../../load/types.ts';
import { listWords } from '../../plan/list-words.ts';
import { namedInside } from '../../plan/names.ts';
import { lessDamage, spokenClock, spokenCount } from '../../plan/spoken.ts';
import type { Plan } from '../../plan/types.ts';
import { formatDistance, type Units } from '../../plan/units.ts';
import type { LadderStep } from '../cheaper-first/step.ts';
import type { ComparedChoice } from '../compare/types.ts';
import type { PlaceResult } from '../place/types.ts';
import { sentenceCase } from '../year/season/words.ts';

/** The longest headline: a reader takes it in at a glance. [words] */
const MOST_WORDS = 20;
/** So near to the sun's rise or set a time is told as that. [minutes] */
const AT_THE_EDGE = 20;
/** Less heat damage than this is none. [K·h/day] */
const NO_HARM = 0.05;
/** A cure that spares less of the damage than this is not named first. Our choice. */
const WORTH_NAMING = 0.1;

/**
 * What the sun does in the yard.
 * @param plants worst first
 * @param sunUp of the heatwave day, where it is known
 */
export function heatHeadline(plan: Plan, plants: readonly PlantLoad[], sunUp: Stretch | null): string {
  const judged = plants.filter(({ verdict }) => verdict !== null);
  if (plants.length === 0) return 'No plant is drawn yet: put one on the plan, or ask about a spot.';
  if (judged.length === 0) return 'Say which plants these are, and each gets a verdict.';
  for (const [verdict, does] of [
    ['will burn', 'will burn'],
    ['at risk', 'may burn'],
  ] as const) {
    const [worst, ...rest] = judged.filter((plant) => plant.verdict === verdict);
    if (worst !== undefined) return harmedHeadline(plan, worst, rest, does, sunUp);
  }
  const dark = judged.filter(({ verdict }) => verdict === 'too dark');
  if (dark.length > 0) return fitting((names) => `Nothing burns; too little light for ${names}.`, plan, dark);
  return 'The sun harms no plant here, not even on a heatwave day.';
}

function harmedHeadline(
  plan: Plan,
  worst: PlantLoad,
  rest: readonly PlantLoad[],
  does: string,
  sunUp: Stretch | null,
): string {
  const time = worst.when === null ? '' : ` from ${edgeWords(worst.when.from, sunUp?.from, 'sunrise')}`;
  const till = worst.when === null ? '' : ` to ${edgeWords(worst.when.to, sunUp?.to, 'sunset')}`;
  const first = sentenceCase(`${namedInside(plan, worst.id)} ${does}${time}${till}`);
  return rest.length === 0 ? `${first}.` : fitting((names) => `${first}; so ${willOf(does)} ${names}.`, plan, rest);
}

function willOf(does: string): string {
  return does.split(' ')[0];
}

/** The names where they leave the sentence short enough, else how many. */
function fitting(sentence: (names: string) => string, plan: Plan, plants: readonly PlantLoad[]): string {
  const named = sentence(listWords(plants.map(({ id }) => namedInside(plan, id))));
  return wordsIn(named) <= MOST_WORDS ? named : sentence(`${spokenCount(plants.length)} more`);
}

function edgeWords(clock: string, edge: string | undefined, word: string): string {
  const minutes = (text: string) => Number(text.slice(0, 2)) * 60 + Number(text.slice(3, 5));
  return edge !== undefined && Math.abs(minutes(clock) - minutes(edge)) <= AT_THE_EDGE ? word : spokenClock(clock);
}

/** Where a pot should go. */
export function placeHeadline(plan: Plan, { plant, spots }: PlaceResult, units: Units): string {
  const name = namedInside(plan, plant);
  const stay = spots.find((spot) => spot.stay);
  const [best] = spots;
  if (best === undefined || stay === undefined || best === stay)
    return `Leave ${name} where it stands: no place on your ground suits it better.`;
  const away = formatDistance(best.metres, units);
  if (stay.harm < NO_HARM) return `Move ${name} ${best.where}, ${away} away: there the light suits it better.`;
  const share = best.spared / stay.harm;
  const gain = share >= WORTH_NAMING ? `free, and ${lessDamage(share)}` : 'free, and the light suits it better';
  const full = `Move ${name} ${best.where}, ${away} away: ${gain}.`;
  return wordsIn(full) <= MOST_WORDS ? full : `Move ${name} to place 1, ${away} away: ${gain}.`;
}

/**
 * How a pot fares where it is held, beside where it stands: better or worse, and its hours.
 * @param now scorch dose of the heatwave day where it stands [K·h]
 */
export function triedHeadline({ scorchDose, when, verdict }: PlantLoad, now: number): string {
  const share = now > NO_HARM ? (now - (scorchDose ?? 0)) / now : (scorchDose ?? 0) > NO_HARM ? -1 : 0;
  const beside =
    Math.abs(share) < WORTH_NAMING
      ? 'No better and no worse there'
      : share > 0
        ? `Better there: ${lessDamage(share)}`
        : 'Worse there: more heat damage';
  const hours = when === null ? 'never over its limit' : `over its limit ${when.from} to ${when.to}`;
  return `${beside}, ${hours}${verdict === 'too dark' ? ', and too dark' : ''}.`;
}

/** What to try first, before any cloth. @param steps the cheapest first */
export function cheaperHeadline(steps: readonly LadderStep[]): string {
  if (steps.length === 0) return 'Nothing to shade: no plant is harmed. You may stop here.';
  const free = steps.find(({ cost, sparedShare }) => cost === 0 && (sparedShare ?? 0) >= WORTH_NAMING);
  if (free?.id === 'move') return `${free.name} first: free, and ${lessDamage(free.sparedShare ?? 0)}. Then try cloth.`;
  return 'Mulch and water first; then cloth over the plants that burn.';
}

/** What an option does, and for how much. */
export function optionHeadline({ name, sparedShare, cost, tooDark, plants }: ComparedChoice): string {
  if (sparedShare === null) return `${name}: nothing is harmed today, so there is nothing to spare.`;
  const does =
    Math.abs(sparedShare) < WORTH_NAMING
      ? 'hardly less heat damage'
      : sparedShare > 0
        ? `${lessDamage(sparedShare)}`
        : 'more heat damage';
  const money =
    cost.total === null ? '' : cost.total === 0 ? ', free' : `, about ${roundMoney(cost.total)} ${cost.currency}`;
  const darkened = plants.filter(({ id }) => tooDark.includes(id)).map((plant) => plant.name);
  const full = `${name}: ${does}${money}${darkened.length === 0 ? '' : `; too dark for ${listWords(darkened)}`}.`;
  return wordsIn(full) <= MOST_WORDS ? full : `${name}: ${does}${money}.`;
}

/** To the ten: prices are rough. */
function roundMoney(cost: number): number {
  return cost < 20 ? Math.round(cost) : Math.round(cost / 10) * 10;
}

/** How the drawing stands. @param guesses how many of its numbers are guessed */
export function drawHeadline(plan: Plan, guesses: number): string {
  if (plan.features.length === 0) return 'Draw the walls that stand round the yard, then the plants.';
  if (guesses === 0) return 'Your yard is drawn, and every number in it is measured.';
  return `Your yard is drawn; ${guesses === 1 ? 'one number is' : `${spokenCount(guesses)} numbers are`} still guessed.`;
}

function wordsIn(text: string): number {
  return text.split(' ').length;
}
