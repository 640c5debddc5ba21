import { expect, test } from 'vitest';
import { askedOf } from '../../../../engine/advice/site/request.ts';
import { titleOf } from '../../../../engine/advice/site/words.ts';
import type { Screen } from '../../../../engine/plan/types.ts';
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

test('a screen with a corner is told by both its legs, which are what is cut', () => {
  const foot = METRES_PER_FOOT;
  const path: Screen['path'] = [
    [0, 0],
    [3 * foot, 0],
    [3 * foot, 10 * foot],
  ];
  const screen: Screen = { id: 's', kind: 'screen', path, height: 6 * foot, density: 0.5 };
  const sized = { kind: 'screen', length: 13 * foot, width: 0, height: 6 * foot, drops: [], cautions: [] } as const;
  expect(titleOf({ ...sized, features: [screen] }, 'imperial')).toBe(
    'Screen with a corner, 3 ft and 10 ft long, 6 ft high',
  );
  const straight = { ...screen, path: [path[0], [13 * foot, 0]] } as const;
  expect(titleOf({ ...sized, features: [straight] }, 'imperial')).toBe('Screen 13 ft long, 6 ft high');
});
