import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { oneIn } from '../long.ts';
import { faultsOf } from './axe.ts';
import { browserSession, graded, openApp } from './harness.ts';

const session = browserSession();

/** Most words that stand in the window beside the map, and most with every fold opened. */
const MOST = {
  'Draw the yard': { first: 120, all: 400 },
  'Find the heat': { first: 80, all: 400 },
  'Place a pot': { first: 80, all: 400 },
  'Try a canopy': { first: 80, all: 400 },
  'Build it': { first: 80, all: 400 },
  'Through the year': { first: 80, all: 600 },
} as const;

interface Words {
  readonly first: number;
  readonly all: number;
  /** All that the page says meanwhile, line by line. */
  readonly lines: readonly string[];
}

/** A metric number without its imperial twin beside it, a clock of 24 hours, a date in figures. */
const NOT_IN_FEET = [
  /\d\s?(?:m|cm|mm|km|m²|°C|L|ml|kg|g|m\/s|km\/h|lux)(?![\p{L}\d/·²])(?! \()/u,
  /\b(?:[01]\d|2[0-3]):[0-5]\d\b(?! (?:to \d{1,2}(?::\d\d)? )?[ap]m)(?! am to)/,
  /\b\d{4}-\d\d-\d\d\b|\b[01]\d-[0-3]\d\b/,
];

/** Words of the slip that are seen: in the window as it stands, and altogether with every fold opened. */
function wordsBesideTheMap(page: Page): Promise<Words> {
  return page.evaluate(() => {
    const slip = document.querySelector('#slip') as HTMLElement;
    const seen = (node: Node, within: DOMRect | null): number => {
      const element = node.parentElement;
      if (element?.closest('.unseen, .stage-name, option') || !element?.checkVisibility()) return 0;
      // For who hears the page alone.
      if (getComputedStyle(element).clipPath !== 'none') return 0;
      const range = document.createRange();
      range.selectNodeContents(node);
      const lines = [...range.getClientRects()].filter(({ width, height }) => width > 1 && height > 1);
      if (!lines.some(({ top, bottom }) => within === null || (top < within.bottom && bottom > within.top))) return 0;
      return (node.textContent ?? '').split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
    };
    const count = (within: DOMRect | null): number => {
      const texts = document.createTreeWalker(slip, NodeFilter.SHOW_TEXT);
      let words = 0;
      while (texts.nextNode()) words += seen(texts.currentNode, within);
      return words;
    };
    const first = count(slip.getBoundingClientRect());
    // A picture's table says what the picture says, for whoever does not see it.
    const folds = [...slip.querySelectorAll('details')];
    const opened = folds.filter((fold) => fold.querySelector('summary')?.textContent !== 'The same as a table');
    for (const fold of opened) fold.open = true;
    let all = count(null);
    let lines = document.body.innerText.split('\n');
    // Of the folds of one name one is open at a time.
    for (const fold of opened.filter(({ name }) => name !== '')) {
      fold.open = true;
      all = Math.max(all, count(null));
      lines = [...lines, ...document.body.innerText.split('\n')];
    }
    for (const fold of folds) fold.open = false;
    return { first, all, lines };
  });
}

/** Forced before dark: the page wears another theme a moment after it is asked for, and light wears none. */
const COLOURS = {
  light: { colorScheme: 'light', forcedColors: 'none' },
  forced: { colorScheme: 'light', forcedColors: 'active' },
  dark: { colorScheme: 'dark', forcedColors: 'none' },
} as const;

/** What axe finds in the stage as it stands, in light; in the long run in dark, and in colours of the person's own. */
async function faultsInAllColours(page: Page): Promise<string[]> {
  const faults: string[] = [];
  for (const [name, media] of oneIn(3, Object.entries(COLOURS))) {
    await page.emulateMedia(media);
    await page.locator(`html[data-theme="${media.colorScheme}"]`).waitFor();
    faults.push(...(await faultsOf(page)).map((fault) => `${name}: ${fault}`));
  }
  await page.emulateMedia(COLOURS.light);
  await page.locator('html[data-theme="light"]').waitFor();
  return faults;
}

test(
  'each stage says at first sight no more than can be taken in, opened no more than can be read, each of its pages ' +
    'too, and all of it in ' +
    'feet; axe finds nothing, whatever its colours',
  { timeout: 400_000 },
  async () => {
    const context = await session.context();
    const { page } = await openApp(context, session.site.address);
    const stages = page.getByRole('navigation', { name: 'Stages' });
    const found: string[] = [];
    for (const demo of oneIn(2, [null, /^Demo: .*lane/i])) {
      if (demo !== null) {
        await page.getByRole('button', { name: /Yard and files/ }).click();
        await page.getByRole('button', { name: demo }).click();
        await graded(page);
      }
      for (const [stage, most] of Object.entries(MOST)) {
        await stages.getByRole('button', { name: stage }).click();
        await page.locator('.headline').waitFor({ timeout: 150_000 });
        const words = await wordsBesideTheMap(page);
        const pages = page.locator('nav.page-names button');
        for (const name of await pages.allTextContents()) {
          await pages.getByText(name, { exact: true }).click();
          const words = await wordsBesideTheMap(page);
          for (const part of ['first', 'all'] as const)
            if (words[part] > most[part])
              found.push(`${demo ?? 'courtyard'}, ${stage}, ${name}, ${part}: ${words[part]} words`);
        }
        if ((await pages.count()) > 0) await pages.first().click();
        if (demo === null) found.push(...(await faultsInAllColours(page)).map((fault) => `${stage}, ${fault}`));
        for (const part of ['first', 'all'] as const)
          if (words[part] > most[part]) found.push(`${demo ?? 'courtyard'}, ${stage}, ${part}: ${words[part]} words`);
      }
    }
    await page.getByRole('button', { name: /m · °C/ }).click();
    for (const stage of ['Draw the yard', 'Find the heat', 'Through the year']) {
      await stages.getByRole('button', { name: stage }).click();
      await graded(page);
      await page.waitForFunction(() => !document.querySelector('[aria-busy="true"]'));
      const { lines } = await wordsBesideTheMap(page);
      for (const line of lines)
        if (NOT_IN_FEET.some((metric) => metric.test(line))) found.push(`${stage}, in feet: ${line}`);
    }
    expect(found).toEqual([]);
    await context.close();
  },
);
