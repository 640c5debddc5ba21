import type { Page } from 'playwright-core';
import { afterAll, expect, test } from 'vitest';
import type { PlanPoint } from '../../engine/index.ts';
import { faultsOf } from './axe.ts';
import { drawing, emptyYard, listOf, onScreen, planOf } from './drawing-hands.ts';
import { SIZES, browserSession, openApp, saved } from './harness.ts';

const session = browserSession();

/** One page for all that needs no other: each test has an empty yard of its own in it. */
let shared: { page: Page; complaints: string[] } | null = null;
afterAll(() => shared?.page.context().close());

async function newYard(): Promise<{ page: Page; complaints: string[] }> {
  shared ??= await openApp(await session.context(), session.site.address);
  await emptyYard(shared.page);
  await shared.page.getByText('Draw the walls that stand round the yard, then the plants.').waitFor();
  return shared;
}

/** A wall from (2, 2) to (6, 2), 1.8 m high as guessed, by keys. */
async function typeWall(page: Page): Promise<void> {
  await listOf(page).getByRole('button', { name: 'Add Wall' }).press('Enter');
  const box = drawing(page).getByLabel('Type it');
  await box.fill('2 2');
  await box.press('Enter');
  await box.fill('4');
  await box.press('Enter');
  await drawing(page).getByRole('button', { name: 'Finish wall' }).press('Enter');
  await drawing(page).getByRole('button', { name: 'Add it to the plan' }).press('Enter');
  await page.getByRole('button', { name: 'Undo: Draw wall' }).waitFor();
  await page
    .getByRole('group', { name: 'Drawing tools' })
    .getByRole('button', { name: /^Choose/ })
    .click();
}

test('a wall height typed as 6\'2" is 1.88 m, 6 ft 2 in when feet are shown, and undo gives the old one', async () => {
  const { page, complaints } = await newYard();
  await typeWall(page);
  const list = listOf(page);
  const row = list.getByRole('button', { name: /^wall/ });
  if ((await row.getAttribute('aria-expanded')) !== 'true') await row.click();
  const height = list.getByLabel('Height', { exact: true });
  await expect.poll(() => height.inputValue()).toBe('1.80 m');
  await list.getByRole('button', { name: /guessed/ }).waitFor();
  await height.fill('6\'2"');
  await height.press('Enter');
  await expect.poll(() => height.inputValue()).toBe('1.88 m');
  expect((await planOf(page)).features[0]).toMatchObject({ height: 1.8796, how: { thickness: { by: 'guess' } } });
  await page.getByRole('button', { name: /^Units:/ }).click();
  await expect.poll(() => height.inputValue()).toBe('6 ft 2 in');
  await page.getByRole('button', { name: 'Undo: Show feet and inches' }).click();
  await page.getByRole('button', { name: 'Undo: Change wall' }).click();
  await expect.poll(() => height.inputValue()).toBe('1.80 m');
  expect(complaints).toEqual([]);
});

test('a box tool dragged from corner to corner draws a box, and let go with its stage it draws no more', async () => {
  const { page, complaints } = await newYard();
  await page.getByRole('group', { name: 'Drawing tools' }).getByRole('button', { name: /^Bed/ }).click();
  const [from, to] = [await onScreen(page, [2, 3]), await onScreen(page, [5, 4])];
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 4 });
  await page.mouse.up();
  await drawing(page).getByRole('button', { name: 'Add it to the plan' }).click();
  await page.getByRole('button', { name: 'Undo: Draw bed' }).waitFor();
  const [bed] = (await planOf(page)).features;
  if (bed?.kind !== 'bed') throw new Error('No bed was drawn.');
  expect(bed.outline.map(([x]) => Math.round(x)).toSorted()).toEqual([2, 2, 5, 5]);
  expect(bed.outline.map(([, y]) => Math.round(y)).toSorted()).toEqual([3, 3, 4, 4]);
  await page.keyboard.press('Alt+2');
  await page.keyboard.press('Alt+1');
  await page
    .getByRole('group', { name: 'Drawing tools' })
    .getByRole('button', { name: /^Choose/, pressed: true })
    .waitFor();
  expect(complaints).toEqual([]);
});

test('a tree drawn as a fig takes a fig’s crown as a first guess, and another kind takes its place later', async () => {
  const { page, complaints } = await newYard();
  await listOf(page).getByRole('button', { name: 'Add Tree' }).press('Enter');
  const box = drawing(page).getByLabel('Type it');
  await box.fill('5 4');
  await box.press('Enter');
  await drawing(page).getByLabel('Which tree?').selectOption('fig');
  await drawing(page).getByText('12 % of the sun passes, ± 10').waitFor();
  await drawing(page).getByRole('button', { name: 'Add it to the plan' }).press('Enter');
  await page.getByRole('button', { name: 'Undo: Draw fig' }).waitFor();
  const fig = (await planOf(page)).features[0];
  expect(fig).toMatchObject({
    name: 'fig',
    openness: 0.12,
    leafless: { openness: 0.65 },
    how: { openness: { by: 'catalogue', pm: 0.1 }, height: { by: 'guess' } },
  });
  await page
    .getByRole('group', { name: 'Drawing tools' })
    .getByRole('button', { name: /^Choose/ })
    .click();
  const row = listOf(page).getByRole('button', { name: /^fig/ });
  if ((await row.getAttribute('aria-expanded')) !== 'true') await row.click();
  await listOf(page).getByLabel('Which tree?').selectOption('cypress');
  await page.getByRole('button', { name: /^Undo: Take the crown of Italian cypress/ }).waitFor();
  const cypress = (await planOf(page)).features[0];
  expect(cypress).toMatchObject({
    name: 'Italian cypress',
    openness: 0.08,
    shape: 'column',
    how: { openness: { pm: 0.05 } },
  });
  expect(cypress).not.toHaveProperty('leafless');
  // A name that came with the kind goes with it; one that a person gave stays.
  await listOf(page).getByLabel('Name', { exact: true }).fill('Grandfather’s');
  await listOf(page).getByLabel('Name', { exact: true }).press('Enter');
  await listOf(page).getByLabel('Which tree?').selectOption('fig');
  await page.getByRole('button', { name: /^Undo: Take the crown of fig/ }).waitFor();
  expect((await planOf(page)).features[0]).toMatchObject({ name: 'Grandfather’s', openness: 0.12 });
  expect(complaints).toEqual([]);
});

test('a wall of 18 m asks back, and is kept only when meant', async () => {
  const { page } = await newYard();
  await typeWall(page);
  const height = listOf(page).getByLabel('Height', { exact: true });
  await height.fill('18');
  await height.press('Enter');
  await listOf(page).getByRole('alert').getByText('Height 18.00 m: is that meant?').waitFor();
  await listOf(page).getByRole('button', { name: 'No', exact: true }).click();
  await expect.poll(() => height.inputValue()).toBe('1.80 m');
  await height.fill('18');
  await height.press('Enter');
  await listOf(page).getByRole('button', { name: 'Yes, keep it' }).click();
  await expect.poll(() => height.inputValue()).toBe('18.00 m');
});

test('a number typed and not yet entered is in the file that is saved, and one that cannot be is said to be missing', async () => {
  const { page } = await newYard();
  await typeWall(page);
  const height = listOf(page).getByLabel('Height', { exact: true });
  await height.fill('2.15');
  expect((await planOf(page)).features[0]).toMatchObject({ height: 2.15 });
  await height.fill('tall');
  await page.keyboard.press('Control+s');
  await page
    .getByText(/without what is typed in one box. Height: "tall" is not a number/)
    .first()
    .waitFor();
});

test('a number that cannot be is refused in a sentence beside its box, and the plan stays', async () => {
  const { page } = await newYard();
  await typeWall(page);
  const height = listOf(page).getByLabel('Height', { exact: true });
  await height.fill('tall');
  await height.press('Enter');
  await listOf(page).getByRole('alert').getByText('Height: "tall" is not a number such as 1.80 m.').waitFor();
  expect((await planOf(page)).features[0]).toMatchObject({ height: 1.8 });
});

test('a drag of a chosen wall is one step of undo, snapped to the grid', async () => {
  const { page, complaints } = await newYard();
  await typeWall(page);
  const from = await onScreen(page, [3, 2]);
  const to = await onScreen(page, [4, 5]);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + 20, from.y - 20);
  await page.mouse.move(to.x, to.y, { steps: 5 });
  await page.mouse.up();
  await page.getByRole('button', { name: 'Undo: Move wall' }).waitFor();
  expect((await planOf(page)).features[0]).toMatchObject({
    path: [
      [3, 5],
      [7, 5],
    ],
  });
  await page.getByRole('button', { name: 'Undo: Move wall' }).click();
  expect((await planOf(page)).features[0]).toMatchObject({
    path: [
      [2, 2],
      [6, 2],
    ],
  });
  expect(complaints).toEqual([]);
});

test('a drag cut off by a reload, or by Escape, is never half there', async () => {
  const { page } = await newYard();
  await typeWall(page);
  await saved(page);
  const from = await onScreen(page, [3, 2]);
  const startDrag = async (): Promise<void> => {
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x + 90, from.y - 90, { steps: 4 });
  };
  await startDrag();
  await page.keyboard.press('Escape');
  await page.mouse.up();
  expect((await planOf(page)).features[0]).toMatchObject({
    path: [
      [2, 2],
      [6, 2],
    ],
  });
  await startDrag();
  await page.reload();
  await page.mouse.up();
  await page.getByRole('button', { name: 'Undo: Draw wall' }).waitFor();
  expect((await planOf(page)).features[0]).toMatchObject({
    path: [
      [2, 2],
      [6, 2],
    ],
  });
});

test('arrows nudge by 10 cm, with Shift by 1 cm, as one step; a copy and a deletion are steps too', async () => {
  const { page } = await newYard();
  await typeWall(page);
  await page.getByRole('application').focus();
  for (const key of ['ArrowRight', 'ArrowRight', 'ArrowUp', 'Shift+ArrowUp']) await page.keyboard.press(key);
  expect((await planOf(page)).features[0]).toMatchObject({
    path: [
      [2.2, 2.11],
      [6.2, 2.11],
    ],
  });
  await page.getByRole('button', { name: 'Undo: Nudge wall' }).click();
  expect((await planOf(page)).features[0]).toMatchObject({
    path: [
      [2, 2],
      [6, 2],
    ],
  });
  await listOf(page).getByRole('button', { name: 'Duplicate' }).click();
  await page.getByRole('button', { name: 'Undo: Duplicate wall' }).waitFor();
  expect((await planOf(page)).features.map((feature) => 'path' in feature && feature.path)).toEqual([
    [
      [2, 2],
      [6, 2],
    ],
    [
      [2.5, 1.5],
      [6.5, 1.5],
    ],
  ]);
  await listOf(page).getByRole('button', { name: 'Delete' }).click();
  await page.getByRole('button', { name: 'Undo: Delete wall' }).waitFor();
  expect((await planOf(page)).features).toHaveLength(1);
});

test(
  'on the phone a corner goes elsewhere by two taps without a drag; a slip of the thumb is offered undo for a ' +
    'while, and moves nothing after two idle minutes',
  async () => {
    const context = await session.context({ viewport: SIZES.phone, hasTouch: true, isMobile: true });
    await context.clock.install();
    const { page } = await openApp(context, session.site.address);
    await emptyYard(page, (button) => button.tap());
    await typeWall(page);
    const end = await onScreen(page, [6, 2]);
    await page.touchscreen.tap(end.x, end.y);
    await page.getByText('Bring its new place under the cross and tap Here.').first().waitFor();
    await drawing(page).getByLabel('Type it').fill('6 4');
    await drawing(page).getByRole('button', { name: 'Put' }).tap();
    await page.getByRole('button', { name: 'Undo: Reshape wall' }).waitFor();
    expect((await planOf(page)).features[0]).toMatchObject({
      path: [
        [2, 2],
        [6, 4],
      ],
    });

    // By the middle of the wall, which draws a new corner out of it.
    const touch = await context.newCDPSession(page);
    const path = async (): Promise<unknown> =>
      (await planOf(page)).features.map((feature) => 'path' in feature && feature.path.length);
    const dragUp = async (): Promise<void> => {
      const { x, y } = await onScreen(page, [4, 3]);
      await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
      for (const far of [10, 20, 30])
        await touch.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: [{ x, y: y - far }] });
      await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    };
    await dragUp();
    await page.getByText('Reshape wall: done.').first().waitFor();
    // By mouse: no finger is back so soon, and the browser takes such a tap for one that stops a fling.
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    expect(await path()).toEqual([2]);
    await context.clock.fastForward('02:01');
    await dragUp();
    await page.getByText('Locked, after two minutes without a change').first().waitFor();
    await page.getByRole('button', { name: 'Unlock' }).click();
    expect(await path()).toEqual([2]);
    await dragUp();
    await page.getByText('Reshape wall: done.').first().waitFor();
    // What was done is said for a while, then the drawing is free of it, unless one points at it.
    await page.mouse.move(1, 1);
    await context.clock.fastForward('00:16');
    await page.getByRole('button', { name: 'Undo', exact: true }).waitFor({ state: 'detached' });
    expect(await path()).toEqual([3]);

    // A pot is some 15 px wide here. A finger beside it, within 22 px of its middle, takes it; on its middle it moves
    // it, and changes its size only by the grip outside it, once that is asked for.
    const tools = page.getByRole('group', { name: 'Drawing tools' });
    await tools.getByRole('button', { name: 'Add', exact: true }).tap();
    await tools.getByRole('button', { name: /^Pot/ }).tap();
    await drawing(page).getByLabel('Type it').fill('3 6');
    await drawing(page).getByLabel('Type it').press('Enter');
    await drawing(page).getByRole('button', { name: 'Add it to the plan' }).tap();
    await page.getByRole('button', { name: 'Undo: Draw potted plant' }).waitFor();
    await tools.getByRole('button', { name: /^Choose/ }).tap();
    const more = page.getByRole('button', { name: 'Show more of the panel' });
    if (!(await listOf(page).isVisible())) await more.tap();
    const pot = async (): Promise<{ at: PlanPoint; spread: number }> => {
      const found = (await planOf(page)).features.find(({ kind }) => kind === 'plant');
      if (found?.kind !== 'plant') throw new Error('The pot is gone.');
      return found;
    };
    const drag = async (from: { x: number; y: number }, across: number): Promise<void> => {
      await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [from] });
      for (const share of [0.4, 0.7, 1])
        await touch.send('Input.dispatchTouchEvent', {
          type: 'touchMove',
          touchPoints: [{ x: from.x + share * across, y: from.y }],
        });
      await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    };
    await page.getByRole('button', { name: 'Whole yard' }).tap();
    await page.getByRole('application').tap({ position: { x: 12, y: 12 } });
    const beside = await onScreen(page, [3, 6]);
    await page.touchscreen.tap(beside.x + 15, beside.y + 15);
    await listOf(page).getByRole('button', { name: 'Change its size' }).waitFor();
    const metre = (await onScreen(page, [4, 6])).x - beside.x;
    await drag(beside, 2 * metre);
    await page.getByText('Move potted plant: done.').first().waitFor();
    const moved = await pot();
    expect([...moved.at, moved.spread]).toEqual([expect.closeTo(5, 0), expect.closeTo(6, 1), 0.8]);
    await listOf(page).getByRole('button', { name: 'Change its size' }).tap();
    const middle = await onScreen(page, moved.at);
    await drag({ x: middle.x + 0.4 * metre + 32, y: middle.y }, metre / 2);
    await page.getByText('Reshape potted plant: done.').first().waitFor();
    const wider = await pot();
    expect([wider.at, wider.spread]).toEqual([moved.at, expect.closeTo(1.8, 0)]);
    await context.close();
  },
);

test('a name is never markup, on the drawing or in the list', async () => {
  const { page, complaints } = await newYard();
  await listOf(page).getByRole('button', { name: 'Add Pot' }).press('Enter');
  const box = drawing(page).getByLabel('Type it');
  await box.fill('3 3');
  await box.press('Enter');
  const hostile = '<img src=x onerror="document.title=1"><b>\u202Epot</b> 🍋';
  await drawing(page).getByLabel('Name', { exact: true }).fill(hostile);
  await drawing(page).getByRole('button', { name: 'Add it to the plan' }).click();
  await listOf(page).getByText(hostile).waitFor();
  await page.locator('.map-name').getByText('<img src=x').waitFor({ state: 'attached' });
  expect(await page.locator('.map-paper img, .plan-list img, .map-name b').count()).toBe(0);
  expect(await page.title()).not.toBe('1');
  expect(complaints).toEqual([]);
});

test('nothing on the drawing stage is out of reach: axe finds nothing with a thing chosen, drawn, and asked about', async () => {
  const { page } = await newYard();
  await typeWall(page);
  expect(await faultsOf(page)).toEqual([]);
  await page.getByRole('group', { name: 'Drawing tools' }).getByRole('button', { name: /^Bed/ }).click();
  const box = drawing(page).getByLabel('Type it');
  await box.waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await box.fill('1 1');
  await box.press('Enter');
  await box.fill('3 x 2');
  await box.press('Enter');
  await drawing(page).getByLabel('Which plant').fill('tom');
  expect(await faultsOf(page)).toEqual([]);
  await drawing(page).getByRole('button', { name: 'Add it to the plan' }).click();
  await listOf(page).getByRole('button', { name: /^bed/ }).waitFor();
  expect(await faultsOf(page)).toEqual([]);
});
