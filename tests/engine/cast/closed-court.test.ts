import { describe, expect, test } from 'vitest';
import { castGrid } from '../../../engine/cast/grids/cast-grid.ts';
import type { Passes } from '../../../engine/cast/passes.ts';
import { createPointCaster } from '../../../engine/cast/points/point-caster.ts';
import { castRay } from '../../../engine/cast/points/ray.ts';
import type { Feature, PlanPoint } from '../../../engine/plan/types.ts';
import { buildScene } from '../../../engine/scene/build.ts';
import { randomFrom } from '../../parts/random.ts';
import { emptyPlan } from './random-plans.ts';

/** A court closed all round: out of it no beam lower than its walls' tops comes, not through its corners either. */
interface Court {
  readonly walls: Feature;
  readonly inner: readonly PlanPoint[];
}

const HEIGHT = 2;
const EYE = 0.5;
const DEGREES = 180 / Math.PI;

/** A closed wall about corners that run counter-clockwise, and where its inner faces meet. */
function walledCourt(corners: readonly PlanPoint[], thickness: number): Court {
  const inner = corners.map((corner, k): PlanPoint => {
    const [before, after] = [corners[(k + corners.length - 1) % corners.length], corners[(k + 1) % corners.length]];
    const [ux, uy] = unit(before, corner);
    const [vx, vy] = unit(corner, after);
    // Half the thickness away from both lines, to their left.
    const along = thickness / 2 / (1 + ux * vx + uy * vy);
    return [corner[0] - (uy + vy) * along, corner[1] + (ux + vx) * along];
  });
  const path = [...corners, corners[0]];
  return { walls: { id: 'walls', kind: 'wall', path, height: HEIGHT, thickness }, inner };
}

function unit(a: PlanPoint, b: PlanPoint): PlanPoint {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
}

/** Passes whose beam goes from a point exactly through each corner, low enough for the wall. */
function towards(corners: readonly PlanPoint[], [x, y]: PlanPoint): Passes {
  const count = corners.length;
  return {
    count,
    azimuth: Float64Array.from(corners, ([cx, cy]) => (Math.atan2(cx - x, cy - y) * DEGREES + 360) % 360),
    altitude: Float64Array.from(
      corners,
      ([cx, cy]) => 0.8 * Math.atan2(HEIGHT - EYE, Math.hypot(cx - x, cy - y)) * DEGREES,
    ),
    state: new Uint16Array(count),
  };
}

function randomCourts(): Court[] {
  const random = randomFrom(1909);
  return Array.from({ length: 150 }, (_, n): Court => {
    const [x, y] = [Math.round(-6000 + 3000 * random()) / 1000, Math.round(-5000 + 3000 * random()) / 1000];
    const thickness = 0.1 + 0.3 * random();
    if (n % 2 === 0) {
      const [wide, deep] = [3 + 7 * random(), 3 + 6 * random()];
      return walledCourt(
        [
          [x, y],
          [x + wide, y],
          [x + wide, y + deep],
          [x, y + deep],
        ],
        thickness,
      );
    }
    const sides = 3 + Math.floor(4 * random());
    const turn = random();
    const corners = Array.from({ length: sides }, (_, k): PlanPoint => {
      const angle = ((k + turn + 0.5 * random()) / sides) * 2 * Math.PI;
      return [x + 4 * Math.cos(angle), y + 4 * Math.sin(angle)];
    });
    return walledCourt(corners, thickness);
  });
}

describe('a court closed by opaque walls', () => {
  test('lets no low beam in through its inner corners, whichever way it is asked (150 courts)', () => {
    const random = randomFrom(7);
    for (const { walls, inner } of randomCourts()) {
      const scene = buildScene(emptyPlan([walls]));
      const weights = inner.map(() => random());
      const at = inner[0].map(
        (_, axis) =>
          inner.reduce((sum, corner, k) => sum + (weights[k] + 0.2) * corner[axis], 0) /
          weights.reduce((sum, weight) => sum + weight + 0.2, 0),
      );
      const passes = towards(inner, [at[0], at[1]]);
      for (let k = 0; k < passes.count; k++)
        expect(castRay(scene, [at[0], at[1], EYE], passes.azimuth[k], passes.altitude[k], '07-01').share).toBe(0);
      expect(Math.max(...createPointCaster(scene, passes).sharesAt([at[0], at[1], EYE]))).toBe(0);
    }
  });

  test('keeps the diagonals of its right corners dark, for a point and for a grid on them (100 courts)', () => {
    const random = randomFrom(41);
    const passes: Passes = {
      count: 8,
      azimuth: Float64Array.from({ length: 8 }, (_, k) => 45 + 90 * (k % 4)),
      altitude: Float64Array.from({ length: 8 }, (_, k) => (k < 4 ? 3 : 9)),
      state: new Uint16Array(8),
    };
    const open = [new Float64Array(8).fill(1)];
    for (let n = 0; n < 100; n++) {
      const [x, y] = [Math.round(-6000 + 3000 * random()) / 1000, Math.round(-5000 + 3000 * random()) / 1000];
      const side = Math.round(3000 + 2000 * random()) / 1000;
      const thickness = n % 2 === 0 ? 0.2 : 0.1 + 0.3 * random();
      const { walls } = walledCourt(
        [
          [x, y],
          [x + side, y],
          [x + side, y + side],
          [x, y + side],
        ],
        thickness,
      );
      const scene = buildScene(emptyPlan([walls]));
      const [low, wide] = [x + thickness / 2, side - thickness];
      const cell = wide / 16;
      // Cells' centres lie on both diagonals.
      const grid = { x0: low, y0: y + thickness / 2, cell, columns: 16, rows: 16, height: EYE };
      const [sun] = castGrid(scene, grid, passes, open);
      expect(Math.max(...sun)).toBe(0);
      const caster = createPointCaster(scene, passes);
      for (let i = 0; i < 16; i++) {
        const [px, py] = [grid.x0 + (i + 0.5) * cell, grid.y0 + (i + 0.5) * cell];
        expect(Math.max(...caster.sharesAt([px, py, EYE]))).toBe(0);
        for (let k = 0; k < 8; k++)
          expect(castRay(scene, [px, py, EYE], passes.azimuth[k], passes.altitude[k], '07-01').share).toBe(0);
      }
    }
  });
});
