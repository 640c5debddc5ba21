/** Reflective clay: which plants, how much, when, what it does and what it must not touch. */

import { heatDayOf } from '../../../load/leaf/heat-day.ts';
import { surfaceTemperature } from '../../../load/leaf/leaf.ts';
import type { LeafMoment } from '../../../load/leaf/receives.ts';
import { OPEN } from '../../../load/leaf/surroundings.ts';
import type { Outcome, PlantLoad } from '../../../load/types.ts';
import type { PlantHarm } from '../../../load/verdict/harm-of.ts';
import { plantFeatures, type PlantFeature, rowOf } from '../../../load/verdict/planted.ts';
import { foliageFromOf } from '../../../plan/defaults.ts';
import { area, openRing } from '../../../plan/geometry/shapes.ts';
import type { CivilDate, Plan, PlantRow } from '../../../plan/types.ts';
import { sceneOf } from '../../../scene/scene-of.ts';
import { daysAfter } from '../../../sun/days/calendar.ts';
import type { Weather } from '../../../sun/weather/weather.ts';
import { countedFrom, countingDays, LEAST_HARM } from '../hot-days.ts';
import type { HotDates, Stretch } from '../hot-days.ts';
import { CLAY_FIRST, CLAY_NEXT } from './mix.ts';
import type { ClayAdvice, ClayPlant } from './types.ts';
import { clayRefusals, outOfFlower } from './who-may-be-sprayed.ts';
import { clayWords } from './words.ts';

/** Absorptance to sunlight of a leaf under a clay film, 0.35 to 0.45. */
export const CLAY_ABSORPTANCE = 0.4;
/** Spray to just before run-off, on each m² of a crown's outside. Our choice. [L/m²] */
const SPRAY_PER_M2 = 0.15;
/** The first coat comes a week before the first week in which a hot day hurts the plant, a second soon after. [days] */
const LEAD = 7;
const SECOND_COAT = 4;
/** Rain that washes a film off. Our choice. [mm] */
const WASHING_RAIN = 10;
/** A film that would be wanted for less than this is not worth its work. Our choice. [days] */
const LEAST_STRETCH = 14;

const FUZZY: readonly string[] = ['peach', 'apricot', 'kiwifruit', 'raspberry', 'okra'];

const NOT_CHOSEN: ClayAdvice = {
  isChosen: false,
  plants: [],
  skipped: [],
  coats: [],
  washedOff: null,
  advice: [
    {
      basis: 'common practice',
      text: 'White clay can help where no shade can be had: only if you choose it, where it may be sprayed.',
    },
  ],
};

/**
 * @param harms of a season of all months to look at, on hot days as one in ten is
 * @param heatDates of those
 */
export function clayAdvice(
  plan: Plan,
  loads: readonly PlantLoad[],
  harms: readonly PlantHarm[],
  dates: HotDates,
  weather?: Weather,
): Outcome<ClayAdvice> {
  if (plan.clay !== true) return { ok: true, value: NOT_CHOSEN };
  const heat = heatDayOf(plan, sceneOf(plan), { kind: 'heatwave' }, weather);
  if (!heat.ok) return heat;
  const refusals = clayRefusals(plan, weather);
  if (!refusals.ok) return refusals;
  const skipped: { plant: string; why: string }[] = [];
  const plants: ClayPlant[] = [];
  for (const feature of plantFeatures(plan)) {
    const row = rowOf(plan, feature);
    const verdict = loads.find(({ id }) => id === feature.id)?.verdict;
    if (row === undefined || (verdict !== 'at risk' && verdict !== 'will burn')) continue;
    const stretch = worthSpraying(harms, feature.id, dates);
    const coats = stretch && coatsOf(row, plan.site.latitude, stretch);
    const why =
      refusals.value.get(feature.id) ??
      (stretch === null
        ? 'a usual hot day does little harm'
        : coats === null
          ? 'in flower while it would be wanted'
          : null);
    if (why !== null || stretch === null || coats === null) {
      skipped.push({ plant: feature.id, why: why ?? '' });
      continue;
    }
    const surface = crownSurface(feature);
    const litres = surface * SPRAY_PER_M2;
    plants.push({
      plant: feature.id,
      surface,
      litres,
      firstGrams: litres * CLAY_FIRST,
      nextGrams: litres * CLAY_NEXT,
      cooler: clayCooling(heat.value.moments, row),
      fuzzyFruit: FUZZY.includes(row.id),
      coats,
      waitsForFlowers: coats[0] > daysAfter(stretch.first, -LEAD),
      until: stretch.last,
    });
  }
  const told = {
    isChosen: true,
    plants,
    skipped,
    coats: [...new Set(plants.flatMap(({ coats }) => coats))].toSorted(),
    washedOff: washedOffIn(plan),
  };
  return { ok: true, value: { ...told, advice: clayWords(plan, told) } };
}

/** How much a clay film cools the hottest leaf of a day that stands in the full sun. [K] */
export function clayCooling(moments: readonly LeafMoment[], row: PlantRow): ClayPlant['cooler'] {
  const leaf: PlantRow = { ...row, limitOf: 'leaf' };
  const hottest = (watering: 'watered' | 'thirsty', absorptance?: number) =>
    Math.max(...moments.map((moment) => surfaceTemperature(moment, leaf, watering, 1, OPEN, absorptance)));
  return {
    watered: hottest('watered') - hottest('watered', CLAY_ABSORPTANCE),
    thirsty: hottest('thirsty') - hottest('thirsty', CLAY_ABSORPTANCE),
  };
}

/** Side of a cylinder round the foliage and its top; of a bed twice its ground. */
function crownSurface(feature: PlantFeature): number {
  if (feature.kind === 'bed') return 2 * area(openRing(feature.outline));
  const [width, base] =
    feature.kind === 'tree' ? [feature.crownWidth, feature.crownBase] : [feature.spread, foliageFromOf(feature)];
  return Math.PI * width * (feature.height - base) + (Math.PI / 4) * width * width;
}

/** The days on which usual hot days count enough for a coat to be worth its work; `null`: none do. */
function worthSpraying(harms: readonly PlantHarm[], plant: string, dates: HotDates): Stretch | null {
  return countingDays(countedFrom(harms.find(({ id }) => id === plant)?.byHeatDay ?? [], LEAST_HARM), dates);
}

/** The first two coats; `null` where the plant is in flower until the film is hardly wanted any more. */
function coatsOf(row: PlantRow, latitude: number, { first, last }: Stretch): readonly [CivilDate, CivilDate] | null {
  const coat = outOfFlower(row, latitude, daysAfter(first, -LEAD));
  const second = outOfFlower(row, latitude, daysAfter(coat, SECOND_COAT));
  return second > daysAfter(last, -LEAST_STRETCH) ? null : [coat, second];
}

function washedOffIn(plan: Plan): ClayAdvice['washedOff'] {
  const journal = plan.journal ?? [];
  const sprayed = journal
    .filter(({ what }) => what === 'spray')
    .map(({ date }) => date)
    .toSorted()
    .at(-1);
  if (sprayed === undefined) return null;
  const rain = journal
    .filter(({ what, date, amount }) => what === 'rain' && date >= sprayed && (amount ?? 0) >= WASHING_RAIN)
    .toSorted((a, b) => a.date.localeCompare(b.date))
    .at(-1);
  return rain === undefined ? null : { sprayed, rain: rain.date, amount: rain.amount ?? 0 };
}
