import { expect, test } from 'vitest';
import { oneIn } from '../long.ts';
import { KEYS, POINTER, TAPS, windowFor } from './hands.ts';
import { actionsOf, browserSession, graded, openApp } from './harness.ts';
import { outOfReach, smallTargets } from './targets.ts';

/**
 * Tasks that every hand can do, and in how many actions; raspberries beside a fence stand in three-hands.test.ts, the
 * whole job by keyboard in first-minute.test.ts, what a finger near a mark takes in drawing.test.ts.
 */
const session = browserSession();

test.each([
  ['pointer', POINTER, 7],
  ['taps', TAPS, 7],
  ['keys', KEYS, 9],
] as const)(
  'by %s a lemon tried where winter has no sun is warned of it, and where summer burns of that; it stays tried ' +
    'through the stages until it is put back',
  async (_name, hand, most) => {
    const { press, type } = hand;
    const context = await session.context(windowFor(hand));
    const { page, complaints } = await openApp(context, session.site.address);
    const best = page.getByRole('region', { name: 'Best places' });
    const now = page.getByRole('region', { name: 'Where it is on the drawing' });
    await hand.go(page, 3);
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
    const winterPlace = now.getByText(/^Tried there, in option D\. .* over the limit (?:(?!mid-winter).)*$/);
    await winterPlace.waitFor();
    const decided = await actionsOf(page);

    for (const other of [2, 1, 6]) await hand.go(page, other);
    await hand.go(page, 3);
    await winterPlace.waitFor();
    await press(page, now.getByRole('button', { name: 'Put it back' }));
    await now.getByText(/^Tried there/).waitFor({ state: 'detached' });
    expect(decided).toBeLessThanOrEqual(most);
    expect((await actionsOf(page)) - decided).toBe(5);
    expect(complaints).toEqual([]);
    await context.close();
  },
);

test('at 700 × 450, also dark, and at 320 × 640 every tab, field and button of every stage can be hit by a finger', async () => {
  const context = await session.context({ viewport: { width: 320, height: 640 }, hasTouch: true, isMobile: true });
  const { page } = await openApp(context, session.site.address);
  const missed: string[] = [];
  const narrow = { width: 320, height: 640 };
  const low = { width: 700, height: 450 };
  for (const [viewport, letters, inLane] of oneIn(2, [
    [narrow, '', false],
    [narrow, '', true],
    [low, '', true],
    [low, '200%', true],
  ] as const)) {
    await page.setViewportSize(viewport);
    if (inLane) {
      await page.emulateMedia({ colorScheme: 'dark' });
      await page.getByRole('button', { name: /Yard and files/ }).tap();
      await page.getByRole('button', { name: /^Demo: .*lane/i }).tap();
      await graded(page);
    }
    await page.evaluate((size) => (document.documentElement.style.fontSize = size), letters);
    for (let stage = 1; stage <= 6; stage++) {
      await TAPS.go(page, stage);
      await page.waitForFunction(() => !document.querySelector('[aria-busy="true"]'));
      // Twice as large letters are read, and pressed, by whoever sees less: boxes need not grow with them.
      const small = letters === '' ? await smallTargets(page, 44) : [];
      const faults = [...(await outOfReach(page)), ...small];
      missed.push(...faults.map((fault) => `${viewport.width} px ${letters}, stage ${stage}: ${fault}`));
    }
  }
  expect(missed).toEqual([]);
  await context.close();
});
