import { dateOfMoment } from '../../../../engine/index.ts';
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

/** What the year is worked out to bring; a line for each thing that it does bring. */
export function bandsOf({ events, cloth, clay, frost }: SeasonResult): readonly Band[] {
  return filled([
    { name: 'Heat', look: 'heat', spans: events.filter(({ kind }) => kind === 'heat') },
    {
      name: 'Cloth',
      look: 'cloth',
      spans: cloth
        .flatMap(({ up, down }) => (up !== null && down !== null ? [{ from: up, to: down }] : []))
        .toSorted((a, b) => a.from.localeCompare(b.from)),
    },
    { name: 'Clay', look: 'clay', spans: clay.coats.map((date) => ({ from: date, to: date })) },
    { name: 'Frost', look: 'frost', spans: frost.window ? [{ from: frost.window.first, to: frost.window.last }] : [] },
  ]);
}

/** What an earlier year brought, as far as the diary says. */
export function notedBands(strip: Strip, now: Plan): readonly Band[] {
  const downs = notedOn(strip, now, 'cloth-down');
  const cloths = notedOn(strip, now, 'cloth-up').map(({ date, feature }): Span => {
    const down = downs.find((entry) => entry.date >= date && entry.feature === feature);
    return { from: date, to: down?.date ?? date };
  });
  return filled([
    { name: 'Cloth', look: 'cloth', spans: cloths },
    { name: 'Clay', look: 'clay', spans: notedOn(strip, now, 'spray').map(({ date }) => ({ from: date, to: date })) },
  ]);
}

function filled(bands: readonly Band[]): readonly Band[] {
  return bands.filter(({ spans }) => spans.length > 0);
}

export function marksOn(strip: Strip, plan: Plan): readonly Mark[] {
  const readings = plan.features
    .filter((feature): feature is FeatureOf<'reading'> => feature.kind === 'reading')
    .map(({ when }) => dateOfMoment(when));
  return [
    ...notedOn(strip, plan, 'damage').map(({ date }): Mark => ({ date, look: 'damage' })),
    ...[...new Set(readings)].filter((date) => isOn(strip, date)).map((date): Mark => ({ date, look: 'reading' })),
  ];
}
