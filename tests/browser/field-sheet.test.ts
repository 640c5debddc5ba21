import { expect, test } from 'vitest';
import { faultsOf } from './axe.ts';
import { planOf } from './drawing-hands.ts';
import { SIZES, browserSession, graded, openApp } from './harness.ts';

const session = browserSession();

test(
  'the paper has a numbered blank for every guess, and the form of the same numbers takes what was written, ' +
    'also after a reload',
  async () => {
    const context = await session.context({ viewport: SIZES.phone });
    const { page, complaints } = await openApp(context, session.site.address);
    const before = await planOf(page);
    await page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name: /Draw/ }).click();
    await page.getByRole('button', { name: 'Field sheet to print' }).click();
    const house = page.getByLabel(/^\d+\. House, two floors: height/);
    await house.fill('5.9');
    await page.reload();
    await graded(page);
    await page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name: /Draw/ }).click();
    await page.getByRole('button', { name: 'Field sheet to print' }).click();
    await expect.poll(() => house.inputValue()).toBe('5.9');
    const east = page.getByLabel(/^\d+\. Neighbour to the east, white wall: height/);
    await east.fill('tall');
    expect(await faultsOf(page)).toEqual([]);

    const numbers = await page
      .getByLabel(/^\d+\. /)
      .evaluateAll((boxes: HTMLInputElement[]) => boxes.map((box) => box.labels?.[0]?.textContent ?? ''));
    await page.emulateMedia({ media: 'print' });
    const paper = page.getByRole('table', { name: 'What is guessed or missing' });
    expect(await paper.getByRole('row').count()).toBe(numbers.length + 1);
    for (const words of numbers)
      await paper
        .getByRole('row', {
          name: new RegExp(`^${words.replace(/^(\d+)\. /, '$1 ').replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&')}`),
        })
        .waitFor();
    await page.getByRole('img', { name: /^The yard on a grid of 1 m/ }).waitFor();
    // At 1 : 100 a square of 1 m is 10 mm, as the browser lays it on paper at 96 dots to the inch; house and neighbour
    // reach out of the picture, their numbers do not.
    await page.locator('.sheet-drawing').getByText('5 m, a square 1 m, 1 : 100').waitFor();
    const apart = await page
      .locator('.sheet-drawing .sheet-grid')
      .evaluateAll(([a, b]) => ((b.getBoundingClientRect().x - a.getBoundingClientRect().x) / 96) * 25.4);
    expect(apart).toBeCloseTo(10, 1);
    const outside = await page.locator('.sheet-drawing').evaluate((drawing) => {
      const paper = drawing.getBoundingClientRect();
      const marks = [...drawing.querySelectorAll('.sheet-mark')].map((mark) => mark.getBoundingClientRect());
      return marks.filter(({ left, right, top }) => left < paper.left || right > paper.right || top < paper.top).length;
    });
    expect(outside).toBe(0);
    for (const format of ['A4', 'Letter'])
      expect((await page.pdf({ format })).toString('latin1').match(/\/Type\s*\/Page\b/g)?.length).toBeLessThan(5);
    await page
      .locator('.field-sheet')
      .getByText(/^Heat: work before 11 in the morning/)
      .waitFor();
    // Today's shadows and tomorrow's, every half hour.
    expect(await page.locator('.sheet-days table').count()).toBe(2);
    expect(await page.getByRole('img', { name: /^Shadows of a 1 m stick, / }).count()).toBe(2);
    expect(await page.getByRole('banner').isVisible()).toBe(false);
    // It begins at the head of the paper.
    expect((await page.getByRole('heading', { name: /^Field sheet:/ }).boundingBox())?.y).toBeLessThan(100);
    await page.emulateMedia({ media: 'screen' });

    await page.getByRole('button', { name: 'Take these answers' }).click();
    await page
      .getByRole('alert')
      .getByText(/"tall" is no length/)
      .waitFor();
    const house5 = (await planOf(page)).features.find(({ id }) => id === 'house');
    expect(house5).toMatchObject({ height: 5.9 });
    expect(house5?.how?.height).toBeUndefined();
    expect(before.features.find(({ id }) => id === 'house')?.how?.height?.by).toBe('guess');
    // A shadow of 8.2 m at 10:00 on 2 May, the sun 29.8° high: 8.2 · tan 29.8° = 4.70 m.
    await page.getByLabel('Day you were out').fill('2026-05-02');
    await east.fill('shadow 8.2 at 10:00');
    await page.getByRole('button', { name: 'Take these answers' }).click();
    await expect
      .poll(async () => (await planOf(page)).features.find(({ id }) => id === 'east-house'))
      .toMatchObject({ height: expect.closeTo(4.7, 1), how: { height: { by: 'shadow' } } });
    expect(complaints).toEqual([]);
    await context.close();
  },
);
