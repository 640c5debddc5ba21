import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { demoPlan, loadOf, planText, spotOf, minutesOf } from '../../engine/index.ts';
import type { Period, Plan, PlantLoad, SpotStep } from '../../engine/index.ts';
import { faultsOf } from './axe.ts';
import { SIZES, actionsOf, browserSession, openApp, unfold } from './harness.ts';

const session = browserSession();
const PLAN = demoPlan('courtyard');

function plantsOf(): readonly PlantLoad[] {
  const result = loadOf(PLAN, { period: { kind: 'heatwave' }, cell: 1, height: 0.5 });
  if (!result.ok) throw new Error(result.problems[0].message);
  return result.value.plants;
}

/** The day at a plant's top, by the engine alone. */
function dayAt(id: string, period: Period): readonly SpotStep[] {
  const plant = plantsOf().find((one) => one.id === id);
  const result = plant && spotOf(PLAN, plant.at, { period, height: plant.height + 0.01 });
  if (!result?.ok || !('steps' in result.value)) throw new Error(`No day at ${id}.`);
  return result.value.steps;
}

function plantsList(page: Page): Locator {
  return page.getByRole('region', { name: 'Plants, worst first' }).getByRole('listitem');
}

/** Waits until the map says so of itself. */
async function captioned(page: Page, words: string | RegExp): Promise<void> {
  await page.locator('.map-caption').filter({ hasText: words }).waitFor();
}

/** The hour that the chosen lemon's card names is the engine's; in one action from the first screen. */
async function hottestHour(page: Page): Promise<void> {
  const before = await actionsOf(page);
  const lemon = plantsList(page).filter({ hasText: 'Lemon pot' });
  await lemon.getByRole('button').click();
  const said = await lemon.getByText(/^Hottest hour: /).textContent();
  expect((await actionsOf(page)) - before).toBe(1);
  const steps = dayAt('lemon', { kind: 'heatwave' }).filter(({ altitude }) => altitude > 0);
  const hottest = steps.reduce((best, step) =>
    step.share * step.sunshine * step.air > best.share * best.sunshine * best.air ? step : best,
  );
  const from = minutesOf(said?.match(/hour: (\d\d:\d\d)/)?.[1] ?? '');
  const clock = minutesOf(hottest.when.slice(11, 16));
  expect(clock).toBeGreaterThanOrEqual(from);
  expect(clock).toBeLessThan(from + 60);
  expect(from).toBeGreaterThanOrEqual(15 * 60);
  expect(from).toBeLessThanOrEqual(17 * 60);
  await lemon.getByText(/by the clocks of Europe\/Madrid/).waitFor();
  expect(await faultsOf(page)).toEqual([]);
}

test(
  'without an action the first screen says which plant is worst off, when, and on which side, as the engine does; in ' +
    'one the hottest hour at it; in two more that on 21 July the west wall takes the sun off the hydrangea at 16:22',
  async () => {
    const context = await session.context();
    const { page, complaints } = await openApp(context, session.site.address);
    const worst = plantsList(page).first();
    const lemon = plantsOf().find(({ id }) => id === 'lemon');
    await worst.getByText('Lemon pot').waitFor();
    await worst.getByText('will burn', { exact: true }).waitFor();
    expect(lemon?.verdict).toBe('will burn');
    expect(await worst.textContent()).toContain(`${lemon?.when?.from} to ${lemon?.when?.to}`);
    // Its top is the worst; of its flanks the southern one.
    expect(await worst.textContent()).toContain(', south side');
    expect(await actionsOf(page)).toBe(0);

    await hottestHour(page);

    const before = await actionsOf(page);
    await page.getByRole('radio', { name: 'This day' }).check();
    const hydrangea = plantsList(page).filter({ hasText: 'Hydrangea' });
    await hydrangea.getByRole('button').click();
    await hydrangea.getByText(/on 21 July, by the clocks/).waitFor();
    expect((await actionsOf(page)) - before).toBe(2);
    const row = hydrangea.getByRole('row').filter({ hasText: 'West wall' }).last();
    const from = (await row.getByRole('rowheader').textContent())?.slice(0, 5) ?? '';
    // An independent cast of this yard, beam by beam, gave 16:22.
    expect(Math.abs(minutesOf(from) - minutesOf('16:22'))).toBeLessThanOrEqual(5);
    const dark = dayAt('hydrangea', { kind: 'day', date: '07-21' }).find(
      ({ when, share }) => share === 0 && minutesOf(when.slice(11, 16)) > 900,
    );
    expect(dark?.blockers[0].id).toBe('west-wall');
    expect(complaints).toEqual([]);
    await context.close();
  },
);

test('the hottest hour at the lemon pot is found in one tap on a phone', async () => {
  const context = await session.context({ viewport: SIZES.phone, hasTouch: true });
  const { page } = await openApp(context, session.site.address);
  await hottestHour(page);
  await context.close();
});

test('the map’s findings stand in words, and each can be asked about without the map', async () => {
  const context = await session.context();
  const { page, complaints } = await openApp(context, session.site.address);
  await unfold(page, 'For the curious');
  await page.getByText(/^The map in words/).click();
  await page.getByRole('button', { name: 'Ask about spot 1' }).click();
  const spot = page.getByRole('region', { name: 'The pinned spot' });
  await spot.getByText(/^Hottest hour: /).waitFor();
  await spot.getByText('Hot sun', { exact: true }).waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await spot.getByRole('button', { name: 'Take the pin away' }).click();
  await spot.waitFor({ state: 'detached' });

  // The middle of a cell, typed: the map's own reading is the spot's number.
  await unfold(page, 'The map');
  await page.getByRole('button', { name: 'Ask about a spot' }).click();
  await page.getByLabel('Type it').fill('4.15 3.65');
  await page.getByLabel('Type it').press('Enter');
  await spot.getByText('Hot sun', { exact: true }).waitFor();
  const shown = loadOf(PLAN, { period: { kind: 'heatwave' }, cell: 0.1, height: 0.5 });
  if (!shown.ok) throw new Error(shown.problems[0].message);
  const value = shown.value.cells.hotLoad[36 * shown.value.grid.columns + 41] ?? NaN;
  await captioned(page, `at the pin: ${value.toFixed(1)} MJ/m²`);
  await spot
    .getByRole('definition')
    .filter({ hasText: `${value.toFixed(1)} MJ/m²` })
    .waitFor();
  await page.getByRole('application').hover({ position: { x: 300, y: 300 } });
  await captioned(page, /here: \d+\.\d MJ\/m², (mild|warm|strong|harsh|scorching)/);
  expect(complaints).toEqual([]);
  await context.close();
});

test('every quantity has a legend with its unit, and the height of the map may be typed', async () => {
  const context = await session.context();
  const { page } = await openApp(context, session.site.address);
  const choice = page.getByRole('region', { name: 'What the map shows' });
  await unfold(page, 'The map');
  expect(await page.locator('.map-paper .grade-number').first().isVisible()).toBe(false);
  await choice.getByLabel(/Hatches and numbers/).check();
  await page.locator('.map-paper .grade-number').first().waitFor();
  await page.locator('.heat-canvas').waitFor({ state: 'hidden' });
  await page.emulateMedia({ media: 'print' });
  await choice.getByLabel(/Hatches and numbers/).evaluate((box: HTMLInputElement) => box.click());
  await page.locator('.map-paper .grade-number').first().waitFor();
  await page.emulateMedia({ media: 'screen' });
  await choice.getByLabel('The map shows').selectOption({ label: 'Daily light' });
  await choice.getByText(/mol\/m², on the heatwave day: light left for growing/).waitFor();
  const typed = choice.getByLabel('or typed');
  await typed.fill('1.35');
  // The card around it changes while one types.
  await choice.getByLabel('The map shows').evaluate((select: HTMLSelectElement) => {
    select.value = 'skyView';
    select.dispatchEvent(new Event('change', { bubbles: true }));
  });
  await choice.getByText(/how much of the sky’s light/).waitFor();
  expect(await typed.inputValue()).toBe('1.35');
  await typed.press('Enter');
  await expect.poll(() => typed.inputValue()).toBe('1.35 m');
  await captioned(page, /^Sky view 1\.35 m up, heatwave day0 *1 *$/);
  await typed.fill('tall');
  await typed.press('Enter');
  await expect.poll(() => typed.inputValue()).toBe('1.35 m');
  expect(await faultsOf(page)).toEqual([]);
  await context.close();
});

async function drop(page: Page, plan: Plan): Promise<void> {
  await page.evaluate((text) => {
    const data = new DataTransfer();
    data.items.add(new File([text], 'yard.plan.json', { type: 'application/json' }));
    dispatchEvent(new DragEvent('drop', { dataTransfer: data, cancelable: true }));
  }, planText(plan));
  await page
    .getByRole('banner')
    .getByText(plan.name ?? '')
    .waitFor();
}

test('a bare yard, a cool one, one with a rough climate, and a day out of season each say so', async () => {
  const context = await session.context();
  const { page, complaints } = await openApp(context, session.site.address);
  const months = PLAN.climate.months.map((month) => ({ ...month, high: 20, low: 9 }));
  await drop(page, {
    ...PLAN,
    name: 'Bare and cool',
    features: [],
    options: [],
    journal: [],
    climate: { ...PLAN.climate, heatwaveHigh: 24, months, from: 'rough' },
  });
  await page.getByText(/Nothing on the plan throws shade yet/).waitFor();
  await page.getByText(/^No plant is drawn yet/).waitFor();
  await page.getByText(/No spot gets beyond/).waitFor();
  await captioned(page, 'rough climate');
  expect(await faultsOf(page)).toEqual([]);
  await page.getByRole('button', { name: 'Show the light' }).click();
  await captioned(page, 'Daily light');

  await page.getByRole('slider', { name: 'Date' }).focus();
  await page.keyboard.press('Home');
  await captioned(page, '1 January: not your season');
  await page.getByRole('region', { name: 'Sun bar' }).getByText('not your season').waitFor();
  await captioned(page, 'Out of date');
  await page.getByRole('button', { name: 'Give the climate' }).waitFor();
  expect(await faultsOf(page)).toEqual([]);
  expect(complaints).toEqual([]);
  await context.close();
});
