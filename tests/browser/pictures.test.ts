import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { demoPlan, spotOf, minutesOf } from '../../engine/index.ts';
import { faultsOf } from './axe.ts';
import { browserSession, openApp, unfold } from './harness.ts';

const session = browserSession();
const PLAN = demoPlan('courtyard');

async function openPlant(page: Page, name: string): Promise<Locator> {
  const plant = page
    .getByRole('region', { name: 'Plants, worst first' })
    .getByRole('listitem')
    .filter({ hasText: name });
  await plant.getByRole('button', { name }).click();
  return plant;
}

test('the sky from the hydrangea says when the sun reaches it, as the engine does, and what it goes behind', async () => {
  const context = await session.context();
  const { page, complaints } = await openApp(context, session.site.address);
  const hydrangea = await openPlant(page, 'Hydrangea');
  await hydrangea.getByText('The sky from its top').click();
  const dome = hydrangea.getByRole('img', { name: /^On 21 July the sun reaches its top/ });
  const finding = (await dome.getAttribute('aria-label')) ?? '';
  const plant = PLAN.features.find(({ id }) => id === 'hydrangea');
  if (plant?.kind !== 'plant') throw new Error('No hydrangea.');
  const day = spotOf(PLAN, plant.at, { period: { kind: 'day', date: '07-21' }, height: plant.height + 0.01 });
  if (!day.ok || !('steps' in day.value)) throw new Error('No day.');
  const last = day.value.steps.findLast(({ share }) => share >= 0.5);
  const said = finding.match(/\d\d:\d\d/g)?.at(-1) ?? '';
  expect(Math.abs(minutesOf(said) - minutesOf(last?.when.slice(11, 16) ?? ''))).toBeLessThanOrEqual(5);
  expect(finding).toMatch(/behind .+\.$/);
  await hydrangea.getByText('The same as a table').first().click();
  await hydrangea.getByRole('rowheader', { name: '21 September' }).first().waitFor();
  await hydrangea.getByRole('button', { name: 'Looking up, east left' }).click();
  expect(await faultsOf(page)).toEqual([]);
  expect(complaints).toEqual([]);
  await context.close();
});

test('hour by date: the arrow keys walk its cells, and Enter sets the sun bar to the hour', async () => {
  const context = await session.context();
  const { page, complaints } = await openApp(context, session.site.address);
  const lemon = await openPlant(page, 'Lemon pot');
  await lemon.getByText('Hour by date at its top').click();
  const grid = lemon.getByRole('grid', { name: /^Most hot sun comes to its top in the week of \d+ (July|August)/ });
  await grid.getByRole('columnheader', { name: /week of 1 June/ }).waitFor();
  await grid.locator('[tabindex="0"]').focus();
  for (const key of ['ArrowRight', 'ArrowDown']) await page.keyboard.press(key);
  await expect
    .poll(() =>
      grid
        .locator('[tabindex="0"]')
        .evaluate((cell) => cell === document.activeElement && (cell as HTMLTableCellElement).cellIndex),
    )
    .toBe(2);
  await page.keyboard.press('Enter');
  await expect.poll(() => page.getByRole('radio', { name: 'This day' }).isChecked()).toBe(true);
  await lemon.getByRole('button', { name: 'Any sun', exact: true }).click();
  await lemon.getByRole('grid', { name: /^Most sun comes to its top/ }).waitFor();
  expect(await lemon.getByText('leaf over its limit').count()).toBeGreaterThan(20);
  await lemon.getByRole('button', { name: 'Any sun, whole year' }).click();
  await lemon.getByRole('columnheader', { name: /week of 1 January/ }).waitFor();
  expect(await faultsOf(page)).toEqual([]);
  expect(complaints).toEqual([]);
  await context.close();
});

test('the yard as the sun sees it says how many plants are lit, and at night that it sees none', async () => {
  const context = await session.context();
  const { page, complaints } = await openApp(context, session.site.address);
  await unfold(page, 'For the curious');
  await page.getByText('The yard as the sun sees it').click();
  await page
    .getByRole('img', { name: /^17:00, 21 July\. The sun sees (all|\d+) of your \d+ plants and beds\.$/ })
    .waitFor();
  const picture = page.locator('details', { has: page.getByText('The yard as the sun sees it') }).last();
  await picture.getByText('The same as a table').click();
  await expect
    .poll(() => picture.getByRole('row').filter({ hasText: 'Lemon pot' }).textContent())
    .toMatch(/Lemon pot\d+ %/);
  await picture.getByText('The day in 6 stills').click();
  await expect.poll(() => picture.getByRole('img', { name: /The sun sees/ }).count()).toBe(7);
  await page.getByText('The shadow of a 1 m stick').click();
  // Highest sun of that day, 14:26 by the clocks; a shadow lies away from it.
  await page
    .getByRole('img', {
      name: /^On 21 July a stick of 1 m throws its shortest shadow about 14:30: 0\.3\d m to the north\.$/,
    })
    .waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await page.getByRole('slider', { name: /time/i }).first().focus();
  await page.keyboard.press('Home');
  await page.getByText(/The sun does not see the yard now/).waitFor();
  expect(complaints).toEqual([]);
  await context.close();
});
