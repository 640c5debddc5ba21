import { castRay } from '../../../../engine/cast/points/ray.ts';
import { skyRays } from '../../../../engine/cast/sky.ts';
import { frameFitter } from '../../../../engine/frame/fit-frame.ts';
import { yardOf } from '../../../../engine/load/yard.ts';
import { turnOf } from '../../../../engine/plan/defaults.ts';
import { canopyCorners } from '../../../../engine/plan/geometry/cloth-shapes.ts';
import type { SpacePoint } from '../../../../engine/plan/geometry/vectors.ts';
import type { Cloth, Eye, Plan, PlanPoint, Plant } from '../../../../engine/plan/types.ts';
import { clothSheets } from '../../../../engine/scene/build.ts';
import { clothCosine, clothMeets, slantShare } from '../../../../engine/scene/cloth-sheet.ts';
import { planDirection } from '../../../../engine/scene/direction.ts';
import { valueOf } from '../../../parts/outcome.ts';

/**
 * The rules that cloth is searched under, as somebody who checks one piece with tape, eye and light meter would put
 * them: no table, no bound, nothing of the search. Of plans whose yard is a box from (0, 0) and whose walls are
 * straight.
 */
export interface PlainRules {
  /** Of cloth and of what the person allows. [m] */
  isLowEnough(cloth: Cloth): boolean;
  keepsSetback(cloth: Cloth): boolean;
  keepsOut(cloth: Cloth): boolean;
  isHidden(cloth: Cloth): boolean;
  isPaid(cloth: Cloth): boolean;
  leavesLight(cloth: Cloth): boolean;
}

export interface Asked {
  readonly maxHeight?: number;
  readonly hideFrom: readonly string[];
  readonly budget: number;
  /** Whether cloth must suit the plants that it hangs over. */
  readonly suits: boolean;
}

const NOTHING = 0.005;

export function plainRules(plan: Plan, { maxHeight = Infinity, hideFrom, budget, suits }: Asked): PlainRules {
  const { maxHeight: cap = Infinity, setback = 0 } = plan.site.rules ?? {};
  const [, [width], [, depth]] = plan.site.boundary;
  const fit = frameFitter(plan, { soil: 'garden' });
  const eyes = plan.features.filter(
    (feature): feature is Eye => feature.kind === 'eye' && hideFrom.includes(feature.id),
  );
  const plants = plan.features.filter((feature): feature is Plant => feature.kind === 'plant');
  const tops = plants.map((plant) => topLight(plan, plant));
  return {
    isLowEnough: ({ height }) => height <= Math.min(cap, maxHeight) + 1e-9,
    keepsSetback: (cloth) => edge(cloth).every(([x, y]) => Math.min(x, y, width - x, depth - y) >= setback - 1e-6),
    keepsOut: (cloth) =>
      plan.features.every(
        (feature) =>
          feature.kind !== 'keepout' || !feature.blocks.includes('canopy') || !isOver(cloth, feature.outline),
      ),
    isHidden: (cloth) =>
      eyes.every((eye) =>
        placesOn(eye.path, 1).every(([x, y]) =>
          edge(cloth).every((point) => isBlocked(plan, [x, y, eye.height], [point[0], point[1], point[2] - NOTHING])),
        ),
      ),
    isPaid: (cloth) => (fit(cloth)?.cost ?? Infinity) <= budget,
    leavesLight(cloth) {
      const sheets = clothSheets(cloth);
      const passes = (point: SpacePoint, direction: SpacePoint): number =>
        sheets.reduce(
          (share, sheet) =>
            clothMeets(sheet, point, direction)
              ? share * slantShare(sheet.share, clothCosine(sheet, direction))
              : share,
          1,
        );
      return tops.every(({ plant, rays, light, point }) => {
        const row = plan.plants?.find(({ id }) => id === plant.plant);
        const least = row?.minDLI ?? 0;
        const overdense = suits && cloth.density > (row?.cloth?.[1] ?? 100) / 100 + 1e-9;
        const may = Math.min(light >= least ? light - least : 0.01 * light, overdense ? 0.1 * light : Infinity);
        let taken = 0;
        for (const { direction, brings } of rays) taken += brings * (1 - passes(point, direction));
        return taken <= may + 1e-9;
      });
    },
  };
}

/** What brings light to the top of a plant through the season, ray by ray. [mol/m² a day] */
function topLight(plan: Plan, plant: Plant) {
  const yard = valueOf(yardOf(plan, { kind: 'season' }));
  const point: SpacePoint = [...plant.at, plant.height + 0.01];
  const { passes, weights, samples } = yard;
  const { azimuth, altitude, weight } = skyRays();
  const [{ monthDay }] = samples.days;
  const share = (az: number, alt: number) => castRay(yard.scene, point, az, alt, monthDay).share;
  const rays = [
    ...Array.from({ length: passes.count }, (_, k) => ({
      direction: planDirection(passes.azimuth[k], passes.altitude[k], yard.scene.upBearing),
      brings: weights.channels.beamLight[k] * share(passes.azimuth[k], passes.altitude[k]),
    })),
    ...Array.from({ length: weight.length }, (_, k) => ({
      direction: planDirection(azimuth[k], altitude[k], yard.scene.upBearing),
      brings: weight[k] * weights.sky[0].light * share(azimuth[k], altitude[k]),
    })),
  ].filter(({ brings }) => brings > 0);
  return { plant, point, rays, light: rays.reduce((sum, { brings }) => sum + brings, 0) };
}

/** Points round a roof's edge or along a screen's top, at most 0.25 m apart. */
function edge(cloth: Cloth): SpacePoint[] {
  const corners: SpacePoint[] =
    cloth.kind === 'canopy'
      ? [...canopyCorners(cloth), canopyCorners(cloth)[0]]
      : cloth.path.map(([x, y]) => [x, y, cloth.height]);
  return corners.slice(1).flatMap((b, k) => {
    const a = corners[k];
    const steps = Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / 0.25 - 1e-9);
    return Array.from({ length: steps + 1 }, (_, n): SpacePoint => {
      const t = n / steps;
      return [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]), cloth.height];
    });
  });
}

/** Places along a line, as far apart as said or nearer; both ends among them. */
function placesOn(path: readonly PlanPoint[], apart: number): PlanPoint[] {
  if (path.length === 1) return [path[0]];
  return path.slice(1).flatMap((b, k) => {
    const a = path[k];
    const steps = Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / apart - 1e-9);
    return Array.from({ length: steps + 1 }, (_, n): PlanPoint => [
      a[0] + ((b[0] - a[0]) * n) / steps,
      a[1] + ((b[1] - a[1]) * n) / steps,
    ]);
  });
}

/** Whether a straight line meets a straight wall, 0.2 m thick, or a house that is a box. */
function isBlocked(plan: Plan, from: SpacePoint, to: SpacePoint): boolean {
  return plan.features.some((feature) => {
    if (feature.kind === 'building') {
      const [xs, ys] = [feature.outline.map(([x]) => x), feature.outline.map(([, y]) => y)];
      const ranges = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)] as const;
      return crosses(from, to, ranges, feature.height);
    }
    if (feature.kind !== 'wall') return false;
    const [[ax, ay], [bx, by]] = feature.path;
    const length = Math.hypot(bx - ax, by - ay);
    const [cos, sin] = [(bx - ax) / length, (by - ay) / length];
    const turned = ([x, y, z]: SpacePoint): SpacePoint => [
      (x - ax) * cos + (y - ay) * sin,
      (y - ay) * cos - (x - ax) * sin,
      z,
    ];
    return crosses(turned(from), turned(to), [0, length, -0.1, 0.1], feature.height);
  });
}

/** Whether a line passes through a box on the ground: where it is over the box's ground it is once below its top. */
function crosses(
  [x, y, z]: SpacePoint,
  to: SpacePoint,
  [left, right, low, high]: readonly [number, number, number, number],
  top: number,
): boolean {
  const [dx, dy, dz] = [to[0] - x, to[1] - y, to[2] - z];
  const between = (start: number, by: number, least: number, most: number): [number, number] =>
    by > 0 ? [(least - start) / by, (most - start) / by] : [(most - start) / by, (least - start) / by];
  const [acrossIn, acrossOut] = between(x, dx, left, right);
  const [alongIn, alongOut] = between(y, dy, low, high);
  const enters = Math.max(0, acrossIn, alongIn);
  const leaves = Math.min(1, acrossOut, alongOut);
  return enters < leaves && z + dz * (dz < 0 ? leaves : enters) < top;
}

/** Whether a roof, or a screen, hangs over any of a box that is kept free, looked at every two centimetres. */
function isOver(cloth: Cloth, outline: readonly PlanPoint[]): boolean {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  if (cloth.kind === 'screen')
    return placesOn(cloth.path, 0.02).some(([x, y]) => x > left && x < right && y > low && y < high);
  const turn = (turnOf(cloth) * Math.PI) / 180;
  for (let x = left + 0.01; x < right; x += 0.02) {
    for (let y = low + 0.01; y < high; y += 0.02) {
      const [dx, dy] = [x - cloth.center[0], y - cloth.center[1]];
      const across = Math.abs(dx * Math.cos(turn) - dy * Math.sin(turn));
      const along = Math.abs(dx * Math.sin(turn) + dy * Math.cos(turn));
      if (across < cloth.width / 2 && along < cloth.length / 2) return true;
    }
  }
  return false;
}
