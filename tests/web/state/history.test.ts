import fc from 'fast-check';
import { beforeEach, expect, test } from 'vitest';
import { demoPlan } from '../../../engine/index.ts';
import type { Plan } from '../../../engine/index.ts';
import { commitBeside, commitEdit, redo, redoLabel, undo, undoLabel } from '../../../web/state/edit.ts';
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
