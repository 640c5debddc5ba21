import { expect, test } from 'vitest';
import { loadOf, plantLoadsOf } from '../../../engine/load/load-of.ts';
import { demoPlan } from '../../../engine/plan/demos/index.ts';
import type { Period } from '../../../engine/sun/samples.ts';
import { valueOf } from '../../parts/outcome.ts';

test.each(['courtyard', 'lane'] as const)('whatever period is shown, each verdict in the %s is the same', (name) => {
  const plan = demoPlan(name);
  const verdicts = (period: Period) =>
    valueOf(loadOf(plan, { period, cell: 2 })).plants.map(({ id, verdict }) => `${id}: ${verdict}`);
  const bySeason = verdicts({ kind: 'season' });
  // The courtyard's herbs have light enough on the heatwave day, whose sky is clear, but not through the season.
  if (name === 'courtyard') expect(bySeason).toContain('herbs: too dark');
  const periods: readonly Period[] = [
    { kind: 'heatwave' },
    { kind: 'day', date: plan.season.from },
    { kind: 'day', date: plan.season.to },
  ];
  for (const period of periods) {
    expect(verdicts(period)).toEqual(bySeason);
    expect(valueOf(plantLoadsOf(plan, { period })).map(({ id, verdict }) => `${id}: ${verdict}`)).toEqual(bySeason);
  }
});
