/** Did it work? Readings and damage against the estimate, and this year against the last. */
import { namedInside, nameOf } from '../../plan/names.ts';
import { momentWords } from '../../plan/moment-words.ts';
import type { Plan } from '../../plan/types.ts';
import { formatTemperature, formatTemperatureDifference } from '../../plan/units/shown.ts';
import { unitsOf } from '../../plan/units/units.ts';
import { DAMAGE_SCALE } from './protocol.ts';
import { correctionsOf, ENOUGH_OUTSIDE } from './corrections.ts';
import { pairsOf } from './pairs.ts';
import { checkReadings, leafReadings } from './readings.ts';
import type { DamageNote, PairCheck, ReadingCheck, ReviewResult } from './types.ts';
import { yearsAgainst } from './year-against-year.ts';

export function reviewOf(plan: Plan): ReviewResult {
  const readings = leafReadings(plan);
  const { checks, cases, left } = checkReadings(plan, readings);
  const pairs = pairsOf(plan, checks, cases);
  const corrections = correctionsOf(plan, readings, checks);
  const years = yearsAgainst(plan);
  const sentences = [
    ...checks.map((check) => readingSentence(plan, check)),
    ...pairs.flatMap((pair) => pairSentences(plan, pair)),
    summary(checks, pairs, corrections.length),
    ...corrections.map(({ sentence }) => sentence),
    ...years.map(({ sentence }) => sentence),
  ];
  return {
    readings: checks,
    pairs,
    corrections,
    damage: damageNotes(plan),
    years,
    sentences: sentences.filter((sentence) => sentence !== ''),
    notes: left,
  };
}

function readingSentence(
  plan: Plan,
  { plant, when, leaf, air, watered, thirsty, difference, outside, spread }: ReadingCheck,
): string {
  const units = unitsOf(plan);
  const degrees = (celsius: number) => formatTemperature(celsius, units);
  const off =
    difference === 0
      ? 'between the two'
      : `${formatTemperatureDifference(Math.abs(difference), units)} ${difference > 0 ? 'above' : 'below'} them`;
  return (
    `${plant === null ? 'A leaf' : nameOf(plan, plant)}, ${momentWords(when, units)}: leaf ` +
    `${degrees(leaf)} in air of ${degrees(air)}; estimated ${degrees(watered)} watered, ${degrees(thirsty)} ` +
    `thirsty. The reading is ${off}: ${outside ? 'outside' : 'inside'} our ` +
    `± ${formatTemperatureDifference(spread, units)}.`
  );
}

function pairSentences(
  plan: Plan,
  { open, covered, cooler, estimated, spread, opened, minutesApart, density }: PairCheck,
): string[] {
  const degrees = (kelvin: number) => formatTemperatureDifference(kelvin, unitsOf(plan));
  const sentences: string[] = [];
  if (cooler !== null) {
    const against =
      estimated === null
        ? ''
        : Math.max(...estimated.map(Math.abs)) < 0.5
          ? '; the estimate sees no difference there'
          : `; the estimate says ${rangeWords(degrees(estimated[0]), degrees(estimated[1]))}` +
            `${spread === null ? '' : ` (± ${degrees(spread)})`}${openedWords(estimated[1], opened, degrees)}`;
    const when = minutesApart < 0.5 ? 'read together' : `${minutesApart.toFixed(0)} minutes apart`;
    sentences.push(
      `A pair${whoseWords(plan, covered, open)}, ${when}: the leaf under the cloth was ` +
        `${degrees(Math.abs(cooler))} ${cooler >= 0 ? 'cooler' : 'warmer'} than the open one${against}.`,
    );
  }
  if (density !== null)
    sentences.push(
      `The light of a pair says that the cloth stops ${(100 * density).toFixed(0)} % of it: enter that as its ` +
        `measured density if three pairs agree.`,
    );
  return sentences;
}

/** Whose leaf hung under the cloth and whose in the open. */
function whoseWords(plan: Plan, covered: string, open: string): string {
  const [under, out] = [covered, open].map((id) => {
    const reading = plan.features.find((feature) => feature.id === id);
    return reading?.kind === 'reading' && reading.plant !== undefined ? namedInside(plan, reading.plant) : null;
  });
  if (under === null || out === null) return '';
  return under === out ? ` of ${under}` : `, ${under} under the cloth and ${out} in the open,`;
}

/** Said where it is more than the difference itself by so much. [K] */
const OPENED_FROM = 1;

function openedWords(most: number, opened: number | null, degrees: (kelvin: number) => string): string {
  if (opened === null || opened < most + OPENED_FROM) return '';
  return `, up to ${degrees(opened)} where the shade lets it keep its pores open`;
}

function rangeWords(from: string, to: string): string {
  return from === to ? `about ${from}` : `${from} to ${to}`;
}

function summary(checks: readonly ReadingCheck[], pairs: readonly PairCheck[], corrections: number): string {
  if (checks.length === 0 && pairs.length === 0)
    return (
      'No readings yet: two leaves, one under the cloth and one in the open, with the air beside them and ' +
      'the minute, are a beginning.'
    );
  const outside = checks.filter((check) => check.outside);
  const hot = outside.filter(({ difference }) => difference > 0).length;
  const most = Math.max(hot, outside.length - hot);
  if (most < ENOUGH_OUTSIDE)
    return pairs.length <= 1 && checks.length <= 2
      ? 'One pair claims nothing: no correction is offered.'
      : 'Fewer than three readings lie outside on one side: nothing to correct.';
  const side = hot === most ? 'hotter' : 'cooler';
  return corrections > 0
    ? `${most} readings are ${side} than the estimate and its spread: something entered is off.`
    : `${most} readings are ${side} than the estimate and its spread, and no single input explains them: check ` +
        `the thermometer and how it was held.`;
}

function damageNotes(plan: Plan): DamageNote[] {
  return (plan.journal ?? []).flatMap(({ what, feature, date, amount }): DamageNote[] =>
    what === 'damage' && feature !== undefined && amount !== undefined
      ? [{ plant: feature, date, score: amount, words: DAMAGE_SCALE[Math.round(amount)] ?? '' }]
      : [],
  );
}
