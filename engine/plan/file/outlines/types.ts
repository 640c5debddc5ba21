/** Outlines out of other programs' drawings. */

import type { PlanPoint } from '../../types.ts';

/** What an outline may become. */
export const OUTLINE_KINDS = ['wall', 'building', 'bed'] as const;
export type OutlineKind = (typeof OUTLINE_KINDS)[number];

export interface Outline {
  /** As its drawing calls it, or its layer; `null` where it says neither. */
  readonly name: string | null;
  /** [m] */
  readonly points: readonly PlanPoint[];
  readonly closed: boolean;
}

export type OutlinesRead =
  /** `left`: how many things of the drawing are no outlines. */
  | { readonly ok: true; readonly outlines: readonly Outline[]; readonly left: number }
  | { readonly ok: false; readonly message: string };
