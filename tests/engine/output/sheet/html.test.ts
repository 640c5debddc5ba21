import { describe, expect, test } from 'vitest';
import { SHEET_STYLE, sheetHtml } from '../../../../engine/output/sheet/html.ts';
import { sheetText } from '../../../../engine/output/sheet/text.ts';
import { built, roof, screen } from '../../frame/yard.ts';

const nasty = { ...roof, name: '<img src=x onerror="alert(1)"> & Söhne’s "roof"' };

describe('the build sheet on paper', () => {
  test('people’s text is never markup', () => {
    const html = sheetHtml(built(nasty), 'metric');
    expect(html).not.toContain('<img');
    expect(html).not.toContain('"alert');
    expect(html).toContain('&lt;img src=x onerror=&quot;alert(1)&quot;&gt; &amp; Söhne’s &quot;roof&quot;');
  });

  test('every tag that opens closes', () => {
    for (const thing of [
      nasty,
      screen,
      { ...roof, rise: 0.3, drops: [{ side: 'front', depth: 0.8, density: 0.5 }] as const },
    ]) {
      const open: string[] = [];
      for (const [, slash, name, own] of sheetHtml(built(thing), 'imperial').matchAll(
        /<(\/?)([a-z][a-z0-9]*)[^>]*?(\/?)>/g,
      )) {
        if (own === '/') continue;
        if (slash === '') open.push(name);
        else expect(open.pop()).toBe(name);
      }
      expect(open).toEqual([]);
    }
  });

  test('the sections are those of the text, in the same order', () => {
    const sheet = built(roof);
    const titles = [...sheetHtml(sheet, 'metric').matchAll(/<h2>(.*?)<\/h2>/g)].map(([, title]) => title);
    const lines = sheetText(sheet, 'metric', 100).split('\n');
    expect(titles).toEqual(lines.filter((_, i) => /^(=+|-+)$/.test(lines[i + 1] ?? '')));
    expect(titles).toContain('Cautions');
  });

  test('each cut piece is drawn once for each way of cutting, to scale', () => {
    const sheet = built({ ...roof, turn: 0, length: 2.5, width: 2.5 });
    const bars = /aria-label="Cut list[^>]*>(.*?)<\/svg>/s.exec(sheetHtml(sheet, 'metric'))?.[1] ?? '';
    const widths = [...bars.matchAll(/width="([\d.]+)" height="18" fill="none" stroke="black"\/>/g)].map(([, width]) =>
      Number(width),
    );
    const patterns = [...new Set(sheet.cuts.map((cut) => cut.pieces.join(' ')))];
    expect(widths.map((width) => width.toFixed(0))).toEqual(
      patterns.flatMap((pattern) => pattern.split(' ').map((piece) => ((Number(piece) * 420) / 6).toFixed(0))),
    );
  });

  test('the bar to measure is ten centimetres, the other four inches', () => {
    const html = sheetHtml(built(roof), 'metric');
    const [, width, box] =
      /aria-label="Measure me" width="(\d+)mm" height="\d+mm" viewBox="-1 -1 (\d+)/.exec(html) ?? [];
    expect(width).toBe(box);
    expect(html).toContain('h100"');
    expect(html).toContain('h101.6"');
  });

  test('the drawing from above shows every post and both diagonals to the centimetre', () => {
    const sheet = built(roof);
    const plan = /aria-label="Roof from above"[^>]*>(.*?)<\/svg>/s.exec(sheetHtml(sheet, 'metric'))?.[1] ?? '';
    for (const post of sheet.settingOut.posts) expect(plan).toContain(`>${post.id}</text>`);
    expect(plan.split(`>${Math.hypot(roof.length, roof.width).toFixed(2)} m</text>`)).toHaveLength(3);
  });

  test('letters come out 3 mm high on paper however large the frame, and every bay has its length', () => {
    for (const thing of [
      roof,
      screen,
      { ...roof, length: 9, width: 2, frame: { soil: 'garden' } },
      { ...roof, length: 0.8, width: 1.1 },
    ]) {
      const html = sheetHtml(built(thing), 'metric');
      const drawings = [
        ...html.matchAll(
          /<svg role="img" aria-label="[^"]* (?:from above|from the side)" viewBox="([^"]*)" font-family="sans-serif" font-size="([\d.]+)"/g,
        ),
      ];
      expect(drawings).toHaveLength(2);
      for (const [, box, size] of drawings) {
        const [, , wide, high] = box.split(' ').map(Number);
        // The page's style: 180 mm wide, 110 mm high at most.
        expect(Number(size) * Math.min(180 / wide, 110 / high)).toBeGreaterThan(3);
      }
    }
    const long = sheetHtml(
      built({ ...roof, turn: 0, length: 5, width: 2, frame: { soil: 'garden', maxBay: 2.5 } }),
      'metric',
    );
    for (const length of ['5000 mm', '2500 mm', '2000 mm']) expect(long).toContain(`>${length}</text>`);
  });

  test('the style asks for nothing from anywhere', () => {
    expect(SHEET_STYLE).not.toMatch(/url\(|@import|http/);
  });
});
