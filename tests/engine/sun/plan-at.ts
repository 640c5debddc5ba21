import type { Climate, ClimateMonth, Plan, Season, Site } from '../../../engine/plan/types.ts';

/** A climate month for each number, every value different. */
export function months(...numbers: number[]): ClimateMonth[] {
  return numbers.map((month) => ({ month, high: 30 + month / 4, low: 14 + month / 8 }));
}

interface Changes {
  readonly site?: Partial<Site>;
  readonly season?: Partial<Season>;
  readonly climate?: Partial<Climate>;
}

/** An empty yard: by default near Córdoba in the summer of 2026, with twelve months of climate. */
export function planAt({ site, season, climate }: Changes = {}): Plan {
  return {
    format: 'shadewright-plan',
    version: 1,
    site: {
      latitude: 37.9,
      longitude: -4.8,
      elevation: 110,
      timeZone: 'Europe/Madrid',
      boundary: [
        [0, 0],
        [18, 0],
        [18, 12],
        [0, 12],
      ],
      ...site,
    },
    season: { year: 2026, from: '06-01', to: '09-15', ...season },
    climate: { hotAir: 35, heatwaveHigh: 44, months: months(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12), ...climate },
    features: [],
  };
}
