import { expect, it } from 'vitest';
import { grownQuestions } from '../../../../../engine/advice/year/growth/grown.ts';
import { demoPlan } from '../../../../../engine/plan/demos/index.ts';
import { changeFeature, removeFeature } from '../../../../../engine/plan/edit/edit-feature.ts';
import { startNextYear } from '../../../../../engine/plan/edit/plan.ts';

const next = startNextYear(demoPlan('courtyard'));

it('asks nothing before a first year is frozen', () => {
  expect(grownQuestions(demoPlan('courtyard'))).toEqual([]);
});

it('asks each size of what lives, with last year’s number, and of no wall or cloth', () => {
  const questions = grownQuestions(next);
  const living = next.features
    .filter(({ kind }) => ['tree', 'hedge', 'plant', 'bed'].includes(kind))
    .map(({ id }) => id);
  expect([...new Set(questions.map(({ feature }) => feature))]).toEqual(living);
  const lemon = next.features.find(({ id }) => id === 'lemon');
  if (lemon?.kind !== 'plant') throw new Error('no lemon');
  expect(questions.find(({ feature, key }) => feature === 'lemon' && key === 'height')).toMatchObject({
    last: lemon.height,
    now: lemon.height,
    question: `How tall is the lemon pot now? Last year: ${lemon.height.toFixed(2)} m.`,
  });
});

it('keeps last year’s number beside an answer', () => {
  const answered = changeFeature(next, 'lemon', { height: 2.13 });
  expect(grownQuestions(answered).find(({ feature, key }) => feature === 'lemon' && key === 'height')).toMatchObject({
    now: 2.13,
  });
  expect(grownQuestions(answered).find(({ feature, key }) => feature === 'lemon' && key === 'height')?.last).not.toBe(
    2.13,
  );
});

it('does not ask after what is gone', () => {
  expect(grownQuestions(removeFeature(next, 'lemon')).map(({ feature }) => feature)).not.toContain('lemon');
});
