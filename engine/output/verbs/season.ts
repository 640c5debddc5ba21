import { seasonOf } from '../../advice/year/season/season.ts';
import { tomorrowOf } from '../../advice/year/tomorrow/tomorrow.ts';
import { refuseOption } from '../../plan/problems.ts';
import { parseTemperature } from '../../plan/units/typed.ts';
import { seasonCalendar } from '../calendar/season-calendar.ts';
import { seasonText } from '../text/season-text.ts';
import { tomorrowText } from '../text/tomorrow-text.ts';
import { hasFlag, planOf, textGiven, type Verb, type VerbRequest, type VerbResult } from './verb.ts';

export const season: Verb = {
  name: 'season',
  summary: 'when to put cloth up and take it down, clay, water and frost, month by month',
  plan: 'required',
  common: ['option', 'weather', 'units'],
  options: [
    { name: 'ics', kind: 'flag', summary: 'the dates as an iCalendar file; importing it again changes nothing' },
    { name: 'clay', kind: 'flag', summary: 'coats of reflective clay too, which are planned only if chosen' },
    { name: 'sources', kind: 'flag', summary: 'beside each sentence what it rests on' },
    {
      name: 'high',
      kind: 'text',
      placeholder: 'T',
      summary: 'tomorrow’s high: that day’s list, by hour and plant, in place of the year',
    },
    { name: 'low', kind: 'text', placeholder: 'T', summary: 'its low; else as far below as on a usual day' },
    { name: 'day', kind: 'day', placeholder: 'YYYY-MM-DD', summary: 'the day that the high is for (needed with it)' },
  ],
  examples: [
    'season demo',
    'season demo:lane --option B --ics',
    'season demo --clay --sources',
    'season demo --high 42 --day 2026-07-20',
    'season demo:lane --units imperial --json',
  ],
  run(request): VerbResult {
    const asked = { ...planOf(request), units: request.units };
    const plan = hasFlag(request, 'clay') ? { ...asked, clay: true } : asked;
    if (textGiven(request, 'high') !== undefined) return dayList(request);
    const stray = ['low', 'day'].find((name) => textGiven(request, name) !== undefined);
    if (stray !== undefined) return refuseOption(stray, `--${stray} belongs to a forecast: give --high too.`);
    const outcome = seasonOf(plan, request.weather);
    if (!outcome.ok) return outcome;
    const { value } = outcome;
    if (hasFlag(request, 'ics')) {
      const calendar = seasonCalendar(plan, value);
      return { ok: true, json: value, text: calendar, file: [calendar], tellsRough: 'text and json' };
    }
    return {
      ok: true,
      json: value,
      text: seasonText(plan, value, request.units, request.page.columns, hasFlag(request, 'sources')),
      tellsRough: 'text and json',
    };
  },
};

/** The list of one day from a typed forecast. */
function dayList(request: VerbRequest): VerbResult {
  if (hasFlag(request, 'ics') || request.weather !== undefined)
    return refuseOption('high', 'One day’s list goes by its own forecast: leave out --ics and --weather.');
  const plan = planOf(request);
  const day = textGiven(request, 'day');
  if (day === undefined) return refuseOption('day', 'Say which day the high is for: --day YYYY-MM-DD.');
  const temperatures: (number | undefined)[] = [];
  for (const name of ['high', 'low']) {
    const typed = textGiven(request, name);
    const read = typed === undefined ? undefined : parseTemperature(typed, request.units);
    if (read === null)
      return refuseOption(
        name,
        `"${typed ?? ''}" is no temperature such as ${request.units === 'metric' ? '41' : '106'}.`,
      );
    temperatures.push(read);
  }
  const [high, low] = temperatures;
  const outcome = tomorrowOf(
    plan,
    { date: day, high: high ?? 0, ...(low === undefined ? {} : { low }) },
    request.units,
  );
  if (!outcome.ok) return outcome;
  return {
    ok: true,
    json: outcome.value,
    text: tomorrowText(plan, outcome.value, request.units, request.page.columns),
  };
}
