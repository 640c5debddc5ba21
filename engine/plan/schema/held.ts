/** What a value of a form is, as a type: all right, or as far as it was right when it was read. */

import type {
  ExactForm,
  KindsForm,
  LineForm,
  ListForm,
  NamedForm,
  NullableForm,
  NumberForm,
  ObjectForm,
  OutlineForm,
  PairForm,
  PathForm,
  PointForm,
  TextForm,
  WordsForm,
} from './form.ts';

/** A point of the plan: [x, y]. [m] */
export type PlanPoint = readonly [x: number, y: number];

/** A true bearing, or one of four words. */
export type Side = number | 'top' | 'all' | 'unknown';

declare const unsaid: unique symbol;
/**
 * Never a value. It stands in the type of every key for which something stands when it is left out, so that reading one
 * past `defaults.ts`, as in `canopy.rise ?? 0`, does not compile.
 */
export interface Unsaid {
  readonly [unsaid]: never;
}

/** A value that holds, said or not. */
export type Said<T> = Exclude<T, Unsaid | undefined>;

type Flat<T> = { [P in keyof T]: T[P] };

type HeldKeys<K> = Flat<
  { readonly [P in keyof K as K[P] extends { absent: unknown } ? never : P]: Held<K[P]> } & {
    readonly [P in keyof K as K[P] extends { absent: unknown } ? P : never]?: K[P] extends { absent: 'default' }
      ? Held<K[P]> | Unsaid
      : Held<K[P]>;
  }
>;

export type HeldKind<Tag extends string, Common, Kinds, K extends keyof Kinds> = Flat<
  { readonly [T in Tag]: K } & HeldKeys<Common> & HeldKeys<Kinds[K]>
>;

/** The value that a form holds when nothing is wrong with it. */
export type Held<F> = F extends NumberForm
  ? number
  : F extends WordsForm<infer W>
    ? W
    : F extends ExactForm<infer V>
      ? V
      : F extends PointForm
        ? PlanPoint
        : F extends PathForm | OutlineForm
          ? readonly PlanPoint[]
          : F extends LineForm
            ? readonly [PlanPoint, PlanPoint]
            : F extends PairForm
              ? readonly [number, number]
              : F extends TextForm
                ? string
                : F extends { form: 'flag' }
                  ? boolean
                  : F extends { form: 'texts' }
                    ? readonly string[]
                    : F extends { form: 'side' }
                      ? Side
                      : F extends NullableForm<infer O>
                        ? Held<O> | null
                        : F extends ListForm<infer O>
                          ? readonly Held<O>[]
                          : F extends NamedForm<infer O>
                            ? Readonly<Record<string, Held<O>>>
                            : F extends KindsForm<infer Tag, infer Common, infer Kinds>
                              ? { [K in keyof Kinds]: HeldKind<Tag, Common, Kinds, K> }[keyof Kinds]
                              : F extends ObjectForm<infer K>
                                ? HeldKeys<K>
                                : unknown;

/** What is left of a value when everything wrong in it is left out. */
export type Sound<F> =
  F extends ObjectForm<infer K>
    ? SoundKeys<K>
    : F extends ListForm<infer O>
      ? readonly (Sound<O> | undefined)[]
      : F extends NamedForm<infer O>
        ? Readonly<Record<string, Sound<O> | undefined>>
        : F extends KindsForm<infer Tag, infer Common, infer Kinds>
          ? { [K in keyof Kinds]: { readonly [T in Tag]?: K } & SoundKeys<Common> & SoundKeys<Kinds[K]> }[keyof Kinds]
          : Held<F>;

export type SoundKeys<K> = { readonly [P in keyof K]?: Sound<K[P]> };
