import { expect, test } from 'vitest';
import { demoPlan, hiddenHeightAt, sightLinesOf } from '../../engine/index.ts';
import { faultsOf } from './axe.ts';
import { planOf } from './drawing-hands.ts';
import { browserSession, graded, openApp } from './harness.ts';

const session = browserSession();

/** Runs in the page: which workers search, as long as nobody ends them. */
function noteSearches(): void {
  const searching = new Set<Worker>();
  Object.assign(window, { searching });
  const { postMessage, terminate } = Worker.prototype;
  Worker.prototype.postMessage = function (this: Worker, call: { readonly method?: string }) {
    if (call.method === 'site') searching.add(this);
    postMessage.call(this, call);
  };
  Worker.prototype.terminate = function (this: Worker) {
    searching.delete(this);
    terminate.call(this);
  };
}

/** Runs in the page. */
function countSearches(): number {
  return (window as unknown as { readonly searching: ReadonlySet<Worker> }).searching.size;
}

test(
  'the best roof hidden from the lane is found by keys alone, no higher than the lane lets it; a search is called ' +
    'off; and where nothing is harmed nothing is proposed',
  { timeout: 240_000 },
  async () => {
    const context = await session.context();
    const { page, complaints } = await openApp(context, session.site.address);
    const finding = page.getByRole('region', { name: 'Find the best' });
    const find = finding.getByRole('button', { name: 'Find it' });
    await page.getByRole('button', { name: /Yard and files/ }).press('Enter');
    await page.getByRole('button', { name: /^Demo: .*lane/i }).press('Enter');
    await graded(page);
    await page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name: /Try/ }).press('Enter');
    await page.getByRole('region', { name: 'What is tried' }).waitFor({ state: 'attached' });
    const before = await planOf(page);

    await page.getByRole('button', { name: 'Find the best cloth' }).press('Enter');
    await page.evaluate(noteSearches);
    await find.press('Enter');
    // It waits for the look over the yard that began with the form.
    await expect.poll(() => page.evaluate(countSearches), { timeout: 20_000 }).toBe(1);
    await finding.getByRole('button', { name: 'Cancel' }).press('Enter');
    await find.waitFor({ state: 'attached' });
    // Nothing goes on reckoning behind the person's back.
    expect(await page.evaluate(countSearches)).toBe(0);
    await page.getByText('The search was called off. Nothing has changed.').first().waitFor({ state: 'attached' });
    expect(await finding.getByRole('heading', { name: /^1\./ }).count()).toBe(0);
    expect(await planOf(page)).toEqual(before);

    await finding.locator('summary', { hasText: 'For every plant' }).press('Enter');
    const ticks = await finding.getByRole('checkbox').all();
    for (const tick of ticks) await tick.press('Space');
    await find.press('Enter');
    await finding.getByText('Nothing to shade: no plant is harmed.').waitFor({ state: 'attached', timeout: 60_000 });
    expect(await finding.getByRole('heading', { name: /^1\./ }).count()).toBe(0);

    await finding.getByRole('checkbox', { name: /apricot/i }).press('Space');
    await finding.getByLabel('What to put up').selectOption({ label: 'A roof' });
    await finding.getByLabel('Hidden from').selectOption({ label: 'hidden from: People on the lane' });
    await finding.getByLabel('Cloth').selectOption({ label: 'that stops 50 %' });
    // Ground and gust are said here, once, for every price; a limit that cannot be read is said so.
    await finding.getByLabel('What a rod pushed by hand meets').selectOption({ label: 'paving' });
    await finding.getByLabel('Strongest gust').fill('90 km/h');
    await finding.getByLabel('Strongest gust').press('Enter');
    await finding.getByLabel('Highest').fill('as high as it goes');
    await finding.getByLabel('Highest').press('Enter');
    await finding.getByText(/is no number above 0/).waitFor({ state: 'attached' });
    await finding.getByLabel('Highest').fill('');
    await finding.getByLabel('Highest').press('Enter');
    await find.press('Enter');
    // It goes on in every stage, and the row of stages shows it.
    const stages = page.getByRole('navigation', { name: 'Stages' });
    await stages.getByRole('button', { name: /Find the heat/ }).press('Enter');
    await stages.getByText(/^searching, \d+ %$/).waitFor({ state: 'attached' });
    await stages.getByRole('button', { name: /Try/ }).press('Enter');
    const first = finding.getByRole('listitem').filter({ has: page.getByRole('heading', { name: /^1\. Roof/ }) });
    await first.waitFor({ state: 'attached', timeout: 150_000 });
    await finding
      .getByText(/Hiding it from the people on the lane costs \d+ % of what cloth could do here/)
      .waitFor({ state: 'attached' });
    await first
      .getByText(/Seen from: Window upstairs.*nothing can be hidden there|hidden only up to/)
      .waitFor({ state: 'attached' });
    await first.getByText(/lane: does not see it\./).waitFor({ state: 'attached' });
    expect(await faultsOf(page)).toEqual([]);

    await first.getByRole('button', { name: 'Put 1 into a new option' }).press('Enter');
    await page.getByRole('button', { name: /^Undo: Put a roof \d.* into option D/ }).waitFor({ state: 'attached' });
    // Nobody puts it there twice.
    await first.getByText('It is in option D.').waitFor();
    expect(await first.getByRole('button', { name: /^Put 1 into/ }).count()).toBe(0);
    expect(await finding.getByRole('button', { name: 'Put 2 into a new option' }).count()).toBe(1);
    const after = await planOf(page);
    expect(after.features).toEqual(before.features);
    expect(after.site.soil).toBe('paving');
    expect(after.climate.gust).toBeCloseTo(25, 9);
    const [roof] = after.options?.at(-1)?.adds ?? [];
    if (roof?.kind !== 'canopy') throw new Error('No roof was put into the option.');
    expect(Math.max(roof.length, roof.width)).toBeLessThanOrEqual(3);
    // By hand: the sight line from 1.6 m over the lane, 3 m outside, grazes the 1.8 m fence and rises 0.2 m every 3 m.
    const lane = { ...demoPlan('lane'), features: demoPlan('lane').features.filter(({ id }) => id !== 'upstairs') };
    expect(hiddenHeightAt(sightLinesOf(lane), [4.5, 15]).height).toBeCloseTo(1.8 + (0.2 / 3) * 4.5, 1);
    expect(roof.height).toBeLessThanOrEqual(hiddenHeightAt(sightLinesOf(lane), roof.center).height + 1e-6);
    expect(complaints).toEqual([]);
    await context.close();
  },
);
