import { expect, test } from 'vitest';
import { askedOf } from '../../../../engine/advice/site/request.ts';
import { METRES_PER_FOOT } from '../../../../engine/plan/units/per-unit.ts';
import { formatLength } from '../../../../engine/plan/units/shown.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { smallPlan } from './small-plans.ts';

test('who reads feet is offered cloth of whole feet, and heights of half ones', () => {
  const sizes = [3, 6, 10].map((feet) => ({ length: feet * METRES_PER_FOOT, width: 3 * METRES_PER_FOOT }));
  const { lattice } = valueOf(askedOf(smallPlan(4), { units: 'imperial', sizes }));
  const told = (metres: number): string => formatLength(metres, 'imperial');
  expect(lattice.screen.cells.map((cells) => told(cells * lattice.step))).toEqual(['3 ft', '6 ft', '10 ft']);
  expect(lattice.screen.tops.map(told)).toEqual(['4 ft', '5 ft', '6 ft', '7 ft']);
  expect(lattice.roof.heights.map(told)).toEqual(['7 ft', '7 ft 6 in', '8 ft', '9 ft', '9 ft 6 in']);
  expect(lattice.drops.depths.map(told)).toEqual(['2 ft', '4 ft']);
  expect(valueOf(askedOf(smallPlan(4), { sizes })).lattice.step).toBe(0.25);
});
