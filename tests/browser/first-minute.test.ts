import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { faultsOf } from './axe.ts';
import { planOf } from './drawing-hands.ts';
import { KEYS, TAPS, windowFor } from './hands.ts';
import type { Hand } from './hands.ts';
import { SIZES, actionsOf, browserSession, graded, openApp } from './harness.ts';
import { pressByKey, tabTo } from './keys.ts';

const session = browserSession();

/** From one's own graded yard to what to buy, a line of it ticked. */
const MOST_TO_THE_SHOP = 5;

const goOn = (page: Page): Promise<void> => page.getByRole('button', { name: 'Go on', exact: true }).click();

async function answerAll(page: Page, hand: Hand): Promise<void> {
  const press = (name: string | RegExp): Promise<void> =>
    hand.press(page, page.getByRole('button', { name, exact: typeof name === 'string' }));
  const choose = (name: string): Promise<void> => hand.choose(page, page.getByRole('radio', { name, exact: true }));
  const type = (label: string, text: string): Promise<void> => hand.type(page, page.getByLabel(label), text);
  await press('What happened in my yard?');
  await type('Town, or latitude and longitude', '33.4, -112');
  await page.getByText('clocks of America/Phoenix').waitFor();
  await press('Go on');
  await press(/^Skip: use rough numbers, marked guessed/);
  await choose('Walls all round');
  await type('Across', '12');
  await type('Deep', '9');
  await press('Go on');
  await choose('I know which way the house or the street looks');
  await choose('north');
  await press('Go on');
  await type('Walls or fences', '18');
  await page.getByText('Height 18.00 m: is that meant?').waitFor();
  await type('Walls or fences', '1.8');
  await choose('by tape');
  await press('Go on');
  const plant = page.getByLabel('Plant, or the one most like it');
  if (hand === KEYS) {
    await tabTo(page, plant);
    await page.keyboard.type('lemon');
    for (const way of ['ArrowUp', 'ArrowDown', 'ArrowDown'])
      if ((await plant.inputValue()) !== 'lemon') await page.keyboard.press(way);
    expect(await plant.inputValue()).toBe('lemon');
  } else await plant.selectOption('lemon');
  await type('How tall is it?', '1.5');
  await choose('top left');
  await press('Go on');
  await choose('south-west');
}

/** By keys the job goes on to the shop list: a roof over the lemon, and what to buy for it. */
async function onToTheShop(page: Page): Promise<void> {
  await page.keyboard.press('Alt+4');
  await pressByKey(page, page.getByRole('button', { name: 'A roof', exact: true }));
  await page.getByRole('button', { name: /^Undo: .*roof/ }).waitFor();
  await page.keyboard.press('Alt+5');
  const sheet = page.getByRole('article', { name: /^Build sheet/ });
  await sheet.waitFor();
  await pressByKey(page, page.getByRole('button', { name: 'Shopping list', exact: true }));
  await sheet.getByText(/^Joints and fixings: 0 of/).waitFor();
  const line = sheet.getByRole('checkbox').first();
  await tabTo(page, line);
  await page.keyboard.press('Space');
  await sheet.getByText(/^1 of \d+ lines in hand\.$/).waitFor();
}

test.each([
  ['by keys alone on a laptop', KEYS, 48],
  ['by taps on a phone', TAPS, 18],
] as const)('%s a person starts an own yard, sees it graded, and is told every guess', async (_name, hand, most) => {
  const context = await session.context(windowFor(hand));
  const { page, complaints } = await openApp(context, session.site.address);
  await answerAll(page, hand);
  expect(await faultsOf(page)).toEqual([]);
  await hand.press(page, page.getByRole('button', { name: 'Show me my yard' }));
  const guesses = page.getByRole('region', { name: 'How sure' });
  await guesses.waitFor();
  expect(await guesses.getByRole('listitem').allTextContents()).toEqual([
    'north',
    "the months' temperatures",
    'Garden wall: thickness',
    expect.stringMatching(/lemon.*: width$/i),
  ]);
  await page
    .getByRole('region', { name: 'Answer' })
    .getByRole('heading', { name: /^The sun |^It could be the sun/ })
    .waitFor();
  await graded(page);
  await page.getByRole('button', { name: /^Find north/ }).waitFor();
  expect(await faultsOf(page)).toEqual([]);
  expect(await actionsOf(page)).toBeLessThanOrEqual(most);

  const { site, features, journal } = await planOf(page);
  expect(site).toMatchObject({
    latitude: 33.4,
    longitude: -112,
    timeZone: 'America/Phoenix',
    boundary: [
      [0, 0],
      [12, 0],
      [12, 9],
      [0, 9],
    ],
  });
  expect(features.find(({ kind }) => kind === 'wall')).toMatchObject({ height: 1.8 });
  const plant = features.find(({ kind }) => kind === 'plant');
  expect(plant).toMatchObject({ plant: 'lemon', height: 1.5, container: true });
  if (plant?.kind !== 'plant') throw new Error('The lemon is missing.');
  expect(plant.at[0]).toBeLessThan(1.5);
  expect(plant.at[1]).toBeGreaterThan(7.5);
  expect(journal).toMatchObject([{ what: 'damage', side: 225, part: 'leaf' }]);
  if (hand === KEYS) {
    const before = await actionsOf(page);
    await onToTheShop(page);
    expect((await actionsOf(page)) - before).toBeLessThanOrEqual(MOST_TO_THE_SHOP);
  }
  expect(complaints).toEqual([]);
  await context.close();
});

test('a town is echoed with its country, its namesakes are offered, and a town by the towns near it gets their summer', async () => {
  const context = await session.context({ viewport: SIZES.phone });
  const { page, complaints } = await openApp(context, session.site.address);
  await page.getByRole('button', { name: 'What happened in my yard?' }).click();
  const town = page.getByLabel('Town, or latitude and longitude');
  await town.fill('cordoba');
  await page.getByText('Córdoba, Argentina?').waitFor();
  await page.getByRole('button', { name: 'No, Córdoba, Spain' }).click();
  await page.getByText('Córdoba, Spain?').waitFor();
  await page.getByText('clocks of Europe/Madrid').waitFor();
  await town.fill('las vegas, nv');
  await page.getByText('Las Vegas, Nevada?').waitFor();
  await page.getByRole('radio', { name: 'no', exact: true }).check();
  expect(await faultsOf(page)).toEqual([]);
  await goOn(page);
  // From the first answer on it is one's own yard that the page shows, and no longer the demo's plants.
  await page.getByText(/Usual high in July/).waitFor();
  await expect.poll(() => page.getByText('Orange tree').count()).toBe(0);
  await page.getByLabel('Usual high in July').fill('104');
  await page.getByText('104 is no °C.').waitFor();
  await page.getByRole('button', { name: 'It is °F: use °F and feet' }).click();
  await page.getByLabel('Usual high in July').fill('');
  for (let question = 2; question <= 6; question++) await page.getByRole('button', { name: /^Skip: / }).click();
  await page.getByRole('button', { name: 'Show me my yard' }).click();
  await page.getByRole('region', { name: 'How sure' }).waitFor();
  const { climate, site, units } = await planOf(page);
  expect(units).toBe('imperial');
  expect(site.how?.upBearing).toEqual({ by: 'guess', pm: 180 });
  expect(climate.from).toBe('rough');
  expect(climate.source).toContain('published normals of Las Vegas');
  // National Weather Service, Las Vegas, 1981–2010, from memory: 40.1 °C in July.
  expect(climate.months[6].high).toBeCloseTo(40.1, 0);
  expect(site.elevation).toBeUndefined();
  expect(Object.keys(site)).not.toContain('town');
  expect(complaints).toEqual([]);
  await context.close();
});

test('half an answer is there again after a reload; to an American browser all is asked in feet and °F', async () => {
  const context = await session.context({ locale: 'en-US' });
  let { page } = await openApp(context, session.site.address);
  await page.getByRole('button', { name: 'What happened in my yard?' }).click();
  // Two taps on the outline of the land: 34° N, 112° W comes near, 48° across and 24° up, and lies in its middle.
  const land = page.getByRole('img', { name: /^The outline of the land/ });
  const tap = async (x: number, y: number): Promise<void> => {
    const box = await land.boundingBox();
    await land.click({ position: { x: (box?.width ?? 0) * x, y: (box?.height ?? 0) * y } });
  };
  await tap((180 - 112) / 360, (72 - 34) / 128);
  await page.getByText('Tap the place, or the town nearest to it.').waitFor();
  await tap(0.55, 0.25);
  const tapped = (await page.getByLabel('Town, or latitude and longitude').inputValue()).split(', ').map(Number);
  expect(Math.abs(tapped[0] - 40)).toBeLessThan(1.5);
  expect(Math.abs(tapped[1] + 109.6)).toBeLessThan(1.5);
  await page.getByText(/clocks of America\//).waitFor();
  await page.getByRole('button', { name: /^Skip: use the place/ }).click();
  expect(await page.getByLabel('Usual high in July').getAttribute('placeholder')).toBe('97 °F');
  await page.getByRole('button', { name: /^Skip: use rough/ }).click();
  await page.getByRole('button', { name: 'Skip: use 33 ft by 26 ft, marked guessed' }).waitFor();
  await page.getByRole('radio', { name: 'steps of about 2½ ft' }).waitFor();
  // What is most worth doing in the demo yard is not what one is asked.
  expect(await page.getByText(/^Next:/).count()).toBe(0);
  await page.getByLabel('Across').fill('7.2');
  // Loaded again, the page comes back to the question; a new visit finds the way back to it.
  await page.reload();
  await page.getByText('Question 3 of 7').waitFor();
  expect(await page.getByLabel('Across').inputValue()).toBe('7.2');
  await page.close();
  page = (await openApp(context, session.site.address)).page;
  await page.getByRole('button', { name: 'Go on: what happened in my yard?' }).click();
  await page.getByText('Question 3 of 7').waitFor();
  expect(await page.getByLabel('Across').inputValue()).toBe('7.2');
  await page.getByLabel('Deep').fill('far');
  await goOn(page);
  await page.getByRole('alert').getByText('Deep must be between 4 and 650 ft').waitFor();
  await context.close();
});

test('the sun explains the demo lemon where it burnt in the south-west, not in the north-east', async () => {
  const context = await session.context();
  const { page } = await openApp(context, session.site.address);
  await page.getByRole('button', { name: 'Why did this lemon burn?' }).click();
  const answer = page.getByRole('region', { name: 'Answer' });
  await answer.getByRole('heading', { name: 'The sun explains it' }).waitFor();
  await page.getByRole('checkbox', { name: /root ball dry/ }).check();
  await answer.getByRole('heading', { name: 'It could be the sun' }).waitFor();
  await page.getByRole('checkbox', { name: /root ball dry/ }).uncheck();
  await page.getByRole('radio', { name: 'north-east', exact: true }).check();
  await answer.getByRole('heading', { name: 'The sun does not explain it' }).waitFor();
  await page.reload();
  await answer.getByRole('heading', { name: 'The sun does not explain it' }).waitFor();

  // Any plant has a door to why it burnt.
  await page.getByRole('button', { name: /^Back to/ }).click();
  const plants = page.getByRole('region', { name: 'Plants, worst first' });
  await plants.getByRole('button', { name: /Hydrangea/ }).click();
  await plants.getByRole('button', { name: 'It burnt: why?' }).click();
  await expect.poll(() => page.getByLabel('The plant that burnt').inputValue()).toBe('hydrangea');
  await answer.getByRole('heading').waitFor();
  await context.close();
});
