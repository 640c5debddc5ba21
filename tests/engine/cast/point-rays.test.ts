import { expect, test } from 'vitest';
import { directionsOf } from '../../../engine/cast/passes.ts';
import { fanOf, PointRays } from '../../../engine/cast/point-rays.ts';
import { createPointCaster } from '../../../engine/cast/share.ts';
import { skyPasses, skyRays } from '../../../engine/cast/sky.ts';
import type { SpacePoint } from '../../../engine/plan/geometry.ts';
import type { Scene, Sheet } from '../../../engine/scene/solids.ts';
import { randomFrom } from './random-plans.ts';

const OPEN: Scene = { upBearing: 17, skyline: [], states: [[]], stateOfDay: new Uint16Array(366) };

test('cloth takes of a point’s rays what casting them with the cloth takes, from under it, beside it and over it (500 yards, seed 5)', () => {
  const random = randomFrom(5);
  const between = (low: number, high: number) => low + random() * (high - low);
  const passes = skyPasses(0);
  const fan = fanOf(directionsOf(OPEN, passes));
  const caster = createPointCaster(OPEN, passes);
  const { weight } = skyRays();
  let met = 0;
  for (let yard = 0; yard < 500; yard++) {
    const at: SpacePoint = [between(-2, 2), between(-2, 2), between(0, 3)];
    const sheets = Array.from({ length: 1 + (yard % 3) }, (): Sheet => ({
      kind: 'sheet', corner: [between(-4, 4), between(-4, 4), between(1, 3)], u: [between(-3, 3), between(-3, 3), between(-0.5, 0.5)],
      v: yard % 2 === 0 ? [0, 0, -between(0.2, 1)] : [between(-3, 3), between(-3, 3), 0], share: between(0, 0.9),
    }));
    const brings = weight.map((each) => (random() < 0.3 ? 0 : each * random()));
    const left = Float64Array.from(brings);
    caster.dim(at, sheets, left);
    const taken = brings.reduce((sum, each, k) => sum + each - left[k], 0);
    expect(new PointRays(at, fan, brings).takenBy(sheets)).toBeCloseTo(taken, 12);
    if (taken > 0) met++;
  }
  expect(met).toBeGreaterThan(200);
});
