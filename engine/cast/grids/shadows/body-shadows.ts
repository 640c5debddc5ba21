import type { GridSolids } from '../grid-solids.ts';
import type { GridSpec } from '../grid-spec.ts';
import { CrownShadows } from './crown-shadows.ts';
import type { ShadowEdges } from './shadow-edges.ts';
import { StandShadows } from './stand-shadows.ts';

/** What dims a beam by its length inside: crowns, numbered first, and beds. Shares are asked cell by cell. */
export class BodyShadows {
  readonly count: number;
  private readonly crowns: CrownShadows;
  private readonly crownCount: number;
  private readonly stands: StandShadows;

  constructor({ crowns, stands }: GridSolids, grid: GridSpec) {
    this.crowns = new CrownShadows(crowns, grid);
    this.crownCount = crowns.length;
    this.stands = new StandShadows(stands, grid);
    this.count = crowns.length + stands.length;
  }

  /**
   * Lays the shadows of a pass out and adds their edges.
   * @param reachU, reachV Level way of a beam per metre of height. [cells/m]
   */
  addTo(edges: ShadowEdges, dx: number, dy: number, dz: number, reachU: number, reachV: number): void {
    this.crowns.addTo(edges, dx, dy, dz, reachU, reachV);
    this.stands.addTo(edges, this.crownCount, dx, dy, dz, reachU, reachV);
  }

  /** Sets where the edges of every shadow cross a row. */
  setRow(edges: ShadowEdges, j: number): void {
    this.crowns.setRow(edges, j);
    this.stands.setRow(edges, j);
  }

  /** Writes the share of the beam that body c leaves to the cells `from` up to `to` of a row, kept[0] for `from`. */
  shares(c: number, j: number, from: number, to: number, kept: Float64Array): void {
    if (c < this.crownCount) this.crowns.shares(c, j, from, to, kept);
    else this.stands.shares(c - this.crownCount, j, from, to, kept);
  }
}
