/**
 * `castRay` against a reference library: every solid built anew as triangles and met with `three-mesh-bvh` 0.9
 * (bounding-volume rays on `three` meshes, MIT). Nothing of the engine's geometry is used to build or to meet them.
 */

import {
  BufferGeometry,
  DoubleSide,
  Float32BufferAttribute,
  MeshBasicMaterial,
  Ray,
  ShapeUtils,
  Vector2,
  Vector3,
} from 'three';
import { MeshBVH } from 'three-mesh-bvh';
import { describe, expect, test } from 'vitest';
import { castRay } from '../../engine/cast/points/ray.ts';
import { upBearingOf } from '../../engine/plan/defaults.ts';
import type { Unsaid } from '../../engine/plan/schema/held.ts';
import type { Bed, Building, Canopy, Feature, Plan, PlanPoint, Screen, Tree } from '../../engine/plan/types.ts';
import { buildScene } from '../../engine/scene/build.ts';
import { emptyPlan, randomPlan } from '../engine/cast/random-plans.ts';
import { randomFrom } from '../parts/random.ts';

const DAY = '07-01';
const MATERIAL = new MeshBasicMaterial({ side: DoubleSide });

type Space = readonly [number, number, number];
type Triangle = readonly [Space, Space, Space];

interface Mesh {
  readonly bvh: MeshBVH;
}

function meshOf(triangles: readonly Triangle[]): Mesh {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new Float32BufferAttribute(triangles.flat(2), 3));
  return { bvh: new MeshBVH(geometry) };
}

/** Distances at which a ray meets a mesh, nearest first; meets closer than 1e-4 m (a shared edge) are one. */
function meets({ bvh }: Mesh, point: Space, direction: Space): number[] {
  const hits = bvh
    .raycast(new Ray(new Vector3(...point), new Vector3(...direction)), MATERIAL)
    .map(({ distance }) => distance);
  return hits.sort((a, b) => a - b).filter((distance, k) => k === 0 || distance - hits[k - 1] > 1e-4);
}

/** Stretches of a ray inside a closed mesh. */
function stretches(mesh: Mesh, point: Space, direction: Space): [number, number][] {
  const hits = meets(mesh, point, direction);
  const from = hits.length % 2 === 1 ? [0, ...hits] : hits;
  return Array.from({ length: from.length / 2 }, (_, k) => [from[2 * k], from[2 * k + 1]]);
}

function prismMesh(ring: readonly PlanPoint[], height: number): Mesh {
  const ccw = ShapeUtils.isClockWise(ring.map(([x, y]) => new Vector2(x, y))) ? [...ring].reverse() : ring;
  const flat = ShapeUtils.triangulateShape(
    ccw.map(([x, y]) => new Vector2(x, y)),
    [],
  );
  const at = (k: number, z: number): Space => [ccw[k][0], ccw[k][1], z];
  const sides = ccw.flatMap((_, k): Triangle[] => {
    const next = (k + 1) % ccw.length;
    return [
      [at(k, 0), at(next, 0), at(next, height)],
      [at(k, 0), at(next, height), at(k, height)],
    ];
  });
  return meshOf([
    ...sides,
    ...flat.flatMap(([a, b, c]): Triangle[] => [
      [at(a, height), at(b, height), at(c, height)],
      [at(c, 0), at(b, 0), at(a, 0)],
    ]),
  ]);
}

function quadMesh(a: Space, b: Space, c: Space, d: Space): Mesh {
  return meshOf([
    [a, b, c],
    [a, c, d],
  ]);
}

/**
 * A rectangle about a segment, longer at its ends: from the words of the plan format, by complex-number arithmetic of
 * its own.
 */
function aboutSegment(
  [ax, ay]: PlanPoint,
  [bx, by]: PlanPoint,
  half: number,
  before: number,
  after: number,
): PlanPoint[] {
  const bearing = Math.atan2(by - ay, bx - ax);
  const place = (along: number, across: number, [x, y]: PlanPoint): PlanPoint => [
    x + along * Math.cos(bearing) - across * Math.sin(bearing),
    y + along * Math.sin(bearing) + across * Math.cos(bearing),
  ];
  return [
    place(-before, half, [ax, ay]),
    place(-before, -half, [ax, ay]),
    place(after, -half, [bx, by]),
    place(after, half, [bx, by]),
  ];
}

/** A thing read with this file's own values for what is left out: the reference takes nothing from the engine. */
type Own<T> = T extends unknown ? { readonly [K in keyof T]: Exclude<T[K], Unsaid> } : never;
type ShareOf = (point: Space, direction: Space) => number;

function pathShare(path: readonly PlanPoint[], thickness: number, height: number, openness: number): ShareOf {
  const last = path.length - 1;
  const closed = path[0][0] === path[last][0] && path[0][1] === path[last][1];
  const half = thickness / 2;
  const meshes = path
    .slice(1)
    .map((b, k) =>
      prismMesh(aboutSegment(path[k], b, half, k > 0 || closed ? half : 0, k + 1 < last || closed ? half : 0), height),
    );
  return (point, direction) => {
    const inside = meshes.flatMap((mesh) => stretches(mesh, point, direction)).sort((a, b) => a[0] - b[0]);
    let crossings = 0;
    let reached = -Infinity;
    for (const [from, to] of inside) {
      if (from > reached + 1e-4) crossings++;
      reached = Math.max(reached, to);
    }
    return openness ** crossings;
  };
}

/** A sheet thins a beam by one over the cosine of the angle from its normal, at 75° and beyond by no more. */
function clothShare(p: Space, q: Space, r: Space, s: Space, share: number): ShareOf {
  const mesh = quadMesh(p, q, r, s);
  const normal = new Vector3(...q)
    .sub(new Vector3(...p))
    .cross(new Vector3(...s).sub(new Vector3(...p)))
    .normalize();
  return (point, direction) => {
    if (meets(mesh, point, direction).length === 0) return 1;
    return share ** (1 / Math.max(Math.abs(normal.dot(new Vector3(...direction))), 0.26));
  };
}

/** A bed thins a beam by its length inside, over the height of its plants. */
function bedShare(bed: Bed): ShareOf {
  const { outline, plantHeight } = bed;
  const openness = Number(bed.openness ?? 0.15);
  const body = prismMesh(outline, plantHeight);
  return (point, direction) => {
    const inside = stretches(body, point, direction).reduce((sum, [from, to]) => sum + to - from, 0);
    return openness ** (inside / plantHeight);
  };
}

function buildingShares({ outline, height, eaves = 0 }: Own<Building>): ShareOf[] {
  const body = prismMesh(outline, height);
  const shares: ShareOf[] = [(point, direction) => (stretches(body, point, direction).length > 0 ? 0 : 1)];
  if (eaves > 0) {
    outline.forEach((a, k) => {
      const [p, q, r, s] = aboutSegment(a, outline[(k + 1) % outline.length], eaves, eaves, eaves).map(
        ([x, y]): Space => [x, y, height],
      );
      shares.push(clothShare(p, q, r, s, 0));
    });
  }
  return shares;
}

function canopyShares({
  center,
  length,
  width,
  turn = 0,
  height,
  rise = 0,
  density,
  measuredDensity,
  drops = [],
}: Own<Canopy>): ShareOf[] {
  const bearing = (turn * Math.PI) / 180;
  const corner = (right: number, forward: number): Space => [
    center[0] + (right * width * Math.cos(bearing)) / 2 + (forward * length * Math.sin(bearing)) / 2,
    center[1] - (right * width * Math.sin(bearing)) / 2 + (forward * length * Math.cos(bearing)) / 2,
    height + (forward > 0 ? rise : 0),
  ];
  const edges = {
    front: [corner(-1, 1), corner(1, 1)],
    back: [corner(-1, -1), corner(1, -1)],
    left: [corner(-1, 1), corner(-1, -1)],
    right: [corner(1, 1), corner(1, -1)],
  };
  const roof = clothShare(corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1), 1 - (measuredDensity ?? density));
  return [
    roof,
    ...drops.map((drop) => {
      const [a, b] = edges[drop.side];
      return clothShare(a, b, [b[0], b[1], b[2] - drop.depth], [a[0], a[1], a[2] - drop.depth], 1 - drop.density);
    }),
  ];
}

function screenShares({ path, bottom = 0, height, density, measuredDensity }: Own<Screen>): ShareOf[] {
  return path.slice(1).map(([bx, by], k) => {
    const [ax, ay] = path[k];
    return clothShare(
      [ax, ay, bottom],
      [bx, by, bottom],
      [bx, by, height],
      [ax, ay, height],
      1 - (measuredDensity ?? density),
    );
  });
}

/** Body of revolution: a profile of (z, radius) pairs from the foot up, in `slices` flat sides. */
function turnedMesh(
  x: number,
  y: number,
  profile: readonly (readonly [z: number, radius: number])[],
  slices: number,
): Mesh {
  const at = (ring: number, slice: number): Space => {
    const angle = (2 * Math.PI * slice) / slices;
    const [z, radius] = profile[ring];
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle), z];
  };
  const triangles: Triangle[] = [];
  for (let ring = 0; ring + 1 < profile.length; ring++) {
    for (let slice = 0; slice < slices; slice++) {
      const corners = [at(ring, slice), at(ring, slice + 1), at(ring + 1, slice + 1), at(ring + 1, slice)];
      if (profile[ring][1] > 0) triangles.push([corners[0], corners[1], corners[2]]);
      if (profile[ring + 1][1] > 0) triangles.push([corners[0], corners[2], corners[3]]);
    }
  }
  return meshOf(triangles);
}

function crownMesh({ at: [x, y], height, crownWidth, crownBase, shape = 'round' }: Own<Tree>): Mesh {
  const a = crownWidth / 2;
  const profiles = {
    round: Array.from({ length: 201 }, (_, k) => {
      const angle = (Math.PI * k) / 200;
      return [
        (height + crownBase) / 2 - (Math.cos(angle) * (height - crownBase)) / 2,
        k % 200 === 0 ? 0 : a * Math.sin(angle),
      ] as const;
    }),
    cone: [
      [crownBase, 0],
      [crownBase, a],
      [height, 0],
    ] as const,
    column: [
      [crownBase, 0],
      [crownBase, a],
      [height, a],
      [height, 0],
    ] as const,
  };
  return turnedMesh(x, y, profiles[shape], 360);
}

function randomDirection(random: () => number): { azimuth: number; altitude: number } {
  return { azimuth: 360 * random(), altitude: 1 + 88 * random() ** 1.5 };
}

/** The same direction from the definition of azimuth and altitude, by three's spherical coordinates. */
function vectorOf(azimuth: number, altitude: number, upBearing: number): Space {
  const vector = new Vector3().setFromSphericalCoords(
    1,
    ((90 - altitude) * Math.PI) / 180,
    ((azimuth - upBearing) * Math.PI) / 180,
  );
  return [vector.x, vector.z, vector.y];
}

function sharesOf(drawn: Feature): ShareOf[] {
  const feature = drawn as Own<Feature>;
  switch (feature.kind) {
    case 'wall':
      return [pathShare(feature.path, feature.thickness, feature.height, feature.openness ?? 0)];
    case 'hedge':
      return [pathShare(feature.path, feature.thickness, feature.height, feature.openness ?? 0.05)];
    case 'building':
      return buildingShares(feature);
    case 'bed':
      return [bedShare(feature)];
    case 'canopy':
      return canopyShares(feature);
    case 'screen':
      return screenShares(feature);
    default:
      return [];
  }
}

describe('castRay against three-mesh-bvh', () => {
  test('walls, hedges, houses, canopies, screens, beds of random plans 501 to 600 (23,000 rays)', () => {
    let near = 0;
    let shaded = 0;
    const wrong: string[] = [];
    for (let seed = 501; seed <= 600; seed++) {
      const random = randomFrom(seed);
      const made = randomPlan(seed);
      const plan: Plan = {
        ...made,
        site: { ...made.site, skyline: undefined },
        features: made.features
          .filter((feature) => feature.kind !== 'tree' && feature.kind !== 'plant')
          .map((feature) => ('up' in feature ? { ...feature, up: undefined } : feature)),
      };
      const scene = buildScene(plan);
      const shares = plan.features.flatMap(sharesOf);
      // A mesh keeps its corners in single precision: what depends on a length is right to 1e-6.
      const within = plan.features.some(({ kind }) => kind === 'bed') ? 1e-6 : 1e-9;
      for (let n = 0; n < 230; n++) {
        const point: Space = [18 * random() - 9, 14 * random() - 7, 0.05 + 3 * random()];
        const { azimuth, altitude } = randomDirection(random);
        const direction = vectorOf(azimuth, altitude, upBearingOf(plan));
        const expected = shares.reduce((share, shareOf) => share * shareOf(point, direction), 1);
        const { share } = castRay(scene, point, azimuth, altitude, DAY);
        if (share < 1) shaded++;
        if (Math.abs(share - expected) < within) continue;
        // Meshes are stored in single precision: a ray within a tenth of a millimetre of an edge may go either way
        // there.
        const around = [
          [1, 0, 0],
          [-1, 0, 0],
          [0, 1, 0],
          [0, -1, 0],
          [0, 0, 1],
          [0, 0, -1],
        ].map(
          ([x, y, z]) =>
            castRay(scene, [point[0] + x * 3e-4, point[1] + y * 3e-4, point[2] + z * 3e-4], azimuth, altitude, DAY)
              .share,
        );
        if (around.some((other) => other !== share)) near++;
        else
          wrong.push(`plan ${seed}, (${point}), azimuth ${azimuth}, altitude ${altitude}: ${share}, mesh ${expected}`);
      }
    }
    expect(wrong).toEqual([]);
    expect(near).toBeLessThanOrEqual(20);
    expect(shaded).toBeGreaterThan(3000);
  });

  test.each(['round', 'cone', 'column'] as const)(
    '%s crowns and their trunks, as meshes of 360 sides (2,000 rays)',
    (shape) => {
      const tree: Tree = {
        id: 't',
        kind: 'tree',
        at: [0.4, -0.7],
        height: 6.2,
        crownWidth: 4.6,
        crownBase: 1.9,
        shape,
        openness: 0.3,
      };
      const crown = crownMesh(tree as Own<Tree>);
      const trunk = turnedMesh(
        0.4,
        -0.7,
        [
          [0, 0],
          [0, 0.186],
          [1.9, 0.186],
          [1.9, 0],
        ],
        360,
      );
      const scene = buildScene(emptyPlan([tree], 21));
      const random = randomFrom(4);
      let met = 0;
      let behindTrunk = 0;
      for (let n = 0; n < 2000; n++) {
        const point: Space = [8 * random() - 4, 8 * random() - 4, 5 * random()];
        const { azimuth, altitude } = randomDirection(random);
        const direction = vectorOf(azimuth, altitude, 21);
        const inside = stretches(crown, point, direction).reduce((sum, [from, to]) => sum + to - from, 0);
        const trunkInside = stretches(trunk, point, direction).reduce((sum, [from, to]) => sum + to - from, 0);
        const { share } = castRay(scene, point, azimuth, altitude, DAY);
        if (inside > 0.2) met++;
        // Within a millimetre of the trunk's side the flat sides of the mesh decide.
        if (trunkInside > 0 && trunkInside < 0.03) continue;
        if (trunkInside > 0) behindTrunk++;
        // Worst at grazing beams, where the mesh cuts the curve short.
        expect(Math.abs(share - (trunkInside > 0 ? 0 : 0.3 ** (inside / 4.3)))).toBeLessThan(
          inside < 0.3 ? 0.04 : 3e-3,
        );
      }
      expect(met).toBeGreaterThan(300);
      expect(behindTrunk).toBeGreaterThan(5);
    },
  );

  test('a sphere’s chord is 2·√(r² − d²) (closed form)', () => {
    const scene = buildScene(
      emptyPlan([{ id: 't', kind: 'tree', at: [1, 2], height: 7, crownWidth: 4, crownBase: 3, openness: 0.4 }]),
    );
    const random = randomFrom(9);
    for (let n = 0; n < 500; n++) {
      const point: Space = [10 * random() - 4, 10 * random() - 3, 2.9 * random()];
      const azimuth = 360 * random();
      const altitude = 20 + 60 * random();
      const direction = vectorOf(azimuth, altitude, 0);
      const away = new Vector3(1 - point[0], 2 - point[1], 5 - point[2]);
      const off = away
        .clone()
        .cross(new Vector3(...direction))
        .length();
      const chord = off < 2 && away.dot(new Vector3(...direction)) > 0 ? 2 * Math.sqrt(4 - off * off) : 0;
      const { share, blockers } = castRay(scene, point, azimuth, altitude, DAY);
      if (blockers.some(({ transmittance }) => transmittance === 0)) continue;
      expect(share).toBeCloseTo(0.4 ** (chord / 4), 9);
    }
  });
});
