import type { CommonOption, OptionSpec } from './verb.ts';

/** The common options and how each is given. */
export const COMMON_OPTIONS: Readonly<Record<CommonOption, OptionSpec>> = {
  date: {
    name: 'date',
    kind: 'text',
    placeholder: 'DAY',
    summary: 'that day, 07-21 or "21 July", instead of the whole season',
  },
  heatwave: { name: 'heatwave', kind: 'flag', summary: 'the heatwave day, the day to design for' },
  option: {
    name: 'option',
    kind: 'text',
    placeholder: 'ID',
    summary: 'the yard with that option’s changes; again for more, in that order',
    repeatable: true,
  },
  weather: {
    name: 'weather',
    kind: 'text',
    placeholder: 'FILE.epw',
    summary: 'beam, air and wind by the hour from a weather file',
  },
  units: {
    name: 'units',
    kind: 'text',
    placeholder: 'WORD',
    summary: 'metric or imperial, in tables and sentences',
    choices: ['metric', 'imperial'],
  },
  sources: { name: 'sources', kind: 'flag', summary: 'also how it was reckoned, and where the numbers come from' },
};

/** Every verb knows these. */
export const ALWAYS: readonly OptionSpec[] = [
  { name: 'json', kind: 'flag', summary: 'the result as JSON for other programs' },
  { name: 'help', kind: 'flag', summary: 'this page' },
];

export const CELL_OPTION: OptionSpec = {
  name: 'cell',
  kind: 'length',
  placeholder: 'M',
  summary: 'edge of a cell, 0.25 m unless said, more for a large or crowded ground',
  min: 0,
};
export const HEIGHT_OPTION: OptionSpec = {
  name: 'height',
  kind: 'length',
  placeholder: 'M',
  summary: 'height above the ground, 0.5 m unless said',
  min: 0,
  minIncluded: true,
  max: 100,
};
