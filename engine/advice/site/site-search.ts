import type { Outcome } from '../../load/types.ts';
import type { Plan } from '../../plan/types.ts';
import { answersInRounds } from './answers.ts';
import { type Candidate, candidatesOf } from './choose.ts';
import { type InFull, inFull } from './in-full.ts';
import { type LaidOut, layOut } from './lay-out.ts';
import { type Progress, stretch } from './progress.ts';
import { betweenSteps, type Near, nearBy } from './refine/between-steps.ts';
import { resultOf, type Weighed, weighed } from './result.ts';
import { type LatticePart, searchYard, together } from './search-yard.ts';
import type { Standings } from './search/contest.ts';
import { spreadOut } from './search/lattice.ts';
import type { SiteRequest, SiteResult } from './types.ts';

/** A piece of a search's work: a part of the lattice, what lies near a candidate, or one worked out in full. */
export type SiteTask =
  | ({ readonly kind: 'turn' } & LatticePart)
  | { readonly kind: 'near'; readonly candidate: Candidate }
  | { readonly kind: 'full'; readonly candidate: Candidate };

/** What a task came to, under its kind. */
export interface SiteDone {
  readonly turn?: Standings;
  readonly near?: Near;
  readonly full?: InFull;
}

/** How far a search has come when tasks of a kind begin, and when they are done; the yard is laid out before. */
const SHARE_DONE = { turn: [0.15, 0.8], near: [0.8, 0.9], full: [0.9, 1] } as const;

/** What is to be done next, in any order and at once; or the answer. */
export type SiteStep<Result = SiteResult> =
  | {
      readonly tasks: readonly SiteTask[];
      /** How far the search has come before them, and after. */
      readonly from: number;
      readonly to: number;
    }
  | { readonly result: Result };

/**
 * A search in pieces: tasks and what they come to are plain data, so that each may be worked out anywhere; the answer
 * is the same to the bit whoever did what, and when.
 */
export interface SiteSearch {
  /** @param done what the tasks of each step so far came to, in their order */
  next(done: readonly (readonly SiteDone[])[]): SiteStep;
  /** @param beside what others of this step have come to: it may spare work */
  work(task: SiteTask, beside: readonly SiteDone[], progress: Progress): SiteDone;
}

/**
 * @param hands how many are to work at once
 * @returns a yard laid out for a search, or what is wrong with the request or the plan
 */
export function siteSearch(plan: Plan, request: SiteRequest, progress: Progress, hands = 1): Outcome<SiteSearch> {
  const found = layOut(plan, request, stretch(progress, 0, SHARE_DONE.turn[0]));
  if (!found.ok) return found;
  const laidOut = found.value;
  const near = nearBy(laidOut);
  const full = inFull(laidOut);
  let course = courseOf(laidOut, hands);
  let asked = 0;
  return {
    ok: true,
    value: {
      next(done) {
        // Whoever goes on from where the course has come to is spared going there anew.
        if (asked > done.length) [course, asked] = [courseOf(laidOut, hands), 0];
        let step = course.next(done[asked - 1] ?? []);
        while (asked++ < done.length) step = course.next(done[asked - 1]);
        if (step.done) return { result: step.value };
        const [from, to] = SHARE_DONE[step.value[0].kind];
        return { tasks: step.value, from, to };
      },
      work(task, beside, tell) {
        switch (task.kind) {
          case 'turn':
            return { turn: searchYard(laidOut, tell, task, standingsOf(beside)) };
          case 'near':
            tell(0, 'what to choose between');
            return { near: near(task.candidate) };
          case 'full':
            return { full: full(task.candidate, tell) };
        }
      },
    },
  };
}

type Course<Value> = Generator<readonly SiteTask[], Value, readonly SiteDone[]>;

/** From the lattice to the answers, step by step. */
function* courseOf(laidOut: LaidOut, hands: number): Course<SiteResult> {
  const { request, lattice } = laidOut;
  const parts = spreadOut(lattice.turns).flatMap((turn) =>
    Array.from({ length: hands }, (_, first) => ({ kind: 'turn' as const, turns: [turn], first, every: hands })),
  );
  const standings = together(laidOut, standingsOf(yield parts));
  const candidates = candidatesOf(laidOut, standings);
  const near = request.betweenSteps
    ? yield* working('near', betweenSteps(candidates), (_, done) => done.near!)
    : { candidates, tried: 0 };
  const answers = yield* working('full', answersInRounds<Candidate, Weighed>(near.candidates), (candidate, done) =>
    weighed(laidOut, candidate, done.full!),
  );
  return resultOf(laidOut, standings, answers, near.tried);
}

function standingsOf(done: readonly SiteDone[]): Standings[] {
  return done.flatMap(({ turn }) => turn ?? []);
}

/** What asks for candidates, asking for them as tasks of a kind. */
function* working<Value, Read>(
  kind: 'near' | 'full',
  asking: Generator<readonly Candidate[], Value, readonly Read[]>,
  read: (candidate: Candidate, done: SiteDone) => Read,
): Course<Value> {
  let step = asking.next([]);
  while (!step.done) {
    const candidates = step.value;
    const done = yield candidates.map((candidate) => ({ kind, candidate }));
    step = asking.next(candidates.map((candidate, k) => read(candidate, done[k])));
  }
  return step.value;
}
