/** The build sheet: everything about one frame, worked out from the plan in one go. */
import { footprintOf } from '../plan/geometry/shapes.ts';
import { LEAST_BUILT } from '../plan/schema/feature.ts';
import type { Canopy, Plan, Problem, Screen } from '../plan/types.ts';
import { formatCut, unitsOf } from '../plan/units.ts';
import type { Units } from '../plan/units.ts';
import { anchorPlan, ownWeightOf, sunkDepth } from './strength/anchors.ts';
import { asBuiltFields } from './layout/as-built.ts';
import { REFUSED_BELOW } from './strength/beam.ts';
import { canopyFrame } from './layout/canopy-frame.ts';
import { cautionsFor } from './work/cautions.ts';
import { CLOTH_MASS, clothPlanOf } from './shop/cloth.ts';
import { cutPlanOf, cutSavings, savingOf } from './cuts/plan.ts';
import type { Effort } from './cuts/cutting-stock.ts';
import { drawingOf } from './layout/drawing.ts';
import { checkSockets, fittingsOf, piecesOf } from './layout/fittings.ts';
import { briefOf } from './layout/brief.ts';
import { nameOf, pointerOf } from './layout/model.ts';
import type { FrameBrief, FrameModel } from './layout/model.ts';
import { notesOf } from './work/notes.ts';
import type { Design } from './work/notes.ts';
import { currencyOf, priceOf } from './shop/prices.ts';
import { screenFrame } from './layout/screen-frame.ts';
import { settingOut } from './layout/setting-out.ts';
import { costOfFrame } from './shop/shopping.ts';
import { stepsOf } from './work/steps.ts';
import { kerfOf, stockCloth } from './shop/stock.ts';
import { blockersBelow } from './layout/surroundings.ts';
import type { CostResult, SheetResult } from './types.ts';
import type { CutPlan, CutSaving } from './cuts/types.ts';
import type { Piece } from './layout/types.ts';
import type { Span } from './strength/types.ts';
import type { WorkEstimate } from './work/types.ts';
import { postStrength, spansOf, stormPlan, TAKE_DOWN_GUST, upliftPlan } from './strength/wind-plan.ts';
import { workOf } from './work/work.ts';

/** How much smaller a frame is tried to see whether that saves tubes. [m] */
const TEN_CENTIMETRES = 0.1;

type Refused = { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * The build sheet of a canopy or a screen of the plan's `features` (apply options first), in the plan's units.
 * Problems: no such thing, a rail or post longer than the longest tube, a rail that would sag past L/90.
 */
export function sheetOf(plan: Plan, id: string): SheetResult {
  const thing = plan.features.find((feature) => feature.id === id);
  if (thing === undefined || (thing.kind !== 'canopy' && thing.kind !== 'screen'))
    return { ok: false, problems: [notBuildable(plan, id, thing?.kind)] };
  const units = unitsOf(plan);
  const result = design(thing, plan, units);
  if (!result.ok) return result;
  const { design: made } = result;
  const { model, brief, cutting, anchors, cloth, cost, sunk } = made;
  const blocked = made.blockedBy.length > 0;
  const storm = stormPlan(model, brief.section, brief.gust, blocked, units);
  const placed = settingOut(model, plan, units);
  const work = workOfDesign(made);
  const post = postStrength(model, brief.section, made.ownWeight, clothMassOf(model));
  const { steps, tools } = stepsOf(
    { model, brief, cutting, cloth, anchors, settingOut: placed, storm, cost, sunk, people: work.people },
    units,
  );
  return {
    ok: true,
    sheet: {
      id,
      name: nameOf(thing),
      kind: thing.kind,
      pieces: made.pieces,
      cuts: cutting.tubes,
      fittings: made.fittings,
      cloth,
      clips: cloth.pieces.reduce((sum, piece) => sum + piece.ties, 0),
      anchors,
      uplift: upliftPlan(model, brief.gust, made.ownWeight, made.blockedBy),
      cost,
      steps,
      cautions: cautionsFor(['build', 'dig', 'climb', 'cut', 'wind', 'heat', 'cloth', 'winter'], plan.cautions),
      tube: {
        id: brief.tube.id,
        name: brief.tube.name,
        outside: brief.tube.outside,
        wall: brief.tube.wall,
        mass: brief.section.mass,
      },
      sockets: checkSockets(model),
      cutting: {
        ...cutting,
        savings: [
          ...cutSavings(made.pieces, brief.lengths, cutting, units),
          ...smallerFrames(thing, plan, units, cutting),
        ],
      },
      spans: made.spans,
      post,
      settingOut: placed,
      tools,
      work,
      storm,
      asBuilt: asBuiltFields(thing, placed),
      drawing: drawingOf(model),
      notes: notesOf(thing, plan, made, placed, post, units),
    },
  };
}

/**
 * What the sheet of a canopy or screen would cost in money and hours, to the cent the same as `sheetOf`'s. It need not
 * be in the plan.
 */
export function costOf(thing: Canopy | Screen, plan: Plan): CostResult {
  const result = design(thing, plan, unitsOf(plan));
  return result.ok ? { ok: true, cost: result.design.cost, hours: workOfDesign(result.design).hours } : result;
}

function workOfDesign({ model, cutting, cloth, anchors, brief }: Design): WorkEstimate {
  return workOf({ model, cutting, cloth, anchors, massPerMetre: brief.section.mass });
}

function design(
  thing: Canopy | Screen,
  plan: Plan,
  units: Units,
  effort: Effort = 'best',
): { ok: true; design: Design } | Refused {
  const read = briefOf(thing, plan);
  if (!read.ok) return read;
  const { brief } = read;
  const layOut = (sunk: number): FrameModel =>
    thing.kind === 'canopy' ? canopyFrame(thing, brief, sunk, plan) : screenFrame(thing, brief, sunk);

  // Holes depend on the pull, and the posts' length on the holes; the pull does not depend on what is below the ground.
  const first = layOut(brief.anchor === 'sunk' ? TEN_CENTIMETRES : 0);
  const ownWeight = ownWeightOf(first, brief.section.mass, clothMassOf(first));
  const blockedBy = [
    ...(thing.kind === 'canopy' && (thing.drops ?? []).length > 0 ? ['its own drops'] : []),
    ...(thing.kind === 'canopy' ? blockersBelow(plan, footprintOf(thing), thing.height) : []),
  ];
  const anchors = anchorPlan(first, brief, ownWeight, blockedBy.length > 0, units);
  const sunk = sunkDepth(first, brief, anchors);
  const model = sunk > 0 ? layOut(sunk) : first;

  const spans = spansOf(model, brief.section);
  const saggy = spans.find((span) => span.sagRatio < REFUSED_BELOW);
  if (saggy) return refuse(plan, thing, 'frame/maxBay', sagMessage(thing, brief, saggy, units));
  const pieces = piecesOf(model);
  const tooShort = pieces.find((piece) => piece.length < LEAST_BUILT);
  if (tooShort)
    return refuse(
      plan,
      thing,
      'frame/takeOff',
      `${nameOf(thing)}: ${leftOf(tooShort.length, units)} is left of a ${tooShort.part} after the take-off at both ends.`,
    );
  const cut = cutPlanOf(pieces, brief.lengths, kerfOf(plan), effort);
  if (!cut.ok) return refuse(plan, thing, 'frame', tooLongMessage(thing, brief, cut.unfit[0], units));
  const cloth = clothPlanOf(
    model,
    stockCloth(plan),
    TAKE_DOWN_GUST,
    { price: priceOf(plan, 'frostCloth').price, currency: currencyOf(plan) },
    units,
  );
  const fittings = fittingsOf(model.joints);
  const cost = costOfFrame({ plan, model, brief, cutting: cut.plan, fittings, cloth, anchors }, units);
  return {
    ok: true,
    design: {
      model,
      brief,
      pieces,
      fittings,
      spans,
      cutting: cut.plan,
      cloth,
      anchors,
      sunk,
      ownWeight,
      blockedBy,
      cost,
    },
  };
}

/** Dry. [kg] */
function clothMassOf(model: FrameModel): number {
  return CLOTH_MASS * model.cloths.reduce((sum, { opening }) => sum + opening[0] * opening[1], 0);
}

/** Whether a frame ten centimetres smaller one way needs fewer tubes. */
function smallerFrames(thing: Canopy | Screen, plan: Plan, units: Units, cutting: CutPlan): CutSaving[] {
  const smaller: readonly (readonly [string, Canopy | Screen])[] =
    thing.kind === 'canopy'
      ? [
          ['the length', { ...thing, length: thing.length - TEN_CENTIMETRES }],
          ['the width', { ...thing, width: thing.width - TEN_CENTIMETRES }],
          ['the height', { ...thing, height: thing.height - TEN_CENTIMETRES }],
        ]
      : [['the height', { ...thing, height: thing.height - TEN_CENTIMETRES }]];
  return smaller.flatMap(([what, tried]) => {
    const made = design(tried, plan, units, 'quick');
    const saving = made.ok
      ? savingOf(`make ${what} ${formatCut(TEN_CENTIMETRES, units)} less`, cutting, made.design.cutting)
      : null;
    return saving === null ? [] : [saving];
  });
}

function sagMessage(thing: Canopy | Screen, brief: FrameBrief, span: Span, units: Units): string {
  const cure =
    span.span > brief.maxBay + 1e-9
      ? 'move the frame so that the post left out can stand'
      : `a post under its middle (a longest bay of ${formatCut(span.span / 2, units)})`;
  return (
    `${nameOf(thing)}: a rail of ${brief.tube.name} over ${formatCut(span.span, units)} would sag ` +
    `${formatCut(span.sag, units)} under its own weight. Two cures: ${cure}, or thicker tube.`
  );
}

function tooLongMessage(
  thing: Canopy | Screen,
  brief: FrameBrief,
  { part, kind, length }: Piece,
  units: Units,
): string {
  const longest = brief.lengths[brief.lengths.length - 1].length;
  const cure =
    kind === 'post' || kind === 'stay'
      ? 'a lower frame'
      : `a post under its middle (a longest bay of ${formatCut(length / 2, units)})`;
  return (
    `${nameOf(thing)}: its ${part} is ${formatCut(length, units)}, but ${brief.tube.name} is sold up to ` +
    `${formatCut(longest, units)}. Two cures: ${cure}, or a tube that is sold longer.`
  );
}

function leftOf(length: number, units: Units): string {
  return length <= 0 ? 'nothing' : `less than ${formatCut(LEAST_BUILT, units)}, too little to build with,`;
}

function notBuildable(plan: Plan, id: string, kind: string | undefined): Problem {
  const known = plan.features
    .filter((feature) => feature.kind === 'canopy' || feature.kind === 'screen')
    .map((feature) => `"${feature.id}"`);
  const options = (plan.options ?? [])
    .filter((option) => (option.adds ?? []).some((feature) => feature.id === id))
    .map((option) => `"${option.id}"`);
  const why = kind === undefined ? `There is no "${id}" in the yard` : `"${id}" is a ${kind}, which needs no frame`;
  const hint =
    options.length > 0
      ? `it belongs to option ${options.join(' and ')}: ask for that option too`
      : known.length > 0
        ? `what can be built here is ${known.join(', ')}`
        : 'the yard has no canopy and no screen';
  return { pointer: '/features', message: `${why}; ${hint}.`, severity: 'error' };
}

function refuse(plan: Plan, thing: Canopy | Screen, key: string, message: string): Refused {
  return { ok: false, problems: [{ pointer: pointerOf(plan, thing.id, key), message, severity: 'error' }] };
}
