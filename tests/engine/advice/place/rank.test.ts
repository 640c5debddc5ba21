import fc from 'fast-check';
import { expect, test } from 'vitest';
import { better, type Tried } from '../../../../engine/advice/place/rank.ts';

interface Wanted {
  readonly metres?: number;
  readonly steps?: number;
  readonly harm?: number;
  /** Hours of sun beyond the range. */
  readonly over?: number;
  /** To keep it there, as so much harm. */
  readonly work?: number;
  readonly rootsDie?: boolean;
  /** Of the 12 mol/m² a day that the plant needs. */
  readonly dailyLight?: number;
}

function place({
  metres = 5,
  steps = 0,
  harm = 10,
  over = 0,
  dailyLight = 14,
  work = 0,
  rootsDie = false,
}: Wanted): Tried {
  const standing = dailyLight >= 12 ? 'enough' : dailyLight >= 8 ? 'short' : 'too dark';
  const way = { metres, steps, round: [] };
  const kept = { work, rootsDie };
  return { at: [3, 2], ...way, ...kept, harm, over, light: { sunHours: 6, dailyLight, least: 12, standing }, standing };
}

test('a pot’s places stand in this order: light enough, roots that can live, least harm and work, not too much sun, least to carry; then short of light, then too dark', () => {
  const inOrder = [
    // More sun than its range is no harm by itself: what harms is counted already.
    place({ harm: 0, over: 1.5, metres: 0 }),
    place({ harm: 2, metres: 9 }),
    place({ harm: 3, over: 1.5, metres: 1 }),
    // Half a K·h is no difference: the way decides.
    place({ harm: 5.1, metres: 1 }),
    place({ harm: 5, metres: 4 }),
    // Two steps down are as much as four metres more.
    place({ harm: 5, metres: 3, steps: -2 }),
    // Of places harmed alike those within the range go first; an hour beyond it is let pass.
    place({ harm: 5, over: 1.5, metres: 0.5 }),
    // Roots that live there by themselves are worth the work of keeping a pot cool, and no more.
    place({ harm: 12, metres: 8 }),
    place({ harm: 10, metres: 1, work: 4 }),
    place({ harm: 30, metres: 1 }),
    place({ harm: 40, over: 0.9 }),
    // No leaf is worth saving where the roots die whatever is done.
    place({ harm: 0, metres: 0, rootsDie: true }),
    // Short of light, with fewer flowers and fruit, however little it harms.
    place({ harm: 0, dailyLight: 10 }),
    place({ harm: 6, dailyLight: 8 }),
    // Too dark, however little it harms: the one that misses by least first.
    place({ harm: 6, dailyLight: 7.9 }),
    place({ harm: 0, dailyLight: 5, metres: 0 }),
    place({ harm: 9, dailyLight: 5, metres: 0 }),
  ];
  fc.assert(
    fc.property(fc.shuffledSubarray(inOrder, { minLength: inOrder.length }), (shuffled) => {
      expect(shuffled.toSorted(better)).toEqual(inOrder);
    }),
    { seed: 17, numRuns: 50 },
  );
});
