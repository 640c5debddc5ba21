import { monthClimate } from '../../../../engine/index.ts';
import type { CivilDate, FeatureOf, Plan, SeasonResult } from '../../../../engine/index.ts';
import { isOn, notedOn } from '../../../common/strip-days.ts';
import type { Strip } from '../../../common/strip-days.ts';

export interface Span {
  readonly from: CivilDate;
  readonly to: CivilDate;
}

/** One line of a strip: what fills it, by the look of its filling. */
export interface Band {
  readonly name: string;
  readonly look: 'heat' | 'cloth' | 'clay' | 'frost';
  readonly spans: readonly Span[];
}

/** A day on which something was noted. */
export interface Mark {
  readonly date: CivilDate;
  readonly look: 'damage' | 'reading';
}

/** What the year is worked out to bring. */
export function bandsOf(plan: Plan, { cloth, clay, frost }: SeasonResult): readonly Band[] {
  return [
    { name: 'Hot', look: 'heat', spans: hotSpans(plan) },
    {
      name: 'Cloth',
      look: 'cloth',
      spans: cloth.flatMap(({ up, down }) => (up !== null && down !== null ? [{ from: up, to: down }] : [])),
    },
    { name: 'Clay', look: 'clay', spans: clay.coats.map((date) => ({ from: date, to: date })) },
    { name: 'Frost', look: 'frost', spans: frost.window ? [{ from: frost.window.first, to: frost.window.last }] : [] },
  ];
}

/** What an earlier year brought: its own climate, and what the diary says of cloth and clay. */
export function notedBands(earlier: Plan, strip: Strip, now: Plan): readonly Band[] {
  const { first, last } = earlier.climate.frost ?? {};
  const dayOf = (monthDay: string): CivilDate => `${strip.year}-${monthDay}`;
  const downs = notedOn(strip, now, 'cloth-down');
  const cloths = notedOn(strip, now, 'cloth-up').map(({ date, feature }): Span => {
    const down = downs.find((entry) => entry.date >= date && entry.feature === feature);
    return { from: date, to: down?.date ?? date };
  });
  return [
    { name: 'Hot', look: 'heat', spans: hotSpans(earlier) },
    { name: 'Cloth', look: 'cloth', spans: cloths },
    { name: 'Clay', look: 'clay', spans: notedOn(strip, now, 'spray').map(({ date }) => ({ from: date, to: date })) },
    {
      name: 'Frost',
      look: 'frost',
      spans: first !== undefined && last !== undefined ? [{ from: dayOf(first), to: dayOf(last) }] : [],
    },
  ];
}

export function marksOn(strip: Strip, plan: Plan): readonly Mark[] {
  const readings = plan.features
    .filter((feature): feature is FeatureOf<'reading'> => feature.kind === 'reading')
    .map(({ when }) => when.slice(0, 10));
  return [
    ...notedOn(strip, plan, 'damage').map(({ date }): Mark => ({ date, look: 'damage' })),
    ...[...new Set(readings)].filter((date) => isOn(strip, date)).map((date): Mark => ({ date, look: 'reading' })),
  ];
}

/** Months in which most days reach the plan's hot air; months that follow each other are one span. */
function hotSpans(plan: Plan): readonly Span[] {
  const { climate, season } = plan;
  const months = climate.months
    .map(({ month }) => month)
    .filter((month) => (monthClimate(plan, month)?.high ?? -Infinity) >= climate.hotAir)
    .toSorted((a, b) => a - b);
  const spans = months.reduce<{ first: number; last: number }[]>((all, month) => {
    const before = all.at(-1);
    return before?.last === month - 1
      ? [...all.slice(0, -1), { first: before.first, last: month }]
      : [...all, { first: month, last: month }];
  }, []);
  return spans.map(({ first, last }) => ({
    from: dayText(Date.UTC(season.year, first - 1, 1)),
    to: dayText(Date.UTC(season.year, last, 0)),
  }));
}

function dayText(ms: number): CivilDate {
  return new Date(ms).toISOString().slice(0, 10);
}
