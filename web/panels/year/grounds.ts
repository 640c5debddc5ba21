import type { Advice } from '../../../engine/index.ts';

/** What a sentence of advice rests on, in words. */
export function grounds({ basis, source }: Advice): string {
  return source === undefined ? basis : `${basis}: ${source}`;
}
