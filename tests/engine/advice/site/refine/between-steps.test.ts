import { expect, test } from 'vitest';
import { clothArea } from '../../../../../engine/advice/compare/cost.ts';
import { candidatesOf } from '../../../../../engine/advice/site/choose.ts';
import { legsOf } from '../../../../../engine/advice/site/kinds/hung.ts';
import { layOut } from '../../../../../engine/advice/site/lay-out.ts';
import { bentFrom } from '../../../../../engine/advice/site/refine/bend.ts';
import { betweenSteps } from '../../../../../engine/advice/site/refine/between-steps.ts';
import { movesOf } from '../../../../../engine/advice/site/refine/moves.ts';
import { refined } from '../../../../../engine/advice/site/refine/refine.ts';
import { searchYard } from '../../../../../engine/advice/site/search-yard.ts';
import type { SiteRequest } from '../../../../../engine/advice/site/types.ts';
import { turnOf } from '../../../../../engine/plan/defaults.ts';
import { cleanPath, distance } from '../../../../../engine/plan/geometry/shapes.ts';
import type { Canopy, Cloth, Plan, Screen } from '../../../../../engine/plan/types.ts';
import { valueOf } from '../../../../parts/outcome.ts';
import { smallPlan } from '../small-plans.ts';

const ROOF: Canopy = {
  id: 'roof',
  kind: 'canopy',
  center: [3, 4],
  length: 2,
  width: 1.5,
  turn: 20,
  height: 2.2,
  density: 0.5,
};
const SCREEN: Screen = {
  id: 'screen',
  kind: 'screen',
  path: [
    [1, 1],
    [4, 2],
  ],
  bottom: 0.2,
  height: 2,
  density: 0.5,
};
const ANYWHERE = { sparedAtMost: () => Infinity, mayStand: () => true, mayWin: () => true };

function searched(plan: Plan, request: SiteRequest) {
  const laidOut = valueOf(layOut(plan, request, () => undefined));
  const lattice = candidatesOf(
    laidOut,
    searchYard(laidOut, () => undefined),
  );
  return { laidOut, lattice, near: betweenSteps(laidOut, lattice) };
}

test('a cloth climbs to a peak between the steps, to the centimetre and the degree that a hand can set out', () => {
  const peak = { x: 3.37, y: 4.21, turn: 31 };
  const hill = (cloth: Cloth) => {
    if (cloth.kind !== 'canopy') return 0;
    const [x, y] = cloth.center;
    return 100 - (x - peak.x) ** 2 - (y - peak.y) ** 2 - (turnOf(cloth) - peak.turn) ** 2 / 2000;
  };
  const { cloth, tried } = refined(ROOF, movesOf(ROOF, { height: false, form: false, units: 'metric' }), {
    spared: hill,
    ...ANYWHERE,
  });
  if (cloth.kind !== 'canopy') throw new Error('a roof stays one');
  expect(distance(cloth.center, [peak.x, peak.y])).toBeLessThan(0.11);
  expect(Math.abs(turnOf(cloth) - peak.turn)).toBeLessThanOrEqual(6);
  expect([cloth.length, cloth.width, cloth.height]).toEqual([2, 1.5, 2.2]);
  expect(tried).toBeLessThanOrEqual(140);
});

test('whatever its form becomes, a cloth never grows, and where its form and height were asked for they stay', () => {
  for (const cloth of [ROOF, SCREEN, ...bentFrom(SCREEN, 'metric')]) {
    for (const { steps, apply } of movesOf(cloth, { height: true, form: true, units: 'metric' }))
      for (const step of steps)
        for (const by of [step, -step]) {
          const next = apply(cloth, by);
          if (next !== null) expect(clothArea(next)).toBeLessThanOrEqual(clothArea(cloth) + 0.01);
        }
    const held = refined(cloth, movesOf(cloth, { height: false, form: false, units: 'metric' }), {
      spared: (one) => -Math.hypot(...(one.kind === 'canopy' ? one.center : one.path[0])),
      ...ANYWHERE,
    });
    expect(held.spared).toBeGreaterThan(-3);
    expect(clothArea(held.cloth)).toBeCloseTo(clothArea(cloth), 1);
    expect(held.cloth.height).toBe(cloth.height);
  }
});

test('who reads feet is never told to cut a part of an inch: heights and sides stay whole in 2 inches', () => {
  const inch = 0.0254;
  const roof = { ...ROOF, length: 96 * inch, width: 60 * inch, height: 84 * inch };
  const screen = { ...SCREEN, bottom: 0, height: 72 * inch };
  const isWhole = (metres: number): boolean => Math.abs(metres / inch / 2 - Math.round(metres / inch / 2)) < 1e-4;
  let forms = 0;
  for (const cloth of [roof, screen])
    for (const { steps, apply } of movesOf(cloth, { height: true, form: true, units: 'imperial' }))
      for (const step of steps.flatMap((by) => [by, -by])) {
        const next = apply(cloth, step);
        if (next === null) continue;
        forms++;
        expect(isWhole(next.height), `${next.height} m high`).toBe(true);
        if (next.kind === 'canopy') expect([next.length, next.width].map(isWhole)).toEqual([true, true]);
      }
  expect(forms).toBeGreaterThan(30);
  const path: Screen['path'] = [
    [0, 0],
    [130 * inch, 0],
  ];
  const legs = bentFrom({ ...screen, path }, 'imperial').flatMap(legsOf);
  expect(legs.length).toBe(24);
  for (const leg of legs) expect(Math.abs(leg / inch / 2 - Math.round(leg / inch / 2)), `${leg} m`).toBeLessThan(0.02);
});

test('a bent screen has the cloth of the straight one, on legs square to each other', () => {
  const bent = bentFrom(SCREEN, 'metric');
  expect(bent.length).toBe(12);
  for (const { path } of bent) {
    const [a, corner, b] = cleanPath(path);
    expect(distance(a, corner) + distance(corner, b)).toBeCloseTo(Math.hypot(3, 1), 2);
    const [p, q] = [a, b].map(([x, y]) => [x - corner[0], y - corner[1]]);
    expect(Math.abs(p[0] * q[0] + p[1] * q[1])).toBeLessThan(0.01);
  }
});

test(
  'what is found between the steps breaks no rule, costs no more and spares more (seeds 1 to 24)',
  { timeout: 300_000 },
  () => {
    const gains = { roof: [] as number[], 'roof with drops': [] as number[], screen: [] as number[], corner: 0 };
    for (let seed = 1; seed <= 24; seed++) {
      const kind = (['roof', 'screen', 'roof with drops'] as const)[seed % 3];
      const request: SiteRequest = {
        kinds: [kind],
        sizes: [{ length: 2, width: 1.5 }],
        heights: kind === 'screen' ? [1.8] : [2.2],
        densities: [0.5],
        maxDrops: 1,
      };
      const { laidOut, lattice, near } = searched(smallPlan(seed), request);
      const best = Math.max(0, ...lattice.map(({ spared }) => spared));
      for (const candidate of near.candidates.slice(lattice.length)) {
        const [cloth] = candidate.cloth;
        expect(laidOut.judges.objections(cloth), `seed ${seed}`).toEqual([]);
        expect(laidOut.judges.isTooDear(candidate.cloth)).toBe(false);
        expect(laidOut.judges.lateObjections(candidate.cloth)).toEqual([]);
        if (cloth.kind === 'screen' && cleanPath(cloth.path).length > 2) gains.corner++;
        else expect(candidate.cost).toBeLessThanOrEqual(Math.max(...lattice.map(({ cost }) => cost)) + 1e-6);
      }
      const found = Math.max(0, ...near.candidates.map(({ spared }) => spared));
      expect(found).toBeGreaterThanOrEqual(best);
      if (best > 1) gains[kind].push(found / best - 1);
    }
    for (const kind of ['roof', 'roof with drops', 'screen'] as const)
      expect(gains[kind].reduce((sum, gain) => sum + gain, 0) / gains[kind].length).toBeGreaterThan(0.01);
    expect(gains.corner).toBeGreaterThan(2);
  },
);
