import { expect, test } from 'vitest';
import { loadOf } from '../../../engine/load/load-of.ts';
import { demoPlan } from '../../../engine/plan/demos/index.ts';
import type { Period } from '../../../engine/sun/samples.ts';
import { valueOf } from './yard-plan.ts';

const plan = demoPlan('courtyard');
const verdicts = (period: Period, darkBySeason: boolean) =>
  valueOf(loadOf(plan, { period, cell: 2, darkBySeason })).plants.map(({ id, verdict }) => `${id}: ${verdict}`);

test('whatever period a map shows, what is too dark for the season is too dark', () => {
  const bySeason = verdicts({ kind: 'season' }, true);
  expect(bySeason).toContain('herbs: too dark');
  expect(verdicts({ kind: 'heatwave' }, true)).toEqual(bySeason);
  // By that day's light alone they are not.
  expect(verdicts({ kind: 'heatwave' }, false)).not.toEqual(bySeason);
});
