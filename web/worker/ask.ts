import adviceWorker from 'virtual:worker/advice';
import mapWorker from 'virtual:worker/engine';
import surveyWorker from 'virtual:worker/survey';
import type { Outcome, SiteSeen } from '../../engine/index.ts';
import type { answers as adviceAnswers, SiteArgs } from './answers/advice.ts';
import type { answers as mapAnswers } from './answers/map.ts';
import type { answers as surveyAnswers } from './answers/survey.ts';
import { createBridge, FOR_SEARCHES, FOR_SHORT_JOBS } from './bridge.ts';
import type { Bridge, CallOptions } from './bridge.ts';
import { METHODS } from './methods.ts';
import type { BridgeName, MethodName as MethodOfOne } from './methods.ts';
import { searchOn } from './search-on.ts';
import { workerStarter } from './start-worker.ts';

export type { CallOptions } from './bridge.ts';
export { OF_THE_PROGRAM } from './protocol.ts';
export type { Progress } from './protocol.ts';

/** A search for cloth may be worked out by several workers at once, all else is by one. */
export type MethodName = MethodOfOne | 'site';
type Answers = typeof mapAnswers &
  typeof surveyAnswers &
  typeof adviceAnswers & { site(args: SiteArgs): Outcome<SiteSeen> };
export type ArgsOf<M extends MethodName> = Parameters<Answers[M]>[0];
export type ValueOf<M extends MethodName> = Awaited<ReturnType<Answers[M]>> extends Outcome<infer T> ? T : never;

const startAdvice = workerStarter(adviceWorker);
const BRIDGES: Readonly<Record<BridgeName, Bridge>> = {
  map: createBridge(workerStarter(mapWorker), FOR_SHORT_JOBS),
  survey: createBridge(workerStarter(surveyWorker)),
  advice: createBridge(startAdvice),
  search: createBridge(startAdvice, FOR_SEARCHES),
  quick: createBridge(startAdvice, FOR_SHORT_JOBS),
  trial: createBridge(startAdvice),
};
const SEARCHERS = [BRIDGES.search] as const;

/**
 * Asks the engine, off the main thread. Resolves with a value or problems; rejects only when `options.signal` aborts
 * it.
 */
export function ask<M extends MethodName>(
  method: M,
  args: ArgsOf<M>,
  options?: CallOptions,
): Promise<Outcome<ValueOf<M>>> {
  const answer =
    method === 'site'
      ? searchOn(SEARCHERS, args as SiteArgs, options)
      : BRIDGES[METHODS[method as MethodOfOne]].call(method, args, options);
  return answer as Promise<Outcome<ValueOf<M>>>;
}
