import type { Outcome, PlantSide, Stretch } from '../../load/types.ts';
import { plantPoints } from '../../load/verdict/plant-points.ts';
import { foliageFromOf, potOf, turnOf, upBearingOf } from '../../plan/defaults.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import { refuseOption } from '../../plan/problems.ts';
import type { Canopy, DropSide, Plan, Plant } from '../../plan/types.ts';
import { type ClockStretch, formatClock } from '../../plan/units/clock.ts';
import { MS_PER_MINUTE } from '../../plan/units/per-unit.ts';
import { formatUpToHand } from '../../plan/units/shown.ts';
import { type Units, unitsOf } from '../../plan/units/units.ts';
import { compassWord } from '../../plan/words/compass-word.ts';
import { namedInside, nameOf } from '../../plan/words/names.ts';
import { clothSheets } from '../../scene/build.ts';
import type { OwnCrown, ClothSheet } from '../../scene/solids.ts';
import { clockOf } from '../../sun/days/zone.ts';
import { type Period, samplesOf } from '../../sun/samples.ts';
import { sunUp } from '../../sun/sun-up.ts';
import { canopyDayOf, type CanopyDay, type Cure, cureOf, type Slip, slipOf } from './section-slip.ts';

/** How long after the sun first slips under the cure is worked out for, where no time is given. [h] */
const CURED_HOURS = 2;

export interface SectionRequest {
  /** Ids of a canopy and of a plant. */
  readonly canopy: string;
  readonly plant: string;
  /** The point that is drawn; the one that the sun reaches longest where nothing is said. */
  readonly side?: PlantSide;
  /** The heatwave day where nothing is said; of a season its first day. */
  readonly period?: Period;
  /** Clock time "HH:MM" until which the cure holds. */
  readonly until?: string;
  readonly units?: Units;
}

/** A point of the cut: metres from the plant's axis towards the sun, and above the ground. */
export interface SectionPoint {
  readonly along: number;
  readonly height: number;
}

interface SideSlip {
  readonly side: PlantSide;
  /** When the sun comes in under the cloth; `null` where it does not. */
  readonly evening: Stretch | null;
  readonly morning: Stretch | null;
}

export interface Section {
  readonly sides: readonly SideSlip[];
  /**
   * The side that is drawn, the half of the day, and the moment at which the sun first slips in (last, in the morning):
   * the highest of these suns. `null`: it never does.
   */
  readonly slip: {
    readonly side: PlantSide;
    readonly half: 'evening' | 'morning';
    readonly when: string;
    readonly azimuth: number;
    readonly altitude: number;
    /** The ray from the point out past the cloth. */
    readonly ray: readonly [SectionPoint, SectionPoint];
    /** More cloth that keeps the sun off until `until`; to be had as the roof carried on, or as drops. */
    readonly cure: Cure & { readonly until: string };
  } | null;
  /** True bearing along which the cut runs, positive that way. [°] */
  readonly bearing: number;
  /** Each sheet of cloth that the cut meets. */
  readonly cloth: readonly (readonly [SectionPoint, SectionPoint])[];
  readonly plant: {
    readonly foliageFrom: number;
    readonly top: number;
    readonly halfWidth: number;
    readonly pot: { readonly width: number; readonly height: number } | null;
  };
  readonly sentence: string;
}

interface SlipAt {
  readonly side: PlantSide;
  readonly point: SpacePoint;
  readonly evening: Slip | null;
  readonly morning: Slip | null;
}

/**
 * A cut through a canopy and a plant along the bearing of the lowest sun that the cloth still stops: when it slips
 * under, to which side, and what overhang or drop would stop it.
 * @returns the section, or what is wrong: no such canopy or plant, a time that is none, a day that cannot be sampled
 */
export function sectionOf(plan: Plan, request: SectionRequest): Outcome<Section> {
  const canopy = plan.features.find(({ id }) => id === request.canopy);
  if (canopy?.kind !== 'canopy') return refuseOption('canopy', `There is no roof "${request.canopy}".`);
  const plant = plan.features.find(({ id }) => id === request.plant);
  if (plant?.kind !== 'plant')
    return refuseOption(
      'plant',
      `There is no plant "${request.plant}"; a section is drawn through a plant, not a bed or a tree.`,
    );
  if (request.until !== undefined && !/^([01]\d|2[0-3]):[0-5]\d$/.test(request.until))
    return refuseOption('until', `"${request.until}" is no clock time: write it as 18:10.`);
  const sampled = samplesOf(plan, request.period ?? { kind: 'heatwave' });
  if (!sampled.ok) return sampled;
  const day = canopyDayOf(plan, canopy, sampled.samples.days[0]);
  const { points, own } = plantPoints(plan, plant);
  const slips = points.map(({ side, point }): SlipAt => ({
    side,
    point,
    evening: slipOf(day, point, 'evening', own),
    morning: slipOf(day, point, 'morning', own),
  }));
  const { timeZone } = plan.site;
  const sides = slips.map(({ side, evening, morning }): SideSlip => ({
    side,
    evening: stretchOf(day, evening, timeZone),
    morning: stretchOf(day, morning, timeZone),
  }));
  const drawn = request.side === undefined ? longest(slips) : slips.find(({ side }) => side === request.side);
  const half = drawn !== undefined && lengthOf(drawn.evening) >= lengthOf(drawn.morning) ? 'evening' : 'morning';
  const found = drawn?.[half] ?? null;
  const k = found === null ? null : half === 'evening' ? found.first : found.last;
  const bearing = k === null ? 0 : day.minutes[k].azimuth;
  const slip =
    drawn === undefined || found === null || k === null
      ? null
      : slipDrawn(plan, canopy, plant, day, drawn, half, found, k, request.until, own);
  const bare: Omit<Section, 'sentence'> = {
    sides,
    slip,
    bearing,
    cloth:
      k === null || drawn === undefined
        ? []
        : clothSheets(canopy).flatMap((sheet) => cut(sheet, plant, drawn.point, day.directions[k])),
    plant: {
      foliageFrom: foliageFromOf(plant),
      top: plant.height,
      halfWidth: plant.spread / 2,
      pot: plant.container === true ? potOf(plant) : null,
    },
  };
  const told = { units: request.units ?? unitsOf(plan), up: sunUp(plan, sampled.samples.days[0].date) };
  return { ok: true, value: { ...bare, sentence: slipSentence(plan, canopy, plant, bare, told) } };
}

function lengthOf(slip: Slip | null): number {
  return slip === null ? 0 : slip.last - slip.first + 1;
}

function longest(slips: readonly SlipAt[]): SlipAt {
  const length = ({ evening, morning }: SlipAt) => Math.max(lengthOf(evening), lengthOf(morning));
  return slips.reduce((most, each) => (length(each) > length(most) ? each : most));
}

function stretchOf(day: CanopyDay, slip: Slip | null, timeZone: string): Stretch | null {
  return slip === null
    ? null
    : {
        from: clockOf(day.minutes[slip.first].ms, timeZone),
        to: clockOf(day.minutes[slip.last].ms + MS_PER_MINUTE, timeZone),
      };
}

function slipDrawn(
  plan: Plan,
  canopy: Canopy,
  plant: Plant,
  day: CanopyDay,
  { side, point }: SlipAt,
  half: 'evening' | 'morning',
  found: Slip,
  k: number,
  until: string | undefined,
  own: OwnCrown | undefined,
): NonNullable<Section['slip']> {
  const { timeZone } = plan.site;
  const clock = (n: number) => clockOf(day.minutes[n].ms, timeZone);
  const { rest, cloth } = day.sharesAt(point, own);
  const minutes = day.minutes
    .map((_, n) => n)
    .filter((n) => n >= found.first && n <= found.last && rest[n] > 0 && cloth[n] >= 1);
  const near = (n: number) => Math.abs(n - k) <= CURED_HOURS * 60;
  const cured = minutes.filter((n) =>
    until === undefined ? near(n) : half === 'evening' ? clock(n) < until : clock(n) >= until,
  );
  const end = cured.length === 0 ? k : half === 'evening' ? cured[cured.length - 1] + 1 : cured[0];
  const { azimuth, altitude } = day.minutes[k];
  const [dx, dy, dz] = day.directions[k];
  const level = Math.hypot(dx, dy);
  const from: SectionPoint = {
    along: ((point[0] - plant.at[0]) * dx + (point[1] - plant.at[1]) * dy) / level,
    height: point[2],
  };
  const reach = canopy.length + canopy.width;
  return {
    side,
    half,
    when: clockOf(day.minutes[k].ms + (half === 'evening' ? 0 : MS_PER_MINUTE), timeZone),
    azimuth,
    altitude,
    ray: [from, { along: from.along + reach, height: from.height + (reach * dz) / level }],
    cure: { ...cureOf(canopy, day, point, cured), until: until ?? clock(Math.min(end, day.minutes.length - 1)) },
  };
}

/** Where the upright plane through the point drawn, towards the sun, cuts a sheet. */
function cut(
  { corner, u, v }: ClothSheet,
  plant: Plant,
  point: SpacePoint,
  [dx, dy]: SpacePoint,
): [SectionPoint, SectionPoint][] {
  const level = Math.hypot(dx, dy);
  const corners: SpacePoint[] = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ].map(([s, t]) => [
    corner[0] + s * u[0] + t * v[0],
    corner[1] + s * u[1] + t * v[1],
    corner[2] + s * u[2] + t * v[2],
  ]);
  const placed = corners.map(([x, y, z]) => {
    const along = ((x - plant.at[0]) * dx + (y - plant.at[1]) * dy) / level;
    return { along, aside: ((x - point[0]) * dy - (y - point[1]) * dx) / level, height: z };
  });
  const met = placed.flatMap((a, n): SectionPoint[] => {
    const b = placed[(n + 1) % placed.length];
    if (a.aside > 0 === b.aside > 0) return [];
    const share = a.aside / (a.aside - b.aside);
    return [{ along: a.along + share * (b.along - a.along), height: a.height + share * (b.height - a.height) }];
  });
  return met.length === 2 ? [[met[0], met[1]]] : [];
}

/** Clockwise from the front edge, each a quarter turn on. */
const EDGES: readonly string[] = ['front', 'right', 'back', 'left'] satisfies readonly DropSide[];

/** Which way an edge of a canopy lies, as somebody who stands in the yard would say. */
function edgeWord(plan: Plan, canopy: Canopy, edge: string): string {
  return compassWord(upBearingOf(plan) + turnOf(canopy) + 90 * EDGES.indexOf(edge));
}

/** @param up from sunrise to sunset of the day */
function slipSentence(
  plan: Plan,
  canopy: Canopy,
  plant: Plant,
  { slip }: Pick<Section, 'slip'>,
  { units, up }: { readonly units: Units; readonly up: ClockStretch | null },
): string {
  const name = nameOf(plan, plant.id);
  if (slip === null) return `No low sun slips in under ${namedInside(plan, canopy.id)} to ${name}.`;
  const side = slip.side === 'top' ? 'its top' : `its ${compassWord(slip.side)} side`;
  const when =
    slip.half === 'evening' ? `from ${formatClock(slip.when, units)} on` : `until ${formatClock(slip.when, units)}`;
  const list = (lengths: Readonly<Record<DropSide, number>>) =>
    Object.entries(lengths)
      .filter(([, length]) => length > 0.005)
      .map(([edge, length]) => `${formatUpToHand(length, units)} on its ${edgeWord(plan, canopy, edge)} edge`)
      .join(' and ');
  const { overhang, drops, until } = slip.cure;
  const longer = list(overhang);
  if (longer === '') return `${name}: ${when} the sun comes in under ${namedInside(plan, canopy.id)} to ${side}.`;
  const hanging = drops === null ? '' : `, or a drop of ${list(drops)},`;
  return (
    `${name}: ${when} the sun comes in under ${namedInside(plan, canopy.id)} to ${side}. More cloth, ` +
    `${longer}${hanging} keeps it off ${slip.half === 'evening' ? 'until' : 'from'} ` +
    `${formatClock(until, units, up)}${slip.half === 'evening' ? '' : ' on'}.`
  );
}
