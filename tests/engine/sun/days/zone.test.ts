import { describe, expect, it } from 'vitest';
import { civilDay, civilDays, instantOf, isTimeZone, localDate, localIso } from '../../../../engine/sun/days/zone.ts';

const HOUR = 3_600_000;
const hoursOf = (date: string, zone: string): number => {
  const { startMs, endMs } = civilDay(date, zone);
  return (endMs - startMs) / HOUR;
};

// Changes of clocks in 2026: IANA time zone database.
describe('civil days', () => {
  it.each([
    ['Europe/Madrid', '2026-03-29', 23],
    ['Europe/Madrid', '2026-10-25', 25],
    ['Europe/Madrid', '2026-06-21', 24],
    ['Australia/Adelaide', '2026-04-05', 25],
    ['Australia/Adelaide', '2026-10-04', 23],
    ['Australia/Lord_Howe', '2026-04-05', 24.5],
    ['Australia/Lord_Howe', '2026-10-04', 23.5],
    ['America/Phoenix', '2026-03-08', 24],
    ['America/Santiago', '2026-09-06', 23],
  ])('in %s, %s has %d hours', (zone, date, hours) => {
    expect(hoursOf(date, zone)).toBe(hours);
  });

  it('begin at the first instant there is where clocks skip midnight', () => {
    expect(localIso(civilDay('2026-09-06', 'America/Santiago').startMs, 'America/Santiago')).toBe(
      '2026-09-06T01:00:00-03:00',
    );
  });

  it('in a row share their boundaries, and each is the same as alone', () => {
    const dates = ['2026-10-23', '2026-10-24', '2026-10-25', '2026-10-26', '2026-11-02'];
    const days = civilDays(dates, 'Europe/Madrid');
    expect(days).toEqual(dates.map((date) => civilDay(date, 'Europe/Madrid')));
    expect(days[1].endMs).toBe(days[2].startMs);
  });
});

describe('local time', () => {
  it('carries seconds and the offset of the moment', () => {
    expect(localIso(Date.UTC(2026, 6, 20, 13, 10), 'Europe/Madrid')).toBe('2026-07-20T15:10:00+02:00');
    expect(localIso(Date.UTC(2026, 0, 14, 22, 59, 59, 900), 'Australia/Adelaide')).toBe('2026-01-15T09:29:59+10:30');
    expect(localDate(Date.UTC(2026, 0, 14, 22, 59), 'Australia/Adelaide')).toBe('2026-01-15');
  });
});

describe('the instant of a clock time', () => {
  it('is the one on the clock', () => {
    expect(instantOf('2026-05-02T08:30', 'Europe/Madrid')).toBe(Date.UTC(2026, 4, 2, 6, 30));
    expect(instantOf('2026-05-02T08:30:45', 'Asia/Kolkata')).toBe(Date.UTC(2026, 4, 2, 3, 0, 45));
  });

  it('is the first when the clock reads it twice', () => {
    expect(instantOf('2026-10-25T02:30', 'Europe/Madrid')).toBe(Date.UTC(2026, 9, 25, 0, 30));
    expect(instantOf('2026-04-05T01:45', 'Australia/Lord_Howe')).toBe(Date.UTC(2026, 3, 4, 14, 45));
  });

  it('is as if the clocks had not changed when they skip it', () => {
    expect(instantOf('2026-03-29T02:30', 'Europe/Madrid')).toBe(Date.UTC(2026, 2, 29, 1, 30));
  });

  it.each(['yesterday', '', '2026-02-30T10:00', '2026-05-02', '2026-05-02T25:00', '2026-05-02T08:30+05:00', '10:00'])(
    'is none for "%s"',
    (text) => {
      expect(instantOf(text, 'Europe/Madrid')).toBeNull();
    },
  );
});

it('knows a time zone from a word', () => {
  expect(isTimeZone('Australia/Lord_Howe')).toBe(true);
  expect(isTimeZone('Nowhere/City')).toBe(false);
  expect(isTimeZone('')).toBe(false);
});
