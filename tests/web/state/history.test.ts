import fc from 'fast-check';
import { beforeEach, expect, test } from 'vitest';
import { appendJournal, demoPlan, parsePlan, planText, setSite, startNextYear } from '../../../engine/index.ts';
import type { Plan } from '../../../engine/index.ts';
import { withReadings } from '../../../web/panels/year/diary/reading-edits.ts';
import { commitBeside, commitEdit, redo, redoLabel, undo, undoLabel } from '../../../web/state/edit.ts';
import { loadPlanChecks } from '../../../web/state/plan-checks.ts';
import { notice } from '../../../web/state/speech.ts';
import { UNDO_LETTERS, UNDO_STEPS } from '../../../web/state/undo-cap.ts';
import { history, openYard, plan, preview, shownPlan } from '../../../web/state/yard.ts';

const FIRST = demoPlan('courtyard');
const named = (name: string): Plan => ({ ...plan.value, name });

beforeEach(() => {
  history.value = { steps: [{ label: 'Demo yard', plan: FIRST }], cursor: 0 };
  openYard.value = { id: 'test', fileCopyAt: null, readOnly: null };
  preview.value = null;
});

test('every step is named, undone and redone; a new one after an undo ends what could be redone', () => {
  commitEdit('Rename to Ana', named('Ana'));
  commitEdit('Rename to Bea', named('Bea'));
  expect(undoLabel.value).toBe('Rename to Bea');
  undo();
  expect([plan.value.name, undoLabel.value, redoLabel.value]).toEqual(['Ana', 'Rename to Ana', 'Rename to Bea']);
  commitEdit('Rename to Cid', named('Cid'));
  redo();
  expect([plan.value.name, redoLabel.value]).toEqual(['Cid', null]);
});

test('a run of nudges is one step; a drag’s preview is none, and what it showed is gone when it is called off', () => {
  commitEdit('Nudge', named('1'), 'merge');
  commitEdit('Nudge', named('2'), 'merge');
  commitEdit('Nudge', named('3'), 'merge');
  expect(history.value.steps).toHaveLength(2);
  preview.value = named('half-way');
  expect([shownPlan.value.name, plan.value.name]).toEqual(['half-way', '3']);
  preview.value = null;
  expect(shownPlan.value.name).toBe('3');
  undo();
  expect(plan.value).toBe(FIRST);
});

test('nudges of two things are two steps, and a nudge after another edit joins nothing', () => {
  commitEdit('Nudge lemon', named('1'), 'merge');
  commitEdit('Nudge fig', named('2'), 'merge');
  commitEdit('Nudge fig', named('3'), 'merge');
  expect(history.value.steps.map(({ label, plan: then }) => [label, then.name])).toEqual([
    ['Demo yard', FIRST.name],
    ['Nudge lemon', '1'],
    ['Nudge fig', '3'],
  ]);
  commitEdit('Rename', named('4'));
  commitEdit('Nudge fig', named('5'), 'merge');
  expect(history.value.steps).toHaveLength(5);
});

test('the yard as it was opened is merged with nothing, whatever the label', () => {
  commitEdit('Demo yard', named('1'), 'merge');
  expect(history.value.steps).toHaveLength(2);
  undo();
  expect(plan.value).toBe(FIRST);
});

test('undo reaches 200 steps back; what is older stays done', () => {
  for (let k = 1; k <= UNDO_STEPS + 50; k++) commitEdit(`Rename to ${k}`, named(String(k)));
  expect(history.value.steps).toHaveLength(UNDO_STEPS + 1);
  while (undoLabel.value !== null) undo();
  expect(plan.value.name).toBe('50');
  while (redoLabel.value !== null) redo();
  expect(plan.value.name).toBe(String(UNDO_STEPS + 50));
});

test('undo keeps no more than 8 MB of plans, pictures aside, but one step back always', () => {
  const withNotes = (letters: number): Plan => ({
    ...plan.value,
    features: [...FIRST.features, { ...FIRST.features[0], id: 'wide', name: 'w'.repeat(letters) }],
  });
  const megabyte = 1e6;
  for (let k = 0; k < 12; k++) commitEdit(`Step ${k}`, withNotes(megabyte));
  const letters = history.value.steps.reduce((sum, step) => sum + JSON.stringify(step.plan).length, 0);
  expect(letters).toBeLessThanOrEqual(UNDO_LETTERS);
  expect(letters).toBeGreaterThan(UNDO_LETTERS - 1.1 * megabyte);
  expect(history.value.cursor).toBe(history.value.steps.length - 1);
  commitEdit('Huge', withNotes(9 * megabyte));
  expect(history.value.steps.map(({ label }) => label)).toEqual(['Step 11', 'Huge']);
  const underlay = { image: `data:image/png;base64,${'A'.repeat(9 * megabyte)}`, at: [0, 0], width: 4 } as const;
  history.value = { steps: [{ label: 'Demo yard', plan: { ...FIRST, site: { ...FIRST.site, underlay } } }], cursor: 0 };
  for (const name of ['a', 'b', 'c']) commitEdit('Rename', named(name));
  expect(history.value.steps).toHaveLength(4);
});

test('what stands beside the history is in every step of it: undo leaves it, and redo is still there', () => {
  commitEdit('Rename to Ana', named('Ana'));
  undo();
  commitBeside((then) => ({ ...then, site: { ...then.site, elevation: 7 } }));
  expect([plan.value.site.elevation, redoLabel.value]).toEqual([7, 'Rename to Ana']);
  redo();
  expect([plan.value.name, plan.value.site.elevation]).toEqual(['Ana', 7]);
  undo();
  expect([plan.value.name, plan.value.site.elevation]).toEqual([FIRST.name, 7]);
});

test('an edit that changes nothing leaves no step and keeps what can be redone', () => {
  commitEdit('Rename', named('Ana'));
  undo();
  commitEdit('Nothing', plan.value);
  expect(redoLabel.value).toBe('Rename');
});

test('a yard that can only be looked at is not changed by anything', () => {
  commitEdit('Rename', named('Ana'));
  openYard.value = { ...openYard.value, readOnly: 'Changed elsewhere.' };
  expect(commitEdit('Rename', named('Bea'))).toBe(false);
  undo();
  expect(plan.value.name).toBe('Ana');
});

test('whatever is done, undoing all of it gives the very first plan, and redoing all of it the last', () => {
  fc.assert(
    fc.property(
      fc.array(fc.record({ name: fc.string(), kind: fc.constantFrom('edit', 'merge', 'undo', 'redo') }), {
        maxLength: 60,
      }),
      (actions) => {
        history.value = { steps: [{ label: 'Demo yard', plan: FIRST }], cursor: 0 };
        for (const { name, kind } of actions) {
          if (kind === 'undo') undo();
          else if (kind === 'redo') redo();
          else commitEdit('Rename', named(name), kind === 'merge' ? 'merge' : 'now');
        }
        while (redoLabel.value !== null) redo();
        const last = plan.value;
        while (undoLabel.value !== null) undo();
        expect(plan.value).toBe(FIRST);
        while (redoLabel.value !== null) redo();
        expect(plan.value).toBe(last);
      },
    ),
    { seed: 4711, numRuns: 200 },
  );
});

const TYPED = { open: '', covered: '', air: '', openLight: '', coveredLight: '', date: '2026-07-21', time: '15:00' };

test('what is typed either leaves a yard that opens again or is refused in a sentence, and the yard stays', async () => {
  await loadPlanChecks();
  const texts = ['', '42', '72', '-40', '1e3', '104 °F', '½', 'hot', '98000', '9e9', '-1'];
  const dates = ['2026-07-21', '20262-07-21', '', '0001-01-01', '1899-02-30'];
  const typed = fc.record({
    open: fc.constantFrom(...texts),
    covered: fc.constantFrom(...texts),
    air: fc.constantFrom(...texts),
    openLight: fc.constantFrom(...texts),
    coveredLight: fc.constantFrom(...texts),
    date: fc.constantFrom(...dates),
    time: fc.constantFrom('15:00', '15:00:30', '', '24:00'),
  });
  const opensAgain = (): boolean => parsePlan(planText(plan.value)).ok;
  fc.assert(
    fc.property(typed, fc.boolean(), (reading, pair) => {
      history.value = { steps: [{ label: 'Demo yard', plan: FIRST }], cursor: 0 };
      const next = withReadings(plan.value, reading, pair, 'lemon', 'top');
      const taken = typeof next !== 'string' && commitEdit('Note a reading', next);
      expect([opensAgain(), plan.value === FIRST]).toEqual([true, !taken]);
    }),
    { seed: 7, numRuns: 300 },
  );
  expect(withReadings(FIRST, { ...TYPED, open: '42', air: '72' }, false, 'lemon', 'top')).toMatch(/^Air in the shade/);
  const warm = withReadings(FIRST, { ...TYPED, open: '42', air: '42' }, false, 'lemon', 'top');
  if (typeof warm === 'string') throw new Error(warm);
  // Whatever else may let it through.
  const features = warm.features.map((each) => (each.kind === 'reading' ? { ...each, air: 72 } : each));
  notice.value = null;
  expect(commitEdit('Note a reading', { ...warm, features })).toBe(false);
  expect(notice.value).toMatchObject({ kind: 'problem', text: expect.stringMatching(/air is 72 °C/) as string });
  expect(commitEdit('Note', appendJournal(FIRST, { date: '20262-07-21', what: 'note' }))).toBe(false);
  const late = { ...FIRST, season: { ...FIRST.season, year: 2199 } };
  history.value = { steps: [{ label: 'Demo yard', plan: late }], cursor: 0 };
  expect(commitEdit('Start 2200', startNextYear(late))).toBe(false);
  expect(plan.value).toBe(late);
});

test('a picture to trace over with which the yard could not be opened again is refused, and why is said', async () => {
  await loadPlanChecks();
  const image = `data:image/png;base64,${'A'.repeat(40)}`;
  const laid = (width: number) => (then: Plan) => setSite(then, { underlay: { image, at: [0, 0] as const, width } });
  commitEdit('Rename', named('Ana'));
  notice.value = null;
  preview.value = FIRST;
  expect(commitBeside(laid(-4))).toBe(false);
  expect(history.value.steps.map(({ plan: { site } }) => site.underlay)).toEqual([undefined, undefined]);
  expect(preview.value).toBeNull();
  expect(notice.value).toMatchObject({ kind: 'problem', text: expect.stringMatching(/width/i) as string });
  notice.value = null;
  expect(commitBeside(laid(4))).toBe(true);
  expect(history.value.steps.map(({ plan: { site } }) => site.underlay?.width)).toEqual([4, 4]);
  expect(notice.value).toBeNull();
  expect(parsePlan(planText(plan.value)).ok).toBe(true);
});
