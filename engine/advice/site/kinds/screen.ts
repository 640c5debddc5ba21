import { AIR_GAP } from '../rules/yard-rules.ts';
import { boundParts, sparedByCloth } from '../scoring/score.ts';
import { type CurtainPlace, screenOf } from '../search/candidates.ts';
import { type AskedForms, cellsOf, falling, type ScreenForms, withLimits, inFeet } from '../search/lattice.ts';
import { Lookout } from '../search/lookout.ts';
import { placeFor } from '../search/place-for.ts';
import { type CurtainSums, curtainTables, sumOfCurtain } from '../search/plane-sums.ts';
import type { TurnedResponse } from '../search/responses.ts';
import type { Turn } from '../search/turn.ts';

/** Tops 'any' tries, besides the cap. [m] */
const ANY_TOPS = { metric: [1.2, 1.5, 1.8, 2.1], imperial: inFeet(4, 5, 6, 7) } as const;

/** A screen is as long as the longer side of a size. */
export function screenForms(asked: AskedForms): ScreenForms {
  return {
    cells: [...new Set(asked.sizes.map(({ length }) => cellsOf(length, asked.step)))],
    tops: asked.heights ?? withLimits(ANY_TOPS[asked.units], asked),
    bottom: AIR_GAP,
  };
}

export function mostScreenFirst(forms: ScreenForms): ScreenForms {
  return { ...forms, cells: falling(forms.cells), tops: falling(forms.tops) };
}

/** A length and a top, as their bound is read. */
interface Form {
  readonly cells: number;
  readonly top: number;
  /** Index of the top among the breaks of the tables. */
  readonly high: number;
  /** Family of the first place. */
  readonly family: number;
}

/** Holds every screen of one density, along and across the lattice, against what may meet it. */
export function searchScreens(at: Turn, response: TurnedResponse): void {
  const { turned, lattice, contest, rays, pairs } = at;
  const { tops, cells: lengths, bottom } = lattice.screen;
  const { screens, density } = response;
  const tables = curtainTables(turned, [bottom, ...tops], rays, pairs, screens, density);
  const forms = tops.flatMap((top) =>
    lengths.map((cells): Form => ({
      top,
      high: tables.u.breaks.indexOf(top),
      cells,
      family: contest.familyOf(`screen ${cells} ${top} ${density}`, () =>
        screenOf(turned, { along: 'u', line: 0, from: 0, cells, bottom, top }, density),
      ),
    })),
  );
  const parts = { u: boundParts(screens.u), v: boundParts(screens.v) };
  const look = new Lookout<CurtainPlace>(
    contest,
    {
      kind: 'screen',
      clothAt: (place) => screenOf(turned, place, density),
      sparedAt: (place, bound, enough) =>
        sparedByCloth(rays, pairs, response, null, [place], parts[place.along], bound, enough),
    },
    at.tell,
  );
  for (const along of ['u', 'v'] as const) searchAlong(at, along, tables[along], forms, look);
  look.look();
}

function searchAlong(
  at: Turn,
  along: 'u' | 'v',
  table: CurtainSums,
  forms: readonly Form[],
  look: Lookout<CurtainPlace>,
): void {
  const { contest, nearest, lattice } = at;
  const { bottom } = lattice.screen;
  const low = table.breaks.indexOf(bottom);
  const longest = Math.max(...forms.map(({ cells }) => cells));
  const highest = Math.max(...forms.map(({ high }) => high));
  for (const { cells } of forms) contest.candidates += table.lines * Math.max(0, table.lateral - cells);
  for (let line = 0; line < table.lines; line++) {
    for (let from = 0; from + 1 < table.lateral; from++) {
      const most = sumOfCurtain(table, line, from, Math.min(longest, table.lateral - 1 - from), low, highest);
      if (!contest.mayMatter(most)) continue;
      for (const { top, high, cells, family: first } of forms) {
        if (from + cells >= table.lateral) continue;
        const bound = sumOfCurtain(table, line, from, cells, low, high);
        const [i, j, a, b] = along === 'u' ? [from, line, cells, 0] : [line, from, 0, cells];
        const family = first + nearest.of(i, j, a, b);
        if (!contest.mayBeat(family, bound)) continue;
        const place = placeFor(at, i, j, a, b, top, null, bound);
        if (place !== 'no') look.add(family, bound, { along, line, from, cells, bottom, top }, place);
      }
    }
    look.lookIfMany();
  }
}
