import type { Plan, Problem } from '../../plan/types.ts';
import type { Lattice } from './search/lattice-search.ts';
import type { ClothKind, ClothSize, SiteRequest } from './types.ts';

/** Sizes 'any' tries, each way round. [m] */
const ANY_SIDES = [1, 1.5, 2, 2.5, 3, 3.5, 4] as const;
/** Heights 'any' tries, besides the cap. [m] */
const ANY_HEIGHTS = [2, 2.2, 2.4, 2.7, 3] as const;
/**
 * A roof with drops has so many forms that, of more sizes × heights than this, only some are tried with drops, one drop
 * each.
 */
const FEW_FORMS = 3;
const ANY_BOX_SIZES: readonly ClothSize[] = [
  { length: 2, width: 2 },
  { length: 3, width: 2 },
  { length: 3, width: 3 },
];
const ANY_BOX_TURN = 15;
const BOX_HEIGHTS = 3;
const ANY_SCREEN_TOPS = [1.2, 1.5, 1.8, 2.1] as const;
/** Air must pass under a screen. [m] */
export const SCREEN_BOTTOM = 0.2;

export const SITE_DEFAULTS = {
  kinds: ['roof', 'roof with drops', 'screen'],
  densities: [0.3, 0.5, 0.7],
  dropDepths: [0.6, 1.2],
  maxDrops: 2,
  step: 0.25,
  turnStep: 5,
  count: 1,
  show: 6,
  hidden: true,
  keepLight: true,
  maxScores: 60_000,
} as const satisfies Partial<SiteRequest>;

const MOST_SIDE = 12;
const MOST_COUNT = 4;

/** A request with every gap filled, or what is wrong with it. */
export function latticeOf(
  plan: Plan,
  request: SiteRequest,
):
  | { ok: true; lattice: Lattice; sizes: ClothSize[]; densities: readonly number[] }
  | { ok: false; problems: Problem[] } {
  const {
    step = SITE_DEFAULTS.step,
    turnStep = SITE_DEFAULTS.turnStep,
    densities = SITE_DEFAULTS.densities,
    count = SITE_DEFAULTS.count,
  } = request;
  const kinds: readonly ClothKind[] = request.kinds ?? SITE_DEFAULTS.kinds;
  const cap = Math.min(plan.site.rules?.maxHeight ?? Infinity, request.maxHeight ?? Infinity);
  const sizes =
    request.sizes === undefined || request.sizes === 'any'
      ? anySizes()
      : request.sizes.map(({ length, width }) => ({ length: Math.max(length, width), width: Math.min(length, width) }));
  const asked = request.heights === undefined || request.heights === 'any' ? null : request.heights;
  const problems: Problem[] = [];
  const refuse = (option: string, message: string) =>
    problems.push({ pointer: `--${option}`, message, severity: 'error' });
  for (const { length, width } of sizes) {
    if (!(width >= step && length <= MOST_SIDE))
      refuse('size', `A size of ${length} × ${width} m cannot be searched: sides run from ${step} to ${MOST_SIDE} m.`);
  }
  for (const height of asked ?? [])
    if (!(height > 0.5 && height <= 6))
      refuse('height', `A height of ${height} m cannot be searched: cloth hangs from 0.5 to 6 m above the ground.`);
  for (const density of densities)
    if (!(density > 0 && density <= 1))
      refuse(
        'density',
        `A density of ${density} cannot be searched: it is the share of the light that the cloth blocks, more ` +
          `than 0, at most 1.`,
      );
  if (!(count >= 1 && count <= MOST_COUNT))
    refuse('count', `${count} things at once cannot be searched: from 1 to ${MOST_COUNT}.`);
  if (!(turnStep > 0 && turnStep <= 90))
    refuse('turn', `Turns of ${turnStep} degrees cannot be searched: more than 0, at most 90.`);
  if (problems.length > 0) return { ok: false, problems };
  const cells = (metres: number) => Math.max(1, Math.round(metres / step));
  const longest = Math.max(...sizes.map(({ length }) => length));
  const longSides = [...new Set(sizes.map(({ length }) => cells(length)))];
  const inCells = (some: readonly ClothSize[]) =>
    eitherWayRound(some.map(({ length, width }) => ({ a: cells(width), b: cells(length) })));
  const turns = Array.from({ length: Math.ceil(90 / turnStep - 1e-9) }, (_, k) => k * turnStep);
  const heights = asked ?? withCap(ANY_HEIGHTS, cap);
  const many = sizes.length * heights.length > FEW_FORMS;
  const lattice: Lattice = {
    turns,
    step,
    sizes: inCells(sizes),
    heights,
    box: {
      turns: many ? turns.filter((turn) => turn % ANY_BOX_TURN === 0) : turns,
      sizes: inCells(
        many && longest >= 2 && sizes.length > ANY_BOX_SIZES.length
          ? ANY_BOX_SIZES.filter(({ length }) => length <= longest)
          : sizes,
      ),
      heights: asked ?? heights.slice(0, BOX_HEIGHTS),
      depths: request.dropDepths ?? SITE_DEFAULTS.dropDepths,
      maxDrops: request.maxDrops ?? (many ? 1 : SITE_DEFAULTS.maxDrops),
    },
    screenCells: longSides,
    screenTops: asked ?? withCap(ANY_SCREEN_TOPS, cap),
    screenBottom: SCREEN_BOTTOM,
    kinds,
  };
  return { ok: true, lattice, sizes, densities: [...new Set(densities)] };
}

/** The lowest cloth of a lattice: what an onlooker is least likely to see. [m] */
export function lowestOf({ kinds, heights, screenTops }: Lattice): number {
  return Math.min(
    ...(kinds.includes('screen') ? screenTops : []),
    ...(kinds.length > 1 || !kinds.includes('screen') ? heights : []),
  );
}

function anySizes(): ClothSize[] {
  return ANY_SIDES.flatMap((length) =>
    ANY_SIDES.filter((width) => width <= length).map((width) => ({ length, width })),
  );
}

function eitherWayRound(sizes: readonly { a: number; b: number }[]): { a: number; b: number }[] {
  const known = new Map<string, { a: number; b: number }>();
  for (const { a, b } of sizes) {
    known.set(`${a} ${b}`, { a, b });
    known.set(`${b} ${a}`, { a: b, b: a });
  }
  return [...known.values()];
}

/** A cap between or below the usual heights is tried itself: the rule is used to the full. */
function withCap(heights: readonly number[], cap: number): number[] {
  const usable = cap > 0.5 && cap < heights[heights.length - 1] && !heights.includes(cap);
  return (usable ? [...heights, cap] : [...heights]).sort((a, b) => a - b);
}
