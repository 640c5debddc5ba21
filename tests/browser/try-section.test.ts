import { expect, test } from 'vitest';
import { planOf } from './drawing-hands.ts';
import { SIZES, browserSession, openApp } from './harness.ts';

const session = browserSession();

test.each(['laptop', 'phone'] as const)('under the roof of option A the low sun comes to the lemon from 16:38, and a drop is offered, on a %s', async (size) => {
  const context = await session.context({ viewport: SIZES[size], hasTouch: size === 'phone' });
  const { page, complaints } = await openApp(context, session.site.address);
  await page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name: /Try/ }).click();
  await page.getByRole('group', { name: 'Show on the drawing' }).getByRole('button', { name: /^A/ }).press('Enter');
  const cut = page.getByRole('region', { name: 'Cut through the roof' });
  await cut.getByText(/from 16:3\d on the sun comes in under the roof over the lemon to its west side/).waitFor({ state: 'attached' });
  await cut.getByRole('button', { name: /^Hang this drop/ }).press('Enter');
  await page.getByRole('button', { name: 'Undo: Hang drops from Roof over the lemon' }).waitFor();
  const hung = (await planOf(page)).options?.[0].adds?.[0];
  expect(hung).toMatchObject({ id: 'lemon-roof', drops: [{ side: 'left', density: 0.5 }] });
  expect(complaints).toEqual([]);
  await context.close();
});
