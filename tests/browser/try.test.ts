import AxeSource from 'axe-core';
import type { Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { compareOptions, demoPlan, doubtOf, loadOf, payoffMap, withOptions } from '../../engine/index.ts';
import { planOf } from './drawing-hands.ts';
import { browserSession, openApp } from './harness.ts';

const session = browserSession();

/** Three options are held against today with every doubt: on a busy machine that takes its time. */
const COMPARED_MS = 100_000;
vi.setConfig({ testTimeout: 2 * COMPARED_MS });

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
    await expect.poll(async () => (await cells.allTextContents()).map((text) => text.replace(/[●○]+ /, '')), { timeout: COMPARED_MS }).toEqual([label === 'Cost' ? '0' : '', of(0), of(1), of(2)]);
  }
  const alike = table.getByRole('row', { name: 'As good as' }).getByRole('cell');
  const { choices } = answer.value;
  expect(await alike.allTextContents()).toEqual(['', ...choices.map(({ asGoodAs }) => asGoodAs.map((name) => choices.find((each) => each.name === name)?.options.join(' + ') ?? name).join(', ') || '–')]);
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

test('what option B changes is drawn in two textures, and the ground that changes is the engine’s', async () => {
  const { page, complaints, close } = await atTrying();
  await openOption(page, /^B/);
  const shows = page.getByRole('group', { name: 'The drawing shows' });
  await shows.getByRole('button', { name: 'Difference' }).press('Enter');
  const demo = demoPlan('courtyard');
  const tried = withOptions(demo, ['B']);
  if (!tried.ok) throw new Error(tried.problems[0].message);
  const [before, after] = [demo, tried.plan].map((plan) => {
    const load = loadOf(plan, { period: { kind: 'heatwave' }, cell: 0.25, height: 0.5 });
    if (!load.ok) throw new Error(load.problems[0].message);
    return load.value.cells.hotLoad;
  });
  // By the key's own words: from 3 % of the map's scale of 24 MJ/m² on it is a change.
  const ground = (way: 1 | -1): string => `${(before.filter((was, k) => was !== null && way * ((after[k] ?? NaN) - was) >= 0.03 * 24).length / 16).toFixed(1)} m²`;
  await page.getByText(`Lines: less hot load, ${ground(-1)} of ground.`).waitFor({ state: 'attached' });
  await page.getByText(`Dots: more, ${ground(1)}.`).waitFor({ state: 'attached' });
  await shows.getByRole('button', { name: 'Where it pays' }).press('Enter');
  const [roof] = demo.options?.find(({ id }) => id === 'B')?.adds ?? [];
  if (roof?.kind !== 'canopy') throw new Error('Option B begins with a roof.');
  const pays = payoffMap(demo, roof);
  if (!pays.ok) throw new Error(pays.problems[0]?.message);
  await page.getByText(`at most ${pays.value.most.toFixed(1)} K·h a m² a hot day`).waitFor({ state: 'attached' });
  await shows.getByRole('button', { name: 'Before' }).press('Enter');
  await expect.poll(() => shows.getByRole('button', { pressed: true }).textContent()).toBe('Before');
  expect(complaints).toEqual([]);
  await close();
});

test('option A is shown wrong and B better: B spares the lemon more', async () => {
  const { page, close } = await atTrying();
  const harmIn = async (option: RegExp): Promise<number> => {
    await openOption(page, option);
    const words = page.getByText(/^Heat over the limit: /);
    await words.waitFor({ state: 'attached', timeout: COMPARED_MS });
    const [, after] = /Lemon pot \d+ → (\d+)/i.exec((await words.textContent()) ?? '') ?? [];
    return Number(after);
  };
  const underA = await harmIn(/^A/);
  const underB = await harmIn(/^B/);
  expect(underB).toBeLessThan(underA);
  await close();
});

test('while a roof is dragged its effect is told in rough numbers, which go when the full answer is there', async () => {
  const { page, complaints, close } = await atTrying();
  await openOption(page, /^B/);
  await page.getByRole('button', { name: 'Lower roof over the lemon: its numbers' }).press('Enter');
  const paper = page.getByRole('region', { name: 'Option B' });
  const ground = await page.locator('path.boundary').boundingBox();
  if (!ground) throw new Error('The yard is not drawn.');
  // Inside the roof over (9.6, 6.4), off the lemon and off the grips at its corners; the courtyard is 11 by 8.5 m.
  const [x, y] = [ground.x + (ground.width * 10.3) / 11, ground.y + ground.height * (1 - 7.1 / 8.5)];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x - 60, y + 30, { steps: 3 });
  await paper.getByText(/^~ spares \d+\.\d K·h a hot day/).waitFor({ timeout: COMPARED_MS });
  await page.mouse.up();
  await page.getByRole('button', { name: 'Undo: Move Lower roof over the lemon' }).waitFor();
  await paper.getByText(/^~ spares/).waitFor({ state: 'detached', timeout: COMPARED_MS });
  expect(complaints).toEqual([]);
  await close();
});

test('what hangs on the guesses is said, and what to measure first, as the engine has it', async () => {
  const { page, complaints, close } = await atTrying();
  await page.getByRole('region', { name: 'How sure' }).getByRole('button', { name: 'What hangs on the guesses?' }).press('Enter');
  const sure = page.getByRole('region', { name: 'Slip' });
  const answer = doubtOf(demoPlan('courtyard'));
  if (!answer.ok) throw new Error(answer.problems[0]?.message);
  const { sentence, inputs, measureNext } = answer.value;
  await sure.getByText(sentence).waitFor({ state: 'attached', timeout: COMPARED_MS });
  const bars = sure.getByRole('listitem').filter({ hasText: '±' });
  expect(await bars.first().textContent()).toContain(`${inputs[0].name}, ± ${inputs[0].pmText}`);
  const first = inputs.find(({ key }) => key === measureNext);
  expect(await sure.getByText('Measure this first.').count()).toBe(first ? 1 : 0);
  if (first) await bars.filter({ hasText: 'Measure this first.' }).filter({ hasText: first.name }).waitFor({ state: 'attached' });
  expect(complaints).toEqual([]);
  await close();
});

test('an onlooker over every wall is said to be one from whom almost nothing can be hidden', async () => {
  const { page, close } = await atTrying();
  await page.getByLabel('Draw how tall a thing may stand unseen').check();
  await page.getByRole('region', { name: 'What stays hidden' }).getByText(/Neighbour’s roof terrace: looks in over every wall/).waitFor({ timeout: COMPARED_MS });
  await close();
});

test('the stage of trying has no fault that axe finds', async () => {
  const { page, close } = await atTrying();
  await openOption(page, /^B/);
  await page.getByRole('region', { name: 'Side by side' }).waitFor({ timeout: COMPARED_MS });
  await page.evaluate(AxeSource.source);
  const found = await page.evaluate(async () => (await (globalThis as unknown as { axe: typeof AxeSource }).axe.run(document.querySelector('#slip')!)).violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`));
  expect(found).toEqual([]);
  await close();
});
