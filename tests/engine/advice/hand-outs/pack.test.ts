import { describe, expect, it } from 'vitest';
import { withPack } from '../../../../engine/advice/hand-outs/pack.ts';
import { seasonOf } from '../../../../engine/advice/year/season/season.ts';
import { plantRowOf } from '../../../../engine/plan/catalogue/plants.ts';
import { checkPlan } from '../../../../engine/plan/check/check.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Plan } from '../../../../engine/plan/types.ts';

const plan = demoPlan('courtyard');
const lemon = plantRowOf(plan, 'lemon');
if (!lemon) throw new Error('no lemon');
const [july] = plan.climate.months.filter(({ month }) => month === 7);

const PACK = {
  format: 'shadewright-pack',
  version: 1,
  name: 'Lower valley',
  climate: {
    source: 'Valley office',
    heatwaveHigh: 46.3,
    months: [{ month: 7, high: july.high + 1.7, low: july.low }],
  },
  plants: [
    { ...lemon, heatLimit: lemon.heatLimit + 0.9 },
    { ...lemon, id: 'valley-lime', name: 'Valley lime' },
  ],
  stock: { currency: 'USD', prices: { clip: 0.41 } },
  cautions: [{ text: 'Gusts at five in the afternoon.' }],
};

function packed(of: Plan, pack: unknown) {
  const result = withPack(of, JSON.stringify(pack));
  if (!result.ok) throw new Error(result.problems.map(({ pointer, message }) => `${pointer}: ${message}`).join('\n'));
  return result;
}

describe('a pack', () => {
  it('changes what it carries, and nothing else', () => {
    const { plan: after } = packed(plan, PACK);
    expect(checkPlan(after).filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(after.climate.heatwaveHigh).toBe(46.3);
    expect(after.climate.months.find(({ month }) => month === 7)).toEqual({ ...july, high: july.high + 1.7 });
    expect(after.climate.months.filter(({ month }) => month !== 7)).toEqual(
      plan.climate.months.filter(({ month }) => month !== 7),
    );
    expect(plantRowOf(after, 'lemon')?.heatLimit).toBe(lemon.heatLimit + 0.9);
    for (const key of ['site', 'season', 'features', 'options', 'journal', 'name'] as const)
      expect(after[key]).toBe(plan[key]);
  });

  it('says every change in a sentence first', () => {
    const { changes } = packed(plan, PACK);
    expect(changes).toHaveLength(8);
    expect(changes.join('\n')).toMatch(
      /heatwave high: [\d.]+ °C becomes 46\.3 °C\.[\s\S]*July, high: [\d.]+ °C becomes [\d.]+ °C\.[\s\S]*Lemon[^\n]*: other figures for heat limit\.[\s\S]*A new plant: Valley lime\.[\s\S]*1 price of fittings\.[\s\S]*A caution more: Gusts/,
    );
    for (const line of changes) expect(line).not.toMatch(/undefined|NaN|\[object/);
  });

  it('changes nothing the second time', () => {
    const { plan: once } = packed(plan, PACK);
    const again = packed(once, PACK);
    expect(again.changes).toEqual([]);
    expect(again.plan).toEqual(once);
  });

  it('takes back what was said of how well a replaced number is known, and leaves the rest', () => {
    const guessed: Plan = {
      ...plan,
      climate: { ...plan.climate, how: { heatwaveHigh: { by: 'guess', pm: 2.5 }, hotAir: { by: 'guess', pm: 1.5 } } },
    };
    expect(packed(guessed, PACK).plan.climate.how).toEqual({ hotAir: { by: 'guess', pm: 1.5 } });
  });

  it('puts its cautions beside the program’s own', () => {
    const season = seasonOf(packed(plan, PACK).plan);
    expect(season.ok && season.value.cautions.at(-1)).toMatchObject({ text: 'Gusts at five in the afternoon.' });
  });

  it.each([
    ['no JSON', '{"format"', ''],
    ['a plan', JSON.stringify(plan), '/format'],
    ['a later version', '{"format": "shadewright-pack", "version": 2}', '/version'],
    ['climate as a list', '{"format": "shadewright-pack", "version": 1, "climate": []}', '/climate'],
    ['plants as an object', '{"format": "shadewright-pack", "version": 1, "plants": {}}', '/plants'],
    ['months as a number', '{"format": "shadewright-pack", "version": 1, "climate": {"months": 7}}', '/climate/months'],
    [
      'a high that is a word',
      '{"format": "shadewright-pack", "version": 1, "climate": {"heatwaveHigh": "hot"}}',
      '/climate/heatwaveHigh',
    ],
    ['a caution without text', '{"format": "shadewright-pack", "version": 1, "cautions": [{}]}', '/cautions/0/text'],
  ])('is refused in a sentence: %s', (_, file, pointer) => {
    const result = withPack(plan, file);
    expect(result).toMatchObject({ ok: false, problems: [{ pointer }] });
    if (!result.ok) expect(result.problems[0].message).toMatch(/^[A-Z].*\.$/);
  });
});
