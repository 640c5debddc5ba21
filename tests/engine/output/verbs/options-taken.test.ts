import { expect, test } from 'vitest';
import { DEMO_NAMES, demoPlan } from '../../../../engine/plan/demos/index.ts';
import { runLine } from './command-for-tests.ts';

/** Doubt takes long: one option of each yard stands for the others. */
const CASES = DEMO_NAMES.flatMap((demo) =>
  (demoPlan(demo).options ?? []).flatMap(({ id }, n) =>
    (n === 0 ? ['compare', 'doubt'] : ['compare']).map((verb) => [verb, `demo:${demo}`, id]),
  ),
);

test.each(CASES)('%s %s goes on from the yard with option %s', async (verb, demo, id) => {
  const { code, out, err } = await runLine(`${verb} ${demo} --option ${id}`);
  expect([code, out === '']).toEqual([0, false]);
  expect(err).toContain(`Here “today” is the yard with ${id}.`);
});
