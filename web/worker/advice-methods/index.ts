import type { Method } from '../protocol.ts';
import { why } from './why.ts';

/** What the page can ask beyond the map, the day and a spot. To add a method: one file beside this one, one line here. */
export const methods = { why } satisfies Record<string, Method>;

export type AdviceMethods = typeof methods;
