import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { loadOf, parseEpw } from '../../engine/index.ts';
import type { Weather } from '../../engine/index.ts';
import { epwLines } from '../engine/sun/epw-file.ts';
import { faultsOf } from './axe.ts';
import { planOf } from './drawing-hands.ts';
import { SIZES, browserSession, openApp } from './harness.ts';

const session = browserSession();

async function openTopic(page: Page, topic: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name: /Draw/ }).click();
  await page.getByRole('button', { name: 'How do I find this?' }).click();
  await page.getByRole('navigation', { name: 'What to find out' }).getByRole('button', { name: topic }).click();
}

/** Lets a weather file, always of the same name, fall on the page. */
function dropWeather(page: Page, file: string): Promise<void> {
  return page.evaluate((content) => {
    const data = new DataTransfer();
    data.items.add(new File([content], 'somewhere.epw'));
    window.dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
  }, file);
}

test('a rough climate says so beside every result until a month is typed, and a dropped weather file takes its place', async () => {
  const context = await session.context({ viewport: SIZES.phone });
  const { page, complaints } = await openApp(context, session.site.address);
  await openTopic(page, 'The climate');
  expect(await page.getByText('Rough climate:').count()).toBe(0);
  await page.getByLabel('Most like').selectOption({ label: 'low desert, dry and very hot' });
  await page.getByRole('button', { name: 'Take this rough climate' }).click();
  await page.getByText('Rough climate:').waitFor();
  for (let stage = 1; stage <= 6; stage++) {
    await page.keyboard.press(`Alt+${stage}`);
    await page.getByText('Rough climate:').waitFor();
  }
  await page.getByRole('button', { name: 'Make it yours' }).click();
  const july = page.getByLabel('July: mean daily high');
  await july.fill('41.5');
  await july.press('Enter');
  await expect.poll(async () => (await planOf(page)).climate).toMatchObject({ from: 'months' });
  expect(await page.getByText('Rough climate:').count()).toBe(0);
  await page.getByLabel('July: mean daily low').fill('45');
  await page.getByLabel('July: mean daily low').press('Enter');
  await page
    .getByRole('alert')
    .getByText(/a low of 45 °C is not below a high of 41.5 °C/)
    .waitFor();
  expect(await faultsOf(page)).toEqual([]);

  // Every day 30 °C by night and 38 °C at the fifteenth hour: the month's means of highs and lows are these. The sun
  // shines until one o'clock.
  const file = epwLines({
    row: (_month, _day, hour) => ({ air: hour === 15 ? 38 : 30, beam: hour > 8 && hour <= 13 ? 700 : 0, diffuse: 80 }),
  }).join('\n');
  await dropWeather(page, file);
  await page.getByText('From a weather file.').waitFor();
  const { climate } = await planOf(page);
  expect(climate).toMatchObject({ from: 'file', heatwaveHigh: 38 });
  expect(climate.months.map(({ high, low }) => [high, low])).toEqual(Array.from({ length: 12 }, () => [38, 30]));

  // The yard is reckoned after the file's hours, as the command line's `--weather` does; by its months alone once it is
  // taken off.
  const hoursOf = (text: string): Weather => {
    const read = parseEpw(new TextEncoder().encode(text));
    if (!read.ok) throw new Error(read.problems[0].message);
    return read.weather;
  };
  const weather = hoursOf(file);
  const plan = await planOf(page);
  const spots = (after?: Weather): string => {
    const load = loadOf(plan, { period: { kind: 'season' }, weather: after });
    if (!load.ok) throw new Error(load.problems[0].message);
    return ['no hot spot', 'one hot spot'][load.value.hotSpots.length] ?? `${load.value.hotSpots.length} hot spots`;
  };
  expect(spots(weather)).not.toBe(spots());
  const inWords = (words: string): Promise<void> =>
    page.getByText(`The map in words: ${words}`, { exact: true }).waitFor({ state: 'attached' });
  await page.keyboard.press('Alt+2');
  await page.getByRole('button', { name: 'Date', exact: true }).click();
  await page.getByRole('radio', { name: 'Season' }).check();
  await inWords(spots(weather));
  await page.getByText('After the weather file somewhere.epw').waitFor();
  await page.getByRole('button', { name: 'Take the file off' }).click();
  await inWords(spots());
  await page.getByRole('button', { name: 'Undo: Take the weather file off' }).click();
  await inWords(spots(weather));
  await page.reload();
  await page.getByText('After the weather file somewhere.epw').waitFor();
  await page.getByRole('button', { name: 'Date', exact: true }).click();
  await page.getByRole('radio', { name: 'Season' }).check();
  await inWords(spots(weather));
  // Going through the stages has chosen it where the card of the pots had the time to open.
  const lemon = page.getByRole('region', { name: 'Plants, worst first' }).getByRole('button', { name: 'Lemon pot' });
  if ((await lemon.getAttribute('aria-expanded')) === 'false') await lemon.click();
  await page.getByText('The sky from its top').click();
  await page.getByText('reckoned after the months of the weather file, not after its hours').waitFor();

  // Another file of the same name, place and months, its sun in the hot hours, leaves the first one its hours.
  const other = epwLines({
    row: (_month, _day, hour) => ({ air: hour > 11 ? 38 : 30, beam: hour > 11 && hour <= 18 ? 700 : 0, diffuse: 80 }),
  }).join('\n');
  expect(spots(hoursOf(other))).not.toBe(spots(weather));
  await dropWeather(page, other);
  await page.getByText('From a weather file.').waitFor();
  await page.keyboard.press('Alt+2');
  await inWords(spots(hoursOf(other)));
  await page.getByRole('button', { name: 'Undo: Take a weather file' }).click();
  await inWords(spots(weather));
  expect(complaints).toEqual([]);
  await context.close();
});

test('a typed place brings its zone, which can be corrected, and a line that shows a lost sign', async () => {
  const context = await session.context();
  const { page, complaints } = await openApp(context, session.site.address);
  await openTopic(page, 'The place');
  await page.getByLabel('Town, or latitude and longitude').fill('33°24′N 112°0′W');
  const found = page.getByRole('region', { name: 'Place found' });
  // At 33.4° N the midsummer sun culminates 90 − 33.4 + 23.44 = 80.0° high.
  await found
    .getByText(
      /The sun stands 80° high at 12:\d\d \(America\/Phoenix\) on 21 June and is in the south: does that fit\?/,
    )
    .waitFor();
  await page.getByLabel(/^Time zone/).fill('Mars/Base');
  await page
    .getByRole('alert')
    .getByText(/is no time zone/)
    .waitFor();
  await page.getByLabel(/^Time zone/).fill('America/Denver');
  await found.getByText(/80° high at 13:\d\d \(America\/Denver\)/).waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await found.getByRole('button', { name: 'Take this place' }).click();
  await expect
    .poll(async () => (await planOf(page)).site)
    .toMatchObject({ latitude: 33.4, longitude: -112, timeZone: 'America/Denver' });
  expect(complaints).toEqual([]);
  await context.close();
});
