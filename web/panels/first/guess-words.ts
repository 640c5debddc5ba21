import { shownName } from '../../../engine/index.ts';
import type { Feature } from '../../../engine/index.ts';

const KEY_WORDS: Readonly<Record<string, string>> = {
  upBearing: 'north',
  boundary: 'the size of the ground',
  months: "the months' temperatures",
  gust: 'the strongest gust',
  height: 'height',
  thickness: 'thickness',
  spread: 'width',
  crownWidth: "crown's width",
  crownBase: "crown's foot",
  openness: 'light through',
  plantHeight: 'height',
};

/** What is guessed, as a person would say it: "Lemon: width". */
export function guessWords(feature: Feature | null, key: string): string {
  const words = KEY_WORDS[key] ?? key;
  return feature === null ? words : `${shownName(feature.name ?? feature.id)}: ${words}`;
}
