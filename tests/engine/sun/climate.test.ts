import { describe, expect, it } from 'vitest';
import { monthClimate } from '../../../engine/sun/climate.ts';
import { parseEpw } from '../../../engine/sun/weather/epw.ts';
import { mustBeOk } from '../../parts/outcome.ts';
import { epwBytes, epwLines } from './epw-file.ts';
import { planAt } from './plan-at.ts';

describe('a month of the climate', () => {
  it('has the defaults for what it does not say', () => {
    const plan = planAt({ climate: { months: [{ month: 7, high: 36, low: 19 }] } });
    expect(monthClimate(plan, 7)).toEqual({
      month: 7,
      high: 36,
      low: 19,
      humidity: 40,
      wind: 2,
      sunshineMorning: 1,
      sunshineAfternoon: 1,
      spread: 3.5,
      turbidity: 3.5,
    });
  });

  it('has its own turbidity before the climate’s, and the afternoon its own sunshine', () => {
    const plan = planAt({
      climate: {
        turbidity: 4.1,
        months: [
          {
            month: 7,
            high: 36,
            low: 19,
            humidity: 22,
            wind: 3,
            sunshine: 0.8,
            sunshineAfternoon: 0.55,
            spread: 2.5,
            turbidity: 5,
          },
          { month: 8, high: 35, low: 18, sunshine: 0.9 },
        ],
      },
    });
    expect(monthClimate(plan, 7)).toMatchObject({
      humidity: 22,
      wind: 3,
      sunshineMorning: 0.8,
      sunshineAfternoon: 0.55,
      spread: 2.5,
      turbidity: 5,
    });
    expect(monthClimate(plan, 8)).toMatchObject({ sunshineMorning: 0.9, sunshineAfternoon: 0.9, turbidity: 4.1 });
  });

  it('is as much hotter as the person’s thermometer reads above the station', () => {
    expect(
      monthClimate(planAt({ climate: { offset: 1.5, months: [{ month: 7, high: 36, low: 19 }] } }), 7),
    ).toMatchObject({ high: 37.5, low: 20.5 });
  });

  it('is none when the plan has no figures', () => {
    expect(monthClimate(planAt({ climate: { months: [] } }), 7)).toBeNull();
  });

  it('has high, low, humidity and wind from a weather file, its own where the file has none, and the offset on top', () => {
    const file = parseEpw(
      epwBytes(
        epwLines({
          row: (_month, _day, hour) => ({ air: hour === 15 ? 41 : hour === 5 ? 22 : 30, humidity: 18, wind: 999 }),
        }),
      ),
    );
    mustBeOk(file);
    const plan = planAt({ climate: { offset: 2, months: [{ month: 7, high: 36, low: 19, humidity: 25, wind: 1.2 }] } });
    const month = monthClimate(plan, 7, file.weather);
    expect(month?.high).toBeCloseTo(43, 10);
    expect(month?.low).toBeCloseTo(24, 10);
    expect(month?.humidity).toBeCloseTo(18, 10);
    expect(month?.wind).toBe(1.2);
  });
});
