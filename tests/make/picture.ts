/**
 * Makes web/opening-view.png, the README's picture: the page as it opens, on a laptop. Run: node --import tsx
 * tests/make/picture.ts
 */

import { rm } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { startSite } from '../browser/site.ts';

const site = await startSite();
const browser = await chromium.connect(site.browser);
const page = await browser.newPage({
  viewport: { width: 1400, height: 900 },
  reducedMotion: 'reduce',
  locale: 'en-GB',
  timezoneId: 'UTC',
});
await page.goto(site.address);
await page.getByRole('heading', { name: 'Plants, worst first' }).waitFor();
await page.getByText('saved', { exact: true }).waitFor();
// Shadows and lines come after the heat.
await page.locator('.yard-map[aria-busy="false"]').waitFor();
await page.locator('.area-shade').first().waitFor({ state: 'attached' });
await page.getByRole('button', { name: 'What happened in my yard?' }).waitFor();
await page.screenshot({ path: fileURLToPath(new URL('../../web/opening-view.png', import.meta.url)) });
await browser.close();
await site.stop();
await rm(site.dist, { recursive: true, force: true });
