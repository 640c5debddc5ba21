/** Whether cloth hangs on a day: by the plan's own dates, else by the diary, else it is taken to. */

import { monthDayOf } from '../../../plan/dates/parts.ts';
import { inYearlySpan } from '../../../plan/dates/year-span.ts';
import { isCloth } from '../../../plan/kinds.ts';
import type { CivilDate, Plan } from '../../../plan/types.ts';
import { daysAfter } from '../../../sun/days/calendar.ts';
import type { ClothSeason } from './types.ts';

interface ClothOn {
  readonly id: string;
  readonly hangs: 'yes' | 'no';
  /** `null`: nobody says so. */
  readonly saidBy: 'plan' | 'diary' | null;
}

/** What was noted of a cloth longer ago is another summer's. [days] */
const REMEMBERED = 300;

export function clothOn(plan: Plan, date: CivilDate): ClothOn[] {
  return plan.features.flatMap((feature): ClothOn[] => {
    if (!isCloth(feature)) return [];
    const { id, up } = feature;
    if (up !== undefined) return [{ id, hangs: inYearlySpan(up, monthDayOf(date)) ? 'yes' : 'no', saidBy: 'plan' }];
    const noted = lastNoted(plan, id, date);
    if (noted === null) return [{ id, hangs: 'yes', saidBy: null }];
    return [{ id, hangs: noted === 'cloth-up' ? 'yes' : 'no', saidBy: 'diary' }];
  });
}

function lastNoted({ journal = [] }: Plan, id: string, date: CivilDate): 'cloth-up' | 'cloth-down' | null {
  const since = daysAfter(date, -REMEMBERED);
  const last = journal
    .filter(({ what, feature }) => (what === 'cloth-up' || what === 'cloth-down') && feature === id)
    .filter((entry) => entry.date >= since && entry.date <= date)
    .toSorted((a, b) => a.date.localeCompare(b.date))
    .at(-1);
  return last?.what === 'cloth-up' || last?.what === 'cloth-down' ? last.what : null;
}

/** The yard with the cloth alone that hangs on a day. */
export function withClothOn(plan: Plan, date: CivilDate): Plan {
  const down = clothOn(plan, date)
    .filter(({ hangs }) => hangs === 'no')
    .map(({ id }) => id);
  return down.length === 0 ? plan : { ...plan, features: plan.features.filter(({ id }) => !down.includes(id)) };
}

/** The yard through the year as it is told: cloth that the plan gives no days of its own hangs on the days advised. */
export function hungAsTold(plan: Plan, told: readonly ClothSeason[]): Plan {
  const features = plan.features.map((feature) => {
    if (!isCloth(feature) || feature.up !== undefined) return feature;
    const { up, down } = told.find(({ canopy }) => canopy === feature.id) ?? { up: null, down: null };
    return up === null || down === null ? feature : { ...feature, up: { from: monthDayOf(up), to: monthDayOf(down) } };
  });
  return { ...plan, features };
}
