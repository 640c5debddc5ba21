import { reportHtml } from '../report/html.ts';
import { reportOf } from '../report/report-of.ts';
import { CELL_OPTION, HEIGHT_OPTION } from './options.ts';
import { hasFlag, numberGiven, planOf, textGiven, type Verb, type VerbResult } from './verb.ts';

export const report: Verb = {
  name: 'report',
  summary: 'one self-contained HTML page to print on two sheets or send: verdicts, plan, options, dates, cautions',
  plan: 'required',
  common: ['date', 'option', 'weather', 'units'],
  options: [
    CELL_OPTION,
    HEIGHT_OPTION,
    { name: 'made', kind: 'day', placeholder: 'YYYY-MM-DD', summary: 'the day it is made; else a line to write on' },
    { name: 'season', kind: 'flag', summary: 'the map of the whole season instead of the heatwave day' },
    { name: 'full', kind: 'flag', summary: 'prints with every number, else on two pages' },
    { name: 'with-place', kind: 'flag', summary: 'latitude and longitude too: they tell where the yard is' },
  ],
  examples: [
    'report demo',
    'report demo:lane --option B --units imperial --made 2026-03-02',
    'report demo --option A --json',
  ],
  run(request): VerbResult {
    const made = textGiven(request, 'made');
    const { units, weather, progress, period, drawn, optionIds } = request;
    const outcome = reportOf(planOf(request), {
      units,
      weather,
      progress,
      made,
      cell: numberGiven(request, 'cell'),
      height: numberGiven(request, 'height'),
      withPlace: hasFlag(request, 'with-place'),
      period: period.kind === 'day' || hasFlag(request, 'season') ? period : undefined,
      tried: drawn && { plan: drawn, chosen: optionIds },
    });
    if (!outcome.ok) return outcome;
    const { value } = outcome;
    const html = reportHtml(value, hasFlag(request, 'full'));
    const { made: day, place, climate, rough, sections, cautions } = value;
    const { plants, hotSpots, season } = value.load;
    return {
      ok: true,
      json: {
        made: day,
        place,
        climate,
        rough,
        plants,
        hotSpots,
        season,
        sections,
        events: value.season.events,
        notes: value.season.notes,
        cautions,
        html,
      },
      text: html,
      file: [html],
      tellsRough: 'text and json',
    };
  },
};
