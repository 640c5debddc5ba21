import { describe, expect, it } from 'vitest';
import { MOL_PER_MJ } from '../../engine/load/light/weights.ts';
import { samplesOf } from '../../engine/sun/samples.ts';
import { planAt } from '../engine/sun/plan-at.ts';
import { mustBeOk } from '../parts/outcome.ts';
import { TOLERANCES } from './tolerances.ts';

const MJ_PER_WATT_HOUR = 0.0036;

// Faust & Logan (2018), HortScience 53(9):1250–1257: 0.007265 mol a Wh of global radiation, 45 % PAR × 4.48 µmol/J.
// Published factors run from 1.96 to 2.30 mol/MJ.
describe('light from radiation', () => {
  it.each([
    { what: 'five kilowatt-hours', wattHours: 5000, mol: 36.3 },
    // Phoenix TMY3, monthly mean global on the horizontal [Wh/m²/day]; NREL/EnergyPlus 1bd58b05 weather .stat.
    { what: 'April at Phoenix', wattHours: 7086, mol: 51.5 },
    { what: 'June at Phoenix', wattHours: 8318, mol: 60.4 },
    { what: 'July at Phoenix', wattHours: 7616, mol: 55.3 },
    { what: 'December at Phoenix', wattHours: 3070, mol: 22.3 },
  ])('$what: $mol mol/m²', ({ wattHours, mol }) => {
    expect(Math.abs(wattHours * MJ_PER_WATT_HOUR * MOL_PER_MJ - mol)).toBeLessThan(TOLERANCES.dailyLight.max);
  });

  it('a full sun of 1000 W/m² is about 2000 µmol/m²/s', () => {
    expect(1000 * MOL_PER_MJ).toBeCloseTo(2018, 9);
  });
});

// Range of outdoor daily light on the US maps: 5 to 60 mol/m²/day (Korczynski, Logan & Faust 2002, HortTechnology
// 12(1):12–16); deserts in midsummer 45 to 62,
// and never above 68: above the air there are 83.
describe('open daily light of a desert summer', () => {
  it.each([25, 30, 35, 40].flatMap((latitude) => [6, 7].map((month) => ({ latitude, month }))))(
    'at $latitude° N in month $month',
    ({ latitude, month }) => {
      const plan = planAt({
        site: { latitude, longitude: -112, elevation: 300, timeZone: 'America/Phoenix' },
        season: { from: `0${month}-01`, to: `0${month}-30` },
        climate: { turbidity: 3.5, months: [{ month, high: 40, low: 24, sunshine: 0.9 }] },
      });
      const result = samplesOf(plan, { kind: 'season' });
      mustBeOk(result);
      const { count, days, hours, global, sunshine } = result.samples;
      let wattHours = 0;
      // Under an overcast sky a third of the clear sky's: Ångström–Prescott with FAO 56's 0.25 and 0.50.
      for (let index = 0; index < count; index++)
        wattHours += (sunshine[index] + (1 - sunshine[index]) / 3) * global[index] * hours[index];
      const light = (wattHours / days.length) * MJ_PER_WATT_HOUR * MOL_PER_MJ;
      expect(light).toBeGreaterThan(45);
      expect(light).toBeLessThan(62);
    },
  );
});
