/** Where a shadow's edge was really found, against where the plan puts it at that minute: how far off, and what would cure it. */
import { namedInside } from '../load/names.ts';
import type { Outcome } from '../load/types.ts';
import { upBearingOf } from '../plan/defaults.ts';
import type { ClockTime, Feature, Plan, PlanPoint, Problem } from '../plan/types.ts';
import { formatLength, type Units, unitsOf } from '../plan/units.ts';
import { defaultPm, TAPE_PM } from '../survey/known-by.ts';
import { sunAtMs } from '../survey/sun-at.ts';
import { instantOf } from '../sun/zone.ts';
import { withNumber } from './doubt-inputs.ts';
import { type MarkedSun, outsideShadow } from './shadow-edge.ts';
import { leastSquares } from './shadow-fit.ts';

/** An edge of a feature's shadow, marked on the ground. */
export interface ShadowMark {
  readonly feature: string;
  readonly at: PlanPoint;
  readonly when: ClockTime;
}

/** A change of the plan that would bring a mark onto its edge. */
export interface ShadowCure {
  readonly what: 'north' | 'height';
  /** `null` for north. */
  readonly feature: string | null;
  /** What to add: ° or m. */
  readonly by: number;
  /** `by` in units of the number's own ±. */
  readonly inPm: number;
}

export interface MarkCheck {
  readonly mark: ShadowMark;
  /** How far the mark lies outside the predicted shadow, negative inside it; `null`: no edge within 6 m. [cm] */
  readonly residual: number | null;
  /** North and the height, the one that is fewer of its own ± off first; those that cannot cure it left out. */
  readonly cures: readonly ShadowCure[];
  readonly sentence: string;
}

export interface MarksTogether {
  readonly changes: readonly ShadowCure[];
  /** What is left at each mark that has an edge, in their order. [cm] */
  readonly left: readonly number[];
  readonly contradict: boolean;
  /** Minutes that the clock would have to be put on for the marks to agree; `null`: no whole hour does it, or none need. */
  readonly clock: number | null;
  readonly sentence: string;
}

export interface ShadowMarksResult {
  readonly marks: readonly MarkCheck[];
  /** Least squares over north and the heights concerned; `null` with fewer than three marks that have an edge. */
  readonly together: MarksTogether | null;
}

/** North is not known better than a line can be drawn and a minute read. Our choice. [°] */
const NORTH_PM = 0.5;
/** A mark nearer its edge than this is on it: a shadow's edge is blurred, more the farther off what throws it. Our choice. [m] */
const ON_THE_EDGE = 0.05;
/** Marks farther apart than this after the best change contradict each other. [m] */
const CONTRADICT = 0.5;
/** An hour of the clock explains marks that then agree within this. [m] */
const AGREE = 0.15;
const FEWEST = 3;

interface Unknown {
  readonly what: 'north' | 'height';
  readonly feature: string | null;
  readonly pm: number;
}

/** @returns the marks in their order, or which of them cannot be used: an unknown feature, no time, a sun that is down */
export function shadowMarks(plan: Plan, marks: readonly ShadowMark[], units: Units = unitsOf(plan)): Outcome<ShadowMarksResult> {
  const problems = marks.flatMap((mark, k) => problemsOf(plan, mark, k));
  if (problems.length > 0) return { ok: false, problems };
  const checks = marks.map((mark) => checkOf(plan, mark, units));
  const usable = marks.filter((_, k) => checks[k].residual !== null);
  return { ok: true, value: { marks: checks, together: usable.length < FEWEST ? null : together(plan, usable, units) } };
}

function problemsOf(plan: Plan, mark: ShadowMark, k: number): Problem[] {
  const wrong = (message: string): Problem[] => [{ pointer: `/marks/${k}`, message, severity: 'error' }];
  const feature = plan.features.find(({ id }) => id === mark.feature);
  if (!feature || !('height' in feature) || !CASTERS.has(feature.kind)) return wrong(`Mark ${k + 1}: no wall, hedge, building, tree, canopy or screen is called "${mark.feature}".`);
  const sun = sunOf(plan, mark, 0);
  if (sun === null) return wrong(`Mark ${k + 1}: "${mark.when}" is no date and time: write it as 2026-07-02T10:00.`);
  return sun.altitude <= 0 ? wrong(`Mark ${k + 1}: the sun was down at ${mark.when.replace('T', ', ')}.`) : [];
}

const CASTERS: ReadonlySet<Feature['kind']> = new Set(['wall', 'hedge', 'building', 'tree', 'canopy', 'screen']);

function sunOf({ site }: Plan, { when }: ShadowMark, minutes: number): MarkedSun | null {
  const whenMs = instantOf(when, site.timeZone);
  if (whenMs === null) return null;
  const { azimuth, altitude } = sunAtMs(whenMs + minutes * 60_000, site);
  return { azimuth, altitude, monthDay: when.slice(5, 10) };
}

/** [m] */
function residualOf(plan: Plan, mark: ShadowMark, minutes = 0): number | null {
  const sun = sunOf(plan, mark, minutes);
  return sun === null ? null : outsideShadow(plan, mark.feature, mark.at, sun);
}

function checkOf(plan: Plan, mark: ShadowMark, units: Units): MarkCheck {
  const metres = residualOf(plan, mark);
  if (metres === null) return { mark, residual: null, cures: [], sentence: `No edge of the shadow of ${namedInside(plan, mark.feature)} is within 6 m of the mark at that minute: was the clock right?` };
  const cures = unknownsOf(plan, [mark]).flatMap((unknown) => cureOf(plan, mark, unknown)).toSorted((a, b) => a.inPm - b.inPm);
  const found = `The edge is ${formatLength(Math.abs(metres), units)} ${metres > 0 ? 'farther out' : 'farther in'} than the plan says`;
  if (Math.abs(metres) <= ON_THE_EDGE) return { mark, residual: 100 * metres, cures, sentence: `The plan has this edge right, to ${Math.round(100 * Math.abs(metres))} cm.` };
  const [likelier, other] = cures.map((cure) => cureWords(plan, cure, units));
  const cured = likelier === undefined ? 'neither north nor a height alone cures it' : other === undefined ? `${likelier} would cure it` : `${likelier} would cure it, or less likely ${other}`;
  return { mark, residual: 100 * metres, cures, sentence: `${found}: ${cured}.` };
}

function unknownsOf(plan: Plan, marks: readonly ShadowMark[]): Unknown[] {
  const north = plan.site.how?.upBearing;
  const northPm = Math.max(NORTH_PM, north?.pm ?? (north ? defaultPm(north.by, upBearingOf(plan), 'bearing') : 0));
  const heights = [...new Set(marks.map(({ feature }) => feature))].map((id): Unknown => {
    const feature = plan.features.find((each) => each.id === id)!;
    const known = feature.how?.height;
    const height = 'height' in feature ? feature.height : 0;
    return { what: 'height', feature: id, pm: Math.max(TAPE_PM, known?.pm ?? (known ? defaultPm(known.by, height) : 0)) };
  });
  return [{ what: 'north', feature: null, pm: northPm }, ...heights];
}

/** The plan with numbers off by so many of their own ±. */
function changedBy(plan: Plan, unknowns: readonly Unknown[], values: readonly number[]): Plan {
  return unknowns.reduce((changed, { what, feature, pm }, k): Plan => {
    const by = values[k] * pm;
    if (what === 'north') return { ...changed, site: { ...changed.site, upBearing: (((upBearingOf(changed) + by) % 360) + 360) % 360 } };
    return { ...changed, features: changed.features.map((each) => (each.id === feature && 'height' in each ? withNumber(each, 'height', each.height + by) : each)) };
  }, plan);
}

function cureOf(plan: Plan, mark: ShadowMark, unknown: Unknown): ShadowCure[] {
  const fit = leastSquares([0], (values) => [residualOf(changedBy(plan, [unknown], values), mark)]);
  if (fit === null || Math.abs(fit.residuals[0]) > ON_THE_EDGE / 5) return [];
  return [cureBy(unknown, fit.values[0])];
}

function cureBy({ what, feature, pm }: Unknown, value: number): ShadowCure {
  return { what, feature, by: value * pm, inPm: Math.abs(value) };
}

function together(plan: Plan, marks: readonly ShadowMark[], units: Units): MarksTogether | null {
  const unknowns = unknownsOf(plan, marks);
  const fitAt = (minutes: number) =>
    leastSquares(unknowns.map(() => 0), (values) => {
      const changed = changedBy(plan, unknowns, values);
      return marks.map((mark) => residualOf(changed, mark, minutes));
    });
  const fit = fitAt(0);
  if (fit === null) return null;
  const changes = unknowns.map((unknown, k) => cureBy(unknown, fit.values[k]));
  const worst = worstOf(fit.residuals);
  const contradict = worst > CONTRADICT;
  const clock = contradict ? ([-60, 60].find((minutes) => worstOf(fitAt(minutes)?.residuals ?? [Infinity]) <= AGREE) ?? null) : null;
  const left = fit.residuals.map((residual) => 100 * residual);
  return { changes, left, contradict, clock, sentence: togetherSentence(plan, { changes, worst, contradict, clock }, units) };
}

function worstOf(residuals: readonly number[]): number {
  return Math.max(...residuals.map(Math.abs));
}

function togetherSentence(plan: Plan, fit: { changes: readonly ShadowCure[]; worst: number; contradict: boolean; clock: number | null }, units: Units): string {
  const within = formatLength(fit.worst, units);
  if (fit.clock !== null) return `These marks contradict each other by ${within}: was the clock right? With it an hour ${fit.clock > 0 ? 'later' : 'earlier'} they agree.`;
  if (fit.contradict) return `These marks contradict each other by ${within}, whatever north and the heights are: was the clock right?`;
  const changes = fit.changes.filter(({ inPm, by, what }) => inPm > 0.1 && Math.abs(by) >= (what === 'north' ? 0.1 : 0.01));
  if (changes.length === 0) return `All the marks agree with the plan, within ${within}.`;
  return `All the marks agree within ${within} with ${changes.map((cure) => cureWords(plan, cure, units)).join(' and ')}.`;
}

function cureWords(plan: Plan, { what, feature, by }: ShadowCure, units: Units): string {
  if (what === 'north') return `the plan’s up turned by ${Math.abs(by).toFixed(1)}° ${by > 0 ? 'clockwise' : 'counter-clockwise'}`;
  return `${namedInside(plan, feature ?? '')} ${formatLength(Math.abs(by), units)} ${by > 0 ? 'higher' : 'lower'}`;
}
