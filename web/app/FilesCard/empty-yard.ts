import type { Plan } from '../../../engine/index.ts';

/** A yard with nothing on it, where the given one stands: same place, climate and season, a ground of 10 by 8 m. */
export function emptyYard({ units, site, season, climate, plants, stock }: Plan): Plan {
  const { latitude, longitude, elevation, timeZone } = site;
  return {
    format: 'shadewright-plan',
    version: 1,
    name: 'New yard',
    units,
    site: {
      latitude,
      longitude,
      elevation,
      timeZone,
      boundary: [
        [0, 0],
        [10, 0],
        [10, 8],
        [0, 8],
      ],
      how: { upBearing: { by: 'guess' } },
    },
    season,
    climate,
    features: [],
    plants,
    stock,
  };
}
