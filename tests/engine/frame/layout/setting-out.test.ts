import { expect, test } from 'vitest';
import { sheetOf } from '../../../../engine/frame/sheet.ts';
import type { Canopy, Feature } from '../../../../engine/plan/types.ts';
import { mustBeOk } from '../../../parts/outcome.ts';
import { yardPlan } from '../../load/yard-plan.ts';
import { built, roof, yardWith } from '../yard.ts';

const HOUSE: Feature = {
  id: 'house',
  kind: 'building',
  outline: [
    [3, 0],
    [7, 0],
    [7, 1],
    [3, 1],
  ],
  height: 3,
};
const ROOF: Canopy = { id: 'roof', kind: 'canopy', center: [5, 4], length: 2, width: 2.4, height: 2.2, density: 0.5 };
/** Between the house and the roof. */
const WALL: Feature = {
  id: 'wall',
  kind: 'wall',
  path: [
    [1, 2],
    [9, 2],
  ],
  height: 1,
  thickness: 0.1,
};

function measuredFrom(...features: Feature[]): (readonly number[])[] {
  const result = sheetOf(yardPlan([...features, ROOF]), 'roof');
  mustBeOk(result);
  return result.sheet.settingOut.fixed.map(({ at }) => at).toSorted((a, b) => a[0] - b[0]);
}

test('posts are measured from the house’s near corners, and where a wall would stop the tapes, from the wall’s ends', () => {
  expect(measuredFrom(HOUSE)).toEqual([
    [3, 1],
    [7, 1],
  ]);
  expect(measuredFrom(HOUSE, WALL)).toEqual([
    [1, 2],
    [9, 2],
  ]);
});

test('tells on which hand a post lies, standing at A and looking at B', () => {
  const { settingOut } = built({ ...roof, turn: 0 });
  const [a, b] = settingOut.fixed.map((point) => point.at);
  for (const post of settingOut.posts) {
    // Bearing of the post less that of B, clockwise from +y: to the right when positive.
    const bearing = (x: number, y: number): number => (Math.atan2(x - a[0], y - a[1]) * 180) / Math.PI;
    const turn = ((bearing(...post.at) - bearing(...b) + 540) % 360) - 180;
    expect(post.hand).toBe(turn > 0 ? 'right' : 'left');
  }
});

test('tells corners and its own back by the compass, whichever way the plan lies', () => {
  const words = (upBearing: number): string =>
    built({ ...roof, turn: 0 }, { site: { ...yardWith([]).site, upBearing } }).settingOut.sentence;
  expect(words(0)).toMatch(
    /^A is the south-west corner of “House” \(x 0\.00 m, y 14\.00 m\).*back, P1 to P2, is its south side\.$/,
  );
  // The plan's top points east: everything turns a quarter clockwise.
  expect(words(90)).toMatch(/^A is the north-west corner of “House”.*back, P1 to P2, is its west side\.$/);
});

test('measures the gap to a wall from its face, not from its middle', () => {
  // The wall is 0.2 thick about y = 0; the back posts stand at y = 0.25, so 0.15 from its face.
  const { settingOut } = built({ ...roof, turn: 0, length: 2.5, center: [9, 1.5] });
  expect(settingOut.posts[0].notes.join()).toContain('0.15 m from Garden wall');
  const close = built({ ...roof, turn: 0, length: 2.5, center: [9, 1.42] });
  expect(close.settingOut.posts[0].notes.join()).toContain('only 0.07 m from Garden wall');
});

test('holds a hole against a wall by its edge, not by the middle of its post; weights dig none', () => {
  // 0.40 m from the wall's face, and a hole 0.3 m across: its edge comes within 0.25 m.
  const near: Canopy = { ...roof, turn: 0, length: 2.5, center: [9, 1.75] };
  const { settingOut, anchors } = built(near);
  expect(anchors.posts[0].hole?.diameter).toBe(0.3);
  expect(settingOut.posts[0].notes).toEqual([
    expect.stringMatching(/^0\.40 m from Garden wall: its hole, 30 cm across, would come within 0\.25 m of it/),
  ]);
  expect(built({ ...near, center: [9, 1.81] }).settingOut.posts[0].notes).toEqual([]);
  expect(built({ ...near, frame: { soil: 'paving' } }).settingOut.posts[0].notes).toEqual([]);
  // Before the ground is known, a post that no hole could hold says what can.
  expect(built({ ...near, frame: {}, center: [9, 1.6] }).settingOut.posts[0].notes).toEqual([
    expect.stringMatching(/^0\.25 m from Garden wall: too near for a hole.* or hold this post by weights$/),
  ]);
});
