/** Laws of every frame that can be built. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tenthsOf } from '../../../engine/frame/layout/fittings.ts';
import { costOf } from '../../../engine/frame/sheet.ts';
import { turnOf } from '../../../engine/plan/defaults.ts';
import { canopyCorners } from '../../../engine/plan/geometry/cloth-shapes.ts';
import { distance } from '../../../engine/plan/geometry/shapes.ts';
import { anyCanopy, anyFrame, built, yardWith, RUNS, SEED } from './yard.ts';

describe(`every frame that can be built (seed ${SEED})`, () => {
  test('has each tube end in exactly one socket or in the ground', () => {
    fc.assert(
      fc.property(anyFrame, (thing) => {
        const { sockets, pieces, fittings } = built(thing);
        expect(sockets.holds).toBe(true);
        expect(pieces.reduce((sum, piece) => sum + piece.count, 0)).toBe(sockets.tubes);
        expect(fittings.reduce((sum, fitting) => sum + fitting.count * fitting.socketsEach, 0)).toBe(sockets.sockets);
        expect(sockets.sockets + sockets.inGround).toBe(2 * sockets.tubes);
      }),
      RUNS,
    );
  });

  test('is cut from the tubes bought: pieces, kerfs and left-overs make them up to 0.1 mm, and every piece is there', () => {
    fc.assert(
      fc.property(anyFrame, (thing) => {
        const { cuts, pieces, cost, cutting } = built(thing);
        for (const cut of cuts) {
          expect(tenthsOf(cut.pieces.reduce((sum, piece) => sum + piece, 0) + cut.lost + cut.left)).toBe(
            tenthsOf(cut.stock),
          );
          expect(tenthsOf(cut.lost)).toBeLessThanOrEqual(tenthsOf(cutting.kerf * cut.pieces.length));
        }
        const wanted = pieces.flatMap((piece) => Array.from({ length: piece.count }, () => tenthsOf(piece.length)));
        expect(cuts.flatMap((cut) => cut.pieces.map(tenthsOf)).toSorted((a, b) => a - b)).toEqual(
          wanted.toSorted((a, b) => a - b),
        );
        expect(cost.items.filter((item) => item.aisle === 'Tube').reduce((sum, item) => sum + item.count, 0)).toBe(
          cuts.length,
        );
        expect(cutting.proven ? cutting.bound === cutting.amount : cutting.bound < cutting.amount).toBe(true);
      }),
      RUNS,
    );
  });

  test('costs what its lines add up to, and the same asked for alone', () => {
    fc.assert(
      fc.property(anyFrame, (thing) => {
        const plan = yardWith([thing]);
        const { cost, work } = built(thing);
        const alone = costOf(thing, plan);
        expect(alone).toEqual({ ok: true, cost, hours: work.hours });
        expect(cost.total).toBeCloseTo(
          cost.items.reduce((sum, item) => sum + (item.amount ?? 0), 0),
          6,
        );
        for (const item of cost.items) expect(item.count).toBeGreaterThanOrEqual(item.need);
      }),
      RUNS,
    );
  });

  test('needs in its steps only what is on the list, and nothing on the list that no step needs', () => {
    fc.assert(
      fc.property(anyFrame, (thing) => {
        const { steps, cost, tools, cautions } = built(thing);
        const listed = [...cost.items.map((item) => item.id), ...tools.map((tool) => tool.id)];
        const needed = steps.flatMap((step) => step.needs);
        expect(needed.filter((id) => !listed.includes(id))).toEqual([]);
        expect(listed.filter((id) => !needed.includes(id))).toEqual([]);
        const known = cautions.map((caution) => caution.id);
        expect(steps.flatMap((step) => step.cautions).filter((id) => !known.includes(id))).toEqual([]);
      }),
      RUNS,
    );
  });

  test('names in a step no thing that the step does not count among its needs', () => {
    const words: readonly (readonly [RegExp, RegExp])[] = [
      [/steel rod into/, /^rod$/],
      [/tape measure/, /^tapes$/],
      [/\bpeg\b/, /^pegs$/],
      [/string round/, /^pegs$/],
      [/spirit level/, /^level$/],
      [/hacksaw|tube cutter/, /^saw$/],
      [/file or reamer/, /^deburr$/],
      [/hex key/, /^key$/],
      [/step ladder/i, /^ladder$/],
      [/scissors/, /^scissors$/],
      [/needle/, /^needle$/],
      [/hose/, /^hose$/],
      [/hammer/, /^hammer$/],
      [/strong bar/, /^bar$/],
      [/trowel/, /^barrow$/],
      [/the concrete/, /^concrete$/],
      [/bent bolts/, /^hold-downs$/],
      [/U-bolts/, /^u-bolts$/],
      [/rebar stakes/, /^stakes$/],
      [/augers/, /^augers$/],
      [/\bcans\b/, /^water-cans$/],
      [/\bstraps?\b/, /^straps$/],
      [/strap clamp/, /^strap-clamps$/],
      [/elastic ties/, /^ties$/],
      [/snap clip/, /^clips$/],
      [/steel rods/, /^(hem-rods|scissors)$/],
      [/zinc paint/, /^zinc-paint$/],
      [/flat stone/, /^stones$/],
      [/foot plate/, /^joint-foot/],
      [/set screws in/, /^screws$/],
      [/brace clamp/, /^joint-brace clamp/],
      [/thread/, /^thread$/],
    ];
    const met = new Set<string>();
    fc.assert(
      fc.property(anyFrame, (thing) => {
        for (const step of built(thing).steps) {
          for (const [word, need] of words) {
            if (!word.test(step.text)) continue;
            met.add(String(word));
            expect(
              step.needs.some((id) => need.test(id)),
              `step ${step.id} says ${word} but needs only ${step.needs.join(', ')}`,
            ).toBe(true);
          }
        }
      }),
      RUNS,
    );
    // No word of the list stands there for nothing.
    expect(words.map(([word]) => String(word)).filter((word) => !met.has(word))).toEqual([]);
  });

  test('is set out by tape lengths and diagonals that agree with where its posts stand', () => {
    fc.assert(
      fc.property(anyCanopy, (canopy) => {
        const { settingOut } = built(canopy);
        const [a, b] = settingOut.fixed;
        for (const post of settingOut.posts) {
          expect(post.fromA).toBeCloseTo(distance(a.at, post.at), 9);
          expect(post.fromB).toBeCloseTo(distance(b.at, post.at), 9);
        }
        for (const diagonal of settingOut.diagonals)
          expect(diagonal.length).toBeCloseTo(Math.hypot(canopy.length, canopy.width), 9);
        for (const [x, y] of canopyCorners(canopy))
          expect(Math.min(...settingOut.posts.map((post) => distance(post.at, [x, y])))).toBeLessThan(1e-9);
      }),
      RUNS,
    );
  });

  test('is the same frame in metres and in feet, and however it is turned', () => {
    fc.assert(
      fc.property(anyCanopy, fc.integer({ min: 1, max: 359 }), (canopy, more) => {
        const { pieces, fittings, cuts, clips, cost } = built(canopy);
        const feet = built(canopy, { units: 'imperial' });
        expect({
          pieces: feet.pieces,
          fittings: feet.fittings,
          cuts: feet.cuts,
          clips: feet.clips,
          total: feet.cost.total,
        }).toEqual({ pieces, fittings, cuts, clips, total: cost.total });
        // Far from every wall, so that only the turn differs.
        const alone = { site: { ...yardWith([]).site }, features: [{ ...canopy, center: [300, 200] as const }] };
        const turnedOne = { ...alone, features: [{ ...alone.features[0], turn: turnOf(canopy) + more }] };
        expect(built(canopy, turnedOne).pieces).toEqual(built(canopy, alone).pieces);
        expect(built(canopy, turnedOne).cost.total).toBe(built(canopy, alone).cost.total);
      }),
      { seed: SEED + 1, numRuns: 12 },
    );
  });

  test('needs no less weight in a stronger gust, and never less where the wind is caught below', () => {
    fc.assert(
      fc.property(anyCanopy, fc.integer({ min: 5, max: 30 }), fc.integer({ min: 1, max: 15 }), (canopy, gust, more) => {
        const at = (metresPerSecond: number) =>
          built({ ...canopy, frame: { ...canopy.frame, gust: metresPerSecond } }).anchors.posts;
        const [low, high] = [at(gust), at(gust + more)];
        for (const [i, post] of low.entries()) {
          expect(high[i].ballast.blocked).toBeGreaterThanOrEqual(post.ballast.blocked);
          expect(post.ballast.blocked).toBeGreaterThanOrEqual(post.ballast.clear);
        }
      }),
      { seed: SEED + 2, numRuns: 15 },
    );
  });
});
