import { height } from './advice-methods/height.ts';
import { north } from './advice-methods/north.ts';
import { skyFrom } from './advice-methods/sky-from.ts';
import { why } from './advice-methods/why.ts';
import type { Method } from './protocol.ts';

/** What the first stages ask beyond the map: finding out the place, north, heights, and why something burnt. */
export const methods = { height, north, skyFrom, why } satisfies Record<string, Method>;

export type SurveyMethods = typeof methods;
