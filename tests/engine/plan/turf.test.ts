import { expect, it } from 'vitest';
import { area } from '../../../engine/plan/geometry.ts';
import { difference, intersect, kinks, pointInRegion, regionArea, union } from '../../../engine/plan/turf.ts';
import type { PlanPoint } from '../../../engine/plan/types.ts';

const yard: PlanPoint[] = [[0, 0], [12, 0], [12, 9], [0, 9]];
const shed: PlanPoint[] = [[10, 7], [10, 11], [15, 11], [15, 7]];
const pond: PlanPoint[] = [[3, 3], [5, 3], [5, 4], [3, 4]];

it('areas are square metres of a flat plan: what two shapes cover is their sum less what they share', () => {
  const shared = regionArea(intersect(yard, shed));
  expect(shared).toBeCloseTo(2 * 2, 9);
  expect(regionArea(union([yard, shed]))).toBeCloseTo(area(yard) + area(shed) - shared, 9);
  expect(regionArea(difference(yard, [shed]))).toBeCloseTo(area(yard) - shared, 9);
});

it('a hole is taken off, and a point in it is not in the region', () => {
  const [region] = difference(yard, [pond]);
  expect(region).toHaveLength(2);
  expect(regionArea([region])).toBeCloseTo(108 - 2, 9);
  expect(pointInRegion([4, 3.5], region)).toBe(false);
  expect(pointInRegion([1, 1], region)).toBe(true);
});

it('shapes apart share nothing, and nothing joined is nothing', () => {
  expect(intersect(pond, shed)).toEqual([]);
  expect(union([])).toEqual([]);
  expect(regionArea(union([pond, shed]))).toBeCloseTo(2 + 20, 9);
  expect(regionArea(union([pond]))).toBeCloseTo(2, 12);
  expect(regionArea(difference(pond, []))).toBeCloseTo(2, 12);
});

it('a bow-tie has one kink', () => {
  expect(kinks([[0, 0], [4, 3], [4, 0], [0, 3]])).toEqual([[2, 1.5]]);
  expect(kinks(yard)).toEqual([]);
});
