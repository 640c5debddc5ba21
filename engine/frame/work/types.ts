/** What is done, by how many hands in how many hours, and what to mind. */

export interface Step {
  readonly id: string;
  readonly text: string;
  /** Ids of the shopping list and of the tools that it takes. */
  readonly needs: readonly string[];
  /** Ids of the cautions that go with it. */
  readonly cautions: readonly string[];
  readonly work: Work;
}

/** What it is a step of: the works follow each other, each whole. */
export type Work = 'ground' | 'tubes' | 'frame' | 'cloth';

export interface Tool {
  readonly id: string;
  readonly name: string;
}

/** What somebody is about to do, so that the right cautions stand beside it. */
export type RiskyTask =
  | 'build'
  | 'dig'
  | 'floor'
  | 'concrete'
  | 'climb'
  | 'cut'
  | 'wind'
  | 'heat'
  | 'cloth'
  | 'drape'
  | 'spray'
  | 'winter';

export interface Caution {
  readonly id: string;
  readonly tasks: readonly RiskyTask[];
  /** A stop: not to go on before it is answered. */
  readonly stop: boolean;
  readonly text: string;
}

/** How many hands and hours, an estimate of this project's own. */
export interface WorkEstimate {
  readonly people: number;
  /** Person-hours, from someone who has done it before to someone who has not. */
  readonly parts: readonly { readonly what: string; readonly hours: HourRange }[];
  readonly hours: HourRange;
  /** Cool mornings of four hours for that many people. */
  readonly mornings: HourRange;
  readonly sentences: readonly string[];
}

export interface HourRange {
  readonly low: number;
  readonly high: number;
}
