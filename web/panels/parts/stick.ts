import type { Units } from '../../../engine/index.ts';

/** The stick whose shadows are drawn: as long as people who measure so have one, and its rings at whole lengths. */
interface Stick {
  /** [m] */
  readonly length: number;
  readonly words: string;
  readonly rings: readonly string[];
}

const STICKS: Readonly<Record<Units, Stick>> = {
  metric: { length: 1, words: '1 m', rings: ['1 m', '2 m', '3 m'] },
  imperial: { length: 0.9144, words: '3 ft', rings: ['3 ft', '6 ft', '9 ft'] },
};

export function stickOf(units: Units): Stick {
  return STICKS[units];
}
