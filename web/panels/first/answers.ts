import type { Units } from '../../../engine/index.ts';
import { isAlike, kept } from '../../state/kept.ts';
import { SEA_CHOICES, type SeaAnswer } from '../parts/world/sea.ts';
import { NORTH_WAYS, type NorthAnswers, SHEET_WAYS } from './north-of.ts';

/** The four plans that a yard may start from. */
export const SHAPES = {
  walled: 'Walls all round',
  front: 'House along one side',
  corner: 'House round a corner',
  passage: 'Between two houses',
} as const;
export type Shape = keyof typeof SHAPES;

/** The questions, in the order in which they are asked. */
const STEPS = ['place', 'summer', 'ground', 'north', 'walls', 'plant', 'damage'] as const;
export type StepName = (typeof STEPS)[number];

/** What a person has typed so far, as typed: half an answer is kept as well. */
export interface Answers extends NorthAnswers {
  readonly open: boolean;
  readonly step: number;
  /** Nothing burnt: the last question is left out. */
  readonly ahead: boolean;
  /** Questions passed over. */
  readonly skipped: readonly StepName[];
  readonly place: string;
  readonly sea: SeaAnswer;
  /** '' as the open yard has it. */
  readonly units: '' | Units;
  readonly high: string;
  readonly low: string;
  readonly hottest: string;
  readonly shape: Shape;
  readonly across: string;
  readonly deep: string;
  readonly measure: 'length' | 'steps';
  readonly wallHeight: string;
  readonly wallsKnown: 'tape' | 'guess';
  /** Of the house. */
  readonly floors: number;
  readonly plant: string;
  readonly plantHeight: string;
  readonly pot: boolean;
  /** Column and row of nine, 0 at the left and at the bottom of the sheet. */
  readonly spot: readonly [number, number];
  readonly side: string;
  readonly part: string;
  readonly month: number;
  readonly third: 'early' | 'mid' | 'late';
  readonly amount: number;
}

export const NOTHING_YET: Answers = {
  open: false,
  step: 0,
  ahead: false,
  skipped: [],
  place: '',
  sea: 'unknown',
  units: '',
  high: '',
  low: '',
  hottest: '',
  shape: 'walled',
  across: '',
  deep: '',
  measure: 'length',
  northBy: 'unknown',
  facing: 'N',
  shadowTo: 'N',
  shadowAtMs: 0,
  heading: '',
  wallHeight: '',
  wallsKnown: 'guess',
  floors: 1,
  plant: 'lemon',
  plantHeight: '',
  pot: true,
  spot: [1, 1],
  side: 'unknown',
  part: 'leaf',
  month: 7,
  third: 'mid',
  amount: 3,
};

export const answers = kept('first-minute', NOTHING_YET, isAnswers);

export function answer(change: Partial<Answers>): void {
  answers.value = { ...answers.value, ...change };
}

export function stepsOf({ ahead }: Answers): readonly StepName[] {
  return ahead ? STEPS.filter((step) => step !== 'damage') : STEPS;
}

/** Kept by an older or a broken page: forgotten rather than half believed. */
function isAnswers(found: unknown): found is Answers {
  return (
    isAlike(found, NOTHING_YET) &&
    Object.hasOwn(SHAPES, (found as Answers).shape) &&
    Object.hasOwn(SEA_CHOICES, (found as Answers).sea) &&
    Object.hasOwn(NORTH_WAYS, (found as Answers).northBy) &&
    Object.hasOwn(SHEET_WAYS, (found as Answers).facing) &&
    Object.hasOwn(SHEET_WAYS, (found as Answers).shadowTo) &&
    ['', 'metric', 'imperial'].includes((found as Answers).units)
  );
}
