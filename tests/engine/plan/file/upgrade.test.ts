import { describe, expect, it } from 'vitest';
import { upgradePlan } from '../../../../engine/plan/file/upgrade.ts';
import type { UpgradeSteps } from '../../../../engine/plan/file/upgrade.ts';
import { PLAN_FORMAT, PLAN_VERSION } from '../../../../engine/plan/schema/plan.ts';

const steps: UpgradeSteps = {
  1: ({ title, ...plan }) => ({ ...plan, name: title }),
  2: (plan) => ({ ...plan, level: true }),
};

describe('versions', () => {
  it('a plan of this version passes through untouched', () => {
    const plan = { format: PLAN_FORMAT, version: PLAN_VERSION, extra: [1] };
    expect(upgradePlan(plan)).toEqual({ ok: true, value: plan });
  });

  it('an old plan climbs every step between, and its frozen years with it', () => {
    const old = {
      format: PLAN_FORMAT,
      version: 1,
      title: 'Yard',
      past: [{ year: 2024, plan: { format: PLAN_FORMAT, version: 2, name: 'Then' } }],
    };
    expect(upgradePlan(old, steps, 3)).toEqual({
      ok: true,
      value: {
        format: PLAN_FORMAT,
        version: 3,
        name: 'Yard',
        level: true,
        past: [{ year: 2024, plan: { format: PLAN_FORMAT, version: 3, name: 'Then', level: true } }],
      },
    });
  });

  it.each([
    [
      { format: PLAN_FORMAT, version: 4 },
      '/version',
      'This plan is of version 4, written by a newer program; this one reads versions up to 3.',
    ],
    [
      { format: PLAN_FORMAT, version: 1.5 },
      '/version',
      'The version of a plan is a whole number from 1 on; here it is 1.5.',
    ],
    [
      { format: PLAN_FORMAT, version: '1' },
      '/version',
      'The version of a plan is a whole number from 1 on; here it is "1".',
    ],
    [{ version: 1 }, '/format', 'This is not a plan file: its format is missing, and it should be "shadewright-plan".'],
    [null, '', 'A plan file holds one object with keys, but this one holds null.'],
  ])('%j is refused', (value, pointer, message) => {
    expect(upgradePlan(value, steps, 3)).toEqual({ ok: false, problems: [{ pointer, message, severity: 'error' }] });
  });

  it('a frozen year that is too new is left for the check to name', () => {
    const plan = { format: PLAN_FORMAT, version: 3, past: [{ year: 2024, plan: { format: PLAN_FORMAT, version: 9 } }] };
    expect(upgradePlan(plan, steps, 3)).toEqual({ ok: true, value: plan });
  });
});
