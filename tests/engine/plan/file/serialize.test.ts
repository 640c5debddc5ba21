import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { parsePlan } from '../../../../engine/plan/file/parse.ts';
import { planText } from '../../../../engine/plan/file/serialize.ts';
import type { Plan } from '../../../../engine/plan/types.ts';

const example = readFileSync('tests/plans/example.plan.json', 'utf8');

function read(text: string): Plan {
  const result = parsePlan(text);
  if (!result.ok) throw new Error(result.problems.map((problem) => problem.message).join('\n'));
  return result.plan;
}

it('a plan written and read again is the same plan, and the same text the second time', () => {
  const plan = read(example);
  const text = planText(plan);
  expect(read(text)).toEqual(plan);
  expect(planText(read(text))).toBe(text);
  expect(text).toContain('"boundary": [\n');
  expect(text).toContain('      [18, 0],\n');
  expect(text.endsWith('}\n')).toBe(true);
});

it('keys that nobody knows are kept, wherever they stand and whatever they hold', () => {
  fc.assert(
    fc.property(fc.jsonValue({ noUnicodeString: false, maxDepth: 4 }), (unknown) => {
      const held: unknown = JSON.parse(JSON.stringify(unknown));
      fc.pre(!JSON.stringify(held).includes('__proto__'));
      const plan = JSON.parse(example);
      plan.extra = held;
      plan.site.extra = held;
      plan.features[0].extra = held;
      plan.options[0].extra = held;
      const back = JSON.parse(planText(read(JSON.stringify(plan))));
      expect([back.extra, back.site.extra, back.features[0].extra, back.options[0].extra]).toEqual([
        held,
        held,
        held,
        held,
      ]);
    }),
    { seed: 5, numRuns: 40 },
  );
});

it('a key that was taken out is not written', () => {
  const text = planText({ ...read(example), name: undefined });
  expect(JSON.parse(text)).toEqual({ ...JSON.parse(example), name: undefined });
  expect(text).not.toContain('undefined');
});
