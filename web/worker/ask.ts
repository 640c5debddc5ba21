import adviceWorker from 'virtual:worker/advice';
import mapWorker from 'virtual:worker/engine';
import surveyWorker from 'virtual:worker/survey';
import type { Outcome } from '../../engine/index.ts';
import type { AdviceMethods } from './advice-methods/index.ts';
import { createBridge, FOR_SHORT_JOBS } from './bridge.ts';
import type { Bridge, CallOptions } from './bridge.ts';
export type { CallOptions } from './bridge.ts';
export type { Progress } from './protocol.ts';
import type { Methods as MapMethods } from './methods/index.ts';
import { workerStarter } from './start-worker.ts';
import type { SurveyMethods } from './survey-methods.ts';

type Methods = MapMethods & SurveyMethods & AdviceMethods;
export type MethodName = keyof Methods;
export type ArgsOf<M extends MethodName> = Parameters<Methods[M]>[0];
export type ValueOf<M extends MethodName> = Awaited<ReturnType<Methods[M]>> extends Outcome<infer T> ? T : never;

const MAP_METHODS: Readonly<Record<keyof MapMethods, true>> = { day: true, load: true, spot: true, wallNear: true };
const SURVEY_METHODS: Readonly<Record<keyof SurveyMethods, true>> = {
  answerSheet: true,
  height: true,
  north: true,
  sheet: true,
  skyFrom: true,
  weatherFile: true,
  whereabouts: true,
  why: true,
};
/** What of the later stages is answered while one looks: no search and no comparison stands before it. */
type Quick = 'ground' | 'hidden' | 'marks' | 'payoff' | 'section' | 'shadowEdge';
const QUICK_METHODS: Readonly<Record<Quick, true>> = {
  ground: true,
  hidden: true,
  marks: true,
  payoff: true,
  section: true,
  shadowEdge: true,
};
const mapBridge = createBridge(workerStarter(mapWorker), FOR_SHORT_JOBS);
/** Finds things out, beside what the map is being reckoned for. */
const surveyBridge = createBridge(workerStarter(surveyWorker));
/** Of the later stages: their long searches never hold up the map. */
const adviceBridge = createBridge(workerStarter(adviceWorker));
/** A search that somebody waits for does not queue behind a comparison that nobody asked for. */
const searchBridge = createBridge(workerStarter(adviceWorker));
const quickBridge = createBridge(workerStarter(adviceWorker), FOR_SHORT_JOBS);
/**
 * For what is moved about by hand: neither a search nor a comparison stands before it, and what it has laid out stays.
 */
const trialBridge = createBridge(workerStarter(adviceWorker));

/**
 * Asks the engine, off the main thread. Resolves with a value or problems; rejects only when `options.signal` aborts it.
 */
export function ask<M extends MethodName>(
  method: M,
  args: ArgsOf<M>,
  options?: CallOptions,
): Promise<Outcome<ValueOf<M>>> {
  return bridgeOf(method).call(method, args, options) as Promise<Outcome<ValueOf<M>>>;
}

function bridgeOf(method: MethodName): Bridge {
  if (method in MAP_METHODS) return mapBridge;
  if (method in QUICK_METHODS) return quickBridge;
  if (method === 'site') return searchBridge;
  if (method === 'trial' || method === 'potThere') return trialBridge;
  return method in SURVEY_METHODS ? surveyBridge : adviceBridge;
}
