import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { demoPlan } from '../../engine/index.ts';
import { faultsOf } from './axe.ts';
import { planOf } from './drawing-hands.ts';
import { oneIn } from '../long.ts';
import { SIZES, actionsOf, browserSession, graded, openApp } from './harness.ts';

const session = browserSession();

async function openHeights(page: Page): Promise<void> {
  await page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name: /Draw/ }).click();
  await page.getByRole('button', { name: 'How do I find this?' }).click();
  await page.getByRole('navigation', { name: 'What to find out' }).getByRole('button', { name: 'A height' }).click();
}

/** Presses a button that asks how the phone is held, and holds it so: what a browser would tell is made up. */
async function held(page: Page, button: string | RegExp, angles: DeviceOrientationEventInit): Promise<void> {
  await page.getByRole('button', { name: button }).click();
  await page.evaluate(
    (told) => window.dispatchEvent(new DeviceOrientationEvent('deviceorientationabsolute', told)),
    angles,
  );
  await page.waitForTimeout(600);
}

test("a lamp post's shadow of 5.2 m with the sun 29.8° high says 2.98 m, with its ±", async () => {
  const context = await session.context();
  const { page, complaints } = await openApp(context, session.site.address);
  await openHeights(page);
  await page.getByLabel('Height of', { exact: true }).selectOption({ label: 'something not on the plan' });
  await page.getByLabel('Length of the shadow, from the foot').fill('5.2');
  await page.getByLabel('Date of the shadow').fill('2026-05-02');
  await page.getByLabel('Time by the clock').fill('10:00');
  const found = page.getByRole('region', { name: 'Height found' });
  // 5.2 m · tan 29.8° = 2.98 m.
  await found.getByText(/^2\.98 m ± 0\.0\d m high$/).waitFor();
  expect(await actionsOf(page)).toBeLessThanOrEqual(7);
  // The same without a clock: a pole of 2 m with a shadow of 3.492 m stands under the same sun.
  await page.getByRole('radio', { name: "A pole's shadow beside it" }).check();
  await page.getByLabel("The pole's height").fill('2');
  await page.getByLabel("The pole's shadow", { exact: true }).fill('3.492');
  await found.getByText(/^2\.98 m ± 0\.0\d m high$/).waitFor();
  await page.getByRole('radio', { name: 'Courses of brick or block' }).check();
  await page.getByLabel('Courses, ground to top').fill('9');
  await page.getByLabel('One course with its joint').fill('0.2');
  await found.getByText(/^1\.80 m ± 0\.03 m high$/).waitFor();
  // Sighted from ten metres off, 30° up and 8° down: 10·(tan 30° + tan 8°) = 7.18 m. The phone says how it is held.
  await page.getByRole('radio', { name: 'Sighting its top and foot' }).check();
  await page.getByLabel('From you to its foot').fill('10');
  await held(page, 'Aim at its top, then tap here', { beta: 30 });
  await held(page, 'Aim at its foot, then tap here', { beta: -8 });
  await found.getByText(/^7\.18 m ± 0\.\d\d m high$/).waitFor();
  // Round the skyline, turning against the clock as the standard's alpha does; the needle points 9° or so east here.
  await page.getByRole('navigation', { name: 'What to find out' }).getByRole('button', { name: 'The skyline' }).click();
  for (const [alpha, beta] of [
    [100, 12],
    [220, 3],
    [340, 7],
  ])
    await held(page, /^Sight along the phone’s long edge at the skyline/, { alpha, beta, absolute: true });
  await page.getByRole('button', { name: 'Use this skyline' }).click();
  await expect.poll(async () => (await planOf(page)).site.skyline?.map(({ altitude }) => altitude)).toEqual([7, 3, 12]);
  expect(await faultsOf(page)).toEqual([]);
  expect(complaints).toEqual([]);
  await context.close();
});

test.each(
  oneIn(2, [
    ['phone', SIZES.phone],
    ['laptop', SIZES.laptop],
  ] as const),
)("on a %s the gum's shadow tip is not thrown by its top: 11.0 m, not 11.8", async (_name, viewport) => {
  const context = await session.context({ viewport });
  const { page, complaints } = await openApp(context, session.site.address);
  const lane = demoPlan('lane');
  const gum = lane.features.find(({ id }) => id === 'gum');
  await page.getByRole('button', { name: /Yard and files/ }).click();
  await page.getByRole('button', { name: `Demo: ${lane.name}` }).click();
  await graded(page);
  const before = await actionsOf(page);
  await openHeights(page);
  await page.getByLabel('Height of', { exact: true }).selectOption({ label: gum?.name ?? 'gum' });
  await expect.poll(() => page.getByLabel("Crown's width").inputValue()).toBe('8');
  expect(await page.getByLabel('Where the crown begins').inputValue()).toBe('3.5');
  await page.getByLabel("From the trunk to the shadow's far tip").fill('17.95');
  await page.getByLabel('Date of the shadow').fill('2027-01-10');
  await page.getByLabel('Time by the clock').fill('09:00');
  const found = page.getByRole('region', { name: 'Height found' });
  await found.getByText(/^1(0\.9|1\.0)\d m ± .* high$/).waitFor();
  await found.getByText(/would say 11\.8 m: the tip of this shadow is not thrown by the top/).waitFor();
  await found.getByRole('img', { name: /touches the crown .* not at its top/ }).waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await found.getByRole('button', { name: /^Use it for/ }).click();
  expect((await actionsOf(page)) - before).toBeLessThanOrEqual(8);
  await expect
    .poll(async () => (await planOf(page)).features.find(({ id }) => id === 'gum')?.how?.height?.by)
    .toBe('shadow');
  await page.getByLabel("From the trunk to the shadow's far tip").fill('2');
  await found.getByText(/The shadow is too short for that crown/).waitFor();
  expect(complaints).toEqual([]);
  await context.close();
});
