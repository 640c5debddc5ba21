import { expect, test } from 'vitest';
import { tomorrowOf } from '../../../engine/advice/year/tomorrow/tomorrow.ts';
import { verbsFor } from '../../../engine/output/verbs/index.ts';
import { demoPlan } from '../../../engine/plan/demos/index.ts';
import { runLine } from '../../command-line.ts';
import { cautionsMissing, risksTold } from '../../risky-words.ts';

const LINES = [
  ...(await verbsFor([])).flatMap(({ examples }) => examples),
  'season demo --option B',
  'season demo --option B --ics',
  'season demo --high 42 --day 2026-07-20',
  'season demo --high 8 --low -4 --day 2026-12-20',
  'report demo --option B --cell 1',
];

test.each(LINES)('%s does what the help shows, and warns of all that it tells people to do', async (line) => {
  const { code, out, err } = await runLine(line);
  expect(err).not.toMatch(/fault|undefined|NaN/);
  expect(code).toBe(0);
  expect(out.length).toBeGreaterThan(5);
  expect(out).not.toMatch(/undefined|NaN|\[object/);
  if (!line.includes('--json')) expect(cautionsMissing(out)).toEqual([]);
});

test('the pages that tell of risks are found: the words above are the pages’ own', async () => {
  const told = async (line: string) => risksTold((await runLine(line)).out);
  expect(await told('season demo --option B')).toEqual(
    expect.arrayContaining(['hang cloth', 'climb', 'cover for frost']),
  );
  // Clay is told of only where somebody chose it.
  expect(await told('season demo')).not.toContain('spray');
  expect(await told('season demo --clay')).toContain('spray');
  expect(await told('sheet demo --option A --canopy lemon-roof')).toEqual(
    expect.arrayContaining(['build', 'dig', 'climb']),
  );
  expect(await told('review demo')).toContain('go out in the heat to measure');
});

test('tomorrow’s list does so too', () => {
  for (const forecast of [
    { date: '2026-07-20', high: 42, low: 23 },
    { date: '2026-12-20', high: 8, low: -4 },
  ]) {
    const day = tomorrowOf(demoPlan('courtyard'), forecast);
    if (!day.ok) throw new Error('no list');
    const page = [
      ...day.value.tasks.map(({ advice }) => advice.text),
      ...day.value.cautions.map(({ text }) => text),
    ].join('\n');
    expect(cautionsMissing(page)).toEqual([]);
    expect(risksTold(page)).not.toEqual([]);
  }
});
