import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Section } from '../../../engine/index.ts';
import { sectionDrawing } from '../../../web/charts/section-drawing.ts';

const metres = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** A level roof over a plant, the low sun coming in over its far edge. */
const sections = fc
  .record({
    near: metres(-3, -0.5),
    far: metres(0.5, 3),
    height: metres(1.6, 3),
    top: metres(0.4, 1.5),
    halfWidth: metres(0.2, 1),
    along: metres(0.5, 30),
    rise: metres(0.05, 20),
    depth: metres(0, 4),
  })
  .map(({ near, far, height, top, halfWidth, along, rise, depth }): Section => {
    const from = { along: 0, height: top };
    return {
      sentence: '',
      cloth: [
        [
          { along: near, height },
          { along: far, height },
        ],
      ],
      plant: { halfWidth, top, foliageFrom: 0.2, pot: null },
      slip: {
        when: '18:00',
        ray: [from, { along: from.along + along, height: from.height + rise }],
        cure: { drops: depth === 0 ? null : { front: depth } },
      },
    } as unknown as Section;
  });

test('whatever is cut, all of it lies in the picture, which has the same scale across and up', () => {
  fc.assert(
    fc.property(sections, (section) => {
      const { viewBox, ground, cloth, ray, cure } = sectionDrawing(section);
      const [left, top, width, height] = viewBox.split(' ').map(Number);
      const { halfWidth, top: crown } = section.plant;
      const body = [
        [-halfWidth, -crown],
        [halfWidth, 0],
      ] as const;
      for (const [x, y] of [...ground, ...cloth.flat(), ...(ray ?? []), ...(cure ?? []), ...body]) {
        expect(x).toBeGreaterThanOrEqual(left - 1e-9);
        expect(x).toBeLessThanOrEqual(left + width + 1e-9);
        expect(y).toBeGreaterThanOrEqual(top - 1e-9);
        expect(y).toBeLessThanOrEqual(top + height + 1e-9);
      }
    }),
  );
});

test('the ray keeps its slope however far it is cut off, and its time stands in the picture at its end', () => {
  fc.assert(
    fc.property(sections, (section) => {
      const [from, to] = section.slip!.ray;
      const slope = (to.height - from.height) / (to.along - from.along);
      const [[x0, y0], [x1, y1]] = sectionDrawing(section).ray!;
      expect([x0, -y0]).toEqual([from.along, from.height]);
      expect(-(y1 - y0)).toBeCloseTo(slope * (x1 - x0), 9);
      expect(x1).toBeGreaterThan(x0);
    }),
  );
});

test('the drop that stops it hangs from the far edge, as deep as it has to be and never into the ground', () => {
  fc.assert(
    fc.property(sections, (section) => {
      const { cure, cloth } = sectionDrawing(section);
      const depth = Math.max(0, ...Object.values(section.slip!.cure.drops ?? {}));
      expect(cure === null).toBe(depth === 0);
      if (cure === null) return;
      const [hung, end] = cure;
      expect(hung).toEqual(cloth[0][1]);
      expect(end[0]).toBe(hung[0]);
      expect(end[1]).toBeCloseTo(Math.min(0, hung[1] + depth), 9);
    }),
  );
});
