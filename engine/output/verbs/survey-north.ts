import { dayWords } from '../../plan/dates/dates.ts';
import { upBearingOf } from '../../plan/defaults.ts';
import { errorAt, refuseOption } from '../../plan/problems.ts';
import type { PlanPoint } from '../../plan/types.ts';
import { dateIn } from '../../sun/days/calendar.ts';
import type { Finding } from '../../survey/estimate.ts';
import {
  CLOCK_MINUTES,
  northFrom,
  northFromCompass,
  northFromShadow,
  northFromVanishing,
  type NorthSighting,
} from '../../survey/north/north.ts';
import { northTimes, windowWords } from '../../survey/north/times.ts';
import { northTogether } from '../../survey/north/together.ts';
import { northCheckLine } from '../../survey/place/place.ts';
import { type Place } from '../../survey/place/sun-at.ts';
import { PLACE_OPTIONS, placeGiven, yearOf } from './survey-place.ts';
import { numberGiven, pointsGiven, textGiven, type Verb, type VerbRequest, type VerbResult } from './verb.ts';

export const surveyNorth: Verb = {
  name: 'survey north',
  summary: "which way the plan lies, from a pole's shadow, a wall's vanishing shadow or a compass",
  plan: 'optional',
  common: ['date'],
  options: [
    {
      name: 'by',
      kind: 'text',
      placeholder: 'WAY',
      summary: 'shadow (default), vanish, compass',
      choices: ['shadow', 'vanish', 'compass'],
    },
    {
      name: 'line',
      kind: 'point',
      placeholder: 'X,Y',
      summary: "two points: pole's foot and shadow's tip, or two of a wall; give it twice",
      repeatable: true,
    },
    { name: 'when', kind: 'text', placeholder: 'YYYY-MM-DDTHH:MM', summary: "the minute, by the place's clocks" },
    {
      name: 'minutes',
      kind: 'number',
      placeholder: 'N',
      summary: `how far the minute may be off; ${CLOCK_MINUTES} where a clock was read`,
      min: 0,
      minIncluded: true,
      max: 60,
    },
    {
      name: 'reading',
      kind: 'number',
      placeholder: 'DEGREES',
      summary: "the compass's bearing of the line",
      min: 0,
      minIncluded: true,
      max: 360,
    },
    {
      name: 'declination',
      kind: 'number',
      placeholder: 'DEGREES',
      summary: 'east positive; else by the World Magnetic Model',
      min: -180,
      max: 180,
    },
    ...PLACE_OPTIONS,
  ],
  examples: [
    'survey north demo --line 3,2 --line 1.33,1.5 --when 2026-05-02T10:00',
    'survey north demo --by compass --line 0,0 --line 0,8.5 --reading 20.4',
    'survey north --at "33.4, -112" --date 07-15',
  ],
  run(request): VerbResult {
    const given = placeGiven(request);
    if (!given.ok) return given;
    const points = pointsGiven(request, 'line');
    if (points.length === 0 && request.period.kind === 'day')
      return timesOfDay(request, given.place, request.period.date);
    if (points.length === 0) return keptInPlan(request, given.place);
    if (points.length !== 2)
      return refuseOption(
        'line',
        `A line has two points, and ${points.length} ${points.length === 1 ? 'was' : 'were'} given.`,
      );
    const finding = sight(request, given.place, [points[0], points[1]]);
    if ('problem' in finding) return finding.problem;
    if (!finding.ok) return refuseOption(textGiven(request, 'by') === 'compass' ? 'line' : 'when', finding.reason);
    return told(
      request,
      given.place,
      finding.value,
      finding.notes,
      (textGiven(request, 'when') ?? `${yearOf(request)}-06-21`).slice(0, 10),
    );
  },
};

function sight(
  request: VerbRequest,
  place: Place,
  line: readonly [PlanPoint, PlanPoint],
): Finding<NorthSighting> | { readonly problem: VerbResult } {
  const by = textGiven(request, 'by') ?? 'shadow';
  if (by === 'compass') {
    const reading = numberGiven(request, 'reading');
    if (reading === undefined)
      return { problem: refuseOption('reading', "Give the compass's bearing of the line with --reading.") };
    return northFromCompass(place, reading, line, yearOf(request), numberGiven(request, 'declination'));
  }
  const when = textGiven(request, 'when');
  if (when === undefined) return { problem: refuseOption('when', 'Give the minute with --when, as 2026-05-02T10:00.') };
  const minutes = numberGiven(request, 'minutes');
  if (by === 'vanish')
    return northFromVanishing(place, line, when, {
      minutes,
      near: request.plan === undefined ? 0 : upBearingOf(request.plan),
    });
  return northFromShadow(place, line, when, { minutes });
}

function told(
  request: VerbRequest,
  place: Place,
  sighting: NorthSighting,
  notes: readonly string[],
  date: string,
): VerbResult {
  const { upBearing, sun } = sighting;
  const check = northCheckLine(place, upBearing.value, date);
  const lines = [
    `The plan's top bears ${upBearing.value.toFixed(1)}° (± ${upBearing.pm.toFixed(1)}°) clockwise from true north.`,
  ];
  if (sun !== undefined)
    lines.push(
      `The sun stood at ${sun.azimuth.toFixed(1)}°, ${sun.altitude.toFixed(1)}° high; its bearing ran ` +
        `${Math.abs(sun.swing).toFixed(2)}° a minute.`,
    );
  lines.push(check);
  return {
    ok: true,
    json: { ...sighting, check, notes, drawn: request.plan === undefined ? null : upBearingOf(request.plan) },
    text: lines.map((line) => `${line}\n`).join(''),
    notes,
  };
}

function keptInPlan(request: VerbRequest, place: Place): VerbResult {
  const kept = request.plan?.site.northFrom ?? [];
  if (kept.length === 0)
    return refuseOption(
      'line',
      'Give the line with --line X,Y twice, or a day with --date for its best times; this plan keeps no ' +
        'sighting of north.',
    );
  const findings = kept.map((observation) =>
    northFrom(place, observation, yearOf(request), request.plan === undefined ? undefined : upBearingOf(request.plan)),
  );
  const sightings = findings.flatMap((finding) => (finding.ok ? [finding.value] : []));
  const notes = findings.flatMap((finding) => (finding.ok ? finding.notes : [finding.reason]));
  if (sightings.length === 0)
    return {
      ok: false,
      problems: notes.map((message, index) => errorAt(`/site/northFrom/${index}`, message)),
    };
  const together = northTogether(sightings);
  const rows = sightings.map(
    ({ by, upBearing }) => `  ${by.padEnd(8)} ${upBearing.value.toFixed(1)}° (± ${upBearing.pm.toFixed(1)}°)`,
  );
  const head =
    `The plan's top bears ${together.upBearing.value.toFixed(1)}° (± ` +
    `${together.upBearing.pm.toFixed(1)}°) from ${sightings.length} ` +
    `${sightings.length === 1 ? 'sighting' : 'sightings'}:`;
  return {
    ok: true,
    json: { ...together, sightings },
    text: [head, ...rows, ''].join('\n'),
    notes: [...notes, ...together.notes],
  };
}

function timesOfDay(request: VerbRequest, place: Place, monthDay: string): VerbResult {
  const date = dateIn(yearOf(request), monthDay);
  if (date === null) return refuseOption('date', `${yearOf(request)} has no day ${monthDay}.`);
  const windows = northTimes(place, date);
  return {
    ok: true,
    json: { date, windows },
    text: `On ${dayWords(date)} a pole's shadow tells north best ${windowWords(windows)} (${place.timeZone}).\n`,
  };
}
