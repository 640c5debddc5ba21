import { chromium } from 'playwright-core';
import type { Browser, Page } from 'playwright-core';
import { boundsOf } from '../../engine/plan/geometry/shapes.ts';
import { planOf } from '../browser/drawing-hands.ts';
import { startSite } from '../browser/site.ts';

/** What is measured of the page in a real browser. */
export interface PageFigure {
  readonly name: string;
  /** Median of the rounds. [ms] */
  readonly medianMs: number;
  readonly mostMs: number;
  readonly wanted: string;
}

const ROUNDS = 5;
const FRESH_ROUNDS = 3;
const READING_MS = 4_000;
const MOVES = 60;
const FRAME_MS = 16;

/** What the page notes about itself while it is measured. */
interface Notes {
  /** Main-thread tasks over 50 ms. [ms] */
  readonly longTasks: number[];
  /** From question to answer of the worker's map. [ms] */
  readonly loads: number[];
  /** From a search's question to its worker's first word. [ms] */
  readonly words: number[];
  /** When a worker was ended. [ms] */
  readonly ends: number[];
}

/** Drags a plant of the demo, edits it, and calls a search off, five times each; searches a fresh page three times. */
export async function pageFigures(): Promise<PageFigure[]> {
  const site = await startSite();
  const browser = await chromium.connect(site.browser);
  try {
    const page = await opened(browser, site.address);
    await page.getByRole('radio', { name: 'Season' }).check();
    await page.getByRole('button', { name: /^Hydrangea/ }).click();
    await settled(page);
    const drags: number[] = [];
    for (let round = 0; round < ROUNDS; round++) drags.push(await longestOfDrag(page, round % 2 === 0 ? 1 : -1));
    const edits: number[] = [];
    for (let round = 0; round < ROUNDS; round++) edits.push(await refreshAfterEdit(page));
    const calledOff = await searchesCalledOff(page);
    const searched: PageFigure[] = [];
    for (const demo of ['courtyard', 'lane'] as const) {
      const waits: number[] = [];
      for (let round = 0; round < FRESH_ROUNDS; round++) waits.push(await firstSearch(browser, site.address, demo));
      searched.push(
        figure(`from the press on Find it to what was found, the usual request, ${demo}`, waits, 'under 3 s'),
      );
    }
    return [
      ...searched,
      figure(`longest main-thread task over 50 ms while a plant is dragged, ${MOVES} moves (0: none)`, drags, 'none'),
      figure('full season of the demo at 0.25 m after an edit, in the worker', edits, 'under 500 ms'),
      figure(
        'from the press on Cancel until the search’s worker is ended and the form waits again',
        calledOff.map(({ idle }) => idle),
        'under 100 ms',
      ),
      figure(
        'first word of a search begun right after one was called off',
        calledOff.map(({ word }) => word),
        'no target: a worker starts',
      ),
    ];
  } finally {
    await browser.close();
    await site.stop();
  }
}

/** The page as it is first opened. */
async function opened(browser: Browser, address: string): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1400, height: 900 }, reducedMotion: 'reduce' });
  const page = await context.newPage();
  // The runner marks functions with their names by a helper that the page does not have.
  await page.addInitScript('globalThis.__name = (named) => named');
  await page.addInitScript(takeNotes);
  await page.goto(address);
  await graded(page);
  return page;
}

async function graded(page: Page): Promise<void> {
  await page
    .getByRole('navigation', { name: 'Stages' })
    .getByText(/burns?$/)
    .waitFor();
}

/** Of a person who reads the form for a while before they press. */
async function firstSearch(browser: Browser, address: string, demo: 'courtyard' | 'lane'): Promise<number> {
  const page = await opened(browser, address);
  if (demo === 'lane') {
    await page.getByRole('button', { name: /Yard and files/ }).click();
    await page.getByRole('button', { name: /^Demo: .*lane/i }).click();
    await settled(page);
    await graded(page);
  }
  await page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name: /Try/ }).click();
  await page.getByRole('button', { name: 'Find the best cloth' }).click();
  await page.waitForTimeout(READING_MS);
  const wait = await page.evaluate(findIt);
  await page.context().close();
  return wait;
}

/** Runs in the page. */
function findIt(): Promise<number> {
  const start = performance.now();
  [...document.querySelectorAll('button')].find(({ textContent }) => textContent.trim() === 'Find it')?.click();
  return new Promise((resolve) => {
    const look = (): void => {
      if (document.querySelector('.find-best .found')) resolve(performance.now() - start);
      else requestAnimationFrame(look);
    };
    look();
  });
}

/** Runs in the page, before its own scripts. */
function takeNotes(): void {
  const notes: Notes = { longTasks: [], loads: [], words: [], ends: [] };
  Object.assign(window, { notes });
  new PerformanceObserver((list) => notes.longTasks.push(...list.getEntries().map(({ duration }) => duration))).observe(
    { type: 'longtask' },
  );
  window.Worker = class extends Worker {
    override postMessage(message: { readonly id?: number; readonly method?: string }): void {
      const { id, method } = message;
      if (method === 'load' || method === 'site') {
        const start = performance.now();
        const hear = ({ data }: MessageEvent<{ readonly id: number; readonly answer?: unknown }>): void => {
          if (data.id !== id || (method === 'load' && data.answer === undefined)) return;
          notes[method === 'load' ? 'loads' : 'words'].push(performance.now() - start);
          this.removeEventListener('message', hear);
        };
        this.addEventListener('message', hear);
      }
      super.postMessage(message);
    }
    override terminate(): void {
      super.terminate();
      notes.ends.push(performance.now());
    }
  };
}

async function longestOfDrag(page: Page, way: 1 | -1): Promise<number> {
  const plan = await planOf(page);
  const hydrangea = plan.features.find(({ id }) => id === 'hydrangea');
  const ground = await page.locator('path.boundary').boundingBox();
  if (hydrangea?.kind !== 'plant' || !ground) throw new Error('The plant to drag is not on the paper.');
  const { minX, maxX, minY, maxY } = boundsOf(plan.site.boundary);
  const x = ground.x + (ground.width * (hydrangea.at[0] - minX)) / (maxX - minX);
  const y = ground.y + (ground.height * (maxY - hydrangea.at[1])) / (maxY - minY);
  await taken(page);
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let move = 1; move <= MOVES; move++) {
    await page.mouse.move(x + way * 2 * move, y - way * move);
    await page.waitForTimeout(FRAME_MS);
  }
  const { longTasks } = await taken(page);
  await page.mouse.up();
  if (!(await page.getByRole('button', { name: /^Undo: Move Hydrangea/i }).isEnabled()))
    throw new Error('Nothing was dragged.');
  await settled(page);
  return Math.max(0, ...longTasks);
}

async function refreshAfterEdit(page: Page): Promise<number> {
  await taken(page);
  await page.getByRole('application').focus();
  await page.keyboard.press('ArrowRight');
  await page.waitForFunction(() => (window as unknown as { notes: Notes }).notes.loads.length > 0);
  await settled(page);
  return (await taken(page)).loads[0];
}

/** Each search is begun right after the one before was called off. */
async function searchesCalledOff(page: Page): Promise<{ readonly idle: number; readonly word: number }[]> {
  await page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name: /Try/ }).click();
  await page.getByRole('button', { name: 'Find the best cloth' }).click();
  const rounds: { idle: number; word: number }[] = [];
  for (let round = 0; round <= ROUNDS; round++) {
    await taken(page);
    await page.getByRole('button', { name: 'Find it' }).click();
    await page.waitForFunction(() => (window as unknown as { notes: Notes }).notes.words.length > 0);
    const word = (await taken(page)).words[0];
    const idle = await page.evaluate(callOff);
    // The first one called nothing off before it.
    if (round > 0) rounds.push({ idle, word });
  }
  return rounds;
}

/** Runs in the page. */
function callOff(): Promise<number> {
  const { notes } = window as unknown as { notes: Notes };
  const buttonOf = (name: string): HTMLButtonElement | undefined =>
    [...document.querySelectorAll('button')].find(({ textContent }) => textContent.trim() === name);
  const start = performance.now();
  buttonOf('Cancel')?.click();
  return new Promise((resolve) => {
    const look = (): void => {
      if (notes.ends.length > 0 && buttonOf('Find it')) resolve(performance.now() - start);
      else requestAnimationFrame(look);
    };
    look();
  });
}

async function settled(page: Page): Promise<void> {
  await page.waitForTimeout(300);
  await page
    .locator('.map-caption')
    .getByText(/Out of date/)
    .waitFor({ state: 'detached' });
  await page.waitForTimeout(300);
}

/** The notes so far; new ones begin. */
function taken(page: Page): Promise<Notes> {
  return page.evaluate(() => {
    const { notes } = window as unknown as { notes: Notes };
    return {
      longTasks: notes.longTasks.splice(0),
      loads: notes.loads.splice(0),
      words: notes.words.splice(0),
      ends: notes.ends.splice(0),
    };
  });
}

function figure(name: string, values: readonly number[], wanted: string): PageFigure {
  const sorted = values.toSorted((a, b) => a - b);
  return { name, medianMs: sorted[Math.floor(sorted.length / 2)], mostMs: sorted[sorted.length - 1], wanted };
}
