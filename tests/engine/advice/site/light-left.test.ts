import { expect, test } from 'vitest';
import { lightGuard } from '../../../../engine/advice/site/light-left.ts';
import { plantStandings } from '../../../../engine/advice/site/plant-states.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Canopy } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../load/yard-plan.ts';

test('the guard calls dark whom the yard cast anew with the cloth calls dark, by daily light and by hours of sun', () => {
  const plan = demoPlan('lane');
  const guard = valueOf(lightGuard(plan));
  const roof = (center: [number, number], size: number, density: number): Canopy => ({ id: 'tried', kind: 'canopy', center, length: size, width: size, height: 2, density });
  const seen = new Set<string>();
  for (const cloth of [roof([7.5, 9.5], 4, 0.8), roof([13.2, 6], 3, 0.9), roof([4.5, 15], 4, 0.5), roof([15, 10], 4, 0.9)]) {
    const dark = valueOf(plantStandings({ ...plan, features: [...plan.features, cloth] })).filter(({ tooDark }) => tooDark).map(({ id }) => id);
    expect([...guard.dark([cloth])].sort()).toEqual(dark.toSorted());
    dark.forEach((id) => seen.add(id));
  }
  expect(seen.size).toBeGreaterThan(1);
});
