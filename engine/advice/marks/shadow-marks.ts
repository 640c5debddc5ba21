/**
 * Where a shadow's edge was really found, against where the plan puts it at that minute: how far off, and what would
 * cure it.
 */

import type { Outcome } from '../../load/types.ts';
import { upBearingOf } from '../../plan/defaults.ts';
import { errorAt } from '../../plan/problems.ts';
import type { Feature, Plan, Problem } from '../../plan/types.ts';
import { MS_PER_MINUTE } from '../../plan/units/per-unit.ts';
import { formatLength } from '../../plan/units/shown.ts';
import { type Units, unitsOf } from '../../plan/units/units.ts';
import { momentWords } from '../../plan/words/moment-words.ts';
import { namedInside } from '../../plan/words/names.ts';
import { instantOf } from '../../sun/days/zone.ts';
import { sunAtMs } from '../../survey/place/sun-at.ts';
import { edgeNear } from '../sight/shadow-edge.ts';
import { leastSquares } from './shadow-fit.ts';
import { type Caster, cureBy, type Marked, residualOf, type Unknown, unknownsOf } from './shadow-unknowns.ts';
import type { MarkCheck, MarksTogether, ShadowCure, ShadowMark, ShadowMarksResult } from './types.ts';

/**
 * A mark nearer its edge than this is on it: a shadow's edge is blurred, more the farther off what throws it. Our
 * choice. [m]
 */
const ON_THE_EDGE = 0.05;
/** Marks farther apart than this after the best change contradict each other. [m] */
const CONTRADICT = 0.5;
/** An hour of the clock explains marks that then agree within this. [m] */
const AGREE = 0.15;
const FEWEST = 3;
/** Nobody marks an edge better than this. [m] */
const LEAST_SAID = 0.01;
/** A number hardly is off by more of its own ± than this: then something else was marked, or misread. Our choice. */
const FAR_OFF = 5;

/**
 * @returns the marks in their order, or which of them cannot be used: an unknown feature, no time, a sun that is down
 */
export function shadowMarks(
  plan: Plan,
  marks: readonly ShadowMark[],
  units: Units = unitsOf(plan),
): Outcome<ShadowMarksResult> {
  const problems: Problem[] = [];
  const marked = marks.flatMap((mark, k): Marked[] => {
    const read = markedOf(plan, mark);
    if (typeof read !== 'string') return [read];
    problems.push(errorAt(`/marks/${k}`, `Mark ${k + 1}: ${read}`));
    return [];
  });
  if (problems.length > 0) return { ok: false, problems };
  const checks = marked.map((each) => checkOf(plan, each, units));
  const usable = marked.filter((_, k) => checks[k].residual !== null);
  return {
    ok: true,
    value: { marks: checks, together: usable.length < FEWEST ? null : together(plan, usable, units) },
  };
}

/** @returns why a mark cannot be used, in words */
function markedOf(plan: Plan, mark: ShadowMark): Marked | string {
  const caster = plan.features.find(({ id }) => id === mark.feature);
  if (caster === undefined || !isCaster(caster))
    return `no wall, hedge, building, tree, roof or screen is called "${mark.feature}".`;
  const whenMs = instantOf(mark.when, plan.site.timeZone);
  if (whenMs === null) return `"${mark.when}" is no date and time: write it as 2026-07-02T10:00.`;
  const sun = sunAtMs(whenMs, plan.site);
  if (sun.altitude <= 0) return `the sun was down on ${momentWords(mark.when, unitsOf(plan))}.`;
  return { mark, caster, sun: { ...sun, monthDay: mark.when.slice(5, 10) } };
}

const CASTERS: ReadonlySet<Feature['kind']> = new Set(['wall', 'hedge', 'building', 'tree', 'canopy', 'screen']);

function isCaster(feature: Feature): feature is Caster {
  return CASTERS.has(feature.kind);
}

function checkOf(plan: Plan, marked: Marked, units: Units): MarkCheck {
  const { mark, caster, sun } = marked;
  const edge = edgeNear(caster, upBearingOf(plan), mark.at, sun);
  if (edge === null) {
    return {
      mark,
      residual: null,
      nearest: null,
      cures: [],
      sentence:
        `No edge of the shadow of ${namedInside(plan, caster.id)} is within ${formatLength(6, units)} of ` +
        `the mark at that minute: was the clock right?`,
    };
  }
  const cures = unknownsOf(plan, [marked])
    .flatMap((unknown) => cureOf(plan, marked, unknown, units))
    .toSorted((a, b) => a.inPm - b.inPm);
  return {
    mark,
    residual: 100 * edge.outside,
    nearest: edge.nearest,
    cures,
    sentence: markSentence(edge.outside, cures, units),
  };
}

function markSentence(outside: number, [likelier, other]: readonly ShadowCure[], units: Units): string {
  const off = formatLength(Math.max(LEAST_SAID, Math.abs(outside)), units);
  if (Math.abs(outside) <= ON_THE_EDGE) return `The plan has this edge right, to ${off}.`;
  const found = `The edge is ${off} ${outside > 0 ? 'farther out' : 'farther in'} than the plan says`;
  if (likelier === undefined) return `${found}: neither north nor a height alone cures it.`;
  const cured =
    `${found}: ${likelier.words} would cure ` + `it${other === undefined ? '' : `, or less likely ${other.words}`}.`;
  return likelier.inPm <= FAR_OFF
    ? cured
    : `${cured} That is far more than it may be off: was it the edge of this shadow, and the clock right?`;
}

function cureOf(plan: Plan, marked: Marked, unknown: Unknown, units: Units): ShadowCure[] {
  const fit = leastSquares([0], (values) => [residualOf(plan, marked, [unknown], values)]);
  if (fit === null || Math.abs(fit.residuals[0]) > ON_THE_EDGE / 5) return [];
  return [cureBy(plan, unknown, fit.values[0], units)];
}

function together(plan: Plan, marked: readonly Marked[], units: Units): MarksTogether | null {
  const unknowns = unknownsOf(plan, marked);
  const fitOf = (list: readonly Marked[]) =>
    leastSquares(
      unknowns.map(() => 0),
      (values) => list.map((each) => residualOf(plan, each, unknowns, values)),
    );
  const fit = fitOf(marked);
  if (fit === null) return null;
  const changes = unknowns.map((unknown, k) => cureBy(plan, unknown, fit.values[k], units));
  const worst = worstOf(fit.residuals);
  const contradict = worst > CONTRADICT;
  const clock = contradict
    ? ([-60, 60].find(
        (minutes) => worstOf(fitOf(marked.map((each) => later(plan, each, minutes)))?.residuals ?? [Infinity]) <= AGREE,
      ) ?? null)
    : null;
  const worth = contradict
    ? []
    : changes.filter(({ inPm, by, what }) => inPm > 0.1 && Math.abs(by) >= (what === 'north' ? 0.1 : 0.01));
  const left = fit.residuals.map((residual) => 100 * residual);
  return {
    changes,
    worth,
    left,
    contradict,
    clock,
    sentence: togetherSentence(worth, worst, contradict, clock, units),
  };
}

/** The same mark by a clock put on. */
function later({ site }: Plan, { mark, caster, sun }: Marked, minutes: number): Marked {
  const whenMs = instantOf(mark.when, site.timeZone) ?? NaN;
  return { mark, caster, sun: { ...sunAtMs(whenMs + minutes * MS_PER_MINUTE, site), monthDay: sun.monthDay } };
}

function worstOf(residuals: readonly number[]): number {
  return Math.max(...residuals.map(Math.abs));
}

function togetherSentence(
  worth: readonly ShadowCure[],
  worst: number,
  contradict: boolean,
  clock: number | null,
  units: Units,
): string {
  const within = formatLength(worst, units);
  if (clock !== null)
    return (
      `These marks contradict each other by ${within}: was the clock right? With it an hour ` +
      `${clock > 0 ? 'later' : 'earlier'} they agree.`
    );
  if (contradict)
    return `These marks contradict each other by ${within}, whatever north and the heights are: was the clock right?`;
  if (worth.length === 0) return `All the marks agree with the plan, within ${within}.`;
  const cured = `All the marks agree within ${within} with ${worth.map(({ words }) => words).join(' and ')}.`;
  return worth.every(({ inPm }) => inPm <= FAR_OFF)
    ? cured
    : `${cured} That is far more than it may be off: measure it again before you change the plan.`;
}
