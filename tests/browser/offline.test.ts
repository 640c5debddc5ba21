import { createHash } from 'node:crypto';
import { appendFile, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { browserSession, graded, openApp } from './harness.ts';

const session = browserSession();

/** Ends every worker of the page without a word, then has the map reckoned anew. */
async function reckonedThoughWorkersDie(page: Page): Promise<void> {
  const workers = page.workers();
  expect(workers.length).toBeGreaterThan(0);
  await Promise.all(workers.map((worker) => worker.evaluate(() => self.close())));
  await page.getByRole('button', { name: 'Find the heat' }).click();
  await page.getByRole('radio', { name: 'This day' }).check();
  await page.locator('.map-caption').filter({ hasText: ', 21 July' }).waitFor();
}

test('after one visit the page opens, grades and goes on without a network', async () => {
  const context = await session.context({ serviceWorkers: 'allow' });
  const { page, complaints } = await openApp(context, session.site.address);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => null));
  // What comes after the first picture is still on its way; the visit ends with it.
  await page.waitForLoadState('networkidle');
  await context.setOffline(true);
  await page.reload();
  await graded(page);
  await page.getByRole('button', { name: 'Settings' }).click();
  await page.getByRole('heading', { level: 1, name: 'Settings' }).waitFor();
  for (const name of ['Draw the yard', 'Through the year'])
    await page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name }).click();
  await page.getByRole('heading', { level: 1, name: 'Through the year' }).waitFor();
  expect(complaints).toEqual([]);
  await reckonedThoughWorkersDie(page);
  await context.close();
});

test('on a page served over plain http all the same, and a worker that dies without a word is replaced there too', async () => {
  const context = await session.context({ serviceWorkers: 'allow' });
  const { page, complaints } = await openApp(context, session.site.plainAddress);
  expect(await page.evaluate(() => isSecureContext)).toBe(false);
  expect(complaints).toEqual([]);
  await reckonedThoughWorkersDie(page);
  await context.close();
});

test('the service worker keeps every built file but itself and the one-file page, each by its content', async () => {
  const text = await readFile(join(session.site.dist, 'service-worker.js'), 'utf8');
  const kept = JSON.parse(/const FILES = (\[.*?\]);/.exec(text)?.[1] ?? '[]') as { name: string; sha256: string }[];
  for (const { name, sha256 } of kept) {
    const content = await readFile(join(session.site.dist, name === './' ? 'index.html' : name));
    // 96 bits of it.
    expect(createHash('sha256').update(content).digest('hex').slice(0, 24), name).toBe(sha256);
  }
  const files = kept.map(({ name }) => name);
  expect(files).toEqual(expect.arrayContaining(['./', 'way-out.js']));
  expect(files.some((file) => file.endsWith('.css'))).toBe(true);
  expect(files.some((file) => file.endsWith('.webmanifest'))).toBe(true);
  expect(files.some((file) => file.includes('shadewright.html') || file.includes('service-worker'))).toBe(false);
});

test('a new version waits until it is asked for, then takes over', async () => {
  const context = await session.context({ serviceWorkers: 'allow' });
  const { page } = await openApp(context, session.site.address);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => null));
  await page.reload();
  const file = join(session.site.dist, 'service-worker.js');
  const before = await readFile(file, 'utf8');
  try {
    await appendFile(file, '// a newer one\n');
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    const offer = page.getByRole('button', { name: 'Use the new version' });
    await offer.waitFor();
    await Promise.all([page.waitForEvent('load'), offer.click()]);
    await page.getByRole('banner').waitFor();
    expect(await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.waiting)).toBeNull();
  } finally {
    await writeFile(file, before);
  }
  await context.close();
});

test('a page that cannot start says so, and how it is fetched anew without losing the yards', async () => {
  const context = await session.context({ serviceWorkers: 'allow' });
  const { page } = await openApp(context, session.site.address);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => null));
  // What an older page kept in the middle of a deployment: the page itself in the place of its script.
  await page.evaluate(async () => {
    const [name] = await caches.keys();
    const cache = await caches.open(name);
    for (const { url } of await cache.keys())
      if (/assets\/index.*\.js$/.test(url))
        await cache.put(url, new Response('<!doctype html>', { headers: { 'content-type': 'text/html' } }));
  });
  await page.reload();
  await page
    .getByRole('alert')
    .getByText(/yards are still kept in this browser/)
    .waitFor();
  const out = page.getByRole('button', { name: 'Fetch the page anew, keep the yards' });
  await Promise.all([page.waitForEvent('load'), out.click()]);
  await graded(page);
  expect(await page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name))).toContain(
    'shadewright',
  );
  await context.close();
});
