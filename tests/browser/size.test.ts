import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { browserSession, graded } from './harness.ts';

const session = browserSession();

/** Sizes after gzip, the budget of DEVELOPERS.md. [bytes] */
const FIRST_PICTURE = 150_000;
const ALL = 260_000;

const gzipped = async (file: string): Promise<number> => gzipSync(await readFile(join(session.site.dist, file)), { level: 9 }).length;

test('what is loaded until the first graded picture stays within its budget', async () => {
  const context = await session.context({ serviceWorkers: 'block' });
  const page = await context.newPage();
  const files = new Set<string>();
  page.on('request', (request) => request.url().startsWith(session.site.address) && files.add(new URL(request.url()).pathname.slice(1) || 'index.html'));
  await page.goto(session.site.address);
  await graded(page);
  const sizes = await Promise.all([...files].map(gzipped));
  const sum = sizes.reduce((total, size) => total + size, 0);
  console.log(`first graded picture: ${(sum / 1000).toFixed(1)} kB gzip in ${files.size} files`);
  expect(files.size).toBeGreaterThan(2);
  expect(sum).toBeLessThan(FIRST_PICTURE);
  await context.close();
});

test('everything together stays within its budget', async () => {
  const assets = (await readdir(join(session.site.dist, 'assets'))).map((file) => `assets/${file}`);
  const sizes = await Promise.all(['index.html', 'service-worker.js', ...assets].map(gzipped));
  const sum = sizes.reduce((total, size) => total + size, 0);
  console.log(`all of it: ${(sum / 1000).toFixed(1)} kB gzip, one file: ${((await gzipped('shadewright.html')) / 1000).toFixed(1)} kB gzip`);
  expect(sum).toBeLessThan(ALL);
});
