import { chromium } from 'playwright-core';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, inject } from 'vitest';
import type { Site } from './site.ts';

export type ReadySite = Omit<Site, 'stop'>;

/** The built and served page; the first caller of a run has it built. */
export async function readySite(): Promise<ReadySite> {
  const answer = await fetch(inject('siteDoor'));
  if (!answer.ok) throw new Error(await answer.text());
  return (await answer.json()) as ReadySite;
}

export interface Session {
  readonly site: ReadySite;
  /**
   * A browser profile of its own: nothing kept, nothing cached. Closed after the file's tests. The service worker,
   * which fetches all parts again, runs where it is allowed in so many words.
   */
  context(options?: BrowserContextOptions): Promise<BrowserContext>;
}

export const SIZES = {
  laptop: { width: 1400, height: 900 },
  phone: { width: 390, height: 844 },
  tablet: { width: 820, height: 1180 },
} as const;

/** One connection to the shared browser for all tests of a file. */
export function browserSession(): Session {
  let site: ReadySite | null = null;
  let browser: Browser | null = null;
  beforeAll(async () => {
    site = await readySite();
    browser = await chromium.connect(site.browser);
  });
  afterAll(() => browser?.close());
  return {
    get site() {
      if (!site) throw new Error('The site is ready in tests only.');
      return site;
    },
    async context(options = {}) {
      if (!browser) throw new Error('The browser is ready in tests only.');
      const context = await browser.newContext({
        viewport: SIZES.laptop,
        reducedMotion: 'reduce',
        locale: 'en-GB',
        timezoneId: 'UTC',
        ...options,
      });
      context.setDefaultTimeout(20_000);
      if (options.serviceWorkers !== 'allow') await context.addInitScript(withoutServiceWorker);
      return context;
    },
  };
}

/** Runs in the page: it is in a browser that knows no service workers. */
function withoutServiceWorker(): void {
  Reflect.deleteProperty(Navigator.prototype, 'serviceWorker');
}

/** What the page complained of. */
function complaintsOf(page: Page): string[] {
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on(
    'console',
    (message) =>
      (message.type() === 'error' || message.type() === 'warning') &&
      complaints.push(`${message.text()} ${message.location().url}`),
  );
  return complaints;
}

export interface Opened {
  readonly page: Page;
  readonly complaints: string[];
}

/** Opens the page and waits until the yard on it is graded. */
export async function openApp(context: BrowserContext, address: string): Promise<Opened> {
  const opened = await openUngraded(context, address);
  await graded(opened.page);
  return opened;
}

/** The same for tests that ask nothing of the heat: it is still being worked out, in a third of the time. */
export async function openUngraded(context: BrowserContext, address: string): Promise<Opened> {
  const page = await context.newPage();
  const complaints = complaintsOf(page);
  await page.addInitScript(countActions);
  await page.goto(address);
  await page.getByRole('banner').waitFor();
  return { page, complaints };
}

interface Counted {
  actions?: number;
}

/**
 * Runs in the page: counts what a person does there. A click, a tap or a drag is one action; a field that is filled is
 * one, whatever is typed; so is a key that does something, moves of the focus and of the page apart.
 */
function countActions(): void {
  const counted = window as Counted;
  counted.actions = 0;
  const moves = ['Tab', 'Shift', 'Control', 'Alt', 'Meta', 'PageDown', 'PageUp'];
  let filled: EventTarget | null = null;
  const act = (): void => {
    counted.actions = (counted.actions ?? 0) + 1;
    filled = null;
  };
  addEventListener('pointerdown', act, true);
  addEventListener(
    'keydown',
    ({ key, ctrlKey, altKey, target }) => {
      const isTicked = target instanceof HTMLInputElement && ['checkbox', 'radio'].includes(target.type);
      const types = key.length === 1 && !ctrlKey && !altKey && target instanceof HTMLInputElement && !isTicked;
      if (!moves.includes(key) && !types) act();
    },
    true,
  );
  addEventListener(
    'input',
    ({ target }) => {
      // What a click or a key sets is counted by that.
      const isSet = target instanceof HTMLInputElement && ['checkbox', 'radio', 'range'].includes(target.type);
      if (target === filled || isSet) return;
      act();
      filled = target;
    },
    true,
  );
}

/** What was done in the page since it was opened. */
export function actionsOf(page: Page): Promise<number> {
  return page.evaluate(() => (window as Counted).actions ?? NaN);
}

/** Waits until the stage of the heat says how the plants fare, and what draws has come after it. */
export async function graded(page: Page): Promise<void> {
  await page
    .getByRole('navigation', { name: 'Stages' })
    .getByText(/burns?$|at risk|none burns|no plants yet/)
    .waitFor({ state: 'attached' });
  await page.locator('.yard-map[aria-busy="false"]').waitFor({ state: 'attached' });
}

/** Opens a fold of the card by its title, by keyboard; one that is open stays so. */
export async function unfold(page: Page, title: string): Promise<void> {
  const summary = page.locator('details.fold:not([open]) > summary', { hasText: title });
  if ((await summary.count()) > 0) await summary.press('Enter');
}

/** Waits until the page says that everything is on the disk. */
export async function saved(page: Page): Promise<void> {
  await page.getByRole('banner').getByText('saved', { exact: true }).waitFor({ state: 'attached' });
}
