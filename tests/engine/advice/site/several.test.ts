import { expect, test } from 'vitest';
import { candidatesOf } from '../../../../engine/advice/site/choose.ts';
import { layOut } from '../../../../engine/advice/site/lay-out.ts';
import { searchYard } from '../../../../engine/advice/site/search-yard.ts';
import type { SiteRequest } from '../../../../engine/advice/site/types.ts';
import type { Plan, Plant } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { TENDER } from './small-plans.ts';

const REQUEST: SiteRequest = {
  kinds: ['roof', 'screen'],
  sizes: [{ length: 2, width: 1.5 }],
  heights: [2.2],
  densities: [0.5],
  step: 0.5,
  turnStep: 45,
  keepLight: false,
};

/** Two tender plants, the first worth twice the second, so far apart that no cloth serves both. */
function twoPlants(): Plan {
  const plant = (id: string, x: number, worth: number): Plant => ({
    id,
    kind: 'plant',
    at: [x, 3],
    height: 1.2,
    spread: 0.8,
    plant: 'tender',
    worth,
  });
  return {
    format: 'shadewright-plan',
    version: 1,
    site: {
      latitude: 35,
      longitude: 0,
      timeZone: 'Etc/GMT',
      boundary: [
        [0, 0],
        [14, 0],
        [14, 6],
        [0, 6],
      ],
    },
    season: { year: 2026, from: '07-20', to: '07-21', stepMinutes: 30 },
    climate: { hotAir: 35, heatwaveHigh: 43, months: [{ month: 7, high: 37, low: 20, humidity: 30 }] },
    features: [plant('worthy', 3, 2), plant('other', 11, 1)],
    plants: [TENDER],
  };
}

function found(request: SiteRequest) {
  const laidOut = valueOf(layOut(twoPlants(), request, () => undefined));
  return candidatesOf(
    laidOut,
    searchYard(laidOut, () => undefined),
  );
}

test('two at once stand one by each plant, and spare what the best for each spares alone', () => {
  const singles = found(REQUEST);
  const groups = found({ ...REQUEST, count: 2 });
  const [pair] = groups;
  expect(pair.kind).toBe('several');
  const middles = pair.cloth
    .map((one) => (one.kind === 'canopy' ? one.center[0] : one.path[0][0]))
    .sort((a, b) => a - b);
  expect(Math.abs(middles[0] - 3)).toBeLessThan(2.5);
  expect(Math.abs(middles[1] - 11)).toBeLessThan(2.5);
  const best = Math.max(...singles.map(({ spared }) => spared));
  // The other plant is as harmed and counts half.
  expect(pair.spared / best).toBeGreaterThan(1.45);
  expect(pair.spared / best).toBeLessThan(1.55);
});

test('no group is beaten in money and effect, and money for one alone buys one alone', () => {
  const groups = found({ ...REQUEST, count: 2 });
  for (const one of groups)
    for (const other of groups)
      if (one !== other && (one.cautioned || !other.cautioned))
        expect(other.spared >= one.spared && other.cost <= one.cost).toBe(false);
  const cheapestPair = Math.min(...groups.filter(({ kind }) => kind === 'several').map(({ cost }) => cost));
  const alone = found({ ...REQUEST, count: 2, budget: cheapestPair - 1 });
  expect(alone.length).toBeGreaterThan(0);
  for (const { cloth, cost } of alone) {
    expect(cloth).toHaveLength(1);
    expect(cost).toBeLessThan(cheapestPair);
  }
});
