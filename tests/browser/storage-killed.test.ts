import { spawn } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { LONG } from '../long.ts';
import { readySite } from './harness.ts';
import type { ReadySite } from './harness.ts';
import { BROWSER_ARGS } from './site.ts';

const SEED = 20_261;
const KILLS = LONG ? 10 : 4;

let site: ReadySite;
let profile = '';
beforeAll(async () => {
  site = await readySite();
  profile = await mkdtemp(join(tmpdir(), 'shadewright-profile-'));
});
afterAll(() => rm(profile, { recursive: true, force: true, maxRetries: 3 }));

/** A browser of this test's own, that it may kill, on the one profile. */
async function start(): Promise<{ process: ChildProcess; browser: Browser; page: Page }> {
  const process = spawn(
    site.executable,
    [...BROWSER_ARGS, '--headless', '--remote-debugging-port=0', `--user-data-dir=${profile}`, 'about:blank'],
    { detached: true, stdio: ['ignore', 'ignore', 'pipe'] },
  );
  const endpoint = await new Promise<string>((resolve, reject) => {
    let said = '';
    process.stderr?.on('data', (chunk: Buffer) => {
      said += chunk.toString();
      const found = /DevTools listening on (\S+)/.exec(said);
      if (found) resolve(found[1]);
    });
    process.once('exit', () => reject(new Error(`The browser ended: ${said.slice(-500)}`)));
  });
  const browser = await chromium.connectOverCDP(endpoint);
  const context = browser.contexts()[0];
  context.setDefaultTimeout(15_000);
  return { process, browser, page: await context.newPage() };
}

/** The browser and all it started, at once and without a goodbye. */
async function kill({ process }: { process: ChildProcess }): Promise<void> {
  const gone = new Promise((resolve) => process.once('exit', resolve));
  globalThis.process.kill(-(process.pid ?? 0), 'SIGKILL');
  await gone;
}

/** Numbers from 0 to 1, the same every run. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

const numberOf = (name: string): number => Number(/^Yard (\d+)$/.exec(name)?.[1] ?? 0);

/**
 * The number in the yard's name, as soon as it is at or after `least`, else as it stays. Where the store answers late,
 * as after a kill it may, the page opens without it and takes it when it comes.
 */
async function numberShown(page: Page, least: number): Promise<number> {
  const name = page.locator('.top-bar-name');
  await name.waitFor();
  await page
    .waitForFunction(
      (at) => Number(/^Yard (\d+)$/.exec(document.querySelector('.top-bar-name')?.textContent ?? '')?.[1] ?? 0) >= at,
      least,
    )
    .catch(() => null);
  return numberOf(await name.innerText());
}

test(
  `killed ${KILLS} times at random instants of a session (seed ${SEED}), the yard is always at or after the ` +
    `last state called saved`,
  async () => {
    const random = seeded(SEED);
    let saidSaved = 0;
    for (let round = 0; round <= KILLS; round++) {
      const own = await start();
      const { page } = own;
      await page.goto(site.address);
      const found = await numberShown(page, saidSaved);
      expect(found).toBeGreaterThanOrEqual(saidSaved);
      // Killed before anything could be kept, there is nothing to undo.
      if (found > 0) expect(await page.getByRole('button', { name: /^Undo: Rename the yard/ }).isEnabled()).toBe(true);
      if (round === KILLS) {
        await kill(own);
        break;
      }
      page.on('console', (message) => {
        const said = /^said saved: (.*)$/.exec(message.text());
        if (said) saidSaved = Math.max(saidSaved, numberOf(said[1]));
      });
      await page.getByRole('button', { name: /Yard and files/ }).click();
      await page.getByRole('textbox', { name: 'Name of this yard' }).waitFor();
      await page.evaluate((from) => {
        const field = document.querySelector<HTMLInputElement>('.files-name input');
        const mark = document.querySelector('.top-bar') as HTMLElement;
        const report = (): void => {
          if (mark.querySelector('.saved-mark')?.textContent === 'saved')
            console.log(`said saved: ${mark.querySelector('.top-bar-name')?.textContent}`);
        };
        new MutationObserver(report).observe(mark, { subtree: true, childList: true, characterData: true });
        let next = from;
        setInterval(() => {
          if (!field) return;
          field.value = `Yard ${++next}`;
          field.dispatchEvent(new Event('change', { bubbles: true }));
        }, 11);
      }, found);
      await page.waitForTimeout(60 + random() * 500);
      // However slow the machine, the last session has said "saved" before it is killed.
      if (round === KILLS - 1 && saidSaved <= KILLS)
        await page.waitForEvent('console', { predicate: () => saidSaved > KILLS });
      await kill(own);
    }
    expect(saidSaved).toBeGreaterThan(KILLS);
  },
  120_000,
);
