import type { Outcome } from '../../engine/index.ts';
import { createBridge } from './bridge.ts';
import type { CallOptions } from './bridge.ts';
import EngineWorker from './engine.worker.ts?worker&inline';
import type { Methods } from './methods/index.ts';

export type MethodName = keyof Methods;
export type ArgsOf<M extends MethodName> = Parameters<Methods[M]>[0];
export type AnswerOf<M extends MethodName> = Awaited<ReturnType<Methods[M]>>;
export type ValueOf<M extends MethodName> = AnswerOf<M> extends Outcome<infer T> ? T : never;

const bridge = createBridge(() => new EngineWorker());

/** Asks the engine, off the main thread. Resolves with a value or problems; rejects only when `options.signal` aborts it. */
export function askEngine<M extends MethodName>(method: M, args: ArgsOf<M>, options?: CallOptions): Promise<AnswerOf<M>> {
  return bridge.call(method, args, options) as Promise<AnswerOf<M>>;
}
