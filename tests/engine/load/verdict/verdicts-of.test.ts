import { expect, test } from 'vitest';
import { plantLoadsOf } from '../../../../engine/load/load-of.ts';
import { verdictsOf } from '../../../../engine/load/verdict/verdicts-of.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Plan } from '../../../../engine/plan/types.ts';
import { hardPlan } from '../../../hard-plans.ts';
import { valueOf } from '../../../parts/outcome.ts';

const SHADY: Plan = hardPlan('small', 9004);
const YARDS: Readonly<Record<string, Plan>> = {
  'the courtyard': demoPlan('courtyard'),
  'the lane': demoPlan('lane'),
  'a small yard': SHADY,
  'the same under a roof that leaves nobody light enough': {
    ...SHADY,
    features: [
      ...SHADY.features,
      { id: 'lid', kind: 'canopy', center: [5, 4], length: 20, width: 20, height: 3, density: 0.97 },
    ],
  },
};

test.each(Object.entries(YARDS))('in %s the verdicts alone are those that loads tell', (_, plan) => {
  const told = valueOf(plantLoadsOf(plan)).flatMap(({ id, verdict }) =>
    verdict === null ? [] : [[id, verdict] as const],
  );
  expect(valueOf(verdictsOf(structuredClone(plan)))).toEqual(new Map(told));
  expect(told.length).toBeGreaterThan(1);
});

test('the yards hold what burns, what is too dark and what is neither', () => {
  const verdicts = new Set(Object.values(YARDS).flatMap((plan) => [...valueOf(verdictsOf(plan)).values()]));
  expect([...verdicts]).toEqual(expect.arrayContaining(['will burn', 'at risk', 'too dark']));
});
