import { describe, expect, it } from 'vitest';
import { parseEpw } from '../../../../engine/sun/weather/epw.ts';
import type { Weather } from '../../../../engine/sun/weather/weather.ts';
import { mustBeOk } from '../../../parts/outcome.ts';
import { epwBytes, epwLines, LOCATION } from '../epw-file.ts';

const HEADER_LINES = 8;
/** Index of an hour in a year of 365 days. */
const hourIndex = (dayOfYear: number, stamp: number): number => (dayOfYear - 1) * 24 + stamp - 1;

function read(bytes: Uint8Array): Weather {
  const result = parseEpw(bytes);
  mustBeOk(result);
  return result.weather;
}

function refusal(bytes: Uint8Array): string {
  const result = parseEpw(bytes);
  if (result.ok) throw new Error('expected the file to be refused');
  expect(result.problems).toHaveLength(1);
  expect(result.problems[0].severity).toBe('error');
  expect(result.problems[0].message).not.toMatch(/NaN|undefined|null/);
  return result.problems[0].message;
}

describe('a whole file', () => {
  const row = (month: number, day: number, hour: number) => ({
    air: month + day / 100,
    humidity: 10 + hour,
    // No sun by night: a beam that low counts as none.
    beam: day,
    diffuse: 100 * month + hour,
    wind: hour / 10,
  });

  it('gives every value at its hour, the stamp being the end of it', () => {
    const weather = read(epwBytes(epwLines({ row })));
    // 21 June is day 172.
    const index = hourIndex(172, 15);
    expect(weather.air[index]).toBe(6.21);
    expect(weather.humidity[index]).toBe(25);
    expect(weather.beam[index]).toBe(21);
    expect(weather.diffuse[index]).toBe(615);
    expect(weather.wind[index]).toBe(1.5);
    expect(weather.air).toHaveLength(8760);
    expect(weather.bridged).toBe(0);
  });

  it('says where it was measured', () => {
    expect(read(epwBytes(epwLines())).place).toEqual({
      name: 'Somewhere, ESP',
      latitude: 37.9,
      longitude: -4.8,
      utcOffset: 1,
      elevation: 110,
    });
  });

  // NREL TMY3 (2008), WMO 722745, row of 21 June, hour 15: T 37.0, RH 11, DNI 888, DHI 121, wind 6.7 m/s.
  it('reads a row of a published typical year', () => {
    const lines = epwLines();
    lines[HEADER_LINES + hourIndex(172, 15)] =
      '2003,6,21,15,0,?9?9?9?9E0?9?9?9?9?9?9?9?9?9?9?9*9?9?9?9*9*9?9*9*9,37.0,2.0,11,91900,1156,1322,353,899,888,121,0,0,0,0,220,6.7,1,1,777.7,77777,9,999999999,89,0.0390,0,88,0.200,999.0,99.0';
    const weather = read(epwBytes(lines));
    const index = hourIndex(172, 15);
    expect(
      [weather.air, weather.humidity, weather.beam, weather.diffuse, weather.wind].map((column) => column[index]),
    ).toEqual([37, 11, 888, 121, 6.7]);
  });

  it(
    'reads the same with either line ending, with minute 0 or 60, with blank lines at its end, and with a ' +
      'byte order mark',
    () => {
      const plain = read(epwBytes(epwLines({ row })));
      const minuteZero = (month: number, day: number, hour: number) => ({ ...row(month, day, hour), minute: 0 });
      const others = [
        epwBytes(epwLines({ row: minuteZero }), '\r\n'),
        epwBytes([...epwLines({ row }), '', '']),
        Uint8Array.from([0xef, 0xbb, 0xbf, ...epwBytes(epwLines({ row }))]),
      ];
      for (const bytes of others) {
        const weather = read(bytes);
        expect(weather.place).toEqual(plain.place);
        expect(weather.months).toEqual(plain.months);
        for (const name of ['air', 'beam', 'diffuse', 'humidity', 'wind'] as const) {
          expect(
            weather[name].every((value, index) => value === plain[name][index]),
            name,
          ).toBe(true);
        }
      }
    },
  );

  it('reads a place name in Latin-1 and in UTF-8', () => {
    const rest = LOCATION.replace('LOCATION,Somewhere', '');
    expect(read(epwBytes(epwLines({ location: `LOCATION,C\u00f3rdoba${rest}` }))).place.name).toBe('Córdoba, ESP');
    expect(read(epwBytes(epwLines({ location: `LOCATION,C\u00c3\u00b3rdoba 100 %${rest}` }))).place.name).toBe(
      'Córdoba 100 %, ESP',
    );
  });

  it('leaves 29 February out', () => {
    const weather = read(
      epwBytes(
        epwLines({
          leapYear: true,
          row: (month, day) => ({ air: month === 2 && day === 29 ? -20 : month + day / 100 }),
        }),
      ),
    );
    expect(weather.air).toHaveLength(8760);
    expect(weather.air[hourIndex(59, 24)]).toBeCloseTo(2.28, 12);
    expect(weather.air[hourIndex(60, 1)]).toBeCloseTo(3.01, 12);
    expect(weather.months[1].low).toBeCloseTo(2.145, 12);
  });

  it("takes a month's high and low from its daily extremes, its humidity and wind from all hours", () => {
    const { months } = read(
      epwBytes(
        epwLines({
          row: (month, day, hour) => ({
            air: month + day / 10 + (hour === 16 ? 12 : hour === 6 ? -3 : 0),
            humidity: hour,
            wind: day / 31,
          }),
        }),
      ),
    );
    expect(months[6]).toEqual({
      month: 7,
      high: expect.closeTo(7 + 1.6 + 12, 10),
      low: expect.closeTo(7 + 1.6 - 3, 10),
      humidity: expect.closeTo(12.5, 10),
      wind: expect.closeTo(16 / 31, 10),
    });
  });
});

describe('missing values', () => {
  it('are bridged in a straight line, up to six hours', () => {
    const row = (_month: number, day: number, hour: number) => ({
      air: day === 3 && hour >= 7 && hour <= 12 ? '99.9' : hour < 7 ? 20 : 34,
    });
    const weather = read(epwBytes(epwLines({ row })));
    const bridged = [7, 8, 9, 10, 11, 12].map((stamp) => weather.air[hourIndex(3, stamp)]);
    expect(bridged).toEqual([22, 24, 26, 28, 30, 32].map((air) => expect.closeTo(air, 10)));
    expect(weather.bridged).toBe(6 * 12);
  });

  it('are refused in air and radiation when seven hours are gone, with the line of the first', () => {
    const gap = (name: 'air' | 'beam' | 'diffuse', code: string) => (month: number, day: number, hour: number) =>
      month === 4 && day === 2 && hour >= 7 && hour <= 13 ? { [name]: code } : {};
    // 2 April is day 92.
    const line = HEADER_LINES + hourIndex(92, 7) + 1;
    expect(refusal(epwBytes(epwLines({ row: gap('air', '99.9') })))).toBe(
      `Weather file, line ${line}: the air temperature is missing here and for more than 6 hours in a row.`,
    );
    expect(refusal(epwBytes(epwLines({ row: gap('beam', '9999') })))).toContain(
      `line ${line}: the direct normal radiation is missing`,
    );
    expect(refusal(epwBytes(epwLines({ row: gap('diffuse', '9999.0'), leapYear: true })))).toContain(
      `line ${line + 24}: the diffuse radiation is missing`,
    );
  });

  it('may stay away altogether in humidity and wind', () => {
    const weather = read(epwBytes(epwLines({ row: () => ({ humidity: 999, wind: '999.0' }) })));
    expect(weather.humidity.every(Number.isNaN)).toBe(true);
    expect(weather.wind.every(Number.isNaN)).toBe(true);
    expect(weather.months[0].wind).toBeNaN();
  });
});

describe('a file that is no hourly year is refused in one sentence with the line', () => {
  const lines = epwLines();

  it.each([
    {
      what: 'nothing',
      bytes: new Uint8Array(0),
      says: 'Weather file, line 1: an EPW file begins with the word LOCATION, and this one does not.',
    },
    { what: 'something else', bytes: epwBytes(['{"format": "shadewright-plan"}']), says: 'line 1: an EPW file begins' },
    {
      what: 'a latitude in words',
      bytes: epwBytes([LOCATION.replace('37.9', 'north'), ...lines.slice(1)]),
      says: 'line 1: the latitude should be a number from -90 to 90, and is "north".',
    },
    {
      what: 'a place cut off',
      bytes: epwBytes(['LOCATION,Somewhere', ...lines.slice(1)]),
      says: 'line 1: the latitude should be',
    },
    { what: 'headers only', bytes: epwBytes(lines.slice(0, 8)), says: 'line 8: the file ends after 0 of 8760 hours' },
    {
      what: 'a header missing',
      bytes: epwBytes(lines.filter((_, index) => index !== 4)),
      says: 'line 8: the eighth line of an EPW file is DATA PERIODS',
    },
    {
      what: 'half a year',
      bytes: epwBytes(lines.slice(0, 5008)),
      says:
        'line 5008: the file ends after 5000 of 8760 hours, before month 7, day 28, hour 9. A whole ' +
        'year is needed.',
    },
    {
      what: 'a row cut off',
      bytes: epwBytes([...lines.slice(0, 400), lines[400].slice(0, 40)]),
      says: 'line 401: the row is cut off: it has 10 of 35 columns.',
    },
    {
      what: 'its last row cut in the wind',
      bytes: epwBytes([...lines.slice(0, 8767), lines[8767].slice(0, lines[8767].indexOf(',1.5,') + 3)]),
      says: 'line 8768: the row is cut off: it has 22 of 35 columns.',
    },
    {
      what: 'a row with a column too many',
      bytes: epwBytes(lines.with(300, `${lines[300]},0`)),
      says: 'line 301: the row has 36 columns, and most have 35.',
    },
    {
      what: 'its first row short of a column',
      bytes: epwBytes(lines.with(8, lines[8].slice(0, lines[8].lastIndexOf(',')))),
      says: 'line 9: the row is cut off: it has 34 of 35 columns.',
    },
    {
      what: 'sun in the night',
      bytes: epwBytes(
        epwLines({ row: (month, day, hour) => ({ beam: month === 3 && day === 2 && hour === 1 ? 400 : 0 }) }),
      ),
      says: 'line 1449: the direct normal radiation is 400 W/m² while the sun is 56° below the horizon there.',
    },
    {
      what: 'a time zone from elsewhere',
      bytes: epwBytes([LOCATION.replace(',1.0,', ',-7,'), ...lines.slice(1)]),
      says: 'line 1: a time zone of -7 h cannot be at longitude -4.8, where the sun is -0.3 h ahead of UTC.',
    },
    {
      what: 'more bytes than a year takes',
      bytes: new Uint8Array(20_000_001),
      says: 'The weather file is larger than 20 MB',
    },
    {
      what: 'a row too many',
      bytes: epwBytes([...lines, lines[8767]]),
      says: 'line 8769: there are more rows than a year has hours.',
    },
    {
      what: 'four records an hour',
      bytes: epwBytes(epwLines({ recordsPerHour: 4 })),
      says: 'line 8: the file has 4 records an hour; only hourly files',
    },
    {
      what: 'rows of a quarter hour',
      bytes: epwBytes(epwLines({ row: () => ({ minute: 15 }) })),
      says: 'line 9: the row is for minute 15; only hourly files',
    },
    {
      what: 'a word for a number',
      bytes: epwBytes(lines.with(700, lines[700].replace(',25.5,', ',warm,'))),
      says: 'line 701: the air temperature should be a number from -70 to 70 °C, and is "warm".',
    },
    {
      what: 'an empty field',
      bytes: epwBytes(lines.with(700, lines[700].replace(',25.5,', ',,'))),
      says: 'line 701: the air temperature should be a number',
    },
    {
      what: 'radiation beyond the sun',
      bytes: epwBytes(lines.with(900, lines[900].replace(',0,0,9', ',1800,0,9'))),
      says: 'line 901: the direct normal radiation should be a number from 0 to 1500 W/m², and is "1800".',
    },
  ])('$what', ({ bytes, says }) => {
    expect(refusal(bytes)).toContain(says);
  });

  it('two rows that changed places', () => {
    const shuffled = lines.with(2000, lines[2001]).with(2001, lines[2000]);
    expect(refusal(epwBytes(shuffled))).toMatch(
      /^Weather file, line 2001: here should be month 3, day 25, hour 1, and there is month 3, day 25, hour 2\. /,
    );
  });
});
