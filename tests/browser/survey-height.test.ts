import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { demoPlan } from '../../engine/index.ts';
import { faultsOf } from './axe.ts';
import { planOf } from './drawing-hands.ts';
import { KEYS, POINTER, TAPS, windowFor } from './hands.ts';
import type { Hand } from './hands.ts';
import { actionsOf, browserSession, graded, openApp } from './harness.ts';
import { drawnJpeg, scaleIt } from './picture-scale.ts';

const session = browserSession();

/** From any stage to where a height is found out, of what, and by a shadow so long at that minute. */
async function measure(
  page: Page,
  hand: Hand,
  [label, length]: readonly [label: string, length: string],
  [of, date, time]: readonly [of: RegExp, date: string, time: string],
): Promise<void> {
  await hand.go(page, 1);
  await hand.press(page, page.getByRole('button', { name: 'How do I find this?' }));
  const topics = page.getByRole('navigation', { name: 'What to find out' });
  await hand.press(page, topics.getByRole('button', { name: 'A height' }));
  await hand.select(page, page.getByLabel('Height of', { exact: true }), of);
  await hand.type(page, page.getByLabel(label), length);
  await hand.date(page, page.getByLabel('Date of the shadow'), date);
  await hand.time(page, page.getByLabel('Time by the clock'), time);
}

/** A lamp post by its shadow at some minute, in so many actions at most. */
async function measureLampPost(
  page: Page,
  hand: Hand,
  [shadow, ...when]: readonly [length: string, date: string, time: string],
  says: RegExp,
  most: number,
): Promise<void> {
  const before = await actionsOf(page);
  const lampPost = [/^something not on the plan$/, ...when] as const;
  await measure(page, hand, ['Length of the shadow, from the foot', shadow], lampPost);
  await page.getByRole('region', { name: 'Height found' }).getByText(says).waitFor();
  expect((await actionsOf(page)) - before).toBeLessThanOrEqual(most);
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
  const found = page.getByRole('region', { name: 'Height found' });
  // 5.2 m · tan 29.8° = 2.98 m; of 5.3 m 3.03 m or 3.04.
  await measureLampPost(page, KEYS, ['5.3', '2026-05-02', '10:00'], /^3\.0[34] m ± 0\.0\d m high$/, 12);
  await measureLampPost(page, POINTER, ['5.2', '2026-05-02', '10:00'], /^2\.98 m ± 0\.0\d m high$/, 7);
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

test("the gum's shadow tip is not thrown by its top: 11.0 m, not 11.8", async () => {
  const context = await session.context(windowFor(TAPS));
  const { page, complaints } = await openApp(context, session.site.address);
  const lane = demoPlan('lane');
  const gum = lane.features.find(({ id }) => id === 'gum');
  await page.getByRole('button', { name: /Yard and files/ }).click();
  await page.getByRole('button', { name: `Demo: ${lane.name}` }).click();
  await graded(page);
  const found = page.getByRole('region', { name: 'Height found' });
  const measureGum = async (hand: Hand, tip: string, says: RegExp, most: number): Promise<void> => {
    const before = await actionsOf(page);
    const gumThen = [new RegExp(`^${gum?.name}$`), '2027-01-10', '09:00'] as const;
    await measure(page, hand, ["From the trunk to the shadow's far tip", tip], gumThen);
    await found.getByText(says).waitFor();
    await hand.press(page, found.getByRole('button', { name: /^Use it for/ }));
    expect((await actionsOf(page)) - before).toBeLessThanOrEqual(most);
  };
  await measureGum(TAPS, '17.95', /^1(0\.9|1\.0)\d m ± .* high$/, 8);
  await expect.poll(() => page.getByLabel("Crown's width").inputValue()).toBe('8');
  expect(await page.getByLabel('Where the crown begins').inputValue()).toBe('3.5');
  await found.getByText(/would say 11\.8 m: the tip of this shadow is not thrown by the top/).waitFor();
  await found.getByRole('img', { name: /touches the crown .* not at its top/ }).waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await expect
    .poll(async () => (await planOf(page)).features.find(({ id }) => id === 'gum')?.how?.height?.by)
    .toBe('shadow');
  // By its tip 11.8 m of 17.95 would be 11.2 of 17, and 10.6 of 16; and a lamp post of
  // 3.30 m by taps, of a shadow of 5 m.
  await measureGum(POINTER, '17', /would say 11\.2 m/, 8);
  await measureGum(KEYS, '16', /would say 10\.6 m/, 13);
  await measureLampPost(page, TAPS, ['5', '2027-01-10', '09:00'], /^3\.(29|30) m ± 0\.0\d m high$/, 7);
  await page.getByLabel('Height of', { exact: true }).selectOption({ label: gum?.name ?? 'gum' });
  await page.getByLabel("From the trunk to the shadow's far tip").fill('2');
  await found.getByText(/The shadow is too short for that crown/).waitFor();
  // A picture is scaled by taps too; by pointer and keys in survey-picture.test.ts.
  await page
    .getByRole('navigation', { name: 'What to find out' })
    .getByRole('button', { name: 'A picture to trace' })
    .tap();
  await page
    .getByLabel(/^(Choose a|Take another) picture/)
    .setInputFiles({ name: 'yard.jpg', mimeType: 'image/jpeg', buffer: await drawnJpeg(page) });
  await page.getByRole('img', { name: 'The picture under the drawing' }).waitFor();
  await scaleIt(page, TAPS, 10);
  expect(complaints).toEqual([]);
  await context.close();
});
