import { countUp } from '../numbers/tolerances.ts';

/** How far a plan may go. Beyond these a file is refused with a sentence, so that no file can stall the program. */
export const LIMITS = {
  /** Plan coordinates, either sign. [m] */
  coordinate: 10_000,
  /** Cells of one grid: larger ones are refused. */
  cells: 4_000_000,
  /** Size of a plan file. [bytes] */
  fileBytes: 10_000_000,
  /** Numbers, texts, objects and lists of a file together. */
  values: 500_000,
  /** Objects and lists inside one another. */
  nesting: 100,
  /** Things drawn in one year, options' included: more than a yard has, and no more than are reckoned in time. */
  features: 500,
  /** Corners of walls, hedges, screens and buildings of one year. */
  corners: 300,
  pointsPerPath: 500,
  /** Points of all paths and outlines together, earlier years included. */
  points: 20_000,
  options: 100,
  /** Entries of any other list. */
  entries: 10_000,
  /** Rows of plants of the person's own. */
  plantRows: 1_000,
  /** Earlier years in one file. */
  pastYears: 30,
  warnings: 100,
  /** Problems listed one by one. */
  problems: 500,
} as const;

/** How many cells a grid over a box has. @param cell [m] */
export function cellCount(width: number, height: number, cell: number): number {
  return Math.max(0, countUp(width / cell)) * Math.max(0, countUp(height / cell));
}
