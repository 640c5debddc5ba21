import fc from 'fast-check';
import { expect, test } from 'vitest';
import { placeLabels, placesOfPin, placesOn, placesRound } from '../../../web/charts/label-boxes.ts';
import type { Box } from '../../../web/charts/label-boxes.ts';

const FRAME: Box = { left: 0, top: 0, right: 400, bottom: 300 };
const box = (left: number, top: number, width: number, height: number): Box => ({
  left,
  top,
  right: left + width,
  bottom: top + height,
});
const apart = (a: Box, b: Box): boolean =>
  a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;

const body = fc
  .tuple(fc.integer({ min: -50, max: 450 }), fc.integer({ min: -50, max: 350 }), fc.integer({ min: 4, max: 90 }))
  .map(([x, y, size]) => box(x, y, size, size));

test('whatever stands where, no two labels overlap, none lies over what is taken or leaves the frame', () => {
  fc.assert(
    fc.property(fc.array(body, { maxLength: 30 }), fc.array(body, { maxLength: 4 }), (bodies, taken) => {
      const places = bodies.map((each) => placesRound(each, 60, 14));
      const standing = placeLabels(places, FRAME, taken).flatMap((place, k) =>
        place === null ? [] : [places[k][place]],
      );
      standing.forEach((label, k) => {
        for (const other of [...taken, ...standing.slice(0, k)]) expect(apart(label, other)).toBe(true);
        expect(label.left >= 0 && label.top >= 0 && label.right <= 400 && label.bottom <= 300).toBe(true);
      });
    }),
  );
});

test('a name lies under its thing; over it at the foot of the paper; towards the middle at a side', () => {
  const placed = (at: Box): Box | undefined => {
    const places = placesRound(at, 60, 14);
    return places[placeLabels([places], FRAME, [])[0] ?? -1];
  };
  expect(placed(box(180, 100, 40, 40))).toEqual(box(170, 142, 60, 14));
  expect(placed(box(180, 255, 40, 40))).toEqual(box(170, 239, 60, 14));
  expect(placed(box(370, 100, 40, 40))?.right).toBeLessThanOrEqual(400);
});

test('a name on a thing stands amid what is seen of it, and not at all where that is too narrow', () => {
  expect(placesOn(box(300, 100, 200, 40), FRAME, 80, 14)[0]).toEqual(box(310, 113, 80, 14));
  expect(placesOn(box(340, 100, 200, 40), FRAME, 80, 14)).toEqual([]);
});

test('pins stand with a corner on their places, and three places in a hand’s breadth are told apart', () => {
  const places = placesOfPin({ x: 100, y: 80 }, 26, 0);
  for (const { left, top, right, bottom } of places) {
    expect([left, right]).toContain(100);
    expect([top, bottom]).toContain(80);
  }
  expect(new Set(places.map(({ left, top }) => `${left} ${top}`)).size).toBe(4);
  const near = [
    { x: 237, y: 178 },
    { x: 217, y: 209 },
    { x: 240, y: 191 },
  ].map((place) => placesOfPin(place, 18, 0));
  const found = placeLabels(near, FRAME, []);
  expect(found).not.toContain(null);
  const [one, two, three] = near.map((pins, k) => pins[found[k] ?? 0]);
  expect([apart(one, two), apart(one, three), apart(two, three)]).toEqual([true, true, true]);
});

test('a pin that is to lie lower left does, and goes to the other side, then over, where something stands', () => {
  const at = (left: number, top: number): Box => box(left, top, 26, 26);
  const [right, left, lowRight, lowLeft] = [at(100, 54), at(74, 54), at(100, 80), at(74, 80)];
  const places = placesOfPin({ x: 100, y: 80 }, 26, 3);
  expect(places).toEqual([lowLeft, lowRight, left, right]);
  expect(placeLabels([places], FRAME, [])).toEqual([0]);
  expect(placeLabels([places], FRAME, [lowLeft])).toEqual([1]);
  expect(placeLabels([places], FRAME, [lowLeft, lowRight])).toEqual([2]);
});
