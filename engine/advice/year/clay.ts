/** Reflective clay: which plants, how much, when, what it does and what it must not touch. */
import { dayWords } from '../../plan/dates.ts';
import { area, openRing } from '../../plan/geometry/shapes.ts';
import { foliageFromOf } from '../../plan/defaults.ts';
import type { CivilDate, Plan, PlantRow } from '../../plan/types.ts';
import { formatMass, formatTemperatureDifference, type Units, unitsOf } from '../../plan/units.ts';
import { heatDayOf } from '../../load/leaf/heat-day.ts';
import type { PlantHarm } from '../../load/verdict/harm-of.ts';
import { surfaceTemperature } from '../../load/leaf/leaf.ts';
import type { LeafMoment } from '../../load/leaf/receives.ts';
import { OPEN } from '../../load/leaf/surroundings.ts';
import { plantFeatures, type PlantFeature, rowOf } from '../../load/verdict/planted.ts';
import type { Outcome, PlantLoad } from '../../load/types.ts';
import { buildScene } from '../../scene/build.ts';
import { daysAfter } from '../../sun/calendar.ts';
import type { Weather } from '../../sun/weather.ts';
import { stretchAbove } from './season/span.ts';
import type { Advice } from './advice.ts';
import { daysFolded, namesInside, sentenceCase } from './season/words.ts';

/** Absorptance to sunlight of a leaf under a clay film, 0.35 to 0.45. */
export const CLAY_ABSORPTANCE = 0.4;
/**
 * Powder in water. Orchard trials and extension: 50 lb, then 25 lb in 100 gallons. A garden's light coat is half a cup
 * to the gallon. [g/L]
 */
const CLAY_FIRST = 60;
const CLAY_NEXT = 30;
const CLAY_LIGHT = 17;
/** A one-gallon sprayer. [L] */
const FILL = 3.785;
/** Spray to just before run-off, on each m² of a crown's outside. Our choice. [L/m²] */
const SPRAY_PER_M2 = 0.15;
/**
 * Coats begin this long before the first hot day that hurts, a second follows, then one every two to three weeks.
 * [days]
 */
const LEAD = 10;
const SECOND_COAT = 4;
const EVERY = 18;
/** Rain that washes a film off. Our choice. [mm] */
const WASHING_RAIN = 10;
/** A coat is worth its work while a hot day does at least this share of the harm of the worst month's. Our choice. */
const WORTH_SPRAYING = 0.25;

const EATEN_LEAVES: readonly string[] = ['lettuce', 'spinach', 'chard', 'kale', 'cabbage', 'amaranth', 'leafy'];
const FUZZY: readonly string[] = ['peach', 'apricot', 'kiwifruit', 'raspberry', 'okra'];

interface Stretch {
  readonly first: CivilDate;
  readonly last: CivilDate;
}

export interface ClayPlant {
  readonly plant: string;
  /** Outside of its crown. [m²] */
  readonly surface: number;
  /** One coat. [L] */
  readonly litres: number;
  /** Powder of the first coat and of each later one. [g] */
  readonly firstGrams: number;
  readonly nextGrams: number;
  /** How much cooler its hottest leaf gets, watered and thirsty. [K] */
  readonly cooler: { readonly watered: number; readonly thirsty: number };
  readonly fuzzyFruit: boolean;
}

export interface ClayAdvice {
  readonly plants: readonly ClayPlant[];
  /** At risk, yet not to be sprayed. */
  readonly skipped: readonly { readonly plant: string; readonly why: string }[];
  readonly coats: readonly CivilDate[];
  /** Rain after the latest coat in the journal that washed it off. */
  readonly washedOff: { readonly sprayed: CivilDate; readonly rain: CivilDate; readonly amount: number } | null;
  readonly advice: readonly Advice[];
}

/**
 * @param wide the plan with a season of all months to look at
 * @param harms of that season
 * @param heatDates of its heat days
 */
export function clayAdvice(
  plan: Plan,
  wide: Plan,
  loads: readonly PlantLoad[],
  harms: readonly PlantHarm[],
  heatDates: readonly CivilDate[],
  span: Stretch,
  weather?: Weather,
): Outcome<ClayAdvice> {
  const heat = heatDayOf(plan, buildScene(plan), { kind: 'heatwave' }, weather);
  if (!heat.ok) return heat;
  const threatened = plantFeatures(plan).filter(({ id }) =>
    loads.some((load) => load.id === id && (load.verdict === 'at risk' || load.verdict === 'will burn')),
  );
  const skipped = threatened.flatMap((feature) => {
    const why = noClayBecause(rowOf(plan, feature));
    return why === null ? [] : [{ plant: feature.id, why }];
  });
  const plants = threatened.flatMap((feature): ClayPlant[] => {
    const row = rowOf(plan, feature);
    if (row === undefined || noClayBecause(row) !== null) return [];
    const surface = crownSurface(feature);
    const litres = surface * SPRAY_PER_M2;
    return [
      {
        plant: feature.id,
        surface,
        litres,
        firstGrams: litres * CLAY_FIRST,
        nextGrams: litres * CLAY_NEXT,
        cooler: clayCooling(heat.value.moments, row),
        fuzzyFruit: FUZZY.includes(row.id),
      },
    ];
  });
  const heatStretch =
    plants.length === 0
      ? null
      : stretchWorthSpraying(
          plants.map(({ plant }) => plant),
          harms,
          heatDates,
          span,
        );
  const coats = heatStretch === null ? [] : coatDates(heatStretch);
  const washedOff = washedOffIn(plan);
  return {
    ok: true,
    value: {
      plants,
      skipped,
      coats,
      washedOff,
      advice: sentences(wide, { plants, skipped, coats, washedOff }, heatStretch?.last ?? null),
    },
  };
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

/** Why a plant is not to be sprayed; `null`: it may be. */
export function noClayBecause(row: PlantRow | undefined): string | null {
  if (row === undefined) return null;
  if (row.group === 'herb') return 'its leaves are eaten and clay is hard to wash off';
  if (EATEN_LEAVES.includes(row.id)) return 'its leaves are eaten and clay is hard to wash off';
  return null;
}

/** Side of a cylinder round the foliage and its top; of a bed twice its ground. */
function crownSurface(feature: PlantFeature): number {
  if (feature.kind === 'bed') return 2 * area(openRing(feature.outline));
  const [width, base] =
    feature.kind === 'tree' ? [feature.crownWidth, feature.crownBase] : [feature.spread, foliageFromOf(feature)];
  return Math.PI * width * (feature.height - base) + (Math.PI / 4) * width * width;
}

/** The days of the year on which the heat does enough harm for a coat to be worth its work; `null`: none do. */
function stretchWorthSpraying(
  ids: readonly string[],
  harms: readonly PlantHarm[],
  heatDates: readonly CivilDate[],
  span: Stretch,
): Stretch | null {
  const most = heatDates.map((date, day) => ({
    date,
    value: Math.max(0, ...harms.filter(({ id }) => ids.includes(id)).map(({ byHeatDay }) => byHeatDay[day])),
  }));
  const worst = Math.max(...most.map(({ value }) => value));
  return worst > 0 ? stretchAbove(most, WORTH_SPRAYING * worst, span.first, span.last) : null;
}

function coatDates(hot: Stretch): CivilDate[] {
  const first = daysAfter(hot.first, -LEAD);
  const coats = [first, daysAfter(first, SECOND_COAT)];
  for (let next = daysAfter(coats[1], EVERY); next < daysAfter(hot.last, -EVERY / 2); next = daysAfter(next, EVERY))
    coats.push(next);
  return coats;
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

function sentences(
  plan: Plan,
  { plants, skipped, coats, washedOff }: Omit<ClayAdvice, 'advice'>,
  wantedUntil: CivilDate | null,
): Advice[] {
  if (plants.length === 0)
    return [
      {
        basis: 'our estimate',
        text: 'No plant here needs clay: none that may be sprayed is at risk on the heatwave day.',
      },
      ...skipped.map((one) => skipSentence(plan, one)),
    ];
  const units = unitsOf(plan);
  const degrees = (kelvin: number) => formatTemperatureDifference(kelvin, units);
  const low = Math.min(...plants.map(({ cooler }) => cooler.watered));
  const high = Math.max(...plants.map(({ cooler }) => cooler.thirsty));
  const advice: Advice[] = [
    {
      basis: 'our estimate',
      text: `Clay helps ${namesInside(
        plan,
        plants.map(({ plant }) => plant),
      )}: it takes about ${degrees(low)} (watered) to ${degrees(high)} (thirsty) off a leaf in the full sun.`,
    },
    {
      basis: 'trial',
      source: 'Glenn 2012, HortScience 47:710–711; Wand et al. 2006, Sci. Hortic. 107:271–276',
      text:
        `Trials measured crowns up to ${degrees(5)} cooler and less burnt fruit, but not in every season; ` +
        `${degrees(8)}, as some promise, is twice what most measured.`,
    },
    {
      basis: 'extension practice',
      source: 'Rutgers 2012; WTFRC in Good Fruit Grower',
      text:
        `First coat ${perFill(CLAY_FIRST, units)}, later coats ${perFill(CLAY_NEXT, units)}, stirred or ` +
        `shaken all the while.`,
    },
    {
      basis: 'common practice',
      text:
        `A garden’s light coat is ${perFill(CLAY_LIGHT, units)} ` +
        `(${units === 'metric' ? 'about 170 ml of loose powder' : 'about half a cup'}), where looks matter.`,
    },
    {
      basis: 'extension practice',
      text:
        'Spray on a cool, still morning to just before run-off, both faces of the leaf and the fruit’s sunny ' +
        'side; let it dry before rain or watering from above, and rinse the sprayer.',
    },
    {
      basis: 'extension practice',
      text:
        'Two coats a few days apart before the first heat; then again after heavy rain or overhead water, on ' +
        'new growth, or where 2 to 3 weeks have worn it thin.',
    },
    {
      basis: 'common practice',
      text: 'Not over open flowers, not on leaves to be eaten soon, not mixed with other sprays untested.',
    },
    {
      basis: 'trial',
      source: 'Rosati et al. 2007, Ann. Bot. 99:255–263',
      text: 'A sprayed leaf works with about a fifth less light, inner leaves gain: do not spray where light is short.',
    },
    ...plants.map(({ plant, litres, firstGrams, nextGrams }): Advice => ({
      basis: 'our estimate',
      text:
        `${sentenceCase(namesInside(plan, [plant]))}: about ${litresWords(litres, units)} a coat, ` +
        `${powder(firstGrams, units)} of powder the first time and ${powder(nextGrams, units)} each time after.`,
    })),
    ...skipped.map((one) => skipSentence(plan, one)),
  ];
  const fuzzy = plants.filter(({ fuzzyFruit }) => fuzzyFruit).map(({ plant }) => plant);
  if (fuzzy.length > 0)
    advice.push({
      basis: 'common practice',
      text:
        `${sentenceCase(namesInside(plan, fuzzy))}: stop 2 to 3 weeks before picking, clay does not wash off ` +
        `fuzzy fruit.`,
    });
  if (wantedUntil !== null) advice.push({ basis: 'our estimate', text: coatsSentence(coats, wantedUntil) });
  if (washedOff !== null)
    advice.push({
      basis: 'our estimate',
      text:
        `${units === 'metric' ? `${washedOff.amount.toFixed(0)} mm` : `${(washedOff.amount / 25.4).toFixed(1)} in`} ` +
        `of rain on ${dayWords(washedOff.rain)} washed off the coat of ${dayWords(washedOff.sprayed)}: spray again ` +
        `on the next cool, still morning.`,
    });
  return advice;
}

/** The two coats by their days, the rest as a rule with the days on which to look at it, up to the end of the heat. */
function coatsSentence([first, second, ...later]: readonly CivilDate[], wantedUntil: CivilDate): string {
  const coats = `Coats about ${daysFolded([first, second])}`;
  return later.length === 0
    ? `${coats}; the heat is over before a third is due.`
    : `${coats}; the film is wanted until ${dayWords(wantedUntil)}. If no rain comes, look at it about ` +
        `${daysFolded(later)}, and spray only where it has thinned.`;
}

function skipSentence(plan: Plan, { plant, why }: { readonly plant: string; readonly why: string }): Advice {
  return { basis: 'common practice', text: `No clay on ${namesInside(plan, [plant])}: ${why}.` };
}

function perFill(gramsPerLitre: number, units: Units): string {
  return units === 'metric'
    ? `${(gramsPerLitre * 5).toFixed(0)} g of powder in 5 L of water`
    : `${formatOunces(gramsPerLitre * FILL)} of powder in 1 gallon of water`;
}

function formatOunces(grams: number): string {
  return `${(grams / 28.349523125).toFixed(1)} oz`;
}

function powder(grams: number, units: Units): string {
  if (units === 'imperial') return grams < 450 ? formatOunces(grams) : formatMass(grams / 1000, units);
  return grams < 950 ? `${(Math.round(grams / 5) * 5).toFixed(0)} g` : formatMass(grams / 1000, units);
}

/** A volume of water: `6.8 L`, `1.8 gal`, `2.6 qt`. @param litres [L] */
export function litresWords(litres: number, units: Units): string {
  const gallons = litres / FILL;
  const [value, unit] = units === 'metric' ? [litres, 'L'] : gallons < 0.95 ? [4 * gallons, 'qt'] : [gallons, 'gal'];
  return `${value.toFixed(value < 10 ? 1 : 0)} ${unit}`;
}
