import type { Outcome, Weather } from '../../engine/index.ts';

/** How far a long job has come. */
export interface Progress {
  /** 0 to 1, never falling. */
  readonly done: number;
  /** What is being worked on, in a few words. */
  readonly what: string;
}

/** What a method is handed beside its arguments. */
export interface Task {
  /** Cheap to call often; the page hears at most one every 50 ms. */
  progress(done: number, what: string): void;
  /** The hours of the weather file that the open yard is reckoned after; absent without one. */
  readonly weather?: Weather;
}

/**
 * A method of the worker: plain data in, plain data out, problems as values. Arrays of numbers move, they are not
 * copied.
 */
export type Method = (args: never, task: Task) => Outcome<unknown> | Promise<Outcome<unknown>>;

/** Page to worker. */
export interface Call {
  readonly id: number;
  readonly method: string;
  readonly args: unknown;
  readonly weather?: Weather;
}

/** Where a problem lies that is the program's own, not the plan's: no JSON Pointer looks like it. */
export const OF_THE_PROGRAM = 'program';

/** Worker to page. `lives` is an address that answers as long as the worker lives; null where none can be had. */
export type Reply =
  | { readonly lives: string | null }
  | { readonly id: number; readonly progress: Progress }
  | { readonly id: number; readonly answer: Outcome<unknown> };
