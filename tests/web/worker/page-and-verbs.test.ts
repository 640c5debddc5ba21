/** What the cards say of a yard, by the methods and words that they ask for, and what the verbs say of it. */

import { beforeAll, describe, expect, test } from 'vitest';
import type {
  ComparedChoice,
  CompareResult,
  LadderStep,
  Outcome,
  PlaceResult,
  WhyResult,
} from '../../../engine/index.ts';
import {
  cheaperHeadline,
  demoPlan,
  effectCell,
  hoursWords,
  lessDamage,
  optionHeadline,
  placeHeadline,
  seasonHeadline,
  unitsOf,
} from '../../../engine/index.ts';
import { answers as adviceAnswers } from '../../../web/worker/answers/advice.ts';
import { answers as surveyAnswers } from '../../../web/worker/answers/survey.ts';
import { jsonOf, runLine } from '../../command-line.ts';
import { oneIn } from '../../long.ts';
import { mustBeOk } from '../../parts/outcome.ts';

const TASK = { progress: () => undefined };
const YARDS = [
  { demo: 'demo', name: 'courtyard', pot: 'lemon', side: '' },
  { demo: 'demo:lane', name: 'lane', pot: 'blueberry', side: ' --side W' },
] as const;

async function valueOf<T>(answer: Outcome<T> | Promise<Outcome<T>>): Promise<T> {
  const found = await answer;
  mustBeOk(found);
  return found.value;
}

/** Lines of a paragraph put together as they were before they were wrapped. */
const unwrapped = (text: string): string => text.replaceAll(/\s*\n\s*/g, ' ');
const told = async (line: string): Promise<string> => unwrapped((await runLine(line)).out);
const percent = (share: number): string => `${Math.round(100 * share)} %`;

describe.each(oneIn(2, YARDS))('the page and the verbs: $demo', ({ demo, name, pot, side }) => {
  const plan = demoPlan(name);
  const units = unitsOf(plan);
  let compared: CompareResult;
  let steps: readonly LadderStep[];
  let places: PlaceResult;
  beforeAll(async () => {
    compared = await valueOf(adviceAnswers.compare({ plan, units }, TASK));
    steps = (await valueOf(adviceAnswers.cheaper({ plan, units }, TASK))).steps;
    places = await valueOf(adviceAnswers.place({ plan, plant: pot }, TASK));
  }, 240_000);
  const harmToday = (id: string): number => compared.today.plants.find((plant) => plant.id === id)?.before?.harm ?? NaN;

  test('an option’s share of heat damage, its price, work and hours of sun are one number', async () => {
    const verb = await told(`compare ${demo}`);
    for (const choice of compared.choices) {
      expect(verb).toContain(effectCell(choice, compared.served).split(',')[0]);
      expect(verb).toContain(`${choice.cost.total?.toFixed(0)} ${choice.cost.currency}`);
      if (choice.clothArea > 0) expect(verb).toContain(hoursWords(choice.cost.hours));
      for (const { id, share } of choice.effect.plants) {
        const plant = choice.plants.find((each) => each.id === id);
        expect(share).toBeCloseTo(1 - (plant?.after?.harm ?? NaN) / harmToday(id), 9);
        const hours = [plant?.before, plant?.after].map((stand) => `${stand?.light.sunHours.toFixed(0)} h`);
        expect(verb).toContain(hours[0] === hours[1] ? hours[0] : hours.join(' → '));
      }
      expectHeadline(choice);
    }
  });

  /** In words as people say shares, of the plants that the table tells of. */
  function expectHeadline(choice: ComparedChoice): void {
    const said = optionHeadline(plan, choice);
    if (choice.effect.share < 0.1) return expect(said).toContain('hardly less heat damage');
    expect(said).toContain(lessDamage(choice.effect.share));
  }

  test('moving the pots is told alike in the ladder, by place, by site’s words and by why’s next step', async () => {
    const move = steps.find(({ id }) => id === 'move');
    const stay = places.spots.find((spot) => spot.stay);
    const share = places.spots[0].spared / (stay?.harm ?? NaN);
    expect(stay?.harm).toBeCloseTo(harmToday(pot), 2);
    expect(move?.serves).toContain(pot);
    expect(move?.sentence.concat(move.effect)).toContain(percent(share));
    expect(cheaperHeadline(plan, steps)).toContain(`free, and ${lessDamage(move?.sparedShare ?? NaN)}`);
    expect(await told(`place ${demo} --plant ${pot}`)).toContain(unwrapped(placeHeadline(plan, places, units)));
    const why = (await valueOf(
      surveyAnswers.why({ plan, request: { plant: pot, side: side === '' ? undefined : 270 } }, TASK),
    )) as WhyResult;
    const next = await valueOf(adviceAnswers.nextStep({ plan, why, units }, TASK));
    expect(await told(`why ${demo} --plant ${pot}${side}`)).toContain(`Next: ${next.sentence}`);
    expect(next).toMatchObject({ do: 'move', cost: 0 });
    expect(next.sentence).toContain(`free, and ${lessDamage(share)}`);
  });

  test('the first rung moves the pot to the very place that place puts first', () => {
    const [first] = steps.flatMap(({ moves = [] }) => moves);
    expect(first).toEqual({ plant: pot, at: places.spots[0].at });
  });

  test('what weighs on the guesses is told of the same damage, and water by the same litres', async () => {
    const doubt = await valueOf(adviceAnswers.doubt({ plan, units }, TASK));
    expect(doubt.harm).toBeCloseTo(compared.today.harm, 6);
    expect(await told(`doubt ${demo}`)).toContain(doubt.sentence.split(':')[0]);
    const season = await valueOf(adviceAnswers.season({ plan, options: [] }, TASK));
    expect(await jsonOf(`season ${demo}`)).toEqual(JSON.parse(JSON.stringify(season)));
    expect(await told(`season ${demo}`)).toContain(seasonHeadline(season));
  });
});
