import AxeSource from 'axe-core';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { compareOptions, demoPlan } from '../../engine/index.ts';
import { planOf } from './drawing-hands.ts';
import { browserSession, openApp } from './harness.ts';

const session = browserSession();

async function atTrying(): Promise<{ page: Page; complaints: string[]; close: () => Promise<void> }> {
  const context = await session.context();
  const { page, complaints } = await openApp(context, session.site.address);
  await page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name: /Try/ }).click();
  await page.getByRole('region', { name: 'What is tried' }).waitFor({ state: 'attached' });
  return { page, complaints, close: () => context.close() };
}

async function openOption(page: Page, name: RegExp): Promise<void> {
  await page.getByRole('group', { name: 'Show on the drawing' }).getByRole('button', { name }).press('Enter');
}

test('today, A, B and C stand side by side with cost, light and how sure, as the engine has them', async () => {
  const { page, close } = await atTrying();
  const answer = compareOptions(demoPlan('courtyard'));
  if (!answer.ok) throw new Error(answer.problems[0]?.message);
  const table = page.getByRole('region', { name: 'Side by side' });
  for (const [label, of] of [
    ['How sure', (k: number) => `${answer.value.choices[k].spared.toFixed(1)} ± ${answer.value.choices[k].sparedPm.toFixed(1)} K·h`],
    ['Cost', (k: number) => `${Math.round(answer.value.choices[k].cost.total ?? NaN)} ${answer.value.choices[k].cost.currency}`],
  ] as const) {
    const cells = table.getByRole('row', { name: label }).getByRole('cell');
    await expect.poll(() => cells.allTextContents()).toEqual([label === 'Cost' ? '0' : '', of(0), of(1), of(2)]);
  }
  const alike = table.getByRole('row', { name: 'As good as' }).getByRole('cell');
  expect((await alike.allTextContents())[1]).toBe('C');
  await close();
});

test('a roof is put into a new option, its height typed, and taken into the yard; undo gives all of it back', async () => {
  const { page, complaints, close } = await atTrying();
  const before = await planOf(page);
  await page.getByRole('region', { name: 'What is tried' }).getByRole('button', { name: 'A roof', exact: true }).press('Enter');
  const paper = page.getByRole('region', { name: 'Option D' });
  const height = paper.getByRole('textbox', { name: 'Height of the back edge' });
  await height.fill('2.75');
  await height.press('Enter');
  await expect.poll(async () => (await planOf(page)).options?.at(-1)?.adds?.[0]).toMatchObject({ kind: 'canopy', height: 2.75 });
  expect((await planOf(page)).features).toEqual(before.features);
  await paper.getByRole('button', { name: 'Take it into the yard' }).press('Enter');
  await page.getByRole('button', { name: 'Undo: Take option D into the yard' }).waitFor();
  const after = await planOf(page);
  expect(after.features).toHaveLength(before.features.length + 1);
  expect(after.options).toHaveLength(3);
  for (let step = 0; step < 3; step++) await page.getByRole('button', { name: /^Undo:/ }).click();
  await expect.poll(() => planOf(page)).toEqual(before);
  expect(complaints).toEqual([]);
  await close();
});

test('an onlooker over every wall is said to be one from whom almost nothing can be hidden', async () => {
  const { page, close } = await atTrying();
  await page.getByLabel('Draw how tall a thing may stand unseen').check();
  await page.getByRole('region', { name: 'What stays hidden' }).getByText(/Neighbour’s roof terrace: looks in over every wall/).waitFor();
  await close();
});

test('the stage of trying has no fault that axe finds', async () => {
  const { page, close } = await atTrying();
  await openOption(page, /^B/);
  await page.getByRole('region', { name: 'Side by side' }).waitFor();
  await page.evaluate(AxeSource.source);
  const found = await page.evaluate(async () => (await (globalThis as unknown as { axe: typeof AxeSource }).axe.run(document.querySelector('#slip')!)).violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`));
  expect(found).toEqual([]);
  await close();
});
