import { signal } from '@preact/signals';
import type { GridSpec, PlanPoint } from '../../../engine/index.ts';
import type { GradeZone } from '../../charts/grade-zones.ts';

/**
 * What other parts of the page lay over the plan. They set these; the map draws them. Nothing here is markup:
 * every label is shown as plain text.
 */

/** A painted grid: four bytes a cell (red, green, blue, alpha), along x from the lower left, then up y. */
export interface HeatPicture {
  readonly grid: Pick<GridSpec, 'x0' | 'y0' | 'cell' | 'columns' | 'rows'>;
  readonly rgba: Uint8ClampedArray;
}

/** Lines of one value with their label, drawn once per line at its middle. */
export interface LabelledLine {
  readonly lines: readonly (readonly PlanPoint[])[];
  readonly label: string;
}

/**
 * Eight sides (true bearings 0, 45, … 315) and the top of one plant; tones 0 (none) to 1 (worst). `null` sides: nothing
 * known yet.
 */
export interface PlantMark {
  readonly sides: readonly number[];
  readonly top: number;
  /** Index of the worst side, rimmed in black; `null` where none is harmed. */
  readonly worst: number | null;
}

export interface NumberedMark {
  readonly at: PlanPoint;
  readonly label: string;
  readonly chosen?: boolean;
  /** The middle of what it belongs to: its pin lies on the other side where it can. */
  readonly outOf?: PlanPoint;
}

export const heatPicture = signal<HeatPicture | null>(null);
/** Whether the page is being laid on paper. */
export const printing = signal(matchMedia('print').matches);
matchMedia('print').addEventListener('change', ({ matches }) => (printing.value = matches));
addEventListener('beforeprint', () => (printing.value = true));
addEventListener('afterprint', () => (printing.value = false));

/**
 * The same ground in hatches with numbers: on paper always, on the screen while `hatched`. Empty while nobody sees
 * them, and where what is painted has no grades.
 */
export const gradeZones = signal<readonly GradeZone[]>([]);
export const hatched = signal(false);
export const contourLines = signal<readonly LabelledLine[]>([]);
export const hiddenHeightLines = signal<readonly LabelledLine[]>([]);
/** Shadow outlines on the ground at the chosen time, one ring each. */
export const shadowRings = signal<readonly (readonly PlanPoint[])[]>([]);
/** Outlines of ground that is not allowed, hatched; a ring inside another is a hole. */
export const barredRings = signal<readonly (readonly PlanPoint[])[]>([]);
/** By feature id. */
export const plantMarks = signal<ReadonlyMap<string, PlantMark>>(new Map());
export const numberedMarks = signal<readonly NumberedMark[]>([]);
/** A straight line under study: a section's cut, a measured length, a shadow traced for north. */
export const studyLine = signal<readonly PlanPoint[]>([]);

/** Where the pointer is over the paper; `null` while it is not. [m] */
export const pointedAt = signal<PlanPoint | null>(null);
/** What the painted map says of a place, with its unit; `null` while nothing is painted that could be read. */
export const readMapAt = signal<((at: PlanPoint) => string) | null>(null);

/** Asks the map to bring a place to its middle, or with `null` the whole yard into view. */
export interface Jump {
  readonly to: PlanPoint | null;
}
export const jump = signal<Jump | null>(null);

export function showOnMap(to: PlanPoint | null): void {
  jump.value = { to };
}

/**
 * When set, the next point placed on the map goes here instead of selecting: survey helpers, pins, pots. `hint` is the
 * step in one sentence.
 */
export interface PointAsked {
  readonly hint: string;
  /** The very place that is pointed at, not the nearest line or grid. */
  readonly exact: boolean;
  take(at: PlanPoint): void;
}
export const askedPoint = signal<PointAsked | null>(null);
