import { expect, test } from 'vitest';
import { directionsOf } from '../../../../engine/cast/passes.ts';
import { fanOf, PointRays } from '../../../../engine/cast/points/point-rays.ts';
import { skyPasses, skyRays } from '../../../../engine/cast/sky.ts';
import type { SpacePoint } from '../../../../engine/plan/geometry/vectors.ts';
import { clothCosine, clothMeets, slantShare } from '../../../../engine/scene/cloth-sheet.ts';
import type { Scene, ClothSheet } from '../../../../engine/scene/solids.ts';
import { randomFrom, drawnBetween } from '../../../parts/random.ts';

const OPEN: Scene = {
  upBearing: 17,
  skyline: [],
  surface: null,
  grounds: [],
  states: [[]],
  stateOfDay: new Uint16Array(366),
};

test(
  'cloth takes of a point’s rays what it takes of them one by one: under it, exactly under its corner or ' +
    'middle, beside it and over it (500 yards, seed 5)',
  () => {
    const random = randomFrom(5);
    const between = drawnBetween(random);
    const directions = directionsOf(OPEN, skyPasses(0));
    const { x, y, z } = directions;
    const fan = fanOf(directions);
    const { weight } = skyRays();
    let met = 0;
    for (let yard = 0; yard < 500; yard++) {
      let at: SpacePoint = [between(-2, 2), between(-2, 2), between(0, 3)];
      const sheets = Array.from({ length: 1 + (yard % 3) }, (): ClothSheet => ({
        kind: 'cloth',
        corner: [between(-4, 4), between(-4, 4), between(1, 3)],
        u: [between(-3, 3), between(-3, 3), between(-0.5, 0.5)],
        v: yard % 2 === 0 ? [0, 0, -between(0.2, 1)] : [between(-3, 3), between(-3, 3), 0],
        share: between(0, 0.9),
      }));
      // Every tenth point stands exactly under a corner, or under the middle.
      if (yard % 10 === 1) at = [sheets[0].corner[0], sheets[0].corner[1], 0.5];
      if (yard % 10 === 3)
        at = [
          sheets[0].corner[0] + (sheets[0].u[0] + sheets[0].v[0]) / 2,
          sheets[0].corner[1] + (sheets[0].u[1] + sheets[0].v[1]) / 2,
          0.5,
        ];
      // Straight up from under a corner the ray meets the cloth's very edge, where rounding decides.
      const straightUp = yard % 10 === 1 ? weight.length - 1 : -1;
      const brings = weight.map((each, k) => (random() < 0.3 || k === straightUp ? 0 : each * random()));
      const transmittance = (k: number) =>
        sheets.reduce((share, sheet) => {
          const ray: SpacePoint = [x[k], y[k], z[k]];
          return clothMeets(sheet, at, ray) ? share * slantShare(sheet.share, clothCosine(sheet, ray)) : share;
        }, 1);
      const taken = brings.reduce((sum, each, k) => sum + each * (1 - transmittance(k)), 0);
      expect(new PointRays(at, fan, brings).takenBy(sheets)).toBeCloseTo(taken, 12);
      if (taken > 0) met++;
    }
    expect(met).toBeGreaterThan(200);
  },
);
