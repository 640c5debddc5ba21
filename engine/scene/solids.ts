import type { SpacePoint } from '../plan/geometry/vectors.ts';
import type { PlanPoint, SkylinePoint, Surface } from '../plan/types.ts';

/**
 * A simple polygon of the plan: open (no repeated point), counter-clockwise with y up.
 * A prism's rings overlap freely; together they count once.
 */
export type Ring = readonly PlanPoint[];

/** Upright solid on the ground: the union of its rings, z = 0 to `height`. Share = openness^crossings. */
export interface Prism {
  readonly kind: 'prism';
  readonly rings: readonly Ring[];
  readonly height: number;
  readonly openness: number;
  /** Share of sunlight that its faces throw back; `null` of what is no wall or building, or lets light through. */
  readonly reflects: number | null;
}

/**
 * Round body, base < z < top: a tree's crown, or its trunk (an opaque column). Share = openness^(length inside / (top −
 * base)).
 */
export interface Crown {
  readonly kind: 'round' | 'cone' | 'column';
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly base: number;
  readonly top: number;
  readonly openness: number;
}

/** A plant's own crown: for its own points it stands in the place of what the feature throws over others. */
export interface OwnCrown extends Crown {
  /** Id of the plant. */
  readonly of: string;
}

/** A bed's plants, z = 0 to `height` over its outline. Share = openness^(length inside / height). */
export interface Stand {
  readonly kind: 'stand';
  readonly ring: Ring;
  readonly height: number;
  readonly openness: number;
}

/** Cloth, without thickness: the parallelogram corner + s·u + t·v, 0 ≤ s, t ≤ 1, edges included. */
export interface ClothSheet {
  readonly kind: 'cloth';
  readonly corner: SpacePoint;
  readonly u: SpacePoint;
  readonly v: SpacePoint;
  /** Share of a beam that passes where it meets the cloth square on; at a slant less does (`slantShare`). */
  readonly share: number;
}

/** Opaque level sheet without thickness, edges included: the union of its rings at z = `height`. A building's eaves. */
export interface Lid {
  readonly kind: 'lid';
  readonly rings: readonly Ring[];
  readonly height: number;
  readonly reflects: number | null;
}

export type Solid = Prism | Crown | Stand | ClothSheet | Lid;

/** What one feature puts in the way. Its share is the product over its solids. */
export interface Occluder {
  readonly id: string;
  readonly solids: readonly Solid[];
}

/**
 * The yard as solids. `leafless` and `up` make a feature change through the year, the same every year: all days with
 * the same set of them share one state. Occluders that do not change are the same object in every state.
 */
export interface Scene {
  readonly upBearing: number;
  readonly skyline: readonly SkylinePoint[];
  /** What lies on the ground where no area says otherwise; `null`: nobody said. */
  readonly surface: Surface | null;
  /** Areas with a ground of their own, in the plan's order: of those that overlap the last one holds. */
  readonly grounds: readonly { readonly ring: Ring; readonly surface: Surface }[];
  /** Occluders of each yearly state, in the order of the plan's features. */
  readonly states: readonly (readonly Occluder[])[];
  /** State of each of the 366 days of a leap year, 1 January first; read it through `stateOf`. */
  readonly stateOfDay: Uint16Array;
}
