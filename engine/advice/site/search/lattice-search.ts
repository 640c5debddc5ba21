import { curtainsOfDrops, mostDropsFirst, searchRoofsWithDrops } from '../kinds/roof-with-drops.ts';
import { mostRoofFirst, searchRoofs } from '../kinds/roof.ts';
import { mostScreenFirst, searchScreens } from '../kinds/screen.ts';
import { spreadOut } from './lattice.ts';
import { layOutTurn, levelsOf, type Search, type Turn } from './turn.ts';

/**
 * Holds every candidate of the lattice against its bound and enters the promising ones in the contest.
 * @param tell hears the share that is done
 */
export function searchLattice(asked: Search, tell: (done: number) => void): void {
  const search = mostClothFirst(asked);
  const turns = spreadOut(search.lattice.turns);
  for (const [index, turn] of turns.entries()) {
    let done = 0;
    const at = layOutTurn(search, turn, () => tell((index + done) / turns.length));
    searchTurn(at, (share) => (done = share));
  }
}

/** Densest first, too: what spares most leaves fewest others worth a look. */
function mostClothFirst(search: Search): Search {
  const { lattice, responses } = search;
  return {
    ...search,
    responses: responses.toSorted((one, other) => other.density - one.density),
    lattice: {
      ...lattice,
      roof: mostRoofFirst(lattice.roof),
      drops: mostDropsFirst(lattice.drops),
      screen: mostScreenFirst(lattice.screen),
    },
  };
}

/** @param reached hears the share of the turn that is done */
function searchTurn(at: Turn, reached: (share: number) => void): void {
  const { lattice, answers, turned } = at;
  const withRoofs = lattice.kinds.includes('roof');
  const withDrops = lattice.kinds.includes('roof with drops') && lattice.drops.turns.includes(turned.turn);
  const withScreens = lattice.kinds.includes('screen');
  const heights = withRoofs || withDrops ? lattice.roof.heights : [];
  const jobs = heights.length + (withScreens ? 1 : 0);
  const curtains = withDrops ? answers.map((response) => curtainsOfDrops(at, response)) : [];
  if (withScreens) for (const response of answers) searchScreens(at, response);
  const levelAt = levelsOf(at);
  for (const [k, height] of heights.entries()) {
    reached((k + (withScreens ? 1 : 0)) / jobs);
    const level = levelAt(height);
    for (const [r, response] of answers.entries()) {
      if (withRoofs) searchRoofs(at, level, response);
      if (withDrops && lattice.drops.heights.includes(height)) searchRoofsWithDrops(at, level, response, curtains[r]);
    }
  }
}
