import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { hiddenHeightAt, sightLinesOf } from '../../../../engine/advice/sight/hidden-height.ts';
import { eyeReaches, hiddenHeights } from '../../../../engine/advice/sight/hidden-heights.ts';
import { createUnseen, seenFrom, topEdge } from '../../../../engine/advice/sight/seen.ts';
import { seenWords } from '../../../../engine/advice/sight/words.ts';
import { hidingOf } from '../../../../engine/advice/site/rules/hiding.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Canopy, Cloth, Eye, Feature, Plan, Screen } from '../../../../engine/plan/types.ts';
import { randomFrom, drawnBetween } from '../../../parts/random.ts';
import { yardPlan } from '../../load/yard-plan.ts';

/** To the millimetre, and even: doubles drawn by their bits are nearly all next to nothing. */
const between = (min: number, max: number) => fc.integer({ min: 1000 * min, max: 1000 * max }).map((n) => n / 1000);

const roofs = fc.record<Canopy>({
  id: fc.constant('roof'),
  kind: fc.constant('canopy'),
  center: fc.tuple(between(-9, 9), between(-9, 9)),
  // Whole quarters of a metre are where a rounding of the edge's length changes how many points it takes.
  length: fc.integer({ min: 1, max: 24 }).map((n) => n / 4),
  width: fc.integer({ min: 1, max: 24 }).map((n) => n / 4),
  turn: between(0, 360),
  height: between(1, 4),
  rise: between(-0.5, 0.5),
  density: fc.constant(0.5),
});

it('every roof is looked at all round, whatever its size and turn', () => {
  fc.assert(
    fc.property(roofs, (roof) => {
      const points = topEdge(roof);
      const corners = points.filter(
        ([x, y]) =>
          Math.abs(Math.hypot(x - roof.center[0], y - roof.center[1]) - Math.hypot(roof.length, roof.width) / 2) < 1e-6,
      );
      // The corner it begins at is the one it ends at.
      expect(corners).toHaveLength(5);
      const steps = points.slice(1).map(([x, y], k) => Math.hypot(x - points[k][0], y - points[k][1]));
      expect(Math.min(...steps)).toBeGreaterThan(0.12);
      expect(Math.max(...steps)).toBeLessThan(0.25 + 1e-6);
    }),
    { seed: 20260721, numRuns: 2000 },
  );
});

it('who sees it can be told of every roof', () => {
  const plan = demoPlan('lane');
  fc.assert(
    fc.property(roofs, (roof) => {
      for (const { shows, hidden, from, line } of seenFrom(plan, [roof])) {
        expect(shows > 0).toBe(!hidden);
        expect(from).toBeLessThanOrEqual(line + 1e-9);
      }
    }),
    { seed: 20260722, numRuns: 200 },
  );
});

/** A yard of 12 × 8 m with fences that have gaps, a shed, and one or two onlookers, on lines or at places. */
function seenYard(random: () => number): Plan {
  const within = drawnBetween(random);
  const gap = within(1, 7);
  const fence = (id: string, from: number, to: number): Feature => ({
    id,
    kind: 'wall',
    path: [
      [0, from],
      [0, to],
    ],
    height: within(1.2, 2.4),
    thickness: 0.1,
  });
  const [x, y] = [within(2, 9), within(1, 6)];
  const shed: Feature = {
    id: 'shed',
    kind: 'building',
    outline: [
      [x, y],
      [x + 1.5, y],
      [x + 1.5, y + 1],
      [x, y + 1],
    ],
    height: within(1.5, 3),
  };
  const eye = (id: string, far: number, height: number): Eye => ({
    id,
    kind: 'eye',
    path:
      random() < 0.6
        ? [
            [-far, within(-3, 3)],
            [-far, within(4, 9)],
          ]
        : [[-far, within(0, 8)]],
    height,
  });
  const eyes = [eye('lane', within(1, 5), within(1.4, 1.8)), eye('window', within(2, 9), within(1.2, 5))];
  const plant: Feature = { id: 'pot', kind: 'plant', at: [6, 4], height: 1, spread: 0.6, plant: 'lemon' };
  return yardPlan([
    fence('f', -2, gap),
    fence('g', gap + within(0, 1.2), 10),
    shed,
    plant,
    ...eyes.slice(random() < 0.5 ? 1 : 0),
  ]);
}

function someCloth(random: () => number): Cloth {
  const within = drawnBetween(random);
  const [x, y, height] = [within(1, 10), within(1, 7), within(1.2, 2.8)];
  return random() < 0.5
    ? {
        id: 'c',
        kind: 'canopy',
        center: [x, y],
        length: within(1, 4),
        width: within(1, 3),
        turn: within(0, 180),
        height,
        density: 0.5,
      }
    : {
        id: 'c',
        kind: 'screen',
        path: [
          [x, y],
          [x + within(-2, 2), y + within(0.5, 2)],
        ],
        height,
        density: 0.5,
      };
}

it('the search, the options, the map and the words never disagree on who sees a cloth (200 random yards)', () => {
  const random = randomFrom(77);
  const seen = { hidden: 0, little: 0, plainly: 0 };
  for (let n = 0; n < 200; n++) {
    const plan = seenYard(random);
    const cloth = someCloth(random);
    const eyes = plan.features.filter((feature): feature is Eye => feature.kind === 'eye');
    const options = seenFrom(plan, [cloth]);
    expect(options.map(({ eye }) => eye)).toEqual(eyes.map(({ id }) => id));
    for (const { id, path } of eyes) {
      const option = options.find((one) => one.eye === id)!;
      const search = hidingOf(plan, [id]);
      const [top] = hiddenHeights(plan, id, [cloth]).tops;
      const words = seenWords(plan, option, 'metric');
      expect(search.isHidden(cloth), `yard ${n}`).toBe(option.hidden);
      expect(search.seenFrom(cloth)).toEqual([option]);
      expect(search.isGlimpsed(cloth)).toBe(
        option.shows <= 0.2 || (option.line > 0 && option.from <= 0.1 * option.line),
      );
      // A centimetre more or less than what is shown as nothing.
      if (option.hidden) expect(top.height - top.hidden).toBeLessThanOrEqual(0.005);
      else expect(Math.min(top.height, top.height - top.hidden)).toBeCloseTo(option.shows, 9);
      // What the map says of every place of its edge is what it is judged by.
      const sight = sightLinesOf({
        ...plan,
        features: plan.features.filter((one) => one.kind !== 'eye' || one.id === id),
      });
      expect(topEdge(cloth).every(([x, y, z]) => hiddenHeightAt(sight, [x, y]).height >= z - 0.005)).toBe(
        option.hidden,
      );
      expect(option.from > 0).toBe(!option.hidden && path.length > 1);
      expect(/along/.test(words)).toBe(option.line > 0 && option.from < option.line - 0.05);
      if (option.hidden) seen.hidden++;
      else if (search.isGlimpsed(cloth)) seen.little++;
      else seen.plainly++;
    }
    const all = hidingOf(
      plan,
      eyes.map(({ id }) => id),
    );
    expect(all.isHidden(cloth)).toBe(options.every(({ hidden }) => hidden));
    expect(createUnseen(sightLinesOf(plan))(cloth)).toBe(all.isHidden(cloth));
  }
  for (const count of Object.values(seen)) expect(count).toBeGreaterThan(10);
});

it('how much of a line sees it: by the sight line past the end of a wall', () => {
  const wall: Feature = {
    id: 'wall',
    kind: 'wall',
    path: [
      [0, -30],
      [0, 4],
    ],
    height: 3,
    thickness: 0.02,
  };
  const lane: Eye = {
    id: 'lane',
    kind: 'eye',
    path: [
      [-4, 0],
      [-4, 20],
    ],
    height: 1.6,
  };
  // A post-thin screen 2 m behind the wall at y = 1: seen past the wall's end from where the line from it meets y = 10.
  const cloth: Screen = {
    id: 'c',
    kind: 'screen',
    path: [
      [2, 1],
      [2, 1.05],
    ],
    height: 2,
    density: 0.5,
  };
  const [seen] = seenFrom(yardPlan([wall, lane]), [cloth]);
  expect(seen.line).toBe(20);
  // (4 − 1)/2 a metre, 6 m on: from y = 10 to 20, told by the metre.
  expect(Math.abs(seen.from - 10)).toBeLessThanOrEqual(0.75);
});

it('whether an onlooker binds hangs on eyes, walls and ground: not on plants, nor on what is asked for', () => {
  const random = randomFrom(78);
  for (let n = 0; n < 40; n++) {
    const plan = seenYard(random);
    const moved = plan.features.map((feature): Feature =>
      feature.kind === 'plant' ? { ...feature, at: [1 + 10 * random(), 1 + 6 * random()], height: 2 } : feature,
    );
    expect(eyeReaches({ ...plan, features: moved })).toEqual(eyeReaches(plan));
    expect(hidingOf({ ...plan, features: moved }).from).toEqual(hidingOf(plan).from);
  }
});
