/** The calendar file read back by an independent parser of RFC 5545: ical.js. */

import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { seasonOf } from '../../engine/advice/year/season/season.ts';
import { type CalendarEvent, icalendar } from '../../engine/output/calendar/icalendar.ts';
import { seasonCalendar } from '../../engine/output/calendar/season-calendar.ts';
import { demoPlan } from '../../engine/plan/demos/index.ts';
import { moveFeature } from '../../engine/plan/edit/edit-feature.ts';
import type { Plan } from '../../engine/plan/types.ts';
import { withOptions } from '../../engine/plan/yards/options.ts';
import { mustBeOk } from '../parts/outcome.ts';

const STAMP = '20260101T000000Z';

function eventsIn(text: string): ICAL.Event[] {
  return new ICAL.Component(ICAL.parse(text))
    .getAllSubcomponents('vevent')
    .map((component) => new ICAL.Event(component));
}

function uidsOf(plan: Plan): string[] {
  const season = seasonOf(plan);
  mustBeOk(season);
  return eventsIn(seasonCalendar(plan, season.value)).map(({ uid }) => uid);
}

function laneWithScreen() {
  const tried = withOptions(demoPlan('lane'), ['B']);
  if (!tried.ok) throw new Error('option B');
  const plan = { ...tried.plan, clay: true };
  const season = seasonOf(plan);
  mustBeOk(season);
  return { plan, season: season.value };
}

describe('the season of the lane yard as an iCalendar file', () => {
  const { plan, season } = laneWithScreen();
  const text = seasonCalendar(plan, season);

  test('every event comes back with its days and its title', () => {
    const read = eventsIn(text);
    expect(read.map(({ summary }) => summary)).toEqual(season.events.map(({ title }) => title));
    expect(read.map(({ startDate }) => startDate.toString())).toEqual(season.events.map(({ from }) => from));
    expect(read.every(({ startDate }) => startDate.isDate)).toBe(true);
  });

  test('a day’s end is the day after: an event of one day lasts one day', () => {
    const up = eventsIn(text).find(({ summary }) => summary.startsWith('Cloth up'));
    expect(up?.duration.toSeconds()).toBe(86_400);
  });

  test('a second import changes nothing: the same identifiers with the same content', () => {
    expect(seasonCalendar(plan, season)).toBe(text);
    const ids = eventsIn(text).map(({ uid }) => uid);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('a changed date keeps its identifier, so a calendar moves the event instead of doubling it', () => {
    const events = season.events.map((event) =>
      event.kind === 'cloth-up' ? { ...event, from: '2026-12-05', to: '2026-12-05' } : event,
    );
    const moved = seasonCalendar(plan, { ...season, events });
    expect(
      eventsIn(moved)
        .find(({ summary }) => summary.startsWith('Cloth up'))
        ?.startDate.toString(),
    ).toBe('2026-12-05');
    expect(eventsIn(moved).map(({ uid }) => uid)).toEqual(eventsIn(text).map(({ uid }) => uid));
  });

  test(
    'a yard renamed, put elsewhere, shifted on its paper, and told a day later of a moved pot keeps every ' +
      'identifier, each with its year',
    () => {
      const pot = plan.features.find((feature) => feature.kind === 'plant' && feature.container === true)!;
      const movedOn = (date: string): Plan => ({ ...plan, journal: [{ date, what: 'moved', feature: pot.id }] });
      const shifted = plan.features.reduce<Plan>(
        (next, { id }) => moveFeature(next, id, [3, -2]),
        movedOn('2026-12-11'),
      );
      const other = {
        ...shifted,
        name: 'Grandmother’s',
        site: { ...plan.site, latitude: plan.site.latitude + 0.01, longitude: plan.site.longitude - 0.01 },
      };
      const uids = uidsOf(movedOn('2026-12-10'));
      expect(uids.filter((uid) => uid.startsWith('harden'))).toHaveLength(1);
      expect(uids.every((uid) => uid.includes('-2026@'))).toBe(true);
      expect(uidsOf(other).toSorted()).toEqual(uids.toSorted());
    },
  );

  test('two yards’ calendars never meet, though their plants have the same ids; a yard without a mark goes by its name', () => {
    const uids = (yard: Plan) => eventsIn(seasonCalendar(yard, season)).map(({ uid }) => uid);
    const { yard: _, ...unmarked } = plan;
    const yards = [plan, { ...plan, yard: 'next-door' }, unmarked, { ...unmarked, name: 'The back yard' }].map(uids);
    expect(new Set(yards.flat()).size).toBe(4 * yards[0].length);
  });

  test('it reminds of the cloth three evenings before, and of the heat the evening before', () => {
    const read = eventsIn(text);
    const alarmOf = (title: RegExp) =>
      read
        .find(({ summary }) => title.test(summary))
        ?.component.getFirstSubcomponent('valarm')
        ?.getFirstPropertyValue('trigger')
        ?.toString();
    expect(alarmOf(/^Cloth up/)).toBe('-P2DT6H');
    expect(alarmOf(/^Heat may come/)).toBe('-PT6H');
    expect(read.filter(({ component }) => component.getFirstSubcomponent('valarm') !== null)).toHaveLength(2);
  });

  test('each note rests on its ground, and what to mind is with it in the caution’s own words', () => {
    const { description } = eventsIn(text).find(({ summary }) => summary.startsWith('First coat of clay'))!;
    const [rough, when, ...more] = description.split('\n');
    expect(rough).toBe('The climate is rough: this date is too.');
    expect(when).toMatch(/\(extension practice\)$/);
    expect(more.at(-1)).toMatch(/^Sprays: the label is the law.*dried\.$/);
    expect(description).not.toMatch(/common practice: common practice/);
  });

  test(
    'a southern summer crosses New Year: cloth goes up in December 2026 and comes down in March 2027, frost ' +
      'follows in May 2027',
    () => {
      const from = (kind: string) => season.events.find((event) => event.kind === kind)?.from.slice(0, 7);
      expect([from('cloth-up'), from('cloth-down'), from('frost')]).toEqual(['2026-12', '2027-03', '2027-05']);
    },
  );
});

const event = (id: string, title: string, text: string): CalendarEvent => ({
  id,
  kind: 'check',
  from: '2027-02-27',
  to: '2027-03-02',
  title,
  notes: [text],
});

test.each([
  ['commas, semicolons and backslashes', 'a, b; c\\d \\n e'],
  ['line breaks', 'one\ntwo\r\nthree'.replaceAll('\r\n', '\n')],
  ['long text with letters of many octets', 'Ü€𝄞 '.repeat(60).trim()],
])('%s come back as they went in', (_, words) => {
  const [read] = eventsIn(
    icalendar([event('e', words.replaceAll('\n', ' '), words)], { name: words, yard: 'y', stamp: STAMP }),
  );
  expect(read.summary).toBe(words.replaceAll('\n', ' '));
  expect(read.description).toBe(words);
});

test('text cannot put a line of its own into the calendar', () => {
  const read = eventsIn(
    icalendar([event('e\r\nEND:VCALENDAR', 'x\r\nBEGIN:VEVENT', 'y\rz')], {
      name: 'n\nBEGIN:VEVENT',
      yard: 'y',
      stamp: STAMP,
    }),
  );
  expect(read).toHaveLength(1);
});
