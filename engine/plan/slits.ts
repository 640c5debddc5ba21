import { distance, distanceToSegment, isClosed, openRing } from './geometry.ts';
import { quote } from './reader.ts';
import type { Building, Feature, PlanPoint, Problem, Wall } from './types.ts';

/** A gap of this width lets a stripe of sun through and is seldom meant. [m] */
const SLIT = { from: 0.05, to: 0.3 } as const;

/** Warnings about ends of walls that stop just short of another wall, a building, or their own other end. */
export function slits(features: readonly Feature[]): Problem[] {
  const warnings: Problem[] = [];
  const warned = new Set<string>();
  const solids = features.filter((feature): feature is Wall | Building => feature.kind === 'wall' || feature.kind === 'building');
  features.forEach((wall, index) => {
    if (wall.kind !== 'wall' || isClosed(wall.path)) return;
    for (const end of [wall.path[0], wall.path[wall.path.length - 1]]) {
      for (const solid of solids) {
        const gap = solid === wall ? gapOfOwnEnds(wall, end) : gapTo(end, solid);
        const pair = [wall.id, solid.id].sort().join('\n');
        if (gap < SLIT.from || gap > SLIT.to || warned.has(pair) || isShut(end, solids, wall)) continue;
        warned.add(pair);
        const other = solid === wall ? 'its own other end' : `${solid.kind} ${quote(solid.id)}`;
        warnings.push({ pointer: `/features/${index}/path`, message: `Wall ${quote(wall.id)} ends ${gap.toFixed(2)} m short of ${other}; sun comes through the slit.`, severity: 'warning' });
      }
    }
  });
  return warnings;
}

/** An end that meets something leaves no slit, whatever else is near. */
function isShut(end: PlanPoint, solids: readonly (Wall | Building)[], wall: Wall): boolean {
  return solids.some((solid) => solid !== wall && gapTo(end, solid) < SLIT.from);
}

/** From the end of a wall to the nearest face of a solid; 0 where it stands within. [m] */
function gapTo(end: PlanPoint, solid: Wall | Building): number {
  const outline = solid.kind === 'building' ? closed(openRing(solid.outline)) : solid.path;
  const half = solid.kind === 'wall' ? solid.thickness / 2 : 0;
  let least = Infinity;
  for (let i = 1; i < outline.length; i++) {
    const away = distanceToSegment(end, outline[i - 1], outline[i]);
    const toEnds = Math.min(distance(end, outline[i - 1]), distance(end, outline[i]));
    // Beyond a wall's end its thickness does not count: ends are cut square.
    least = Math.min(least, away < toEnds - 1e-9 ? Math.max(0, away - half) : away);
  }
  return least;
}

function gapOfOwnEnds(wall: Wall, end: PlanPoint): number {
  const other = end === wall.path[0] ? wall.path[wall.path.length - 1] : wall.path[0];
  return wall.path.length > 2 ? distance(end, other) : Infinity;
}

function closed(ring: readonly PlanPoint[]): PlanPoint[] {
  return [...ring, ring[0]];
}
