import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import {
  demoPlan,
  hiddenHeights,
  hoursWords,
  loadOf,
  payoffMap,
  riseOf,
  shadowMarks,
  withOptions,
} from '../../engine/index.ts';
import type { Canopy, CompareResult, DoubtResult, ShadowMark } from '../../engine/index.ts';
import { jsonOf } from '../command-line.ts';
import { faultsOf } from './axe.ts';
import { planOf } from './drawing-hands.ts';
import { SIZES, browserSession, openApp, unfold } from './harness.ts';

const session = browserSession();
const demo = demoPlan('courtyard');

/** Three options are held against today with every doubt: on a busy machine that takes its time. */
const LONG_MS = 100_000;
vi.setConfig({ testTimeout: 2 * LONG_MS });

async function atTrying(size: keyof typeof SIZES): Promise<{ page: Page; complaints: string[] }> {
  const context = await session.context({
    viewport: SIZES[size],
    hasTouch: size === 'phone',
    isMobile: size === 'phone',
  });
  const opened = await openApp(context, session.site.address);
  await opened.page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name: /Try/ }).click();
  await opened.page.getByRole('region', { name: 'What is tried' }).waitFor({ state: 'attached' });
  return opened;
}

async function openOption(page: Page, name: RegExp): Promise<Locator> {
  await page.getByRole('group', { name: 'Show on the drawing' }).getByRole('button', { name }).press('Enter');
  return page.locator('.option-paper');
}

/** The first cloth of an option as the plan holds it. */
async function clothOf(page: Page, option: string): Promise<Canopy> {
  const cloth = (await planOf(page)).options?.find(({ id }) => id === option)?.adds?.[0];
  if (cloth?.kind !== 'canopy') throw new Error(`Option ${option} does not begin with a roof.`);
  return cloth;
}

async function middleOf(locator: Locator): Promise<{ x: number; y: number }> {
  // The drawing is made anew after each step: what is looked for may be gone for a moment.
  const box = await vi.waitUntil(() => locator.boundingBox(), { timeout: 20_000 });
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

async function metre(page: Page): Promise<number> {
  return ((await page.locator('path.boundary').boundingBox())?.width ?? 0) / 11;
}

describe('the courtyard’s options, in one visit', () => {
  let page: Page;
  let complaints: string[];

  beforeAll(async () => {
    ({ page, complaints } = await atTrying('laptop'));
  });

  afterAll(async () => {
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test('today, A, B and C stand side by side with cost, light and how sure, as the engine has them', async () => {
    const { choices } = (await jsonOf('compare demo')) as CompareResult;
    await unfold(page, 'Compare');
    const table = page.getByRole('region', { name: 'Compare' });
    const cells = async (option: string): Promise<string[]> =>
      table
        .getByRole('row')
        .filter({ has: page.getByRole('rowheader', { name: option, exact: true }) })
        .getByRole('cell')
        .allTextContents();
    for (const { options, effect, cost, clothArea, plants } of choices) {
      // In the courtyard every option is for the lemon pot.
      expect(effect.plants.map(({ id }) => id)).toEqual(['lemon']);
      const [option] = options;
      await expect
        .poll(async () => (await cells(option)).map((text) => text.replace(/ [●○]+$/, '')), { timeout: LONG_MS })
        .toEqual([
          `${Math.round(100 * effect.share)} % less`,
          `${Math.round(cost.total ?? NaN)} ${cost.currency}`,
          clothArea === 0 ? 'none' : hoursWords(cost.hours),
        ]);
      const lemon = plants.find(({ id }) => id === 'lemon');
      const more = table.locator('tbody').filter({ has: page.getByRole('rowheader', { name: option, exact: true }) });
      await more
        .getByText(`Lemon pot: ${lemon?.before?.verdict} → ${lemon?.after?.verdict}.`)
        .waitFor({ state: 'attached' });
    }
    await unfold(page, 'For the curious');
    const measure = page.getByRole('list', { name: 'The measure behind the shares' });
    for (const { options, spared, sparedPm } of choices)
      await measure.getByText(`${options[0]}: spares ${spared.toFixed(1)} ± ${sparedPm.toFixed(1)} K·h`).waitFor();
    expect(await faultsOf(page)).toEqual([]);
  });

  test('under the roof of option A the low sun comes to the lemon from 16:38, and a drop is offered that stops it', async () => {
    await openOption(page, /^A/);
    const cut = page.getByRole('region', { name: 'Cut through the roof' });
    await cut
      .getByText(/from 16:3\d on the sun comes in under the roof over the lemon to its west side/)
      .waitFor({ state: 'attached' });
    await cut.getByRole('button', { name: /^Hang this drop/ }).press('Enter');
    await page.getByRole('button', { name: 'Undo: Hang drops from Roof over the lemon' }).click();
    expect((await clothOf(page, 'A')).drops).toBeUndefined();
  });

  test('a roof so wide that a post stands in the path to the door is told so, and the post is drawn hollow', async () => {
    const numbers = page.getByRole('button', { name: 'Roof over the lemon: its numbers' });
    await numbers.press('Enter');
    const barred = page.locator('path.post-barred');
    expect(await barred.count()).toBe(0);
    const width = page.getByRole('textbox', { name: 'Width', exact: true });
    await width.fill('3.4');
    await width.press('Enter');
    await page.getByText('a post would stand in Path to the door').waitFor({ state: 'attached' });
    // One in the path, two in the neighbour's house.
    expect(await barred.count()).toBe(3);
    await page.getByRole('button', { name: /^Undo: Change Roof over the lemon/ }).click();
    await vi.waitUntil(async () => (await barred.count()) === 0);
  });

  test('a roof lowered to less than the lemon is tall is told so, until it is raised again', async () => {
    const numbers = page.getByRole('button', { name: 'Roof over the lemon: its numbers' });
    const height = page.getByRole('textbox', { name: 'Height of the back edge', exact: true });
    await height.fill('1.6');
    await height.press('Enter');
    const told = page.getByText('Roof over the lemon hangs lower than Lemon pot is tall');
    await told.waitFor({ state: 'attached' });
    await page.getByRole('button', { name: /^Undo: Change Roof over the lemon/ }).click();
    await told.waitFor({ state: 'detached' });
    await numbers.press('Enter');
  });

  test('option A is shown wrong and B better: B spares the lemon more', async () => {
    const harmIn = async (option: RegExp): Promise<number> => {
      const words = (await openOption(page, option)).getByText(/^Heat damage: /);
      await words.waitFor({ state: 'attached', timeout: LONG_MS });
      return 100 - Number(/Lemon pot (\d+) % less/i.exec((await words.textContent()) ?? '')?.[1]);
    };
    const underA = await harmIn(/^A/);
    expect(await harmIn(/^B/)).toBeLessThan(underA);
  });

  test('before and after are split by a bar that is dragged, moved by keys, slid and typed', async () => {
    await page.getByRole('group', { name: 'The drawing shows' }).getByRole('button', { name: 'Split' }).press('Enter');
    const bar = page
      .getByRole('main', { name: 'The drawing' })
      .getByRole('slider', { name: 'Bar between before and after' });
    const at = (): Promise<number> => bar.getAttribute('aria-valuenow').then(Number);
    expect(await at()).toBe(5.5);
    await bar.press('ArrowRight');
    await expect.poll(at).toBe(5.75);
    const typed = page.getByLabel('The bar stands at, across');
    await typed.fill('3 m');
    await typed.press('Enter');
    await expect.poll(at).toBe(3);
    const knob = await middleOf(bar);
    await page.mouse.move(knob.x, knob.y);
    await page.mouse.down();
    await page.mouse.move(knob.x + 2 * (await metre(page)), knob.y, { steps: 3 });
    await page.mouse.up();
    await expect.poll(at).toBeCloseTo(5, 0);
  });

  test('what option B changes is drawn in two textures, and the ground that changes is the engine’s', async () => {
    const shows = page.getByRole('group', { name: 'The drawing shows' });
    await shows.getByRole('button', { name: 'Difference' }).press('Enter');
    const tried = withOptions(demo, ['B']);
    if (!tried.ok) throw new Error(tried.problems[0].message);
    const [before, after] = [demo, tried.plan].map((plan) => {
      const load = loadOf(plan, { period: { kind: 'heatwave' }, cell: 0.1, height: 0.5 });
      if (!load.ok) throw new Error(load.problems[0].message);
      return load.value.cells.hotLoad;
    });
    // By the key's own words: from 3 % of the map's scale of 36 MJ/m² on it is a change.
    const ground = (way: 1 | -1): string => {
      const changed = before.filter((was, k) => was !== null && way * ((after[k] ?? NaN) - was) >= 0.03 * 36);
      return `${(changed.length / 100).toFixed(1)} m²`;
    };
    await page.getByText(`Lines: less hot sun, ${ground(-1)} of ground.`).waitFor({ state: 'attached' });
    await page.getByText(`Dots: more, ${ground(1)}.`).waitFor({ state: 'attached' });
    await shows.getByRole('button', { name: 'Where it pays' }).press('Enter');
    const pays = payoffMap(demo, await clothOf(page, 'B'));
    if (!pays.ok) throw new Error(pays.problems[0]?.message);
    await page.getByText(`at most ${pays.value.most.toFixed(1)} K·h a m² a hot day`).waitFor({ state: 'attached' });
    await shows.getByRole('button', { name: 'After' }).press('Enter');
  });

  test(
    'while a roof is dragged its effect is told in rough numbers; each of its grips does its own; each is one ' +
      'step of undo',
    async () => {
      await page.getByRole('button', { name: 'Lower roof over the lemon: its numbers' }).press('Enter');
      const paper = page.getByRole('region', { name: 'Option B' });
      const before = await clothOf(page, 'B');
      const drag = async (
        from: { x: number; y: number },
        [right, up]: readonly [number, number],
        meanwhile?: () => Promise<void>,
      ): Promise<Canopy> => {
        const pixels = await metre(page);
        await page.mouse.move(from.x, from.y);
        await page.mouse.down();
        await page.mouse.move(from.x + right * pixels, from.y - up * pixels, { steps: 3 });
        await meanwhile?.();
        await page.mouse.up();
        const after = await clothOf(page, 'B');
        await page.getByRole('button', { name: /^Undo: .*Lower roof over the lemon/ }).click();
        return after;
      };
      const grip = (part: string): Promise<{ x: number; y: number }> =>
        middleOf(page.locator(`path.grip.${part}`).first());
      // Off the grips at its edges and its middle.
      const corner = await grip('roof-corner');
      const body = { x: corner.x + 0.7 * (await metre(page)), y: corner.y + 0.7 * (await metre(page)) };
      const moved = await drag(body, [-0.5, -0.5], () =>
        paper.getByText(/^~ \d+ % less heat damage to .*lemon pot/).waitFor({ timeout: LONG_MS }),
      );
      expect(moved.center).not.toEqual(before.center);
      expect((await drag(await grip('height'), [0, 0.4])).height).toBeCloseTo(before.height + 0.4, 1);
      expect((await drag(await grip('rise'), [0, -0.3])).rise).toBeCloseTo(riseOf(before) - 0.3, 1);
      expect((await drag(await grip('turn'), [1.5, -1.5])).turn).not.toBe(before.turn);
      expect((await drag(await grip('roof-corner'), [-0.5, 0.5])).width).toBeGreaterThan(before.width);
      expect(
        (await drag(await middleOf(page.locator('path.grip.drop').nth(2)), [0, -0.8])).drops?.at(-1)?.depth,
      ).toBeCloseTo(0.8, 1);
      await paper.getByText(/^~ \d+ % less heat damage/).waitFor({ state: 'detached', timeout: LONG_MS });
      expect(await clothOf(page, 'B')).toEqual(before);
    },
  );

  test(
    'by keys alone a roof is put into a new option, raised, tilted, turned, resized, hung with a drop and ' +
      'moved, and taken into the yard; undo gives all of it back',
    async () => {
      await page
        .getByRole('group', { name: 'Show on the drawing' })
        .getByRole('button', { name: 'Today' })
        .press('Enter');
      const before = await planOf(page);
      await page
        .getByRole('region', { name: 'What is tried' })
        .getByRole('button', { name: 'A roof', exact: true })
        .press('Enter');
      const paper = page.getByRole('region', { name: 'Option D' });
      for (const [label, text] of [
        ['Height of the back edge', '2.75'],
        ['Front edge higher by', '0.2'],
        ['Turned clockwise', '15'],
        ['Length', '3'],
        ['Across, x', '8'],
      ] as const) {
        await paper.getByRole('textbox', { name: label, exact: true }).fill(text);
        await paper.getByRole('textbox', { name: label, exact: true }).press('Enter');
      }
      await paper.getByRole('checkbox', { name: 'left', exact: true }).press('Space');
      await expect
        .poll(() => clothOf(page, 'D'))
        .toMatchObject({
          height: 2.75,
          rise: 0.2,
          turn: 15,
          length: 3,
          center: [8, expect.anything()],
          drops: [{ side: 'left' }],
        });
      expect((await planOf(page)).features).toEqual(before.features);
      expect(await faultsOf(page)).toEqual([]);
      await paper.getByRole('button', { name: 'Take it into the yard' }).press('Enter');
      await page.getByRole('button', { name: 'Undo: Take option D into the yard' }).waitFor();
      const after = await planOf(page);
      expect([after.features.length, after.options?.length]).toEqual([before.features.length + 1, 3]);
      const undo = page.getByRole('button', { name: /^Undo:/ });
      while ((await undo.count()) > 0) await undo.click();
      await expect.poll(() => planOf(page)).toEqual(before);
    },
  );

  test('how much of the ground hides nothing from an onlooker is said, and what of a roof shows', async () => {
    await openOption(page, /^A/);
    await unfold(page, 'What stays hidden');
    await page.getByLabel('Draw how tall a thing may stand unseen').check();
    const hidden = page.getByRole('region', { name: 'What stays hidden' });
    const { bare } = hiddenHeights(demoPlan('courtyard'), 'terrace');
    await hidden
      .getByText(`On ${Math.round(100 * bare)} % of the ground a thing cannot be hidden.`)
      .waitFor({ timeout: LONG_MS });
    await hidden.getByText(/^Roof over the lemon: (not )?seen\. Its corner/).waitFor({ state: 'attached' });
  });

  test('what hangs on the guesses is said, and what to measure first, as the engine has it', async () => {
    await unfold(page, 'For the curious');
    await page
      .getByRole('region', { name: 'Panel' })
      .getByRole('button', { name: 'What hangs on the guesses?' })
      .press('Enter');
    const { sentence, inputs, measureNext } = (await jsonOf('doubt demo')) as DoubtResult;
    const sure = page.getByRole('region', { name: 'Panel' });
    await sure.getByText(sentence).waitFor({ state: 'attached', timeout: LONG_MS });
    const bars = sure.getByRole('listitem').filter({ hasText: '±' });
    expect(await bars.first().textContent()).toContain(`${inputs[0].name}, ± ${inputs[0].pmText}`);
    const first = inputs.find(({ key }) => key === measureNext);
    expect(await sure.getByText('Measure this first.').count()).toBe(first ? 1 : 0);
    if (first)
      await bars
        .filter({ hasText: 'Measure this first.' })
        .filter({ hasText: first.name })
        .waitFor({ state: 'attached' });
    expect(await faultsOf(page)).toEqual([]);
  });

  test('a shadow’s edge marked where it really lay says which number explains it, and one step corrects that number', async () => {
    await page.getByRole('button', { name: 'Mark where a shadow’s edge really lies' }).press('Enter');
    await page.getByLabel('Shadow of').selectOption({ label: 'West wall' });
    await page.getByLabel('Date of the shadow').fill('2026-07-02');
    await page.getByLabel('Time by the clock').fill('19:30');
    await page.getByRole('button', { name: 'Mark its edge on the drawing' }).press('Enter');
    await page.getByLabel('Type it').fill('4.5 4');
    await page.getByLabel('Type it').press('Enter');
    const mark: ShadowMark = { feature: 'west-wall', at: [4.5, 4], when: '2026-07-02T19:30' };
    const found = shadowMarks(demo, [mark]);
    if (!found.ok) throw new Error(found.problems[0]?.message);
    const [{ sentence, cures }] = found.value.marks;
    const marks = page.getByRole('region', { name: 'Marks' });
    await marks.getByText(sentence).waitFor({ state: 'attached' });
    expect(await faultsOf(page)).toEqual([]);
    await marks
      .getByRole('button', { name: `orrect: ${cures[0].words}` })
      .first()
      .press('Enter');
    await marks.getByText(/The plan has this edge right/).waitFor({ state: 'attached' });
    const corrected = await planOf(page);
    if (cures[0].what === 'north') expect(corrected.site.upBearing).toBeCloseTo(cures[0].to, 1);
    else
      expect(corrected.features.find(({ id }) => id === 'west-wall')).toMatchObject({
        height: expect.closeTo(cures[0].to, 2),
        how: { height: { by: 'shadow' } },
      });
    await page.getByRole('button', { name: /^Undo: Correct by a shadow/ }).click();
    expect((await planOf(page)).features).toEqual(demo.features);
  });
});

test(
  'on a phone options are pages turned by a stroke or a button, and every grip of a roof goes elsewhere by ' +
    'taps, without one drag',
  async () => {
    const { page, complaints } = await atTrying('phone');
    await openOption(page, /^A/);
    await page
      .getByRole('navigation', { name: 'Options, a page each' })
      .getByRole('button', { name: 'Option B ›' })
      .tap();
    const paper = page.locator('.option-paper');
    await paper.getByText('2 of 3').waitFor();
    await paper.evaluate((sheet) => {
      const touch = (clientX: number): Touch => new Touch({ identifier: 1, target: sheet, clientX, clientY: 700 });
      sheet.dispatchEvent(
        new TouchEvent('touchstart', { touches: [touch(120)], changedTouches: [touch(120)], bubbles: true }),
      );
      sheet.dispatchEvent(new TouchEvent('touchend', { changedTouches: [touch(260)], bubbles: true }));
    });
    await paper.getByText('1 of 3').waitFor();
    await page.getByRole('button', { name: 'Roof over the lemon: its numbers' }).press('Enter');
    expect(await faultsOf(page)).toEqual([]);
    const before = await clothOf(page, 'A');

    /** A grip is tapped, nudged by tens of centimetres, and put down. */
    const take = async (grip: Locator, way: 'up' | 'down' | 'left' | 'right'): Promise<Canopy> => {
      const { x, y } = await middleOf(grip);
      await page.touchscreen.tap(x, y);
      const bar = page.getByRole('region', { name: 'Drawing', exact: true });
      for (let step = 0; step < 3; step++) await bar.getByRole('button', { name: `10 cm ${way}` }).tap();
      await bar.getByRole('button', { name: 'Here' }).tap();
      const after = await clothOf(page, 'A');
      await page.getByRole('button', { name: /^Undo: .*Roof over the lemon/ }).tap();
      // A note lies over this button for a while.
      await page.getByRole('button', { name: 'Whole yard' }).press('Enter');
      return after;
    };
    const grip = (part: string, which = 0): Locator => page.locator(`path.grip.${part}`).nth(which);
    expect((await take(grip('height'), 'up')).height).toBeCloseTo(before.height + 0.3, 2);
    expect((await take(grip('rise'), 'up')).rise).toBeCloseTo(0.3, 2);
    expect((await take(grip('drop', 3), 'left')).drops).toEqual([{ side: 'left', depth: 0.3, density: 0.5 }]);
    expect((await take(grip('turn'), 'left')).turn).not.toBe(before.turn);
    expect((await take(grip('roof-corner'), 'left')).width).toBeCloseTo(before.width + 0.3, 2);
    expect(complaints).toEqual([]);
    await page.context().close();
  },
);
