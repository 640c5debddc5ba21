/** Edits of what is not drawn: name, place, season, climate, own plants, stock, journal, and the turn of the year. */

import type { Climate, ClimateMonth, JournalEntry, Knowledge, Plan, PlantRow, Site, Stock, Summer } from '../types.ts';
import { howWith, merged } from './edit-feature.ts';

export function setPlan(plan: Plan, changes: Pick<Partial<Plan>, 'name' | 'units' | 'clay'>): Plan {
  return merged<Plan>(plan, changes);
}

export function setSite(plan: Plan, changes: Partial<Site>): Plan {
  return merged<Plan>(plan, { site: merged<Site>(plan.site, changes) });
}

export function setClimate(plan: Plan, changes: Partial<Climate>): Plan {
  return merged<Plan>(plan, { climate: merged<Climate>(plan.climate, changes) });
}

/** Changes a month's row, or adds it; a new row must come with its high and low. @param month 1 to 12 */
export function setClimateMonth(plan: Plan, month: number, changes: Partial<ClimateMonth>): Plan {
  const { months } = plan.climate;
  const index = months.findIndex((row) => row.month === month);
  if (index >= 0) {
    const row = merged<ClimateMonth>(months[index], changes);
    return row === months[index] ? plan : setClimate(plan, { months: months.with(index, row) });
  }
  const { high, low } = changes;
  return high === undefined || low === undefined
    ? plan
    : setClimate(plan, { months: [...months, { ...changes, month, high, low }] });
}

/** Says how a number of the site or the climate is known; `undefined` means taped. */
export function setPartHow(plan: Plan, part: 'site' | 'climate', key: string, knowledge: Knowledge | undefined): Plan {
  const how = howWith(plan[part].how, key, knowledge);
  return part === 'site' ? setSite(plan, { how }) : setClimate(plan, { how });
}

/** Adds a plant row of the person's own, or replaces the one with its id. */
export function setPlantRow(plan: Plan, row: PlantRow): Plan {
  const plants = plan.plants ?? [];
  const index = plants.findIndex((own) => own.id === row.id);
  return { ...plan, plants: index < 0 ? [...plants, row] : plants.with(index, row) };
}

export function setStock(plan: Plan, changes: Partial<Stock>): Plan {
  return merged<Plan>(plan, { stock: merged<Stock>(plan.stock ?? {}, changes) });
}

export function appendJournal(plan: Plan, entry: JournalEntry): Plan {
  return { ...plan, journal: [...(plan.journal ?? []), entry] };
}

/** @param entry one of the plan's own */
export function changeJournalEntry(plan: Plan, entry: JournalEntry, changes: Partial<JournalEntry>): Plan {
  const journal = plan.journal ?? [];
  const index = journal.indexOf(entry);
  return index < 0 ? plan : { ...plan, journal: journal.with(index, merged<JournalEntry>(entry, changes)) };
}

/** Takes an entry out of the journal by its place; the same plan if there is none. */
export function removeJournalEntry(plan: Plan, index: number): Plan {
  return plan.journal?.[index] === undefined ? plan : { ...plan, journal: plan.journal.toSpliced(index, 1) };
}

/** What one month of a summer was, beside the climate; `undefined` takes it out. @param month 1 to 12 */
export function setSummerMonth(
  plan: Plan,
  year: number,
  month: number,
  was: Omit<Summer['months'][number], 'month'> | undefined,
): Plan {
  const summers = plan.summers ?? [];
  const found = summers.find((summer) => summer.year === year);
  const others = (found?.months ?? []).filter((row) => row.month !== month);
  const months = was === undefined ? others : [...others, { month, ...was }];
  const rest = summers.filter((summer) => summer.year !== year);
  return { ...plan, summers: months.length === 0 ? rest : [...rest, { ...found, year, months }] };
}

/**
 * Starts the next year: this year's plan is frozen into `past`, whole but for the picture to trace over and for earlier
 * years and how warm they were, which stand beside it; the season's year goes up by one. The journal goes on.
 */
export function startNextYear(plan: Plan): Plan {
  const { past = [], summers, ...present } = plan;
  const { underlay: _, ...site } = present.site;
  const frozen = { year: plan.season.year, plan: { ...present, site } };
  return {
    ...present,
    season: { ...plan.season, year: plan.season.year + 1 },
    past: [...past, frozen],
    ...(summers === undefined ? {} : { summers }),
  };
}
