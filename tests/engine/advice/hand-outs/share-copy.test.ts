import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { shareCopy } from '../../../../engine/advice/hand-outs/share-copy.ts';
import { plantLoadsOf } from '../../../../engine/load/load-of.ts';
import { checkPlan, planErrors } from '../../../../engine/plan/check/check.ts';
import { DEMO_NAMES, demoPlan } from '../../../../engine/plan/demos/index.ts';
import { startNextYear } from '../../../../engine/plan/edit/plan.ts';
import { parsePlan } from '../../../../engine/plan/file/parse.ts';
import { planText } from '../../../../engine/plan/file/serialize.ts';
import type { Canopy, Plan } from '../../../../engine/plan/types.ts';
import { mustBeOk } from '../../../parts/outcome.ts';

/** A plan with every key of the file once. */
const parsed = parsePlan(readFileSync(new URL('../../../plans/example.plan.json', import.meta.url)));
mustBeOk(parsed);
const whole = parsed.plan;

/** Every text anywhere in a value that is not a key. */
function textsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : [];
}

/** A value with a mark in place of one of its texts, or as a key of one of its objects: one copy each. */
function markedEverywhere(value: unknown, mark: string): unknown[] {
  if (typeof value === 'string') return [mark];
  if (typeof value !== 'object' || value === null) return [];
  if (Array.isArray(value))
    return value.flatMap((item, index) => markedEverywhere(item, mark).map((marked) => value.with(index, marked)));
  const within = Object.entries(value).flatMap(([key, part]) =>
    markedEverywhere(part, mark).map((marked) => ({ ...value, [key]: marked })),
  );
  const [first] = Object.values(value);
  return [...within, { ...value, [mark]: 1 }, { ...value, [mark]: mark }, { ...value, [mark]: first as unknown }];
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

  it('lets no text through that any key takes, and no key of anybody’s own', () => {
    const secret = 'Zephyrine';
    let taken = 0;
    for (const marked of markedEverywhere(startNextYear(whole), secret)) {
      if (planErrors(marked).length > 0) continue;
      taken++;
      expect(JSON.stringify(shareCopy(marked as Plan).plan)).not.toContain(secret);
    }
    expect(taken).toBeGreaterThan(120);
  });

  it('keeps the words that the program itself acts on', () => {
    const tube = 'steel-42';
    const stock = { currency: 'EUR', prices: { clip: 0.7, [tube]: 31 } };
    const features = demoPlan('courtyard').features;
    const roof: Canopy = {
      kind: 'canopy',
      id: 'roof',
      center: [4, 4],
      height: 2.6,
      length: 2,
      width: 2,
      density: 0.5,
      frame: { tube, anchor: 'ballast', soil: 'paving' },
    };
    const { plan: copy } = shareCopy({ ...demoPlan('courtyard'), features: [...features, roof], stock });
    expect(copy.stock).toEqual(stock);
    expect(copy.features.at(-1)).toMatchObject({ frame: roof.frame });
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
