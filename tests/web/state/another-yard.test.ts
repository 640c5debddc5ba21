import { afterEach, beforeAll, expect, test, vi } from 'vitest';
import { demoPlan } from '../../../engine/index.ts';
import { commitEdit, undo } from '../../../web/state/edit.ts';
import { nextThing, stageNotes } from '../../../web/state/next.ts';
import { heat } from '../../../web/state/results.ts';
import { history, openYard, plan, preview } from '../../../web/state/yard.ts';
import { type Asked, asked } from '../asked.ts';

vi.mock('../../../web/state/ask.ts', () => import('../asked.ts'));

const MEASURED = {
  ...demoPlan('courtyard'),
  features: demoPlan('courtyard').features.map((one) => ({ ...one, how: undefined })),
};
const plants = (verdict: string): unknown => ({ plants: [{ id: 'lemon', verdict }] });

function open(id: string): void {
  history.value = { steps: [{ label: 'Opened', plan: { ...MEASURED, name: id } }], cursor: 0 };
  openYard.value = { id, fileCopyAt: null, readOnly: null };
}

/** The newest question about the graded yard, once the page has been still. */
async function question(): Promise<Asked> {
  await new Promise((resolve) => setTimeout(resolve, 150));
  const newest = asked.findLast(({ method }) => method === 'load');
  if (!newest) throw new Error('Nothing was asked.');
  return newest;
}

const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

beforeAll(() => void (asked.length = 0));
afterEach(() => void (preview.value = null));

test('until there is an answer every place that tells one says that it is being worked out', async () => {
  open('first');
  expect(stageNotes.value.heat).toBe('being worked out');
  (await question()).answer(plants('unharmed'));
  await settled();
  expect(stageNotes.value.heat).toBe('none burns');
  // And while an edit is worked out, what was told before it is not told on.
  commitEdit('Rename', { ...plan.value, season: { ...plan.value.season, to: '09-01' } });
  expect(stageNotes.value.heat).toBe('being worked out');
  (await question()).answer(plants('will burn'));
  await settled();
  expect(stageNotes.value.heat).toBe('1 burns');
});

test('when another yard is opened nothing of the old one’s answers stays', async () => {
  expect(heat.value.shown).not.toBe(null);
  open('second');
  expect(heat.value.shown).toBe(null);
  expect(stageNotes.value.heat).toBe('being worked out');
  expect(nextThing.value?.text ?? '').not.toMatch(/lemon/i);
});

test('undo while something is dragged calls the drag off and takes nothing back', () => {
  commitEdit('Rename', { ...plan.value, name: 'Renamed' });
  preview.value = { ...plan.value, name: 'Dragged' };
  undo();
  expect(preview.value).toBe(null);
  expect(plan.value.name).toBe('Renamed');
  undo();
  expect(plan.value.name).not.toBe('Renamed');
});
