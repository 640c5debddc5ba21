/** Yards of other places, the advice that each calls for written down before the program was asked. */

import { describe, expect, test } from 'vitest';
import type { LadderStep } from '../../../../engine/advice/cheaper-first/step.ts';
import { compareOptions } from '../../../../engine/advice/compare/compare.ts';
import { reviewOf } from '../../../../engine/advice/review/review.ts';
import { adviceSentence } from '../../../../engine/advice/site/advice-words.ts';
import { type Answered, burningFirst } from '../../../../engine/advice/site/result.ts';
import type { SiteResult } from '../../../../engine/advice/site/types.ts';
import { countingWords, titleOf } from '../../../../engine/advice/site/words.ts';
import { whyBurnt } from '../../../../engine/advice/why/why.ts';
import { spotWords } from '../../../../engine/advice/words/spot-words.ts';
import { clayRefusals } from '../../../../engine/advice/year/clay/who-may-be-sprayed.ts';
import { stormAdvice } from '../../../../engine/advice/year/cloth/storms.ts';
import { seasonOf } from '../../../../engine/advice/year/season/season.ts';
import { tomorrowOf } from '../../../../engine/advice/year/tomorrow/tomorrow.ts';
import { plantLoadsOf } from '../../../../engine/load/load-of.ts';
import type { Feature, Plan } from '../../../../engine/plan/types.ts';
import { climateTypeOf, monthsOf } from '../../../../engine/survey/climate/rough-climate.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { bed, plant, WHITE, yard } from './table.ts';

describe('what is told first', () => {
  // Common practice: water is free, so money goes first to what burns all the same.
  test('beside tomatoes that water saves, cloth for raspberries that burn even if watered stands first', () => {
    const plan = yard([bed('tomato'), bed('raspberry', 0.5)]);
    const answer = (role: string, served: readonly string[], cautioned = false) =>
      ({
        candidate: { cautioned },
        roles: [role],
        full: {
          option: {
            served,
            plants: [
              { id: 'tomato-bed', before: { verdict: 'at risk' } },
              { id: 'raspberry-bed', before: { verdict: 'will burn' } },
            ],
          },
        },
      }) as unknown as Answered;
    const [wide, roof, screen] = [
      answer('most for money', ['tomato-bed']),
      answer('most', ['tomato-bed', 'raspberry-bed'], true),
      answer('least', ['raspberry-bed']),
    ];
    expect(burningFirst(plan, [wide, roof, screen])).toEqual([screen, wide, roof]);
    // Over-large cloth does not stand first, and cloth for both stays where it is.
    expect(burningFirst(plan, [wide, roof])).toEqual([wide, roof]);
    expect(burningFirst(plan, [roof, wide, screen])).toEqual([roof, wide, screen]);
  });
});

describe('a storm month', () => {
  const yearOf = (type: string): Plan => {
    const plan = yard([]);
    const months = monthsOf(climateTypeOf(type)!, 32);
    return { ...plan, climate: { ...plan.climate, months } };
  };
  // Monsoon of the North American southwest from July, of northern India from June, rains of the Sahel in July and the
  // wet-and-dry tropics in May; the Gulf and the Mediterranean’s high summer have none. From memory.
  test.each([
    ['low-desert', 'July'],
    ['high-desert', 'July'],
    ['monsoon', 'June'],
    ['savanna', 'July'],
    ['tropical-wet-dry', 'May'],
    ['coastal-desert', null],
    ['mediterranean-inland', null],
    ['mediterranean-coast', null],
  ])('%s: %s', (type, month) => {
    const told = stormAdvice(yearOf(type), '2026-04-10', '2026-08-31');
    if (month === null) expect(told).toEqual([]);
    else expect(told[0].text).toMatch(new RegExp(`^About ${month} the sky clouds over .* before each storm`));
  });
});

// Common sense: who has a roof is told what is wrong with it, not to search for another.
test('of a plant that burns under a roof nobody is told to search for it alone', () => {
  const pergola: Feature = {
    id: 'pergola',
    kind: 'canopy',
    name: 'Pergola',
    center: [1.2, 1.2],
    length: 2,
    width: 2,
    height: 2.4,
    density: 0.2,
  };
  const fern = plant('fern', { name: 'Fern', at: [1.2, 1.2], height: 0.5, spread: 0.4 });
  const tomatoes = bed('tomato', 3.5, 0.6);
  const said = (features: readonly Feature[]): string => {
    const plan = yard(features);
    const before = { verdict: 'will burn', harm: 20 } as const;
    const plants = ['fern', 'tomato-bed'].map((id) => ({ id, before }));
    const result = { uncounted: [], countedAllTheSame: [], served: ['tomato-bed'], options: [{ plants }] };
    return countingWords(plan, result as unknown as SiteResult, []).join(' ');
  };
  expect(said([fern, tomatoes])).toMatch(/^None of this is for the fern: search for it alone too\.$/);
  expect(said([pergola, fern, tomatoes])).toBe(
    'None of this is for the fern: a roof hangs there already, and the verdict says what it lacks.',
  );
});

// What is reckoned without something says so wherever it is told.
test('why says of a fruit among walls that what they throw is not counted, and of one in the open nothing', () => {
  const why = (...features: Feature[]) =>
    valueOf(whyBurnt(yard([...features, plant('pepper')]), { plant: 'pepper', side: 225 })).sentence;
  expect(why(WHITE)).toMatch(/the bare fruit’s skin there reaches about .*, what walls throw on it not counted, limit/);
  expect(why()).not.toMatch(/walls/);
});

// Common sense: on a balcony every place is beside the house and the rail.
test('a pot that stays beside the same things is told which way it goes', () => {
  const plan = yard([
    {
      id: 'rail',
      kind: 'wall',
      name: 'Rail',
      path: [
        [0, 2],
        [6, 2],
      ],
      height: 1,
      thickness: 0.05,
    },
    plant('rose', { at: [1, 2.5], container: true }),
  ]);
  expect(spotWords(plan, [4, 2.4], 'rose', 'metric')).toBe('farther east beside the rail');
  expect(spotWords(plan, [1, 2.5], 'rose', 'metric')).toBe('beside the rail');
  expect(spotWords(plan, [4, 5], 'rose', 'metric')).toBe('3.0 m north of the rail');
});

// What stands in the ground is not carried out by the hour.
test('a fig set out this spring is hardened off under cloth, one in a pot by the hour', () => {
  const season = (more: object): string => {
    const fig = plant('fig', { name: 'Fig', planted: '2026-06-02', ...more });
    const { events } = valueOf(seasonOf(yard([fig])));
    const harden = events.find(({ kind }) => kind === 'harden');
    return harden?.advice.map(({ text }) => text).join(' ') ?? '';
  };
  expect(season({})).toMatch(/h on a clear hot day now\. Cloth over it: 60 % from 2 June/);
  expect(season({})).not.toMatch(/first day|carried/);
  expect(season({ container: true })).toMatch(/h on the first day.* Where it cannot be carried back, cloth over it/);
});

// Ladders and heat: the fewer the better; common practice, no source.
test('over what is taller than an arm reaches nobody hangs an umbrella: cloth as far as one reaches from the ground', () => {
  const listed = (height: number): string =>
    valueOf(tomorrowOf(yard([plant('pomegranate', { height })]), { date: '2026-06-21', high: 46, low: 29 }))
      .tasks.map(({ advice }) => advice.text)
      .join(' ');
  expect(listed(2.4)).toMatch(/Hang cloth over as much of the plant pomegranate as you reach from the ground; leave/);
  expect(listed(1.4)).toContain('Hang cloth or an umbrella over the plant pomegranate;');
});

test('where no cloth is drawn a first reading is of a leaf in shade', () => {
  const begun = (...features: Feature[]) => reviewOf(yard(features)).sentences.join(' ');
  expect(begun(plant('pepper'))).toContain('one in shade and one in the open');
});

// Common sense: cloth for the pomegranate is not done by carrying the basil away, however cheap that is.
test('an option for one plant is neither as good as, nor beaten by, one for another', () => {
  const basil = plant('basil', { at: [5, 5], container: true, height: 0.5, spread: 0.4 });
  const roof: Feature = {
    id: 'net',
    kind: 'canopy',
    center: [1.6, 1.6],
    length: 2,
    width: 2,
    height: 2,
    density: 0.3,
  };
  const house: Feature = {
    id: 'house',
    kind: 'building',
    height: 4,
    outline: [
      [4, 2],
      [6, 2],
      [6, 4],
      [4, 4],
    ],
  };
  const plan: Plan = {
    ...yard([house, basil, plant('pomegranate', { at: [1.6, 1.6], height: 1.5 })]),
    options: [
      { id: 'A', adds: [roof] },
      { id: 'B', moves: { basil: [5, 4.3] } },
    ],
  };
  const { choices } = valueOf(compareOptions(plan));
  const [a, b] = choices;
  expect(a.effect.plants.map(({ id }) => id)).toEqual(['pomegranate']);
  expect(b.effect.plants.map(({ id }) => id)).toEqual(['basil']);
  for (const { beatenBy, asGoodAs } of choices) {
    expect(beatenBy).toBeNull();
    expect(asGoodAs.filter((name) => name !== 'today')).toEqual([]);
  }
});

// Labels of clays and common practice: never on open flowers, and nobody sprays in autumn against May.
test('a hibiscus that flowers while it is hot is not sprayed because the season’s last month is free of flowers', () => {
  const plan = yard([plant('hibiscus')]);
  const months = [5, 6, 7, 8, 9, 10].map((month) => ({ month, high: month === 10 ? 34 : 40, low: 25, humidity: 40 }));
  const long = {
    ...plan,
    season: { ...plan.season, from: '05-01', to: '10-15' },
    climate: { ...plan.climate, months },
  };
  expect(valueOf(clayRefusals(long)).get('hibiscus')).toBe('in flower all summer: never spray flowers');
});

// Two answers for one pot: it is carried away, or cloth hangs where it stands.
test('cloth for a pot that is told to be carried away first is told as for where it stands', () => {
  const plan = yard([plant('lemon', { name: 'Lemon', container: true, planted: '2010' })], { high: 36, heatwave: 41 });
  const plants = [{ id: 'lemon', before: { verdict: 'at risk', wateredOver: -4 } }];
  const option = { served: ['lemon'], plants, effect: 0.6, cost: 300, added: { to: null, isWorth: true } };
  const result = { sentence: 'Roof.', options: [option], uncounted: [] } as unknown as SiteResult;
  const move = { id: 'move', cost: 0, sparedShare: 0.5, serves: ['lemon'] } as unknown as LadderStep;
  expect(adviceSentence(plan, result, [move])).toMatch(
    /^Move the lemon first: .* If it stays where it is and is dry by noon all the same: Roof\.$/,
  );
  expect(adviceSentence(plan, result, [])).toMatch(
    /^Mulch and water first: .* If it is dry by noon all the same: Roof\.$/,
  );
});

test('two drops of one depth are told together', () => {
  const roof = { kind: 'roof', length: 2, width: 2, height: 2.2, features: [], cautions: [] } as const;
  const drops = (...depths: number[]) => depths.map((depth) => ({ side: 'left', depth, density: 0.5 }) as const);
  const titled = (...depths: number[]) => titleOf({ ...roof, drops: drops(...depths) } as never, 'metric');
  expect(titled(1.2, 1.2)).toMatch(/high, two drops of 1\.20 m$/);
  expect(titled(1.2, 0.6)).toMatch(/high, a drop of 1\.20 m, a drop of 0\.60 m$/);
});

// Water does not cool fruit (the published line knows none: Schrader, Zhang & Sun 2003).
test('a pomegranate that burns under cloth as thick as suits it is told to keep its leaves, not to be soaked', () => {
  const roof = { id: 'roof', kind: 'canopy', center: [3.1, 3.05], length: 5.8, width: 5.8, height: 2.3 } as const;
  const [{ sentence }] = valueOf(plantLoadsOf(yard([{ ...roof, density: 0.3 }, plant('pomegranate')])));
  expect(sentence).toMatch(/ Leave every leaf over the fruit\. Its cloth is as thick as suits it\./);
  expect(sentence).not.toContain('soak');
});
