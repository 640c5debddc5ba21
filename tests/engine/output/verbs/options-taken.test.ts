import { expect, test } from 'vitest';
import { DEMO_NAMES, demoPlan } from '../../../../engine/plan/demos/index.ts';
import { runLine } from '../../../command-line.ts';
import { oneIn } from '../../../long.ts';

/** Each option once, held against its neighbour alone, and doubted. */
const CASES = DEMO_NAMES.flatMap((demo) => {
  const ids = (demoPlan(demo).options ?? []).map(({ id }) => id);
  const compared = ids.map((id, n) => [`compare demo:${demo} --try ${ids[(n + 1) % ids.length]}`, id]);
  return [...compared, ...ids.map((id) => [`doubt demo:${demo}`, id])];
});

test.each(oneIn(2, CASES))('%s goes on from the yard with option %s', async (line, id) => {
  const { code, out, err } = await runLine(`${line} --option ${id}`);
  expect([code, out === '']).toEqual([0, false]);
  expect(err).toContain(`Here “today” is the yard with ${id}.`);
});
