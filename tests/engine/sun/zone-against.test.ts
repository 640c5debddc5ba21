import fc from 'fast-check';
import * as Instant from 'temporal-polyfill/fns/Instant';
import * as PlainDate from 'temporal-polyfill/fns/PlainDate';
import * as PlainDateTime from 'temporal-polyfill/fns/PlainDateTime';
import * as ZonedDateTime from 'temporal-polyfill/fns/ZonedDateTime';
import { expect, it } from 'vitest';
import { civilDay, instantOf, localIso } from '../../../engine/sun/days/zone.ts';

// The reference: temporal-polyfill 1.0, which follows the ECMAScript Temporal proposal.
const seed = 11;
// Clocks that change at midnight, by half an hour, southern, backwards in winter; that changed their minds, that
// skipped a day; and never.
const zones = fc.constantFrom(
  'Europe/Madrid',
  'Australia/Lord_Howe',
  'Australia/Adelaide',
  'America/Santiago',
  'America/Havana',
  'Europe/Dublin',
  'Asia/Beirut',
  'Africa/Casablanca',
  'Africa/Cairo',
  'Pacific/Apia',
  'America/Nuuk',
  'America/Phoenix',
  'Asia/Kathmandu',
  'Etc/GMT+5',
  'UTC',
);
const readings = fc.integer({ min: 0, max: 2_103_840 }).map((quarters) => Date.UTC(1980, 0, 1) + quarters * 900_000);
const partsOf = (ms: number): [number, number, number, number, number] => {
  const time = new Date(ms);
  return [time.getUTCFullYear(), time.getUTCMonth() + 1, time.getUTCDate(), time.getUTCHours(), time.getUTCMinutes()];
};

it('any clock time, civil day and local time of sixty years is the reference’s', () => {
  fc.assert(
    fc.property(readings, zones, (reading, zone) => {
      const [year, month, day, hour, minute] = partsOf(reading);
      const clock = new Date(reading).toISOString();
      const plain = PlainDateTime.create(year, month, day, hour, minute);
      expect(instantOf(clock.slice(0, 16), zone)).toBe(
        PlainDateTime.toZonedDateTime(plain, zone, { disambiguation: 'compatible' }).epochMilliseconds,
      );
      const date = PlainDate.create(year, month, day);
      const [startMs, endMs] = [date, PlainDate.addDays(date, 1)].map(
        (one) => PlainDate.toZonedDateTime(one, zone).epochMilliseconds,
      );
      expect(civilDay(clock.slice(0, 10), zone)).toEqual({ date: clock.slice(0, 10), startMs, endMs });
      expect(localIso(reading, zone)).toBe(
        ZonedDateTime.toString(Instant.toZonedDateTimeISO(Instant.fromEpochMilliseconds(reading), zone), {
          timeZoneName: 'never',
          smallestUnit: 'second',
        }),
      );
    }),
    { seed, numRuns: 2000 },
  );
});

it.each([
  ['America/Santiago', '2026-09-06'],
  ['America/Havana', '2026-03-08'],
  ['America/Toronto', '1919-03-31'],
  ['Pacific/Apia', '2011-12-30'],
  ['Australia/Lord_Howe', '2026-10-04'],
  ['Asia/Amman', '2021-03-26'],
])('clocks that jump: in %s on %s every quarter of an hour is the reference’s', (zone, date) => {
  for (let quarter = -96; quarter < 192; quarter++) {
    const reading = Date.parse(date) + quarter * 900_000;
    const [year, month, day, hour, minute] = partsOf(reading);
    const clock = new Date(reading).toISOString();
    expect(instantOf(clock.slice(0, 16), zone), clock).toBe(
      PlainDateTime.toZonedDateTime(PlainDateTime.create(year, month, day, hour, minute), zone, {
        disambiguation: 'compatible',
      }).epochMilliseconds,
    );
    expect(civilDay(clock.slice(0, 10), zone).startMs, clock).toBe(
      PlainDate.toZonedDateTime(PlainDate.create(year, month, day), zone).epochMilliseconds,
    );
  }
});
