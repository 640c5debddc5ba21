import type { Method } from '../protocol.ts';
import { day } from './day.ts';
import { load } from './load.ts';
import { spot } from './spot.ts';
import { wallNear } from './wall-near.ts';

/** What the page can ask of the engine. To add a method: one file beside this one, one line here. */
export const methods = { day, load, spot, wallNear } satisfies Record<string, Method>;

export type Methods = typeof methods;
