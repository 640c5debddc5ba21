import { describe, expect, it } from 'vitest';
import { sunEvents } from '../../engine/sun/position.ts';
import { sunTimes } from '../../engine/sun/sun-times.ts';
import { planAt } from '../engine/sun/plan-at.ts';
import { TOLERANCES } from './tolerances.ts';

// Centre of the disc at −50′, the almanac's definition.

const secondsOff = (ms: number | null, iso: string): number =>
  ms === null ? Infinity : Math.abs(ms - Date.parse(iso)) / 1000;

describe('tables to the second', () => {
  // NREL's SPA calculator, in pvlib-python 6382338a tests. The quoted set of 2015-08-02 is the evening before's and is
  // left out.
  const golden = planAt({ site: { latitude: 39.742476, longitude: -105.1786, timeZone: 'America/Denver' } });
  it.each([
    { date: '2015-01-02', rise: '07:21:55', noon: '12:04:45', set: '16:47:43' },
    { date: '2015-08-02', rise: '05:00:27', noon: '12:06:58', set: null },
  ])('Golden on $date', ({ date, rise, noon, set }) => {
    const times = sunTimes(golden, date);
    expect(secondsOff(times.riseMs, `${date}T${rise}-07:00`)).toBeLessThan(TOLERANCES.sunEventInSeconds.max);
    expect(secondsOff(times.noonMs, `${date}T${noon}-07:00`)).toBeLessThan(TOLERANCES.sunEventInSeconds.max);
    if (set !== null)
      expect(secondsOff(times.setMs, `${date}T${set}-07:00`)).toBeLessThan(TOLERANCES.sunEventInSeconds.max);
  });

  // Reda & Andreas, table of rise and set; pvlib-python 6382338a tests/test_spa.py. Longitude 0, UTC.
  it.each([
    { latitude: 35, date: '1994-01-02', rise: '07:08:12', noon: null, set: '16:59:55' },
    { latitude: -35, date: '1996-07-05', rise: '07:08:15', noon: '12:04:36', set: '17:01:04' },
    { latitude: -35, date: '2004-12-04', rise: '04:38:57', noon: '11:50:22', set: '19:02:03' },
  ])('latitude $latitude on $date', ({ latitude, date, rise, noon, set }) => {
    const times = sunTimes(planAt({ site: { latitude, longitude: 0, timeZone: 'UTC' } }), date);
    expect(secondsOff(times.riseMs, `${date}T${rise}Z`)).toBeLessThan(TOLERANCES.sunEventInSeconds.max);
    expect(secondsOff(times.setMs, `${date}T${set}Z`)).toBeLessThan(TOLERANCES.sunEventInSeconds.max);
    if (noon !== null)
      expect(secondsOff(times.noonMs, `${date}T${noon}Z`)).toBeLessThan(TOLERANCES.sunEventInSeconds.max);
  });
});

describe('tables to the minute', () => {
  // U.S. Naval Observatory, Rise and Set for the Sun for 2019, 29 N 81 W, universal time; cosinekitty/astronomy
  // 0be57450 generate/riseset/sun_2019_W081_N29.html.
  // Rows go by the UT date: a set just after 00:00 is the evening before by the local calendar.
  const usno = [
    ['2019-06-01', '10:26', '00:18'],
    ['2019-06-21', '10:26', '00:26'],
    ['2019-07-11', '10:33', '00:26'],
    ['2019-08-01', '10:45', '00:16'],
    ['2019-08-21', '10:56', '23:58'],
    ['2019-09-11', '11:07', '23:34'],
    ['2019-12-21', '12:13', '22:31'],
  ].flatMap(([date, rise, set]) => {
    const noon = Date.parse(`${date}T17:24Z`);
    const noonOfSet = set < '12:00' ? noon - 86_400_000 : noon;
    return [
      secondsOff(sunEvents(noon, 29, -81).riseMs, `${date}T${rise}Z`),
      secondsOff(sunEvents(noonOfSet, 29, -81).setMs, `${date}T${set}Z`),
    ];
  });

  // USNO's one-day service, in mourner/suncalc 886bda41 test/fixtures.json. UTC.
  const oneDay = [
    { latitude: 41.01384, longitude: 28.94966, date: '2026-06-21', times: ['02:32', '10:06', '17:40'] },
    { latitude: 41.01384, longitude: 28.94966, date: '2026-07-06', times: ['02:39', '10:09', '17:39'] },
    { latitude: -12.04318, longitude: -77.02824, date: '2026-01-03', times: ['10:48', '17:13', '23:37'] },
    { latitude: -12.04318, longitude: -77.02824, date: '2026-12-21', times: ['10:41', '17:06', '23:31'] },
    { latitude: -34.61315, longitude: -58.37723, date: '2026-01-18', times: ['09:00', '16:04', '23:08'] },
    { latitude: -34.61315, longitude: -58.37723, date: '2026-12-21', times: ['08:37', '15:52', '23:06'] },
  ].flatMap(({ latitude, longitude, date, times }) => {
    const found = sunEvents(Date.parse(`${date}T${times[1]}Z`), latitude, longitude);
    return [found.riseMs, found.noonMs, found.setMs].map((ms, event) => secondsOff(ms, `${date}T${times[event]}Z`));
  });

  it('agree in every row, and better on the mean', () => {
    const all = [...usno, ...oneDay];
    expect(all).toHaveLength(32);
    expect(Math.max(...all)).toBeLessThan(TOLERANCES.sunEventInMinutes.max);
    expect(all.reduce((sum, seconds) => sum + seconds, 0) / all.length).toBeLessThan(TOLERANCES.sunEventInMinutes.mean);
  });
});
