import type { PictureLength } from '../../../../engine/index.ts';
import { keptForYard } from '../../../state/kept.ts';
import { taped } from '../measuring.ts';

/** The ends of a known length in the picture, and of a second one to check it. */
export const ENDS = ['first', 'second', 'checkFirst', 'checkSecond'] as const;
export type End = (typeof ENDS)[number];
export type Typed = Readonly<Record<End | 'length' | 'checkLength', string>>;

export const NOTHING: Typed = { first: '', second: '', length: '', checkFirst: '', checkSecond: '', checkLength: '' };
export const LABELS: Readonly<Record<End, string>> = {
  first: 'First point',
  second: 'Second point',
  checkFirst: 'First point of the check',
  checkSecond: 'Second point of the check',
};

/** Pixels from the upper left, and lengths on the ground, as they are typed. */
export const typed = keptForYard('picture', NOTHING);

export function pixelsOf(text: string): readonly [number, number] | null {
  const parts = text
    .trim()
    .split(/[\s,;]+/)
    .map(Number);
  return parts.length === 2 && parts.every((part) => Number.isFinite(part) && part >= 0) && text.trim() !== ''
    ? [parts[0], parts[1]]
    : null;
}

export function lengthOf(
  fromPx: readonly [number, number] | null,
  toPx: readonly [number, number] | null,
  text: string,
): PictureLength | null {
  const length = taped(text);
  return fromPx && toPx && length ? { fromPx, toPx, length: length.value } : null;
}
