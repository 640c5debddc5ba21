import { describe, expect, test } from 'vitest';
import { castRay } from '../../../../engine/cast/points/ray.ts';
import type { Feature, Plan } from '../../../../engine/plan/types.ts';
import { buildScene } from '../../../../engine/scene/build.ts';
import { emptyPlan } from '../random-plans.ts';

const DAY = '07-01';

function shareOf(
  features: readonly Feature[],
  point: [number, number, number],
  azimuth: number,
  altitude: number,
  monthDay = DAY,
): number {
  return castRay(buildScene(emptyPlan(features)), point, azimuth, altitude, monthDay).share;
}

describe('castRay, walls and hedges', () => {
  const hedge: Feature = {
    id: 'h',
    kind: 'hedge',
    path: [
      [-3, 2],
      [3, 2],
      [3, 6],
    ],
    height: 1.5,
    thickness: 0.6,
    openness: 0.3,
  };

  test('a wall stops the beam below its top and not above it', () => {
    const wall: Feature = {
      id: 'w',
      kind: 'wall',
      path: [
        [-5, -2],
        [5, -2],
      ],
      height: 1.7,
      thickness: 0.2,
    };
    // The far face is 1.9 m away; its top stands atan(1.7/1.9) = 41.82° up.
    expect(shareOf([wall], [0, 0, 0], 180, 41.8)).toBe(0);
    expect(shareOf([wall], [0, 0, 0], 180, 41.85)).toBe(1);
  });

  test('each separate passage through one hedge takes its share once more', () => {
    expect(shareOf([hedge], [0, 0, 0.2], 0, 20)).toBeCloseTo(0.3, 12);
    // Along y = 4 eastward only the short leg is in the way; north-east from (−1, 0.5) it is the long leg, then the
    // short one.
    expect(shareOf([hedge], [0, 4, 0.2], 90, 10)).toBeCloseTo(0.3, 12);
    expect(shareOf([hedge], [-1, 0.5, 0.2], 45, 5)).toBeCloseTo(0.09, 12);
  });

  test('at a bend two rectangles that overlap count once', () => {
    expect(shareOf([hedge], [2, 1, 0.2], 45, 5)).toBeCloseTo(0.3, 12);
  });

  test('a straight path drawn in two pieces is the straight path', () => {
    const whole: Feature = {
      ...hedge,
      path: [
        [-3, 2],
        [3, 2],
      ],
    };
    const pieces: Feature = {
      ...hedge,
      path: [
        [-3, 2],
        [-0.4, 2],
        [-0.4, 2],
        [3, 2],
      ],
    };
    for (const azimuth of [300, 330, 0, 10, 45])
      expect(shareOf([pieces], [0, 0, 0.2], azimuth, 20)).toBe(shareOf([whole], [0, 0, 0.2], azimuth, 20));
  });

  test('ends are cut square, joints carried on by half the thickness, closed paths have no ends', () => {
    const open: Feature = {
      id: 'w',
      kind: 'wall',
      path: [
        [0, 0],
        [4, 0],
        [4, 3],
        [0, 3],
      ],
      height: 2,
      thickness: 0.4,
    };
    const closed: Feature = {
      ...open,
      path: [
        [0, 0],
        [4, 0],
        [4, 3],
        [0, 3],
        [0, 0],
      ],
    };
    const above = (feature: Feature, x: number, y: number) => shareOf([feature], [x, y, 0], 0, 89.9999);
    expect(above(open, 4.15, -0.15)).toBe(0);
    expect(above(open, -0.15, 0)).toBe(1);
    expect(above(closed, -0.15, -0.15)).toBe(0);
    expect(above(closed, -0.15, 1.5)).toBe(0);
    expect(above(open, -0.15, 1.5)).toBe(1);
  });

  test('a point inside a hedge has it in the way once', () => {
    expect(shareOf([hedge], [0, 2, 0.2], 0, 45)).toBeCloseTo(0.3, 12);
  });

  test('a point on a wall’s lit face is lit, on its far face dark', () => {
    const wall: Feature = {
      id: 'w',
      kind: 'wall',
      path: [
        [-5, 0.3],
        [5, 0.3],
      ],
      height: 2,
      thickness: 0.1,
    };
    expect(shareOf([wall], [0.7, 0.25, 0.5], 180, 30)).toBe(1);
    expect(shareOf([wall], [0.7, 0.35, 0.5], 180, 30)).toBe(0);
  });
});

describe('castRay, buildings', () => {
  const house: Feature = {
    id: 'b',
    kind: 'building',
    outline: [
      [0, 0],
      [6, 0],
      [6, 2],
      [2, 2],
      [2, 5],
      [0, 5],
    ],
    height: 3,
    eaves: 0.5,
  };

  test('a notch in the outline is open, from either winding', () => {
    const plain: Feature = { id: 'b', kind: 'building', outline: house.outline, height: 3 };
    const reversed: Feature = { ...plain, outline: [...house.outline].reverse() };
    for (const feature of [plain, reversed]) {
      expect(shareOf([feature], [3, 3, 0], 20, 30)).toBe(1);
      expect(shareOf([feature], [3, 3, 0], 180, 30)).toBe(0);
    }
  });

  test('eaves shade the foot of their own wall, out to their edge and past the corners', () => {
    expect(shareOf([house], [5, -0.3, 1], 180, 85)).toBe(0);
    expect(shareOf([house], [5, -0.3, 1], 180, 80)).toBe(1);
    expect(shareOf([house], [6.45, -0.45, 1], 180, 89.99)).toBe(0);
    expect(shareOf([house], [6.55, -0.45, 1], 180, 89.99)).toBe(1);
    expect(shareOf([house], [2.4, 3, 1], 180, 89.99)).toBe(0);
  });

  test('a point above the roof is open', () => {
    expect(shareOf([house], [5, 1, 3], 180, 10)).toBe(1);
  });
});

describe('castRay, trees', () => {
  const tree: Feature = {
    id: 't',
    kind: 'tree',
    at: [1, 2],
    height: 6,
    crownWidth: 4,
    crownBase: 2,
    openness: 0.2,
    leafless: { from: '11-15', to: '03-01', openness: 0.8 },
  };

  test('straight down through the middle the crown takes its openness, as far off the axis a chord’s part of it', () => {
    // Past the trunk's 0.18 m.
    const chord = Math.sqrt(1 - (0.5 / 2) ** 2);
    expect(shareOf([tree], [1.5, 2, 0], 0, 90)).toBeCloseTo(0.2 ** chord, 10);
    expect(shareOf([tree], [1, 2, 2], 0, 90)).toBeCloseTo(0.2, 10);
    expect(shareOf([tree], [1, 2, 4], 0, 90)).toBeCloseTo(0.2 ** 0.5, 10);
  });

  test('a cone’s vertical chord ends at its flank, a column’s at its top', () => {
    expect(shareOf([{ ...tree, shape: 'cone' }], [1.5, 2, 0], 0, 90)).toBeCloseTo(0.2 ** 0.75, 10);
    expect(shareOf([{ ...tree, shape: 'column' }], [2.9, 2, 0], 0, 90)).toBeCloseTo(0.2, 10);
    expect(shareOf([{ ...tree, shape: 'column' }], [3.1, 2, 0], 0, 90)).toBe(1);
  });

  test('a level chord through a column is its width over its depth', () => {
    // At 0.001° the beam runs 4 m of crown 4 m deep.
    expect(shareOf([{ ...tree, shape: 'column' }], [1, -3, 3], 0, 0.001)).toBeCloseTo(0.2, 6);
  });

  test('the trunk is opaque, 3 % of the height to either side, and stays when the leaves are gone', () => {
    expect(shareOf([tree], [1.17, 0, 0], 0, 20, '01-05')).toBe(0);
    expect(shareOf([tree], [1.19, 0, 0], 0, 20, '01-05')).toBe(1);
  });

  test('leafless days, both ends included and across New Year, have the openness they name', () => {
    const at = (monthDay: string) => shareOf([tree], [1, 2, 2], 0, 90, monthDay);
    expect(at('11-14')).toBeCloseTo(0.2, 10);
    expect(at('11-15')).toBeCloseTo(0.8, 10);
    expect(at('02-29')).toBeCloseTo(0.8, 10);
    expect(at('03-01')).toBeCloseTo(0.8, 10);
    expect(at('03-02')).toBeCloseTo(0.2, 10);
  });

  test('a crown of openness 0 stops every beam that runs inside it', () => {
    expect(shareOf([{ ...tree, openness: 0 }], [2.99, 2, 3.9], 0, 90)).toBe(0);
    expect(shareOf([{ ...tree, openness: 0 }], [3.01, 2, 3.9], 0, 90)).toBe(1);
  });
});

/** What cloth lets through at an angle from its normal whose cosine this is: it is thicker along the beam. */
function slanted(share: number, cosine: number): number {
  return share ** (1 / Math.max(cosine, 0.26));
}

const sin = (degrees: number) => Math.sin((degrees * Math.PI) / 180);
const cos = (degrees: number) => Math.cos((degrees * Math.PI) / 180);

describe('castRay, cloth', () => {
  const canopy: Feature = {
    id: 'c',
    kind: 'canopy',
    center: [2, 3],
    length: 4,
    width: 2,
    turn: 90,
    height: 2,
    rise: 1,
    density: 0.6,
    drops: [{ side: 'left', depth: 0.5, density: 0.25 }],
  };

  test('front is along turn, the roof rises towards it', () => {
    // Turned to +x: the front edge is at x = 4, 3 m high; the back edge at x = 0, 2 m high: a slope of 1 in 4.
    const upright = 4 / Math.hypot(4, 1);
    expect(shareOf([canopy], [3.9, 3, 2.98], 0, 90)).toBe(1);
    expect(shareOf([canopy], [3.9, 3, 2.97], 0, 90)).toBeCloseTo(slanted(0.4, upright), 12);
    expect(shareOf([canopy], [0.1, 3, 2.02], 0, 90)).toBeCloseTo(slanted(0.4, upright), 12);
    expect(shareOf([canopy], [-0.1, 3, 0], 0, 90)).toBe(1);
  });

  test('a beam that meets a drop and the roof meets two sheets', () => {
    // Turned to +x, left is +y: the drop hangs at y = 4.
    const roof = (4 / Math.hypot(4, 1)) * sin(50);
    expect(shareOf([canopy], [2, 5, 1.1], 180, 50)).toBeCloseTo(slanted(0.75, cos(50)) * slanted(0.4, roof), 12);
    expect(shareOf([canopy], [2, 5, 1.9], 180, 10)).toBeCloseTo(slanted(0.75, cos(10)), 12);
    // Under the drop's foot, which follows the slope: 2.0 m high at the middle.
    expect(shareOf([canopy], [2, 4.5, 1.5], 180, 44)).toBeCloseTo(slanted(0.4, (4 / Math.hypot(4, 1)) * sin(44)), 12);
  });

  test('measured density replaces the roof’s, a drop keeps its own', () => {
    const roof = (4 / Math.hypot(4, 1)) * sin(50);
    expect(shareOf([{ ...canopy, measuredDensity: 0.7 }], [2, 5, 1.1], 180, 50)).toBeCloseTo(
      slanted(0.75, cos(50)) * slanted(0.3, roof),
      12,
    );
  });

  test('cloth that is down stops nothing, drops neither', () => {
    const seasonal: Feature = { ...canopy, up: { from: '05-20', to: '09-10' } };
    expect(shareOf([seasonal], [2, 5, 1.1], 180, 50, '05-20')).toBe(shareOf([canopy], [2, 5, 1.1], 180, 50));
    expect(shareOf([canopy], [2, 5, 1.1], 180, 50)).toBeLessThan(0.3);
    expect(shareOf([seasonal], [2, 5, 1.1], 180, 50, '05-19')).toBe(1);
  });

  test('a screen is one sheet a segment, from its bottom up', () => {
    const screen: Feature = {
      id: 's',
      kind: 'screen',
      path: [
        [0, 2],
        [0, -2],
        [3, -2],
      ],
      bottom: 0.4,
      height: 2,
      density: 0.5,
    };
    expect(shareOf([screen], [1, 0, 0.2], 270, 5)).toBe(1);
    expect(shareOf([screen], [1, 0, 0.4], 270, 5)).toBeCloseTo(slanted(0.5, cos(5)), 12);
    expect(shareOf([screen], [-1, -1, 0.5], 135, 5)).toBeCloseTo(slanted(0.5, cos(5) * cos(45)) ** 2, 12);
    expect(shareOf([{ ...screen, measuredDensity: 0.2 }], [1, 0, 0.4], 270, 5)).toBeCloseTo(slanted(0.8, cos(5)), 12);
  });

  test('at 60° from its normal cloth of 50 % passes a quarter; nearer its plane than 75° it gets no thicker', () => {
    const level: Feature = {
      id: 'c',
      kind: 'canopy',
      center: [0, 0],
      length: 90,
      width: 90,
      height: 2,
      density: 0.5,
    };
    expect(shareOf([level], [0, 0, 0.5], 120, 90)).toBeCloseTo(0.5, 12);
    expect(shareOf([level], [0, 0, 0.5], 120, 30)).toBeCloseTo(0.25, 12);
    expect(shareOf([level], [0, 0, 0.5], 120, 12)).toBeCloseTo(0.5 ** (1 / 0.26), 12);
    expect(shareOf([level], [0, 0, 0.5], 120, 4)).toBeCloseTo(0.5 ** (1 / 0.26), 12);
  });
});

describe('castRay, plants', () => {
  const corn: Feature = {
    id: 'corn',
    kind: 'bed',
    outline: [
      [0, 0],
      [4, 0],
      [4, 1],
      [1, 1],
      [1, 3],
      [0, 3],
    ],
    plantHeight: 2,
    openness: 0.3,
  };
  const vine: Feature = {
    id: 'vine',
    kind: 'plant',
    at: [0, 0],
    height: 2,
    spread: 1,
    foliageFrom: 0.4,
  };

  test('a bed thins a beam by its length inside over the plants’ height, however its outline is bent', () => {
    // Straight up from its ground: the whole height. Along the long arm at 45°: as long as it is high, over its root.
    expect(shareOf([corn], [2, 0.5, 0], 0, 90)).toBeCloseTo(0.3, 12);
    expect(shareOf([corn], [2, 0.5, 1], 0, 90)).toBeCloseTo(0.3 ** 0.5, 12);
    expect(shareOf([corn], [2, 0.5, 0], 90, 45)).toBeCloseTo(0.3 ** Math.SQRT2, 12);
    // Through the short arm, out over the notch, and on above the long one: 1 m of level way, at 30°.
    expect(shareOf([corn], [-0.5, 2, 0.2], 90, 30)).toBeCloseTo(0.3 ** (1 / cos(30) / 2), 12);
    expect(shareOf([corn], [2, 2, 0.2], 0, 40)).toBe(1);
  });

  test('on its top, and beside it with the sun behind one’s back, a bed takes nothing', () => {
    expect(shareOf([corn], [2, 0.5, 2], 90, 20)).toBe(1);
    expect(shareOf([corn], [4.1, 0.5, 0.1], 90, 20)).toBe(1);
  });

  test('a plant is a round crown of openness 0.15 without a trunk', () => {
    expect(shareOf([vine], [0, 0, 0], 0, 90)).toBeCloseTo(0.15, 12);
    // Level through its middle, 1.2 m up: 1 m of leaves over 1.6 m of crown.
    expect(shareOf([vine], [-3, 0, 1.2 - 3 * Math.tan((1 * Math.PI) / 180)], 90, 1)).toBeCloseTo(0.15 ** (1 / 1.6), 2);
    expect(shareOf([vine], [-0.2, 0, 0.1], 90, 20)).toBe(1);
  });

  test('below 0.6 m, or told not to, plants and beds shade nothing', () => {
    expect(shareOf([{ ...corn, plantHeight: 0.59 }], [2, 0.5, 0], 0, 90)).toBe(1);
    expect(shareOf([{ ...corn, plantHeight: 0.6 }], [2, 0.5, 0], 0, 90)).toBeCloseTo(0.3, 12);
    expect(shareOf([{ ...corn, shades: false }], [2, 0.5, 0], 0, 90)).toBe(1);
    expect(shareOf([{ ...vine, height: 0.5, foliageFrom: 0.1 }], [0, 0, 0], 0, 90)).toBe(1);
    expect(shareOf([{ ...vine, shades: false }], [0, 0, 0], 0, 90)).toBe(1);
  });
});

describe('castRay, the sky’s edge', () => {
  const plan: Plan = emptyPlan([
    {
      id: 'w',
      kind: 'wall',
      path: [
        [-5, -2],
        [5, -2],
      ],
      height: 1.7,
      thickness: 0.2,
      openness: 0.25,
    },
  ]);
  const scene = buildScene({
    ...plan,
    site: {
      ...plan.site,
      skyline: [
        { azimuth: 0, altitude: 0 },
        { azimuth: 180, altitude: 12 },
      ],
    },
  });

  test('at or below the skyline nothing comes, and the skyline is named first', () => {
    expect(castRay(scene, [0, 0, 0], 180, 12, DAY)).toEqual({
      share: 0,
      blockers: [
        { id: 'skyline', transmittance: 0 },
        { id: 'w', transmittance: 0.25 },
      ],
    });
    expect(castRay(scene, [0, 0, 0], 180, 12.01, DAY)).toEqual({
      share: 0.25,
      blockers: [{ id: 'w', transmittance: 0.25 }],
    });
    expect(castRay(scene, [0, 0, 0], 90, 5.9, DAY).share).toBe(0);
    expect(castRay(scene, [0, 0, 0], 90, 6.1, DAY).share).toBe(1);
  });

  test('a sun below the horizon shines on nothing', () => {
    expect(castRay(scene, [0, 0, 0], 0, -3, DAY).share).toBe(0);
  });

  test('an open point has no blockers', () => {
    expect(castRay(scene, [0, 0, 0], 0, 30, DAY)).toEqual({ share: 1, blockers: [] });
  });
});
