import { describe, expect, test } from 'vitest';
import { readCommand } from '../../../../engine/output/text/command-line.ts';
import { sheet } from '../../../../engine/output/verbs/sheet.ts';
import type { VerbRequest, VerbResult } from '../../../../engine/output/verbs/verb.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import { withOptions } from '../../../../engine/plan/options.ts';

async function run(option: string, canopy: string, units: VerbRequest['units'] = 'metric'): Promise<VerbResult> {
  const applied = withOptions(demoPlan('courtyard'), [option]);
  if (!applied.ok) throw new Error(option);
  const request: VerbRequest = {
    plan: applied.plan,
    optionIds: [option],
    warnings: [],
    period: { kind: 'season' },
    units,
    values: { canopy: [canopy] },
    page: { colour: false, columns: 100 },
    progress: () => undefined,
  };
  return sheet.run(request);
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
    expect(json.pieces).toContainEqual({ part: 'brace', kind: 'brace', length: expect.closeTo(1.1314, 9), count: 8 });
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

  test('wants to be told which canopy', () => {
    expect(readCommand(['sheet', 'demo'], [sheet])).toMatchObject({ kind: 'wrong' });
  });
});
