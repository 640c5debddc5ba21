import { expect, test } from 'vitest';
import { tomorrowOf } from '../../../engine/advice/tomorrow.ts';
import { demoPlan } from '../../../engine/plan/demos/index.ts';
import { verbsFor } from '../../../engine/output/verbs/index.ts';
import { runLine } from './verbs/command-for-tests.ts';

/** Words by which a page tells somebody to do a risky thing, and the beginnings of the cautions that must then stand on it. */
const RISKS: readonly (readonly [task: string, told: RegExp, cautions: readonly string[]])[] = [
  ['spray', /coat of clay|spray reflective|spray on a|powder in \d/i, ['Sprays: the label is the law', 'Heat: work before 11']],
  ['hang cloth', /\b(put|hang|take) (the )?cloth|cloth (up|down)\b|have cloth/i, ['Take the cloth off before a storm', 'Heat: work before 11']],
  ['climb', /\b(step ladder|cloth up(:| at the latest:)|put the cloth of)/i, ['Ladders: on level ground']],
  ['dig', /\bdig the holes|before you dig\b/i, ['you know what is under the ground', 'a power line runs above']],
  ['build', /Build sheet|what to build|cloth\. It takes/i, ['Orientation only. Wind loads']],
  ['go out in the heat to measure', /How to take a reading/i, ['Heat: work before 11']],
  ['cover for frost', /put the cover on|cover the .* before sunset|frost cover ready/i, ['A closed cover catches far more wind']],
];

function missing(page: string): string[] {
  // A calendar folds its lines, and escapes commas; a page of HTML escapes quotes alone.
  const text = page.replaceAll('\r\n ', '').replaceAll(/\\([,;])/g, '$1').replaceAll(/\s+/g, ' ');
  return RISKS.flatMap(([task, told, cautions]) => (told.test(text) ? cautions.filter((caution) => !text.includes(caution)).map((caution) => `${task}: ${caution}`) : []));
}

/** How many of the risks a page tells of. */
function toldIn(page: string): string[] {
  const text = page.replaceAll(/\s+/g, ' ');
  return RISKS.filter(([, told]) => told.test(text)).map(([task]) => task);
}

const LINES = [
  ...(await verbsFor([])).flatMap(({ examples }) => examples),
  'season demo --option B', 'season demo --option B --ics', 'season demo --high 42 --day 2026-07-20', 'season demo --high 8 --low -4 --day 2026-12-20', 'report demo --option B --cell 1',
];

test.each(LINES)('%s does what the help shows, and warns of all that it tells people to do', async (line) => {
  const { code, out, err } = await runLine(line);
  expect(err).not.toMatch(/fault|undefined|NaN/);
  expect(code).toBe(0);
  expect(out.length).toBeGreaterThan(5);
  expect(out).not.toMatch(/undefined|NaN|\[object/);
  if (!line.includes('--json')) expect(missing(out)).toEqual([]);
});

test('the pages that tell of risks are found: the words above are the pages’ own', async () => {
  const told = async (line: string) => toldIn((await runLine(line)).out);
  expect(await told('season demo --option B')).toEqual(expect.arrayContaining(['spray', 'hang cloth', 'climb', 'cover for frost']));
  expect(await told('sheet demo --option A --canopy lemon-roof')).toEqual(expect.arrayContaining(['build', 'dig', 'climb']));
  expect(await told('review demo')).toContain('go out in the heat to measure');
});

test('tomorrow’s list does so too', () => {
  for (const forecast of [{ date: '2026-07-20', high: 42, low: 23 }, { date: '2026-12-20', high: 8, low: -4 }]) {
    const day = tomorrowOf(demoPlan('courtyard'), forecast);
    if (!day.ok) throw new Error('no list');
    const page = [...day.value.tasks.map(({ advice }) => advice.text), ...day.value.cautions.map(({ text }) => text)].join('\n');
    expect(missing(page)).toEqual([]);
    expect(toldIn(page)).not.toEqual([]);
  }
});
