import type { KnownBy, Plan } from '../../plan/types.ts';
import { formatLength, formatTemperatureDifference, formatShare } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { namedInside, namesInside } from '../../plan/words/names.ts';
import { optionName } from '../compare/words.ts';
import { changesAdvice } from './advice.ts';
import type { DoubtBar, DoubtInput, PlantDoubt } from './types.ts';

/**
 * A number that moves harm by less than this share of it, and turns no verdict and no order, is measured well enough.
 * Our choice.
 */
const WELL_ENOUGH = 0.01;

/** Of the numbers that move what the best option spares, so many are told of. */
const MOST_EFFECTS = 3;

/** Less of the heat damage is told as "under 1 %". */
const LEAST_TOLD = 0.01;

/** What a number of a feature is called, by its key. */
const NUMBER_NAMES: Readonly<Record<string, string>> = {
  at: 'place',
  center: 'place',
  path: 'place',
  outline: 'place',
  plantHeight: 'plants’ height',
  crownWidth: 'crown’s width',
  crownBase: 'crown’s foot',
  foliageFrom: 'foliage’s foot',
  measuredDensity: 'density',
};

const KNOWN_WORDS: Readonly<Record<KnownBy, string>> = {
  tape: 'taped',
  shadow: 'from its shadow',
  paced: 'paced',
  picture: 'from a picture',
  compass: 'by compass',
  guess: 'guessed',
  catalogue: 'from the catalogue',
};

/** How each kind of number is measured. */
const HOW_TO: Readonly<Record<string, string>> = {
  north: 'mark the shadow of an upright edge at a known minute',
  height: 'a tape, or its shadow beside a pole’s',
  size: 'a tape',
  place: 'a tape from two corners of the property',
  shelter: 'stand there on a breezy day and choose the drawing that fits',
  colour: 'look at it, and say white, light, middling or dark',
  'thickness of shade': 'a light meter under it and beside it, within a minute',
};

/** "the height of the shed", as a sentence carries it. */
export function inputName(plan: Plan, { kind, feature, of }: DoubtInput): string {
  if (kind === 'north') return 'the direction of north';
  if (kind === 'climate') return 'the heatwave’s high';
  if (kind === 'limits') return 'the plants’ heat limits';
  if (kind === 'shelter') return 'the shelter from the wind';
  return `the ${NUMBER_NAMES[of] ?? of} of ${feature === null ? 'the yard' : namedInside(plan, feature)}`;
}

export function pmWords({ kind, of, pm }: Pick<DoubtInput, 'kind' | 'of' | 'pm'>, units: Units): string {
  if (kind === 'shelter') return 'one class';
  if (kind === 'colour') return 'one shade';
  if (kind === 'north' || of === 'turn') return `${short(pm)}°`;
  if (kind === 'climate' || kind === 'limits')
    return formatTemperatureDifference(pm, units, Number.isInteger(pm) ? 0 : 1);
  return kind === 'thickness of shade' ? formatShare(pm) : formatLength(pm, units);
}

/** The first number that a person can measure in the yard; `null` where none changes anything. */
export function firstToMeasure(bars: readonly DoubtBar[]): DoubtBar | null {
  return bars.find((bar) => bar.measurable && (bar.moves > 0 || changesAdvice(bar))) ?? null;
}

/**
 * What changes first with a number off: "With the height of the fence 0.20 m less, A (Roof) spares 25 instead of 58 %."
 */
export function adviceWords(plan: Plan, bar: Omit<DoubtBar, 'advice'>): string {
  const { verdicts, first, effect } = bar;
  if (first !== null) return `With ${offWords(bar, first.shift)}, ${optionName(plan, first.option)} spares the most.`;
  if (verdicts.length > 0) {
    const [{ plant, verdict, may, shift }] = verdicts;
    const others = verdicts.length - 1;
    const more = others > 0 ? `, and ${others} more verdict${others > 1 ? 's change' : ' changes'}` : '';
    const instead = `“${may[0]}” instead of “${verdict}”`;
    return `With ${offWords(bar, shift)} the verdict on ${namedInside(plan, plant)} is ${instead}${more}.`;
  }
  return effect === null ? '' : effectWords(plan, bar, effect);
}

function effectWords(
  plan: Plan,
  bar: Omit<DoubtBar, 'advice'>,
  { option, served, from, to, shift }: NonNullable<DoubtBar['effect']>,
): string {
  const [was, is] = [from, to].map((share) => Math.round(100 * share));
  const together = served.length > 1 ? ' together' : '';
  const spares = `takes ${is} instead of ${was} % off the heat damage to ${namesInside(plan, served)}${together}`;
  return `With ${offWords(bar, shift)}, ${optionName(plan, option)} ${spares}.`;
}

/** "the height of the fence 0.20 m less" */
function offWords({ name, kind, pmText }: Omit<DoubtBar, 'advice'>, shift: number): string {
  if (kind === 'place') return `${name} ${pmText} elsewhere`;
  if (kind === 'shelter' || kind === 'colour') return `${name} ${pmText} off`;
  return `${name} ${pmText} ${shift === 0 ? 'more' : 'less'}`;
}

/** The one thing to measure next, and whether climate or limits weigh more. @param harm Σ worth × harm [K·h/day] */
export function sentenceOf(
  bars: readonly DoubtBar[],
  next: DoubtBar | null,
  harm: number,
  hasOptions: boolean,
): string {
  const largest = bars.reduce<DoubtBar | null>(
    (most, bar) => (!bar.measurable && bar.moves > (most?.moves ?? 0) ? bar : most),
    null,
  );
  if (next === null) {
    const nothing = bars.some(({ measurable }) => measurable)
      ? 'No number that could be measured in the yard moves the heat damage'
      : 'Every number of the yard is measured';
    return largest === null
      ? `${nothing}, and neither climate nor limits do.`
      : `${nothing}; ${weighs(largest, harm)}, and no tape betters that.`;
  }
  const known = next.by === null ? '' : `${KNOWN_WORDS[next.by]}, `;
  const changesNothing = !changesAdvice(next) && next.order === null;
  const what = `${next.name} (${known}± ${next.pmText}; ${HOW_TO[next.kind]})`;
  const most = `what moves its heat damage most, ${what}, moves it by ${atMost(next.moves, harm)}`;
  const asks = changesNothing
    ? next.moves <= WELL_ENOUGH * harm
      ? `The yard is measured well enough: ${most}`
      : `No measurement in the yard would change a verdict${hasOptions ? ', or which option does most' : ''}: ${most}`
    : `Measure next ${what}${next.advice === '' ? ': it' : `. ${next.advice} It`} moves the heat damage by ` +
      atMost(next.moves, harm);
  if (largest === null || largest.moves <= next.moves) return `${asks}, more than climate or limits do.`;
  return `${asks}; ${weighs(largest, harm)}, and no tape betters that.`;
}

function weighs({ name, kind, pmText, moves }: DoubtBar, harm: number): string {
  return `${name} (± ${pmText}) weigh${kind === 'limits' ? '' : 's'} more, ${movedBy(moves, harm)}`;
}

const OVER_ALL = 'over 100 %';

/** "23 % at most", "over 100 %" */
function atMost(moves: number, harm: number): string {
  const moved = movedBy(moves, harm);
  return moved === OVER_ALL ? moved : `${moved} at most`;
}

/**
 * How far a number moves the heat damage of the yard as it is told: "23 %", "under 1 %"; where little is told, "over
 * 100 %".
 */
export function movedBy(moves: number, harm: number): string {
  if (harm <= 0) return moves > 0 ? 'from none at all' : formatShare(0);
  if (moves > harm) return OVER_ALL;
  return moves > 0 && moves < LEAST_TOLD * harm ? 'under 1 %' : formatShare(moves / harm);
}

export function plantSentence(
  { name, verdict, may }: Pick<PlantDoubt, 'name' | 'verdict' | 'may'>,
  bars: readonly DoubtBar[],
): string {
  if (may.length === 0) return `${name}: ${verdict}, whichever number is off.`;
  const changes = may.map(
    ({ verdict: other, inputs }) => `${other} (${namesOf(bars.filter(({ key }) => inputs.includes(key)))})`,
  );
  return `${name}: ${verdict}; may become ${changes.join(' or ')}.`;
}

/** A search anew for each number off would take twenty times as long as all else. */
const NOT_SEARCHED = 'Not asked: whether a search would find another best place for cloth with a number off';

/** Which numbers could turn a verdict, and which the order of the options; and what was not asked. */
export function notesOf(plan: Plan, bars: readonly DoubtBar[], order: readonly string[]): string[] {
  const turning = bars.filter(({ verdicts }) => verdicts.length > 0);
  const verdicts =
    turning.length === 0
      ? 'Every verdict stays, whichever one number is off.'
      : `A verdict would be another one with ${namesOf(turning)} off by as much as ` +
        `${turning.length > 1 ? 'each' : 'it'} may be.`;
  if (order.length === 0)
    return [verdicts, `${NOT_SEARCHED}. Put one into an option, and this tells what it hangs on.`];
  const effect = bars
    .flatMap((bar) => (bar.effect === null ? [] : [effectWords(plan, bar, bar.effect)]))
    .slice(0, MOST_EFFECTS);
  const least = `Least heat damage first: ${order.map((id) => optionName(plan, id)).join(', ')}`;
  const changing = bars.filter(({ order: other }) => other !== null);
  const [example] = changing;
  const moved =
    example === undefined
      ? 'the order stays, whichever one number is off'
      : `with ${example.name} off by ${example.pmText} it may be ` +
        (example.order ?? []).map((id) => optionName(plan, id)).join(', ');
  return [verdicts, ...effect, `${least}; ${moved}.`, `${NOT_SEARCHED}.`];
}

/** At most three by name. */
function namesOf(bars: readonly DoubtBar[]): string {
  const names = bars.slice(0, 3).map(({ name }) => name);
  const more = bars.length - names.length;
  if (more > 0) return `${names.join(', ')} or ${more} more`;
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;
}

function short(value: number): string {
  return String(Math.round(10 * value) / 10);
}
