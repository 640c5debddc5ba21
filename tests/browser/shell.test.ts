import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { faultsOf } from './axe.ts';
import { SIZES, browserSession, openApp, saved } from './harness.ts';
import { smallTargets } from './targets.ts';

const session = browserSession();

const widerThanWindow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

describe('the page opens with the demo yard graded, and says so in words', () => {
  for (const [name, viewport] of Object.entries(SIZES)) {
    test(`on a ${name}`, async () => {
      const context = await session.context({ viewport, hasTouch: name === 'phone' });
      const { page, complaints } = await openApp(context, session.site.address);
      await page.getByRole('button', { name: /The well courtyard/ }).waitFor();
      await page
        .getByRole('region', { name: 'Sun bar' })
        .getByText(/sun \d+° high in the/)
        .waitFor();
      await page.getByText(/^The lemon pot will burn from half past one to half past eight/).waitFor();
      expect(await widerThanWindow(page)).toBe(0);
      expect(await smallTargets(page, name === 'phone' ? 44 : 24)).toEqual([]);
      expect(await faultsOf(page)).toEqual([]);
      expect(complaints).toEqual([]);
      await context.close();
    });
  }
});

test('dark, bright sun, and bigger letters read as well as plain light; yard and files, and settings, too', async () => {
  const context = await session.context({ colorScheme: 'dark' });
  const { page } = await openApp(context, session.site.address);
  expect(await faultsOf(page)).toEqual([]);
  await page.getByRole('button', { name: /Yard and files/ }).click();
  await page.getByRole('heading', { level: 1, name: 'Yard and files' }).waitFor();
  await page.getByText('You have no file copy of this yard yet.').waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await page.getByRole('button', { name: 'Settings' }).click();
  await page.getByLabel(/Bright sun/).check();
  await page.getByRole('radio', { name: 'Bigger', exact: true }).check();
  await expect
    .poll(() => page.evaluate(() => getComputedStyle(document.body).backgroundColor))
    .toBe('rgb(255, 255, 255)');
  expect(await faultsOf(page)).toEqual([]);
  await context.close();
});

/** Parts of the page that lie over each other, and rows of it pressed to less than what is in them. */
function squeezedParts(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const parts = ['.top-bar', '.map-slot', '.sun-bar', '.slip', '.stage-tabs'].map((name) => ({
      name,
      element: document.querySelector(name),
      box: document.querySelector(name)?.getBoundingClientRect() ?? new DOMRect(),
    }));
    return parts.flatMap(({ name, element, box: a }, index) => [
      ...parts
        .slice(index + 1)
        .filter(
          ({ box: b }) => a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 1 && b.top < a.bottom - 1,
        )
        .map((other) => `${name} and ${other.name}`),
      ...(name !== '.map-slot' && element && element.scrollHeight > element.clientHeight + 1
        ? [`${name} is cut off`]
        : []),
    ]);
  });
}

test('at 320 px, and with text at 200 %, nothing is cut off sideways and nothing lies over anything', async () => {
  const context = await session.context();
  const { page } = await openApp(context, session.site.address);
  for (const viewport of [{ width: 320, height: 640 }, { width: 640, height: 450 }, ...Object.values(SIZES)]) {
    await page.setViewportSize(viewport);
    for (const fontSize of ['', '200%']) {
      await page.evaluate((size) => (document.documentElement.style.fontSize = size), fontSize);
      const where = { message: `${viewport.width} px wide, letters ${fontSize}` };
      await expect.poll(() => widerThanWindow(page), where).toBe(0);
      await expect.poll(() => squeezedParts(page), where).toEqual([]);
    }
  }
  await page.evaluate(() => (document.documentElement.style.fontSize = ''));
  const tabs = page.getByRole('navigation', { name: 'Stages' });
  for (const viewport of [
    { width: 320, height: 640 },
    { width: 700, height: 450 },
  ]) {
    // Without a scroll every stage is in the window, and a wheel over them leaves the page where it is.
    await page.setViewportSize(viewport);
    for (const tab of await tabs.getByRole('button').all()) {
      const box = await tab.boundingBox();
      expect(box && box.x >= 0 && box.y >= 0 && box.x + box.width <= viewport.width).toBe(true);
      expect(box!.y + box!.height).toBeLessThanOrEqual(viewport.height);
    }
    await tabs.hover();
    await page.mouse.wheel(0, 2000);
    expect(await page.evaluate(() => document.scrollingElement?.scrollTop)).toBe(0);
  }
  await context.close();
});

describe('in one visit', () => {
  let page: Page;
  let complaints: string[];

  beforeAll(async () => {
    // With less motion asked for.
    ({ page, complaints } = await openApp(await session.context({ reducedMotion: 'reduce' }), session.site.address));
  });

  afterAll(() => page.context().close());

  test('every stage opens from its tab, by keys and by hand, and nothing complains', async () => {
    const names = ['Draw the yard', 'Find the heat', 'Place a pot', 'Try a canopy', 'Build it', 'Through the year'];
    for (const name of names) {
      await page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name }).click();
      await page.getByRole('heading', { level: 1, name }).waitFor();
    }
    for (const [index, name] of names.entries()) {
      await page.keyboard.press(`Alt+${index + 1}`);
      await page.getByRole('heading', { level: 1, name }).waitFor();
    }
    expect(complaints).toEqual([]);
  });

  test(
    'where what has the keyboard goes away it finds another place; a screen reader hears what undo did and which ' +
      'plants fare otherwise',
    async () => {
      await page.keyboard.press('Alt+2');
      const focused = (): Promise<string> => page.evaluate(() => document.activeElement?.textContent ?? '');
      const said = page.locator('.shell > [role=status]');
      await page.getByRole('button', { name: 'What happened in my yard?' }).press('Enter');
      await expect.poll(focused).toBe('Where is it?');
      await page.getByRole('button', { name: /^Back to/ }).press('Enter');
      await expect.poll(focused).toBe('Find the heat');
      await page.keyboard.press('Alt+1');
      await expect.poll(focused).toBe('Draw the yard');
      await page.getByRole('button', { name: 'Add Wall' }).press('Enter');
      await page.getByLabel('Type it').press('Escape');
      await expect.poll(focused).toBe('Add Wall');
      await page.getByRole('button', { name: /Units: m/ }).press('Enter');
      await page.getByRole('button', { name: /^Undo/ }).press('Enter');
      await expect.poll(() => said.textContent()).toBe('Taken back: Show feet and inches.');
      expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe('Undo');
      await page.keyboard.press('Alt+4');
      await page.getByRole('group', { name: 'Show on the drawing' }).getByRole('button', { name: /^B/ }).press('Enter');
      await expect.poll(() => said.textContent(), { timeout: 15_000 }).toContain('Lemon pot: at risk, was will burn.');
    },
  );

  test('with less motion asked for, the sun stands still until it is let run', async () => {
    const time = page.getByRole('slider', { name: 'Time of day' });
    const before = await time.inputValue();
    await page.getByRole('button', { name: 'Let the sun run' }).click();
    await expect.poll(() => time.inputValue(), { timeout: 5000 }).not.toBe(before);
    await page.getByRole('button', { name: 'Stop the sun' }).click();
  });

  test('the time and the date are moved by keys, and what they mean is said', async () => {
    const time = page.getByRole('slider', { name: 'Time of day' });
    await time.focus();
    await page.keyboard.press('Home');
    await expect.poll(() => time.getAttribute('aria-valuetext')).toBe('00:00, the sun is down');
    const date = page.getByRole('slider', { name: 'Date' });
    await date.focus();
    await page.keyboard.press('Home');
    await expect.poll(() => date.getAttribute('aria-valuetext')).toBe('1 January, outside the season');
    expect(await page.getByRole('radio', { name: 'This day' }).isChecked()).toBe(true);
    // The heatwave day has its own date, and it stays where it is when the numbers are of another kind.
    await page.getByRole('radio', { name: 'Heatwave day' }).check();
    await expect.poll(() => date.getAttribute('aria-valuetext'), { timeout: 15_000 }).toBe('21 July');
    await page.getByRole('radio', { name: 'This day' }).check();
    expect(await date.getAttribute('aria-valuetext')).toBe('21 July');
    // Typed as people write them; what is no time or day is refused in place.
    await page.getByLabel('Type the time').fill('5.05 pm');
    await page.getByLabel('Type the time').press('Enter');
    await page.getByLabel('Type the date').fill('2 May');
    await page.getByLabel('Type the date').press('Enter');
    await expect.poll(() => time.getAttribute('aria-valuetext')).toMatch(/^17:05, sun \d+° high/);
    await expect.poll(() => date.getAttribute('aria-valuetext')).toBe('2 May, outside the season');
    await page.getByLabel('Type the date').fill('31 June');
    await page.getByLabel('Type the date').press('Enter');
    await page.getByText('A day, such as 21 July.').waitFor();
  });

  test('a change of units is one step with a name, taken back and brought again by keys', async () => {
    await page.getByRole('button', { name: /Units: m/ }).click();
    await saved(page);
    await page.getByRole('button', { name: 'Undo: Show feet and inches' }).waitFor();
    await page.keyboard.press('Control+z');
    await page.getByRole('button', { name: /Units: m/ }).waitFor();
    await page.keyboard.press('Control+Shift+z');
    await page.getByRole('button', { name: /Units: ft/ }).waitFor();
  });

  test('on paper the drawing and the card are there, buttons are not', async () => {
    await page.emulateMedia({ media: 'print' });
    expect(await page.getByRole('navigation', { name: 'Stages' }).isVisible()).toBe(false);
    expect(await page.getByRole('heading', { level: 1 }).isVisible()).toBe(true);
  });
});
