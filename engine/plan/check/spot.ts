import { pointerToken } from '../file/pointer.ts';
import { errorAt } from '../problems.ts';
import type { Json } from '../schema/form.ts';
import { label } from '../schema/say.ts';
import type { Problem } from '../types.ts';

/** Where a value stands in the file, what to call it in a sentence, and where its problems go. */
export interface Spot {
  readonly pointer: string;
  /** Whose it is: `Wall "west"`. */
  readonly subject: string;
  readonly key: string;
  /** What the value itself is called, where its key does not say it: "point 3 of path". */
  readonly name?: string;
  /** Its place in a list; 0 elsewhere. */
  readonly index: number;
  /** The object it is a key of, as it stands in the file. */
  readonly owner: Json;
  readonly problems: Problem[];
}

/** Says what is wrong with a value; what is wrong reads as `undefined`. */
export function wrong({ problems, pointer, subject }: Spot, message: string): undefined {
  problems.push(errorAt(pointer, subject === '' ? message : `${subject}: ${message}`));
  return undefined;
}

/** What a value is called in a sentence. */
export function called({ name, key }: Spot): string {
  return name ?? label(key);
}

/** The spot of a key of an object. */
export function keySpot(spot: Spot, subject: string, owner: Json, key: string, name?: string): Spot {
  const pointer = `${spot.pointer}/${pointerToken(key)}`;
  return { pointer, subject, key, name, index: 0, owner, problems: spot.problems };
}

/** An object that was read, as the rules for its keys see it. */
export interface It {
  readonly object: Json;
  readonly subject: string;
  readonly pointer: string;
}

/** Says what is wrong with a key of an object, or with a part of it. @param whose absent: its own; empty: nobody's */
export type Tell = (at: readonly (string | number)[], message: string, whose?: string) => void;
