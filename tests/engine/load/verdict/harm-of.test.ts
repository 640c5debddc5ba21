import { describe, expect, it } from 'vitest';
import { plantLoadsOf } from '../../../../engine/load/load-of.ts';
import { harmOf } from '../../../../engine/load/verdict/harm-of.ts';
import type { Feature, Plan, Plant } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../yard-plan.ts';

const LEMON: Plant = { id: 'lemon', kind: 'plant', at: [6, 4], height: 1.4, spread: 1, plant: 'lemon', worth: 3 };
const SUMMER: Pick<Plan, 'season' | 'climate'> = {
  season: { year: 2026, from: '06-01', to: '08-31' },
  climate: {
    hotAir: 35,
    heatwaveHigh: 47,
    months: [
      { month: 6, high: 38, low: 21 },
      { month: 7, high: 41, low: 26 },
      { month: 8, high: 40, low: 25 },
    ],
  },
};
const ROOF: Feature = { id: 'roof', kind: 'canopy', center: [6, 4], length: 4, width: 4, height: 2.2, density: 0.7 };

describe('harm', () => {
  it('is the mean scorch dose of the months’ heat days; the hottest month’s is that of the heatwave day', () => {
    const plan = yardPlan([LEMON], SUMMER);
    const [harm] = valueOf(harmOf(plan));
    expect(harm.byHeatDay).toHaveLength(3);
    expect(harm.harm).toBeCloseTo((harm.byHeatDay[0] + harm.byHeatDay[1] + harm.byHeatDay[2]) / 3, 12);
    expect(harm.byHeatDay[1]).toBeCloseTo(valueOf(plantLoadsOf(plan))[0].scorchDose ?? -1, 9);
    expect(harm.worth).toBe(3);
  });

  it('a roof over a plant spares it, and a denser roof more', () => {
    const harmUnder = (roofs: readonly Feature[]) => valueOf(harmOf(yardPlan([...roofs, LEMON], SUMMER)))[0].harm;
    const [open, thin, thick] = [harmUnder([]), harmUnder([{ ...ROOF, density: 0.3 } as Feature]), harmUnder([ROOF])];
    expect(thin).toBeLessThan(open - 2);
    expect(thick).toBeLessThan(thin - 2);
  });

  it('a cloth that lets everything pass changes nothing', () => {
    const harmUnder = (roofs: readonly Feature[]) => valueOf(harmOf(yardPlan([...roofs, LEMON], SUMMER)))[0].harm;
    expect(harmUnder([{ ...ROOF, density: 0 } as Feature])).toBe(harmUnder([]));
  });

  it('leaves out what names no plant', () => {
    const { plant: _, ...unnamed } = LEMON;
    expect(valueOf(harmOf(yardPlan([unnamed], SUMMER)))).toEqual([]);
  });
});
