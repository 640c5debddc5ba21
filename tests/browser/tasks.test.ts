import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { SIZES, actionsOf, browserSession, openApp } from './harness.ts';
import { pressByKey, typeInto } from './keys.ts';
import { outOfReach, smallTargets } from './targets.ts';

/**
 * Tasks that every hand can do, and in how many actions; raspberries beside a fence stand in three-hands.test.ts, the
 * whole job by keyboard in first-minute.test.ts, what a finger near a mark takes in drawing.test.ts.
 */
const session = browserSession();

interface Hand {
  readonly size: keyof typeof SIZES;
  /** Actions until the lemon has been tried in both places. */
  readonly most: number;
  press(page: Page, button: Locator): Promise<void>;
  type(page: Page, field: Locator, text: string): Promise<void>;
}

const HANDS: Readonly<Record<string, Hand>> = {
  pointer: {
    size: 'laptop',
    most: 7,
    press: (_, button) => button.click(),
    type: (_, field, text) => field.fill(text),
  },
  taps: { size: 'phone', most: 7, press: (_, button) => button.tap(), type: (_, field, text) => field.fill(text) },
  keys: { size: 'laptop', most: 9, press: pressByKey, type: typeInto },
};

const stage = (page: Page, name: RegExp): Locator =>
  page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name });

test.each(Object.entries(HANDS))(
  'by %s a lemon tried where winter has no sun is warned of it, and where summer burns of that; it stays tried ' +
    'through the stages until it is put back',
  async (_name, { size, most, press, type }) => {
    const context = await session.context({
      viewport: SIZES[size],
      hasTouch: size === 'phone',
      isMobile: size === 'phone',
    });
    const { page, complaints } = await openApp(context, session.site.address);
    const best = page.getByRole('region', { name: 'Best places' });
    const now = page.getByRole('region', { name: 'Where it is on the drawing' });
    await press(page, stage(page, /Place|Pots/));
    await press(page, best.getByRole('button', { name: 'Try it there' }).first());
    await now.getByText(/^Tried there, in option D\. Better there: .*\. No sun there in mid-winter\.$/).waitFor();
    await press(page, now.getByText('Type where'));
    for (const [label, text] of [
      ['Across, x', '1.0'],
      ['Up, y', '5.6'],
    ] as const) {
      await type(page, now.getByLabel(label), text);
      await page.keyboard.press('Enter');
    }
    // An independent cast gave this spot 3.7 h of sun in mid-January.
    const winterPlace = now.getByText(/^Tried there, in option D\. .* over its limit (?:(?!mid-winter).)*$/);
    await winterPlace.waitFor();
    const decided = await actionsOf(page);

    for (const other of [/Heat|heat/, /Draw/, /Year|year/]) await press(page, stage(page, other));
    await press(page, stage(page, /Place|Pots/));
    await winterPlace.waitFor();
    await press(page, now.getByRole('button', { name: 'Put it back' }));
    await now.getByText(/^Tried there/).waitFor({ state: 'detached' });
    expect(decided).toBeLessThanOrEqual(most);
    expect((await actionsOf(page)) - decided).toBe(5);
    expect(complaints).toEqual([]);
    await context.close();
  },
);

test('at 700 × 450 and at 320 × 640 every tab, field and button of every stage can be hit by a finger', async () => {
  const context = await session.context({ viewport: { width: 320, height: 640 }, hasTouch: true, isMobile: true });
  const { page } = await openApp(context, session.site.address);
  const missed: string[] = [];
  for (const viewport of [
    { width: 320, height: 640 },
    { width: 700, height: 450 },
  ]) {
    await page.setViewportSize(viewport);
    for (const name of [/Draw/, /Heat|heat/, /Place|Pots/, /Try/, /Build/, /Year|year/]) {
      await stage(page, name).tap();
      await page.waitForFunction(() => !document.querySelector('[aria-busy="true"]'));
      const faults = [...(await outOfReach(page)), ...(await smallTargets(page, 44))];
      missed.push(...faults.map((fault) => `${viewport.width} px, ${name.source}: ${fault}`));
    }
  }
  expect(missed).toEqual([]);
  await context.close();
});
