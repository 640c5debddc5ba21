/** The year's advice for people to read on a terminal. */

import { seasonHeadline } from '../../advice/words/year-headlines.ts';
import type { Advice } from '../../advice/year/advice.ts';
import type { SeasonResult } from '../../advice/year/season/types.ts';
import { litresWords } from '../../advice/year/water/litres-words.ts';
import { dateWords, monthWord } from '../../plan/dates/dates.ts';
import type { Plan } from '../../plan/types.ts';
import type { Units } from '../../plan/units/units.ts';
import { nameOf } from '../../plan/words/names.ts';
import { table, wrapped } from './plain-text.ts';

/** A page is no wider than this, however wide the terminal. [characters] */
const WIDEST = 100;

/**
 * The answer first, then the dates, then each subject; what a sentence rests on stands at the end, or beside it.
 * @param sources whether beside each sentence
 */
export function seasonText(plan: Plan, season: SeasonResult, units: Units, room: number, sources: boolean): string {
  const columns = Math.min(room, WIDEST);
  const list = (advice: readonly Advice[]) =>
    advice.map((one) => wrapped(`- ${one.text}${sources ? ` ${basisWords(one)}` : ''}`, columns)).join('\n');
  const cloth =
    season.cloth.length === 0
      ? wrapped('No cloth is drawn in this yard. Try an option that has one, or ask where one pays off.', columns)
      : list(eachOnce(season.cloth.flatMap(({ advice }) => advice)));
  const months = season.months
    .map(({ year, month, advice }) => `${monthWord(month)} ${year}\n${list(advice)}`)
    .join('\n\n');
  const blocks = [
    [seasonHeadline(season), ...season.notes].map((line) => wrapped(line, columns)).join('\n'),
    wrapped(
      `${plan.name ?? 'The yard'}: the year around the summer of ${dateWords(season.from)} to ${dateWords(season.to)}`,
      columns,
    ),
    `Month by month\n\n${months}`,
    `Cloth\n${cloth}`,
    `Water a day\n${waterLines(plan, season, units, columns)}\n${list(waterAdvice())}`,
    `Frost\n${list(season.frost.advice)}`,
    `Clay\n${list(season.clay.advice)}`,
    `Take care\n${season.cautions.map(({ text }) => wrapped(`- ${text}`, columns)).join('\n')}`,
    ...(sources ? [] : [sourcesBlock(season, columns)]),
  ];
  return `${blocks.join('\n\n')}\n`;
}

function sourcesBlock(season: SeasonResult, columns: number): string {
  const lines = [
    ...seasonSources(season),
    'All else is common practice or our own estimate; --sources says which beside each sentence.',
  ];
  return `Sources\n${lines.map((line) => wrapped(`- ${line}`, columns)).join('\n')}`;
}

/** Who says so, each once; the rest is common practice or our own estimate. */
export function seasonSources(season: SeasonResult): readonly string[] {
  const all = [
    ...season.cloth.flatMap(({ advice }) => advice),
    ...waterAdvice(),
    ...season.frost.advice,
    ...season.clay.advice,
  ];
  return [...new Set(all.flatMap(({ source }) => source ?? []))];
}

/** Sentences without their repeats: what is true of every cloth is said once. */
export function eachOnce(advice: readonly Advice[]): Advice[] {
  return advice.filter(({ text }, index) => advice.findIndex((other) => other.text === text) === index);
}

/** What a sentence rests on, in brackets. */
export function basisWords({ basis, source }: Advice): string {
  return `[${basis}${source === undefined ? '' : `: ${source}`}]`;
}

function waterLines(plan: Plan, season: SeasonResult, units: Units, columns: number): string {
  const { head, rows, numbers } = waterTable(plan, season, units);
  return table(columns, head, rows, numbers);
}

const TIMES: readonly (string | undefined)[] = [undefined, 'once', 'twice'];

/** Of the hottest month’s mean day and of the heatwave day; `numbers` are the columns set flush right. */
export function waterTable(
  plan: Plan,
  { water }: SeasonResult,
  units: Units,
): {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly numbers: readonly number[];
} {
  const told = water.map(({ plant, days, pot }) => {
    const heatwave = days[days.length - 1];
    const usual = days.find(({ month, heatwave: hot }) => !hot && month === heatwave.month) ?? heatwave;
    const often =
      pot === null ? '' : `${litresWords(pot.usable, units)}, fill ${TIMES[pot.timesADay] ?? `${pot.timesADay} times`}`;
    return { name: nameOf(plan, plant), month: heatwave.month, usual, heatwave, often };
  });
  // What cloth saves is worth a column where some hangs.
  const saves = told.some(({ usual }) => litresWords(usual.bare, units) !== litresWords(usual.now, units));
  const hasPots = told.some(({ often }) => often !== '');
  const month = told.length === 0 ? '' : monthWord(told[0].month);
  return {
    head: ['Plant', month, ...(saves ? ['without cloth'] : []), 'heatwave', ...(hasPots ? ['pot holds'] : [])],
    rows: told.map(({ name, usual, heatwave, often }) => [
      name,
      litresWords(usual.now, units),
      ...(saves ? [litresWords(usual.bare, units)] : []),
      litresWords(heatwave.now, units),
      ...(hasPots ? [often] : []),
    ]),
    numbers: saves ? [1, 2, 3] : [1, 2],
  };
}

/** How to use the figures. */
export function waterAdvice(): Advice[] {
  return [
    {
      basis: 'our estimate',
      source: 'FAO Irrigation and Drainage Paper 56, for water',
      text: 'What a mean day takes as the plants stand, give or take a fifth: feel the soil.',
    },
    {
      basis: 'extension practice',
      source: 'UC ANR, avocado heat advisory 2016',
      text: 'The day before a heatwave water half as much again, then a little early every morning.',
    },
    {
      basis: 'common practice',
      text:
        'Do not water wet soil again because leaves droop in the afternoon: roots rot in hot wet pots. No ' +
        'fertiliser, pruning or repotting in the heat; leave burnt leaves on as shade.',
    },
  ];
}
