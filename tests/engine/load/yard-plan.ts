import type { Feature, Plan } from '../../../engine/plan/types.ts';

/** A bare yard for tests, 12 × 8 m in a hot dry place; every key that a test does not name is as here. */
export function yardPlan(
  features: readonly Feature[] = [],
  change: Partial<Pick<Plan, 'site' | 'season' | 'climate' | 'journal' | 'plants'>> = {},
): Plan {
  return {
    format: 'shadewright-plan',
    version: 1,
    site: {
      latitude: 33.4,
      longitude: -111.7,
      elevation: 360,
      timeZone: 'America/Phoenix',
      upBearing: 0,
      boundary: [
        [0, 0],
        [12, 0],
        [12, 8],
        [0, 8],
      ],
    },
    season: { year: 2026, from: '06-20', to: '06-24', stepMinutes: 10 },
    climate: {
      hotAir: 35,
      heatwaveHigh: 46,
      turbidity: 3,
      months: [{ month: 6, high: 40, low: 23, humidity: 15, wind: 2, spread: 2.5 }],
    },
    features,
    ...change,
  };
}
