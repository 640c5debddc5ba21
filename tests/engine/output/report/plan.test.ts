import { expect, test } from 'vitest';
import { planPicture } from '../../../../engine/output/report/plan.ts';
import type { Feature, PlanPoint } from '../../../../engine/plan/types.ts';
import { wall } from '../../../parts/drawn.ts';
import { emptyPlan } from '../../cast/random-plans.ts';

const CORNERS: readonly PlanPoint[] = [
  [1, 1],
  [4, 1],
  [4, 3],
  [1, 3],
];

const pathsOf = (...features: Feature[]): string[] =>
  [...planPicture(emptyPlan(features), null, 'metric').matchAll(/<path d="([^"]*)"/g)].map(([, d]) => d);

/** The path that one thing more brings. */
function pathOf(feature: Feature): string | undefined {
  const before = pathsOf();
  return pathsOf(feature).find((d) => !before.includes(d));
}

test('what has an outline is drawn all the way round, what has a path only along it', () => {
  const round = /^M[\d.-]+ [\d.-]+(L[\d.-]+ [\d.-]+){3}Z$/;
  expect(pathsOf()[0]).toMatch(round);
  expect(pathOf({ id: 'a', kind: 'building', outline: CORNERS, height: 3 })).toMatch(round);
  expect(pathOf({ id: 'a', kind: 'bed', outline: CORNERS, plantHeight: 0.4 })).toMatch(round);
  const along = /^M[\d.-]+ [\d.-]+(L[\d.-]+ [\d.-]+){3}$/;
  expect(pathOf(wall('a', CORNERS))).toMatch(along);
  expect(pathOf({ id: 'a', kind: 'screen', path: CORNERS, height: 2, density: 0.5 })).toMatch(along);
});
