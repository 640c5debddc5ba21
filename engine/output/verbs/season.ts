import { seasonOf } from '../../advice/season.ts';
import { seasonCalendar } from '../season-calendar.ts';
import { seasonText } from '../season-text.ts';
import { hasFlag, planOf, type Verb, type VerbResult } from './verb.ts';

export const season: Verb = {
  name: 'season',
  summary: 'when to put cloth up and take it down, clay, water and frost, month by month',
  plan: 'required',
  common: ['option', 'weather', 'units'],
  options: [{ name: 'ics', kind: 'flag', summary: 'the dates as an iCalendar file; importing it again changes nothing' }],
  examples: ['season demo', 'season demo:lane --option B --ics', 'season demo:lane --units imperial --json'],
  run(request): VerbResult {
    const plan = { ...planOf(request), units: request.units };
    const outcome = seasonOf(plan, request.weather);
    if (!outcome.ok) return outcome;
    const { value } = outcome;
    const text = hasFlag(request, 'ics') ? seasonCalendar(plan, value) : seasonText(plan, value, request.units, request.page.columns);
    return { ok: true, json: value, text };
  },
};
