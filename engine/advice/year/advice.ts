/** A sentence of advice with its ground: what every page of the year is made of. */

/** What a sentence of advice rests on. */
type Basis = 'trial' | 'extension practice' | 'common practice' | 'our estimate';

/** One sentence of advice and its ground. */
export interface Advice {
  readonly text: string;
  readonly basis: Basis;
  /** Who says so; absent for our estimates and for common practice without a source. */
  readonly source?: string;
}
