import { dayWords, monthWord } from '../../plan/dates/dates.ts';
import { knownElevationOf, monthOf, upBearingOf } from '../../plan/defaults.ts';
import { refuseOption } from '../../plan/problems.ts';
import { formatClock } from '../../plan/units/clock.ts';
import { formatLength, formatTemperature, formatShare } from '../../plan/units/shown.ts';
import { dateIn } from '../../sun/days/calendar.ts';
import { climateOfPlace } from '../../survey/climate/climate-of-place.ts';
import { CLIMATE_TYPES } from '../../survey/climate/climate-types.ts';
import { askedMonth } from '../../survey/climate/known-temperatures.ts';
import { shadowTable } from '../../survey/height/shadow-table.ts';
import { table, wrapped } from '../text/plain-text.ts';
import { PLACE_OPTIONS, placeGiven, yearOf } from './survey-place.ts';
import { numberGiven, textGiven, type Verb, type VerbResult } from './verb.ts';

export const surveyShadows: Verb = {
  name: 'survey shadows',
  summary: 'the shadow of an upright stick through a day: where it points and how long it is',
  plan: 'optional',
  common: ['date', 'units'],
  options: [
    { name: 'stick', kind: 'length', placeholder: 'M', summary: 'how high it stands; 1 m', min: 0 },
    {
      name: 'every',
      kind: 'number',
      placeholder: 'MINUTES',
      summary: 'between rows; 30',
      min: 1,
      minIncluded: true,
      max: 240,
      integer: true,
    },
    ...PLACE_OPTIONS,
  ],
  examples: ['survey shadows demo --date 05-02', 'survey shadows --town adelaide --date 12-21 --every 60 --json'],
  run(request): VerbResult {
    const given = placeGiven(request);
    if (!given.ok) return given;
    if (request.period.kind !== 'day') return refuseOption('date', 'Give the day with --date MM-DD.');
    const date = dateIn(yearOf(request), request.period.date);
    if (date === null) return refuseOption('date', `${yearOf(request)} has no day ${request.period.date}.`);
    const stick = numberGiven(request, 'stick') ?? 1;
    const rows = shadowTable(
      given.place,
      date,
      request.plan === undefined ? 0 : upBearingOf(request.plan),
      stick,
      numberGiven(request, 'every'),
    );
    const head =
      `Shadow of a stick ${formatLength(stick, request.units)} high on ${dayWords(date)} ` +
      `(${given.place.timeZone}), while the sun stands 5° high or more`;
    const cells = rows.map(({ clock, bearing, direction, length }) => [
      formatClock(clock, request.units),
      `${bearing.toFixed(0)}°`,
      `${direction.toFixed(0)}°`,
      formatLength(length, request.units),
    ]);
    const { columns } = request.page;
    const shadows = table(columns, ['clock', 'true bearing', 'from the plan’s top', 'length'], cells, [1, 2, 3]);
    return { ok: true, json: { date, stick, rows }, text: `${wrapped(head, columns)}\n${shadows}\n` };
  },
};

export const surveyClimate: Verb = {
  name: 'survey climate',
  summary: 'a rough climate from the towns near by, or of a type, shifted to three numbers that you know',
  plan: 'optional',
  common: [],
  options: [
    {
      name: 'type',
      kind: 'text',
      placeholder: 'TYPE',
      summary: 'a climate type instead of the towns near by',
      choices: CLIMATE_TYPES.map(({ id }) => id),
    },
    {
      name: 'high',
      kind: 'number',
      placeholder: '°C',
      summary: 'usual high of July (January in the south)',
      min: -60,
      max: 70,
    },
    { name: 'low', kind: 'number', placeholder: '°C', summary: 'usual low of that month', min: -60, max: 70 },
    {
      name: 'hottest',
      kind: 'number',
      placeholder: '°C',
      summary: 'high of the hottest day last year',
      min: -60,
      max: 70,
    },
    {
      name: 'elevation',
      kind: 'length',
      placeholder: 'M',
      summary: "the yard's height above the sea; else the plan's, or not known",
      min: -450,
      max: 6000,
    },
    {
      name: 'sea',
      kind: 'text',
      placeholder: 'YES',
      summary: 'whether the open sea is within 20 km; else not known',
      choices: ['yes', 'no'],
    },
    ...PLACE_OPTIONS,
  ],
  examples: ['survey climate --town phoenix', 'survey climate --at "-34.45, 140.57" --high 32 --low 15.5 --hottest 46'],
  async run(request): Promise<VerbResult> {
    const given = placeGiven(request);
    if (!given.ok) return given;
    const { latitude } = given.place;
    const sea = textGiven(request, 'sea');
    const [high, low, hottest] = ['high', 'low', 'hottest'].map((name) => numberGiven(request, name));
    const known = high === undefined || low === undefined || hottest === undefined ? undefined : { high, low, hottest };
    if (known === undefined && (high ?? low ?? hottest) !== undefined) {
      return refuseOption(
        'high',
        `Give all three: --high and --low of ${monthWord(askedMonth(latitude))}, and --hottest.`,
      );
    }
    const finding = await climateOfPlace({
      ...given.place,
      elevation: numberGiven(request, 'elevation') ?? knownElevationOf(given.place),
      bySea: sea === undefined ? undefined : sea === 'yes',
      type: textGiven(request, 'type'),
      known,
    });
    if (!finding.ok) return refuseOption('high', finding.reason);
    const { climate, type, near } = finding.value;
    const rows = climate.months.map((row) => {
      const { humidity, sunshine } = monthOf(row);
      return [
        monthWord(row.month),
        formatTemperature(row.high, 'metric'),
        formatTemperature(row.low, 'metric'),
        `${humidity} %`,
        formatShare(sunshine),
      ];
    });
    const months = table(request.page.columns, ['month', 'high', 'low', 'humidity', 'sunshine'], rows, [1, 2, 3, 4]);
    const text =
      `${wrapped(climate.source ?? '', request.page.columns)}\n${months}\nHottest day ` +
      `${formatTemperature(climate.heatwaveHigh, 'metric')}\n`;
    const towns = near.map(({ town: { name, country }, kilometres, share }) => ({ name, country, kilometres, share }));
    const notes = finding.notes.filter((note) => note !== climate.source);
    return { ok: true, json: { type: type.id, towns, climate }, text, notes };
  },
};
