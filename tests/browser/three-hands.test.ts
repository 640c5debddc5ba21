import type { Locator, Page } from 'playwright-core';
import { afterAll, describe, expect, test } from 'vitest';
import { main } from '../../engine/cli.ts';
import type { LoadResult, Plan, PlanPoint } from '../../engine/index.ts';
import { formatStretch } from '../../engine/index.ts';
import { sunUp } from '../../engine/sun/sun-up.ts';
import { drawing, emptyYard, listOf, onScreen, savedFile } from './drawing-hands.ts';
import { SIZES, actionsOf, browserSession, openApp, saved } from './harness.ts';

/**
 * Three hands, one plan: the same yard from nothing by mouse, by single taps on a phone without one drag, and by
 * keyboard alone. Two walls, a tree, a lemon in a pot, and raspberries beside the eastern wall; the three files must be
 * the same to the byte. When the sun reaches the raspberries is then read on the page, in a number of actions.
 */
const session = browserSession();
const files = new Map<string, string>();

/** From nothing to when the sun reaches the raspberries: yard, wall, bed, answer. */
const MOST_ACTIONS = { mouse: 19, taps: 33, keyboard: 33 } as const;
const RASPBERRIES = ['East wall', 'Raspberries'];

const LONG_WALL: readonly PlanPoint[] = [
  [0, 8],
  [0, 0],
  [10, 0],
];
const SHORT_WALL: readonly PlanPoint[] = [
  [10, 0],
  [10, 5],
];
const TREE: PlanPoint = [6.5, 5.25];
const POT: PlanPoint = [2.5, 3.45];
const BED: readonly PlanPoint[] = [
  [8.5, 1],
  [9.5, 4.5],
];

interface Thing {
  readonly add: string;
  readonly tool: RegExp;
  readonly points: readonly PlanPoint[];
  readonly numbers: Readonly<Record<string, string>>;
  readonly plant?: string;
  readonly name: string;
}

const THINGS: readonly Thing[] = [
  {
    add: 'Add Wall',
    tool: /^Wall/,
    points: LONG_WALL,
    numbers: { Height: '1.8', Thickness: '20 cm' },
    name: 'Street wall',
  },
  {
    add: 'Add Wall',
    tool: /^Wall/,
    points: SHORT_WALL,
    numbers: { Height: '2,1', Thickness: '0.15' },
    name: 'East wall',
  },
  {
    add: 'Add Tree',
    tool: /^Tree/,
    points: [TREE],
    numbers: { Height: '4.2', 'Crown width': '3', 'Crown begins at': '1.6', 'Light through': '15' },
    name: 'Fig',
  },
  {
    add: 'Add Pot',
    tool: /^Pot/,
    points: [POT],
    numbers: { Height: '1.5', Width: '0.9' },
    plant: 'Lemon',
    name: 'Lemon pot',
  },
  {
    add: 'Add Bed',
    tool: /^Bed/,
    points: BED,
    numbers: { 'Plant height': '1.2' },
    plant: 'Raspberry',
    name: 'Raspberries',
  },
];

/** Fills the numbers asked; `choose` picks the plant found first. */
async function answer(
  page: Page,
  { numbers, plant, name }: Thing,
  choose: (row: Locator) => Promise<void>,
): Promise<void> {
  const bar = drawing(page);
  for (const [label, text] of Object.entries(numbers)) await bar.getByLabel(label, { exact: true }).fill(text);
  if (plant !== undefined) {
    await bar.getByLabel('Which plant').fill(plant);
    await choose(bar.getByRole('button', { name: new RegExp(`^${plant} `) }).first());
  }
  await bar.getByLabel('Name', { exact: true }).fill(name);
}

async function keep(hand: string, page: Page, complaints: readonly string[]): Promise<void> {
  await saved(page);
  files.set(hand, await savedFile(page));
  expect(complaints).toEqual([]);
}

describe('a yard from nothing', () => {
  test('by mouse', async () => {
    const context = await session.context();
    const { page, complaints } = await openApp(context, session.site.address);
    await emptyYard(page);
    const spent = new Spent(page);
    await spent.on('yard');
    for (const thing of THINGS) {
      const tool = page.getByRole('group', { name: 'Drawing tools' }).getByRole('button', { name: thing.tool });
      if ((await tool.getAttribute('aria-pressed')) !== 'true') await tool.click();
      for (const point of thing.points) {
        const { x, y } = await onScreen(page, point);
        await page.mouse.move(x - 7, y + 4);
        await page.mouse.move(x, y);
        await page.mouse.click(x, y);
      }
      if (thing.add === 'Add Wall') await drawing(page).getByRole('button', { name: 'Finish wall' }).click();
      await answer(page, thing, (row) => row.click());
      await drawing(page).getByRole('button', { name: 'Add it to the plan' }).click();
      await page.getByRole('button', { name: `Undo: Draw ${thing.name}` }).waitFor();
      await spent.on(thing.name);
    }
    await keep('mouse', page, complaints);
    await readRaspberries('mouse', page, spent, (button) => button.click());
    await context.close();
  });

  test('by single taps under the cross-hair at 390 × 844, without one drag', async () => {
    const context = await session.context({ viewport: SIZES.phone, hasTouch: true, isMobile: true });
    const { page, complaints } = await openApp(context, session.site.address);
    await emptyYard(page, (button) => button.tap());
    const spent = new Spent(page);
    await spent.on('yard');
    for (const thing of THINGS) {
      const tools = page.getByRole('group', { name: 'Drawing tools' });
      const tool = tools.getByRole('button', { name: thing.tool });
      if (!(await tool.isVisible())) {
        await tools.getByRole('button', { name: 'Add', exact: true }).tap();
        await tool.tap();
      }
      for (const point of thing.points) {
        await bringUnderCross(page, point);
        await drawing(page).getByRole('button', { name: 'Here' }).tap();
      }
      if (thing.add === 'Add Wall') await drawing(page).getByRole('button', { name: 'Finish wall' }).tap();
      await answer(page, thing, (row) => row.tap());
      await drawing(page).getByRole('button', { name: 'Add it to the plan' }).tap();
      await page.getByRole('button', { name: `Undo: Draw ${thing.name}` }).waitFor();
      await spent.on(thing.name);
    }
    await keep('taps', page, complaints);
    await readRaspberries('taps', page, spent, (button) => button.tap());
    await context.close();
  });

  test('by keyboard alone', async () => {
    const context = await session.context();
    const { page, complaints } = await openApp(context, session.site.address);
    await emptyYard(page, (button) => button.press('Enter'));
    const spent = new Spent(page);
    await spent.on('yard');
    for (const thing of THINGS) {
      if (
        !(await drawing(page).isVisible()) ||
        !(await page
          .getByRole('group', { name: 'Drawing tools' })
          .getByRole('button', { name: thing.tool, pressed: true })
          .isVisible())
      )
        await listOf(page).getByRole('button', { name: thing.add, exact: true }).press('Enter');
      const box = drawing(page).getByLabel('Type it');
      await expect.poll(() => box.evaluate((input) => input === document.activeElement)).toBe(true);
      const [[x, y]] = thing.points;
      await page.keyboard.type(`${x} ${y}`);
      await page.keyboard.press('Enter');
      if (thing.points === LONG_WALL) await page.keyboard.type('down 8 left 10');
      if (thing.points === SHORT_WALL) await page.keyboard.type('up 5');
      if (thing.points === BED) await page.keyboard.type('1 x 3.5');
      if (thing.points === BED) await page.keyboard.press('Enter');
      else if (thing.points.length > 1) {
        await page.keyboard.press('Enter');
        await page.keyboard.press('Enter');
      }
      await answer(page, thing, () => page.keyboard.press('Enter'));
      await page.keyboard.press('Enter');
      await page.getByRole('button', { name: `Undo: Draw ${thing.name}` }).waitFor();
      await spent.on(thing.name);
    }
    await keep('keyboard', page, complaints);
    await readRaspberries('keyboard', page, spent, (button) => button.press('Enter'));
    await context.close();
  });

  test('gives the same file, whichever hand drew it', () => {
    expect([...files.keys()]).toEqual(['mouse', 'taps', 'keyboard']);
    const [mouse, taps, keyboard] = files.values();
    expect(JSON.parse(mouse).features).toMatchObject([
      { kind: 'wall', path: LONG_WALL, height: 1.8, thickness: 0.2, name: 'Street wall' },
      { kind: 'wall', path: SHORT_WALL, height: 2.1, thickness: 0.15, name: 'East wall' },
      { kind: 'tree', at: TREE, height: 4.2, crownWidth: 3, crownBase: 1.6, openness: 0.15, name: 'Fig' },
      { kind: 'plant', at: POT, height: 1.5, spread: 0.9, container: true, plant: 'lemon', name: 'Lemon pot' },
      { kind: 'bed', plantHeight: 1.2, plant: 'raspberry', name: 'Raspberries' },
    ]);
    expect(taps).toBe(mouse);
    expect(keyboard).toBe(mouse);
  });

  test('says on the page what the command line says of it: verdicts, and when the sun reaches the raspberries', async () => {
    const text = files.get('keyboard') ?? '';
    let printed = '';
    const done = await main(['load', '-', '--json', '--heatwave'], {
      out: (line) => void (printed += line),
      err: () => {},
      readFile: () => new Uint8Array(),
      readInput: () => new TextEncoder().encode(text),
      terminal: { columns: 80, colour: false, watched: true },
      now: () => 0,
    });
    expect(done).toBe(0);
    const { plants } = JSON.parse(printed) as LoadResult;
    const plan = JSON.parse(text) as Plan;
    const nameOf = (id: string) => plan.features.find((feature) => feature.id === id)?.name;
    const told = plants.map(({ id, verdict, when }) => [
      nameOf(id),
      verdict,
      when && formatStretch(when, 'metric', sunUp(plan, `${plan.season.year}-07-21`)),
    ]);
    expect(told.map(([name]) => name).toSorted()).toEqual(['Lemon pot', 'Raspberries']);
    for (const rows of answers.values()) {
      expect(rows.map(([name, verdict]) => [name, verdict]).toSorted()).toEqual(
        told.map(([name, verdict]) => [name, verdict]).toSorted(),
      );
      const [, , when] = told.find(([name]) => name === 'Raspberries') ?? [];
      expect(when).toMatch(/ to /);
      expect(rows.find(([name]) => name === 'Raspberries')?.[2]).toContain(when);
    }
    expect(answers.size).toBe(3);
  });

  afterAll(() => {
    files.clear();
    answers.clear();
  });
});

/** What each hand reads in the end: of each plant its name, its verdict, and all that its row says. */
const answers = new Map<string, readonly (readonly [string, string, string])[]>();

/** Actions by what they went into. */
class Spent {
  private readonly by = new Map<string, number>();
  private before = 0;

  constructor(private readonly page: Page) {}

  async on(what: string): Promise<void> {
    const now = await actionsOf(this.page);
    this.by.set(what, now - this.before);
    this.before = now;
  }

  of(parts: readonly string[]): number {
    return parts.reduce((sum, part) => sum + (this.by.get(part) ?? NaN), 0);
  }
}

/** Goes where the heat is found and reads it there. */
async function readRaspberries(
  hand: keyof typeof MOST_ACTIONS,
  page: Page,
  spent: Spent,
  press: (button: Locator) => Promise<void>,
): Promise<void> {
  await spent.on('file');
  await press(page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name: /Heat|heat/ }));
  const list = page.getByRole('region', { name: 'Plants, worst first' });
  // Drawing by taps has folded the panel to a line.
  const more = page.getByRole('button', { name: 'Show more of the panel' });
  if ((await more.isVisible()) && !(await list.isVisible())) await press(more);
  const plants = list.getByRole('listitem');
  await plants.filter({ hasText: 'Raspberries' }).waitFor();
  await expect.poll(() => page.locator('.map-caption b', { hasText: 'Out of date' }).count()).toBe(0);
  answers.set(
    hand,
    await plants.evaluateAll((rows) =>
      rows.map((row): [string, string, string] => {
        const [name, verdict] = ['strong', '.verdict'].map((part) => row.querySelector(part)?.textContent ?? '');
        return [name, verdict, row.textContent];
      }),
    ),
  );
  await spent.on('answer');
  const actions = spent.of(['yard', ...RASPBERRIES, 'answer']);
  expect(actions).toBeLessThanOrEqual(MOST_ACTIONS[hand]);
}

/** Taps near a place and then nudges until the cross stands exactly there. */
async function bringUnderCross(page: Page, [x, y]: PlanPoint): Promise<void> {
  const readout = drawing(page).locator('.aim-readout');
  await readout.waitFor();
  for (let tap = 0; tap < 12; tap += 1) {
    const [across, up] = await cross(page);
    if (Math.abs(across - x) < 0.06 && Math.abs(up - y) < 0.06) break;
    const paper = await page.getByRole('application').boundingBox();
    const middle = { x: paper!.x + paper!.width / 2, y: paper!.y + paper!.height / 2 };
    // Within the paper and clear of the buttons in its corner.
    const pixels = 32;
    const dx = Math.max(-110, Math.min(90, (x - across) * pixels));
    const dy = Math.max(-60, Math.min(60, (up - y) * pixels));
    await page.touchscreen.tap(middle.x + dx, middle.y + dy);
  }
  for (const [axis, low, high] of [
    [0, 'left', 'right'],
    [1, 'down', 'up'],
  ] as const) {
    for (let nudge = 0; nudge < 40; nudge += 1) {
      const off = Math.round(((axis === 0 ? x : y) - (await cross(page))[axis]) * 100);
      if (off === 0) break;
      await step(page, Math.abs(off) >= 10 ? '10 cm' : '1 cm');
      await page
        .getByRole('button', { name: `${Math.abs(off) >= 10 ? '10 cm' : '1 cm'} ${off < 0 ? low : high}` })
        .tap();
    }
  }
}

async function step(page: Page, wanted: '10 cm' | '1 cm'): Promise<void> {
  const button = page.getByRole('button', { name: /^Step/ });
  if (!(await button.textContent())?.startsWith(wanted)) await button.tap();
}

async function cross(page: Page): Promise<PlanPoint> {
  const text = (await drawing(page).locator('.aim-readout').textContent()) ?? '';
  const [across, up] = [...text.replaceAll('−', '-').matchAll(/-?[\d.]+/g)].map(([number]) => Number(number));
  return [across, up];
}
