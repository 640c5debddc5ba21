import { describe, expect, test } from 'vitest';
import { sheetText } from '../../../../engine/output/sheet/text.ts';
import { SHEET_STYLE } from '../../../../web/panels/build/sheet-style.ts';
import { built, roof, screen, yardWith } from '../../frame/yard.ts';
import { sheetHtml } from './sheet-html.ts';

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

  test.each([0, 90, 180, 270])(
    'the setting-out drawing has house, A, B, front, back and a whole north arrow at %i°',
    (up) => {
      const { site } = yardWith([]);
      const sheet = built(roof, { site: { ...site, upBearing: up } });
      const [, box, inside] =
        /aria-label="Roof: where the posts stand"[^>]*viewBox="([^"]*)"[^>]*>(.*?)<\/svg>/s.exec(
          sheetHtml(sheet, 'metric'),
        ) ?? [];
      for (const word of ['House', 'A', 'B', 'N', 'front', 'back']) expect(inside).toContain(`>${word}</text>`);
      const [x, y, width] = box.split(' ').map(Number);
      const [atX, atY] = /translate\(([\d.-]+) ([\d.-]+)\) rotate/.exec(inside)!.slice(1).map(Number);
      // Its letter ends 9 mm from its middle, to whichever side it is turned.
      expect(atY - 9).toBeGreaterThanOrEqual(y);
      expect(atX + 9).toBeLessThanOrEqual(x + width);
    },
  );

  test('every drawing is true to scale: posts as far apart on paper as they say, and a bar that says so too', () => {
    const sheet = built({ ...roof, turn: 0, length: 2.5, width: 2 });
    const html = sheetHtml(sheet, 'metric');
    const pictures = [...html.matchAll(/aria-label="(Roof[^"]*)"[^>]*>(.*?)<\/svg>/gs)];
    expect(pictures.map(([, title]) => title)).toEqual([
      'Roof from above',
      'Roof from the side',
      'Roof: where the posts stand',
    ]);
    for (const [, title, inside] of pictures) {
      const [, from, to, said, scale] =
        /d="M([\d.−-]+) [\d.−-]+H([\d.−-]+)M[^>]*\/><text[^>]*>1 m, ([\d.]+) mm on paper: 1 : (\d+)</.exec(inside) ??
        [];
      expect(Number(to) - Number(from), title).toBeCloseTo(1000 / Number(scale), 2);
      expect(Number(said), title).toBeCloseTo(1000 / Number(scale), 1);
      if (title !== 'Roof: where the posts stand') expect(scale).toBe('50');
      if (title === 'Roof from the side') continue;
      const dots = [...inside.matchAll(/<circle cx="([\d.-]+)" cy="([\d.-]+)" r="(?:1\.12|1\.05)"/g)].map(
        ([, x, y]) => [Number(x), Number(y)] as const,
      );
      expect(dots).toHaveLength(4);
      const apart = (a: number, b: number): number => Math.hypot(dots[a][0] - dots[b][0], dots[a][1] - dots[b][1]);
      expect(apart(0, 1)).toBeCloseTo(2000 / Number(scale), 1);
      expect(apart(0, 2)).toBeCloseTo(2500 / Number(scale), 1);
    }
    // At 1 : 50 a metre is 20.0 mm.
    expect(html).toContain('>1 m, 20.0 mm on paper: 1 : 50</text>');
    const [, , where] = pictures[2];
    for (const words of ['A', 'B', 'N', 'House', 'back', 'front']) expect(where).toContain(`>${words}</text>`);
  });

  test.each([
    [0, 'its front to the map’s head, or level'],
    [180, 'its front to the map’s foot'],
  ])('the frame is drawn the way it lies on the map: turned by %i°, %s', (turn) => {
    const sheet = built({ ...roof, turn, length: 2.5, width: 2 });
    const inside = /aria-label="Roof from above"[^>]*>(.*?)<\/svg>/s.exec(sheetHtml(sheet, 'metric'))?.[1] ?? '';
    const heightOf = (words: string): number => Number(new RegExp(` y="([\\d.-]+)"[^>]*>${words}<`).exec(inside)?.[1]);
    const [back, front] = ['P1', 'P3'].map((id) => sheet.settingOut.posts.find((post) => post.id === id)?.at[1] ?? NaN);
    expect(back).not.toBeCloseTo(front, 1);
    // Paper counts downwards.
    expect(heightOf('back') > heightOf('front')).toBe(back < front);
    expect(heightOf('P1') > heightOf('P3')).toBe(back < front);
  });

  test('stops stand first with a box each, and steps and things to buy have theirs', () => {
    const html = sheetHtml(built(roof), 'metric');
    const titles = [...html.matchAll(/<section id="sheet-([\w-]+)">/g)].map(([, id]) => id);
    expect(titles.slice(0, 2)).toEqual(['summary', 'stops']);
    expect(html).toMatch(/id="sheet-stops"><h2>[^<]*<\/h2><ul class="boxes"><li>STOP/);
    expect(html).toContain('<ol class="boxes">');
    expect(/<section id="sheet-cautions">.*?<\/section>/s.exec(html)?.[0]).not.toContain('STOP');
    // What is to be minded is read before it is done.
    expect(titles.indexOf('cautions')).toBeLessThan(titles.indexOf('steps'));
  });

  test('no picture is narrower than the words beside its bar, in either units', () => {
    for (const thing of [screen, { ...roof, length: 1.6, width: 1.6 }])
      for (const units of ['metric', 'imperial'] as const) {
        const bars = [
          ...sheetHtml(built(thing), units).matchAll(
            /viewBox="(\S+) \S+ (\S+) \S+" font-family="sans-serif" font-size="([\d.]+)".*?<text x="(\S+)" y="\S+">([^<]* on paper: 1 : \d+)<\/text><\/g><\/svg>/gs,
          ),
        ];
        expect(bars).toHaveLength(3);
        for (const [, left, width, letters, x, words] of bars)
          // A letter of a wide plain face is half as wide as it is high.
          expect(Number(x) + 0.5 * Number(letters) * words.length).toBeLessThan(Number(left) + Number(width));
      }
  });

  test('a narrow roof has one length for both diagonals; a frame on a wall shows the wall, another none', () => {
    const drawn = (changes: Partial<typeof roof>): string => sheetHtml(built({ ...roof, ...changes }), 'metric');
    expect(drawn({ length: 6.4, width: 1.6 })).toContain('>both 6.60 m<');
    expect(drawn({ length: 2.6, width: 2.6 }).match(/>3\.68 m<\/text>/g)).toHaveLength(2);
    const wall = /<polygon class="wall" points="([^"]*)"/g;
    const atHouse = { turn: 0, center: [9, 14 - 1.7] as const, onWall: true, length: 3.4 };
    const hung = [...drawn({ ...atHouse, turn: 180 }).matchAll(wall)].map(([, points]) =>
      points.split(' ').map((point) => point.split(',').map(Number)),
    );
    expect(hung).toHaveLength(2);
    // Above it runs along the brackets; from the side up to 0.3 m over the rail of 2.3 m, at 1 : 50.
    const tall = (points: number[][]): number =>
      Math.max(...points.map(([, y]) => y)) - Math.min(...points.map(([, y]) => y));
    expect(hung.map((points) => Math.round(10 * tall(points)) / 10)).toEqual([3, 52]);
    expect([...drawn({}).matchAll(wall)]).toEqual([]);
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
          /<svg role="img" aria-label="[^"]* (?:from above|from the side)" width="([\d.]+)mm" height="([\d.]+)mm" viewBox="([^"]*)" font-family="sans-serif" font-size="([\d.]+)"/g,
        ),
      ];
      expect(drawings).toHaveLength(2);
      for (const [, wide, high, box, size] of drawings) {
        // A drawing unit is a millimetre of paper, and the page of A4 and of Letter holds it.
        expect(box.split(' ').slice(2)).toEqual([wide, high]);
        expect(Number(size)).toBeGreaterThan(3);
        expect(Number(wide)).toBeLessThanOrEqual(180);
        expect(Number(high)).toBeLessThanOrEqual(130);
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
