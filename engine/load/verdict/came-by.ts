import { castRay } from '../../cast/points/ray.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { MonthDay, Plan } from '../../plan/types.ts';
import { namedInside } from '../../plan/words/names.ts';
import type { Scene } from '../../scene/solids.ts';

/** How the sun reaches a point: through a thing that lets part of it pass, in under it, over it, or past its edge. */
export interface CameBy {
  readonly how: 'through' | 'under' | 'over' | 'past';
  readonly id: string;
}

/** Steps in which the sky round the sun is searched. [°] */
const STEP = 1;
/**
 * A thing more than this below the sun is not what the sun comes over; more than this beside it, not what it comes
 * past. [°]
 */
const OVER_WITHIN = 30;
const PAST_WITHIN = 15;

/**
 * What a sun that reaches a point comes through, in under, over or past; `null` with nothing near its way.
 * @param own id of the plant that the point is of: nobody says that the sun comes over what it shines on
 * @param azimuth true bearing of the sun [°] @param altitude apparent [°]
 */
export function cameBy(
  scene: Scene,
  plan: Plan,
  point: SpacePoint,
  azimuth: number,
  altitude: number,
  monthDay: MonthDay,
  own: string | null = null,
): CameBy | null {
  const blockerAt = (bearing: number, height: number): string | null => {
    const { blockers } = castRay(scene, point, bearing, height, monthDay);
    const things = blockers
      .filter((blocker) => blocker.id !== 'skyline' && blocker.id !== own)
      .toSorted((a, b) => a.transmittance - b.transmittance);
    return things[0]?.id ?? null;
  };
  const through = blockerAt(azimuth, altitude);
  if (through !== null) return { how: 'through', id: through };
  const hanging = new Set(plan.features.flatMap(({ id, kind }) => (kind === 'canopy' || kind === 'tree' ? [id] : [])));
  const overhead = { ...scene, states: scene.states.map((all) => all.filter(({ id }) => hanging.has(id))) };
  for (let height = altitude + STEP; height < 90; height += STEP) {
    if (castRay(overhead, point, azimuth, height, monthDay).blockers.length === 0) continue;
    const id = blockerAt(azimuth, height);
    if (id !== null && hanging.has(id)) return { how: 'under', id };
  }
  for (let height = altitude - STEP; height > Math.max(0, altitude - OVER_WITHIN); height -= STEP) {
    const id = blockerAt(azimuth, height);
    if (id !== null) return { how: 'over', id };
  }
  for (let aside = STEP; aside <= PAST_WITHIN; aside += STEP) {
    const id = blockerAt(azimuth + aside, altitude) ?? blockerAt(azimuth - aside, altitude);
    if (id !== null) return { how: 'past', id };
  }
  return null;
}

/** "coming over the low wall", "with nothing in its way". */
export function cameByWords(plan: Plan, came: CameBy | null): string {
  if (came === null) return 'with nothing in its way';
  const coming = {
    through: 'coming thinned through',
    under: 'coming in under',
    over: 'coming over',
    past: 'coming past',
  } as const;
  return `${coming[came.how]} ${namedInside(plan, came.id)}`;
}
