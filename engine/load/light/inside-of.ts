import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { Crown, Scene, Solid } from '../../scene/solids.ts';
import { strictlyInside } from './grid-of.ts';

/**
 * Id of the first feature whose solid a point is inside of in a yearly state (a building, wall, hedge, crown, trunk or
 * bed), else `null`.
 */
export function insideOf(scene: Scene, state: number, point: SpacePoint): string | null {
  return scene.states[state].find(({ solids }) => solids.some((solid) => isInside(solid, point)))?.id ?? null;
}

function isInside(solid: Solid, [x, y, z]: SpacePoint): boolean {
  switch (solid.kind) {
    case 'cloth':
    case 'lid':
      return false;
    case 'prism':
      return z < solid.height && solid.rings.some((ring) => strictlyInside([x, y], ring));
    case 'stand':
      return z < solid.height && strictlyInside([x, y], solid.ring);
    default:
      return (
        z > solid.base && z < solid.top && isInCrown(solid, Math.hypot(x - solid.x, y - solid.y) / solid.radius, z)
      );
  }
}

/** @param outward distance from the axis over the crown's radius */
function isInCrown({ kind, base, top }: Crown, outward: number, z: number): boolean {
  const depth = top - base;
  if (kind === 'column') return outward < 1;
  if (kind === 'cone') return outward < (top - z) / depth;
  return outward ** 2 + ((2 * z - top - base) / depth) ** 2 < 1;
}
