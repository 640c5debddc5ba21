import { afterEach, describe, expect, test, vi } from 'vitest';
import { verbsFor } from '../../../../engine/output/verbs/index.ts';
import { hardPlan, YARD_NAMES, type YardName } from '../../../hard-plans.ts';
import { LONG, oneIn } from '../../../long.ts';
import { NO_VALUE, PLAN_LINES, ran } from '../../../plan-lines.ts';

/** Of each kind of yard so many, in the long run; in the short one a small yard is enough, without the search. */
const SEEDS = Array.from({ length: 60 }, (_, k) => 9001 + k);
const PLANS: readonly (readonly [YardName, number])[] = LONG
  ? SEEDS.flatMap((seed) => YARD_NAMES.map((yard) => [yard, seed] as const))
  : [['small', 9004]];
const LINES = oneIn(
  4,
  PLAN_LINES.filter((line) => LONG || !line.startsWith('site - --size')),
);

afterEach(() => vi.restoreAllMocks());

/** Where in a result a number is none: a map's cells may be without a value, nothing else may. */
function notFinite(value: unknown, pointer = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [pointer];
  if (value instanceof Float64Array) return value.some((each) => Math.abs(each) === Infinity) ? [pointer] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) => notFinite(each, `${pointer}/${key}`));
}

/** Results of a line's verb that hold a number that is none, filled as it runs. */
async function watched(line: string): Promise<string[]> {
  const faults: string[] = [];
  for (const verb of await verbsFor(line.split(' '))) {
    const { run } = verb;
    vi.spyOn(verb, 'run').mockImplementation(async (request) => {
      const result = await run(request);
      if (result.ok) faults.push(...notFinite(result.json));
      return result;
    });
  }
  return faults;
}

describe.each(PLANS)('a %s yard of seed %d, which check accepts', (yard, seed) => {
  const input = new TextEncoder().encode(JSON.stringify(hardPlan(yard, seed)));

  test('each verb gives a result, or refuses in plain words, and every number is one', async () => {
    const { code: accepted } = await ran('check -', input);
    if (accepted === 1) return;
    for (const line of LINES) {
      const faults = await watched(line);
      const { code, out, err } = await ran(line, input);
      vi.restoreAllMocks();
      expect(faults, line).toEqual([]);
      expect(NO_VALUE.exec(`${out}\n${err}`)?.input.slice(-200) ?? null, line).toBeNull();
      expect(code, `${line}: ${err}`).toBeLessThanOrEqual(1);
      if (code === 1) expect(err, line).toMatch(/[.?]/);
      else expect(out, line).not.toBe('');
    }
  });
});
