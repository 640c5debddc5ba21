/**
 * How many hands a frame takes and for how long: this project's own estimate, measured by nobody. Minutes of one person
 * who has the tools at hand; the range runs from somebody who has built one before to somebody who has not.
 */

import { countUp } from '../../plan/numbers/tolerances.ts';
import type { CutPlan } from '../cuts/types.ts';
import type { FrameModel } from '../layout/model.ts';
import type { ClothPlan } from '../shop/types.ts';
import type { AnchorPlan } from '../strength/types.ts';
import type { HourRange, WorkEstimate } from './types.ts';
import { toldHours, workWords } from './work-words.ts';
import type { AnchoredHours } from './work-words.ts';

const MINUTES = {
  settingOut: 40,
  perPost: 8,
  perCubicMetreDug: { garden: 480, hard: 1500, loose: 360, wet: 480, paving: 0, wheels: 0 },
  perBag: 8,
  perStake: 8,
  perAuger: 6,
  perCan: 4,
  perCut: 6,
  perSocket: 3,
  raising: 40,
  squaringPost: 10,
  perMetreSewn: 4,
  perTie: 2,
} as const;
/** Practised and unpractised hands, as shares of those minutes. */
const RANGE: HourRange = { low: 0.8, high: 2 };
/**
 * What one person lifts well above the waist. [kg] The NIOSH lifting equation begins at 23 (from memory) and takes off
 * for height.
 */
const LIFT = 15;
/** More than this many round one roof are a crowd, not help. */
const MOST_PEOPLE = 6;
/** Nobody works on into the heat. [h] */
const MORNING = 4;

export interface WorkInput {
  readonly model: FrameModel;
  readonly cutting: CutPlan;
  readonly cloth: ClothPlan;
  readonly anchors: AnchorPlan;
  /** Of the tube. [kg/m] */
  readonly massPerMetre: number;
}

/** @param inAll Where the ground is not known: with what it takes in the ground that every price is told for. */
export function workOf(
  { model, cutting, cloth, anchors, massPerMetre }: WorkInput,
  inAll: AnchoredHours | null = null,
): WorkEstimate {
  const posts = model.posts.length;
  const cuts = cutting.tubes.reduce(
    (sum, { pieces, left, lost }) => sum + (left > 0 || lost > 0 ? pieces.length : pieces.length - 1),
    0,
  );
  const ends = 2 * model.tubes.length - model.inGround;
  const ties = cloth.pieces.reduce((sum, piece) => sum + piece.ties, 0);
  const sewn = cloth.pieces.reduce(
    (sum, { buy, finished: [a, b], seams, rollLength, strips }) =>
      sum + (buy === 'from the roll' ? 2 * (a + b) + 2 * seams * (rollLength / strips) : 0),
    0,
  );
  const parts = [
    {
      what: 'setting out and the ground',
      minutes: MINUTES.settingOut + MINUTES.perPost * posts + groundMinutes(anchors),
    },
    { what: 'cutting', minutes: MINUTES.perCut * cuts },
    {
      what: 'putting the frame together and squaring it',
      minutes: MINUTES.perSocket * ends + MINUTES.raising + MINUTES.squaringPost * posts,
    },
    { what: 'sewing and hanging the cloth', minutes: MINUTES.perMetreSewn * sewn + MINUTES.perTie * ties },
  ].map(({ what, minutes }) => ({
    what,
    hours: { low: halfHours((minutes * RANGE.low) / 60), high: halfHours((minutes * RANGE.high) / 60) },
  }));
  const hours = { low: sum(parts, 'low'), high: sum(parts, 'high') };
  const people = peopleFor(model, massPerMetre);
  const morningsOf = (of: number): number => Math.ceil(toldHours(of) / (people * MORNING));
  const mornings = { low: morningsOf(hours.low), high: morningsOf(hours.high) };
  const estimate = { people, parts, hours, mornings };
  const how = { morning: MORNING, crowd: people === MOST_PEOPLE, inAll };
  return { ...estimate, sentences: workWords(estimate, anchors, how) };
}

function groundMinutes({ ground, kind, count, concrete }: AnchorPlan): number {
  if (ground === null) return 0;
  if (concrete !== null) return MINUTES.perCubicMetreDug[ground] * concrete.volume + MINUTES.perBag * concrete.bags;
  return (
    count * { stakes: MINUTES.perStake, augers: MINUTES.perAuger, ballast: MINUTES.perCan, footing: 0, sunk: 0 }[kind]
  );
}

/**
 * Two at least; more where half of the rails, lifted to let the posts in, are more than two can hold, up to the most
 * that help.
 */
function peopleFor(model: FrameModel, massPerMetre: number): number {
  const rails = model.tubes
    .filter(({ kind }) => kind === 'top rail')
    .reduce((total, { length }) => total + length * massPerMetre, 0);
  return Math.min(MOST_PEOPLE, Math.max(2, countUp(rails / 2 / LIFT)));
}

function sum(parts: readonly { readonly hours: HourRange }[], end: keyof HourRange): number {
  return parts.reduce((total, { hours }) => total + hours[end], 0);
}

/** Up to the half hour, from twenty on to the hour. */
function halfHours(hours: number): number {
  return hours > 20 ? Math.ceil(hours) : countUp(hours * 2) / 2;
}
