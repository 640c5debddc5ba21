import { readFileSync, readdirSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parsePlan, salvagePlan } from '../../../../engine/plan/file/parse.ts';
import { planText } from '../../../../engine/plan/file/serialize.ts';
import type { Problem } from '../../../../engine/plan/types.ts';

const BROKEN = 'tests/plans/broken';
const expected: Record<string, { pointer: string; says: string }[]> = JSON.parse(
  readFileSync(`${BROKEN}/expected.json`, 'utf8'),
);
const example = readFileSync('tests/plans/example.plan.json', 'utf8');

function problemsOf(input: Uint8Array | string): Problem[] {
  const result = parsePlan(input);
  return result.ok ? [] : result.problems;
}

/** The example with its first feature's height, or anything else, written otherwise. */
function exampleWith(from: string, to: string): string {
  expect(example).toContain(from);
  return example.replace(from, to);
}

describe('plans broken on purpose', () => {
  it('every file of the folder is expected to fail, and the other way round', () => {
    const files = readdirSync(BROKEN)
      .filter((name) => name.endsWith('.plan.json'))
      .map((name) => name.replace('.plan.json', ''));
    expect(files.toSorted()).toEqual(Object.keys(expected).toSorted());
  });

  it.each(Object.entries(expected))('%s: each problem has its place and one plain sentence', (name, wanted) => {
    const problems = problemsOf(readFileSync(`${BROKEN}/${name}.plan.json`));
    expect(problems.map(({ pointer }) => pointer)).toEqual(wanted.map(({ pointer }) => pointer));
    problems.forEach(({ message, severity }, index) => {
      expect(message).toContain(wanted[index].says);
      expect(message).toMatch(/^[A-Z][^\n]*[.?]$/u);
      expect(message).not.toMatch(/undefined|NaN|\[object/);
      expect(severity).toBe('error');
    });
  });
});

describe('a plan that is right', () => {
  it('the example with every key has no problem and no warning', () => {
    expect(parsePlan(example)).toMatchObject({ ok: true, warnings: [] });
  });

  it('bytes, text, and a byte order mark make no difference', () => {
    const plan = parsePlan(example);
    const bytes = new TextEncoder().encode(example);
    expect(parsePlan(bytes)).toEqual(plan);
    expect(parsePlan(`\uFEFF${example}`)).toEqual(plan);
    expect(parsePlan(Uint8Array.from([0xef, 0xbb, 0xbf, ...bytes]))).toEqual(plan);
  });

  it('what needs not be there needs not be there', () => {
    const least = {
      format: 'shadewright-plan',
      version: 1,
      site: {
        latitude: -23.7,
        longitude: 133.9,
        timeZone: 'Australia/Darwin',
        boundary: [
          [0, 0],
          [5, 0],
          [5, 4],
        ],
      },
      season: { year: 2027, from: '11-01', to: '11-30' },
      climate: { hotAir: 36, heatwaveHigh: 44, months: [{ month: 11, high: 36, low: 21 }] },
      features: [],
    };
    expect(parsePlan(JSON.stringify(least))).toEqual({ ok: true, plan: least, warnings: [] });
  });

  it('an outline may repeat its first point, and equal points in a row count as one', () => {
    expect(
      problemsOf(
        exampleWith(
          '[[9, 12], [18, 12], [18, 17], [9, 17]]',
          '[[9, 12], [9, 12], [18, 12], [18, 17], [9, 17], [9, 12]]',
        ),
      ),
    ).toEqual([]);
  });

  it('29 February is a day of a leap year', () => {
    expect(
      problemsOf(
        exampleWith('"year": 2026, "from": "06-01", "to": "09-15"', '"year": 2028, "from": "02-29", "to": "02-29"'),
      ).map(({ message }) => message),
    ).toEqual(['Climate: February is part of the season, but its month is missing.']);
  });
});

describe('hostile files', () => {
  const one = (input: Uint8Array | string) => {
    const problems = problemsOf(input);
    expect(problems).toHaveLength(1);
    return problems[0];
  };

  it('lists nested 100,000 deep do not overflow the stack', () => {
    const deep = '['.repeat(100_000) + ']'.repeat(100_000);
    expect(one(deep).message).toMatch(/inside one another/);
    expect(one(exampleWith('"elevation": 110', `"extra": ${deep}`)).message).toMatch(/inside one another/);
    expect(one('{"a":'.repeat(100_000)).message).toMatch(/inside one another/);
    // Brackets in a person's text are no nesting.
    expect(problemsOf(exampleWith('Every key once', `\\"${'['.repeat(300)}`))).toEqual([]);
  });

  it('50 MB are refused by their size', () => {
    expect(one(new Uint8Array(50e6).fill(0x20)).message).toBe(
      'The file is larger than 10 MB, the most that a plan may have.',
    );
    expect(one(' '.repeat(50e6)).message).toMatch(/10 MB/);
  });

  it('what is too much of anything is refused with one sentence', () => {
    const wall = JSON.stringify({
      id: 'w',
      kind: 'wall',
      path: [
        [0, 0],
        [1, 1],
      ],
      height: 2,
      thickness: 0.1,
    });
    const points = (from: number, to: number) =>
      `[${Array.from({ length: to - from }, (_, i) => `[${(from + i) % 100}, ${i % 7}]`).join()}]`;
    const longWalls = Array.from(
      { length: 42 },
      (_, i) =>
        `{"id": "p${i}", "kind": "wall", "height": 1, "thickness": 0.1, "path": ${points(i * 480, i * 480 + 480)}}`,
    );
    expect(one(exampleWith('"elevation": 110', `"extra": [${'{},'.repeat(500_000)}1]`)).message).toMatch(
      /at most 500000/,
    );
    expect(one(exampleWith('"features": [', `"features": [${`${wall},`.repeat(2_000)}`)).message).toMatch(
      /things in the plan; at most 500 are read/,
    );
    expect(one(exampleWith('"features": [', `"features": [${longWalls.join()},`)).message).toMatch(
      /points together; at most 20000/,
    );
    expect(one(exampleWith('"features": [', `"features": [${longWalls.slice(0, 3).join()},`)).message).toMatch(
      /have 14\d\d corners together; at most 300 are read/,
    );
    expect(one(exampleWith('"path": [[20, -4], [20, 16]]', `"path": ${points(0, 501)}`)).message).toMatch(
      /path has 501 points; at most 500/,
    );
    expect(one(exampleWith('"journal": [', `"journal": [${'{},'.repeat(10_000)}`)).message).toMatch(
      /journal has 10007 entries; at most 10000/,
    );
  });

  it('a name of nine million characters is kept, and a fault behind it found', () => {
    const long = exampleWith('Every key once', 'x'.repeat(9e6));
    expect(problemsOf(long)).toEqual([]);
    expect(one(long.replace('"units"', ',"units"')).message).toMatch(/not JSON: line 6, column 3/);
  });

  it('thousands of problems give five hundred lines and say how many are left', () => {
    const broken = Array.from({ length: 400 }, (_, i) =>
      JSON.stringify({
        id: `t${i}`,
        kind: 'tree',
        at: [1, 1],
        height: 3,
        crownWidth: 2,
        crownBase: 3.5,
        openness: 5,
        plant: `triffid${i}`,
      }),
    );
    const problems = problemsOf(exampleWith('"features": [', `"features": [${broken.join()},`));
    expect(problems).toHaveLength(501);
    expect(problems[500].message).toBe('Plan: 700 more problems are not listed here.');
  });

  it('numbers with exponents and escaped characters are read as what they are', () => {
    const result = parsePlan(
      exampleWith('"elevation": 110', '"elevation": 1.1e2').replace('Every key once', '\\u00c9very k\\ud83c\\udf4by'),
    );
    expect(result).toMatchObject({ ok: true, plan: { name: 'Évery k🍋y', site: { elevation: 110 } } });
  });

  it('words that objects know by themselves are only words', () => {
    expect(one(exampleWith('"kind": "hedge"', '"kind": "constructor"')).message).toMatch(/"constructor" is not a kind/);
    expect(one(exampleWith('"plant": "rose"', '"plant": "toString"')).message).toMatch(/no plant "toString"/);
    expect(one(exampleWith('"removes": ["old-rose"]', '"removes": ["hasOwnProperty"]')).pointer).toBe(
      '/options/0/removes/0',
    );
    expect(Object.hasOwn(Object.prototype, 'height')).toBe(false);
  });
});

describe('salvage', () => {
  const fault = (name: string) => readFileSync(`${BROKEN}/${name}.plan.json`);

  it('a broken feature is set aside as it stood, and the rest is the plan', () => {
    const result = salvagePlan(fault('bow-tie'));
    expect(result).toMatchObject({ ok: true, problems: [{ pointer: '/features/1/outline' }] });
    if (!result.ok) return;
    expect(result.plan.features.map(({ id }) => id)).toEqual(['wall', 'tree', 'roof', 'screen', 'bed', 'pot']);
    expect(result.plan.setAside).toEqual([
      { from: 'features', value: JSON.parse(fault('bow-tie').toString()).features[1] },
    ]);
  });

  it('what is set aside is saved with the plan, and opened again with it', () => {
    const first = salvagePlan(fault('unknown-kind'));
    if (!first.ok) throw new Error('not salvaged');
    // Option A removed the thing that is gone, so the option is set aside too.
    expect(first.plan.setAside?.map(({ from }) => from)).toEqual(['features', 'options']);
    const again = parsePlan(planText(first.plan));
    expect(again).toMatchObject({ ok: true, plan: { setAside: first.plan.setAside } });
  });

  it('what two things broke together is untangled', () => {
    const result = salvagePlan(fault('id-twice'));
    expect(result).toMatchObject({ ok: true, plan: { setAside: [{ from: 'features' }] } });
  });

  it('a plan whose site, season or climate is broken is refused with all its problems', () => {
    const result = salvagePlan(fault('many-faults-at-once'));
    expect(result.ok ? [] : result.problems.map(({ pointer }) => pointer)).toEqual(
      expected['many-faults-at-once'].map(({ pointer }) => pointer),
    );
    expect(salvagePlan('{')).toMatchObject({ ok: false });
  });

  it('opens again from its own file, or is refused', () => {
    const broken = { id: 'b', kind: 'wall', path: [], height: 1, thickness: 0.2 };
    const nested = (depth: number): unknown => (depth === 0 ? 1 : [nested(depth - 1)]);
    const deep = { ...broken, deep: nested(97) };
    const much = Array.from({ length: 320 }, (_, i) => ({ ...broken, id: `b${i}`, extra: Array(500).fill([[7]]) }));
    const parts = fc.array(fc.constantFrom(broken, deep, 5, null, { ...broken, id: 'west-wall' }, ...much.slice(0, 3)));
    const reopened = (features: readonly unknown[]): [boolean, boolean] => {
      const { features: drawn, ...rest } = JSON.parse(example);
      const salvaged = salvagePlan(JSON.stringify({ ...rest, features: [...drawn, ...features] }));
      return [salvaged.ok, !salvaged.ok || parsePlan(new TextEncoder().encode(planText(salvaged.plan))).ok];
    };
    fc.assert(
      fc.property(parts, (features) => {
        expect(reopened(features)[1]).toBe(true);
      }),
      { seed: 12, numRuns: 30 },
    );
    expect(reopened([broken])).toEqual([true, true]);
    expect(reopened([deep])).toEqual([false, true]);
    // Compact it is small enough; with a line and its indent for every number it would not be.
    expect(reopened(much)).toEqual([true, true]);
  });

  it('a sound plan is left whole', () => {
    const result = salvagePlan(example);
    expect(result).toMatchObject({ ok: true, problems: [] });
    expect(result.ok && result.plan).toEqual(JSON.parse(example));
  });
});
