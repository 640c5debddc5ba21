import type { Locator, Page } from 'playwright-core';
import AxeSource from 'axe-core';
import { expect, test } from 'vitest';
import { demoPlan, placeOf } from '../../engine/index.ts';
import { planOf } from './drawing-hands.ts';
import { SIZES, browserSession, openApp } from './harness.ts';

const session = browserSession();

async function atPlaces(size: keyof typeof SIZES): Promise<{ page: Page; best: Locator; complaints: string[]; close: () => Promise<void> }> {
  const context = await session.context({ viewport: SIZES[size], hasTouch: size === 'phone' });
  const { page, complaints } = await openApp(context, session.site.address);
  await page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name: /Place|Pots/ }).click();
  const best = page.getByRole('region', { name: 'Best places' });
  await best.waitFor({ state: 'attached' });
  return { page, best, complaints, close: () => context.close() };
}

test.each(['laptop', 'phone'] as const)('the lemon goes to its best allowed place in an option, on a %s, and the yard stays as it was', async (size) => {
  const { page, best, complaints, close } = await atPlaces(size);
  const before = await planOf(page);
  const answer = placeOf(demoPlan('courtyard'), { plant: 'lemon' });
  if (!answer.ok) throw new Error(answer.problems[0]?.message);
  const [first] = answer.value.spots;
  await best.getByText(first.sentence).waitFor({ state: 'attached' });
  expect(await best.getByRole('button', { name: /Stay where it is/ }).count()).toBe(1);
  await best.getByRole('button', { name: 'Put it there in a new option' }).press('Enter');
  await page.getByRole('button', { name: 'Undo: Put Lemon pot elsewhere in option D' }).waitFor();
  const after = await planOf(page);
  expect(after.features).toEqual(before.features);
  expect(after.options?.at(-1)).toMatchObject({ id: 'D', moves: { lemon: first.at } });
  expect(complaints).toEqual([]);
  await close();
});

test('"I have moved it" moves the pot and writes the diary in one step, and undo takes both back', async () => {
  const { page, best, close } = await atPlaces('laptop');
  const before = await planOf(page);
  await best.getByRole('button', { name: 'I have moved it' }).press('Enter');
  const undo = page.getByRole('button', { name: 'Undo: Move Lemon pot' });
  await undo.waitFor();
  const after = await planOf(page);
  expect(after.journal).toHaveLength((before.journal?.length ?? 0) + 1);
  expect(after.journal?.at(-1)).toMatchObject({ what: 'moved', feature: 'lemon' });
  expect(after.features.find(({ id }) => id === 'lemon')).not.toEqual(before.features.find(({ id }) => id === 'lemon'));
  await undo.click();
  await expect.poll(async () => (await planOf(page)).features).toEqual(before.features);
  await close();
});

test('ground that is barred has its reasons in words', async () => {
  const { page, close } = await atPlaces('laptop');
  await page.getByText('Hatched ground: where it may not stand').click();
  await page.getByRole('listitem').filter({ hasText: 'No pot may stand on the well' }).waitFor();
  await close();
});

test('the stage of the pots has no fault that axe finds', async () => {
  const { page, close } = await atPlaces('laptop');
  await page.evaluate(AxeSource.source);
  const found = await page.evaluate(async () => (await (globalThis as unknown as { axe: typeof AxeSource }).axe.run(document.querySelector('#slip')!)).violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`));
  expect(found).toEqual([]);
  await close();
});
