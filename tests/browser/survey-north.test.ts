import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { demoPlan, planText } from '../../engine/index.ts';
import type { Plan } from '../../engine/index.ts';
import { faultsOf } from './axe.ts';
import { planOf } from './drawing-hands.ts';
import { KEYS, POINTER, TAPS, windowFor } from './hands.ts';
import { actionsOf, browserSession, graded, openApp } from './harness.ts';

const session = browserSession();

/** The courtyard of the demo, its north taken for a guess. */
async function openUnturned(page: Page): Promise<void> {
  const demo = demoPlan('courtyard');
  const plan: Plan = {
    ...demo,
    name: 'Unturned',
    site: { ...demo.site, upBearing: 0, how: { upBearing: { by: 'guess', pm: 20 } } },
  };
  await page.getByRole('button', { name: /Yard and files/ }).click();
  await page
    .getByLabel('Open a file…')
    .setInputFiles({ name: 'unturned.plan.json', mimeType: 'application/json', buffer: Buffer.from(planText(plan)) });
  await page
    .getByRole('button', { name: /Unturned/ })
    .first()
    .waitFor();
  await graded(page);
}

/** The shadow of a pole, at the corner of the demo, on 2 May. */
async function typeShadow(page: Page, clock: string, hand = POINTER): Promise<void> {
  await hand.press(page, page.getByRole('button', { name: /^Find north/ }));
  await hand.type(page, page.getByLabel("Pole's foot", { exact: true }), '3 2');
  await hand.type(page, page.getByLabel('Tip of its shadow', { exact: true }), '1.33 1.5');
  await hand.date(page, page.getByLabel('Date of the shadow'), '2026-05-02');
  await hand.time(page, page.getByLabel('Time by the clock'), clock);
}

test.each([
  ['keys', KEYS, 11],
  ['taps', TAPS, 6],
] as const)(
  "the next thing is north, and by %s a pole's shadow at 10:00 finds it at 20°",
  async (_name, hand, most) => {
    const context = await session.context(windowFor(hand));
    const { page, complaints } = await openApp(context, session.site.address);
    await openUnturned(page);
    const before = await actionsOf(page);
    // By the sun's position at 37.88° N, 4.78° W, 2 May 2026 10:00 (UTC+2): azimuth 93.3°; a shadow drawn by (−1.67,
    // −0.50) m lies 253.3° from the top.
    await typeShadow(page, '10:00', hand);
    const found = page.getByRole('region', { name: 'North found' });
    await found.getByText(/Sun at 93\.3°, 29\.8° high/).waitFor();
    await found.getByText(/The drawing's top bears (19\.9|20\.0)° ± 0\.[5-9]°/).waitFor();
    await found
      .getByText(/On 2 May at 14:\d\d the sun stands over .* of the drawing, in the south: does that fit\?/)
      .waitFor();
    expect(await faultsOf(page)).toEqual([]);
    await hand.press(page, found.getByRole('button', { name: /^Take north as (19\.9|20\.0)°/ }));
    await found.getByText(/\(kept\)/).waitFor();
    expect((await actionsOf(page)) - before).toBeLessThanOrEqual(most);
    const { site } = await planOf(page);
    expect(site.upBearing).toBeCloseTo(20, 0);
    expect(site.how?.upBearing?.by).toBe('shadow');
    expect(site.northFrom).toEqual([
      {
        by: 'shadow',
        line: [
          [3, 2],
          [1.33, 1.5],
        ],
        when: '2026-05-02T10:00',
      },
    ]);
    expect(complaints).toEqual([]);
    await context.close();
  },
);

test('at 14:20 the same shadow is refused with its reason and the hours that work', async () => {
  const context = await session.context();
  const { page } = await openApp(context, session.site.address);
  await openUnturned(page);
  await typeShadow(page, '14:20');
  await page.getByText('Before you go out in the heat').click();
  await page.getByText(/^Heat: work before 11 in the morning/).waitFor();
  const found = page.getByRole('region', { name: 'North found' });
  await found
    .getByText(
      /the sun stands \d\d° high and swings \d\.\d° a minute: no guide to north\. Try \d\d:\d\d to \d\d:\d\d or/,
    )
    .waitFor();
  expect(await found.getByRole('button', { name: /^Take north/ }).count()).toBe(0);
  // Who knows it types it, and it is a guess no more.
  await page.getByText('Now a guess.').waitFor();
  await page.getByLabel('The drawing’s top bears').fill('-20');
  await page.getByLabel('The drawing’s top bears').press('Enter');
  await expect.poll(() => page.getByLabel('The drawing’s top bears').inputValue()).toBe('340°');
  expect(await page.getByText('Now a guess.').count()).toBe(0);
  await context.close();
});

test('a compass that differs by over 5° is shown beside the shadow, and the person keeps one', async () => {
  const context = await session.context();
  const { page } = await openApp(context, session.site.address);
  await openUnturned(page);
  const before = await actionsOf(page);
  await typeShadow(page, '10:00');
  await page.getByRole('button', { name: /^Take north as (19\.9|20\.0)°/ }).click();
  expect((await actionsOf(page)) - before).toBeLessThanOrEqual(6);
  await page.getByRole('radio', { name: 'A compass' }).check();
  await page.getByLabel('One end of the line', { exact: true }).fill('0 0');
  await page.getByLabel('Other end of the line', { exact: true }).fill('0 8.5');
  await page.getByLabel(/^Compass reading/).fill('42');
  const found = page.getByRole('region', { name: 'North found' });
  await found.getByText(/Two ways to north differ by 2\d\.\d°/).waitFor();
  await found.getByRole('button', { name: /^Keep (19\.9|20\.0)°, by a pole/ }).click();
  await expect.poll(async () => (await planOf(page)).site.northFrom?.length).toBe(1);
  await context.close();
});
