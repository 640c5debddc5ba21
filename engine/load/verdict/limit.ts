import type { CivilDate, Plan, PlantRow } from '../../plan/types.ts';
import { daysAfter } from '../../sun/calendar.ts';
import type { PlantFeature } from './planted.ts';

/** A plant new to more sun is damaged this much earlier (from fruit suddenly exposed: 1.1 to 3.9 K). [K] */
const UNHARDENED_BY = 2;
const HARDENING_DAYS = 14;
/** Summers in the ground after which a plant whose young alone want shade is established. */
const ESTABLISHED_SUMMERS = 3;

/** Temperature above which a plant is damaged on a heat day, and whether it was lowered for a recent move. */
export interface Limit {
  /** [°C] */
  readonly celsius: number;
  readonly unhardened: boolean;
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
  return { celsius: row.heatLimit - (unhardened ? UNHARDENED_BY : 0), unhardened };
}

/** Whether a plant was planted three summers ago or more; false where nobody says when. */
export function isEstablished(plan: Plan, feature: PlantFeature): boolean {
  return feature.planted !== undefined && plan.season.year - Number(feature.planted.slice(0, 4)) >= ESTABLISHED_SUMMERS;
}
