import { LIMITS } from '../../file/limits.ts';
import { boundsOf, distance, distanceToSegment, isClosed, lineRound } from '../../geometry/shapes.ts';
import type { Bounds } from '../../geometry/shapes.ts';
import { ROUNDING } from '../../numbers/tolerances.ts';
import { quote } from '../../schema/say.ts';
import type { Building, Feature, PlanPoint, Problem, Wall } from '../../types.ts';

/** A gap of this width lets a stripe of sun through and is seldom meant. [m] */
const SLIT = { from: 0.05, to: 0.3 } as const;

interface Body {
  readonly solid: Wall | Building;
  /** The wall's path, or the building's outline closed. */
  readonly line: readonly PlanPoint[];
  readonly bounds: Bounds;
}

/** Warnings about ends of walls that stop just short of another wall, a building, or their own other end. */
export function slits(features: readonly Feature[]): Problem[] {
  const bodies = features
    .filter((feature): feature is Wall | Building => feature.kind === 'wall' || feature.kind === 'building')
    .map(bodyOf);
  const warnings: Problem[] = [];
  const warned = new Set<string>();
  features.forEach((wall, index) => {
    if (wall.kind !== 'wall' || isClosed(wall.path) || warnings.length >= LIMITS.warnings) return;
    for (const end of [wall.path[0], wall.path[wall.path.length - 1]]) {
      const near = bodies
        .filter((body) => isNear(end, body))
        .map(({ solid, line }) => ({ solid, gap: solid === wall ? gapOfOwnEnds(wall, end) : gapTo(end, solid, line) }));
      // An end that meets something leaves no slit, whatever else is near.
      if (near.some(({ gap }) => gap < SLIT.from)) continue;
      for (const { solid, gap } of near) {
        const pair = [wall.id, solid.id].sort().join('\n');
        if (gap > SLIT.to || warned.has(pair)) continue;
        warned.add(pair);
        const other = solid === wall ? 'its own other end' : `${solid.kind} ${quote(solid.id)}`;
        warnings.push({
          pointer: `/features/${index}/path`,
          message: `Wall ${quote(wall.id)} ends ${gap.toFixed(2)} m short of ${other}; sun comes through the slit.`,
          severity: 'warning',
        });
      }
    }
  });
  return warnings;
}

function bodyOf(solid: Wall | Building): Body {
  const line = solid.kind === 'building' ? lineRound(solid.outline) : solid.path;
  return { solid, line, bounds: boundsOf(line) };
}

function isNear([x, y]: PlanPoint, { solid, bounds }: Body): boolean {
  const reach = SLIT.to + (solid.kind === 'wall' ? solid.thickness / 2 : 0);
  return x >= bounds.minX - reach && x <= bounds.maxX + reach && y >= bounds.minY - reach && y <= bounds.maxY + reach;
}

/** From the end of a wall to the nearest face of a solid; 0 where it stands within. [m] */
function gapTo(end: PlanPoint, solid: Wall | Building, line: readonly PlanPoint[]): number {
  const half = solid.kind === 'wall' ? solid.thickness / 2 : 0;
  let least = Infinity;
  for (let i = 1; i < line.length; i++) {
    const away = distanceToSegment(end, line[i - 1], line[i]);
    const toEnds = Math.min(distance(end, line[i - 1]), distance(end, line[i]));
    // Beyond a wall's end its thickness does not count: ends are cut square.
    least = Math.min(least, away < toEnds - ROUNDING ? Math.max(0, away - half) : away);
  }
  return least;
}

function gapOfOwnEnds(wall: Wall, end: PlanPoint): number {
  const other = end === wall.path[0] ? wall.path[wall.path.length - 1] : wall.path[0];
  return wall.path.length > 2 ? distance(end, other) : Infinity;
}
