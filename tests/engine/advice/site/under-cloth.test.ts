import { expect, test } from 'vitest';
import { lightGuard } from '../../../../engine/advice/site/rules/light-left.ts';
import { standingsOf } from '../../../../engine/advice/site/scoring/plant-states.ts';
import { plantLoadsOf } from '../../../../engine/load/load-of.ts';
import { harmOf } from '../../../../engine/load/verdict/harm-of.ts';
import { yardOf } from '../../../../engine/load/yard.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Canopy } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../../parts/outcome.ts';

test('the guard calls dark whom the yard cast anew with the cloth calls dark', () => {
  const plan = demoPlan('lane');
  const yard = valueOf(yardOf(plan, { kind: 'season' }));
  const guard = lightGuard(yard, false);
  const standings = valueOf(standingsOf(yard));
  const roof = (center: [number, number], size: number, density: number): Canopy => ({
    id: 'tried',
    kind: 'canopy',
    center,
    length: size,
    width: size,
    height: 2,
    density,
  });
  const seen = new Set<string>();
  for (const cloth of [
    roof([7.5, 9.5], 4, 0.8),
    roof([13.2, 6], 3, 0.9),
    roof([4.5, 15], 4, 0.5),
    roof([15, 10], 4, 0.9),
  ]) {
    const dark = standings
      .under([cloth])
      .filter(({ tooDark }) => tooDark)
      .map(({ id }) => id);
    expect([...guard.dark([cloth])].sort()).toEqual(dark.toSorted());
    dark.forEach((id) => seen.add(id));
  }
  expect(seen.size).toBeGreaterThan(1);
});

test('plants stand under cloth exactly as the yard with that cloth in the plan says', () => {
  const plan = demoPlan('courtyard');
  const cloth: Canopy = {
    id: 'tried',
    kind: 'canopy',
    center: [9.3, 6.1],
    length: 2.5,
    width: 2,
    turn: 20,
    height: 2.2,
    density: 0.5,
    drops: [{ side: 'left', depth: 1, density: 0.5 }],
  };
  const built = { ...plan, features: [...plan.features, cloth] };
  const [loads, harms] = [valueOf(plantLoadsOf(built)), valueOf(harmOf(built))];
  const standings = valueOf(standingsOf(valueOf(yardOf(plan, { kind: 'season' })))).under([cloth]);
  expect(
    standings.map(({ id, state: { sunHours, skyView, scorchDose, verdict, harm } }) => ({
      id,
      sunHours,
      skyView,
      scorchDose,
      verdict,
      harm,
    })),
  ).toEqual(
    loads.map(({ id, sunHours, skyView, scorchDose, verdict }) => ({
      id,
      sunHours,
      skyView,
      scorchDose,
      verdict,
      harm: harms.find((one) => one.id === id)?.harm ?? null,
    })),
  );
});
