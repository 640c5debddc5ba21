import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { build, preview } from 'vite';

/** The built page, served, and a browser to look at it with. */
export interface Site {
  readonly address: string;
  /** The same where browsers see no safe origin, as on a machine of the house over plain http. */
  readonly plainAddress: string;
  readonly dist: string;
  /** Where to reach the shared browser. */
  readonly browser: string;
  /** The browser's own file, for tests that start one of their own. */
  readonly executable: string;
  stop(): Promise<void>;
}

/** Not the package's own list: that switches web security off, and a privacy test under it would prove nothing. */
export const BROWSER_ARGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--js-flags=--no-opt',
] as const;

/** A name of the machine that the browser does not know to be its own. */
const HOST = 'yard.test';

const CONFIG = fileURLToPath(new URL('../../web/vite.config.ts', import.meta.url));
const INSTALLED = ['google-chrome', 'google-chrome-stable', 'chromium', 'chromium-browser', 'chrome'] as const;

export async function startSite(): Promise<Site> {
  const [dist, executable] = await Promise.all([buildPage(), findBrowser()]);
  const server = await preview({
    configFile: CONFIG,
    logLevel: 'error',
    build: { outDir: dist },
    preview: { host: '127.0.0.1', port: 0, open: false, allowedHosts: [HOST] },
  });
  const browser = await chromium.launchServer({
    executablePath: executable,
    args: [...BROWSER_ARGS, `--host-resolver-rules=MAP ${HOST} 127.0.0.1`],
  });
  const address = server.resolvedUrls?.local[0];
  if (!address) throw new Error('The page is not being served.');
  return {
    address,
    plainAddress: address.replace('127.0.0.1', HOST),
    dist,
    browser: browser.wsEndpoint(),
    executable,
    async stop() {
      await browser.close();
      await server.close();
    },
  };
}

async function buildPage(): Promise<string> {
  const dist = await mkdtemp(join(tmpdir(), 'shadewright-dist-'));
  // The test runner's own value would leave development code in the build.
  const before = process.env.NODE_ENV;
  process.env.NODE_ENV = 'production';
  await build({ configFile: CONFIG, logLevel: 'error', build: { outDir: dist, emptyOutDir: true, manifest: true } });
  process.env.NODE_ENV = before;
  return dist;
}

/** A browser that is installed, else the one that comes with the packages. */
async function findBrowser(): Promise<string> {
  for (const folder of (process.env.PATH ?? '').split(delimiter)) {
    for (const name of INSTALLED) if (existsSync(join(folder, name))) return join(folder, name);
  }
  // It unpacks into the temporary folder and never replaces an older copy there: give each version a folder of its own.
  const { version } = JSON.parse(
    await readFile(new URL('../../node_modules/@sparticuz/chromium/package.json', import.meta.url), 'utf8'),
  ) as { version: string };
  const before = process.env.TMPDIR;
  process.env.TMPDIR = join(tmpdir(), `shadewright-chromium-${version}`);
  await mkdir(process.env.TMPDIR, { recursive: true });
  const { default: packed } = await import('@sparticuz/chromium');
  const executable = await packed.executablePath();
  if (before === undefined) delete process.env.TMPDIR;
  else process.env.TMPDIR = before;
  return executable;
}
