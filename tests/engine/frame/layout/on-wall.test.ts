import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sheetOf } from '../../../../engine/frame/sheet.ts';
import type { BuildSheet } from '../../../../engine/frame/types.ts';
import type { Canopy, Feature, Plan } from '../../../../engine/plan/types.ts';
import { mustBeOk } from '../../../parts/outcome.ts';
import { yardPlan } from '../../load/yard-plan.ts';

const HOUSE: Feature = {
  id: 'house',
  kind: 'building',
  name: 'House',
  outline: [
    [0, 6],
    [12, 6],
    [12, 8],
    [0, 8],
  ],
  height: 3.2,
};

/** A roof whose back is a hand’s breadth off the house. */
function roofOf(length: number, width: number): Canopy {
  return {
    id: 'roof',
    kind: 'canopy',
    center: [6, 6 - 0.105 - length / 2],
    length,
    width,
    height: 2.2,
    turn: 180,
    density: 0.5,
    frame: { soil: 'garden' },
  };
}

function sheetWith(roof: Canopy, features: readonly Feature[] = [HOUSE]): BuildSheet {
  const plan: Plan = yardPlan([...features, roof]);
  const result = sheetOf(plan, 'roof');
  mustBeOk(result);
  return result.sheet;
}

test('a roof hung from a wall has no posts along its back, no tube end is left over, and it costs less', () => {
  fc.assert(
    fc.property(fc.integer({ min: 15, max: 45 }), fc.integer({ min: 15, max: 45 }), (length, width) => {
      const free = sheetWith(roofOf(length / 10, width / 10));
      const hung = sheetWith({ ...roofOf(length / 10, width / 10), onWall: true });
      const brackets = hung.settingOut.posts.filter(({ onWall }) => onWall);
      expect(brackets.length).toBeGreaterThanOrEqual(2);
      // Every bracket is where the post would be, and measured from A and B as it would be.
      expect(hung.settingOut.posts.map(({ at }) => at)).toEqual(free.settingOut.posts.map(({ at }) => at));
      expect(hung.sockets.holds).toBe(true);
      expect(hung.fittings.find(({ joint }) => joint === 'wall bracket')?.count).toBe(brackets.length);
      const postsOf = (sheet: BuildSheet) =>
        sheet.pieces.filter(({ kind }) => kind === 'post').reduce((sum, { count }) => sum + count, 0);
      expect(postsOf(free) - postsOf(hung)).toBe(brackets.length);
      expect(hung.anchors.posts.reduce((sum, { count }) => sum + count, 0)).toBe(postsOf(hung));
      expect(hung.cost.total ?? Infinity).toBeLessThan(free.cost.total ?? 0);
    }),
    { numRuns: 12, seed: 3 },
  );
});

test('its sheet leaves the wall to somebody licensed, with the pull on each bracket, before the frame goes up', () => {
  const { steps, notes, anchors } = sheetWith({ ...roofOf(2.5, 2.5), onWall: true });
  const wall = steps.findIndex(({ id }) => id === 'wall');
  expect(steps[wall].text).toMatch(/fixed by somebody licensed/);
  expect(steps[wall].cautions).toEqual(['shared-wall', 'engineer', 'ladder']);
  expect(wall).toBeLessThan(steps.findIndex(({ id }) => id === 'raise'));
  expect(notes.join(' ')).toContain('It hangs from House: what that bears is not worked out here.');
  expect(anchors.sentences.join(' ')).toMatch(/Each of the 2 wall brackets is pulled, up or out, with up to \d+ kg/);
});

test('it may come right up to the wall that it hangs from, but not run into it', () => {
  const at = (y: number) => sheetWith({ ...roofOf(2.5, 2.5), center: [roofOf(2.5, 2.5).center[0], y], onWall: true });
  const { center } = roofOf(2.5, 2.5);
  const runsInto = (y: number) => at(y).notes.some((note) => note.startsWith('It would run through House'));
  // The house begins at y 6.
  const touching = 6 - 1.25;
  expect(runsInto(center[1])).toBe(false);
  expect(runsInto(touching)).toBe(false);
  expect(runsInto(touching + 0.6)).toBe(true);
});

test('where no wall stands behind it, or a lower one, the sheet says so first', () => {
  expect(sheetWith({ ...roofOf(2.5, 2.5), onWall: true }, []).notes[0]).toMatch(/none stands within 0.30 m/);
  const low = { ...HOUSE, height: 1.8 };
  expect(sheetWith({ ...roofOf(2.5, 2.5), onWall: true }, [low]).notes.join(' ')).toMatch(/lower than the edge/);
});

test('its posts are judged by their own height, not by the brackets’, and no tall-post note is told of a wall', () => {
  const sloping = { ...roofOf(2.5, 2.5), height: 3.1, rise: -0.9, onWall: true };
  const { post, notes } = sheetWith({ ...sloping, frame: { soil: 'garden' } });
  expect(post.height).toBeCloseTo(2.2, 9);
  expect(notes.join(' ')).not.toMatch(/posts are .* tall/);
});

test('frost cloth over it comes down on the three open sides alone', () => {
  const low = (onWall: boolean) => sheetWith({ ...roofOf(2.4, 3), height: 1.8, onWall }).cloth.frost;
  // By hand, with 0.3 m on the soil: 1.8 + 2.4 + 1.8 and 1.8 + 3 + 1.8, each with two skirts; no back, one skirt.
  expect(low(false)?.cut.map((metres) => metres.toFixed(3))).toEqual(['6.600', '7.200']);
  expect(low(true)?.cut.map((metres) => metres.toFixed(3))).toEqual(['4.500', '7.200']);
  expect([low(false)?.weights, low(true)?.weights]).toEqual([11, 8]);
  expect(low(true)?.sentence).toContain('on the three open sides');
  // Nobody throws a sheet over what stands taller than a person.
  expect(sheetWith(roofOf(2.4, 3)).cloth.frost).toBeNull();
});
