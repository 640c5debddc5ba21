/** The year's advice as dated work, each with a name that stays the same. */

import { dayWords } from '../../../plan/dates/dates.ts';
import { isMovable } from '../../../plan/kinds.ts';
import type { CivilDate, Plan } from '../../../plan/types.ts';
import { agreeingWith } from '../../../plan/words/agreement.ts';
import { capital } from '../../../plan/words/first-letter.ts';
import { listWords } from '../../../plan/words/list-words.ts';
import { nameOf, fewNames, namesInside } from '../../../plan/words/names.ts';
import { daysAfter } from '../../../sun/days/calendar.ts';
import { hardeningOf } from '../../place/hardening.ts';
import type { Advice } from '../advice.ts';
import type { ClayAdvice } from '../clay/types.ts';
import type { ClothSeason } from '../cloth/types.ts';
import { uncoverAdvice } from '../cloth/words.ts';
import type { FrostAdvice } from '../frost/types.ts';
import type { Stretch } from '../hot-days.ts';
import { coolWords, type PotsToCool } from '../pots.ts';
import type { PlantWater } from '../water/water.ts';
import type { Newcomer, SeasonEvent } from './types.ts';

/** First and last day on which hot days count, and the plants that feel them first. */
interface HeatTime extends Stretch {
  /** They count before, or go on after, the months that the climate has figures for. */
  readonly earlierUnknown: boolean;
  readonly laterUnknown: boolean;
  readonly plants: readonly string[];
}

export interface SeasonParts {
  readonly cloth: readonly ClothSeason[];
  readonly clay: ClayAdvice;
  readonly water: readonly PlantWater[];
  readonly frost: FrostAdvice;
  readonly newcomers: readonly Newcomer[];
  /** When hot days count; `null`: they never do. */
  readonly heat: HeatTime | null;
  readonly pots: readonly PotsToCool[];
}

/** In the order of their first days. */
export function eventsOf(plan: Plan, parts: SeasonParts): SeasonEvent[] {
  const year = plan.season.year;
  const events = [
    ...parts.newcomers.flatMap((newcomer) => hardening(plan, newcomer, year)),
    ...heatEvents(plan, parts.heat, year),
    ...potEvents(plan, parts, year),
    ...parts.cloth.flatMap((cloth) => clothEvents(plan, cloth, year)),
    ...clayEvents(plan, parts.clay, year),
    ...frostEvents(plan, parts.frost, year),
  ];
  return events.toSorted((a, b) => a.from.localeCompare(b.from) || a.id.localeCompare(b.id));
}

/** Hours of sun as one tells them, to the half: "2½". */
function halfHours(hours: number): string {
  const halves = Math.max(1, Math.round(2 * hours));
  return `${halves < 2 ? '' : Math.floor(halves / 2)}${halves % 2 === 1 ? '½' : ''}`;
}

/** None where the plant gets hardly more sun than before. */
function hardening(plan: Plan, { plant, since, from, to, fromKnown }: Newcomer, year: number): SeasonEvent[] {
  const steps = hardeningOf(from, to, since);
  if (steps === null) return [];
  const { days } = steps;
  const name = namesInside(plan, [plant]);
  const { they, them, are, does } = agreeingWith(nameOf(plan, plant));
  const cloths = days.flatMap(({ cloth, date }, n) =>
    date !== null && cloth !== days[n - 1]?.cloth
      ? [`${cloth === 0 ? 'none' : `${cloth} %`} from ${dayWords(date)}`]
      : [],
  );
  const isCarried = plan.features.some((feature) => feature.id === plant && isMovable(feature));
  const first = halfHours(days[0].sunHours);
  const was = fromKnown
    ? `had ${halfHours(from)} h of sun a day where ${they} stood`
    : `${are} taken to have had ${halfHours(from)} h of sun a day before`;
  return [
    {
      id: `harden-${plant}-${year}`,
      kind: 'harden',
      from: since,
      to: daysAfter(since, days.length - 1),
      features: [plant],
      title: `Harden off ${name}`,
      advice: [
        {
          basis: 'our estimate',
          text:
            `${capital(name)} ${was} and ${does('get')} ${halfHours(to)} h on a clear hot day now` +
            (isCarried ? `: ${first} h on the first day, a little more each day, all on day ${days.length}.` : '.'),
        },
        {
          basis: 'common practice',
          text:
            (isCarried
              ? `Where ${they} cannot be carried back, cloth over ${them} all day instead`
              : `Cloth over ${them}`) + `: ${listWords(cloths)}.`,
        },
        ...steps.notes.map((text): Advice => ({ basis: 'common practice', text })),
      ],
    },
  ];
}

function heatEvents(plan: Plan, heat: HeatTime | null, year: number): SeasonEvent[] {
  if (heat === null) return [];
  return [
    {
      id: `heat-${year}`,
      kind: 'heat',
      from: heat.first,
      to: heat.last,
      title: `Heat may come${heat.earlierUnknown ? ', perhaps sooner' : ''}: look at the forecast every evening`,
      features: heat.plants,
      advice: [
        { basis: 'our estimate', text: `${capital(fewNames(plan, heat.plants))} will feel it first.` },
        {
          basis: 'common practice',
          text: 'Type the next day’s high on the page for tomorrow, and it says what to do the evening before.',
        },
      ],
    },
  ];
}

/** Days before the first hot one. Our choice. */
const POTS_BEFORE = 7;

function potEvents(plan: Plan, { heat, pots }: SeasonParts, year: number): SeasonEvent[] {
  if (heat === null) return [];
  const date = earlier(heat.first, POTS_BEFORE);
  return pots.map((alike) => ({
    id: `pots-${alike.help}-${year}`,
    kind: 'pots',
    from: date,
    to: date,
    title: coolWords(plan, alike),
    advice: [{ basis: 'our estimate', text: 'Uncooled, roots in such a pot would die in a heatwave.' }],
    features: alike.plants,
  }));
}

function clothEvents(plan: Plan, cloth: ClothSeason, year: number): SeasonEvent[] {
  if (cloth.up === null || cloth.down === null) return [];
  const name = namesInside(plan, [cloth.canopy]);
  const features = [cloth.canopy, ...cloth.plants];
  return [
    {
      id: `cloth-up-${cloth.canopy}-${year}`,
      kind: 'cloth-up',
      from: cloth.up,
      to: cloth.up,
      title: `Cloth up${cloth.earlierUnknown ? ' at the latest' : ''}: ${name}`,
      advice: cloth.advice,
      features,
    },
    {
      id: `cloth-down-${cloth.canopy}-${year}`,
      kind: 'cloth-down',
      from: cloth.down,
      to: daysAfter(cloth.down, 10),
      title: `Cloth down${cloth.laterUnknown ? ' at the earliest' : ''}, in steps: ${name}`,
      advice: uncoverAdvice(plan, plan.climate.hotAir),
      features,
    },
  ];
}

/** Plants whose coat falls on one day share it. */
function clayEvents(plan: Plan, clay: ClayAdvice, year: number): SeasonEvent[] {
  return (['First', 'Second'] as const).flatMap((which, k) => {
    const dates = [...new Set(clay.plants.map(({ coats }) => coats[k]))].toSorted();
    return dates.map((date): SeasonEvent => {
      const plants = clay.plants.filter(({ coats }) => coats[k] === date).map(({ plant }) => plant);
      return {
        id: `clay-${k + 1}-${plants.join('-')}-${year}`,
        kind: 'clay',
        from: date,
        to: date,
        title: `${which} coat of clay: ${fewNames(plan, plants)}`,
        advice: [
          {
            basis: 'extension practice',
            text:
              'On the next cool, still morning, nothing in flower, as the label says; mask and goggles on, nobody ' +
              'near until it is dry.',
          },
        ],
        features: plants,
      };
    });
  });
}

function frostEvents(plan: Plan, { window, plants, advice }: FrostAdvice, year: number): SeasonEvent[] {
  const tender = plants.filter(({ reached, annual }) => reached !== false && !annual);
  if (window === null || tender.length === 0) return [];
  const hurt = tender.filter(({ help }) => help !== 'none');
  const features = tender.map(({ plant }) => plant);
  const [wrapped, carried] = (['wrap', 'carry'] as const).map((help) =>
    hurt.filter((each) => each.help === help).map(({ plant }) => plant),
  );
  const ready = [
    ...(wrapped.length === 0 ? [] : [`the frost cover for ${fewNames(plan, wrapped)}`]),
    ...(carried.length === 0 ? [] : [`a place indoors for ${fewNames(plan, carried)}`]),
  ];
  const cover: SeasonEvent[] =
    ready.length === 0
      ? []
      : [
          {
            id: `winter-cover-${year}`,
            kind: 'winter-cover',
            from: earlier(window.first, 14),
            to: earlier(window.first, 14),
            title: `Have ready: ${listWords(ready)}`,
            advice,
            features: hurt.map(({ plant }) => plant),
          },
        ];
  return [
    ...cover,
    {
      id: `frost-${year}`,
      kind: 'frost',
      from: window.first,
      to: window.last,
      title: 'Frosty nights: watch the forecast',
      advice,
      features,
    },
  ];
}

function earlier(date: CivilDate, days: number): CivilDate {
  return daysAfter(date, -days);
}
