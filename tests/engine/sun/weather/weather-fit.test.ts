import { expect, it } from 'vitest';
import { parseEpw } from '../../../../engine/sun/weather/epw.ts';
import { weatherWarnings } from '../../../../engine/sun/weather/weather-fit.ts';
import { mustBeOk } from '../../../parts/outcome.ts';
import { epwBytes, epwLines, type EpwFile } from '../epw-file.ts';
import { planAt } from '../plan-at.ts';

const breezy = (_month: number, _day: number, hour: number) => ({ wind: hour / 10 });

function weatherOf(file: EpwFile) {
  const read = parseEpw(epwBytes(epwLines(file)));
  mustBeOk(read);
  return read.weather;
}

it('a weather file from next door needs no warning', () => {
  expect(weatherWarnings(planAt(), weatherOf({ row: breezy }))).toEqual([]);
});

it('a weather file with one wind all year, or without wind or humidity, says so', () => {
  const said = (row: EpwFile['row']) => weatherWarnings(planAt(), weatherOf({ row })).map(({ message }) => message);
  expect(said(() => ({ wind: 2 }))).toEqual([
    'The weather file has one wind all year, 2 m/s: a filled-in number, not a measured one.',
  ]);
  expect(said(() => ({ wind: 999, humidity: 999 }))).toEqual([
    'The weather file has no wind for some or all of the year: the plan’s months stand in there.',
    'The weather file has no humidity for some or all of the year: the plan’s months stand in there.',
  ]);
});

it('a weather file from far away, from a hill, with gaps says so', () => {
  // Córdoba to Granada: 37.9 N 4.8 W to 37.2 N 3.6 W, 131 km by the great circle.
  const location = 'LOCATION,Granada,-,ESP,made for a test,999999,37.2,-3.6,1.0,690.0';
  const weather = weatherOf({
    location,
    row: (month, day, hour) => ({ ...breezy(month, day, hour), air: month === 5 && day === 2 && hour < 3 ? 99.9 : 24 }),
  });
  expect(weatherWarnings(planAt(), weather).map(({ message }) => message)).toEqual([
    'The weather file was measured at Granada, ESP, 131 km from the yard.',
    'The weather file was measured 580 m higher than the yard: its air is likely cooler.',
    '2 missing values of the weather file were filled in from the hours before and after.',
  ]);
  const imperial = weatherWarnings({ ...planAt({ site: { elevation: 1100 } }), units: 'imperial' }, weather);
  expect(imperial.map(({ message }) => message).slice(0, 2)).toEqual([
    'The weather file was measured at Granada, ESP, 82 miles from the yard.',
    'The weather file was measured 1345 ft lower than the yard: its air is likely warmer.',
  ]);
  expect(imperial.every(({ severity }) => severity === 'warning')).toBe(true);
});
