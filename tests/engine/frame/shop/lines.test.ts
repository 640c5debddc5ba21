import fc from 'fast-check';
import { expect, test } from 'vitest';
import { stockTubes, usualTubes } from '../../../../engine/frame/shop/stock.ts';
import { anyFrame, built, roof, yardWith } from '../yard.ts';

const RUNS = { seed: 20261128, numRuns: 40 };

test('each line of tube says which tube of the stock it is, and its length is that tube’s', () => {
  fc.assert(
    fc.property(anyFrame, (thing) => {
      const { cost, cuts } = built(thing);
      const tubes = cost.items.filter((item) => item.of === 'tube');
      expect(tubes.map(({ tube }) => tube).toSorted()).toEqual([...new Set(cuts.map(({ tube }) => tube))].toSorted());
      for (const { tube, length } of tubes) expect(cuts.find((cut) => cut.tube === tube)?.stock).toBe(length);
    }),
    RUNS,
  );
});

test('there is a line for each sort of joint, square and adjustable ones apart, and its name says which it is', () => {
  fc.assert(
    fc.property(anyFrame, (thing) => {
      const { cost, fittings } = built(thing);
      const lines = cost.items.filter((item) => item.of === 'joint');
      expect(lines.map(({ joint, adjustable, count }) => [joint, adjustable, count])).toEqual(
        fittings.map(({ joint, adjustable, count }) => [joint, adjustable, count]),
      );
      for (const { name, joint, adjustable } of lines) expect(name).toBe(adjustable ? `${joint}, adjustable` : joint);
    }),
    RUNS,
  );
});

test('the price of a ready-made panel is that of its area, and cloth off the roll has no panel', () => {
  const panelOf = (length: number): { panel: number | null; price: number | null } | undefined =>
    built(
      { ...roof, length, width: 2.4 },
      { stock: { cloth: [{ width: 2.3, length: 3.3 }], prices: { clothMade: 5 } } },
    )
      .cost.items.filter((item) => item.of === 'cloth')
      .at(0);
  expect(panelOf(3.4)).toMatchObject({ panel: expect.closeTo(2.3 * 3.3, 9), price: expect.closeTo(5 * 2.3 * 3.3, 1) });
  expect(panelOf(4)?.panel).toBeNull();
});

test('what a step takes is one line of one sort: feet under posts, tubes when they are cut', () => {
  const { steps, cost } = built({ ...roof, rise: 0.6, frame: { soil: 'garden' } });
  const needs = (id: string): readonly string[] => steps.find((step) => step.id === id)?.needs ?? [];
  const ids = (of: 'tube' | 'joint' | 'cloth'): string[] =>
    cost.items.filter((item) => item.of === of).map(({ id }) => id);
  expect(needs('cut')).toEqual(expect.arrayContaining(ids('tube')));
  expect(needs('hang')).toEqual(expect.arrayContaining(ids('cloth')));
  expect(needs('raise')).toContain('joint-foot');
  expect(needs('join')).not.toContain('joint-foot');
});

test('scaffold tube is usual everywhere, conduit only in America, metric tube only elsewhere', () => {
  const usualIn = (timeZone: string): string[] => {
    const yard = yardWith([], { stock: undefined });
    return usualTubes({ ...yard, site: { ...yard.site, timeZone } }).map(({ id }) => id);
  };
  const [there, here] = [usualIn('America/Phoenix'), usualIn('Europe/Madrid')];
  const all = stockTubes(yardWith([], { stock: undefined })).map(({ id }) => id);
  expect(there.filter((id) => here.includes(id))).toEqual(['scaffold-48', 'scaffold-48-4', 'scaffold-48-6']);
  expect(all.filter((id) => !there.includes(id) && !here.includes(id))).toEqual([]);
  expect([there.includes('emt-1'), here.includes('tube-32')]).toEqual([true, true]);
});
