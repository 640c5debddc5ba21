import { describe, expect, it } from 'vitest';
import { castRay } from '../../../engine/cast/points/ray.ts';
import { spotOf } from '../../../engine/load/light/spot-of.ts';
import { plantLoadsOf } from '../../../engine/load/load-of.ts';
import type { PlantLoad } from '../../../engine/load/types.ts';
import { plantPoints, potPoints } from '../../../engine/load/verdict/plant-points.ts';
import type { Bed, Canopy, Feature, Plan, Plant, Tree } from '../../../engine/plan/types.ts';
import { buildScene } from '../../../engine/scene/build.ts';
import { samplesOf } from '../../../engine/sun/samples.ts';
import { valueOf } from '../../parts/outcome.ts';
import { yardPlan } from './yard-plan.ts';

const LEMON: Plant = {
  id: 'lemon',
  kind: 'plant',
  at: [6, 4],
  height: 1.8,
  spread: 1.6,
  foliageFrom: 0.2,
  plant: 'lemon',
};
const POT: Plant = {
  id: 'pot',
  kind: 'plant',
  at: [6, 4],
  height: 1.1,
  spread: 0.5,
  plant: 'lemon',
  container: true,
  pot: { width: 0.5, height: 0.4 },
};

const loads = (plan: Plan) => valueOf(plantLoadsOf(plan));
const one = (features: readonly Feature[], change?: Parameters<typeof yardPlan>[1]) =>
  loads(yardPlan(features, change)).at(-1) as PlantLoad;
const side = (plant: PlantLoad, bearing: number | 'top') => {
  const found = plant.sides?.find((each) => each.side === bearing);
  if (!found) throw new Error(`No side ${bearing}.`);
  return found;
};

describe('where a plant is judged', () => {
  it('a hair over its top, and a hair outside its widest ring at eight true bearings', () => {
    const base = yardPlan();
    const plan = { ...base, site: { ...base.site, upBearing: 90 } };
    const { points, own } = plantPoints(plan, LEMON);
    expect(points.map((point) => point.side)).toEqual(['top', 0, 45, 90, 135, 180, 225, 270, 315]);
    expect(points[0].point).toEqual([6, 4, 1.81]);
    // +y points east, so north lies along −x.
    expect(points[1].point).toEqual([expect.closeTo(6 - 0.81, 12), expect.closeTo(4, 12), 1]);
    expect(points[3].point).toEqual([expect.closeTo(6, 12), expect.closeTo(4.81, 12), 1]);
    expect(own).toMatchObject({ kind: 'round', radius: 0.8, base: 0.2, top: 1.8, openness: 0 });
  });

  it('a cone’s ring lies just over its foot, a column’s half-way up; a tree’s own crown is no extra one', () => {
    const tree: Tree = {
      id: 't',
      kind: 'tree',
      at: [2, 3],
      height: 5,
      crownWidth: 2.4,
      crownBase: 1,
      openness: 0.1,
      plant: 'olive',
    };
    expect(plantPoints(yardPlan(), { ...tree, shape: 'cone' }).points[1].point[2]).toBeCloseTo(1.01, 12);
    expect(plantPoints(yardPlan(), { ...tree, shape: 'column' }).points[1].point[2]).toBe(3);
    expect(plantPoints(yardPlan(), tree).own).toBeUndefined();
  });

  it('foliage begins at a fifth of the height, of a potted plant not inside its pot', () => {
    const { foliageFrom: _, ...bare } = LEMON;
    expect(plantPoints(yardPlan(), bare).own?.base).toBeCloseTo(0.36, 12);
    expect(plantPoints(yardPlan(), POT).own?.base).toBeCloseTo(0.4, 12);
  });

  it('a pot half-way up its wall, eight bearings', () => {
    const points = potPoints(yardPlan(), POT);
    expect(points).toHaveLength(8);
    expect(points[2].point).toEqual([expect.closeTo(6.26, 12), expect.closeTo(4, 12), 0.2]);
  });
});

describe('a plant that even the shade of a heatwave is too hot for', () => {
  const tender: Plan['plants'] = [
    {
      id: 'tender',
      name: 'Tender',
      sunHours: [0, 12],
      heatLimit: 38,
      limitOf: 'leaf',
      afternoonShade: 'no',
      leafWidth: 0.05,
    },
  ];
  const PLANT: Plant = { id: 'tender', kind: 'plant', at: [6, 4], height: 0.5, spread: 0.4, plant: 'tender' };
  // 10 m high from 1 m west of the plant on: the sun is behind it as soon as it stands below 84° in the west.
  const tower: Feature = {
    id: 'tower',
    kind: 'building',
    outline: [
      [1, -60],
      [5, -60],
      [5, 60],
      [1, 60],
    ],
    height: 10,
  };

  it('is told of the hours that the sun is on it, though its leaves stay too hot for hours after', () => {
    const { when, peak } = one([tower, PLANT], { plants: tender });
    // Solar noon is at 12:28 there and then.
    expect(when && when.from < '10:30').toBe(true);
    expect(when && when.to >= '12:00' && when.to <= '13:00').toBe(true);
    // The air of the heatwave day is at its warmest, 46 °C, at 14 h true solar time.
    expect(peak).toBeGreaterThan(40);
  });

  it('and where the sun never comes, of those in the shade', () => {
    const house = (id: string, x: number): Feature => ({
      ...tower,
      id,
      outline: [
        [x, -60],
        [x + 4, -60],
        [x + 4, 60],
        [x, 60],
      ],
    });
    const lid: Canopy = { id: 'lid', kind: 'canopy', center: [6, 4], length: 130, width: 4, height: 9, density: 1 };
    const { when, verdict } = one([house('west', 1), house('east', 7), lid, PLANT], { plants: tender });
    expect(verdict).not.toBe('fine');
    expect(when && when.to > '15:00').toBe(true);
  });
});

describe('a plant in the open', () => {
  const plant = one([LEMON]);

  it(
    'is warmest on its east side before its top, and on its west side not before it; a side that is never too ' +
      'hot has no such hour',
    () => {
      const minutesOf = (bearing: number | 'top') =>
        Number(side(plant, bearing).peakAt?.slice(0, 2)) * 60 + Number(side(plant, bearing).peakAt?.slice(3));
      expect(minutesOf(90)).toBeLessThan(minutesOf('top'));
      expect(minutesOf('top')).toBeLessThanOrEqual(minutesOf(270));
      for (const { scorchDose, peakAt } of plant.sides ?? []) expect(peakAt === null).toBe(scorchDose === 0);
      const cool = one([LEMON], { climate: { ...yardPlan().climate, heatwaveHigh: 24 } });
      expect(cool.sides?.map(({ peakAt }) => peakAt)).toEqual(Array.from({ length: 9 }, () => null));
    },
  );

  it('has the numbers of a spot at its top, and their mean with the sides', () => {
    const spot = valueOf(spotOf(yardPlan(), [6, 4], { height: 1.81 }));
    if (spot.date !== null) throw new Error('Not a season.');
    expect(side(plant, 'top').sunHours).toBeCloseTo(spot.season.sunHours, 9);
    const mean = (plant.sides ?? []).reduce((sum, each) => sum + each.hotLoad, 0) / 9;
    expect(plant.hotLoad).toBeCloseTo(mean, 9);
  });

  it('its west side is lit from the west only: its east side has next to no sun after noon', () => {
    // A point 0.01 m off a crown of 0.8 m sees past it by acos(0.8/0.81) = 9°, some 40 minutes of sun.
    expect(side(plant, 90).afternoonHours).toBeLessThan(0.8);
    expect(side(plant, 270).morningHours).toBeLessThan(0.8);
    expect(side(plant, 270).afternoonHours).toBeGreaterThan(6);
  });

  it('a flank has little more than half the sky', () => {
    for (const bearing of [0, 90, 225]) {
      expect(side(plant, bearing).skyView).toBeGreaterThan(0.5);
      expect(side(plant, bearing).skyView).toBeLessThan(0.62);
    }
    expect(side(plant, 'top').skyView).toBeCloseTo(1, 2);
  });

  it('its crown shades what stands beside it, and itself only as its own', () => {
    expect(valueOf(spotOf(yardPlan([LEMON]), [6, 4], { height: 0.5 })).inside).toBe('lemon');
    const near: Plant = { ...POT, at: [7.4, 4] };
    const [alone, beside] = [one([near]), one([LEMON, near])];
    expect(side(beside, 270).sunHours).toBeLessThan(side(alone, 270).sunHours - 0.5);
    // Told to shade nobody it is to itself what it was.
    const [shading, shadeless] = [one([LEMON]), one([{ ...LEMON, shades: false }])];
    expect(shading).toEqual(shadeless);
    expect(one([{ ...LEMON, shades: false }, near]).sunHours).toBe(alone.sunHours);
  });
});

describe('a plant among other things', () => {
  const things: readonly Feature[] = [
    {
      id: 'house',
      kind: 'building',
      outline: [
        [8, 0],
        [12, 0],
        [12, 3],
        [8, 3],
      ],
      height: 3.3,
      eaves: 0.5,
    },
    { id: 'tree', kind: 'tree', at: [3.5, 5], height: 4.4, crownWidth: 3, crownBase: 1.3, openness: 0.3 },
    {
      id: 'cloth',
      kind: 'canopy',
      center: [6.3, 4.2],
      length: 2,
      width: 1.7,
      turn: 25,
      height: 2.3,
      rise: 0.3,
      density: 0.4,
    },
  ];

  it('gets at each of its nine points what the plain reference ray says, its own crown as solid as a tree’s', () => {
    const period = { kind: 'day', date: '06-22' } as const;
    const crown: Tree = {
      id: 'own',
      kind: 'tree',
      at: LEMON.at,
      height: 1.8,
      crownWidth: 1.6,
      crownBase: 0.2,
      openness: 0,
    };
    const scene = buildScene(yardPlan([...things, crown]));
    const sampled = samplesOf(yardPlan(), period);
    if (!sampled.ok) throw new Error('No samples.');
    const { samples } = sampled;
    const plant = valueOf(plantLoadsOf(yardPlan([...things, LEMON]), { period }))[0];
    for (const { side: name, point } of plantPoints(yardPlan(), LEMON).points) {
      let dose = 0;
      for (let k = 0; k < samples.count; k++) {
        dose +=
          castRay(scene, point, samples.azimuth[k], samples.altitude[k], '06-22').share *
          samples.beam[k] *
          samples.hours[k] *
          0.0036;
      }
      expect(side(plant, name as number | 'top').beamDose, String(name)).toBeCloseTo(dose, 9);
    }
  });
});

describe('a roof of 3 × 3 m at 2.4 m, 60 %, over a plant 1.8 m tall and 1.6 m wide', () => {
  const july: Plan['climate'] = {
    hotAir: 35,
    heatwaveHigh: 46,
    turbidity: 3.5,
    months: [{ month: 7, high: 41.4, low: 29.9, humidity: 30, wind: 2 }],
  };
  const season: Plan['season'] = { year: 2026, from: '07-13', to: '07-17' };
  const roof: Canopy = { id: 'roof', kind: 'canopy', center: [6, 4], length: 3, width: 3, height: 2.4, density: 0.6 };
  const change = { climate: july, season };
  const open = one([LEMON], change);
  const roofed = one([roof, LEMON], change);
  const curtained = one([{ ...roof, drops: [{ side: 'left', depth: 1.2, density: 0.6 }] }, LEMON], change);
  const ratio = (plant: PlantLoad, bearing: number | 'top') =>
    side(plant, bearing).hotLoad / side(open, bearing).hotLoad;

  /**
   * The case on which judging all round rests, worked out once in low-desert July air by a calculation of its own for
   * cloth that passes 40 % at every angle: hot load left. Cloth at a slant passes less, so this is the most that is.
   */
  it.each([
    ['top', 'roof', 10.0 / 22.2],
    ['top', 'roof and west drop', 9.1 / 22.2],
    [270, 'roof', 10.6 / 13.6],
    [270, 'roof and west drop', 5.8 / 13.6],
  ] as const)(
    '%s under %s keeps at most %d of its hot load, and at least three quarters of that',
    (bearing, cloth, kept) => {
      const left = ratio(cloth === 'roof' ? roofed : curtained, bearing) / kept;
      expect(left).toBeLessThan(1.05);
      expect(left).toBeGreaterThan(0.75);
    },
  );

  it('under the roof the west flank is hotter than the top, though in the open it was cooler', () => {
    expect(side(open, 270).hotHours).toBeLessThan(side(open, 'top').hotHours);
    expect(side(roofed, 270).hotHours).toBeGreaterThan(side(roofed, 'top').hotHours);
  });

  it('a drop to the west is worth at least four times more on the west flank than at the top', () => {
    const worth = (bearing: number | 'top') => side(roofed, bearing).hotLoad - side(curtained, bearing).hotLoad;
    expect(worth(270)).toBeGreaterThan(4 * worth('top'));
  });
});

describe('a pot', () => {
  it(
    'is lit on each side only while the sun is less than a right angle from it: in the open a little over half ' +
      'of the hours',
    () => {
      const bare: Plant = { ...POT, height: 1.1, spread: 0.02, foliageFrom: 1 };
      const plant = one([bare]);
      expect(plant.pot?.sunHours).toBeGreaterThan(0.45 * side(plant, 'top').sunHours);
      expect(plant.pot?.sunHours).toBeLessThan(0.55 * side(plant, 'top').sunHours);
    },
  );

  it('is shaded by its own plant’s crown', () => {
    const narrow = one([POT]).pot?.sunHours ?? 0;
    const wide = one([{ ...POT, spread: 1.4 }]).pot?.sunHours ?? 0;
    expect(wide).toBeLessThan(narrow - 0.5);
  });

  it('a plant in the ground has none', () => {
    expect(one([LEMON]).pot).toBeNull();
  });
});

describe('a bed', () => {
  const bed: Bed = {
    id: 'bed',
    kind: 'bed',
    outline: [
      [4, 3],
      [6, 3],
      [6, 4],
      [4, 4],
    ],
    plantHeight: 0.6,
    plant: 'tomato',
  };

  it('half under a cloth over the sky gets the mean of both halves', () => {
    // North and south edges are far off, so that the edge at x = 5 runs through the zenith.
    const half: Canopy = {
      id: 'c',
      kind: 'canopy',
      center: [5 - 2000, 3.5],
      length: 4000,
      width: 4000,
      height: 0.62,
      density: 0.5,
    };
    const open = one([bed]);
    const covered = one([half, bed]);
    const full = one([{ ...half, center: [5, 3.5] }, bed]);
    expect(full.beamDose).toBeLessThan(open.beamDose / 2);
    expect(Math.abs(covered.beamDose - (open.beamDose + full.beamDose) / 2)).toBeLessThan(0.03 * open.beamDose);
  });

  it('without a cell of its own is judged at its centroid', () => {
    const tiny: Bed = {
      ...bed,
      outline: [
        [4.01, 3.01],
        [4.03, 3.01],
        [4.03, 3.03],
        [4.01, 3.03],
      ],
    };
    const spot = valueOf(spotOf(yardPlan(), [4.02, 3.02], { height: 0.6 }));
    if (spot.date !== null) throw new Error('Not a season.');
    expect(one([tiny]).hotLoad).toBeCloseTo(spot.season.hotLoad, 9);
  });

  it('leaves out what stands inside a house', () => {
    const house: Feature = {
      id: 'h',
      kind: 'building',
      outline: [
        [5, 2],
        [9, 2],
        [9, 5],
        [5, 5],
      ],
      height: 3,
    };
    const part: Bed = {
      ...bed,
      outline: [
        [4, 3],
        [5, 3],
        [5, 4],
        [4, 4],
      ],
    };
    expect(one([house, bed]).sunHours).toBeCloseTo(one([house, part]).sunHours, 9);
  });

  it('its scorch dose is the mean of its cells’, so it lies between that of a bed in the sun and one in the shade', () => {
    const roof: Canopy = { id: 'c', kind: 'canopy', center: [4, 3.5], length: 3, width: 2, height: 1.2, density: 1 };
    const [sunny, mixed, shaded] = [one([bed]), one([roof, bed]), one([{ ...roof, length: 40, width: 40 }, bed])].map(
      (each) => each.scorchDose ?? -1,
    );
    expect(mixed).toBeLessThan(sunny);
    expect(mixed).toBeGreaterThan(shaded);
  });
});
