import mapPart from 'virtual:worker-part/engine';
import type { Outcome } from '../../engine/index.ts';
import type { AdviceMethods } from './advice-methods/index.ts';
import { createBridge } from './bridge.ts';
import type { Bridge, CallOptions } from './bridge.ts';
import type { Methods as MapMethods } from './methods/index.ts';
import { workerStarter } from './start-worker.ts';

type Methods = MapMethods & AdviceMethods;
export type MethodName = keyof Methods;
export type ArgsOf<M extends MethodName> = Parameters<Methods[M]>[0];
export type ValueOf<M extends MethodName> = Awaited<ReturnType<Methods[M]>> extends Outcome<infer T> ? T : never;

const MAP_METHODS: Readonly<Record<keyof MapMethods, true>> = { day: true, load: true, spot: true };
const mapBridge = createBridge(workerStarter(mapPart));

/** Asks the engine, off the main thread. Resolves with a value or problems; rejects only when `options.signal` aborts it. */
export async function askEngine<M extends MethodName>(method: M, args: ArgsOf<M>, options?: CallOptions): Promise<Outcome<ValueOf<M>>> {
  const bridge: Bridge = method in MAP_METHODS ? mapBridge : (await import('./advice-bridge.ts')).adviceBridge;
  return bridge.call(method, args, options) as Promise<Outcome<ValueOf<M>>>;
}
