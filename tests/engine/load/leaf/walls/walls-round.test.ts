import { describe, expect, test } from 'vitest';
import { castRay } from '../../../../../engine/cast/points/ray.ts';
import { skyRays } from '../../../../../engine/cast/sky.ts';
import { heatDayOf } from '../../../../../engine/load/leaf/heat-day.ts';
import { blackBody } from '../../../../../engine/load/leaf/leaf-balance.ts';
import { surfaceTemperature } from '../../../../../engine/load/leaf/leaf.ts';
import { surroundingsAt } from '../../../../../engine/load/leaf/surroundings-at.ts';
import { createWallsRound } from '../../../../../engine/load/leaf/walls/walls-round.ts';
import { createSkyViewer } from '../../../../../engine/load/light/sky-viewer.ts';
import { plantRowOf } from '../../../../../engine/plan/catalogue/plants.ts';
import { colourOf } from '../../../../../engine/plan/defaults.ts';
import type { SpacePoint } from '../../../../../engine/plan/geometry/vectors.ts';
import type { Canopy, Cloth, Colour, Feature, Plan, PlanPoint } from '../../../../../engine/plan/types.ts';
import { buildScene, clothSheets } from '../../../../../engine/scene/build.ts';
import { planDirection } from '../../../../../engine/scene/direction.ts';
import { REFLECTS } from '../../../../../engine/scene/reflects.ts';
import { wall } from '../../../../parts/drawn.ts';
import { valueOf } from '../../../../parts/outcome.ts';
import { randomFrom, drawnBetween } from '../../../../parts/random.ts';
import { yardPlan } from '../../yard-plan.ts';

const coloured = (id: string, path: readonly PlanPoint[], height: number, colour?: Colour): Feature =>
  wall(id, path, { height, ...(colour === undefined ? {} : { colour }) });
const laidOut = (plan: Plan) => {
  const scene = buildScene(plan);
  return { plan, scene, heat: valueOf(heatDayOf(plan, scene, { kind: 'heatwave' })), sky: createSkyViewer(scene) };
};
const LEMON = plantRowOf(yardPlan(), 'lemon')!;

describe('what a wall hides', () => {
  // A wall without end, its face at x = 1, seen from the ground's level at x = 0: it stands up to an angle β.
  test.each([30, 45, 60])(
    'of the sky ½(1 − cos β) where it stands %d° high, within what 577 rays can tell',
    (angle) => {
      const height = Math.tan((angle * Math.PI) / 180);
      const path: PlanPoint[] = [
        [1.1, -900],
        [1.1, 900],
      ];
      const { scene, heat } = laidOut(yardPlan([coloured('w', path, height)]));
      const glow = createWallsRound(scene).at(heat, [0, 0, 1e-6]);
      expect(Math.abs((glow?.sky ?? 0) - 0.5 * (1 - Math.cos((angle * Math.PI) / 180)))).toBeLessThan(0.02);
    },
  );

  test.each([30, 45, 60])('of the ground as much, from as high over it: %d° down to its foot', (angle) => {
    const z = Math.tan((angle * Math.PI) / 180);
    const path: PlanPoint[] = [
      [1.1, -900],
      [1.1, 900],
    ];
    const { scene, heat } = laidOut(yardPlan([coloured('w', path, z)]));
    const glow = createWallsRound(scene).at(heat, [0, 0, z]);
    expect(Math.abs((glow?.ground ?? 0) - 0.5 * (1 - Math.cos((angle * Math.PI) / 180)))).toBeLessThan(0.02);
  });
});

test('without a wall or building nothing is thrown, and a hedge or a wall that light passes is none', () => {
  const path: PlanPoint[] = [
    [1, -9],
    [1, 9],
  ];
  const hedge: Feature = { id: 'h', kind: 'hedge', path, height: 2, thickness: 0.5, openness: 0 };
  const lattice: Feature = { id: 'l', kind: 'wall', path, height: 2, thickness: 0.1, openness: 0.2 };
  for (const features of [[], [hedge], [lattice]]) {
    const { scene, heat } = laidOut(yardPlan(features));
    expect(createWallsRound(scene).at(heat, [0, 0, 1])).toBeNull();
  }
});

test('what each wall throws alone adds up to what all of them throw, and names its wall', () => {
  const { scene, heat } = laidOut(
    yardPlan([
      coloured(
        'north',
        [
          [2, 6],
          [10, 6],
        ],
        2.5,
        'white',
      ),
      coloured(
        'west',
        [
          [3, 1],
          [3, 5],
        ],
        2,
        'dark',
      ),
      coloured(
        'behind',
        [
          [2, 7],
          [10, 7],
        ],
        2.5,
        'white',
      ),
    ]),
  );
  const walls = createWallsRound(scene);
  const all = walls.at(heat, [5, 4, 1])!;
  const each = walls.each(heat, [5, 4, 1]);
  expect([...each.keys()].toSorted()).toEqual(['north', 'west']);
  for (const key of ['light', 'above', 'below'] as const)
    all[key].forEach((value, k) =>
      expect([...each.values()].reduce((sum, glow) => sum + glow[key][k], 0)).toBeCloseTo(value, 9),
    );
  expect([...each.values()].reduce((sum, { sky }) => sum + sky, 0)).toBeCloseTo(all.sky, 12);
});

test('a white wall throws more light than a dark one, and a dark one glows more', () => {
  const path: PlanPoint[] = [
    [7, -30],
    [7, 30],
  ];
  const [white, dark] = (['white', 'dark'] as const).map((colour) => {
    const { scene, heat } = laidOut(yardPlan([coloured('w', path, 2.5, colour)]));
    return createWallsRound(scene).at(heat, [6, 4, 1])!;
  });
  const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);
  expect(sum(white.light)).toBeGreaterThan(3 * sum(dark.light));
  expect(sum(dark.above)).toBeGreaterThan(sum(white.above));
});

test('cloth or a crown before a wall hides it; behind it changes nothing', () => {
  const path: PlanPoint[] = [
    [8, -30],
    [8, 30],
  ];
  const screen = (x: number): Feature => ({
    id: 's',
    kind: 'screen',
    path: [
      [x, -30],
      [x, 30],
    ],
    height: 9,
    density: 0.5,
  });
  const seen = (features: readonly Feature[]) => {
    const { scene, heat } = laidOut(yardPlan(features));
    return createWallsRound(scene).at(heat, [6, 4, 1])?.sky ?? 0;
  };
  const bare = seen([coloured('w', path, 2.5)]);
  expect(bare).toBeGreaterThan(0.1);
  expect(seen([coloured('w', path, 2.5), screen(7)])).toBe(0);
  expect(seen([coloured('w', path, 2.5), screen(9)])).toBe(bare);
});

/** The rule read plainly: every ray by itself, what shines where it ends, no patches, no tables. */
function plainLeaf(yard: ReturnType<typeof laidOut>, point: SpacePoint, k: number, share: number): number {
  const { plan, scene, heat, sky } = yard;
  const { weight, azimuth, altitude } = skyRays();
  const moment = heat.moments[k];
  const sun = planDirection(heat.samples.azimuth[k], heat.samples.altitude[k], scene.upBearing);
  const walls = plan.features.filter((feature) => feature.kind === 'wall');
  let [hidden, buried, light, above, below] = [0, 0, 0, 0, 0];
  for (let r = 0; r < weight.length; r++) {
    for (const way of [1, -1]) {
      const [dx, dy, up] = planDirection(azimuth[r], altitude[r], scene.upBearing);
      const dz = way * up;
      let reach = dz < 0 ? -point[2] / dz : Infinity;
      let met: { readonly reflects: number; readonly normal: SpacePoint } | null = null;
      for (const wallDrawn of walls) {
        const { path, thickness, height } = wallDrawn;
        const colour = colourOf(wallDrawn);
        const [[ax, ay], [bx, by]] = path;
        const length = Math.hypot(bx - ax, by - ay);
        const [ex, ey] = [(bx - ax) / length, (by - ay) / length];
        // In the wall's own axes: along from its start, and off from its middle line.
        const along = (point[0] - ax) * ex + (point[1] - ay) * ey;
        const off = (point[1] - ay) * ex - (point[0] - ax) * ey;
        const [da, dof] = [dx * ex + dy * ey, dy * ex - dx * ey];
        const faces: [number, SpacePoint][] = [
          [(thickness / 2 - off) / dof, [-ey, ex, 0]],
          [(-thickness / 2 - off) / dof, [ey, -ex, 0]],
          [-along / da, [-ex, -ey, 0]],
          [(length - along) / da, [ex, ey, 0]],
          [(height - point[2]) / dz, [0, 0, 1]],
        ];
        for (const [t, normal] of faces) {
          if (!(t > 1e-9 && t < reach) || normal[0] * dx + normal[1] * dy + normal[2] * dz >= 0) continue;
          const [s, w, z] = [along + t * da, off + t * dof, point[2] + t * dz];
          const inside = s > -1e-9 && s < length + 1e-9 && Math.abs(w) < thickness / 2 + 1e-9 && z < height + 1e-9;
          if (!inside || z < 0) continue;
          reach = t;
          met = { reflects: REFLECTS[colour], normal };
        }
      }
      if (met === null) continue;
      const { normal, reflects } = met;
      const q: SpacePoint = [
        point[0] + reach * dx + 0.01 * normal[0],
        point[1] + reach * dy + 0.01 * normal[1],
        point[2] + reach * dz + 0.01 * normal[2],
      ];
      const reached = castRay(scene, q, heat.samples.azimuth[k], heat.samples.altitude[k], heat.day.monthDay).share;
      const facing = Math.max(0, normal[0] * sun[0] + normal[1] * sun[1] + normal[2] * sun[2]);
      const on = reached * moment.beam * facing + 0.5 * moment.diffuse;
      const glow = blackBody(moment.air + ((1 - reflects) * on) / 17);
      light += weight[r] * reflects * on;
      if (way > 0) {
        hidden += weight[r];
        above += weight[r] * glow;
      } else {
        buried += weight[r];
        below += weight[r] * glow;
      }
    }
  }
  const flat = (value: number) => new Float64Array(k + 1).fill(value);
  const around = {
    sky: sky.at(point, heat.state),
    groundRise: 18,
    walls: { sky: hidden, ground: buried, light: flat(light), above: flat(above), below: flat(below) },
  };
  return surfaceTemperature(moment, LEMON, 'thirsty', share, around, undefined, k);
}

/** A court of walls of any colour and turn, its sides now and then open. */
function randomCourt(random: () => number) {
  const between = drawnBetween(random);
  const [wide, deep] = [between(3, 9), between(3, 9)];
  const colours: readonly Colour[] = ['white', 'light', 'mid', 'dark'];
  const side = (id: string, a: PlanPoint, b: PlanPoint): Feature[] =>
    random() < 0.2 ? [] : [coloured(id, [a, b], between(1, 5), colours[Math.floor(random() * 4)])];
  const features = [
    ...side('s', [0.2, 0], [wide - 0.2, 0]),
    ...side('n', [0.2, deep], [wide - 0.2, deep]),
    ...side('w', [0, 0.2], [0, deep - 0.2]),
    ...side('e', [wide, 0.2], [wide, deep - 0.2]),
  ];
  const plan = yardPlan(features);
  return { wide, deep, between, yard: laidOut({ ...plan, site: { ...plan.site, upBearing: between(-180, 180) } }) };
}

/** How far the leaf is from the rule read plainly, in a sample of the day. [K] */
function missAt(yard: ReturnType<typeof laidOut>, point: SpacePoint, k: number): number {
  const around = surroundingsAt(yard.sky, yard.heat, point);
  const share = yard.heat.caster.sharesAt(point)[k];
  const leaf = surfaceTemperature(yard.heat.moments[k], LEMON, 'thirsty', share, around, undefined, k);
  return Math.abs(leaf - plainLeaf(yard, point, k, share));
}

test('on 50 random courts a leaf is within 0.2 K of the rule read ray by ray (seeds 1 to 50)', () => {
  for (let seed = 1; seed <= 50; seed++) {
    const random = randomFrom(seed);
    const { wide, deep, between, yard } = randomCourt(random);
    const point: SpacePoint = [between(0.4, wide - 0.4), between(0.4, deep - 0.4), between(0.3, 3)];
    for (let n = 0; n < 3; n++) {
      const k = Math.floor(random() * yard.heat.samples.count);
      expect(missAt(yard, point, k), `seed ${seed}, sample ${k}`).toBeLessThan(0.2);
    }
  }
});

test('so is one that touches a wall, or nearly (seeds 51 to 100)', () => {
  for (let seed = 51; seed <= 100; seed++) {
    const random = randomFrom(seed);
    const { deep, between, yard } = randomCourt(random);
    const off = 0.1 + 0.02 + 0.3 * random() ** 2;
    const point: SpacePoint = [off, between(0.4, deep - 0.4), between(0.1, 1.2)];
    for (let n = 0; n < 3; n++) {
      const k = Math.floor(random() * yard.heat.samples.count);
      expect(missAt(yard, point, k), `seed ${seed}, sample ${k}`).toBeLessThan(0.2);
    }
  }
});

describe('under cloth that is tried', () => {
  const yard = yardPlan([
    coloured(
      'north',
      [
        [1, 7],
        [11, 7],
      ],
      2.6,
      'white',
    ),
    coloured(
      'west',
      [
        [1, 1],
        [1, 7],
      ],
      2.2,
      'dark',
    ),
    {
      id: 'house',
      kind: 'building',
      outline: [
        [9, 1],
        [12, 1],
        [12, 4],
        [9, 4],
      ],
      height: 3,
      eaves: 0.4,
    },
  ]);
  const roof: Feature = {
    id: 'r',
    kind: 'canopy',
    center: [6, 5],
    length: 2.5,
    width: 3,
    turn: 20,
    height: 2.1,
    density: 0.6,
    drops: [{ side: 'left', depth: 1, density: 0.5 }],
  };
  const screen: Feature = {
    id: 's',
    kind: 'screen',
    path: [
      [3, 3],
      [4, 6],
    ],
    bottom: 0.1,
    height: 1.9,
    density: 0.7,
  };
  const far: Feature = { ...roof, center: [60, 60] };
  const points: SpacePoint[] = [
    [6, 4.2, 1],
    [2, 5, 0.4],
    [8.4, 2, 1.4],
    [6, 6.4, 2.4],
  ];

  test('walls throw what they throw in the yard with that cloth in it, to the bit; worked out from the change, to 1e-9', () => {
    const { scene, heat } = laidOut(yard);
    const bare = createWallsRound(scene);
    for (const cloth of [[roof], [screen], [roof, screen]]) {
      const built = laidOut({ ...yard, features: [...yard.features, ...cloth] });
      const under = bare.under(cloth.flatMap((each) => clothSheets(each as Cloth)));
      const anew = createWallsRound(built.scene);
      let touched = 0;
      for (const point of points) {
        const wanted = anew.at(heat, point);
        expect(under.at(heat, point)).toEqual(wanted);
        const [changed] = under.changedOn([heat], point);
        for (const key of ['light', 'above', 'below'] as const)
          changed?.[key].forEach((value, k) => expect(value).toBeCloseTo(wanted?.[key][k] ?? NaN, 9));
        expect(changed?.sky).toBeCloseTo(wanted?.sky ?? NaN, 12);
        expect(changed?.ground).toBeCloseTo(wanted?.ground ?? NaN, 12);
        if (changed !== bare.at(heat, point)) touched++;
      }
      expect(touched).toBeGreaterThan(1);
    }
  });

  test('cloth that touches nothing leaves the very light there was', () => {
    const { scene, heat } = laidOut(yard);
    const bare = createWallsRound(scene);
    const under = bare.under(clothSheets(far as Canopy));
    for (const point of points) {
      expect(under.at(heat, point)).toBe(bare.at(heat, point));
      expect(under.changedOn([heat], point)[0]).toBe(bare.at(heat, point));
    }
  });

  test('days under further cloth shine as each alone does, whichever of them was asked for before', () => {
    const [june] = yard.climate.months;
    const { plan, scene } = laidOut({
      ...yard,
      season: { ...yard.season, to: '07-31' },
      climate: { ...yard.climate, months: [june, { ...june, month: 7, high: june.high + 4 }] },
    });
    const days = [6, 7].map((month) => valueOf(heatDayOf(plan, scene, { kind: 'heatDay', month })));
    const sheets = clothSheets(roof as Canopy);
    for (const before of days) {
      const bare = createWallsRound(scene);
      for (const point of points) bare.at(before, point);
      const under = bare.under(sheets);
      for (const point of points)
        under.changedOn(days, point).forEach((glow, d) => {
          const alone = createWallsRound(scene).under(sheets).at(days[d], point);
          expect(glow?.light.length).toBe(alone?.light.length);
          glow?.light.forEach((value, n) => expect(value).toBeCloseTo(alone?.light[n] ?? NaN, 9));
          glow?.below.forEach((value, n) => expect(value).toBeCloseTo(alone?.below[n] ?? NaN, 9));
        });
    }
  });

  test('days asked for together shine as each alone does', () => {
    const { plan, scene } = laidOut(yard);
    const days = [6, 6].map((month) => valueOf(heatDayOf(plan, scene, { kind: 'heatDay', month })));
    const together = createWallsRound(scene).on(days, points[0]);
    days.forEach((day, d) => expect(createWallsRound(scene).at(day, points[0])).toEqual(together[d]));
  });
});
