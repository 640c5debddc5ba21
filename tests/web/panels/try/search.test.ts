import { beforeEach, expect, test, vi } from 'vitest';
import { demoPlan } from '../../../../engine/index.ts';
import { cancelSearch, findTheBest, found, lookAhead } from '../../../../web/panels/try/search.ts';
import { searching } from '../../../../web/state/next.ts';
import { notice, spoken } from '../../../../web/state/speech.ts';
import { goToStage, stage } from '../../../../web/state/view.ts';
import { history, openYard, plan } from '../../../../web/state/yard.ts';
import { type Asked, asked } from '../../asked.ts';
import { turn } from '../../turn.ts';

vi.mock('../../../../web/state/ask.ts', () => import('../../asked.ts'));

const RESULT = { result: { sentence: 'A roof over the lemon.' } };
const searches = (): Asked[] => asked.filter(({ method }) => method === 'site');

beforeEach(() => {
  cancelSearch();
  asked.length = 0;
  openYard.value = { id: 'first', fileCopyAt: null, readOnly: null };
  history.value = { steps: [{ label: 'Demo yard', plan: demoPlan('courtyard') }], cursor: 0 };
  goToStage('try');
  found.value = null;
  notice.value = null;
});

test('a search goes on when Try is left, is told of where the person has gone, and is there when they come back', async () => {
  void findTheBest();
  await turn();
  goToStage('year');
  await turn();
  const [search] = searches();
  expect(search.signal.aborted).toBe(false);
  expect(searching.value).not.toBeNull();
  search.answer(RESULT);
  await turn();
  expect(searching.value).toBeNull();
  expect(found.value).toMatchObject({ ...RESULT, plan: plan.value });
  expect(notice.value).toMatchObject({ text: 'The search for cloth is done.', action: { label: 'See what it found' } });
  notice.value?.action?.run();
  expect(stage.value).toBe('try');
  expect(found.value).not.toBeNull();
});

test('who waits in Try hears the answer itself', async () => {
  void findTheBest();
  await turn();
  searches()[0].answer(RESULT);
  await turn();
  expect(notice.value).toBeNull();
  expect(spoken.value.trim()).toBe('A roof over the lemon.');
});

test('a second search calls the first off, and nothing of that is shown any more', async () => {
  void findTheBest();
  await turn();
  void findTheBest();
  await turn();
  const [first, second] = searches();
  expect([first.signal.aborted, second.signal.aborted]).toEqual([true, false]);
  expect(searching.value).not.toBeNull();
  second.answer(RESULT);
  await turn();
  expect(found.value).toMatchObject(RESULT);
});

test('in another yard nothing of the search is left', async () => {
  void findTheBest();
  await turn();
  openYard.value = { id: 'second', fileCopyAt: null, readOnly: null };
  expect(searches()[0].signal.aborted).toBe(true);
  expect([searching.value, found.value]).toEqual([null, null]);
  expect(notice.value?.text).toBe('The search was called off. Nothing has changed.');
});

test('the yard that is looked over while the form is filled in is the very one that is searched', async () => {
  const stop = lookAhead();
  void findTheBest();
  await turn();
  const [ahead, search] = asked;
  expect([ahead.method, search.method]).toEqual(['lookOver', 'site']);
  expect((ahead.args as { plan: unknown }).plan).toEqual((search.args as { plan: unknown }).plan);
  expect(ahead.signal.aborted).toBe(false);
  stop();
  expect([ahead.signal.aborted, search.signal.aborted]).toEqual([true, false]);
});
