import { describe, expect, test } from 'vitest';
import { sparedAtMost } from '../../../../engine/advice/site/scoring/at-most.ts';
import { leafTables } from '../../../../engine/advice/site/scoring/leaf-tables.ts';
import { togetherScore } from '../../../../engine/advice/site/scoring/together.ts';
import { harmPairsOf } from '../../../../engine/advice/site/search/harm-pairs.ts';
import { responseOf, shadeAnswers, turnedResponse } from '../../../../engine/advice/site/search/responses.ts';
import { targetsOf } from '../../../../engine/advice/site/search/targets.ts';
import { turnedLattice } from '../../../../engine/advice/site/search/turned-lattice.ts';
import { turnedRays } from '../../../../engine/advice/site/search/turned-rays.ts';
import { siteOf } from '../../../../engine/advice/site/site.ts';
import type { SiteRequest } from '../../../../engine/advice/site/types.ts';
import { turnOf, upBearingOf, worthOf } from '../../../../engine/plan/defaults.ts';
import { turned } from '../../../../engine/plan/geometry/shapes.ts';
import type { Canopy, Feature, Plan, PlanPoint, Plant, Screen } from '../../../../engine/plan/types.ts';
import { clothSheets } from '../../../../engine/scene/build.ts';
import { clothMeets } from '../../../../engine/scene/cloth-sheet.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { randomFrom } from '../../../parts/random.ts';
import { mostOf, smallPlan, TENDER } from './small-plans.ts';

const ROOF: SiteRequest = {
  kinds: ['roof'],
  sizes: [{ length: 1.5, width: 1 }],
  heights: [2.2],
  densities: [0.6],
  step: 0.5,
  turnStep: 30,
  keepLight: false,
  betweenSteps: false,
};

function scorerOf(plan: Plan): (cloth: Canopy) => number {
  const targets = valueOf(targetsOf(plan));
  const leaves = leafTables(targets);
  const score = togetherScore(targets, harmPairsOf(targets, leaves, 1), leaves);
  return (cloth) => score([cloth]).reduce((sum, each) => sum + each, 0);
}

function roof(change: Partial<Canopy>): Canopy {
  return {
    id: 'roof',
    kind: 'canopy',
    center: [2.4, 2.1],
    length: 2,
    width: 1.7,
    height: 2.3,
    density: 0.5,
    ...change,
  };
}

/** One tender plant in the middle of a bare yard, in the hot month of its half of the world. */
function lonePlant(latitude: number): Plan {
  const month = latitude > 0 ? '07' : '01';
  const plant: Plant = { id: 'alone', kind: 'plant', at: [3.03, 3.07], height: 1.2, spread: 0.8, plant: 'tender' };
  return {
    format: 'shadewright-plan',
    version: 1,
    site: {
      latitude,
      longitude: 0,
      timeZone: 'Etc/GMT',
      boundary: [
        [0, 0],
        [6, 0],
        [6, 6],
        [0, 6],
      ],
    },
    season: { year: 2026, from: `${month}-20`, to: `${month}-21`, stepMinutes: 20 },
    climate: { hotAir: 35, heatwaveHigh: 43, months: [{ month: Number(month), high: 37, low: 20, humidity: 30 }] },
    features: [plant],
    plants: [TENDER],
  };
}

describe('more density', () => {
  // Of the shade alone: what hiding the sky does to a leaf's heat goes either way, as the test after next shows.
  test('never spares less by its shade, whichever harmful ray it stands in', () => {
    let rays = 0;
    for (let seed = 301; seed <= 310; seed++) {
      const targets = valueOf(targetsOf(smallPlan(seed)));
      const leaves = leafTables(targets);
      const pairs = harmPairsOf(targets, leaves, 1);
      const shades = shadeAnswers(targets, pairs, leaves);
      const { across } = turnedRays(targets, pairs, turnedLattice(targets.plan.site.boundary, 20, 0.25));
      const spared = [0.1, 0.3, 0.5, 0.7, 0.9, 1].map((density) => {
        const answers = turnedResponse(pairs, shades, responseOf(pairs, shades, density), across, false);
        return [answers.roof.once, answers.screens.u.once, answers.screens.v.once];
      });
      spared.forEach((kinds, k) => {
        kinds.forEach((once, kind) =>
          expect(
            // Tables of the leaf are right to a thousandth of a kelvin.
            once.findIndex((gain, p) => gain < (k === 0 ? 0 : spared[k - 1][kind][p] - 1e-3)),
            `seed ${seed}`,
          ).toBe(-1),
        );
      });
      rays += pairs.count;
    }
    expect(rays).toBeGreaterThan(500);
  });

  test('never spares less at the best place of a yard', () => {
    let best = 0;
    for (let seed = 301; seed <= 310; seed++) {
      const plan = smallPlan(seed);
      const option = mostOf(valueOf(siteOf(plan, ROOF)));
      if (!option) continue;
      const score = scorerOf(plan);
      const spared = [0.2, 0.4, 0.6, 0.8].map((density) => score({ ...(option.features[0] as Canopy), density }));
      spared.forEach((value, k) => expect(value).toBeGreaterThan(k === 0 ? 0 : spared[k - 1]));
      best++;
    }
    expect(best).toBeGreaterThan(6);
  });

  test('may spare less where cloth stands beside the sun’s way: a leaf loses less heat to cloth than to a dry sky', () => {
    const random = randomFrom(41);
    let worse = 0;
    for (let seed = 301; seed <= 320; seed++) {
      const plan = smallPlan(seed);
      const score = scorerOf(plan);
      const place = roof({ center: [1 + 3 * random(), 1 + 2 * random()], turn: 180 * random() });
      const [thin, thick] = [0.3, 0.7].map((density) => score({ ...place, density }));
      if (thick < thin) worse++;
    }
    expect(worse).toBeGreaterThan(0);
    expect(worse).toBeLessThan(10);
  });
});

describe('what any cloth spares', () => {
  test('is never more than is told of it at most, and little less, screens and pairs of roofs included', () => {
    const random = randomFrom(44);
    for (let seed = 441; seed <= 452; seed++) {
      const targets = valueOf(targetsOf(smallPlan(seed)));
      const leaves = leafTables(targets);
      const pairs = harmPairsOf(targets, leaves, 1);
      const score = togetherScore(targets, pairs, leaves);
      const atMost = sparedAtMost(targets, pairs, shadeAnswers(targets, pairs, leaves));
      const anyRoof = () => roof({ center: [5 * random(), 4 * random()], height: 1 + 2 * random(), density: random() });
      const screen: Screen = {
        id: 's',
        kind: 'screen',
        path: [
          [1, 3 * random()],
          [4, 2],
        ],
        height: 2,
        density: 0.7,
      };
      for (const cloth of [[anyRoof()], [anyRoof(), anyRoof()], [screen], [screen, anyRoof()]]) {
        const spared = score(cloth).reduce((sum, each) => sum + each, 0);
        expect(atMost(cloth)).toBeGreaterThanOrEqual(spared);
        expect(atMost(cloth)).toBeLessThan(spared + 0.01 * (1 + pairs.harm));
      }
    }
  });
});

describe('a canopy', () => {
  test('that no ray to a plant meets spares nothing', () => {
    for (let seed = 401; seed <= 420; seed++) {
      const plan = smallPlan(seed);
      // Cloth on the ground, below every leaf.
      expect(scorerOf(plan)(roof({ height: 0.05 }))).toBe(0);
    }
  });

  test('that no harmful ray meets spares nothing but what the sky it hides does, a hundredth of the harm at most', () => {
    const random = randomFrom(43);
    let missed = 0;
    for (let seed = 421; seed <= 440; seed++) {
      const targets = valueOf(targetsOf(smallPlan(seed)));
      const leaves = leafTables(targets);
      const pairs = harmPairsOf(targets, leaves, 1);
      const score = togetherScore(targets, pairs, leaves);
      for (let k = 0; k < 10; k++) {
        const cloth = roof({ center: [5 * random(), 4 * random()], length: 1, width: 0.8 });
        const [sheet] = clothSheets(cloth);
        const isMet = pairs.dx.some((dx, p) =>
          clothMeets(sheet, targets.points[pairs.views[pairs.view[p]].point].at, [dx, pairs.dy[p], pairs.dz[p]]),
        );
        if (isMet) continue;
        expect(Math.abs(score([cloth]).reduce((sum, each) => sum + each, 0))).toBeLessThan(0.01 * pairs.harm);
        missed++;
      }
    }
    expect(missed).toBeGreaterThan(20);
  });

  test('stands to the sunny side of a lone plant, and that side flips with the hemisphere', () => {
    const offsets = [33, -33].map((latitude) => {
      const result = valueOf(siteOf(lonePlant(latitude), ROOF));
      const [best] = result.options;
      expect(JSON.stringify(result)).not.toMatch(/(south|north)(ern)? side/i);
      return best.center[1] - 3.07;
    });
    expect(offsets[0]).toBeLessThan(-0.1);
    expect(offsets[1]).toBeGreaterThan(0.1);
  });
});

describe('the search', () => {
  test('gives the turned yard the turned answer (a quarter turn of everything, north too)', () => {
    for (let seed = 501; seed <= 504; seed++) {
      const plan = smallPlan(seed);
      const request: SiteRequest = { ...ROOF, turnStep: 30 };
      const before = mostOf(valueOf(siteOf(plan, request)));
      const after = mostOf(valueOf(siteOf(quarterTurned(plan), request)));
      expect(Math.abs((after?.spared ?? 0) - (before?.spared ?? 0))).toBeLessThan(1e-3 * (1 + (before?.spared ?? 0)));
    }
  });

  test(
    'gives the yard mirrored over the equator the mirrored answer (at the equinox, when the sun is as high on ' +
      'both sides)',
    () => {
      let found = 0;
      for (let seed = 511; seed <= 515; seed++) {
        const plan = atEquinox(smallPlan(seed));
        const mirrored = mirroredInPlan(plan);
        const before = mostOf(valueOf(siteOf(plan, ROOF)));
        const after = mostOf(valueOf(siteOf(mirrored, ROOF)));
        expect(after === undefined, `seed ${seed}`).toBe(before === undefined);
        if (!before || !after) continue;
        const [canopy] = before.features as Canopy[];
        const image = {
          ...canopy,
          center: [canopy.center[0], -canopy.center[1]] as const,
          turn: 180 - turnOf(canopy),
        };
        // The declination of the day is 0.35°, not 0: the two suns are 0.7° apart.
        expect(Math.abs(after.sparedShare - before.sparedShare), `seed ${seed}`).toBeLessThan(0.04);
        expect(scorerOf(mirrored)(image), `seed ${seed}`).toBeGreaterThan(0.95 * after.spared);
        found++;
      }
      expect(found).toBeGreaterThan(2);
    },
  );

  test('never spares a plant a smaller share of its harm in the best option for being worth more', () => {
    let changed = 0;
    for (let seed = 601; seed <= 609; seed++) {
      const plan = smallPlan(seed);
      const shareFor = (yard: Plan): number => {
        const best = mostOf(valueOf(siteOf(yard, ROOF)));
        const plant = best?.plants.find(({ id }) => id === 'plant-0');
        return plant?.before.harm ? 1 - (plant.after.harm ?? 0) / plant.before.harm : 0;
      };
      const dearer = (feature: Feature): Feature =>
        feature.id === 'plant-0' && feature.kind === 'plant' ? { ...feature, worth: 4 * worthOf(feature) } : feature;
      const [was, is] = [shareFor(plan), shareFor({ ...plan, features: plan.features.map(dearer) })];
      expect(is, `seed ${seed}`).toBeGreaterThanOrEqual(was - 2e-3);
      if (is > was + 0.01) changed++;
    }
    expect(changed).toBeGreaterThan(0);
  });

  test('has nothing to shade where no plant is harmed', () => {
    const plan = lonePlant(33);
    const hardy = valueOf(siteOf({ ...plan, plants: [{ ...TENDER, heatLimit: 64 }] }, ROOF));
    expect(hardy.options).toEqual([]);
    expect(hardy.sentence).toBe('Nothing to shade: no plant is harmed.');
    expect(valueOf(siteOf({ ...plan, features: [] }, ROOF)).options).toEqual([]);
  });

  test('proves the best one, and says how far the best two together may be off', () => {
    const [one, two] = [1, 2].map((count) => valueOf(siteOf(lonePlant(33), { ...ROOF, count })));
    expect([one.proven, two.proven]).toEqual([true, false]);
    expect(two.bound).toBeGreaterThanOrEqual((mostOf(two)?.spared ?? NaN) - 1e-3);
    expect(two.bound).toBeGreaterThanOrEqual(one.bound);
  });
});

function quarterTurned(plan: Plan): Plan {
  return moved(plan, (point) => turned(point, [0, 0], 90), upBearingOf(plan) - 90);
}

/** North and south change places, latitude and yard: a sun at azimuth A stands at 180° − A. */
function mirroredInPlan(plan: Plan): Plan {
  const image = moved(plan, ([x, y]) => [x, -y], -upBearingOf(plan));
  return { ...image, site: { ...image.site, latitude: -plan.site.latitude } };
}

function atEquinox(plan: Plan): Plan {
  return {
    ...plan,
    season: { ...plan.season, from: '03-20', to: '03-21', stepMinutes: 20 },
    climate: { ...plan.climate, months: plan.climate.months.map((month) => ({ ...month, month: 3 })) },
  };
}

function moved(plan: Plan, at: (point: PlanPoint) => PlanPoint, upBearing: number): Plan {
  const features = plan.features.map((feature): Feature => {
    if ('at' in feature) return { ...feature, at: at(feature.at) } as Feature;
    if ('path' in feature) return { ...feature, path: feature.path.map(at) } as Feature;
    if ('outline' in feature) return { ...feature, outline: feature.outline.map(at) } as Feature;
    return feature;
  });
  return { ...plan, site: { ...plan.site, upBearing, boundary: plan.site.boundary.map(at) }, features };
}
