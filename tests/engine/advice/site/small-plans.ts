import type { SiteOption, SiteResult } from '../../../../engine/advice/site/types.ts';
import type { Feature, Plan, PlantRow } from '../../../../engine/plan/types.ts';
import { randomFrom, drawnBetween, drawnChance } from '../../../parts/random.ts';

/** A row of a made-up tender plant, so that much harm is done. */
export const TENDER: PlantRow = {
  id: 'tender',
  name: 'Tender',
  sunHours: [0, 12],
  heatLimit: 40,
  limitOf: 'leaf',
  afternoonShade: 'yes',
  leafWidth: 0.05,
};

/** A yard of about 5 × 4 m with one to three plants and some obstacles and rules; nothing stands on a lattice. */
export function smallPlan(seed: number): Plan {
  const random = randomFrom(seed);
  const between = drawnBetween(random);
  const chance = drawnChance(random);
  const [width, depth] = [between(4, 5.5), between(3.5, 4.5)];
  const spot = (): [number, number] => [between(0.8, width - 0.8), between(0.8, depth - 0.8)];
  const features: Feature[] = [];
  const plants = 1 + Math.floor(random() * 3);
  for (let k = 0; k < plants; k++) {
    features.push({
      id: `plant-${k}`,
      kind: 'plant',
      at: spot(),
      height: between(0.5, 1.6),
      spread: between(0.3, 0.9),
      plant: 'tender',
      worth: between(0.5, 3),
    });
  }
  if (chance(0.4))
    features.push({
      id: 'wall',
      kind: 'wall',
      path: [
        [between(-0.5, 0.3), 0],
        [between(-0.5, 0.3), depth],
      ],
      height: between(1, 2.6),
      thickness: 0.2,
    });
  if (chance(0.3))
    features.push({
      id: 'tree',
      kind: 'tree',
      at: spot(),
      height: between(2.5, 4),
      crownWidth: between(1, 2),
      crownBase: between(0.5, 2.4),
      openness: 0.2,
    });
  if (chance(0.3)) {
    const [x, y] = spot();
    features.push({
      id: 'kept',
      kind: 'keepout',
      outline: [
        [x, y],
        [x + 0.9, y],
        [x + 0.9, y + 0.7],
        [x, y + 0.7],
      ],
      blocks: chance(0.5) ? ['canopy'] : ['posts'],
    });
  }
  if (chance(0.3))
    features.push({
      id: 'hut',
      kind: 'building',
      outline: [
        [width - 1.1, depth - 0.9],
        [width, depth - 0.9],
        [width, depth],
        [width - 1.1, depth],
      ],
      height: between(1.8, 2.6),
      eaves: 0.2,
    });
  if (chance(0.25))
    features.push({
      id: 'eye',
      kind: 'eye',
      path: [
        [-4, -1],
        [-4, 5],
      ],
      height: 1.6,
    });
  const rules = {
    ...(chance(0.3) ? { setback: between(0.1, 0.6) } : {}),
    ...(chance(0.3) ? { maxHeight: between(1.9, 2.5) } : {}),
  };
  const latitude = chance(0.5) ? between(30, 40) : between(-38, -28);
  const summer = latitude > 0 ? '07' : '01';
  return {
    format: 'shadewright-plan',
    version: 1,
    site: {
      latitude,
      longitude: 0.7,
      timeZone: 'Etc/GMT',
      upBearing: between(0, 360),
      boundary: [
        [0, 0],
        [width, 0],
        [width, depth],
        [0, depth],
      ],
      rules,
    },
    season: { year: 2026, from: `${summer}-20`, to: `${summer}-21`, stepMinutes: 60 },
    climate: {
      hotAir: 35,
      heatwaveHigh: 43,
      turbidity: 3,
      months: [{ month: Number(summer), high: 37, low: 20, humidity: between(10, 45), wind: between(0.5, 4) }],
    },
    features,
    plants: [TENDER],
  };
}

/** Of a search's answers the one that spares most. */
export function mostOf({ options }: Pick<SiteResult, 'options'>): SiteOption | undefined {
  return options.toSorted((a, b) => b.spared - a.spared)[0];
}
