import { upBearingOf } from '../../plan/defaults.ts';
import { headingOf } from '../../plan/geometry/angles.ts';
import { canopyRing } from '../../plan/geometry/cloth-shapes.ts';
import { distance, nearestOnSegment, pointInRing, lineRound } from '../../plan/geometry/shapes.ts';
import { isMovable } from '../../plan/kinds.ts';
import type { Feature, Plan, PlanPoint } from '../../plan/types.ts';
import { formatDistance } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { compassWord } from '../../plan/words/compass-word.ts';
import { namedInside } from '../../plan/words/names.ts';

/** Nearer than this to an upright face, a spot is "beside" it. [m] */
const BESIDE_WITHIN = 1.2;

/** [m] */
const SAME_SPOT = 0.05;

interface Near {
  readonly id: string;
  readonly upright: boolean;
  /** A wall round a yard stands on more than one side of it. */
  readonly bends: boolean;
  /** From its face or trunk. [m] */
  readonly metres: number;
  readonly point: PlanPoint;
}

/**
 * A spot by what stands there, inside a sentence: "beside the west wall and the south wall", "1.6 m south-east of the
 * fig".
 * @param except the plant that goes there; where it stands by the same already, the way there is told too
 */
export function spotWords(plan: Plan, at: PlanPoint, except: string, units: Units): string {
  const words = marksAt(plan, at, except, units);
  const stands = plan.features.find((feature) => feature.id === except);
  if (stands?.kind !== 'plant' || distance(stands.at, at) < SAME_SPOT) return words;
  if (words !== marksAt(plan, stands.at, except, units)) return words;
  return `farther ${compassWord(headingOf(stands.at, at) + upBearingOf(plan))} ${words}`;
}

function marksAt(plan: Plan, at: PlanPoint, except: string, units: Units): string {
  const others = plan.features.filter(({ id }) => id !== except);
  const nearest = (features: readonly Feature[]): Near[] =>
    features.flatMap((feature) => nearOf(feature, at)).toSorted((a, b) => a.metres - b.metres);
  const fixed = nearest(others.filter((feature) => !isMovable(feature)));
  // What may be carried away itself is no mark to go by.
  const near = fixed.length > 0 ? fixed : nearest(others);
  const over = others.find((feature) => feature.kind === 'canopy' && pointInRing(at, canopyRing(feature)));
  const under = over === undefined ? '' : `under ${namedInside(plan, over.id)} `;
  const toward = (a: PlanPoint, b: PlanPoint) => compassWord(headingOf(a, b) + upBearingOf(plan));
  const beside = near.filter(({ upright, metres }) => upright && metres <= BESIDE_WITHIN).slice(0, 2);
  if (beside.length > 0)
    return `${under}beside ${beside
      .map(({ id, bends, point }) => `${namedInside(plan, id)}${bends ? ` on the ${toward(at, point)}` : ''}`)
      .join(' and ')}`;
  const [mark] = near;
  if (!mark) return under.trim() || 'on the open ground';
  return `${under}${formatDistance(mark.metres, units)} ${toward(mark.point, at)} of ${namedInside(plan, mark.id)}`;
}

/** What a person would find a spot by, and its point nearest to it. */
function nearOf(feature: Feature, at: PlanPoint): Near[] {
  const { id, kind } = feature;
  if (kind === 'tree' || kind === 'plant')
    return [{ id, upright: false, bends: false, metres: distance(at, feature.at), point: feature.at }];
  if (kind === 'wall' || kind === 'hedge' || kind === 'screen') {
    const half = kind === 'screen' ? 0 : feature.thickness / 2;
    return [{ ...nearestOf(feature.path, half, at), id, upright: true, bends: feature.path.length > 2 }];
  }
  if (kind !== 'building' && kind !== 'bed') return [];
  return [{ ...nearestOf(lineRound(feature.outline), 0, at), id, upright: kind === 'building', bends: false }];
}

function nearestOf(path: readonly PlanPoint[], half: number, at: PlanPoint): Pick<Near, 'metres' | 'point'> {
  const [point] = path
    .slice(1)
    .map((end, k) => nearestOnSegment(at, path[k], end))
    .toSorted((a, b) => distance(at, a) - distance(at, b));
  return { metres: Math.max(0, distance(at, point) - half), point };
}
