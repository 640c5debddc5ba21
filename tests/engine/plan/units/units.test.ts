import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatStretch } from '../../../../engine/plan/units/clock.ts';
import {
  formatFrostLimit,
  formatHeatLimit,
  formatArea,
  formatCut,
  formatDistance,
  formatLength,
  formatMass,
  formatPerArea,
  formatSpeed,
  formatTemperature,
  formatTemperatureDifference,
} from '../../../../engine/plan/units/shown.ts';
import {
  parseLength,
  parseLight,
  parseNumber,
  parseSpeed,
  parseTemperature,
} from '../../../../engine/plan/units/typed.ts';

describe('lengths', () => {
  // 1 in = 25.4 mm exactly (international yard and pound agreement, 1959).
  it.each([
    [`6'6"`, 1.9812],
    ['6 ft 6 in', 1.9812],
    ['40 in', 1.016],
    ['2.2 m', 2.2],
    [`6'2"`, 1.8796],
    ['6 ft 2', 1.8796],
    ['74 in', 1.8796],
    ['6’2”', 1.8796],
    [`5'-4 1/2"`, 1.6383],
    ['5\' 4½"', 1.6383],
    ['½ in', 0.0127],
    ['188 cm', 1.88],
    ['1880 mm', 1.88],
    ['6.5 ft', 1.9812],
    ['2 yd', 1.8288],
    [`-3'2"`, -0.9652],
    ['  1,88  m ', 1.88],
    ['6 feet 2 inches', 1.8796],
  ])('%s is %f m whatever the units shown', (text, metres) => {
    expect(parseLength(text, 'metric')).toBeCloseTo(metres, 10);
    expect(parseLength(text, 'imperial')).toBeCloseTo(metres, 10);
  });

  it('a bare number is in metres, or in feet where feet are shown', () => {
    expect(parseLength('1,88', 'metric')).toBe(1.88);
    expect(parseLength('6.5', 'imperial')).toBeCloseTo(1.9812, 10);
    expect(parseLength('12 1/2', 'imperial')).toBeCloseTo(3.81, 10);
  });

  it.each(['', 'tall', '6 apples', `6'14"`, '1.2.3', '1/0', '2 m 3', '5 °C', '1e3'])('%j is refused', (text) => {
    expect(parseLength(text, 'metric')).toBeNull();
  });

  it('what is shown can be typed back: to a centimetre, or to a quarter inch', () => {
    fc.assert(
      fc.property(fc.double({ min: -30, max: 30, noNaN: true }), (metres) => {
        expect(
          Math.abs((parseLength(formatLength(metres, 'metric').replace('−', '-'), 'imperial') ?? NaN) - metres),
        ).toBeLessThanOrEqual(0.005 + 1e-12);
        expect(Math.abs((parseLength(formatLength(metres, 'imperial'), 'metric') ?? NaN) - metres)).toBeLessThanOrEqual(
          0.0254 / 4 + 1e-9,
        );
      }),
      { seed: 77 },
    );
  });

  it('a way to walk is told to the tenth of a metre or to the foot', () => {
    expect([10.08, 7.46, 0].map((metres) => formatDistance(metres, 'metric'))).toEqual(['10 m', '7.5 m', '0.0 m']);
    expect(formatDistance(10.08, 'imperial')).toBe('33 ft');
  });

  it('a payoff for each area is a tenth of a number where the area is a tenth: 1 m² is 10.76 ft²', () => {
    expect(formatPerArea(10.7639, 'K·h', 'metric')).toBe('10.8 K·h a m²');
    expect(formatPerArea(10.7639, 'K·h', 'imperial')).toBe('1.00 K·h a ft²');
  });

  it('feet roll over, inches stand alone under a foot, and nothing is shown without a unit', () => {
    expect(formatLength(1.88, 'imperial')).toBe('6 ft 2 in');
    expect(formatLength(1.88, 'metric')).toBe('1.88 m');
    expect(formatLength(2.998, 'imperial')).toBe('9 ft 10 in');
    expect(formatLength(0.6095, 'imperial')).toBe('2 ft');
    expect(formatLength(0.0127, 'imperial')).toBe('½ in');
    expect(formatLength(-0.0001, 'metric')).toBe('0.00 m');
    expect(formatCut(2.93, 'metric')).toBe('2930 mm');
    expect(formatCut(2.930525, 'imperial')).toBe('9 ft 7 3/8 in');
    expect(formatCut(3.048, 'imperial')).toBe('10 ft');
  });
});

describe('temperatures', () => {
  it('a reading is read in its own unit, or in the yard’s', () => {
    expect(parseTemperature('9 °F', 'metric')).toBeCloseTo(-12.7778, 4);
    expect(parseTemperature('98.6', 'imperial')).toBeCloseTo(37, 10);
    expect(parseTemperature('38,5 °C', 'imperial')).toBe(38.5);
    expect(parseTemperature('−40 F', 'metric')).toBeCloseTo(-40, 10);
  });

  it('kelvin is for differences only', () => {
    expect(parseTemperature('311 K', 'metric')).toBeNull();
    expect(parseTemperature('hot', 'metric')).toBeNull();
  });

  it('both are shown with their unit', () => {
    expect(formatTemperature(46, 'imperial')).toBe('115 °F');
    expect(formatTemperature(-0.2, 'metric')).toBe('0 °C');
    expect(formatTemperatureDifference(4, 'imperial')).toBe('7 °F');
    expect(formatTemperatureDifference(-2.5, 'metric', 1)).toBe('−2.5 °C');
  });
});

// Factors as in NIST SP 811, appendix B: mile 1609.344 m, knot 1852 m/h, acre 4046.8564 m², pound 0.45359237 kg,
// foot-candle 10.76391 lx (from memory).
describe('limits of plants', () => {
  it.each([
    [-1.7, '−1.5 °C', '29 °F'],
    [-2, '−2 °C', '29 °F'],
    [-2.2, '−2 °C', '28 °F'],
    [0, '0 °C', '32 °F'],
  ])('frost that damages from %d °C is never told colder', (celsius, metric, imperial) => {
    expect(formatFrostLimit(celsius, 'metric')).toBe(metric);
    expect(formatFrostLimit(celsius, 'imperial')).toBe(imperial);
  });

  it.each([
    [44, '44 °C', '111 °F'],
    [46.4, '46 °C', '115 °F'],
    [46.5, '46.5 °C', '115 °F'],
    [46.1, '46 °C', '115 °F'],
  ])('heat that harms from %d °C is never told hotter', (celsius, metric, imperial) => {
    expect(formatHeatLimit(celsius, 'metric')).toBe(metric);
    expect(formatHeatLimit(celsius, 'imperial')).toBe(imperial);
  });

  it('a limit told is at most a step from the limit, on the plant’s side (law)', () => {
    const told = (words: string): number => Number(words.replace('−', '-').split(' ')[0]);
    fc.assert(
      fc.property(fc.integer({ min: -300, max: 600 }), (tenths) => {
        const limit = tenths / 10;
        const [heat, frost] = [told(formatHeatLimit(limit, 'metric')), told(formatFrostLimit(limit, 'metric'))];
        expect(heat).toBeLessThan(limit + 0.06);
        expect(heat).toBeGreaterThan(limit - 0.5);
        expect(frost).toBeGreaterThan(limit - 0.06);
        expect(frost).toBeLessThan(limit + 0.5);
      }),
      { seed: 9 },
    );
  });
});

describe('other quantities', () => {
  it('speeds', () => {
    expect(parseSpeed('72 km/h', 'imperial')).toBeCloseTo(20, 10);
    expect(parseSpeed('45 mph', 'metric')).toBeCloseTo((45 * 1609.344) / 3600, 9);
    expect(parseSpeed('39 knots', 'metric')).toBeCloseTo((39 * 1852) / 3600, 9);
    expect(parseSpeed('45', 'imperial')).toBeCloseTo(20.1168, 10);
    expect(formatSpeed(22, 'metric')).toBe('22 m/s (79 km/h)');
    expect(formatSpeed(20.1168, 'imperial')).toBe('45 mph');
  });

  it('areas', () => {
    expect(formatArea(9.290304, 'imperial')).toBe('100 ft²');
    expect(formatArea(6.76, 'metric')).toBe('6.8 m²');
  });

  it('masses and light', () => {
    expect(formatMass(1.36077711, 'imperial')).toBe('3.0 lb');
    expect(formatMass(41.6, 'metric')).toBe('42 kg');
    expect(parseLight('98 klux', 'imperial')).toBe(98000);
    expect(parseLight('1 fc', 'metric')).toBeCloseTo(10.76391, 5);
  });

  it('a bare fraction is a number', () => {
    expect(parseNumber('1 1/2')).toBe(1.5);
    expect(parseNumber('0,6')).toBe(0.6);
    expect(parseNumber('.')).toBeNull();
  });
});

describe('a stretch of the day', () => {
  const up = { from: '07:13', to: '21:38' };

  it('is told by the sun where it begins or ends within twenty minutes of its rise or set', () => {
    expect(formatStretch({ from: '07:20', to: '13:30' }, 'metric', up)).toBe('sunrise to 13:30');
    expect(formatStretch({ from: '13:30', to: '21:20' }, 'imperial', up)).toBe('1:30 pm to sunset');
    expect(formatStretch({ from: '07:33', to: '21:18' }, 'metric', up)).toBe('sunrise to sunset');
  });

  it('is told by the clock elsewhere, and where the sun’s rise is not known', () => {
    expect(formatStretch({ from: '07:34', to: '21:17' }, 'metric', up)).toBe('07:34 to 21:17');
    expect(formatStretch({ from: '07:13', to: '21:38' }, 'metric')).toBe('07:13 to 21:38');
    expect(formatStretch({ from: '07:34', to: '11:00' }, 'imperial', up)).toBe('7:34 to 11 am');
  });
});
