/** Did it work? Readings and damage against the estimate, and this year against the last. */

import { isCloth } from '../../plan/kinds.ts';
import type { Plan } from '../../plan/types.ts';
import { formatTemperature, formatTemperatureDifference, formatShare } from '../../plan/units/shown.ts';
import { unitsOf, type Units } from '../../plan/units/units.ts';
import { momentWords } from '../../plan/words/moment-words.ts';
import { namedInside, nameOf } from '../../plan/words/names.ts';
import { whyBurnt } from '../why/why.ts';
import { seasonYearOf } from '../year/span.ts';
import { correctionsOf, ENOUGH_OUTSIDE } from './corrections.ts';
import { pairsOf } from './pairs.ts';
import { DAMAGE_SCALE } from './protocol.ts';
import { checkReadings, leafReadings } from './readings.ts';
import type { DamageNote, PairCheck, ReadingCheck, ReviewResult, YearComparison } from './types.ts';
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
    summary(
      readings.length,
      checks,
      pairs,
      corrections.length,
      plan.features.some(isCloth) ? 'under the cloth' : 'in shade',
    ),
    ...corrections.map(({ sentence }) => sentence),
    ...years.map(({ sentence }) => sentence),
    ...notBySun(plan, years),
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

/** What the estimate makes of a pair's difference, or why it makes nothing of it. */
function estimateWords({ airsApart, estimated, spread, opened }: PairCheck, units: Units): string {
  const degrees = (kelvin: number) => formatTemperatureDifference(kelvin, units);
  if (airsApart !== null)
    return (
      `. But the air beside them differs by ${degrees(airsApart)}: one thermometer stood in the sun, so the pair ` +
      `tells nothing`
    );
  if (estimated === null) return '';
  if (Math.max(...estimated.map(Math.abs)) < 0.5) return '; the estimate sees no difference there';
  const off = spread === null ? '' : ` (± ${degrees(spread)})`;
  return `; the estimate says ${rangeWords(estimated, units)}${off}${openedWords(estimated[1], opened, degrees)}`;
}

function pairSentences(plan: Plan, pair: PairCheck): string[] {
  const { open, covered, cooler, minutesApart, density } = pair;
  const degrees = (kelvin: number) => formatTemperatureDifference(kelvin, unitsOf(plan));
  const sentences: string[] = [];
  if (cooler !== null) {
    const when = minutesApart < 0.5 ? 'read together' : `${minutesApart.toFixed(0)} minutes apart`;
    const which = cooler >= 0 ? 'cooler' : 'warmer';
    sentences.push(
      `A pair${whoseWords(plan, covered, open)}, ${when}: the leaf under the cloth was ` +
        `${degrees(Math.abs(cooler))} ${which} than the open one${estimateWords(pair, unitsOf(plan))}.`,
    );
  }
  if (density !== null)
    sentences.push(
      `The light of a pair says that the cloth stops ${formatShare(density)} of it: enter that as its ` +
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
  return under === out ? ` of ${under}` : `, ${under} under the cloth and ${out} in the open`;
}

/** Said where it is more than the difference itself by so much. [K] */
const OPENED_FROM = 1;

function openedWords(most: number, opened: number | null, degrees: (kelvin: number) => string): string {
  if (opened === null || opened < most + OPENED_FROM) return '';
  return `, up to ${degrees(opened)} where the shade lets it keep its pores open`;
}

function rangeWords(ends: readonly [number, number], units: Units): string {
  const [from, to] = ends.map((kelvin) => formatTemperatureDifference(kelvin, units));
  return from === to ? `about ${from}` : `${from.replace(/ \S+$/, '')} to ${to}`;
}

/**
 * @param taken readings in all, those that are left out too
 * @param shaded where a leaf hangs that is not in the open
 */
function summary(
  taken: number,
  checks: readonly ReadingCheck[],
  pairs: readonly PairCheck[],
  corrections: number,
  shaded: string,
): string {
  if (taken > 0 && checks.length === 0) return 'No reading can be held against the estimate yet.';
  if (checks.length === 0 && pairs.length === 0)
    return `No readings yet. Begin with two leaves, one ${shaded} and one in the open, and the air beside them.`;
  const outside = checks.filter((check) => check.outside);
  const hot = outside.filter(({ difference }) => difference > 0).length;
  const most = Math.max(hot, outside.length - hot);
  if (most < ENOUGH_OUTSIDE)
    return pairs.length <= 1 && checks.length <= 2
      ? `${pairs.length === 1 ? 'One pair' : checks.length === 1 ? 'One reading' : 'Two readings'} ` +
          `${pairs.length === 1 || checks.length === 1 ? 'claims' : 'claim'} nothing: no correction is offered.`
      : 'Fewer than three readings lie outside on one side: nothing to correct.';
  const side = hot === most ? 'hotter' : 'cooler';
  return corrections > 0
    ? `${most} readings are ${side} than the estimate and its spread: something entered is off.`
    : `${most} readings are ${side} than the estimate and its spread, and no single input explains them: check ` +
        `the thermometer and how it was held.`;
}

/** Damage of the latest summer that the sun does not explain, where the years have not said so already. */
function notBySun(plan: Plan, years: readonly YearComparison[]): string[] {
  const hurt = (plan.journal ?? []).filter(
    ({ what, amount, date }) =>
      what === 'damage' && amount !== undefined && amount > 0 && seasonYearOf(plan, date) === plan.season.year,
  );
  const plants = new Set(hurt.flatMap(({ feature }) => feature ?? []));
  return [...plants].flatMap((plant) => {
    if (years.some((year) => year.plant === plant && year.finding === 'worse than the heat explains')) return [];
    const why = whyBurnt(plan, { plant });
    return why.ok && why.value.answer === 'does not'
      ? [`${nameOf(plan, plant)}: the sun does not explain this summer’s damage. Ask why it burnt before you shade it.`]
      : [];
  });
}

function damageNotes(plan: Plan): DamageNote[] {
  return (plan.journal ?? []).flatMap(({ what, feature, date, amount }): DamageNote[] =>
    what === 'damage' && feature !== undefined && amount !== undefined
      ? [{ plant: feature, date, score: amount, words: DAMAGE_SCALE[Math.round(amount)] ?? '' }]
      : [],
  );
}
