import adviceWorker from 'virtual:worker/advice';
import mapWorker from 'virtual:worker/engine';
import surveyWorker from 'virtual:worker/survey';
import type { Outcome } from '../../engine/index.ts';
import type { answers as adviceAnswers } from './answers/advice.ts';
import type { answers as mapAnswers } from './answers/map.ts';
import type { answers as surveyAnswers } from './answers/survey.ts';
import { createBridge, FOR_SEARCHES, FOR_SHORT_JOBS } from './bridge.ts';
import type { Bridge, CallOptions } from './bridge.ts';
import { METHODS } from './methods.ts';
import type { BridgeName, MethodName } from './methods.ts';
import { workerStarter } from './start-worker.ts';

export type { CallOptions } from './bridge.ts';
export type { MethodName } from './methods.ts';
export { OF_THE_PROGRAM } from './protocol.ts';
export type { Progress } from './protocol.ts';

type Answers = typeof mapAnswers & typeof surveyAnswers & typeof adviceAnswers;
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

/**
 * Asks the engine, off the main thread. Resolves with a value or problems; rejects only when `options.signal` aborts
 * it.
 */
export function ask<M extends MethodName>(
  method: M,
  args: ArgsOf<M>,
  options?: CallOptions,
): Promise<Outcome<ValueOf<M>>> {
  return BRIDGES[METHODS[method]].call(method, args, options) as Promise<Outcome<ValueOf<M>>>;
}
