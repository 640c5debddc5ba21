import AxeBuilderSource from 'axe-core';
import ICAL from 'ical.js';
import { text } from 'node:stream/consumers';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { parsePlan } from '../../engine/index.ts';
import { SIZES, browserSession, openApp } from './harness.ts';

const session = browserSession();

async function toYear(page: Page): Promise<void> {
  await page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name: /Year|Through the year/ }).click();
  await page.getByRole('heading', { level: 1, name: 'Through the year' }).waitFor();
  await page.getByRole('region', { name: 'Diary' }).waitFor();
}

async function axeFindings(page: Page): Promise<string[]> {
  await page.evaluate(AxeBuilderSource.source);
  return page.evaluate(async () => {
    const { axe } = window as unknown as { axe: { run(options: object): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> } };
    const { violations } = await axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] });
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`);
  });
}

test('a pair of readings is entered, its difference told, and no correction claimed from it', async () => {
  const context = await session.context();
  const { page, complaints } = await openApp(context, session.site.address);
  await toYear(page);
  await page.getByRole('group', { name: 'Add to the diary' }).getByRole('button', { name: 'Pair of readings' }).click();
  const form = page.getByRole('form', { name: 'Pair of readings' });
  await form.getByText(/^Shade the spot you read/).waitFor();
  await form.getByLabel('Date').fill('2026-07-20');
  await form.getByLabel('Clock').fill('15:10');
  await form.getByLabel('Leaf in the open').fill('48');
  await form.getByLabel('Leaf under cloth').fill('42 °C');
  await form.getByLabel('Air in the shade').fill('41');
  await form.getByRole('button', { name: 'Save' }).click();
  const opinion = page.getByRole('region', { name: 'Did it work?' });
  await opinion.getByText(/the leaf under the cloth was 6 K cooler than the open one/).waitFor();
  await opinion.getByText(/leaf 48 °C in air of 41 °C;.*(inside|outside) our ± 4 K/).waitFor();
  await opinion.getByText('One pair claims nothing: no correction is offered.').waitFor();
  expect(await opinion.getByRole('button', { name: /^Correct/ }).count()).toBe(0);
  await opinion.getByRole('img', { name: '2 readings against the estimate and its band of ± 4 K' }).waitFor();

  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')]);
  const read = parsePlan(await text(await download.createReadStream()));
  if (!read.ok) throw new Error(read.problems[0]?.message);
  const readings = read.plan.features.filter(({ kind, ...feature }) => kind === 'reading' && 'when' in feature && feature.when === '2026-07-20T15:10');
  expect(readings).toMatchObject([{ leaf: 48, air: 41, covered: false }, { leaf: 42, air: 41, covered: true, pair: readings[0].id }]);
  await page.getByRole('button', { name: 'Undo: Note a pair of readings' }).click();
  await opinion.getByText(/leaf 48 °C/).waitFor({ state: 'detached' });
  expect(complaints).toEqual([]);
  await context.close();
});

test('damage, spray, rain, cloth and a word are each noted in at most four taps', async () => {
  const context = await session.context();
  const { page } = await openApp(context, session.site.address);
  await toYear(page);
  const adds = page.getByRole('group', { name: 'Add to the diary' });
  const diary = page.getByRole('region', { name: 'Diary' });
  const before = await diary.getByRole('listitem').count();
  for (const [name, line] of [['Damage', /Damage .*, 2 of 5 on the leaf/], ['Spray', /Spray/], ['Cloth up', /Cloth up/], ['Cloth down', /Cloth down/], ['Note', /Note/]] as const) {
    await adds.getByRole('button', { name, exact: true }).click();
    await diary.getByRole('form', { name }).getByRole('button', { name: 'Save' }).click();
    await diary.getByRole('listitem').filter({ hasText: line }).first().waitFor();
  }
  await adds.getByRole('button', { name: 'Rain', exact: true }).click();
  await diary.getByLabel('Rain, mm').fill('much');
  await diary.getByRole('button', { name: 'Save' }).click();
  await diary.getByRole('alert').getByText('"much" is not a rain between 0 and 500 mm.').waitFor();
  await diary.getByLabel('Rain, mm').fill('12,5');
  await diary.getByRole('button', { name: 'Save' }).click();
  await diary.getByText('Rain 12.5 mm').waitFor();
  expect(await diary.getByRole('listitem').count()).toBe(before + 6);
  await context.close();
});

test('the year has its dates, their cautions, and a calendar another program can read', async () => {
  const context = await session.context();
  const { page } = await openApp(context, session.site.address);
  await toYear(page);
  const dates = page.getByRole('region', { name: 'Dates of the year' });
  await dates.waitFor({ timeout: 30_000 });
  await dates.getByText(/^Heat: work before 11/).waitFor();
  await dates.getByText(/^Ladders:/).waitFor();
  const [download] = await Promise.all([page.waitForEvent('download'), dates.getByRole('button', { name: 'Save the calendar (.ics)' }).click()]);
  expect(download.suggestedFilename()).toBe('The-well-courtyard.ics');
  const calendar = new ICAL.Component(ICAL.parse(await text(await download.createReadStream())));
  const events = calendar.getAllSubcomponents('vevent');
  expect(events.length).toBe(await dates.locator('summary').count());
  expect(new Set(events.map((event) => event.getFirstPropertyValue('uid'))).size).toBe(events.length);
  await context.close();
});

test('the stage reads well to a machine and fits the window', async () => {
  for (const [name, viewport] of Object.entries({ laptop: SIZES.laptop, phone: SIZES.phone })) {
    const context = await session.context({ viewport, hasTouch: name === 'phone' });
    const { page, complaints } = await openApp(context, session.site.address);
    await toYear(page);
    await page.getByRole('region', { name: 'Dates of the year' }).waitFor({ timeout: 30_000 });
    await page.getByRole('group', { name: 'Add to the diary' }).getByRole('button', { name: 'Pair of readings' }).click();
    expect(await axeFindings(page), `on a ${name}`).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0);
    expect(complaints).toEqual([]);
    await context.close();
  }
});
