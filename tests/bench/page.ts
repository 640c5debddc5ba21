import { chromium } from 'playwright-core';
import type { Page } from 'playwright-core';
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
const MOVES = 60;
const FRAME_MS = 16;

/** What the page notes about itself while it is measured. */
interface Notes {
  /** Main-thread tasks over 50 ms. [ms] */
  readonly longTasks: number[];
  /** From question to answer of the worker's map. [ms] */
  readonly loads: number[];
}

/** Drags a plant of the demo and edits it, five times each. */
export async function pageFigures(): Promise<PageFigure[]> {
  const site = await startSite();
  const browser = await chromium.connect(site.browser);
  try {
    const context = await browser.newContext({ viewport: { width: 1400, height: 900 }, reducedMotion: 'reduce' });
    const page = await context.newPage();
    // The runner marks functions with their names by a helper that the page does not have.
    await page.addInitScript('globalThis.__name = (named) => named');
    await page.addInitScript(takeNotes);
    await page.goto(site.address);
    await page
      .getByRole('navigation', { name: 'Stages' })
      .getByText(/burns?$/)
      .waitFor();
    await page.getByRole('radio', { name: 'Season' }).check();
    await page.getByRole('button', { name: /^Hydrangea/ }).click();
    await settled(page);
    const drags: number[] = [];
    for (let round = 0; round < ROUNDS; round++) drags.push(await longestOfDrag(page, round % 2 === 0 ? 1 : -1));
    const edits: number[] = [];
    for (let round = 0; round < ROUNDS; round++) edits.push(await refreshAfterEdit(page));
    return [
      figure(`longest main-thread task over 50 ms while a plant is dragged, ${MOVES} moves (0: none)`, drags, 'none'),
      figure('full season of the demo at 0.25 m after an edit, in the worker', edits, 'under 500 ms'),
    ];
  } finally {
    await browser.close();
    await site.stop();
  }
}

/** Runs in the page, before its own scripts. */
function takeNotes(): void {
  const notes: Notes = { longTasks: [], loads: [] };
  Object.assign(window, { notes });
  new PerformanceObserver((list) => notes.longTasks.push(...list.getEntries().map(({ duration }) => duration))).observe(
    { type: 'longtask' },
  );
  window.Worker = class extends Worker {
    override postMessage(message: { readonly id?: number; readonly method?: string }): void {
      const { id, method } = message;
      if (method === 'load') {
        const start = performance.now();
        const hear = ({ data }: MessageEvent<{ readonly id: number; readonly answer?: unknown }>): void => {
          if (data.id !== id || data.answer === undefined) return;
          notes.loads.push(performance.now() - start);
          this.removeEventListener('message', hear);
        };
        this.addEventListener('message', hear);
      }
      super.postMessage(message);
    }
  };
}

async function longestOfDrag(page: Page, way: 1 | -1): Promise<number> {
  const paper = await page.getByRole('application').boundingBox();
  const name = await page.locator('.map-name', { hasText: 'Hydrangea' }).boundingBox();
  if (!paper || !name) throw new Error('The plant to drag is not on the paper.');
  // The name's box stands centred under the plant.
  const [x, y] = [name.x, name.y - 37];
  await taken(page);
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let move = 1; move <= MOVES; move++) {
    await page.mouse.move(x + way * 2 * move, y - way * move);
    await page.waitForTimeout(FRAME_MS);
  }
  const { longTasks } = await taken(page);
  await page.mouse.up();
  if (!(await page.getByRole('button', { name: 'Undo: Move Hydrangea' }).isEnabled()))
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
    return { longTasks: notes.longTasks.splice(0), loads: notes.loads.splice(0) };
  });
}

function figure(name: string, values: readonly number[], wanted: string): PageFigure {
  const sorted = values.toSorted((a, b) => a - b);
  return { name, medianMs: sorted[Math.floor(sorted.length / 2)], mostMs: sorted[sorted.length - 1], wanted };
}
