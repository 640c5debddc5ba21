import {
  barredGround,
  blanksOf,
  cheaperFirst,
  compareOptions,
  doubtOf,
  fieldSheet,
  hiddenHeights,
  letterPictures,
  lookOver,
  moreForms,
  nextStepOf,
  payoffMap,
  placeOf,
  reportHtml,
  reportOf,
  reviewOf,
  seasonOf,
  sectionOf,
  shadowEdge,
  shadowMarks,
  siteOf,
  siteSeen,
  sunEyes,
  tomorrowOf,
  unitsOf,
  weeksAt,
  withAnswers,
  withOptions,
} from '../../../engine/index.ts';
import type {
  Answers,
  CivilDate,
  ClockTime,
  Forecast,
  MonthDay,
  Outcome,
  Period,
  Plan,
  PlanPoint,
  PotMove,
  SectionRequest,
  ShadowMark,
  SiteRequest,
  SiteResult,
  SiteSeen,
  Units,
  WeeksRequest,
  WhyResult,
} from '../../../engine/index.ts';
import type { MethodsOf } from '../methods.ts';
import type { Method, Task } from '../protocol.ts';
import { type AsBuilt, asBuilt, sure } from './as-built.ts';
import { potThere } from './pot-there.ts';
import { trial } from './trial.ts';

interface InUnits {
  readonly plan: Plan;
  readonly units: Units;
}

interface AnswerArgs {
  readonly plan: Plan;
  readonly answers: Answers;
  readonly date: CivilDate;
}

interface NextArgs extends InUnits {
  readonly why: Pick<WhyResult, 'plant' | 'answer'>;
}

interface SiteArgs {
  readonly plan: Plan;
  readonly request: SiteRequest;
}

interface MoreArgs extends SiteArgs {
  readonly moves: readonly PotMove[];
  readonly found: SiteResult;
}

interface PayoffArgs {
  readonly plan: Plan;
  /** [m] */
  readonly height: number;
  readonly density: number;
  /** [m] */
  readonly cell: number;
}

interface ReportArgs extends AsBuilt {
  readonly period: Period;
  readonly made: CivilDate;
  readonly withPlace: boolean;
}

type SunEyesArgs = { readonly suns: Parameters<typeof sunEyes>[1]; readonly monthDay: MonthDay };
type WeeksArgs = Omit<WeeksRequest, 'weather'> & { readonly at: PlanPoint };

/** @param args.plan as it is drawn: the options chosen are told among the others, too */
function report({ plan, options, made, withPlace, period }: ReportArgs, task: Task): Outcome<string> {
  const built = withOptions(plan, options);
  if (!built.ok) return built;
  const { progress, weather } = task;
  const tried = { plan, chosen: options };
  const found = reportOf(built.plan, { units: unitsOf(plan), weather, made, withPlace, progress, period, tried });
  return found.ok ? sure(reportHtml(found.value)) : found;
}

function site({ plan, request }: SiteArgs, { progress, weather }: Task): Outcome<SiteSeen> {
  const found = siteOf(plan, { ...request, weather }, progress);
  return found.ok ? sure(siteSeen(plan, found.value)) : found;
}

function answerSheet({ plan, answers: typed, date }: AnswerArgs) {
  const answered = withAnswers(plan, typed, date);
  return sure({ ...answered, left: blanksOf(answered.plan) });
}

/** What the later stages ask, and the papers that go out. */
export const answers = {
  /** The plan with what was written on the field sheet, and the blanks that are left, numbered anew. */
  answerSheet,
  cheaper: ({ plan, units }: InUnits, { weather }: Task) => cheaperFirst(plan, { units, weather }),
  compare: ({ plan, units }: InUnits, { progress, weather }: Task) =>
    compareOptions(plan, { units, progress, weather }),
  doubt: ({ plan, units }: InUnits, { progress, weather }: Task) => doubtOf(plan, { units, progress, weather }),
  ground: ({ plan, plant }: { readonly plan: Plan; readonly plant: string }) => barredGround(plan, plant),
  hidden: asBuilt((built, { plan, eye }: { readonly plan: Plan; readonly eye: string | null }) =>
    sure(hiddenHeights(plan, eye, built.features)),
  ),
  letter: ({ plan, id }: { readonly plan: Plan; readonly id: string }) => letterPictures(plan, id),
  lookOver: ({ plan }: { readonly plan: Plan }, { weather }: Task) => lookOver(plan, weather),
  marks: ({ plan, marks, units }: InUnits & { readonly marks: readonly ShadowMark[] }) =>
    shadowMarks(plan, marks, units),
  payoff: ({ plan, height, density, cell }: PayoffArgs, { weather }: Task) =>
    payoffMap(plan, { height, density, cell, weather }),
  moreForms: ({ plan, request, moves, found }: MoreArgs, { progress, weather }: Task) =>
    moreForms(plan, { ...request, weather }, moves, found, progress),
  nextStep: ({ plan, why, units }: NextArgs, { weather }: Task) => nextStepOf(plan, why, { units, weather }),
  place: ({ plan, plant }: { readonly plan: Plan; readonly plant: string }, { weather }: Task) =>
    placeOf(plan, { plant, weather }),
  potThere,
  report,
  review: ({ plan }: { readonly plan: Plan }) => sure(reviewOf(plan)),
  season: asBuilt((plan, _: object, { weather }) => seasonOf(plan, weather)),
  section: asBuilt((plan, { request }: { readonly request: SectionRequest }) => sectionOf(plan, request)),
  shadowEdge: ({ plan, feature, when }: { readonly plan: Plan; readonly feature: string; readonly when: ClockTime }) =>
    shadowEdge(plan, feature, when),
  sheet: ({ plan, dates }: { readonly plan: Plan; readonly dates: readonly CivilDate[] }) =>
    sure(fieldSheet(plan, dates)),
  site,
  sunEyes: asBuilt((plan, { suns, monthDay }: SunEyesArgs) => sure(sunEyes(plan, suns, monthDay))),
  tomorrow: asBuilt((plan, { forecast }: { readonly forecast: Forecast }) => tomorrowOf(plan, forecast)),
  trial,
  weeksAt: asBuilt((plan, { at, ...request }: WeeksArgs, { weather }) => weeksAt(plan, at, { ...request, weather })),
} satisfies Record<MethodsOf<'advice' | 'search' | 'quick' | 'trial'>, Method>;
