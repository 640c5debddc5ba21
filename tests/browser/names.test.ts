import { expect, test } from 'vitest';
import { demoPlan, planText, shownName } from '../../engine/index.ts';
import type { Feature, PlanPoint } from '../../engine/index.ts';
import { browserSession, graded, openUngraded } from './harness.ts';

const session = browserSession();

const NASTY = [
  '<img src=x onerror="window.hurt=1">',
  '"><svg onload=window.hurt=2>',
  '<script>window.hurt=3</script>',
  '\u202Egnitnuoc\u202C',
  'x'.repeat(10_000),
  '🌵🍋👨‍👩‍👧‍👦',
  "Robert'); --",
  '{{7*7}}',
  '&lt;b&gt;',
  'حديقة',
];

const WIDE = 'W'.repeat(10_000);

/**
 * Two hundred names that nobody wishes a program, on things with a guess each, so that the field sheet names them all.
 */
const YARD = `${NASTY[0]}\u202E${'W'.repeat(100_000)}`;
const NAMES = Array.from({ length: 200 }, (_, index) => `${NASTY[index % NASTY.length]}${index}`);

test('two hundred hostile names are text on the field sheet, on screen and on paper, and among the heights', async () => {
  const context = await session.context();
  const { page, complaints } = await openUngraded(context, session.site.address);
  const plan = demoPlan('courtyard');
  // A pot of every kind of name; the others on onlookers, which cost no reckoning.
  const named = NAMES.map((name, index): Feature => {
    const at: PlanPoint = [0.5 + (index % 20) * 0.5, 0.5 + Math.floor(index / 20) * 0.7];
    const guessed = { id: `thing-${index}`, name, height: 0.5, how: { height: { by: 'guess' } } } as const;
    return index < NASTY.length
      ? { ...guessed, kind: 'plant', at, spread: 0.3, plant: 'lemon' }
      : { ...guessed, kind: 'eye', path: [at] };
  });
  await page.getByRole('button', { name: /Yard and files/ }).click();
  await page.getByLabel('Open a file…').setInputFiles({
    name: 'x.plan.json',
    mimeType: 'application/json',
    buffer: Buffer.from(
      planText({
        ...plan,
        name: YARD,
        features: [...plan.features.map((one) => ({ ...one, name: WIDE })), ...named],
        options: undefined,
        journal: undefined,
      }),
    ),
  });
  // What is said of it ends its mark of direction with its name, and leaves most of the map to be seen.
  await page
    .getByText(`${shownName(YARD)} is open. The yard before it is still on the shelf.`)
    .first()
    .waitFor();
  expect(await page.locator('.notices').evaluate((notices) => notices.clientHeight < innerHeight / 3)).toBe(true);
  await page.getByRole('banner').getByText(shownName(YARD), { exact: true }).waitFor();
  const harm = (): Promise<unknown> =>
    page.evaluate(() => ({
      hurt: (window as unknown as { hurt?: number }).hurt,
      elements: document.querySelectorAll('#app img[src=x], #app script, #app svg[onload]').length,
      wider: document.documentElement.scrollWidth - document.documentElement.clientWidth,
    }));
  for (const stage of ['Alt+2', 'Alt+4', 'Alt+1']) {
    await page.keyboard.press(stage);
    await graded(page);
    expect(await harm(), stage).toEqual({ hurt: undefined, elements: 0, wider: 0 });
  }
  await page.getByRole('button', { name: 'Field sheet to print' }).click();
  const written = page.locator('.sheet-answer label');
  await written.nth(NAMES.length - 1).waitFor({ state: 'attached' });
  const labels = (await written.allTextContents()).join('\n');
  const missing = NAMES.filter((name) => !labels.includes(shownName(name)));
  expect(missing).toEqual([]);
  await page.emulateMedia({ media: 'print' });
  expect(await harm()).toEqual({ hurt: undefined, elements: 0, wider: 0 });
  await page.emulateMedia({ media: 'screen' });
  expect(await harm()).toEqual({ hurt: undefined, elements: 0, wider: 0 });
  await page.getByRole('button', { name: /^Back to/ }).click();
  await page.getByRole('button', { name: 'How do I find this?' }).click();
  await page.getByRole('navigation', { name: 'What to find out' }).getByRole('button', { name: 'A height' }).click();
  await page.getByLabel('Height of', { exact: true }).selectOption('thing-0');
  expect(await harm()).toEqual({ hurt: undefined, elements: 0, wider: 0 });
  expect(complaints).toEqual([]);
  await context.close();
});
