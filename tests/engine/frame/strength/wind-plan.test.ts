import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sheetOf } from '../../../../engine/frame/sheet.ts';
import { sectionOf } from '../../../../engine/frame/strength/tube.ts';
import { anyCanopy, anyFrame, built, roof, screen, yardWith, RUNS, SEED } from '../yard.ts';

describe('the sheet', () => {
  test('a frame for which no tube is named passes its own checks, wherever it stands', () => {
    fc.assert(
      fc.property(
        anyCanopy.filter(({ drops = [] }) => drops.length === 0),
        fc.constantFrom('Europe/Madrid', 'America/Phoenix'),
        (canopy, timeZone) => {
          const site = { ...yardWith([]).site, timeZone };
          const { spans, post, notes } = built({ ...canopy, frame: { soil: 'garden' } }, { stock: {}, site });
          expect(post.bracedMPa ?? post.leaned.stressMPa).toBeLessThanOrEqual(165);
          for (const { leaned, verdict, gust } of spans) {
            expect(leaned.stressMPa).toBeLessThanOrEqual(165);
            expect(verdict).toBe('holds its line');
            expect(gust.blocked).toBeGreaterThanOrEqual(15);
          }
          expect(notes.join(' ')).not.toMatch(/sways|bend/);
        },
      ),
      { seed: SEED + 3, numRuns: 25 },
    );
  });

  test('a wall within one roof height, at least half as high, makes it blocked below; a kerb does not', () => {
    const near = { ...roof, turn: 0, center: [9, 2.2] as const };
    expect(built(near).uplift.blockedBy).toEqual(['the garden wall']);
    expect(built(roof).uplift.blockedBy).toEqual([]);
    const kerb = yardWith([near]).features.map((feature) =>
      feature.id === 'wall' && feature.kind === 'wall' ? { ...feature, height: 0.9 } : feature,
    );
    const result = sheetOf({ ...yardWith([]), features: kerb }, 'roof');
    expect(result.ok && result.sheet.uplift.blockedBy).toEqual([]);
  });

  test('a post that sways is told with its cure; braces, asked for, stand in all four faces and on the list', () => {
    const swaying = built({ ...roof, height: 2.6, frame: { soil: 'garden', tube: 'long' } });
    expect(swaying.post.leaned.stressMPa).toBeGreaterThan(165);
    expect(swaying.notes.join(' ')).toMatch(/It sways: a push of 10 kg.*Choose braces in the plan/);
    const braced = built({ ...roof, height: 2.6 });
    // Two posts share 100 N, and bend where the braces meet them, 0.55 m below their tops: bays
    // of 1.7 m let a brace reach a third of that, to 5 cm.
    expect(braced.post.bracedMPa).toBeCloseTo((50 * 2.05) / sectionOf(0.038, 0.0015).modulus / 1e6, 6);
    expect(braced.notes.join(' ')).not.toContain('It sways');
    expect(braced.pieces.filter(({ kind }) => kind === 'brace').reduce((sum, { count }) => sum + count, 0)).toBe(8);
    expect(braced.fittings.find(({ kind }) => kind === 'brace clamp')?.count).toBe(16);
    expect(braced.steps.find(({ id }) => id === 'brace')?.text).toContain('two in every upright face');
    expect(braced.sockets.holds).toBe(true);
  });

  test('thicker tube is named from what shops of the place have, and a weak screen is told once', () => {
    const notes = (timeZone: string, tube: string): string[] =>
      built(
        {
          ...screen,
          frame: { soil: 'garden', tube },
          path: [
            [4, 3],
            [4, 6],
          ],
        },
        { stock: {}, site: { ...yardWith([]).site, timeZone } },
      ).notes.filter((note) => note.includes('lightest tube'));
    expect(notes('Australia/Adelaide', 'tube-32')).toEqual([expect.stringMatching(/is galvanised tube, 42\.4 mm\.$/)]);
    expect(notes('America/Phoenix', 'emt-1')).toEqual([expect.stringMatching(/is conduit, trade size/)]);
  });

  test('the cloth is said to come off sooner than the tube bears only where it does', () => {
    fc.assert(
      fc.property(anyFrame, (thing) => {
        const { storm } = built(thing);
        const bears = /would bear gusts of (\d+) m\/s/.exec(storm.takeDownWhy)?.[1];
        if (bears !== undefined) expect(Number(bears)).toBeGreaterThan(storm.takeDownGust);
      }),
      RUNS,
    );
  });

  test('what a roof pulls on its rails is counted by the wind of its place: caught below, harder', () => {
    const perMetre = (center: readonly [number, number]): number =>
      built({ ...roof, turn: 0, center }).cloth.pull.perMetre;
    // Flat: 0.5 passing freely, 1.3 caught (BS 6399-2 table 13, EN 1991-1-4 table 7.6).
    expect(perMetre([9, 2.2]) / perMetre([9, 7])).toBeCloseTo(1.3 / 0.5, 9);
    // T = p·L²/(8s), s = L/20, on the span of a screen's longest bay; a cloth that stands takes 1.2.
    const { cloth, spans } = built(screen);
    const [{ span }] = spans;
    expect(cloth.pull.perMetre).toBeCloseTo((0.613 * 15 ** 2 * 1.2 * 0.84 * span * 20) / 8, 6);
  });

  test('the cloth comes off sooner where the wind is caught below, and never later than 15 m/s', () => {
    const thin = { ...roof, turn: 0, length: 3, width: 3, frame: { tube: 'emt-3-4', soil: 'garden' } };
    const [open, caught] = [built({ ...thin, center: [9, 7] }), built({ ...thin, center: [9, 2.2] })];
    expect(open.storm.takeDownGust).toBe(Math.floor(Math.min(15, open.spans[0].gust.clear)));
    expect(caught.storm.takeDownGust).toBe(Math.floor(caught.spans[0].gust.blocked));
    expect(caught.storm.takeDownGust).toBeLessThan(open.storm.takeDownGust);
    expect(built({ ...thin, frame: { tube: 'scaffold-48', soil: 'garden' } }).storm.takeDownGust).toBe(15);
    expect(open.storm.sentences.join(' ')).toContain(open.storm.signs);
  });

  test('drops are counted as standing cloth whose push lifts the windward posts', () => {
    const drop = { side: 'left', depth: 1.2, density: 0.6 } as const;
    const bare = { ...roof, turn: 0, length: 3, width: 3, height: 2.2, frame: { soil: 'garden', gust: 15 } };
    const [without, hung] = [built(bare), built({ ...bare, drops: [drop] })];
    // 501 N at 1.6 m lift the two windward feet of a 3 m frame by 267 N together (worked by hand).
    expect(hung.uplift.rows.find((row) => row.gust === 15)?.sidePush).toBeCloseTo(501, -0.3);
    const more =
      hung.anchors.posts[0].uplift.blocked +
      hung.uplift.ownWeight * 9.80665 * 0.25 -
      (without.anchors.posts[0].uplift.blocked + without.uplift.ownWeight * 9.80665 * 0.25);
    expect(more).toBeCloseTo(267 / 2, -0.3);
    expect(hung.uplift.blockedBy).toContain('its own drops');
    // 1.2 m of drop push its rail with half of 137.9 · 1.2 · 0.84 · 1.2 = 166.8 N/m at 15 m/s, square to 137.9 · 1.3 ·
    // Kp(0.55) 0.7975 · 1.5 = 214.5 N/m of roof.
    const over = hung.spans.find(({ rail }) => rail === 'over the drop left')!;
    expect(15 * Math.sqrt(over.lineLoad / Math.hypot(83.4, 214.5))).toBeCloseTo(over.gust.blocked, 1);
    expect(over.gust.blocked).toBeLessThan(without.spans[0].gust.blocked);
    expect(hung.storm.takeDownGust).toBeLessThanOrEqual(Math.floor(over.gust.blocked));
    // One wind strikes both of two opposite drops, and only one of two that meet at a corner.
    const pushOn = (...sides: readonly ('left' | 'right' | 'front')[]) =>
      built({ ...bare, drops: sides.map((side) => ({ ...drop, side })) }).uplift.rows.find((row) => row.gust === 15)
        ?.sidePush;
    expect(pushOn('left', 'right')).toBeCloseTo(2 * 501, -0.6);
    expect(pushOn('left', 'front')).toBeCloseTo(501, -0.3);
  });
});
