/** What an edge changes on its right: a step of −`edge` undoes it. */
export const OPAQUE_EDGE = 1;
export const VEIL_EDGE = 2;
export const BODY_EDGE = 3;

/** Where the edges of a shadow stand that does not meet a row: right of every grid, where no sweep comes. */
export const NOWHERE = Infinity;

/** A shadow between two curves; its owner sets where they cross each row, ahead of the sweep. */
export interface CurvedShadow {
  firstRow: number;
  lastRow: number;
  /** Numbers of its edges. */
  leftEdge: number;
  rightEdge: number;
}

/**
 * The edges of one pass's shadows on a grid, bucketed by the first row they cross. A shadow is a closed chain of edges;
 * its crossings with a row, each +1 or −1 to everything on its right, add up to how often it covers each cell.
 * Buffers are as large as the largest pass needs and belong to one caster.
 */
export class ShadowEdges {
  readonly columns: number;
  readonly rows: number;
  /** First edge that starts in each row, −1: none. The others follow by `next`. */
  readonly heads: Int32Array;
  readonly next: Int32Array;
  /** Crossing with the row at hand, and how far it moves from row to row. [cells] */
  readonly u: Float64Array;
  readonly slope: Float64Array;
  readonly lastRow: Int32Array;
  /** One of the kinds above: positive where the edge begins to cover what is on its right, negative where it ends. */
  readonly step: Int8Array;
  /** A veil's share, or its inverse where it ends; a body's number. */
  readonly value: Float64Array;
  count = 0;

  constructor(columns: number, rows: number, capacity: number) {
    this.columns = columns;
    this.rows = rows;
    this.heads = new Int32Array(rows).fill(-1);
    this.next = new Int32Array(capacity);
    this.u = new Float64Array(capacity);
    this.slope = new Float64Array(capacity);
    this.lastRow = new Int32Array(capacity);
    this.step = new Int8Array(capacity);
    this.value = new Float64Array(capacity);
  }

  /**
   * Adds an edge of a counter-clockwise chain, inside to the left of a → b. Rows count from an edge's lower end on and
   * up to, not including, its upper end, so that chains close whatever the rounding. [cells]
   * @param share 0: opaque; else what one covering of the chain lets through.
   */
  add(au: number, av: number, bu: number, bv: number, share: number): void {
    const { columns, rows } = this;
    const low = av < bv ? av : bv;
    const high = av < bv ? bv : av;
    if (!(high > 0 && low <= rows - 1) || (au > columns - 1 && bu > columns - 1)) return;
    const first = low <= 0 ? 0 : Math.ceil(low);
    const last = high > rows - 1 ? rows - 1 : Math.ceil(high) - 1;
    if (last < first) return;
    const id = this.count++;
    if (au <= 0 && bu <= 0) {
      this.u[id] = -1;
      this.slope[id] = 0;
    } else {
      const slope = (bu - au) / (bv - av);
      this.u[id] = au + (first - av) * slope;
      this.slope[id] = slope;
    }
    const begins = bv < av;
    const kind = share === 0 ? OPAQUE_EDGE : VEIL_EDGE;
    this.lastRow[id] = last;
    this.step[id] = begins ? kind : -kind;
    this.value[id] = begins ? share : 1 / share;
    this.next[id] = this.heads[first];
    this.heads[first] = id;
  }

  /**
   * Adds the edges of a shadow that lies between two heights on the grid, `low` ≤ `high`. [cells]
   * @returns Whether it meets a row.
   */
  addCurves(shadow: CurvedShadow, kind: number, value: number, low: number, high: number): boolean {
    const { rows } = this;
    if (!(high >= 0 && low <= rows - 1)) return false;
    shadow.firstRow = low <= 0 ? 0 : Math.ceil(low);
    shadow.lastRow = high >= rows - 1 ? rows - 1 : Math.floor(high);
    if (shadow.lastRow < shadow.firstRow) return false;
    shadow.leftEdge = this.addCurve(kind, value, shadow.firstRow, shadow.lastRow);
    shadow.rightEdge = this.addCurve(-kind, value, shadow.firstRow, shadow.lastRow);
    return true;
  }

  /** @returns Its number. */
  private addCurve(step: number, value: number, firstRow: number, lastRow: number): number {
    const id = this.count++;
    this.u[id] = 0;
    this.slope[id] = 0;
    this.lastRow[id] = lastRow;
    this.step[id] = step;
    this.value[id] = value;
    this.next[id] = this.heads[firstRow];
    this.heads[firstRow] = id;
    return id;
  }
}
