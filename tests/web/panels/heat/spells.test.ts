import { expect, test } from 'vitest';
import { demoPlan, spotOf } from '../../../../engine/index.ts';
import type { SpotStep } from '../../../../engine/index.ts';
import { hottestOf, spellsOf } from '../../../../web/panels/heat/spells.ts';

const step = (when: string, share: number, ids: readonly string[], air = 30): SpotStep => ({
  when: `2026-07-21T${when}:00+02:00`,
  hours: 1 / 6,
  azimuth: 200,
  altitude: 40,
  beam: 800,
  diffuse: 90,
  sunshine: 0.9,
  air,
  share,
  blockers: ids.map((id) => ({ id, passes: 0 })),
});

test('a stretch ends where something comes before the sun', () => {
  const spells = spellsOf([
    step('12:05', 1, []),
    step('12:15', 1, []),
    step('12:25', 0, ['wall', 'gum']),
    step('12:35', 0, ['wall']),
  ]);
  expect(spells.map(({ from, to, share }) => [Math.round(from), Math.round(to), share])).toEqual([
    [720, 740, 1],
    [740, 760, 0],
  ]);
  expect(spells[1].blockers[0]).toBe('wall');
});

test('the hottest step is the one with the largest sun times air, and none where no sun comes', () => {
  expect(hottestOf([step('13:05', 1, [], 38), step('16:25', 1, [], 44), step('17:05', 0.5, [], 45)])?.clock).toBe(985);
  expect(hottestOf([step('13:05', 0, ['wall'])])).toBeNull();
});

test('the stretches of a day follow each other without a gap from the first daylight step to the last', () => {
  const found = spotOf(demoPlan('lane'), [4.5, 15], { period: { kind: 'day', date: '01-21' }, height: 1.2 });
  if (!found.ok || !('steps' in found.value)) throw new Error('No day.');
  const spells = spellsOf(found.value.steps);
  expect(spells.length).toBeGreaterThan(2);
  for (let k = 1; k < spells.length; k++) expect(spells[k].from).toBeCloseTo(spells[k - 1].to, 6);
  const daylight = found.value.steps.filter(({ altitude }) => altitude > 0).reduce((sum, { hours }) => sum + hours, 0);
  expect((spells[spells.length - 1].to - spells[0].from) / 60).toBeCloseTo(daylight, 1);
});
