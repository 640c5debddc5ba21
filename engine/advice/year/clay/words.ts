/** What is said of clay, once the person has chosen it: for whom and when first, then how, then what it does. */

import { dayWords, daysFolded } from '../../../plan/dates/dates.ts';
import type { Plan } from '../../../plan/types.ts';
import { formatMass, formatRain, formatTemperatureDifference } from '../../../plan/units/shown.ts';
import { type Units, unitsOf } from '../../../plan/units/units.ts';
import { agreeingWith } from '../../../plan/words/agreement.ts';
import { capital } from '../../../plan/words/first-letter.ts';
import { nameOf, namesInside } from '../../../plan/words/names.ts';
import type { Advice } from '../advice.ts';
import { GALLON, litresWords } from '../water/litres-words.ts';
import { CLAY_FIRST, CLAY_NEXT } from './mix.ts';
import type { ClayAdvice, ClayPlant } from './types.ts';

export function clayWords(plan: Plan, { plants, skipped, washedOff }: Omit<ClayAdvice, 'advice'>): Advice[] {
  const refusals = refusalWords(plan, skipped).map((text): Advice => ({ basis: 'common practice', text }));
  if (plants.length === 0)
    return [
      {
        basis: 'our estimate',
        text: 'No plant here needs clay: none that may be sprayed is at risk on a hot day.',
      },
      ...refusals,
    ];
  const units = unitsOf(plan);
  return [
    ...plants.map((each) => coatsWords(plan, each, units)),
    {
      basis: 'extension practice',
      text:
        'Read the label first: how many coats a year it allows, how long before picking, on which plants. Never ' +
        'more, nor on others.',
    },
    ...refusals,
    ...washedWords(washedOff, units),
    ...mixWords(units),
    ...howWords(plan, plants),
    ...effectWords(plants, units),
  ];
}

function coatsWords(
  plan: Plan,
  { plant, coats, waitsForFlowers, until, litres, firstGrams, nextGrams }: ClayPlant,
  units: Units,
): Advice {
  const { their } = agreeingWith(nameOf(plan, plant));
  return {
    basis: 'our estimate',
    text:
      `${capital(namesInside(plan, [plant]))}: coats about ${daysFolded(coats)}, ` +
      `${waitsForFlowers ? `once ${their} flowers are over` : `before ${their} first hot week`}; ` +
      `about ${litresWords(litres, units)} each, ${powder(firstGrams, units)} of powder the first time, ` +
      `${powder(nextGrams, units)} after. Then look at it every 2 to 3 weeks, and spray only where it has thinned, ` +
      `until ${dayWords(until)}.`,
  };
}

/** Plants that share a reason are named together. */
export function refusalWords(plan: Plan, skipped: ClayAdvice['skipped']): string[] {
  return [...new Set(skipped.map(({ why }) => why))].map((why) => {
    const plants = skipped.filter((one) => one.why === why).map(({ plant }) => plant);
    return `No clay on ${namesInside(plan, plants)}: ${why}.`;
  });
}

function washedWords(washedOff: ClayAdvice['washedOff'], units: Units): Advice[] {
  if (washedOff === null) return [];
  const { amount, rain, sprayed } = washedOff;
  return [
    {
      basis: 'our estimate',
      text:
        `${formatRain(amount, units)} of rain on ${dayWords(rain)} washed off the coat of ${dayWords(sprayed)}: ` +
        `spray again on the next cool, still morning, if the label allows another coat.`,
    },
  ];
}

function mixWords(units: Units): Advice[] {
  return [
    {
      basis: 'extension practice',
      source: 'Rutgers 2012; WTFRC in Good Fruit Grower',
      text:
        `First coat ${perFill(CLAY_FIRST, units)}, later coats ${perFill(CLAY_NEXT, units)}, stirred or ` +
        `shaken all the while.`,
    },
  ];
}

function howWords(plan: Plan, plants: readonly ClayPlant[]): Advice[] {
  const fuzzy = plants.filter(({ fuzzyFruit }) => fuzzyFruit).map(({ plant }) => plant);
  return [
    {
      basis: 'extension practice',
      text:
        'Spray on a cool, still morning to just before run-off, both faces of the leaf and the fruit’s sunny ' +
        'side; let it dry before rain or watering from above, and rinse the sprayer.',
    },
    {
      basis: 'common practice',
      text: 'Never on open flowers, whatever the month; never mixed with other sprays untested.',
    },
    ...(fuzzy.length === 0
      ? []
      : [
          {
            basis: 'common practice' as const,
            text:
              `${capital(namesInside(plan, fuzzy))}: stop 2 to 3 weeks before picking, clay does not wash off ` +
              `fuzzy fruit.`,
          },
        ]),
  ];
}

function effectWords(plants: readonly ClayPlant[], units: Units): Advice[] {
  const degrees = (kelvin: number) => formatTemperatureDifference(kelvin, units);
  const low = Math.min(...plants.map(({ cooler }) => cooler.watered));
  const high = Math.max(...plants.map(({ cooler }) => cooler.thirsty));
  return [
    {
      basis: 'our estimate',
      text: `It takes about ${degrees(low)} (watered) to ${degrees(high)} (thirsty) off a leaf in the full sun.`,
    },
    {
      basis: 'trial',
      source: 'Glenn 2012, HortScience 47:710–711; Wand et al. 2006, Sci. Hortic. 107:271–276',
      text:
        `Trials measured crowns up to ${degrees(5)} cooler and less burnt fruit, but not in every season; ` +
        `${degrees(8)}, as some promise, is twice what most measured.`,
    },
  ];
}

function perFill(gramsPerLitre: number, units: Units): string {
  return units === 'metric'
    ? `${(gramsPerLitre * 5).toFixed(0)} g of powder in 5 L of water`
    : `${formatOunces(gramsPerLitre * GALLON)} of powder in 1 gallon of water`;
}

function formatOunces(grams: number): string {
  return `${(grams / 28.349523125).toFixed(1)} oz`;
}

function powder(grams: number, units: Units): string {
  if (units === 'imperial') return grams < 450 ? formatOunces(grams) : formatMass(grams / 1000, units);
  return grams < 950 ? `${(Math.round(grams / 5) * 5).toFixed(0)} g` : formatMass(grams / 1000, units);
}
