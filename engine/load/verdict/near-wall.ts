import { nearestOnSegment } from '../../plan/geometry/shapes.ts';
import type { Plan, PlanPoint } from '../../plan/types.ts';
import type { Period } from '../../sun/samples.ts';
import type { Weather } from '../../sun/weather.ts';
import type { Outcome } from '../types.ts';
import { type Yard, yardOf } from '../yard.ts';

/** A face farther off than this is not told of. [m] */
const NEAR = 1;
/** A face with less sun is not a sunlit one. [h] */
const LEAST_SUN = 0.5;
/** The sun on a face is judged a hair before it, half-way up a low one. [m] */
const BEFORE = 0.01;
const HIGHEST = 1;

/** A wall or house near a spot whose face the sun heats. What it throws back is not reckoned anywhere. */
export interface NearWall {
  readonly id: string;
  /** From the spot's edge to the face. [m] */
  readonly distance: number;
  /** Hours in which the sun stands before the face and reaches it, means per civil day; of them the hot ones. [h] */
  readonly sunHours: number;
  readonly hotHours: number;
}

interface Face {
  readonly id: string;
  readonly distance: number;
  readonly foot: PlanPoint;
  /** Unit vector away from the solid. */
  readonly outward: PlanPoint;
  readonly height: number;
}

/**
 * Of the faces within 1 m the one with the most sun, or `null` where none is sunlit.
 * @param radius of the plant that stands at the spot; 0 for a bare one [m]
 */
export function nearWall(
  plan: Plan,
  at: PlanPoint,
  radius: number,
  period: Period,
  weather?: Weather,
): Outcome<NearWall | null> {
  const yard = yardOf(plan, period, weather);
  if (!yard.ok) return yard;
  const lit = facesNear(yard.value, at, radius).map((face): NearWall => ({
    id: face.id,
    distance: face.distance,
    ...sunOn(yard.value, face),
  }));
  const most = lit.toSorted((a, b) => b.sunHours - a.sunHours)[0];
  return { ok: true, value: most && most.sunHours >= LEAST_SUN ? most : null };
}

function facesNear({ plan, scene }: Yard, at: PlanPoint, radius: number): Face[] {
  const walls = new Set(plan.features.filter(({ kind }) => kind === 'wall' || kind === 'building').map(({ id }) => id));
  return scene.states[0].flatMap(({ id, solids }) =>
    (walls.has(id) ? solids : []).flatMap((solid): Face[] => {
      if (solid.kind !== 'prism') return [];
      return solid.rings.flatMap((ring) =>
        ring.flatMap((a, k): Face[] => {
          const b = ring[(k + 1) % ring.length];
          const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
          // Rings run counter-clockwise, so that the outside lies to the right.
          const outward: PlanPoint = [(b[1] - a[1]) / length, (a[0] - b[0]) / length];
          const foot = nearestOnSegment(at, a, b);
          const distance = Math.max(0, Math.hypot(at[0] - foot[0], at[1] - foot[1]) - radius);
          const isBefore = (at[0] - a[0]) * outward[0] + (at[1] - a[1]) * outward[1] > 0;
          return isBefore && distance <= NEAR ? [{ id, distance, foot, outward, height: solid.height }] : [];
        }),
      );
    }),
  );
}

/** So near before the face the solid itself keeps off the sun behind it. */
function sunOn(
  { passes, caster, weights }: Yard,
  { foot, outward, height }: Face,
): { sunHours: number; hotHours: number } {
  const shares = caster.sharesAt([
    foot[0] + BEFORE * outward[0],
    foot[1] + BEFORE * outward[1],
    Math.min(HIGHEST, height / 2),
  ]);
  let sunHours = 0;
  let hotHours = 0;
  for (let k = 0; k < passes.count; k++) {
    sunHours += shares[k] * weights.channels.sunHours[k];
    hotHours += shares[k] * weights.channels.hotHours[k];
  }
  return { sunHours, hotHours };
}
