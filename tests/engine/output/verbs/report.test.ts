import { describe, expect, it, test } from 'vitest';
import { reportHtml } from '../../../../engine/output/report/html.ts';
import { reportOf } from '../../../../engine/output/report/report-of.ts';
import type { ReportRequest } from '../../../../engine/output/report/types.ts';
import { report } from '../../../../engine/output/verbs/report.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Plan } from '../../../../engine/plan/types.ts';
import { jsonOf, runLine } from '../../../command-line.ts';
import { mustBeOk } from '../../../parts/outcome.ts';

/** A coarse map, so that the page is quick. */
function pageOf(plan: Plan, request: Partial<ReportRequest> = {}): string {
  const outcome = reportOf(plan, { units: 'metric', cell: 1, ...request });
  mustBeOk(outcome);
  return reportHtml(outcome.value);
}

test.each(report.examples.filter((line) => !line.includes('--json')))('%s gives one whole page', async (line) => {
  const { code, out, err } = await runLine(line);
  expect(err.replaceAll(/^.*%: .*$/gm, '').trim()).toBe('');
  expect(code).toBe(0);
  expect(out.startsWith('<!doctype html>')).toBe(true);
  expect(out.trimEnd().endsWith('</html>')).toBe(true);
  expect(out).not.toMatch(/undefined|NaN|Infinity|\[object/);
});

test('its JSON carries verdicts, dates and the page', async () => {
  const json = (await jsonOf('report demo --option A')) as {
    plants: { id: string }[];
    html: string;
    place: unknown;
  };
  expect(json.plants.map(({ id }) => id)).toContain('lemon');
  expect(json.place).toBeNull();
  expect(json.html).toContain('</html>');
});

describe('the page', () => {
  const courtyard = demoPlan('courtyard');
  /** Quicker: no option is held against it. */
  const bare = { ...courtyard, options: [] };
  const page = pageOf({ ...courtyard, climate: { ...courtyard.climate, from: 'rough' } });

  it('needs nothing else: no script, no address, and its own policy refuses both', () => {
    expect(page).not.toMatch(/<script|javascript:|<img|<link|<iframe|@import|url\((?!#)/i);
    expect(
      [...page.matchAll(/https?:\/\/[^"' <]+/g)]
        .map(([address]) => address)
        .filter((address) => address !== 'http://www.w3.org/2000/svg'),
    ).toEqual([]);
    expect(page).toContain("default-src 'none'");
  });

  it('warns of sprays where sprays are planned, and nowhere else', () => {
    expect(page).not.toContain('Sprays: the label is the law');
    expect(pageOf({ ...bare, clay: true })).toContain('Sprays: the label is the law');
  });

  it('opens and closes its elements in order', () => {
    const open: string[] = [];
    for (const [, slash, name, rest] of page.matchAll(/<(\/?)([a-z][a-zA-Z0-9]*)([^>]*)>/g)) {
      if (name === 'meta' || rest.endsWith('/')) continue;
      if (slash === '') open.push(name);
      else expect(open.pop()).toBe(name);
    }
    expect(open).toEqual([]);
  });

  it('hatches every grade that the yard has, denser where hotter, and every hatching stands in the key', () => {
    const apart = [...page.matchAll(/<pattern id="report-grade-(\d)" width="([\d.]+)"/g)].map(([, , width]) =>
      Number(width),
    );
    expect(apart).toHaveLength(5);
    expect(apart).toEqual(apart.toSorted((a, b) => b - a));
    for (const [k, word] of ['mild', 'warm', 'strong', 'harsh', 'scorching'].entries())
      expect(page).toContain(`>${k + 1} ${word}</text>`);
    const hatched = new Set(
      [...page.matchAll(/<path d="[^"]*" fill="url\(#report-grade-(\d)\)"/g)].map(([, grade]) => grade),
    );
    const numbered = new Set([...page.matchAll(/>(\d)<\/text>/g)].map(([, number]) => number));
    expect(hatched.size).toBeGreaterThan(1);
    expect(numbered).toEqual(hatched);
    for (const [, id] of page.matchAll(/url\(#([\w-]+)\)/g)) expect(page).toContain(`id="${id}"`);
  });

  it('says a verdict for each plant, worst first, and the same letter on the map', () => {
    expect(page.match(/<li>[A-Z]: /g)).toHaveLength(5);
    expect(page.indexOf('will burn')).toBeLessThan(page.indexOf('<svg'));
  });

  it('says so where the climate is rough, and only there', () => {
    expect(page).toContain('Rough climate');
    expect(pageOf({ ...bare, climate: { ...courtyard.climate, from: 'months' } })).not.toMatch(
      /rough climate|class="rough"/i,
    );
  });

  it('keeps the place to itself unless asked', () => {
    const { latitude, longitude } = courtyard.site;
    for (const number of [latitude, longitude]) expect(page).not.toContain(String(Math.abs(number)));
    expect(pageOf(bare, { withPlace: true })).toContain(`latitude ${latitude}°, longitude −${-longitude}°`);
  });

  it('keeps what a person typed as text', () => {
    const evil = '<img src=x onerror=alert(1)>&"\'</style><script>1</script>';
    const named: Plan = {
      ...courtyard,
      name: evil,
      climate: { ...courtyard.climate, source: evil },
      features: courtyard.features.map((feature) => ({ ...feature, name: evil })),
    };
    const hostile = pageOf(named);
    expect(hostile).not.toMatch(/<img|<script|<\/style>.*<\/style>/s);
    expect(hostile).toContain('&lt;img src=x onerror=alert(1)&gt;&amp;&quot;&#39;');
  });

  it('prints on A4 and Letter: its size is left to the printer, its margins are set', () => {
    expect(page).toMatch(/@page \{ margin: 15mm; \}/);
    expect(page).not.toMatch(/@page \{[^}]*size/);
    expect(page).toContain('@media print');
  });
});

test('a canopy that stands is cut through with the plant that the low sun reaches', async () => {
  const { out } = await runLine('report demo --option B --cell 1');
  expect(out).toMatch(/cut through<\/h2><figure class="cut"><svg/);
  expect((await runLine('report demo')).out).not.toContain('cut through');
});

test('it tells what was tried, the chosen one first and drawn, for the heatwave day and true to scale', async () => {
  const { out } = await runLine('report demo --option B --cell 1');
  expect(out).toContain('Chosen, and drawn here: B: A lower roof and a screen to the west.');
  const rows = [...out.matchAll(/<tr><td>(▶ )?([ABC]): /g)].map(([, chosen, id]) => [id, chosen !== undefined]);
  expect(rows).toEqual([
    ['B', true],
    ['A', false],
    ['C', false],
  ]);
  expect(out).toContain('the map is for the heatwave day, 21 July 2026');
  expect(out).toContain('2 m, 20.0 mm on paper: 1 : 100');
  expect((await runLine('report demo')).out).toContain('None of it is chosen yet');
});

test('the map of the season is named as such where it is asked for', () => {
  expect(pageOf({ ...demoPlan('courtyard'), options: [] }, { period: { kind: 'season' } })).toContain(
    'the map is for the whole season',
  );
});

test('what is true of every cloth is said once on the page', async () => {
  const { out } = await runLine('report demo --option B --cell 1');
  expect(out.split('Put it up earlier if leaves bleach')).toHaveLength(2);
});

test('a date that is none is refused in one line', async () => {
  expect(await runLine('report demo --made yesterday')).toMatchObject({
    code: 1,
    err: expect.stringContaining(
      'wants a day with its year, as 2026-04-20 or "20 April 2026"; got "yesterday"',
    ) as string,
  });
});
