import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { demoPlan, placeHeadline, planText } from '../../engine/index.ts';
import type { PlaceResult, PlanPoint } from '../../engine/index.ts';
import { jsonOf } from '../command-line.ts';
import { POT, TOWER } from '../engine/advice/planted.ts';
import { yardPlan } from '../engine/load/yard-plan.ts';
import { faultsOf } from './axe.ts';
import { planOf } from './drawing-hands.ts';
import { SIZES, browserSession, openApp, unfold } from './harness.ts';

const session = browserSession();
const demo = demoPlan('courtyard');
/** An olive in a tower's shade and a hydrangea in the sun, both in pots. */
const WRONG_WAY_ROUND = yardPlan([
  { ...TOWER, eaves: 0.5 },
  { ...POT, name: 'Olive', plant: 'olive', at: [2.95, 5] },
  { ...POT, id: 'hydrangea', name: 'Hydrangea', at: [9, 4], height: 0.8, spread: 0.8, plant: 'hydrangea' },
]);

async function atPlaces(
  size: keyof typeof SIZES,
): Promise<{ page: Page; best: Locator; now: Locator; complaints: string[]; close: () => Promise<void> }> {
  const context = await session.context({ viewport: SIZES[size], hasTouch: size === 'phone' });
  const { page, complaints } = await openApp(context, session.site.address);
  await page
    .getByRole('navigation', { name: 'Stages' })
    .getByRole('button', { name: /Place|Pots/ })
    .click();
  const best = page.getByRole('region', { name: 'Best places' });
  await best.waitFor({ state: 'attached', timeout: 60_000 });
  return {
    page,
    best,
    now: page.getByRole('region', { name: 'Where it is on the drawing' }),
    complaints,
    close: () => context.close(),
  };
}

/** Where a point of the courtyard, 11 by 8.5 m, lies on the screen. */
async function onCourtyard(page: Page, [x, y]: PlanPoint): Promise<{ x: number; y: number }> {
  const ground = await page.locator('path.boundary').boundingBox();
  if (!ground) throw new Error('The yard is not drawn.');
  return { x: ground.x + (ground.width * x) / 11, y: ground.y + ground.height * (1 - y / 8.5) };
}

test(
  'a pot dragged about is judged where it is, stays in the yard while it is tried in an option, and is moved ' +
    'only when it is',
  async () => {
    const { page, best, now, complaints, close } = await atPlaces('laptop');
    const before = await planOf(page);
    expect(await faultsOf(page)).toEqual([]);
    // Two places of one name are told apart by how far they are.
    await best.getByText('1. Beside the south wall', { exact: true }).waitFor();
    await best.getByText(/^2\. Beside the south wall, \d.* away$/).waitFor();

    // Off the leaves' edge, where the width is taken hold of; the well is at (7, 5), and no pot may stand on it.
    const from = await onCourtyard(page, [9.6, 6.2]);
    const well = await onCourtyard(page, [7, 4.8]);
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(well.x, well.y, { steps: 4 });
    await now.getByText(/^~ Tried there.*(Better|Worse|No better and no worse) there.*over the limit/).waitFor();
    await now.getByText('It may not stand there: no pot may stand on the well.').waitFor();
    await page.mouse.up();
    await now.getByText(/^Tried there, in option D\. (Better|Worse|No better and no worse) there/).waitFor();
    const tried = await planOf(page);
    expect(tried.features).toEqual(before.features);
    expect(tried.options?.at(-1)).toMatchObject({
      id: 'D',
      moves: { lemon: [expect.closeTo(7, 0), expect.closeTo(5, 0)] },
    });
    await now.getByRole('button', { name: 'Put it back' }).press('Enter');
    await now.getByText(/^Tried there/).waitFor({ state: 'detached' });

    // A tap on hatched ground says why it is hatched; every reason is listed with its ground.
    const tap = await onCourtyard(page, [1.9, 3]);
    await page.mouse.click(tap.x, tap.y);
    await page
      .getByRole('region', { name: 'Hatched ground' })
      .getByText('Not there: it would grow into the hydrangea.')
      .waitFor({ state: 'attached' });
    await page.mouse.click(well.x, well.y);
    await page
      .getByRole('region', { name: 'Hatched ground' })
      .getByText('Not there: no pot may stand on the well.')
      .waitFor({ state: 'attached' });
    await unfold(page, 'Hatched ground');
    await page.getByRole('listitem').filter({ hasText: 'No pot may stand on the well' }).waitFor({ state: 'attached' });

    await best.getByRole('button', { name: 'I have moved it' }).press('Enter');
    const undo = page.getByRole('button', { name: 'Undo: Move Lemon pot' });
    await undo.waitFor();
    const after = await planOf(page);
    expect(after.journal).toHaveLength((before.journal?.length ?? 0) + 1);
    expect(after.journal?.at(-1)).toMatchObject({ what: 'moved', feature: 'lemon' });
    expect(after.features.find(({ id }) => id === 'lemon')).not.toEqual(
      before.features.find(({ id }) => id === 'lemon'),
    );
    await undo.click();
    await expect.poll(async () => (await planOf(page)).features).toEqual(before.features);
    expect(complaints).toEqual([]);
    await close();
  },
);

test(
  'by keys and taps alone, on a phone: the best places are the engine’s, with staying among them, and the yard ' +
    'stays as it was',
  async () => {
    const { page, best, now, complaints, close } = await atPlaces('phone');
    const found = (await jsonOf('place demo --plant lemon')) as PlaceResult;
    const { spots } = found;
    await page.getByText(placeHeadline(demo, found, 'metric')).waitFor();
    expect(await best.getByRole('button', { name: /Stay/ }).count()).toBe(1);
    expect(await faultsOf(page)).toEqual([]);
    await best.getByRole('button', { name: 'Try it there' }).press('Enter');
    await page.getByRole('button', { name: 'Undo: Put Lemon pot elsewhere in option D' }).waitFor();
    // What comes of it is told above the places, and brought into sight.
    await expect
      .poll(() =>
        now.evaluate((told) => {
          const [{ top }, seen] = [told, told.closest('.slip-card')!].map((each) => each.getBoundingClientRect());
          return top >= seen.top && top < seen.bottom;
        }),
      )
      .toBe(true);
    const put = await planOf(page);
    expect(put.features).toEqual(demo.features);
    expect(put.options?.at(-1)).toMatchObject({ id: 'D', moves: { lemon: spots[0].at } });

    await best.getByRole('button', { name: 'Next ›' }).press('Enter');
    await best.getByText(`Sun: ${spots[1].light.sunHours.toFixed(0)} h a day`).waitFor({ state: 'attached' });
    await now.getByText('Type where').press('Enter');
    await now.getByLabel('Across, x').fill('3');
    await now.getByLabel('Across, x').press('Enter');
    await now.getByRole('button', { name: '10 cm up' }).press('Enter');
    await expect
      .poll(async () => (await planOf(page)).options?.at(-1)?.moves?.lemon)
      .toEqual([3, expect.closeTo(spots[0].at[1] + 0.1, 6)]);

    await unfold(page, 'Before carrying');
    await page.getByLabel('Can it be moved?').selectOption({ label: 'never' });
    await page.getByRole('alert').getByText('Lemon pot is marked as too heavy to move').waitFor({ state: 'attached' });

    // In a yard where two pots stand the wrong way round, they change places in an option.
    await page.getByRole('button', { name: /Yard and files/ }).press('Enter');
    await page.getByLabel('Open a file…').setInputFiles({
      name: 'wrong-way-round.plan.json',
      mimeType: 'application/json',
      buffer: Buffer.from(planText(WRONG_WAY_ROUND)),
    });
    await page.keyboard.press('Alt+3');
    await best.getByRole('button', { name: /Stay/ }).waitFor({ state: 'attached' });
    await unfold(page, 'What else');
    await best
      .getByRole('button', { name: /^Change them in/ })
      .first()
      .press('Enter');
    await expect
      .poll(async () => Object.keys((await planOf(page)).options?.at(-1)?.moves ?? {}).toSorted())
      .toEqual(['hydrangea', 'pot']);
    expect((await planOf(page)).features).toEqual(WRONG_WAY_ROUND.features);
    expect(complaints).toEqual([]);
    await close();
  },
);
