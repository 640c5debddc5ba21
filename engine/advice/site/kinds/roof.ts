import { boundParts, sparedByCloth } from '../scoring/score.ts';
import { roofOf, type RoofPlace } from '../search/candidates.ts';
import { type AskedForms, footprintsOf, largestFirst, type RoofForms, withLimits, inFeet } from '../search/lattice.ts';
import { Lookout } from '../search/lookout.ts';
import { cornerMatters, leavesLight, placeFor } from '../search/place-for.ts';
import { overheadGain, payoffSums, sumOver } from '../search/plane-sums.ts';
import type { Response } from '../search/responses.ts';
import type { Level, Turn } from '../search/turn.ts';

/** Heights 'any' tries, besides the cap. [m] */
const ANY_HEIGHTS = { metric: [2, 2.2, 2.4, 2.7, 3], imperial: inFeet(7, 7.5, 8, 9, 9.5) } as const;

export function roofForms(asked: AskedForms): RoofForms {
  return {
    sizes: footprintsOf(asked.sizes, asked.step),
    heights: asked.heights ?? withLimits(ANY_HEIGHTS[asked.units], asked),
  };
}

export function mostRoofFirst(forms: RoofForms): RoofForms {
  return { ...forms, sizes: largestFirst(forms.sizes) };
}

/** Holds every roof of one height and density against the payoff of the ground it covers. */
export function searchRoofs(at: Turn, level: Level, response: Response): void {
  const { turned, lattice, contest, nearest, rays, pairs } = at;
  const { height, blocked, plane, crossings } = level;
  const { roof, density } = response;
  payoffSums(rays, pairs, crossings, roof, density, plane);
  const light = level.light(density);
  const parts = boundParts(roof);
  const look = new Lookout<RoofPlace>(
    contest,
    {
      kind: 'roof',
      clothAt: (place) => roofOf(turned, place, density),
      leavesLight: ({ i, j, a, b }, bound) => leavesLight(contest, light, i, j, a, b, bound),
      sparedAt: (place, bound, enough) => sparedByCloth(rays, pairs, response, place, [], parts, bound, enough),
    },
    at.tell,
  );
  const base = overheadGain(pairs, roof, density);
  const { columns, rows } = turned;
  const width = columns + 1;
  const sizes = lattice.roof.sizes.map(({ a, b }) => ({
    a,
    b,
    family: contest.familyOf(`roof ${Math.min(a, b)} ${Math.max(a, b)} ${height} ${density}`, () =>
      roofOf(turned, { i: 0, j: 0, a, b, height }, density),
    ),
  }));
  const [widest, deepest] = [Math.max(...sizes.map(({ a }) => a)), Math.max(...sizes.map(({ b }) => b))];
  for (const { a, b } of sizes) contest.candidates += Math.max(0, columns - a + 1) * Math.max(0, rows - b + 1);
  for (let j = 0; j < rows; j++) {
    for (let i = 0; i < columns; i++) {
      // No roof from this node on spares more than all the ground that the largest would cover.
      const most = sumOver(plane, 0, width, i, j, Math.min(widest, columns - i), Math.min(deepest, rows - j));
      if (!contest.mayMatter(base + most) || !cornerMatters(at, i, j, height, base + most)) continue;
      for (const { a, b, family: first } of sizes) {
        if (i + a > columns || j + b > rows) continue;
        const bound = base + sumOver(plane, 0, width, i, j, a, b);
        const family = first + nearest.of(i, j, a, b);
        if (!contest.mayBeat(family, bound)) continue;
        const place = placeFor(at, i, j, a, b, height, blocked, bound);
        if (place !== 'no') look.add(family, bound, { i, j, a, b, height }, place);
      }
    }
    look.lookIfMany();
  }
  look.look();
}
