import { text } from 'node:stream/consumers';
import ICAL from 'ical.js';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { acceptOption, demoPlan, planText, startNextYear } from '../../engine/index.ts';
import { base, TWO_SUMMERS, withRoof } from '../engine/advice/review/two-summers.ts';
import type { Case } from '../engine/advice/review/two-summers.ts';
import { oneIn } from '../long.ts';
import { cautionsMissing, risksTold } from '../risky-words.ts';
import { faultsOf } from './axe.ts';
import { planOf } from './drawing-hands.ts';
import { SIZES, browserSession, openApp } from './harness.ts';

const session = browserSession();

/** Opens the stage; the dates are worked out when it is there. */
async function toYear(page: Page): Promise<void> {
  await page
    .getByRole('navigation', { name: 'Stages' })
    .getByRole('button', { name: /Year|Through the year/ })
    .click();
  await page.getByRole('region', { name: 'Dates of the year' }).waitFor();
}

async function turnTo(page: Page, name: string): Promise<Locator> {
  await page.getByRole('navigation', { name: 'Pages of the year' }).getByRole('button', { name, exact: true }).click();
  return page.getByRole('region', { name, exact: true });
}

describe('in one visit', () => {
  let page: Page;
  let complaints: string[];

  beforeAll(async () => {
    ({ page, complaints } = await openApp(await session.context(), session.site.address));
    await toYear(page);
  });

  afterAll(() => page.context().close());

  test('every page of the stage reads well to a machine and fits a laptop and a phone', async () => {
    expect(await faultsOf(page)).toEqual([]);
    for (const viewport of [SIZES.laptop, SIZES.phone]) {
      await page.setViewportSize(viewport);
      for (const name of ['Dates', 'Tomorrow', 'Diary', 'Did it work?', 'Next year']) {
        await turnTo(page, name);
        await page.getByRole('region', { name }).waitFor({ state: 'attached' });
        if (viewport === SIZES.laptop || name === 'Diary')
          expect(await faultsOf(page, '#slip'), `${name} on ${viewport.width}`).toEqual([]);
        expect(
          await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
        ).toBe(0);
      }
    }
    await page.setViewportSize(SIZES.laptop);
    expect(complaints).toEqual([]);
  });

  test('a pair of readings is entered, its difference told, and no correction claimed from it', async () => {
    const diary = await turnTo(page, 'Diary');
    await diary.getByRole('button', { name: 'Pair of readings' }).click();
    const form = page.getByRole('form', { name: 'Pair of readings' });
    await form.getByText(/shade the spot you read for a second or two/).waitFor();
    // Reading leaves is work in the hottest hours.
    expect(cautionsMissing((await form.textContent()) ?? '')).toEqual([]);
    expect(risksTold((await form.textContent()) ?? '')).toEqual(['go out in the heat to measure']);
    await form.getByLabel('Date').fill('2026-07-20');
    await form.getByLabel('Clock').fill('15:10');
    await form.getByLabel('Leaf in the open').fill('48');
    await form.getByRole('button', { name: 'Save' }).click();
    await form.getByRole('alert').getByText('A pair is two leaves, or two lights').waitFor();
    await form.getByLabel('Leaf under cloth').fill('42 °C');
    await form.getByLabel('Air in the shade').fill('41');
    await form.getByRole('button', { name: 'Save' }).click();

    const opinion = await turnTo(page, 'Did it work?');
    await opinion.getByText(/the leaf under the cloth was 6 °C cooler than the open one/).waitFor();
    await opinion
      .getByText(
        /^Orange tree, 20 July 2026, 15:10: leaf 48 °C in air of 41 °C;.* between the two: inside our ± 3 °C\.$/,
      )
      .waitFor();
    await opinion.getByText('One pair claims nothing: no correction is offered.').waitFor();
    expect(await opinion.getByRole('button', { name: /^Correct/ }).count()).toBe(0);
    // The demo yard has no cloth for the covered leaf to be held against: its open one alone is.
    await opinion.getByRole('img', { name: '1 reading against the estimate and its band of ± 3 °C' }).waitFor();
    expect(await faultsOf(page, '#slip'), 'the review').toEqual([]);

    const { features } = await planOf(page);
    const readings = features.filter(
      ({ kind, ...feature }) => kind === 'reading' && 'when' in feature && feature.when === '2026-07-20T15:10',
    );
    expect(readings).toMatchObject([
      { leaf: 48, air: 41, covered: false },
      { leaf: 42, air: 41, covered: true, pair: readings[0].id },
    ]);
    await page.getByRole('button', { name: 'Undo: Note a pair of readings' }).click();
    await opinion.getByText(/leaf 48 °C/).waitFor({ state: 'detached' });
    expect(complaints).toEqual([]);
  });

  test('damage, spray, rain, cloth and a word are each noted in at most four taps; the next year asks what grew', async () => {
    // The comparison that misses a summer leads to where it is noted, and one is back.
    const opinion = await turnTo(page, 'Did it work?');
    await opinion.getByRole('button', { name: /^Note 20\d\d$/ }).click();
    const missed = page.getByRole('form', { name: 'Damage' });
    expect(await missed.getByLabel('On', { exact: true }).locator('option:checked').textContent()).toBe('Lemon pot');
    expect(await missed.getByLabel('Date').inputValue()).toMatch(/-07-19$/);
    await missed.getByRole('button', { name: 'Save' }).click();
    await opinion
      .getByText(/^Lemon pot: too little to tell\./)
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'Undo: Note damage' }).click();

    const diary = await turnTo(page, 'Diary');
    const adds = diary.getByRole('group', { name: 'Add to the diary' });
    const before = await diary.getByRole('listitem').count();
    for (const [name, line] of [
      ['Damage', /Damage .*, 2 of 5 on the leaf/],
      ['Spray', /Spray/],
      ['Cloth up', /Cloth up/],
      ['Cloth down', /Cloth down/],
      ['Note', /Note/],
    ] as const) {
      await adds.getByRole('button', { name, exact: true }).click();
      if (name === 'Damage') expect(await faultsOf(page, '#slip'), 'the damage scale').toEqual([]);
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

    const next = await turnTo(page, 'Next year');
    await next.getByRole('button', { name: 'Start 2027' }).click();
    const tall = next.getByLabel('How tall is the orange tree now? Last year: 4.20 m.');
    await tall.fill('4.5');
    await tall.press('Enter');
    await page.getByRole('button', { name: 'Undo: Say what grew: Orange tree' }).waitFor();
    expect(await faultsOf(page, '#slip'), 'what grew').toEqual([]);
    const { season, past, features } = await planOf(page);
    expect([season.year, past?.map(({ year }) => year)]).toEqual([2027, [2026]]);
    expect(features.find(({ id }) => id === 'orange')).toMatchObject({ height: 4.5 });
    expect(past?.[0].plan.features.find(({ id }) => id === 'orange')).toMatchObject({ height: 4.2 });
    expect(complaints).toEqual([]);
  });
});

test(
  'the year has its dates, water, frost, cautions, a page for the wall, a calendar another program can read, ' +
    'and a list for tomorrow',
  async () => {
    const context = await session.context();
    const { page, complaints } = await openApp(context, session.site.address);
    await toYear(page);
    const dates = page.getByRole('region', { name: 'Dates of the year' });
    // Clay is dated only once somebody has chosen it.
    const coats = dates.locator('summary').filter({ hasText: 'Clay:' });
    expect(await coats.count()).toBe(0);
    expect(risksTold((await dates.textContent()) ?? '')).not.toContain('spray');
    await dates.getByText('Clay spray', { exact: true }).click();
    await dates.getByLabel('Plan coats of clay').check();
    await coats.first().waitFor({ state: 'attached' });
    const told = (await dates.textContent()) ?? '';
    expect(cautionsMissing(told)).toEqual([]);
    expect(risksTold(told)).toEqual(expect.arrayContaining(['spray', 'cover for frost']));
    await dates.getByText('Water a day', { exact: true }).click();
    await dates.getByRole('row').filter({ hasText: 'Lemon pot' }).getByText(/\sL$/).first().waitFor();
    await dates.getByText('Frost', { exact: true }).click();
    await dates
      .getByText(/^Put the cover on before sunset/)
      .last()
      .waitFor();

    await dates.getByText('Calendar, paper, sources', { exact: true }).click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      dates.getByRole('button', { name: 'Save the calendar (.ics)' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('The-well-courtyard.ics');
    const events = new ICAL.Component(ICAL.parse(await text(await download.createReadStream()))).getAllSubcomponents(
      'vevent',
    );
    expect(events.length).toBeGreaterThan(2);
    expect(new Set(events.map((event) => event.getFirstPropertyValue('uid'))).size).toBe(events.length);

    await page.evaluate(() => Object.assign(window, { print: () => {} }));
    for (const format of ['A4', 'Letter']) {
      await dates.getByRole('button', { name: 'Print the year on a page' }).click();
      expect((await page.pdf({ format })).toString('latin1').match(/\/Type\s*\/Page\b/g), format).toHaveLength(1);
    }

    // An option's cloth has its dates before it stands.
    const strip = page.getByRole('figure', { name: 'The year in bands' });
    expect(await strip.getByText('Cloth up').count()).toBe(0);
    await page.getByLabel('The year of').selectOption({ index: 1 });
    await strip.getByText(/^Cloth up: \d+ \w+ to \d+ \w+$/).waitFor({ state: 'attached' });
    await page.getByLabel('The year of').selectOption({ index: 0 });

    const tomorrow = await turnTo(page, 'Tomorrow');
    await tomorrow.getByLabel('Day', { exact: true }).fill('2099-07-20');
    await tomorrow.getByLabel('Highest, by day').fill('44');
    await tomorrow.getByText('Evening before').waitFor();
    await tomorrow.getByText(/^Carry the lemon pot into the shade, or hang cloth over it; leave it so until/).waitFor();
    await tomorrow.getByRole('row').filter({ hasText: 'Lemon pot' }).getByText('will burn').waitFor();
    const list = (await tomorrow.textContent()) ?? '';
    expect(cautionsMissing(list)).toEqual([]);
    expect(risksTold(list)).toContain('hang cloth');
    await page.reload();
    await toYear(page);
    await turnTo(page, 'Tomorrow');
    await tomorrow.getByText('Evening before').waitFor();
    await tomorrow.getByLabel('Highest, by day').fill('warm');
    await tomorrow.getByRole('alert').getByText('"warm" is no temperature such as 41.').waitFor();
    expect(complaints).toEqual([]);
    await context.close();
  },
);

test('two summers are held against each other: as they are typed, the answer follows, and the climate stays', async () => {
  const context = await session.context();
  const { page, complaints } = await openApp(context, session.site.address);
  // The roof came with the new year; all that is judged is typed here.
  const roofed = acceptOption(startNextYear({ ...demoPlan('courtyard'), journal: [] }), 'B');
  await page.getByRole('button', { name: /Yard and files/ }).click();
  await page
    .getByLabel('Open a file…')
    .setInputFiles({ name: 'b.plan.json', mimeType: 'application/json', buffer: Buffer.from(planText(roofed)) });
  await page
    .getByRole('navigation', { name: 'Stages' })
    .getByRole('button', { name: /Year|Through the year/ })
    .click();
  const score = async (on: string, damage: Readonly<Record<string, number>>) => {
    const diary = await turnTo(page, 'Diary');
    for (const [date, amount] of Object.entries(damage)) {
      await diary.getByRole('button', { name: 'Damage', exact: true }).click();
      const form = diary.getByRole('form', { name: 'Damage' });
      await form.getByLabel('Date').fill(date);
      await form.getByLabel('On', { exact: true }).selectOption({ label: on });
      await form.getByRole('radio', { name: new RegExp(`^${amount}`) }).check();
      await form.getByRole('button', { name: 'Save' }).click();
      await form.waitFor({ state: 'detached' });
    }
  };
  const july = async (year: number, high: string) => {
    const box = opinion.getByLabel(`July ${year}`);
    await box.fill(high);
    await box.press('Enter');
  };
  await score('Lemon pot', { '2026-07-20': 3, '2027-07-22': 1 });
  const opinion = await turnTo(page, 'Did it work?');
  await opinion.getByText('Lemon pot: too little to tell.').waitFor();
  const climate = (await planOf(page)).climate;
  const usual = climate.months.find(({ month }) => month === 7)!.high;
  await july(2026, `${usual}`);
  await july(2027, `${usual - 2.5}`);
  await opinion.getByText('Lemon pot: better, but the cooler summer may explain it.').waitFor();
  await july(2027, `${usual}`);
  await opinion.getByText('Lemon pot: better, and more so than the heat explains.').waitFor();
  expect(await faultsOf(page, '#slip'), 'two summers').toEqual([]);
  await score('Orange tree', { '2026-07-20': 2, '2027-07-22': 2 });
  await turnTo(page, 'Did it work?');
  await opinion.getByText('Lemon pot: better: the cover made the difference.').waitFor();
  const after = await planOf(page);
  expect(after.climate).toEqual(climate);
  expect(after.summers?.map(({ year }) => year)).toEqual([2026, 2027]);
  expect(complaints).toEqual([]);
  await context.close();
});

/** Types a case into the page that is open: last summer's and this one's scores, and how warm both Julys were. */
function typeSummers(page: Page, { scores, july }: Case): Promise<number> {
  const notes = ([0, 1] as const).flatMap((k) =>
    Object.entries(scores).map(([id, both]) => ({ id, date: ['2026-07-20', '2027-07-22'][k], amount: both[k] })),
  );
  const highs = (july ?? []).map((high, k) => ({ label: `July ${2026 + k}`, high: String(high) }));
  return page.evaluate(
    async ({ notes, highs }) => {
      const until = async <T>(find: () => T | null | undefined): Promise<T> => {
        for (let k = 0; k < 1000; k++) {
          const found = find();
          if (found) return found;
          await new Promise((resolve) => setTimeout(resolve, 4));
        }
        throw new Error(`never: ${find}`);
      };
      const press = (words: string) =>
        until(() =>
          [...document.querySelectorAll<HTMLElement>('#slip button')].find((one) => one.textContent === words),
        ).then((found) => found.click());
      const enter = (box: HTMLInputElement | HTMLSelectElement, value: string, event: string) => {
        box.value = value;
        box.dispatchEvent(new Event(event, { bubbles: true }));
      };
      const undo = () => document.querySelector('button[aria-label^="Undo"]')?.getAttribute('aria-label') ?? '';
      const done = async (box: HTMLElement, act: () => void, words: string) => {
        act();
        await until(() => (words === '' ? !box.isConnected : undo().includes(words)));
      };
      await press('Diary');
      for (const { id, date, amount } of notes) {
        await press('Damage');
        const form = await until(() => document.querySelector<HTMLFormElement>('form[aria-label="Damage"]'));
        enter(form.querySelector('input[type=date]')!, date, 'input');
        await until(() => form.querySelector<HTMLInputElement>('input[type=date]')!.value === date);
        enter(form.querySelector('select')!, id, 'change');
        form.querySelectorAll<HTMLInputElement>('input[type=radio]')[amount].click();
        await new Promise((resolve) => setTimeout(resolve, 8));
        await done(form, () => form.querySelector<HTMLElement>('button[type=submit]')!.click(), '');
      }
      await press('Did it work?');
      for (const { label, high } of highs) {
        const named = await until(() =>
          [...document.querySelectorAll('label')].find((one) => one.textContent === label && one.checkVisibility()),
        );
        const box = document.getElementById(named.htmlFor) as HTMLInputElement;
        box.focus();
        enter(box, high, 'input');
        await new Promise((resolve) => setTimeout(resolve, 8));
        await done(box, () => box.blur(), 'July');
      }
      return notes.length + highs.length;
    },
    { notes, highs },
  );
}

test('pairs of summers, each typed into the page, are told as a careful neighbour would', async () => {
  const context = await session.context();
  const { page, complaints } = await openApp(context, session.site.address);
  const files = page.getByRole('button', { name: /Yard and files/ });
  const undo = page.getByRole('button', { name: /^Undo/ });
  let standing: Case['change'] | null = null;
  const pairs = oneIn(4, TWO_SUMMERS).toSorted(([, , , a], [, , , b]) => Number(!!a.change) - Number(!!b.change));
  for (const [, , says, entered] of pairs) {
    const { change = withRoof, scores } = entered;
    if (change !== standing) {
      const yard = planText(change(startNextYear(base)));
      await files.click();
      await page
        .getByLabel('Open a file…')
        .setInputFiles({ name: 'two.plan.json', mimeType: 'application/json', buffer: Buffer.from(yard) });
      await page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name: 'Through the year' }).click();
      standing = change;
    }
    const edits = await typeSummers(page, entered);
    const [before, after] = scores.lemon;
    const told = page.getByText(new RegExp(`^Lemon: .*Damage ${before} of 5 in 2026, ${after} in 2027\\.`));
    await told.filter({ hasText: says }).waitFor();
    await undo.evaluate((button, times) => Array.from({ length: times }, () => (button as HTMLElement).click()), edits);
    await told.waitFor({ state: 'detached' });
  }
  expect(complaints).toEqual([]);
  await context.close();
});
