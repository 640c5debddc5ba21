/**
 * The forms that a value of the plan file can have, as data. What stands in `schema/` is written in them once; the
 * types (`held.ts`), the check (`check/read.ts`), the boxes of the page and the list of doubtful numbers follow.
 */

/** Which numbers a key may hold. `above` is an open end. */
export interface NumberRule {
  readonly min?: number;
  readonly above?: number;
  readonly max?: number;
  /** Absent: a share, a count or a price. */
  readonly unit?: string;
  readonly whole?: boolean;
  /** What a number is where its unit does not say: a share of the light, or a height above the ground. */
  readonly is?: 'share' | 'height';
}

export interface NumberForm {
  readonly form: 'number';
  readonly rule: NumberRule;
  /** What to write beside its box; without it the number has no box among its thing's numbers. */
  readonly title?: string;
}

/** Texts, and those that follow a pattern. */
export interface TextForm {
  readonly form:
    | 'text'
    | 'id'
    | 'month-day'
    | 'season-day'
    | 'civil-date'
    | 'clock-time'
    | 'planted'
    | 'zone'
    | 'image';
}

interface PlainForm {
  readonly form: 'flag' | 'texts' | 'side' | 'anything';
}

export interface WordsForm<W extends string = string> {
  readonly form: 'words';
  readonly words: readonly W[];
}

export interface ExactForm<V extends string | number = string | number> {
  readonly form: 'exactly';
  readonly value: V;
}

/** One point; a path of at least so many different points; a simple outline; two different points. */
export interface PointForm {
  readonly form: 'point';
}
export interface PathForm {
  readonly form: 'path';
  readonly least: 1 | 2;
}
export interface OutlineForm {
  readonly form: 'outline';
  /** The cells in which it is worked out, by the name of their default size. */
  readonly cells?: 'cell' | 'bedCell';
}
export interface LineForm {
  readonly form: 'line';
}

/** Two numbers, the lesser first. */
export interface PairForm {
  readonly form: 'pair';
  readonly rule: NumberRule;
}

export interface NullableForm<F = unknown> {
  readonly form: 'or null';
  readonly of: F;
}

/** An object as its keys stand in the file. */
export type Json = Readonly<Record<string, unknown>>;

/** What an object is called in a sentence: by itself, its place in a list, whose it is, and its key there. */
export type Called = string | ((item: Json, index: number, owner: string, key: string) => string);

export interface ListForm<F = unknown> {
  readonly form: 'list';
  readonly of: F;
  readonly most?: number;
  /** What to say when there is none. */
  readonly empty?: string;
  /** What to say of an item that is wrong, where its own form does not say it. */
  readonly wrong?: (item: unknown) => string;
  /** A key whose value no two items share. */
  readonly once?: {
    readonly key: string;
    readonly as?: (value: unknown) => unknown;
    readonly says: (value: unknown) => string;
  };
}

/** An object whose keys are names that people or ids give. */
export interface NamedForm<F = unknown> {
  readonly form: 'by name';
  readonly of: F;
  readonly called: Called;
  /** What a value is called in a sentence; absent: its key. */
  readonly each?: (key: string) => string;
}

export type Keys = Readonly<Record<string, Form & Optionality>>;

export interface ObjectForm<K = Keys> {
  readonly form: 'object';
  readonly called: Called;
  readonly keys: K;
  /** Its problems are said with its owner's name before them. */
  readonly apart?: boolean;
}

/** An object that a word in it sorts into kinds. */
export interface KindsForm<Tag extends string = string, Common = Keys, Kinds = Readonly<Record<string, Keys>>> {
  readonly form: 'kinds';
  readonly called: Called;
  readonly tag: Tag;
  /** "a kind of thing". */
  readonly what: string;
  readonly common: Common;
  readonly kinds: Kinds;
}

export type Form =
  | NumberForm
  | TextForm
  | PlainForm
  | WordsForm
  | ExactForm
  | PointForm
  | PathForm
  | OutlineForm
  | LineForm
  | PairForm
  | NullableForm
  | ListForm
  | NamedForm
  | ObjectForm
  | KindsForm;

/** Whether a key may be left out, and whether something then stands for it (`defaults.ts`). */
export interface Optionality {
  readonly absent?: 'nothing' | 'default';
}

export const text = { form: 'text' } as const;
export const flag = { form: 'flag' } as const;
export const point = { form: 'point' } as const;
export const monthDay = { form: 'month-day' } as const;

export function optional<const F extends Form>(form: F): F & { readonly absent: 'nothing' } {
  return { ...form, absent: 'nothing' };
}

/** A key for which something stands when it is left out: read it through `defaults.ts` only. */
export function defaulted<const F extends Form>(form: F): F & { readonly absent: 'default' } {
  return { ...form, absent: 'default' };
}

export function number(rule: NumberRule, title?: string): NumberForm {
  return { form: 'number', rule, title };
}

export function words<const W extends string>(...list: readonly W[]): WordsForm<W> {
  return { form: 'words', words: list };
}

export function exactly<const V extends string | number>(value: V): ExactForm<V> {
  return { form: 'exactly', value };
}

export function list<F extends Form>(of: F, more: Omit<ListForm, 'form' | 'of'> = {}): ListForm<F> {
  return { form: 'list', of, ...more };
}

export function byName<F extends Form>(called: Called, of: F, each?: NamedForm['each']): NamedForm<F> {
  return { form: 'by name', of, called, each };
}

export function object<K extends Keys>(called: Called, keys: K): ObjectForm<K> {
  return { form: 'object', called, keys };
}

export function orNull<F extends Form>(of: F): NullableForm<F> {
  return { form: 'or null', of };
}
