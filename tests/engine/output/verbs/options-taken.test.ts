import { expect, test } from 'vitest';
import { DEMO_NAMES, demoPlan } from '../../../../engine/plan/demos/index.ts';
import { runLine } from './command-for-tests.ts';

const CASES = DEMO_NAMES.flatMap((demo) => (demoPlan(demo).options ?? []).map(({ id }) => [`demo:${demo}`, id]));

test.each(CASES)('compare and doubt %s go on from the yard with option %s', async (demo, id) => {
  for (const verb of ['compare', 'doubt']) {
    const { code, out, err } = await runLine(`${verb} ${demo} --option ${id}`);
    expect([verb, code, out === '']).toEqual([verb, 0, false]);
    expect(err).toContain(`Here “today” is the yard with ${id}.`);
  }
});
