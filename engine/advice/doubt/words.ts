import { namedInside } from '../../plan/names.ts';
import type { KnownBy, Plan } from '../../plan/types.ts';
import { formatLength, formatTemperatureDifference, type Units } from '../../plan/units.ts';
import type { DoubtInput } from './inputs.ts';
import type { DoubtBar, PlantDoubt } from './types.ts';

/**
 * A number that moves harm by less than this share of it, and turns no verdict and no order, is measured well enough.
 * Our choice.
 */
const WELL_ENOUGH = 0.01;

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
  'thickness of shade': 'a light meter under it and beside it, within a minute',
};

/** "the height of the shed", as a sentence carries it. */
export function inputName(plan: Plan, { kind, feature, of }: DoubtInput): string {
  if (kind === 'north') return 'the direction of north';
  if (kind === 'climate') return 'the heatwave’s high';
  if (kind === 'limits') return 'the plants’ heat limits';
  return `the ${NUMBER_NAMES[of] ?? of} of ${feature === null ? 'the yard' : namedInside(plan, feature)}`;
}

export function pmWords({ kind, key, pm }: DoubtBar, units: Units): string {
  if (kind === 'north' || key.endsWith('.turn')) return `${short(pm)}°`;
  if (kind === 'climate' || kind === 'limits')
    return formatTemperatureDifference(pm, units, Number.isInteger(pm) ? 0 : 1);
  return kind === 'thickness of shade' ? `${Math.round(100 * pm)} %` : formatLength(pm, units);
}

/** The farthest-moving number that a person can measure in the yard; `null` where none moves anything. */
export function firstToMeasure(bars: readonly DoubtBar[]): DoubtBar | null {
  return bars.find(({ measurable, moves }) => measurable && moves > 0) ?? null;
}

/** The one thing to measure next, and whether climate or limits weigh more. @param harm Σ worth × harm [K·h/day] */
export function sentenceOf(bars: readonly DoubtBar[], next: DoubtBar | null, harm: number): string {
  const largest = bars.find(({ measurable, moves }) => !measurable && moves > 0) ?? null;
  if (next === null) {
    const nothing = bars.some(({ measurable }) => measurable)
      ? 'No number that could be measured in the yard moves the harm'
      : 'Every number of the yard is measured';
    return largest === null
      ? `${nothing}, and neither climate nor limits do.`
      : `${nothing}; ${weighs(largest)}, and no tape betters that.`;
  }
  const known = next.by === null ? '' : `${KNOWN_WORDS[next.by]}, `;
  const little = next.moves <= WELL_ENOUGH * harm && next.verdicts.length === 0 && next.order === null;
  const what = `${next.name} (${known}± ${next.pmText}; ${HOW_TO[next.kind]})`;
  const asks = little
    ? `The yard is measured well enough: what moves its harm of ${amount(harm)} most, ${what}, moves it by ` +
      `${amount(next.moves)} at most`
    : `Measure next ${what}: it moves the harm of ${amount(harm)} by up to ${amount(next.moves)}`;
  if (largest === null || largest.moves <= next.moves) return `${asks}, more than climate or limits do.`;
  return `${asks}; ${weighs(largest)}, and no tape betters that.`;
}

function weighs({ name, kind, pmText, moves }: DoubtBar): string {
  return `${name} (± ${pmText}) weigh${kind === 'limits' ? '' : 's'} more, ${amount(moves)}`;
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

/** Which numbers could turn a verdict, and which the order of the options. */
export function notesOf(plan: Plan, bars: readonly DoubtBar[], order: readonly string[]): string[] {
  const turning = bars.filter(({ verdicts }) => verdicts.length > 0);
  const verdicts =
    turning.length === 0
      ? 'Every verdict stays, whichever one number is off.'
      : `A verdict would be another one with ${namesOf(turning)} off by as much as ` +
        `${turning.length > 1 ? 'each' : 'it'} may be.`;
  if (order.length === 0) return [verdicts];
  const least = `Least harm first: ${order.map((id) => choiceName(plan, id)).join(', ')}`;
  const changing = bars.filter(({ order: other }) => other !== null);
  if (changing.length === 0) return [verdicts, `${least}; the order stays, whichever one number is off.`];
  const example = changing[0];
  return [
    verdicts,
    `${least}; with ${example.name} off by ${example.pmText} it may be ` +
      `${(example.order ?? []).map((id) => choiceName(plan, id)).join(', ')}.`,
  ];
}

function choiceName(plan: Plan, id: string): string {
  const name = plan.options?.find((option) => option.id === id)?.name?.trim();
  return name ? `${id} (${name})` : id;
}

/** At most three by name, the farthest-moving first. */
function namesOf(bars: readonly DoubtBar[]): string {
  const names = bars.slice(0, 3).map(({ name }) => name);
  const more = bars.length - names.length;
  if (more > 0) return `${names.join(', ')} or ${more} more`;
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;
}

function amount(harm: number): string {
  return `${harm.toFixed(1)} K·h a day`;
}

function short(value: number): string {
  return String(Math.round(10 * value) / 10);
}
