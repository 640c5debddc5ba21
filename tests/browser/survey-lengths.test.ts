import { expect, test } from 'vitest';
import { faultsOf } from './axe.ts';
import { planOf } from './drawing-hands.ts';
import { SIZES, browserSession, openApp } from './harness.ts';

const session = browserSession();

test('steps, a walk that closes, two tapes and a fall of the ground are told in plain sentences', async () => {
  const context = await session.context({ viewport: SIZES.phone });
  const { page, complaints } = await openApp(context, session.site.address);
  await page.keyboard.press('Alt+1');
  await page.getByRole('button', { name: 'How do I find this?' }).click();
  await page.getByRole('navigation', { name: 'What to find out' }).getByRole('button', { name: 'Lengths' }).click();
  const steps = page.getByRole('region', { name: 'Your steps' });
  await steps.getByLabel('They cover').fill('14');
  await steps.getByRole('button', { name: 'Keep these steps' }).click();
  await steps.getByLabel('A length in steps').fill('30');
  // 30 · 14/20 = 21 m, paced to 5 %.
  await steps.getByText('21.00 m ± 1.05 m').waitFor();
  const walk = page.getByRole('region', { name: 'A walk round the fence' });
  await walk.getByLabel('Lengths and turns').fill('12.4 right 6.1 right 9 right 6.1');
  await walk.getByText(/you end 3\.40 m from where you began/).waitFor();
  await walk.getByText(/Measure again: leg 1 .* or leg 3/).waitFor();
  await walk.getByLabel('Lengths and turns').fill('12.4 right 6.1 right 12.4 right 6.1');
  await walk.getByRole('button', { name: "Make it the yard's edge" }).click();
  const tapes = page.getByRole('region', { name: 'Two tapes to a point' });
  await tapes.getByLabel('One corner', { exact: true }).fill('0 0');
  await tapes.getByLabel('From it').fill('2.1');
  await tapes.getByLabel('Other corner', { exact: true }).fill('5.6 0');
  await tapes.getByLabel('From that').fill('3.0');
  await tapes.getByText(/2\.1 m \+ 3\.0 m can't reach across 5\.6 m/).waitFor();
  await tapes.getByLabel('Other corner', { exact: true }).fill('5 0');
  // 3-4-5: the right angle stands at (1.8, ±2.4).
  await tapes.getByLabel('From it').fill('3');
  await tapes.getByLabel('From that').fill('4');
  await tapes.getByRole('button', { name: /^Pin 1\.80 2\.40/ }).click();
  const level = page.getByRole('region', { name: 'Is the yard level?' });
  // A phone that was put away in between loses nothing of what is typed, nor the place.
  await walk.getByLabel('Lengths and turns').fill('12.4 right 6');
  await page.reload();
  await level.waitFor();
  expect(await walk.getByLabel('Lengths and turns').inputValue()).toBe('12.4 right 6');
  expect(await tapes.getByLabel('From that').inputValue()).toBe('4');
  expect(await steps.getByLabel('A length in steps').inputValue()).toBe('30');
  await level.getByLabel(/^Fall/).fill('0.4');
  await level.getByText(/Your fall of 0\.4 m acts like 0\.4 m more or less wall/).waitFor();
  expect(await faultsOf(page)).toEqual([]);
  const { site } = await planOf(page);
  expect(site.pace).toEqual({ steps: 20, length: 14 });
  expect(site.boundary).toHaveLength(4);
  expect(complaints).toEqual([]);
  await context.close();
});
