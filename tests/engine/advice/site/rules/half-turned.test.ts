import { expect, test } from 'vitest';
import { hungOf } from '../../../../../engine/advice/site/kinds/hung.ts';
import { frameFitter } from '../../../../../engine/frame/fit-frame.ts';
import { demoPlan } from '../../../../../engine/plan/demos/index.ts';
import type { Canopy, DropSide } from '../../../../../engine/plan/types.ts';

/** A roof with drops, 3.5 m long: in the open its frame is the same the other way round. */
function roofWith(sides: readonly DropSide[], width: number): Canopy {
  const drops = sides.map((side) => ({ side, depth: 0.8, density: 0.5 }));
  return { id: 'tried', kind: 'canopy', center: [3, 3], length: 3.5, width, height: 2.2, density: 0.5, drops };
}

test.each([
  [['front'], ['back']],
  [['left'], ['right']],
  [
    ['front', 'left'],
    ['back', 'right'],
  ],
  [
    ['back', 'left'],
    ['front', 'right'],
  ],
] as const)('a roof with drops %s costs as much as one with drops %s, and is priced once', (sides, others) => {
  for (const name of ['courtyard', 'lane'] as const) {
    const fit = frameFitter({ ...demoPlan(name), features: [] }, { soil: 'garden' });
    for (const width of [1.5, 2.5, 3.5]) {
      const [one, other] = [roofWith(sides, width), roofWith(others, width)];
      expect(fit(one)?.cost).toBe(fit(other)?.cost);
      expect(fit(one)?.cloth.frame).toEqual(fit(other)?.cloth.frame);
      expect(hungOf(one).form()).toBe(hungOf(other).form());
    }
  }
  const [deep, wide] = [roofWith(['front'], 2.5), roofWith(['left'], 2.5)];
  expect(hungOf(deep).form()).not.toBe(hungOf(wide).form());
});
