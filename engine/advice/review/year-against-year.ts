/** Whether a plant fared better than the year's heat explains: last year's yard is put through this year's heat too. */
import { harmOf, type PlantHarm } from '../../load/verdict/harm-of.ts';
import { nameOf } from '../../plan/names.ts';
import type { Plan } from '../../plan/types.ts';
import { seasonYearOf } from '../year/season/span.ts';
import type { YearComparison, YearVerdict } from './types.ts';

/** Damage is scored in whole steps: less than one says nothing. */
const ONE_STEP = 1;
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
  return scoredTwice(plan).map((scored) => compare(plan, scored, scoredTwice(plan)));
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

function compare(plan: Plan, scored: Scored, all: readonly Scored[]): YearComparison {
  const doses = dosesOf(plan, scored);
  if (doses === null)
    return {
      ...scored,
      dose: null,
      expected: null,
      control: null,
      verdict: 'cannot tell',
      sentence: unknownSentence(plan, scored),
    };
  const of = (harms: readonly PlantHarm[], id: string) => harms.find((harm) => harm.id === id)?.harm ?? null;
  const expectedOf = ({ plant, damage }: Scored): number | null => {
    const [before, after] = [of(doses.oldYardOldHeat, plant), of(doses.oldYardNewHeat, plant)];
    return before === null || after === null || before <= 0 ? null : Math.min(WORST, (damage[0] * after) / before);
  };
  const expected = expectedOf(scored);
  const controls = all.flatMap((other): number[] => {
    const [then, now] = [of(doses.oldYardNewHeat, other.plant), of(doses.newYardNewHeat, other.plant)];
    const own = expectedOf(other);
    const same =
      other.plant !== scored.plant && other.years[0] === scored.years[0] && other.years[1] === scored.years[1];
    return same && own !== null && then !== null && now !== null && Math.abs(now - then) <= LEFT_ALONE * then
      ? [other.damage[1] - own]
      : [];
  });
  const control = controls.length === 0 ? null : controls.reduce((sum, value) => sum + value, 0) / controls.length;
  const before = of(doses.oldYardOldHeat, scored.plant);
  const after = of(doses.oldYardNewHeat, scored.plant);
  if (expected === null || before === null || after === null)
    return {
      ...scored,
      dose: null,
      expected: null,
      control,
      verdict: 'cannot tell',
      sentence: unknownSentence(plan, scored),
    };
  const verdict = verdictOf(scored.damage[1] - expected - (control ?? 0));
  return {
    ...scored,
    dose: [before, after],
    expected,
    control,
    verdict,
    sentence: knownSentence(plan, scored, [before, after], expected, control, verdict),
  };
}

function verdictOf(change: number): YearVerdict {
  if (change <= -ONE_STEP) return 'better than the heat explains';
  return change >= ONE_STEP ? 'worse than the heat explains' : 'not distinguishable';
}

/** The earlier yard in both years' heat, and the later yard in its own; `null` where a year's plan is not kept. */
function dosesOf(plan: Plan, { years }: Scored) {
  const planOf = (year: number) =>
    year === plan.season.year ? plan : plan.past?.find((past) => past.year === year)?.plan;
  const [older, newer] = years.map(planOf);
  if (older === undefined || newer === undefined) return null;
  const oldYardOldHeat = harmOf(older);
  const oldYardNewHeat = harmOf({ ...older, climate: newer.climate });
  const newYardNewHeat = harmOf(newer);
  if (!oldYardOldHeat.ok || !oldYardNewHeat.ok || !newYardNewHeat.ok) return null;
  return {
    oldYardOldHeat: oldYardOldHeat.value,
    oldYardNewHeat: oldYardNewHeat.value,
    newYardNewHeat: newYardNewHeat.value,
  };
}

const CAVEAT = 'One plant, one year proves little.';

function knownSentence(
  plan: Plan,
  { plant, years, damage }: Scored,
  dose: readonly [number, number],
  expected: number,
  control: number | null,
  verdict: YearVerdict,
): string {
  const heat =
    dose[1] < 0.95 * dose[0]
      ? `a cooler summer (scorch dose ${dose[0].toFixed(0)}, then ${dose[1].toFixed(0)} K·h a day in the old yard)`
      : dose[1] > 1.05 * dose[0]
        ? `a hotter summer (scorch dose ${dose[0].toFixed(0)}, then ${dose[1].toFixed(0)} K·h a day in the old yard)`
        : 'a summer as hot';
  const partner =
    control === null
      ? 'No plant left as it was is scored beside it, so other causes are not ruled out.'
      : Math.abs(control) < 0.05
        ? 'Plants left as they were did as their own heat explains.'
        : `Plants left as they were came out ${Math.abs(control).toFixed(1)} of a step ` +
          `${control <= 0 ? 'better' : 'worse'} than their own heat explains, and that is taken off.`;
  return (
    `${nameOf(plan, plant)}: damage ${damage[0]} of 5 in ${years[0]}, ${damage[1]} in ${years[1]}, after ` +
    `${heat}; the heat alone would have made it about ${expected.toFixed(1)}. ${VERDICTS[verdict]} ${partner} ${CAVEAT}`
  );
}

const VERDICTS: Readonly<Record<YearVerdict, string>> = {
  'better than the heat explains': 'It fared better than the year’s heat explains.',
  'not distinguishable': 'That is not distinguishable from what the heat alone does.',
  'worse than the heat explains': 'It fared worse than the year’s heat explains.',
  'cannot tell': 'It cannot be told.',
};

function unknownSentence(plan: Plan, { plant, years, damage }: Scored): string {
  return (
    `${nameOf(plan, plant)}: damage ${damage[0]} of 5 in ${years[0]}, ${damage[1]} in ${years[1]}. The yard ` +
    `and the heat of both years must be kept to compare them: start each new year from the old one, and type in ` +
    `the months’ real highs and lows. ${CAVEAT}`
  );
}
