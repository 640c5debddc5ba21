import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { browserSession, graded } from './harness.ts';

const session = browserSession();

/** Sizes after gzip, as in DEVELOPERS: what was reached. 260 and 450 are wanted of the second and the last. [bytes] */
const FIRST_PICTURE = 150_000;
const FIRST_STAGES = 276_000;
const TOWNS_NORMALS = 14_000;
const TIME_ZONES = 11_000;
/**
 * What six stages came to, rounded up, with room for the plane geometry's library: the later stages add building,
 * placing, siting and the year, in their worker and their cards.
 */
const ALL = 505_000;

/**
 * What only the later stages, how sure all is and what goes out to others load; all else may be wanted by somebody who
 * answers the first questions, draws, measures and looks at the heat.
 */
const LATER = 'app/later-stages.ts';
/** The published normals of towns: fetched once a place is chosen or a rough climate is asked for. */
const NORMALS = '../engine/survey/climate/place-climate.ts';
/** The world's time zones: fetched once a place is given by its latitude and longitude. */
const ZONES = '../engine/survey/place/zone-at.ts';
/** What a worker loads it asks for by itself, unseen by the page. */
const MAP_WORKER = 'worker/engine.worker.ts';
const SURVEY_WORKER = 'worker/survey.worker.ts';
/** All styles are one file. */
const STYLES = 'style.css';

interface ManifestEntry {
  readonly file: string;
  readonly css?: readonly string[];
  readonly imports?: readonly string[];
  readonly dynamicImports?: readonly string[];
}

type Manifest = Readonly<Record<string, ManifestEntry>>;

const readManifest = async (): Promise<Manifest> =>
  JSON.parse(await readFile(join(session.site.dist, '.vite/manifest.json'), 'utf8')) as Manifest;

/** The files of some parts and of all that they import, and import later too where that is asked for. */
function filesOf(manifest: Manifest, keys: readonly string[], later: (key: string) => boolean): Set<string> {
  const seen = new Set<string>();
  const walk = (key: string): void => {
    if (seen.has(key)) return;
    seen.add(key);
    const { imports = [], dynamicImports = [] } = manifest[key];
    for (const next of [...imports, ...dynamicImports.filter(later)]) walk(next);
  };
  keys.forEach(walk);
  return new Set([...seen].flatMap((key) => [manifest[key].file, ...(manifest[key].css ?? [])]));
}

const gzipped = async (file: string): Promise<number> =>
  gzipSync(await readFile(join(session.site.dist, file)), { level: 9 }).length;

async function sumOf(files: Iterable<string>): Promise<number> {
  const sizes = await Promise.all([...new Set(files)].map(gzipped));
  return sizes.reduce((total, size) => total + size, 0);
}

const inKilobytes = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB gzip`;

test('what is loaded until the first graded picture stays within its budget', async () => {
  const context = await session.context();
  const page = await context.newPage();
  await page.addInitScript(() => {
    // The moment is taken where it happens: what is asked for later does not count, however slow the machine.
    const watch = new MutationObserver(() => {
      if (
        !/\d burns?|at risk|none burns|no plants yet/.test(
          document.querySelector('nav[aria-label="Stages"]')?.textContent ?? '',
        )
      )
        return;
      performance.mark('graded');
      watch.disconnect();
    });
    watch.observe(document, { subtree: true, childList: true, characterData: true });
  });
  await page.goto(session.site.address);
  await graded(page);
  const asked = await page.evaluate(() => {
    const [{ startTime }] = performance.getEntriesByName('graded');
    return performance
      .getEntriesByType('resource')
      .filter((entry) => entry.startTime <= startTime)
      .map(({ name }) => name);
  });
  const ofPage = asked
    .filter((url) => url.startsWith(session.site.address))
    .map((url) => new URL(url).pathname.slice(1));
  const ofWorker = filesOf(await readManifest(), [MAP_WORKER], () => false);
  const files = new Set(['index.html', ...ofPage, ...ofWorker]);
  const sum = await sumOf(files);
  console.log(`first graded picture: ${inKilobytes(sum)} in ${files.size} files`);
  expect(files.size).toBeGreaterThan(2);
  expect(sum).toBeLessThan(FIRST_PICTURE);
  await context.close();
});

test('what the first questions, drawing, measuring and the heat can load stays within its budget', async () => {
  const manifest = await readManifest();
  expect(Object.keys(manifest)).toContain(LATER);
  expect(Object.keys(manifest)).toEqual(expect.arrayContaining([NORMALS, ZONES]));
  const files = filesOf(
    manifest,
    ['index.html', STYLES, MAP_WORKER, SURVEY_WORKER],
    (key) => ![LATER, NORMALS, ZONES].includes(key),
  );
  const sum = await sumOf(['index.html', ...files]);
  console.log(`first stages: ${inKilobytes(sum)} in ${files.size} files`);
  expect(files.size).toBeGreaterThan(20);
  expect(sum).toBeLessThan(FIRST_STAGES);
});

test.each([
  ['the published normals of towns, fetched when a climate is first asked for', NORMALS, TOWNS_NORMALS],
  ['the time zones of the world, fetched when a latitude and longitude are given', ZONES, TIME_ZONES],
])('%s, stay within their own', async (what, key, most) => {
  const { file } = (await readManifest())[key];
  const size = await gzipped(file);
  console.log(`${what}: ${inKilobytes(size)}`);
  expect(size).toBeLessThan(most);
});

test('everything together stays within its budget', async () => {
  const assets = (await readdir(join(session.site.dist, 'assets'))).map((file) => `assets/${file}`);
  const sum = await sumOf(['index.html', 'service-worker.js', ...assets]);
  console.log(`all of it: ${inKilobytes(sum)}, one file: ${inKilobytes(await gzipped('shadewright.html'))}`);
  expect(sum).toBeLessThan(ALL);
});
