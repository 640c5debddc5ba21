import type { Drop, DropSide } from '../../../plan/types.ts';
import { boundParts, sparedByCloth } from '../scoring/score.ts';
import { curtainOf, type CurtainPlace, roofOf, type RoofPlace } from '../search/candidates.ts';
import {
  type AskedForms,
  type DropForms,
  falling,
  type Footprint,
  footprintsOf,
  largestFirst,
  type RoofForms,
  inFeet,
} from '../search/lattice.ts';
import { Lookout } from '../search/lookout.ts';
import { cornerMatters, leavesLight, placeFor } from '../search/place-for.ts';
import {
  type CurtainTables,
  curtainTables,
  overheadGain,
  payoffSums,
  sumOfCurtain,
  sumOver,
} from '../search/plane-sums.ts';
import type { TurnedResponse } from '../search/responses.ts';
import type { Level, Turn } from '../search/turn.ts';
import type { ClothSize } from '../types.ts';

/**
 * A roof with drops has so many forms that, of more sizes × heights than this, only some are tried with drops, one drop
 * each.
 */
const FEW_FORMS = 3;
const ANY_SIZES: readonly ClothSize[] = [
  { length: 2, width: 2 },
  { length: 3, width: 2 },
  { length: 3, width: 3 },
];
/** [°] */
const ANY_TURN = 15;
const ANY_HEIGHTS = 3;
/** [m] */
const DEPTHS = { metric: [0.6, 1.2], imperial: inFeet(2, 4) } as const;
export const MOST_DROPS = 2;

const SIDES: readonly DropSide[] = ['front', 'back', 'left', 'right'];
const [FRONT, BACK, LEFT, RIGHT] = [0, 1, 2, 3];
const ONE_SIDE: readonly (readonly DropSide[])[] = SIDES.map((side) => [side]);
const TWO_SIDES: readonly (readonly DropSide[])[] = SIDES.flatMap((a, k) => SIDES.slice(k + 1).map((b) => [a, b]));
const SIDES_TRIED = { 1: ONE_SIDE, 2: [...ONE_SIDE, ...TWO_SIDES] } as const;

export function dropForms(asked: AskedForms, roof: RoofForms): DropForms {
  const { sizes, heights, step, units, turns, dropDepths, maxDrops } = asked;
  const many = sizes.length * roof.heights.length > FEW_FORMS;
  const longest = Math.max(...sizes.map(({ length }) => length));
  const fewer = many && longest >= 2 && sizes.length > ANY_SIZES.length;
  return {
    turns: many ? turns.filter((turn) => turn % ANY_TURN === 0) : turns,
    sizes: footprintsOf(fewer ? ANY_SIZES.filter(({ length }) => length <= longest) : sizes, step),
    heights: heights ?? roof.heights.slice(0, ANY_HEIGHTS),
    depths: dropDepths ?? DEPTHS[units],
    maxDrops: maxDrops ?? (many ? 1 : MOST_DROPS),
  };
}

export function mostDropsFirst(forms: DropForms): DropForms {
  return { ...forms, sizes: largestFirst(forms.sizes), depths: falling(forms.depths) };
}

/** What drops of one density may spare on top of their roof. */
export function curtainsOfDrops(
  { turned, rays, pairs, lattice }: Turn,
  { drops, density }: TurnedResponse,
): CurtainTables {
  const { heights, depths } = lattice.drops;
  const breaks = heights.flatMap((height) => [height, ...depths.map((depth) => height - depth)]);
  return curtainTables(turned, breaks, rays, pairs, drops, density);
}

interface DropPlace {
  readonly roof: RoofPlace;
  readonly curtains: readonly CurtainPlace[];
  readonly drops: readonly Drop[];
}

/** Sides that get a drop, and how much cloth that makes. */
interface SideSet {
  readonly sides: readonly DropSide[];
  readonly indices: readonly number[];
  /** Family of the first place. */
  readonly family: number;
}

/** Holds every roof with drops of one height and density against what its ground and its sides may spare. */
export function searchRoofsWithDrops(at: Turn, level: Level, response: TurnedResponse, curtains: CurtainTables): void {
  const { turned, lattice, contest, rays, pairs } = at;
  const { box, drops, density } = response;
  payoffSums(rays, pairs, level.crossings, box, density, level.plane);
  const base = overheadGain(pairs, box, density);
  const light = level.light(density);
  const parts = boundParts(box, drops.u, drops.v);
  const look = new Lookout<DropPlace>(
    contest,
    {
      kind: 'roof with drops',
      clothAt: ({ roof, drops }) => roofOf(turned, roof, density, drops),
      leavesLight: ({ roof: { i, j, a, b } }, bound) => leavesLight(contest, light, i, j, a, b, bound),
      sparedAt: ({ roof, curtains }, bound, enough) =>
        sparedByCloth(rays, pairs, response, roof, curtains, parts, bound, enough),
    },
    at.tell,
  );
  for (const depth of lattice.drops.depths)
    for (const size of lattice.drops.sizes) searchForm(at, level, density, base, curtains, size, depth, look);
  look.look();
}

function searchForm(
  at: Turn,
  level: Level,
  density: number,
  base: number,
  { u: frontal, v: lateral }: CurtainTables,
  { a, b }: Footprint,
  depth: number,
  look: Lookout<DropPlace>,
): void {
  const { turned, contest, nearest } = at;
  const { height, plane, blocked } = level;
  const { columns, rows } = turned;
  const width = columns + 1;
  const [low, high] = [frontal.breaks.indexOf(height - depth), frontal.breaks.indexOf(height)];
  const sets = sideSets(at, { a, b }, depth, height, density);
  const gains = new Float64Array(SIDES.length);
  contest.candidates += sets.length * Math.max(0, columns - a + 1) * Math.max(0, rows - b + 1);
  for (let j = 0; j + b <= rows; j++) {
    for (let i = 0; i + a <= columns; i++) {
      const roof = base + sumOver(plane, 0, width, i, j, a, b);
      gains[FRONT] = sumOfCurtain(frontal, j + b, i, a, low, high);
      gains[BACK] = sumOfCurtain(frontal, j, i, a, low, high);
      gains[LEFT] = sumOfCurtain(lateral, i, j, b, low, high);
      gains[RIGHT] = sumOfCurtain(lateral, i + a, j, b, low, high);
      const most = roof + gains[FRONT] + gains[BACK] + gains[LEFT] + gains[RIGHT];
      if (!contest.mayMatter(most) || !cornerMatters(at, i, j, height, most)) continue;
      const lane = nearest.of(i, j, a, b);
      for (const { sides, indices, family: first } of sets) {
        let bound = roof;
        for (let k = 0; k < indices.length; k++) bound += gains[indices[k]];
        const family = first + lane;
        if (!contest.mayBeat(family, bound)) continue;
        const place = placeFor(at, i, j, a, b, height, blocked, bound);
        if (place !== 'no') look.add(family, bound, dropPlace({ i, j, a, b, height }, sides, depth, density), place);
      }
    }
    look.lookIfMany();
  }
}

function sideSets(
  { lattice, contest, turned }: Turn,
  { a, b }: Footprint,
  depth: number,
  height: number,
  density: number,
): SideSet[] {
  return SIDES_TRIED[lattice.drops.maxDrops].map((sides) => ({
    sides,
    indices: sides.map((side) => SIDES.indexOf(side)),
    family: contest.familyOf(`drops ${a} ${b} ${height} ${density} ${depth} ${sides.join(' ')}`, () => {
      const { roof, drops } = dropPlace({ i: 0, j: 0, a, b, height }, sides, depth, density);
      return roofOf(turned, roof, density, drops);
    }),
  }));
}

function dropPlace(roof: RoofPlace, sides: readonly DropSide[], depth: number, density: number): DropPlace {
  return {
    roof,
    curtains: sides.map((side) => curtainOf(roof, side, depth)),
    drops: sides.map((side) => ({ side, depth, density })),
  };
}
