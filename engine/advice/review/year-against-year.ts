/**
 * Whether a plant fared better than the summer explains: by a plant that was left as it was, else by putting last
 * year's yard through this year's heat too.
 */

import type { Outcome } from '../../load/types.ts';
import { harmOf, type PlantHarm } from '../../load/verdict/harm-of.ts';
import { KeptByContent } from '../../plan/kept.ts';
import { isCloth } from '../../plan/kinds.ts';
import { meanOf } from '../../plan/numbers/mean.ts';
import type { Plan } from '../../plan/types.ts';
import { withoutDiary } from '../../plan/yards/without-diary.ts';
import { seasonYearOf } from '../year/span.ts';
import { summersOf } from './summers.ts';
import type { YearComparison } from './types.ts';
import { yearFinding } from './year-finding.ts';
import { headline, reasons } from './year-words.ts';

const WORST = 5;
/** A plant whose dose the changed yard alters by less than this share was left as it was. Our choice. */
const LEFT_ALONE = 0.1;

interface Scored {
  readonly plant: string;
  readonly years: readonly [number, number];
  readonly damage: readonly [number, number];
}

/** A plant that has been scored in two summers or more, by its latest two; the worst score of a summer counts. */
export function yearsAgainst(plan: Plan): YearComparison[] {
  const all = scoredTwice(plan);
  const byYears = new Map<string, YearDoses | null>();
  return all.map((scored) => {
    const key = scored.years.join();
    const doses = byYears.get(key) ?? dosesOf(plan, scored.years);
    byYears.set(key, doses);
    return compare(plan, scored, all, doses);
  });
}

function scoredTwice(plan: Plan): Scored[] {
  const worst = new Map<string, Map<number, number>>();
  for (const { what, feature, date, amount } of plan.journal ?? []) {
    if (what !== 'damage' || feature === undefined || amount === undefined) continue;
    const years = worst.get(feature) ?? new Map<number, number>();
    const year = seasonYearOf(plan, date);
    worst.set(feature, years.set(year, Math.max(amount, years.get(year) ?? 0)));
  }
  return [...worst].flatMap(([plant, scores]): Scored[] => {
    const years = [...scores.keys()].toSorted((a, b) => a - b).slice(-2);
    return years.length < 2
      ? []
      : [{ plant, years: [years[0], years[1]], damage: [scores.get(years[0]) ?? 0, scores.get(years[1]) ?? 0] }];
  });
}

/** Doses by plant: the old yard in the old heat, the old yard in the new heat, and the new yard in the new. */
interface YearDoses {
  readonly older: Plan;
  readonly newer: Plan;
  readonly oldYardOldHeat: readonly PlantHarm[];
  readonly oldYardNewHeat: readonly PlantHarm[];
  readonly newYardNewHeat: readonly PlantHarm[];
  /** [K] `null` where how warm both were is not known: then one heat stands for both. */
  readonly warmer: number | null;
}

/** `null` where a year's yard is not kept. */
function dosesOf(plan: Plan, years: readonly [number, number]): YearDoses | null {
  const planOf = (year: number) =>
    year === plan.season.year ? plan : plan.past?.find((past) => past.year === year)?.plan;
  const [older, newer] = years.map(planOf);
  if (older === undefined || newer === undefined) return null;
  const summers = summersOf(plan, years, older, newer);
  const [before, after] = summers?.climates ?? [newer.climate, newer.climate];
  const oldYardNewHeat = harmsOf(older, after);
  const oldYardOldHeat = summers === null ? oldYardNewHeat : harmsOf(older, before);
  const newYardNewHeat = harmsOf(newer, after);
  if (!oldYardOldHeat.ok || !oldYardNewHeat.ok || !newYardNewHeat.ok) return null;
  return {
    older,
    newer,
    oldYardOldHeat: oldYardOldHeat.value,
    oldYardNewHeat: oldYardNewHeat.value,
    newYardNewHeat: newYardNewHeat.value,
    warmer: summers?.warmer ?? null,
  };
}

/** A summer's damage is noted and its months are typed one by one: the yards stay. */
const known = new KeptByContent<Outcome<readonly PlantHarm[]>>(6);

function harmsOf(plan: Plan, climate: Plan['climate']): Outcome<readonly PlantHarm[]> {
  const yard = withoutDiary({ ...plan, climate });
  return known.of(yard, () => harmOf(yard));
}

function compare(plan: Plan, scored: Scored, all: readonly Scored[], doses: YearDoses | null): YearComparison {
  const partners = doses === null ? [] : partnersOf(scored, all, doses);
  const byPartner =
    partners.length === 0 ? null : Math.min(WORST, meanOf(partners.map((each) => madeOf(scored, each))));
  const dose = doses === null || doses.warmer === null ? null : doseOf(doses, scored.plant);
  const byHeat =
    dose === null || dose[0] <= 0
      ? null
      : { expected: Math.min(WORST, (scored.damage[0] * dose[1]) / dose[0]), ratio: dose[1] / dose[0] };
  const eased = doses === null ? null : easedBy(doses, scored.plant);
  const finding = yearFinding({ damage: scored.damage, byHeat, byPartner, isEased: eased !== null });
  const told = {
    ...scored,
    dose,
    warmer: doses?.warmer ?? null,
    expected: byPartner ?? byHeat?.expected ?? null,
    partners: partners.map(({ plant, damage }) => ({ plant, damage })),
    eased,
    leftAlone: doses !== null && isLeftAlone(doses, scored.plant),
    finding,
  };
  const isKept = doses !== null;
  const first = headline(plan, told);
  return { ...told, headline: first, sentence: [first, ...reasons(plan, told, isKept)].join(' ') };
}

/** Plants scored in the same summers that nothing was changed about, and that were hurt in one of them at least. */
function partnersOf(scored: Scored, all: readonly Scored[], doses: YearDoses): Scored[] {
  return all.filter(
    (other) =>
      other.plant !== scored.plant &&
      other.years.join() === scored.years.join() &&
      Math.max(...other.damage) > 0 &&
      isLeftAlone(doses, other.plant),
  );
}

function isLeftAlone({ oldYardNewHeat, newYardNewHeat }: YearDoses, id: string): boolean {
  const [then, now] = [harmIn(oldYardNewHeat, id), harmIn(newYardNewHeat, id)];
  return then !== null && now !== null && Math.abs(now - then) <= LEFT_ALONE * then;
}

/** What a partner's two scores make of a plant's first one: in proportion, or by as many steps where it had none. */
function madeOf({ damage: [before] }: Scored, { damage: [then, now] }: Scored): number {
  return then > 0 && before > 0 ? (before * now) / then : before + now - then;
}

function doseOf({ oldYardOldHeat, oldYardNewHeat }: YearDoses, id: string): readonly [number, number] | null {
  const [before, after] = [harmIn(oldYardOldHeat, id), harmIn(oldYardNewHeat, id)];
  return before === null || after === null ? null : [before, after];
}

/** What was changed to a plant's good; `null`: nothing that lessens the dose in the same heat. */
function easedBy({ older, newer, oldYardNewHeat, newYardNewHeat }: YearDoses, id: string): YearComparison['eased'] {
  const [then, now] = [harmIn(oldYardNewHeat, id), harmIn(newYardNewHeat, id)];
  if (then === null || now === null || now >= (1 - LEFT_ALONE) * then) return null;
  const clothsOf = ({ features }: Plan) => features.filter(isCloth);
  if (clothsOf(newer).some((cloth) => !clothsOf(older).some((old) => JSON.stringify(old) === JSON.stringify(cloth))))
    return 'cover';
  const [was, is] = [older, newer].map(({ features }) => features.find((feature) => feature.id === id));
  return was?.kind === 'plant' && is?.kind === 'plant' && was.at.join() !== is.at.join() ? 'place' : 'yard';
}

function harmIn(harms: readonly PlantHarm[], id: string): number | null {
  return harms.find((harm) => harm.id === id)?.harm ?? null;
}
