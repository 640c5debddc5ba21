import {
  allNorth,
  blanksOf,
  fieldSheet,
  heightFromShadow,
  skyFrom,
  weatherFile,
  whereabouts,
  whyBurnt,
  withAnswers,
} from '../../../engine/index.ts';
import type {
  Answers,
  CivilDate,
  MonthDay,
  NorthObservation,
  Plan,
  PlanPoint,
  ShadowSeen,
  WhereaboutsRequest,
  WhyRequest,
} from '../../../engine/index.ts';
import type { MethodsOf } from '../methods.ts';
import type { Method, Task } from '../protocol.ts';
import { asBuilt, sure } from './as-built.ts';

interface NorthArgs {
  readonly plan: Plan;
  readonly observations: readonly NorthObservation[];
  readonly date: CivilDate;
}

interface SkyArgs {
  readonly at: PlanPoint;
  /** [m] */
  readonly height: number;
  readonly monthDay: MonthDay;
}

interface AnswerArgs {
  readonly plan: Plan;
  readonly answers: Answers;
  readonly date: CivilDate;
}

function answerSheet({ plan, answers: typed, date }: AnswerArgs) {
  const answered = withAnswers(plan, typed, date);
  return sure({ ...answered, left: blanksOf(answered.plan) });
}

/** What the first stages ask beyond the map: the place, north, heights, the field sheet, and why something burnt. */
export const answers = {
  /** The plan with what was written on the sheet, and the blanks that are left, numbered anew. */
  answerSheet,
  height: (seen: ShadowSeen) => sure(heightFromShadow(seen)),
  north: ({ plan, observations, date }: NorthArgs) => sure(allNorth(plan, observations, date)),
  sheet: ({ plan, dates }: { readonly plan: Plan; readonly dates: readonly CivilDate[] }) =>
    sure(fieldSheet(plan, dates)),
  skyFrom: asBuilt((plan, { at, height, monthDay }: SkyArgs) => skyFrom(plan, at, height, monthDay)),
  weatherFile: ({ plan, bytes }: { readonly plan: Plan; readonly bytes: Uint8Array }) => weatherFile(plan, bytes),
  whereabouts: (request: WhereaboutsRequest) => sure(whereabouts(request)),
  why: ({ plan, request }: { readonly plan: Plan; readonly request: WhyRequest }, { weather }: Task) =>
    whyBurnt(plan, { ...request, weather }),
} satisfies Record<MethodsOf<'survey'>, Method>;
