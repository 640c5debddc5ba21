import { plantFeatures } from '../../load/verdict/planted.ts';
import { featureOf, middleOf } from '../../plan/edit/edit-feature.ts';
import { countUp } from '../../plan/numbers/tolerances.ts';
import { errorAt } from '../../plan/problems.ts';
import { withoutUndefined } from '../../plan/schema/say.ts';
import type { Plan, Problem } from '../../plan/types.ts';
import { METRES_PER_FOOT } from '../../plan/units/per-unit.ts';
import { unitsOf, type Units } from '../../plan/units/units.ts';
import { downToHand } from './hand.ts';
import { dropForms } from './kinds/roof-with-drops.ts';
import { roofForms } from './kinds/roof.ts';
import { screenForms } from './kinds/screen.ts';
import { type Hiding, hidingOf } from './rules/hiding.ts';
import type { Lattice } from './search/lattice.ts';
import type { ClothSize, SiteRequest } from './types.ts';

/** Sizes 'any' tries, each way round. [m] */
const ANY_SIDES = [1, 1.5, 2, 2.5, 3, 3.5, 4] as const;

const SITE_DEFAULTS = {
  kinds: ['roof', 'roof with drops', 'screen'],
  turnStep: 15,
  count: 1,
  keepLight: true,
  betweenSteps: true,
} as const satisfies Partial<SiteRequest>;
/** Step of the positions, in whole units of whoever reads the sizes. [m] */
const STEP = { metric: 0.25, imperial: METRES_PER_FOOT } as const;

const MOST_SIDE = 12;
/** Heights that hide are tried between these. [m] */
const LOWEST_HIDING = 1.5;
const HIGHEST_HIDING = 3;
const MOST_COUNT = 4;

/** A request with its gaps filled; what only some kinds of cloth ask stands in the lattice. */
type FilledRequest = SiteRequest & Required<Pick<SiteRequest, keyof typeof SITE_DEFAULTS | 'step' | 'units'>>;

export interface Asked {
  readonly request: FilledRequest;
  readonly lattice: Lattice;
  /** The longer side first. */
  readonly sizes: readonly ClothSize[];
  /** Height cap, the plan's and the person's; Infinity: none. [m] */
  readonly cap: number;
  readonly hiding: Hiding;
}

/** What a request asks for, laid out, or what is wrong with it. */
export function askedOf(
  plan: Plan,
  asked: SiteRequest,
): { readonly ok: true; readonly value: Asked } | { readonly ok: false; readonly problems: readonly Problem[] } {
  const request = filled(plan, asked);
  const sizes =
    request.sizes === undefined || request.sizes === 'any'
      ? anySizes()
      : request.sizes.map(({ length, width }) => ({ length: Math.max(length, width), width: Math.min(length, width) }));
  const heights = request.heights === undefined || request.heights === 'any' ? null : request.heights;
  const problems = problemsOf(plan, request, sizes, heights ?? []);
  if (problems.length > 0) return { ok: false, problems };
  const { step, units, turnStep, kinds, dropDepths, maxDrops } = request;
  const cap = Math.min(plan.site.rules?.maxHeight ?? Infinity, request.maxHeight ?? Infinity);
  const turns = Array.from({ length: countUp(90 / turnStep) }, (_, k) => k * turnStep);
  const hiding = hidingOf(plan, request.hideFrom, request.seenLittle);
  const forms = {
    sizes,
    heights,
    step,
    units,
    turns,
    cap,
    hiddenUpTo: heightsThatHide(plan, hiding, units),
    dropDepths,
    maxDrops,
  };
  const roof = roofForms(forms);
  const lattice = { turns, step, kinds, roof, drops: dropForms(forms, roof), screen: screenForms(forms) };
  return { ok: true, value: { request, lattice, sizes, cap, hiding } };
}

function filled(plan: Plan, asked: SiteRequest): FilledRequest {
  const budget = plan.stock?.budget;
  const { units = unitsOf(plan), step = STEP[units] } = asked;
  return { ...SITE_DEFAULTS, ...(budget === undefined ? {} : { budget }), ...withoutUndefined(asked), units, step };
}

function problemsOf(
  plan: Plan,
  { step, turnStep, densities = [], count, hideFrom = [] }: FilledRequest,
  sizes: readonly ClothSize[],
  heights: readonly number[],
): Problem[] {
  const problems: Problem[] = [];
  const refuse = (option: string, message: string) => problems.push(errorAt(`--${option}`, message));
  for (const { length, width } of sizes) {
    if (!(width >= step && length <= MOST_SIDE))
      refuse('size', `A size of ${length} × ${width} m cannot be searched: sides run from ${step} to ${MOST_SIDE} m.`);
  }
  for (const height of heights)
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
  for (const id of hideFrom)
    if (featureOf(plan, id)?.kind !== 'eye') refuse('hide-from', `There is no onlooker "${id}" on the plan.`);
  return problems;
}

/** Heights that hide near the plants: at most three, from the lowest to the highest. [m] */
function heightsThatHide(plan: Plan, hiding: Hiding, units: Units): number[] {
  if (hiding.from.length === 0) return [];
  const hidden = plantFeatures(plan)
    .map((feature) => downToHand(hiding.heightAt(middleOf(feature)), units))
    .filter((height) => height >= LOWEST_HIDING && height <= HIGHEST_HIDING)
    .sort((a, b) => a - b);
  const at = (share: number) => hidden[Math.round(share * (hidden.length - 1))];
  return hidden.length === 0 ? [] : [...new Set([at(0), at(0.5), at(1)])];
}

function anySizes(): ClothSize[] {
  return ANY_SIDES.flatMap((length) =>
    ANY_SIDES.filter((width) => width <= length).map((width) => ({ length, width })),
  );
}
