import { GRID_DEFAULTS } from '../../load/light/grid-of.ts';
import { GRADE_WORDS, gradeOf } from '../../load/light/nine.ts';
import { skyFrom } from '../../load/light/sky-from.ts';
import { spotOf } from '../../load/light/spot-of.ts';
import { weeksAt } from '../../load/light/weeks-at.ts';
import type { Nine, SpotDayResult, SpotSeasonResult, SpotStep } from '../../load/types.ts';
import { dateWords, monthWord, dayOfMonth } from '../../plan/dates/dates.ts';
import { featureOf } from '../../plan/edit/edit-feature.ts';
import { refuseOption } from '../../plan/problems.ts';
import type { Plan, PlanPoint } from '../../plan/types.ts';
import { formatStretch, clockAt } from '../../plan/units/clock.ts';
import { formatLength, formatTemperature, formatShare } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { namedInside, nameOf } from '../../plan/words/names.ts';
import { hottestMonth } from '../../sun/days/season.ts';
import { sunUp } from '../../sun/sun-up.ts';
import { table, wrapped } from '../text/plain-text.ts';
import { skyAnswer, skyText, weeksAnswer, weeksText } from '../text/spot-text.ts';
import { HEIGHT_OPTION } from './options.ts';
import {
  featureGiven,
  hasFlag,
  numberGiven,
  planOf,
  pointGiven,
  textGiven,
  type Verb,
  type VerbRequest,
  type VerbResult,
} from './verb.ts';

/** One spot. */
export const spot: Verb = {
  name: 'spot',
  summary: 'one spot: step by step for a day, or season means and days',
  plan: 'required',
  common: ['date', 'heatwave', 'option', 'weather', 'units', 'sources'],
  options: [
    {
      name: 'at',
      kind: 'point',
      placeholder: 'X,Y',
      summary: 'the spot, in plan metres, or as "31 ft,21 ft"',
      required: true,
    },
    HEIGHT_OPTION,
    {
      name: 'weeks',
      kind: 'text',
      placeholder: 'SPAN',
      summary: 'week by week instead: the hours of sun and of hot sun, over the season or the year',
      choices: ['season', 'year'],
    },
    { name: 'plant', kind: 'text', placeholder: 'ID', summary: 'with --weeks: the plant whose leaf is judged there' },
    { name: 'sky', kind: 'flag', summary: 'the sky instead: what stands before it, and the sun’s way month by month' },
  ],
  examples: [
    'spot demo --at 9.6,6.4 --height 1.7 --date 07-21',
    'spot demo --at 9.6,6.4 --heatwave --json',
    'spot demo:lane --at -1,2',
    'spot demo --at 9.6,6.4 --height 1.7 --weeks season --plant lemon',
    'spot demo --at 9.6,6.4 --sky',
  ],
  run: runSpot,
};

function runSpot(request: VerbRequest): VerbResult {
  const plan = planOf(request);
  const at = pointGiven(request, 'at');
  if (!at) return refuseOption('at', 'Say where: --at X,Y in plan metres.');
  const { columns } = request.page;
  const height = numberGiven(request, 'height') ?? GRID_DEFAULTS.height;
  const head =
    `(${formatLength(at[0], request.units)}, ${formatLength(at[1], request.units)}), ` +
    `${formatLength(height, request.units)} above the ground`;
  if (hasFlag(request, 'sky')) return skyAt(request, plan, at, height, head);
  if (hasFlag(request, 'weeks')) return spotWeeks(request, plan, at, height, head);
  const outcome = spotOf(plan, at, { period: request.period, height, weather: request.weather });
  if (!outcome.ok) return outcome;
  const { value } = outcome;
  const inside = value.inside === null ? '' : insideWords(plan, value.inside, request.units);
  const { answer, rows, nine } =
    value.date === null
      ? { answer: seasonAnswer(value), rows: monthsTable(value, columns), nine: value.season }
      : {
          answer: dayAnswer(plan, value, request.units),
          rows: stretchesTable(plan, value, request.units, columns),
          nine: value.day,
        };
  return {
    ok: true,
    json: value,
    text: answered(request, answer + inside, rows, head),
    sources: nineText(nine, columns),
  };
}

/** The answer in a sentence or two, what it is of, and where that is. */
function answered({ page }: VerbRequest, answer: string, rows: string, head: string): string {
  return `${[wrapped(answer, page.columns, ''), rows, wrapped(`At ${head}.`, page.columns, '')].join('\n\n')}\n`;
}

/** What a spot lies inside of; among leaves it is those that shade it, and nobody is judged there. */
function insideWords(plan: Plan, id: string, units: Units): string {
  const feature = featureOf(plan, id);
  const lies = ` It lies inside ${namedInside(plan, id)}`;
  if (feature?.kind === 'bed') {
    const top = formatLength(feature.plantHeight, units);
    return `${lies}, in the shade of its own leaves: a bed is judged at its top, ${top} up.`;
  }
  return feature?.kind === 'plant'
    ? `${lies}, in the shade of its own leaves: a plant is judged on the outside of its crown.`
    : `${lies}.`;
}

function spotWeeks(request: VerbRequest, plan: Plan, at: PlanPoint, height: number, head: string): VerbResult {
  const plant = featureGiven(request, 'plant');
  if (plant !== undefined && featureOf(plan, plant) === undefined)
    return refuseOption('plant', `There is no "${plant}" on the plan.`);
  const span = textGiven(request, 'weeks') === 'year' ? 'year' : 'season';
  const weeks = weeksAt(plan, at, { height, plant, span, weather: request.weather });
  if (!weeks.ok) return weeks;
  return {
    ok: true,
    json: { at, height, span, weeks: weeks.value },
    text: answered(
      request,
      weeksAnswer(weeks.value, request.units),
      weeksText(weeks.value, request.units, request.page.columns),
      head,
    ),
  };
}

/** The leaves and cloth of the day that was asked for, else of the season's hottest month. */
function skyAt(request: VerbRequest, plan: Plan, at: PlanPoint, height: number, head: string): VerbResult {
  const hottest = hottestMonth(plan, request.weather);
  if (!hottest.ok) return hottest;
  const monthDay = request.period.kind === 'day' ? request.period.date : dayOfMonth(hottest.value.month, 21);
  const sky = skyFrom(plan, at, height, monthDay);
  if (!sky.ok) return sky;
  return {
    ok: true,
    json: { at, height, monthDay, ...sky.value },
    text: answered(
      request,
      skyAnswer(plan, sky.value, monthDay, request.units),
      skyText(plan, sky.value, request.units, request.page.columns),
      head,
    ),
  };
}

/** "On 21 July 2026 6.7 h of sun, 3.3 h of it while it is hot, from 13:30 to 20:40." */
function dayAnswer(plan: Plan, { date, day, steps }: SpotDayResult, units: Units): string {
  const sunny = steps.filter(({ share, sunshine }) => share * sunshine > 0);
  const [first, last] = [sunny[0], sunny[sunny.length - 1]];
  const up = sunUp(plan, date);
  const when =
    sunny.length === 0 ? '' : `, from ${formatStretch({ from: edge(first, -1), to: edge(last, 1) }, units, up)}`;
  return `On ${dateWords(date)} ${sunWords('', day)}${when}. ${heatWords(day)}`;
}

function seasonAnswer({ season, days }: SpotSeasonResult): string {
  return `${sunWords(' a day', season)}, the mean of the season’s ${days.length} days. ${heatWords(season)}`;
}

function sunWords(each: string, { sunHours, hotHours }: Nine): string {
  return `${sunHours.toFixed(1)} h of sun${each}, ${hotHours.toFixed(1)} h of it while it is hot`;
}

function heatWords({ grade }: Nine): string {
  return `The heat of the sun there is ${GRADE_WORDS[grade - 1]}.`;
}

function stretchesTable(plan: Plan, day: SpotDayResult, units: Units, columns: number): string {
  const up = sunUp(plan, day.date);
  const rows = stretches(day.steps).map((steps): string[] => {
    const [first] = steps;
    const last = steps[steps.length - 1];
    const warmest = Math.max(...steps.map(({ air }) => air));
    return [
      formatStretch({ from: edge(first, -1), to: edge(last, 1) }, units, up),
      `${first.altitude.toFixed(0)}° → ${last.altitude.toFixed(0)}°`,
      `${first.azimuth.toFixed(0)}° → ${last.azimuth.toFixed(0)}°`,
      shareWords(steps),
      formatTemperature(warmest, units),
      first.blockers.map(({ id }) => (id === 'skyline' ? 'the skyline' : nameOf(plan, id))).join(', ') || 'nothing',
    ];
  });
  const head = ['clock', 'sun’s height', 'bearing', 'sun left', 'air to', 'in the way'];
  return table(columns, head, rows, [0]);
}

function monthsTable(season: SpotSeasonResult, columns: number): string {
  const months = new Map<string, Nine[]>();
  for (const day of season.days) months.set(day.date.slice(0, 7), [...(months.get(day.date.slice(0, 7)) ?? []), day]);
  const mean = (days: readonly Nine[], key: keyof Nine) =>
    (days.reduce((sum, day) => sum + day[key], 0) / days.length).toFixed(1);
  const rows = [...months].map(([month, days]) => [
    `${monthWord(Number(month.slice(5)))} ${month.slice(0, 4)}`,
    `${mean(days, 'sunHours')} h`,
    `${mean(days, 'hotHours')} h`,
    GRADE_WORDS[gradeOf(days.reduce((sum, day) => sum + day.hotLoad, 0) / days.length) - 1],
  ]);
  return table(columns, ['month', 'sun a day', 'while hot', 'heat of the sun'], rows, [1, 2]);
}

function nineText(nine: Nine, columns: number): string {
  return table(
    columns,
    ['quantity', 'a day'],
    [
      [
        'sun hours',
        `${nine.sunHours.toFixed(2)} h (${nine.morningHours.toFixed(2)} before solar noon, ` +
          `${nine.afternoonHours.toFixed(2)} after)`,
      ],
      ['hot hours', `${nine.hotHours.toFixed(2)} h`],
      ['beam dose', `${nine.beamDose.toFixed(2)} MJ/m²`],
      [
        'hot sun',
        `${nine.hotLoad.toFixed(2)} MJ/m², ${GRADE_WORDS[nine.grade - 1]} (grade ${nine.grade} of 5, this ` +
          `project’s own index)`,
      ],
      ['daily light', `${nine.dailyLight.toFixed(1)} mol/m²`],
      ['sky view', formatShare(nine.skyView)],
    ],
  );
}

/** Steps in a row with the same things in the way. */
function stretches(steps: readonly SpotStep[]): SpotStep[][] {
  const groups: SpotStep[][] = [];
  const what = (step: SpotStep) => step.blockers.map(({ id }) => id).join('\n');
  for (const step of steps) {
    const group = groups.at(-1);
    if (group && what(group[0]) === what(step)) group.push(step);
    else groups.push([step]);
  }
  return groups;
}

function shareWords(steps: readonly SpotStep[]): string {
  const shares = steps.map(({ share }) => Math.round(share * 100));
  const [least, most] = [Math.min(...shares), Math.max(...shares)];
  return least === most ? `${least} %` : `${least} to ${most} %`;
}

/** Clock time of a step's beginning (−1) or end (1). */
function edge(step: SpotStep, sign: 1 | -1): string {
  const [hours, minutes, seconds] = step.when.slice(11, 19).split(':').map(Number);
  const minute = Math.round(hours * 60 + minutes + seconds / 60 + sign * step.hours * 30);
  return clockAt(minute);
}
