import { expect, test } from 'vitest';
import { buildScene, castRay, demoPlan, plantPoints } from '../../../../engine/index.ts';
import type { Plan } from '../../../../engine/index.ts';
import { bodiesOf } from '../../../../engine/load/sun-eye/beam-bodies.ts';
import { beamFrame, pointOn, seenAt } from '../../../../engine/load/sun-eye/beam-frame.ts';
import type { Seen } from '../../../../engine/load/sun-eye/beam-frame.ts';
import { sunEye, sunEyes } from '../../../../engine/load/sun-eye/sun-eye.ts';

const DATE = '07-21';

/** Mean of castRay over the sunny side of a plant, point by point of its silhouette. */
function meanOfRays(plan: Plan, id: string, azimuth: number, altitude: number): number {
  const scene = buildScene(plan);
  const frame = beamFrame(azimuth, altitude, scene.upBearing);
  const feature = plan.features.find((one) => one.id === id);
  const crown = feature?.kind === 'plant' ? plantPoints(plan, feature).own : undefined;
  if (!crown) throw new Error(`No plant ${id}.`);
  const [body] = bodiesOf(crown, frame);
  const [right, up] = seenAt(frame, [crown.x, crown.y, (crown.base + crown.top) / 2]);
  const reach = Math.max(crown.radius, crown.top - crown.base);
  const shares: number[] = [];
  for (let k = 0; k < 90; k++) {
    for (let j = 0; j < 90; j++) {
      const seen: Seen = [right + reach * ((2 * k + 1) / 90 - 1), up + reach * ((2 * j + 1) / 90 - 1)];
      const [stretch] = body.stretches(seen);
      if (stretch) shares.push(castRay(scene, pointOn(frame, seen, stretch[1]), azimuth, altitude, DATE).share);
    }
  }
  return shares.reduce((sum, share) => sum + share, 0) / shares.length;
}

/** The courtyard at five hours: early, late morning, afternoon, and twice in the low west. */
const SUNS = [
  [78, 21],
  [123, 58],
  [262, 47],
  [274, 33],
  [281, 24],
] as const;

for (const name of ['courtyard', 'lane'] as const) {
  test(`in the ${name} the lit share of each plant's silhouette is castRay's mean over it, within 2 %`, () => {
    const plan = demoPlan(name);
    const plants = plan.features.filter(({ kind }) => kind === 'plant');
    const partly = new Set<string>();
    for (const [azimuth, altitude] of SUNS) {
      const { lit } = sunEye(plan, azimuth, altitude, DATE);
      for (const { id } of plants) {
        const share = lit.find((one) => one.id === id)?.share ?? NaN;
        expect(Math.abs(share - meanOfRays(plan, id, azimuth, altitude)), `${id} at ${azimuth}°`).toBeLessThan(0.02);
        if (share > 0.05 && share < 0.95) partly.add(`${id} ${azimuth}`);
      }
    }
    expect(partly.size).toBeGreaterThan(0);
  });
}

test('the right of the picture is the right of somebody who looks along the beam', () => {
  // The sun stands in the south: who looks north has east on the right.
  const frame = beamFrame(180, 40, 0);
  expect(seenAt(frame, [3, 0, 0])[0]).toBeCloseTo(3, 12);
  // Farther away and higher are both up the picture.
  expect(seenAt(frame, [0, 2, 0])[1]).toBeCloseTo(2 * Math.sin((40 * Math.PI) / 180), 12);
  expect(seenAt(frame, [0, 0, 2])[1]).toBeCloseTo(2 * Math.cos((40 * Math.PI) / 180), 12);
});

test('what stands nearer to the sun is painted later', () => {
  const post = (id: string, x: number, height: number) =>
    ({
      id,
      kind: 'wall',
      path: [
        [x, 4],
        [x, 5],
      ],
      height,
      thickness: 0.2,
    }) as const;
  const plan: Plan = { ...demoPlan('courtyard'), features: [post('west', 2, 1.4), post('east', 6, 1.7)] };
  const order = (azimuth: number): string[] =>
    sunEye({ ...plan, site: { ...plan.site, upBearing: 0 } }, azimuth, 12, DATE).painted.map(({ id }) => id);
  expect(order(270)).toEqual(['east', 'west']);
  expect(order(90)).toEqual(['west', 'east']);
});

test('the sun sees no yard at night or from behind the land, and sees it from straight overhead', () => {
  const plan = demoPlan('courtyard');
  const hills = { ...plan, site: { ...plan.site, skyline: [{ azimuth: 0, altitude: 30 }] } };
  const suns = [-5, 20, 90].map((altitude) => ({ azimuth: 180, altitude }));
  expect(sunEyes(hills, suns, DATE).map((seen) => seen !== null)).toEqual([false, false, true]);
});
