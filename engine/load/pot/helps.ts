/** What cools the roots in a pot, each alone. */

import type { RootHelpId } from '../types.ts';
import { BEARINGS } from '../verdict/plant-points.ts';
import type { StandingPot } from './pot-day.ts';
import {
  doublePotted,
  grouped,
  POT_ABSORPTANCE,
  potShaded,
  type RootZone,
  rootZone,
  whiteWrapped,
} from './root-zone.ts';

/** Light that a board, a cloth or a low plant before the pot leaves. Our choice. */
const BOARD_LEAVES = 0.3;
/** Pots set close cover so many sides next to each other, of the eight. Our choice. */
const COVERED = 3;

/** The pot after one of the helps. @param before as it stands */
export function rootsHelped({ day, pot }: StandingPot, before: RootZone, help: RootHelpId): RootZone {
  switch (help) {
    case 'white':
      return rootZone(day, whiteWrapped(pot));
    case 'double':
      return rootZone(day, doublePotted(pot));
    case 'group':
      return rootZone(grouped(day, closeTo(before.bearing)), pot);
    case 'shade':
      return rootZone(potShaded(day, BOARD_LEAVES), pot);
  }
}

/** White where the pot is not white already, else shade on the pot. */
export function firstHelp(standing: StandingPot, before: RootZone): { id: RootHelpId; warmest: number } {
  const id = standing.pot.absorptance > POT_ABSORPTANCE.white ? 'white' : 'shade';
  return { id, warmest: rootsHelped(standing, before, id).warmest };
}

/** The sides about a bearing. [°] */
function closeTo(bearing: number): number[] {
  const middle = BEARINGS.findIndex((each) => each === bearing);
  return Array.from(
    { length: COVERED },
    (_, n) => BEARINGS[(middle + n - (COVERED - 1) / 2 + BEARINGS.length) % BEARINGS.length],
  );
}
