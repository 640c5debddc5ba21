import { text } from 'node:stream/consumers';
import type { Download, Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { demoPlan, parsePlan, planText, startNextYear } from '../../engine/index.ts';
import type { Plan } from '../../engine/index.ts';
import { LONG } from '../long.ts';
import { KEYS, POINTER, TAPS, windowFor } from './hands.ts';
import type { Hand } from './hands.ts';
import { actionsOf, browserSession, graded, openUngraded } from './harness.ts';

/**
 * One yard from why it burnt to whether it worked, in one visit by each hand, every task with the most actions it may
 * take. One's own yard from the first question, raspberries beside a fence, a pot tried elsewhere, north and heights
 * stand in tests of their own: first-minute, three-hands, tasks, survey.
 */
const session = browserSession();

/** The demo's courtyard, five by four metres of it: the lemon, a fence, people in the street, a roof thought of. */
function smallYard(): Plan {
  const demo = demoPlan('courtyard');
  const lemon = demo.features.find(({ id }) => id === 'lemon');
  if (lemon?.kind !== 'plant') throw new Error('The demo has no lemon.');
  return startNextYear({
    ...demo,
    name: 'Small yard',
    yard: 'small',
    site: {
      ...demo.site,
      boundary: [
        [0, 0],
        [5, 0],
        [5, 4],
        [0, 4],
      ],
    },
    features: [
      {
        id: 'fence',
        kind: 'wall',
        name: 'Fence',
        path: [
          [0, 0],
          [5, 0],
        ],
        height: 1.8,
        thickness: 0.1,
      },
      { ...lemon, at: [3, 2] },
      { id: 'street', kind: 'eye', name: 'Street', path: [[2.5, -4]], height: 1.6 },
    ],
    options: [
      {
        id: 'A',
        name: 'A roof',
        adds: [
          {
            id: 'roof',
            kind: 'canopy',
            name: 'Roof over the lemon',
            center: [3, 2],
            length: 2,
            width: 2,
            turn: 0,
            height: 2.2,
            density: 0.5,
          },
        ],
      },
    ],
    journal: [],
  });
}

interface Task {
  readonly name: string;
  /** Most actions by pointer, by taps, by keys. */
  readonly most: readonly [pointer: number, taps: number, keys: number];
  run(page: Page, hand: Hand): Promise<void>;
}

const panel = (page: Page): Locator => page.getByRole('region', { name: 'Panel' });
const button = (page: Page, name: string | RegExp): Locator =>
  panel(page).getByRole('button', { name, exact: typeof name === 'string' });

async function downloadBy(page: Page, press: Promise<void>): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download') as Promise<Download>, press]);
  return text(await download.createReadStream());
}

async function turnTo(page: Page, hand: Hand, name: string): Promise<Locator> {
  const pages = page.getByRole('navigation', { name: 'Pages of the year' });
  await hand.press(page, pages.getByRole('button', { name, exact: true }));
  return page.getByRole('region', { name, exact: true });
}

async function noteDamage(page: Page, hand: Hand, diary: Locator, date: string, score: number): Promise<void> {
  await hand.press(page, diary.getByRole('button', { name: 'Damage', exact: true }));
  const form = diary.getByRole('form', { name: 'Damage' });
  await hand.date(page, form.getByLabel('Date'), date);
  await hand.choose(page, form.getByRole('radio', { name: new RegExp(`^${score}`) }));
  await hand.press(page, form.getByRole('button', { name: 'Save' }));
  await form.waitFor({ state: 'detached' });
}

const TASKS: readonly Task[] = [
  {
    name: 'read which plant burns, and when',
    most: [1, 1, 1],
    async run(page, hand) {
      await hand.go(page, 2);
      const row = page.getByRole('region', { name: 'Plants, worst first' }).getByRole('listitem').first();
      await row.getByText(/^Lemon pot/).waitFor();
      await row.getByText(/\d\d:\d\d to (sunset|\d\d:\d\d)/).waitFor();
    },
  },
  {
    name: 'ask why it burnt',
    most: [2, 2, 2],
    async run(page, hand) {
      await hand.press(page, button(page, /^Lemon pot/));
      await hand.press(page, button(page, 'It burnt: why?'));
      await page.getByRole('region', { name: 'Answer' }).getByRole('heading').waitFor();
    },
  },
  {
    name: 'type how high the fence is',
    most: [4, 4, 5],
    async run(page, hand) {
      await hand.go(page, 1);
      const list = page.getByRole('region', { name: 'Everything on the plan' });
      await hand.press(page, list.getByRole('button', { name: /^Fence/ }));
      const height = list.getByLabel('Height', { exact: true });
      await hand.type(page, height, '6\'2"');
      await page.keyboard.press('Enter');
      await expect.poll(() => height.inputValue()).toBe('1.88 m');
    },
  },
  {
    name: 'see when low sun comes in under the roof, to which side, and what would stop it',
    most: [3, 3, 3],
    async run(page, hand) {
      await hand.go(page, 4);
      const shown = page.getByRole('group', { name: 'Show on the drawing' });
      await hand.press(page, shown.getByRole('button', { name: /^A/ }));
      const cut = page.getByRole('region', { name: 'Cut through the roof' });
      await cut
        .getByText(/(from|until) \d\d:\d\d (on )?the sun comes in under the roof over the lemon to its \w+ side/)
        .waitFor();
      await cut.getByRole('button', { name: /^Hang this drop/ }).waitFor();
      await hand.press(page, shown.getByRole('button', { name: 'Today' }));
    },
  },
  {
    name: 'find the best roof for a sum, hidden from the street',
    most: [7, 7, 10],
    async run(page, hand) {
      await hand.press(page, button(page, 'Find the best cloth'));
      const finding = page.getByRole('region', { name: 'Find the best' });
      await hand.select(page, finding.getByLabel('What to put up'), /^A roof$/);
      await hand.select(page, finding.getByLabel('Hidden from'), /^hidden from: Street$/);
      await hand.type(page, finding.getByLabel('Budget'), '400');
      await page.keyboard.press('Enter');
      await hand.press(page, finding.getByRole('button', { name: 'Find it' }));
      await hand.press(page, finding.getByRole('button', { name: 'Put 1 into a new option' }));
      await page.getByRole('button', { name: /^Undo: Put a roof \d.* into option B/ }).waitFor({ state: 'attached' });
      await expect.poll(() => page.locator('path.grip').count()).toBeGreaterThan(0);
    },
  },
  {
    name: 'hold the two roofs against each other',
    most: [1, 1, 1],
    async run(page, hand) {
      await hand.press(page, panel(page).locator('summary', { hasText: 'Compare' }));
      const rows = page.getByRole('region', { name: 'Compare' }).getByRole('rowheader');
      await expect.poll(() => rows.allTextContents(), { timeout: 60_000 }).toEqual(['A', 'B']);
    },
  },
  {
    name: 'say the ground, tick what is in hand, and print the sheet with its stops answered',
    most: [12, 12, 11],
    async run(page, hand) {
      await hand.go(page, 5);
      // No grip of the roof that is chosen lies over its sheet.
      await expect.poll(() => page.locator('path.grip').count()).toBe(0);
      await hand.select(page, page.getByLabel('Ground under the posts'), /^garden soil$/);
      const sheet = page.getByRole('article', { name: /^Build sheet/ });
      await hand.press(page, button(page, 'Shopping list'));
      await hand.choose(page, sheet.getByRole('region', { name: 'Shopping list' }).getByRole('checkbox').first());
      await sheet.getByText(/^1 of \d+ lines in hand\.$/).waitFor();
      await hand.press(page, button(page, 'Print the sheet'));
      for (const stop of await sheet.getByRole('region', { name: 'Stops' }).locator('input').all())
        await hand.choose(page, stop);
      await hand.press(page, button(page, 'Print the sheet'));
      await page.locator('.paper-host').getByText('Shopping list').first().waitFor({ state: 'attached' });
    },
  },
  {
    name: 'have tomorrow’s list for a forecast',
    most: [4, 4, 5],
    async run(page, hand) {
      await hand.go(page, 6);
      const tomorrow = await turnTo(page, hand, 'Tomorrow');
      await hand.date(page, tomorrow.getByLabel('Day', { exact: true }), '2099-07-20');
      await hand.type(page, tomorrow.getByLabel('Highest, by day'), '44');
      await tomorrow.getByText('Evening before').waitFor();
      await tomorrow
        .getByText(/^Carry the lemon pot into the shade, or hang cloth over it; leave it so until/)
        .waitFor();
    },
  },
  {
    name: 'note a pair of readings and read what it says',
    most: [7, 7, 10],
    async run(page, hand) {
      const diary = await turnTo(page, hand, 'Diary');
      await hand.press(page, diary.getByRole('button', { name: 'Pair of readings' }));
      const form = page.getByRole('form', { name: 'Pair of readings' });
      await hand.type(page, form.getByLabel('Leaf in the open'), '48');
      await hand.type(page, form.getByLabel('Leaf under cloth'), '42');
      await hand.type(page, form.getByLabel('Air in the shade'), '41');
      await hand.press(page, form.getByRole('button', { name: 'Save' }));
      const opinion = await turnTo(page, hand, 'Did it work?');
      await opinion.getByText(/the leaf under the cloth was 6 °C cooler than the open one/).waitFor();
    },
  },
  {
    name: 'score the damage of two summers and read whether it was better',
    most: [10, 10, 16],
    async run(page, hand) {
      const diary = await turnTo(page, hand, 'Diary');
      await noteDamage(page, hand, diary, '2026-07-20', 3);
      await noteDamage(page, hand, diary, '2027-07-22', 1);
      const opinion = await turnTo(page, hand, 'Did it work?');
      await opinion.getByText('Lemon pot: too little to tell.').waitFor();
    },
  },
  {
    name: 'save the yard, and a copy that tells nobody where it is',
    most: [4, 4, 4],
    async run(page, hand) {
      await hand.press(page, page.getByRole('banner').getByRole('button', { name: /Yard and files/ }));
      const file = await downloadBy(page, hand.press(page, button(page, 'Save a file')));
      const read = parsePlan(file);
      if (!read.ok) throw new Error(read.problems[0].message);
      expect(read.plan.features[0]).toMatchObject({ id: 'fence', height: 1.8796 });
      expect(read.plan.options?.map(({ id }) => id)).toEqual(['A', 'B']);
      expect(read.plan.journal?.map(({ what }) => what)).toEqual(['damage', 'damage']);
      await hand.press(page, button(page, 'Look at what would leave…'));
      const copy = await downloadBy(page, hand.press(page, button(page, 'Save this copy')));
      expect(copy).not.toContain('Small yard');
    },
  },
];

test.each(
  // A pointer goes the same way in most other tests: with it the whole is left to the long run.
  [['taps', TAPS, 1], ['keys', KEYS, 2], ...(LONG ? [['pointer', POINTER, 0] as const] : [])] as const,
)(
  'the whole job in one visit by %s, each task in so many actions at most',
  { timeout: 240_000 },
  async (_name, hand, at) => {
    const context = await session.context(windowFor(hand));
    const { page, complaints } = await openUngraded(context, session.site.address);
    await page.evaluate(() => Object.assign(window, { print: () => {} }));
    await page.getByRole('button', { name: /Yard and files/ }).click();
    await page.getByLabel('Open a file…').setInputFiles({
      name: 'small.plan.json',
      mimeType: 'application/json',
      buffer: Buffer.from(planText(smallYard())),
    });
    await page.getByRole('banner').getByText('Small yard').waitFor();
    await graded(page);
    const spent: string[] = [];
    for (const { name, most, run } of TASKS) {
      const before = await actionsOf(page);
      await run(page, hand);
      const actions = (await actionsOf(page)) - before;
      if (actions > most[at]) spent.push(`${name}: ${actions} actions`);
    }
    expect(spent).toEqual([]);
    expect(complaints).toEqual([]);
    await context.close();
  },
);
