import type { Method } from '../protocol.ts';

/** What the page can ask of the engine. To add a method: one file beside this one, one line here. */
export const methods = {
} satisfies Record<string, Method>;

export type Methods = typeof methods;
