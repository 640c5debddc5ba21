import { describe, expect, test } from 'vitest';
import { sheetOf } from '../../../../engine/frame/sheet.ts';
import type { BuildSheet } from '../../../../engine/frame/types.ts';
import { sheetText } from '../../../../engine/output/sheet/text.ts';
import { DEMO_NAMES, demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { FrameChoice, Plan } from '../../../../engine/plan/types.ts';
import type { Units } from '../../../../engine/plan/units/units.ts';
import { withOptions } from '../../../../engine/plan/yards/options.ts';
import { mustBeOk } from '../../../parts/outcome.ts';

/** Ways to build, each with its own sentences. */
const FRAMES: readonly FrameChoice[] = [
  {},
  { soil: 'garden' },
  { soil: 'hard', bottomRails: true },
  { soil: 'loose', anchor: 'augers' },
  { soil: 'wet', anchor: 'stakes', maxBay: 1.5 },
  { soil: 'garden', anchor: 'sunk', tube: 'scaffold-48' },
  { soil: 'paving', tube: 'tube-38', gust: 32 },
  { soil: 'wheels' },
];

interface Case {
  readonly name: string;
  readonly sheet: BuildSheet;
  readonly units: Units;
}

/** Every canopy and screen of every option of both demo yards, every way to build it, in both units. */
const CASES: readonly Case[] = DEMO_NAMES.flatMap((yard) =>
  (demoPlan(yard).options ?? []).flatMap((option) => {
    const applied = withOptions(demoPlan(yard), [option.id]);
    if (!applied.ok) throw new Error(`option ${option.id} of ${yard}`);
    const things = applied.plan.features.filter((feature) => feature.kind === 'canopy' || feature.kind === 'screen');
    return things.flatMap((thing) =>
      FRAMES.flatMap((frame) =>
        (['metric', 'imperial'] as const).map((units): Case => {
          const plan: Plan = {
            ...applied.plan,
            units,
            features: applied.plan.features.map((feature) => (feature === thing ? { ...thing, frame } : feature)),
          };
          const result = sheetOf(plan, thing.id);
          mustBeOk(result);
          return {
            name: `${yard} ${option.id} ${thing.id} ${JSON.stringify(frame)} ${units}`,
            sheet: result.sheet,
            units,
          };
        }),
      ),
    );
  }),
);

describe('the build sheet in words', () => {
  test('there is one for each canopy and screen of the demo yards', () => {
    expect(new Set(CASES.map(({ sheet }) => sheet.id)).size).toBeGreaterThanOrEqual(6);
  });

  test.each(CASES)('$name: no word or number is missing', ({ sheet, units }) => {
    const text = sheetText(sheet, units, 100);
    expect(text).not.toMatch(/undefined|NaN|null|Infinity|\[object|\$\{| ,|\.\.|  \./);
    // Sentences end, and begin with a capital or a number.
    for (const step of sheet.steps) expect(step.text).toMatch(/^[A-Z].*[.]$/s);
    for (const { kind } of sheet.fittings) expect(text).toMatch(new RegExp(`^${kind} .* (rail|plate|closes)`, 'm'));
    for (const note of sheet.notes) expect(note).toMatch(/^[A-Z0-9“"].*[.]$/s);
    for (const sentence of [...sheet.anchors.sentences, ...sheet.storm.sentences, ...sheet.cloth.notes])
      expect(sentence).toMatch(/^[A-Z0-9].*[.]$/s);
  });

  test.each(CASES)('$name: lengths are in one system, to the millimetre or the sixteenth', ({ sheet, units }) => {
    // Goods are sold by their own names, and cautions give both.
    const text = sheetText(
      {
        ...sheet,
        cautions: [],
        tools: [],
        uplift: { ...sheet.uplift, wording: '' },
        cost: { ...sheet.cost, items: [], note: '', missing: [] },
        tube: { ...sheet.tube, name: 'tube' },
        notes: sheet.notes.filter((note) => !note.includes('lightest tube')),
      },
      units,
      1000,
    );
    const ours = text.replaceAll(/kg in a metre/g, '');
    if (units === 'metric') {
      expect(ours).not.toMatch(/\d (ft|in|mph|lb)\b/);
      expect(ours).not.toMatch(/\d\.\d{2,} mm/);
    } else {
      expect(ours).not.toMatch(/\d (mm|cm|m|km\/h|m\/s|kg)\b/);
      for (const [, divisor] of ours.matchAll(/\d\/(\d+) in/g)) expect(['2', '4', '8', '16', '32']).toContain(divisor);
    }
  });

  test('the printed cuts add up to the printed tube: pieces, 2 mm a cut and what is left, to the millimetre', () => {
    let lines = 0;
    for (const { sheet, units } of CASES) {
      if (units !== 'metric') continue;
      expect(sheet.cutting.kerf).toBe(0.002);
      for (const [, stock, pieces, left] of sheetText(sheet, units, 100).matchAll(
        /× (\d+) mm {2}[█|░]+\n +((?:\d+ mm(?: \+ )?)+)(?:, left (\d+) mm)?$/gm,
      )) {
        const cut = [...pieces.matchAll(/\d+/g)].map(Number);
        const room = Number(stock) - cut.reduce((sum, piece) => sum + piece, 0);
        if (left === undefined) expect(room <= 2 * cut.length && room >= 0).toBe(true);
        else expect(room).toBe(2 * cut.length + Number(left));
        lines++;
      }
    }
    expect(lines).toBeGreaterThan(60);
  });

  test('forces are told as weights in the units asked for, no newtons; places on the plan have their units', () => {
    for (const { sheet, units } of CASES) {
      const text = sheetText(sheet, units, 1000)
        .replaceAll(/\s+/g, ' ')
        .replaceAll(/165 MPa \(23,900 psi\)/g, '');
      expect(text).toMatch(
        units === 'metric' ? /\d kg.*\d % of what the tube bears/s : /\d lb.*\d % of what the tube bears/s,
      );
      expect(text).not.toMatch(/\d (N|MPa|psi)\b/);
      for (const [, place] of text.matchAll(/[(,] ?(x [^)]*)\)/g))
        expect(place).toMatch(
          units === 'metric' ? /^x −?\d+\.\d\d m, y −?\d+\.\d\d m$/ : /^x −?.* (ft|in).*, y −?.* (ft|in)$/,
        );
    }
  });

  test('a screen that closes is as long as all its sides, a bent one as its path', () => {
    const site = demoPlan('courtyard');
    const words = (path: readonly (readonly [number, number])[]): string => {
      const result = sheetOf(
        {
          ...site,
          features: [
            ...site.features,
            { id: 'ring', kind: 'screen', path, height: 1.8, density: 0.5, frame: { soil: 'garden' } },
          ],
        },
        'ring',
      );
      return result.ok ? sheetText(result.sheet, 'metric', 1000) : '';
    };
    expect(
      words([
        [2, 4],
        [6, 4],
        [6, 7],
        [2, 7],
        [2, 4],
      ]),
    ).toContain('14000 mm all the way round');
    expect(
      words([
        [2, 4],
        [6, 4],
        [6, 7],
      ]),
    ).toContain('7000 mm long along its bends');
    expect(
      words([
        [2, 4],
        [6, 4],
      ]),
    ).toMatch(/4000 mm long between the end posts.*F = 0\.613 · V² · 1\.2 · Kp · A/s);
  });

  test('every caution of the sheet is printed whole, and the wind is never called harmless', () => {
    for (const { sheet, units } of CASES.slice(0, 6)) {
      const text = sheetText(sheet, units, 110).replaceAll(/\s+/g, ' ');
      for (const caution of sheet.cautions) expect(text).toContain(caution.text.replace(/^Stop/, ''));
      expect(text).not.toMatch(/\bsafe(ly)?\b/i);
    }
  });

  test('the shopping list shows each line once, with its amount, and the total', () => {
    const [{ sheet }] = CASES;
    // Wide enough for names not to be broken.
    const text = sheetText(sheet, 'metric', 1000);
    for (const item of sheet.cost.items) expect(text).toContain(item.name);
    expect(text).toMatch(new RegExp(`Total +${sheet.cost.total?.toFixed(2)}`));
  });

  test('running text keeps to the width asked for', () => {
    const [{ sheet }] = CASES;
    for (const line of sheetText(sheet, 'metric', 72).split('\n'))
      if (/^(- |\d+\. |[A-Z].*[a-z]{3} [a-z]+ [a-z]+ )/.test(line)) expect(line.length).toBeLessThanOrEqual(72);
  });
});
