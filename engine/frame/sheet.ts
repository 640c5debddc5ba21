/** The build sheet: everything about one frame, worked out from the plan in one go. */

import { isCloth } from '../plan/kinds.ts';
import { refusal } from '../plan/problems.ts';
import type { Cloth, Plan } from '../plan/types.ts';
import { METRES_PER_INCH } from '../plan/units/per-unit.ts';
import { formatCut } from '../plan/units/shown.ts';
import { unitsOf } from '../plan/units/units.ts';
import type { Units } from '../plan/units/units.ts';
import { cutSavings, savingOf } from './cuts/plan.ts';
import type { CutSaving } from './cuts/types.ts';
import { clothMassOf, designOf } from './design.ts';
import type { Design } from './design.ts';
import { asBuiltFields } from './layout/as-built.ts';
import { drawingOf } from './layout/drawing.ts';
import { checkSockets } from './layout/fittings.ts';
import { groundOf, withGround } from './layout/ground-of.ts';
import { frameName } from './layout/model.ts';
import { blockerOf, settingOut } from './layout/setting-out.ts';
import type { Cost } from './shop/types.ts';
import { kindOfPost } from './strength/footings.ts';
import { groundPlace, isFloor } from './strength/grounds.ts';
import { postStrength, stormPlan, upliftPlan } from './strength/wind-plan.ts';
import type { BuildSheet, CostResult, SheetResult } from './types.ts';
import { notBuildableMessage } from './words.ts';
import { cautionsFor } from './work/cautions.ts';
import { overBudgetNote } from './work/note-words.ts';
import { inTheWayNotes, notesOf } from './work/notes.ts';
import { needsLadder } from './work/step.ts';
import { stepsOf } from './work/steps.ts';
import type { Caution, WorkEstimate } from './work/types.ts';
import { workOf } from './work/work.ts';
import type { WorkInput } from './work/work.ts';

/** How much smaller a frame is tried to see whether that saves tubes: 10 cm, or 4 in. [m] */
const LESS: Readonly<Record<Units, number>> = { metric: 0.1, imperial: 4 * METRES_PER_INCH };

/**
 * The build sheet of a canopy or a screen of the plan's `features` (apply options first), in the plan's units.
 * Problems: no such thing, a rail or post longer than the longest tube or too short to build with, a rail that would
 * sag past L/90.
 */
export function sheetOf(plan: Plan, id: string): SheetResult {
  const thing = plan.features.find((feature) => feature.id === id);
  if (thing === undefined || !isCloth(thing)) {
    const message = notBuildableMessage(plan, id, thing?.kind);
    return refusal('/features', message);
  }
  const units = unitsOf(plan);
  const result = designOf(thing, plan, units);
  return result.ok ? { ok: true, sheet: sheetFrom(thing, plan, result.design, units) } : result;
}

/**
 * What the sheet of a canopy or screen would cost in money and hours, to the cent the same as `sheetOf`'s. It need not
 * be in the plan.
 */
export function costOf(thing: Cloth, plan: Plan): CostResult {
  const result = designOf(thing, plan, unitsOf(plan));
  if (!result.ok) return result;
  const anchored = anchoredDesign(thing, plan, result.design);
  const { hours } = workOf(workInput(result.design));
  return { ok: true, cost: costNoted(plan, result.design, anchored), hours };
}

/** Which posts of a frame would stand where something stands already: a sentence for each thing; empty: none. */
export function postsInTheWay(thing: Cloth, plan: Plan): string[] {
  const result = designOf(thing, plan, unitsOf(plan));
  if (!result.ok) return [];
  const { model } = result.design;
  return inTheWayNotes(
    model.posts.map((post) => ({ id: post.id, blockedBy: blockerOf(post, model.toPlan(post.at), plan) })),
  );
}

function sheetFrom(thing: Cloth, plan: Plan, made: Design, units: Units): BuildSheet {
  const { model, brief, cutting, anchors, cloth, cost, sunk, ownWeight, blockedBy } = made;
  const { id: tube, name, outside, wall } = brief.tube;
  const storm = stormPlan(model, brief.section, brief.gust, blockedBy.length > 0, units);
  const placed = settingOut(
    model,
    plan,
    units,
    (role) => anchors.posts.find(({ post }) => post === kindOfPost(role))?.hole?.diameter ?? 0,
  );
  const anchored = anchoredDesign(thing, plan, made);
  const work = workOfDesign(plan, made, anchored);
  const post = postStrength(model, brief.section, ownWeight, clothMassOf(model));
  const { people } = work;
  const cautions = cautionsOf(made, plan);
  const told = new Set(cautions.map(({ id }) => id));
  const { steps, tools } = stepsOf(
    { model, brief, cutting, cloth, anchors, settingOut: placed, storm, cost, sunk, people },
    units,
  );
  return {
    id: thing.id,
    name: frameName(thing),
    kind: thing.kind,
    pieces: made.pieces,
    cuts: cutting.tubes,
    fittings: made.fittings,
    cloth,
    clips: cloth.pieces.reduce((sum, piece) => sum + piece.ties, 0),
    anchors,
    uplift: upliftPlan(model, brief.gust, ownWeight, blockedBy, units),
    cost: costNoted(plan, made, anchored),
    overBudget: overBudgetNote(plan, cost.total),
    steps: steps.map((step) => ({ ...step, cautions: step.cautions.filter((id) => told.has(id)) })),
    cautions,
    tube: { id: tube, name, outside, wall, mass: brief.section.mass },
    sockets: checkSockets(model),
    cutting: {
      ...cutting,
      savings: [...cutSavings(made.pieces, brief.lengths, cutting, units), ...smallerFrames(thing, plan, units, made)],
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
  };
}

/** Those that this frame's own work calls for: none of digging on paving, none of ladders where hands reach. */
function cautionsOf({ model, anchors, cloth }: Design, plan: Plan): readonly Caution[] {
  const digs = anchors.ground === null || !isFloor(anchors.ground);
  const driven = anchors.ground === null || anchors.kind === 'stakes' || anchors.kind === 'augers';
  const idle = [...(needsLadder(model) ? [] : ['ladder']), ...(driven ? [] : ['anchors'])];
  const tasks = [
    ...(['build', 'cut', 'wind', 'heat', 'cloth'] as const),
    digs ? ('dig' as const) : ('floor' as const),
    ...(anchors.concrete === null ? [] : (['concrete'] as const)),
    ...(cloth.frost === null ? [] : (['winter'] as const)),
  ];
  return cautionsFor(tasks, plan).filter(({ id }) => !idle.includes(id));
}

/** Where nobody says what the ground is: the frame with anchors in the ground that every price is told for. */
function anchoredDesign(thing: Cloth, plan: Plan, { brief }: Design): Design | null {
  if (brief.ground !== null) return null;
  const anchored = designOf(thing, withGround(plan), unitsOf(plan));
  return anchored.ok ? anchored.design : null;
}

function costNoted(plan: Plan, { cost }: Design, anchored: Design | null): Cost {
  if (anchored === null || anchored.cost.total === null) return cost;
  const { total, currency } = anchored.cost;
  const where = groundPlace(groundOf(plan).ground);
  return { ...cost, note: `${cost.note} With anchors, as ${where}: about ${total.toFixed(0)} ${currency}.` };
}

function workOfDesign(plan: Plan, made: Design, anchored: Design | null): WorkEstimate {
  const inAll =
    anchored === null ? null : { where: groundPlace(groundOf(plan).ground), hours: workOf(workInput(anchored)).hours };
  return workOf(workInput(made), inAll);
}

function workInput({ model, cutting, cloth, anchors, brief }: Design): WorkInput {
  return { model, cutting, cloth, anchors, massPerMetre: brief.section.mass };
}

/** Whether a frame ten centimetres smaller one way needs fewer tubes, and what the whole of it then costs less. */
function smallerFrames(thing: Cloth, plan: Plan, units: Units, { cutting, cost }: Design): CutSaving[] {
  const less = LESS[units];
  const smaller: readonly (readonly [string, Cloth])[] =
    thing.kind === 'canopy'
      ? [
          ['the length', { ...thing, length: thing.length - less }],
          ['the width', { ...thing, width: thing.width - less }],
          ['the height', { ...thing, height: thing.height - less }],
        ]
      : [['the height', { ...thing, height: thing.height - less }]];
  return smaller.flatMap(([what, tried]) => {
    const made = designOf(tried, plan, units);
    if (!made.ok) return [];
    const { design } = made;
    const saving = savingOf(`make ${what} ${formatCut(less, units)} less`, cutting, design.cutting);
    const known = cost.total !== null && design.cost.total !== null;
    if (saving === null) return [];
    return [
      { ...saving, money: known ? Math.round((Number(cost.total) - Number(design.cost.total)) * 100) / 100 : null },
    ];
  });
}
