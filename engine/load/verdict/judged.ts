import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { Plan, PlantRow } from '../../plan/types.ts';
import type { OwnCrown, Scene } from '../../scene/solids.ts';
import type { HeatDay } from '../leaf/heat-day.ts';
import { type LitPoint, litPoint, type Scorch, scorchAt } from '../leaf/scorch.ts';
import type { SkyViewer } from '../light/sky-viewer.ts';
import type { PlantSide } from '../types.ts';
import { bedPlaces, bedScorches } from './bed-load.ts';
import { plantPoints } from './plant-points.ts';
import type { PlantFeature } from './planted.ts';

/** A point at which a leaf is judged. */
export interface JudgePoint {
  /** `null` of a bed. */
  readonly side: PlantSide | null;
  readonly point: SpacePoint;
  /** The plant's own crown, in the way of this point alone. */
  readonly own?: OwnCrown;
}

/** What a heat day does to the leaf there. */
export interface Judged extends JudgePoint {
  readonly lit: LitPoint;
  readonly scorch: Scorch;
}

export interface JudgedPlant {
  /** A plant's nine points; of a bed the cell with the largest dose alone. */
  readonly judged: readonly Judged[];
  /** Mean of its points, of a bed of all its cells. [K·h/day] */
  readonly dose: number;
}

export function judgedAt(heat: HeatDay, sky: SkyViewer, row: PlantRow, limit: number, at: JudgePoint): Judged {
  const lit = litPoint(heat, sky, at.point, at.own);
  return { ...at, lit, scorch: scorchAt(heat, row, limit, lit) };
}

/** @param scene of the plan, in which the day is laid out @param limit of the row's leaf, or fruit [°C] */
export function judgedPlant(
  plan: Plan,
  scene: Scene,
  sky: SkyViewer,
  heat: HeatDay,
  feature: PlantFeature,
  row: PlantRow,
  limit: number,
): JudgedPlant {
  if (feature.kind === 'bed') {
    const [{ dose, worst }] = bedScorches(scene, sky, bedPlaces(plan, feature), row, limit, [heat]);
    return { judged: [judgedAt(heat, sky, row, limit, { side: null, point: worst })], dose };
  }
  const { points, own } = plantPoints(plan, feature);
  const judged = points.map(({ side, point }) => judgedAt(heat, sky, row, limit, { side, point, own }));
  return { judged, dose: judged.reduce((sum, { scorch }) => sum + scorch.dose, 0) / points.length };
}
