/** Common trees by kind: how much sun passes their crowns, and when they stand bare, as a first guess. */

import { dayOfMonth } from '../dates/dates.ts';
import type { CrownShape, FeatureOf, MonthDay } from '../types.ts';
import crowns from './crowns.json' with { type: 'json' };
import type { PlantSource } from './plant-sources.ts';

export interface CrownKind {
  readonly id: string;
  readonly name: string;
  /** Share of the sun's beam that passes the whole crown in leaf, and by how much it may be off. */
  readonly openness: number;
  readonly pm: number;
  readonly shape: CrownShape;
  /** Months in the middle of which its leaves have fallen and come again, in the north; absent of an evergreen. */
  readonly bare?: { readonly from: number; readonly to: number; readonly openness: number };
  /** Key of `CROWN_SOURCES`. */
  readonly source: string;
  readonly note?: string;
}

/** By name. Pergolas are not among them: they are drawn as roofs. */
export const CROWN_KINDS: readonly CrownKind[] = crowns.crowns as readonly unknown[] as readonly CrownKind[];

export const CROWN_SOURCES: ReadonlyMap<string, PlantSource> = new Map(Object.entries(crowns.sources));

/** What a kind says of a drawn tree. */
export type CrownGuess = Required<Pick<FeatureOf<'tree'>, 'shape' | 'openness' | 'how'>> & {
  /** `undefined`: it keeps its leaves. */
  readonly leafless: FeatureOf<'tree'>['leafless'];
};

export function crownKindOf(id: string): CrownKind | undefined {
  return CROWN_KINDS.find((kind) => kind.id === id);
}

/** @param latitude south of the equator the year is half a year on [°] */
export function crownGuess({ openness, pm, shape, bare }: CrownKind, latitude: number): CrownGuess {
  const later = latitude < 0 ? 6 : 0;
  return {
    shape,
    openness,
    how: { openness: { by: 'catalogue', pm } },
    leafless: bare && {
      from: midMonth(bare.from + later),
      to: midMonth(bare.to + later),
      openness: bare.openness,
    },
  };
}

function midMonth(month: number): MonthDay {
  return dayOfMonth(((month - 1) % 12) + 1, 15);
}

/** Where a kind's numbers are from, in words. */
export function crownSourceWords({ source, note }: CrownKind): string {
  const { citation = source, status = '' } = CROWN_SOURCES.get(source) ?? {};
  return `${note === undefined ? '' : `${note}. `}${citation}${citation.startsWith(status) ? '' : ` (${status})`}.`;
}
