import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { shareCopy } from '../../../../engine/advice/hand-outs/share-copy.ts';
import { plantLoadsOf } from '../../../../engine/load/load-of.ts';
import { checkPlan } from '../../../../engine/plan/check/check.ts';
import { DEMO_NAMES, demoPlan } from '../../../../engine/plan/demos/index.ts';
import { startNextYear } from '../../../../engine/plan/edit/plan.ts';
import { parsePlan } from '../../../../engine/plan/file/parse.ts';
import { planText } from '../../../../engine/plan/file/serialize.ts';
import type { Plan } from '../../../../engine/plan/types.ts';

/** A plan with every key of the file once. */
const parsed = parsePlan(readFileSync(new URL('../../../plans/example.plan.json', import.meta.url)));
if (!parsed.ok) throw new Error(parsed.problems[0].message);
const whole = parsed.plan;

/** Every text anywhere in a value that is not a key. */
function textsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : [];
}

describe('a copy to share', () => {
  it.each([
    ...DEMO_NAMES.map((name): [string, Plan] => [name, demoPlan(name)]),
    ['one of every key', startNextYear(whole)] as [string, Plan],
  ])('of %s is a sound plan that opens again', (_, plan) => {
    const { plan: copy } = shareCopy(plan);
    expect(checkPlan(copy).filter(({ severity }) => severity === 'error')).toEqual([]);
    const again = parsePlan(planText(copy));
    expect(again.ok && again.plan).toEqual(copy);
  });

  it('has its place to 0.1° and no nearer, in earlier years too', () => {
    const { plan: copy } = shareCopy(
      startNextYear({ ...whole, site: { ...whole.site, latitude: 37.8763, longitude: -4.7791 } }),
    );
    for (const each of [copy, ...(copy.past ?? []).map(({ plan }) => plan)])
      expect([each.site.latitude, each.site.longitude]).toEqual([37.9, -4.8]);
  });

  it('has no picture, no sentence and no word of the person’s own', () => {
    const secret = 'Zephyrine';
    const marked = JSON.parse(
      JSON.stringify(
        { ...startNextYear(whole), setAside: [{ from: 'features', value: secret }], phone: 5551234 },
        (key, value: unknown) =>
          ['name', 'text', 'note', 'source', 'botanical', 'colour', 'image'].includes(key) && typeof value === 'string'
            ? `${secret} ${value}`
            : value,
      ),
    ) as Plan;
    const { plan: copy } = shareCopy(marked);
    expect(JSON.stringify(copy)).not.toMatch(/Zephyrine|5551234|data:image/);
    expect(textsIn(copy).filter((text) => text.includes(' ') && !/^[A-Z]/.test(text))).toEqual([]);
  });

  it('renames ids alike wherever they stand, so that the yard still works out', () => {
    const courtyard = demoPlan('courtyard');
    const { plan: copy } = shareCopy(courtyard);
    expect(JSON.stringify(copy)).not.toContain('lemon-pot');
    const exact = {
      ...copy,
      site: {
        ...copy.site,
        latitude: courtyard.site.latitude,
        longitude: courtyard.site.longitude,
        elevation: courtyard.site.elevation,
      },
    };
    const [mine, theirs] = [courtyard, exact].map((plan) => {
      const loads = plantLoadsOf(plan, { period: { kind: 'heatwave' } });
      return loads.ok
        ? loads.value.map(({ scorchDose, verdict, sunHours }) => ({ scorchDose, verdict, sunHours }))
        : [];
    });
    expect(theirs).toEqual(mine);
    const ids = new Set(copy.features.map(({ id }) => id));
    for (const option of copy.options ?? [])
      for (const id of Object.keys(option.moves ?? {})) expect(ids).toContain(id);
  });

  it('says what leaves and what does not', () => {
    const { leaves, removed } = shareCopy(whole);
    expect(leaves[0]).toMatch(/nearest 0\.1°/);
    expect(removed).toContain('The picture to trace over.');
    for (const line of [...leaves, ...removed]) expect(line).toMatch(/^[A-Z0-9].*\.$/);
  });
});
