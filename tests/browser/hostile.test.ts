import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { demoPlan, planText } from '../../engine/index.ts';
import type { Feature, Plan } from '../../engine/index.ts';
import { reportHtml } from '../../engine/output/report/html.ts';
import { reportOf } from '../../engine/output/report/report-of.ts';
import { STAGE_NAMES } from '../../web/app/stage-names.ts';
import { STAGES } from '../../web/state/view.ts';
import { LONG } from '../long.ts';
import { browserSession, openUngraded } from './harness.ts';

const session = browserSession();

const MARKUP = [
  '<img src=x onerror="window.hurt=1">',
  '<script>window.hurt=2</script>',
  '"><svg onload=window.hurt=3>',
  "'><iframe srcdoc='<script>parent.hurt=4</script>'>",
  '<a href="javascript:window.hurt=5">x</a>',
  '&lt;b&gt;&amp;amp;',
  '</textarea></title><b>bold</b>',
  '{{7*7}} ${window.hurt=6}',
  '<style>*{display:none}</style>',
  ']]><!--',
];
const SCRIPTS = [
  '\u202Egnitnuoc\u202C',
  'שלום עולם',
  'حديقة',
  '🌵'.repeat(40),
  '👨‍👩‍👧‍👦🍋',
  'e\u0301'.repeat(300),
  'ﷺ'.repeat(30),
  '\u200B\u200B',
  'ＦＵＬＬ',
  '\u0000\u0007\u001B[31m',
  'x'.repeat(10_000),
  '井'.repeat(2000),
];

/** Names that nobody wishes a program: each kind, in the long run many times. */
const NAMES = Array.from(
  { length: LONG ? 200 : 70 },
  (_, index) =>
    (index % 2 === 0 ? MARKUP[(index / 2) % MARKUP.length] : SCRIPTS[((index - 1) / 2) % SCRIPTS.length]) +
    (index > 43 ? ` ${index}` : ''),
);

const potOf = (name: string, index: number): Feature => ({
  id: `pot-${index}`,
  kind: 'plant',
  name,
  at: [0.5 + (index % 20) * 0.5, 0.5 + Math.floor(index / 20) * 0.7],
  height: 0.5,
  spread: 0.3,
  container: true,
});

/** The courtyard with a pot for each name, and one for its own. */
function hostilePlan(): Plan {
  const plan = demoPlan('courtyard');
  return {
    ...plan,
    name: NAMES[0],
    features: [...plan.features, ...NAMES.map(potOf)],
    options: undefined,
    journal: [
      { date: '2025-07-20', what: 'note', text: NAMES[2] },
      { date: '2025-07-20', what: 'damage', feature: 'pot-0', amount: 3, side: 225, part: 'leaf', text: NAMES[4] },
    ],
  };
}

/** What a name would have left behind if it had been taken for markup. */
const harm = (page: Page): Promise<unknown> =>
  page.evaluate(() => ({
    hurt: (window as unknown as { hurt?: number }).hurt,
    elements: document.querySelectorAll(
      '#app img[src=x], #app script, #app iframe, #app style, #app a[href^=javascript], #app svg[onload], #app ' +
        'textarea + b',
    ).length,
    wider: document.documentElement.scrollWidth - document.documentElement.clientWidth,
  }));

test(
  'hostile names are text in every stage, on the shelf, in the answer why and in the report, and go out and in ' +
    'again as they were',
  async () => {
    const context = await session.context();
    const { page, complaints } = await openUngraded(context, session.site.address);
    await page.getByRole('button', { name: /Yard and files/ }).click();
    const plan = hostilePlan();
    await page
      .getByLabel('Open a file…')
      .setInputFiles({ name: '<b>x</b>.plan.json', mimeType: 'application/json', buffer: Buffer.from(planText(plan)) });
    await page.getByRole('banner').getByText(NAMES[0], { exact: true }).waitFor();
    expect(await harm(page)).toEqual({ hurt: undefined, elements: 0, wider: 0 });
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save a file' }).click();
    const chunks: Buffer[] = [];
    for await (const chunk of await (await download).createReadStream()) chunks.push(chunk as Buffer);
    expect(Buffer.concat(chunks).toString('utf8')).toBe(planText(plan));
    for (const [index, stage] of STAGES.entries()) {
      await page.keyboard.press(`Alt+${index + 1}`);
      await page.getByRole('heading', { level: 1, name: STAGE_NAMES[stage].full }).waitFor();
      // What a name could do, it does soon; that nothing happens cannot be waited for.
      await page.waitForTimeout(250);
      expect(await harm(page)).toEqual({ hurt: undefined, elements: 0, wider: 0 });
    }
    // Why one of them burnt: its name in the answer, the other names to choose from.
    await page.keyboard.press('Alt+1');
    await page
      .getByRole('region', { name: 'Everything on the plan' })
      .getByText(NAMES[0], { exact: true })
      .first()
      .click();
    await page.getByRole('button', { name: 'It burnt: why?' }).click();
    await page.getByRole('region', { name: 'Answer' }).getByRole('heading').waitFor();
    const burnt = page.getByLabel('The plant that burnt').locator('option');
    expect(await burnt.count()).toBeGreaterThan(NAMES.length);
    expect((await burnt.allTextContents()).join()).toContain(NAMES[0]);
    expect(await harm(page)).toEqual({ hurt: undefined, elements: 0, wider: 0 });
    expect(complaints).toEqual([]);

    // The report, opened as a page: every kind of name on a pot, one on a wall and one on a bed, and nothing that is
    // dear to reckon.
    const kinds = [...MARKUP, ...SCRIPTS];
    const walls: Feature[] = [
      {
        id: 'wall',
        kind: 'wall',
        name: MARKUP[0],
        path: [
          [0, 6],
          [4, 6],
        ],
        height: 2,
        thickness: 0.2,
      },
      {
        id: 'bed',
        kind: 'bed',
        name: MARKUP[2],
        plantHeight: 0.3,
        outline: [
          [0, 4],
          [2, 4],
          [2, 5],
          [0, 5],
        ],
      },
    ];
    const small = { ...plan, features: [...walls, ...kinds.map(potOf)] };
    const report = reportOf(small, { units: 'metric', cell: 1 });
    if (!report.ok) throw new Error(report.problems[0].message);
    await page.setContent(reportHtml(report.value));
    expect(
      await page.evaluate(() => [
        (window as unknown as { hurt?: number }).hurt,
        document.querySelectorAll('img, script, iframe, a, textarea, body style, [onload], [onerror]').length,
      ]),
    ).toEqual([undefined, 0]);
    const words = await page.evaluate(() => document.body.textContent ?? '');
    expect(MARKUP.filter((name) => !words.includes(name))).toEqual([]);
    await context.close();
  },
);
