import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { courtyard as YARD } from '../../../engine/plan/demos/courtyard.ts';
import type { Plan } from '../../../engine/plan/types.ts';
import { asBefore } from '../../../web/worker/as-before.ts';

const sent = (plan: Plan): Plan => structuredClone(plan);

describe('a yard that is sent again', () => {
  test('unchanged it is the very yard of the time before', () => {
    const before = sent(YARD);
    expect(asBefore(sent(YARD), before)).toBe(before);
  });

  test('with one thing moved all others are the very things, wherever they stand in the list', () => {
    const before = sent(YARD);
    const lemon = before.features.findIndex(({ kind }) => kind === 'plant');
    const [first, ...others] = before.features.toSpliced(lemon, 1, {
      ...before.features[lemon],
      name: 'Moved',
    } as Plan['features'][number]);
    const now = asBefore(sent({ ...before, features: [...others.toReversed(), first] }), before);
    const byId = new Map(before.features.map((feature) => [feature.id, feature]));
    const isOld = (feature: Plan['features'][number]) => byId.get(feature.id) === feature;
    expect(now.features.filter((feature) => !isOld(feature))).toEqual([{ ...before.features[lemon], name: 'Moved' }]);
    expect(now.site).toBe(before.site);
    expect(now.climate).toBe(before.climate);
  });

  test('numbers of a weather file are the same array only where all of them are', () => {
    const before = { hours: Float64Array.of(1, 2, 3) };
    expect(asBefore({ hours: Float64Array.of(1, 2, 3) }, before)).toBe(before);
    expect(asBefore({ hours: Float64Array.of(1, 2, 4) }, before).hours).toEqual(Float64Array.of(1, 2, 4));
  });

  test('whatever came before, it says what was sent, and what came before still says what it said', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (now, before) => {
        const was = structuredClone(before);
        expect(asBefore(structuredClone(now), before)).toEqual(now);
        expect(before).toEqual(was);
        expect(asBefore(structuredClone(before), before)).toBe(before);
      }),
      { seed: 29, numRuns: 500 },
    );
  });
});
