import { describe, expect, test } from 'vitest';
import { readCommand } from '../../../../engine/output/text/command-line.ts';
import { sheet } from '../../../../engine/output/verbs/sheet.ts';
import type { VerbRequest, VerbResult } from '../../../../engine/output/verbs/verb.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Plan } from '../../../../engine/plan/types.ts';
import { withOptions } from '../../../../engine/plan/yards/options.ts';
import { mustBeOk } from '../../../parts/outcome.ts';

function requestFor(
  plan: Plan,
  optionIds: readonly string[],
  values: VerbRequest['values'],
  units: VerbRequest['units'] = 'metric',
): VerbRequest {
  return {
    plan,
    optionIds,
    warnings: [],
    period: { kind: 'season' },
    units,
    values,
    page: { colour: false, columns: 100 },
    progress: () => undefined,
  };
}

async function run(option: string, canopy: string, units: VerbRequest['units'] = 'metric'): Promise<VerbResult> {
  const applied = withOptions(demoPlan('courtyard'), [option]);
  if (!applied.ok) throw new Error(option);
  return sheet.run(requestFor(applied.plan, [option], { canopy: [canopy] }, units));
}

describe('sheet', () => {
  test('gives the keys of the command line’s contract', async () => {
    const result = await run('A', 'lemon-roof');
    if (!result.ok) throw new Error('a sheet is wanted');
    const json = JSON.parse(JSON.stringify(result.json));
    expect(Object.keys(json)).toEqual(
      expect.arrayContaining([
        'pieces',
        'cuts',
        'fittings',
        'cloth',
        'clips',
        'anchors',
        'uplift',
        'cost',
        'steps',
        'cautions',
      ]),
    );
    expect(json.pieces[0]).toEqual({ part: expect.any(String), kind: 'top rail', length: 2.6, count: 2 });
    expect(json.pieces).toContainEqual({ part: 'brace', kind: 'brace', length: 1.13, count: 8 });
    expect(json.cuts.flatMap(({ pieces }: { pieces: number[] }) => pieces)).toHaveLength(16);
    expect(json.fittings).toContainEqual(expect.objectContaining({ kind: '3-way corner', count: 4 }));
    expect(json.clips).toBe(20);
    expect(JSON.stringify(json)).not.toMatch(/null,null/);
  });

  test('shows feet and inches when asked, of the same frame', async () => {
    const [metric, imperial] = [await run('B', 'lemon-screen'), await run('B', 'lemon-screen', 'imperial')];
    if (!metric.ok || !imperial.ok) throw new Error('two sheets are wanted');
    expect(metric.text).toContain('2800 mm');
    expect(imperial.text).toContain('9 ft 2 1/4 in');
    expect((imperial.json as { pieces: unknown }).pieces).toEqual((metric.json as { pieces: unknown }).pieces);
  });

  test('says what is wrong with an id, and where a canopy of another option is', async () => {
    const wrong = await run('A', 'lemon-screen');
    expect(wrong.ok ? '' : wrong.problems[0].message).toBe(
      'There is no "lemon-screen" in the yard; it belongs to option "B": ask for that option too.',
    );
  });

  test('not told which canopy, it takes the first that stands, else that of the first option, and says so', async () => {
    expect(readCommand(['sheet', 'demo'], [sheet])).toMatchObject({ kind: 'run' });
    const of = async (plan: Plan) => {
      const result = await sheet.run(requestFor(plan, [], {}));
      mustBeOk(result);
      return { id: (result.json as { id: string }).id, notes: result.notes };
    };
    const demo = demoPlan('courtyard');
    expect(await of(demo)).toEqual({ id: 'lemon-roof', notes: ['The sheet is of lemon-roof, which option A brings.'] });
    const taken = withOptions(demo, ['B']);
    if (!taken.ok) throw new Error('B');
    expect(await of(taken.plan)).toEqual({ id: 'lemon-low-roof', notes: undefined });
    const none = await sheet.run(requestFor({ ...demo, options: [] }, [], {}));
    expect(none.ok ? '' : none.problems[0].message).toMatch(
      /^There is nothing to build: the yard has no roof and no screen/,
    );
  });
});
