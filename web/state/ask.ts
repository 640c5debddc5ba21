import type { Outcome } from '../../engine/index.ts';
import { ask } from '../worker/ask.ts';
import type { ArgsOf, CallOptions, MethodName, ValueOf } from '../worker/ask.ts';
import { weatherInUse } from './weather.ts';

export { OF_THE_PROGRAM } from '../worker/ask.ts';
export type { ArgsOf, MethodName, Progress, ValueOf } from '../worker/ask.ts';

/**
 * Asks the engine; what it reckons, it reckons after the weather file in use, if there is one.
 * Resolves with a value or problems; rejects only when `options.signal` aborts it.
 */
export function askEngine<M extends MethodName>(
  method: M,
  args: ArgsOf<M>,
  options?: Omit<CallOptions, 'weather'>,
): Promise<Outcome<ValueOf<M>>> {
  return ask(method, args, { ...options, weather: weatherInUse.peek() });
}
