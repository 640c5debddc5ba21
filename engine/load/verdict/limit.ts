import { yearOf } from '../../plan/dates/parts.ts';
import type { CivilDate, Plan, PlantRow } from '../../plan/types.ts';
import { daysAfter } from '../../sun/days/calendar.ts';
import type { PlantFeature } from './planted.ts';

/** A plant new to more sun is damaged this much earlier (from fruit suddenly exposed: 1.1 to 3.9 K). [K] */
const UNHARDENED_BY = 2;
/** By how much more or less (the same fruit). [K] */
const UNHARDENED_SPREAD = 1;
const HARDENING_DAYS = 14;

/**
 * How far a row's limit may be off [K]: measured on that plant (apples 46 to 49 °C, pepper 40.5 to 42.5), told by those
 * who grow it, or our own figure for plants of its kind (147 tropical trees lie within ± 3 of their middle). Our
 * choice.
 */
const LIMIT_SPREAD = { measured: 1, told: 1.5, ofKind: 2 } as const;
/** Summers in the ground after which a plant whose young alone want shade is established. */
const ESTABLISHED_SUMMERS = 3;

/** Temperature above which a plant is damaged on a heat day, and whether it was lowered for a recent move. */
export interface Limit {
  /** [°C] */
  readonly celsius: number;
  readonly unhardened: boolean;
  /** How far it may be off: of what the row's figure rests on, and of a plant not hardened. [K] */
  readonly spread: number;
}

/**
 * A row's limit, 2 K lower within two weeks of a move into more sun: a journal entry 'moved' of the plant, or the day
 * it was planted, at most 14 days before the heat day. The journal does not say whether the new place is sunnier; it is
 * taken to be.
 */
export function limitOf(plan: Plan, feature: PlantFeature, row: PlantRow, heatDate: CivilDate): Limit {
  const moves = (plan.journal ?? [])
    .filter((entry) => entry.what === 'moved' && entry.feature === feature.id)
    .map((entry) => entry.date);
  if (feature.planted !== undefined && feature.planted.length === 10) moves.push(feature.planted);
  const earliest = daysAfter(heatDate, -HARDENING_DAYS);
  const unhardened = moves.some((date) => date >= earliest && date <= heatDate);
  return {
    celsius: row.heatLimit - (unhardened ? UNHARDENED_BY : 0),
    unhardened,
    spread: Math.hypot(limitSpread(row), unhardened ? UNHARDENED_SPREAD : 0),
  };
}

/** Whether a plant was planted three summers ago or more; false where nobody says when. */
export function isEstablished(plan: Plan, feature: PlantFeature): boolean {
  return feature.planted !== undefined && plan.season.year - yearOf(feature.planted) >= ESTABLISHED_SUMMERS;
}

/** How far the limit of a row may be off, before all that is known of one plant. [K] */
export function limitSpread({ limitBasis }: PlantRow): number {
  if (limitBasis === 'measured') return LIMIT_SPREAD.measured;
  return limitBasis === 'class default' ? LIMIT_SPREAD.ofKind : LIMIT_SPREAD.told;
}
