import { describe, expect, test } from 'vitest';
import { seasonHeadline } from '../../../../../engine/advice/words/year-headlines.ts';
import { yearEntries } from '../../../../../engine/advice/year/season/entries.ts';
import { seasonOf } from '../../../../../engine/advice/year/season/season.ts';
import { seasonYearOf, stretchAbove, withWidenedSeason } from '../../../../../engine/advice/year/span.ts';
import { loadOf, plantLoadsOf } from '../../../../../engine/load/load-of.ts';
import { CATALOGUE } from '../../../../../engine/plan/catalogue/plants.ts';
import { dayWords } from '../../../../../engine/plan/dates/dates.ts';
import { demoPlan } from '../../../../../engine/plan/demos/index.ts';
import { changeFeature } from '../../../../../engine/plan/edit/edit-feature.ts';
import type { Canopy, Plan } from '../../../../../engine/plan/types.ts';
import { withOptions } from '../../../../../engine/plan/yards/options.ts';
import { mustBeOk } from '../../../../parts/outcome.ts';

function seasonIn(plan: Plan) {
  const season = seasonOf(plan);
  mustBeOk(season);
  return season.value;
}

function tried(name: 'courtyard' | 'lane', option: string): Plan {
  const plan = withOptions(demoPlan(name), [option]);
  mustBeOk(plan);
  return plan.plan;
}

const asTried = new Map<string, ReturnType<typeof seasonIn>>();

/** The year of a demo with an option, worked out once. */
function yearOf(name: 'courtyard' | 'lane', option: string) {
  const known = asTried.get(`${name} ${option}`) ?? seasonIn(tried(name, option));
  asTried.set(`${name} ${option}`, known);
  return known;
}

/** One lemon in a pot under the open sky, with a roof over it. */
function lemonUnder(roof: Partial<Canopy>, changes: Partial<Plan> = {}): Plan {
  const demo = demoPlan('courtyard');
  return {
    ...demo,
    name: 'One lemon',
    journal: [],
    options: [],
    ...changes,
    features: [
      { id: 'lemon', kind: 'plant', at: [5, 4], height: 1.7, spread: 1.1, plant: 'lemon', container: true },
      { id: 'roof', kind: 'canopy', center: [5, 4], length: 4, width: 4, height: 2.2, density: 0.5, ...roof },
    ],
  };
}

describe('when the cloth hangs', () => {
  const mild = seasonIn(lemonUnder({})).cloth[0];

  test('water is that of the cloth’s own days: none of it hangs in a month after it came down', () => {
    const told = seasonIn(lemonUnder({}));
    const [{ down }] = told.cloth;
    expect(down! < '2026-09-15').toBe(true);
    const of = (month: number) => told.water[0].days.find((day) => day.month === month && !day.heatwave)!;
    expect(of(9).now).toBe(of(9).bare);
    expect(of(7).now).toBeLessThan(0.9 * of(7).bare);
    // Where the plan says itself when it hangs, that counts.
    const late = seasonIn(lemonUnder({ up: { from: '06-01', to: '09-30' } })).water[0].days;
    const september = late.find((day) => day.month === 9 && !day.heatwave)!;
    expect(september.now).toBeLessThan(0.9 * september.bare);
  });

  test('it is named with the plant that it spares, goes up before the summer’s worst and comes down after it', () => {
    expect(mild.plants).toEqual(['lemon']);
    expect(mild.up! < '2026-07-21' && mild.down! > '2026-07-21').toBe(true);
    const whole = (harms: readonly number[]) => harms.reduce((sum, harm) => sum + harm, 0);
    expect(whole(mild.months.map(({ harmCovered }) => harmCovered))).toBeLessThan(
      0.5 * whole(mild.months.map(({ harmOpen }) => harmOpen)),
    );
    // Where low sun comes under it, a leaf loses less heat to cloth than to a dry sky: a trifle, in a cool month.
    for (const { harmOpen, harmCovered } of mild.months) expect(harmCovered).toBeLessThanOrEqual(harmOpen + 0.1);
  });

  test('in a cooler year it hangs for a shorter time: the dates follow the harm, not the habit', () => {
    const { climate } = demoPlan('courtyard');
    const cooler = {
      ...climate,
      months: climate.months.map((row) => (row.month < 7 || row.month > 8 ? { ...row, high: row.high - 6 } : row)),
    };
    const { up, down } = seasonIn(lemonUnder({}, { climate: cooler })).cloth[0];
    expect(up! > mild.up!).toBe(true);
    expect(down! < mild.down!).toBe(true);
  });

  test('where no plant is spared anything it stays off', () => {
    const far = seasonIn(lemonUnder({ center: [500, 4] })).cloth[0];
    expect(far).toMatchObject({ plants: [], up: null, down: null });
    expect(far.advice[0].text).toContain('Leave the cloth');
  });

  test('a plant that stands in the sun unharmed once established asks for none', () => {
    const plan = lemonUnder({});
    const established = {
      ...plan,
      features: plan.features.map((feature) => (feature.kind === 'plant' ? { ...feature, planted: '2012' } : feature)),
    };
    expect(seasonIn(established).cloth[0].up).toBeNull();
  });

  test('a cloth that leaves too little light is named, whatever heat it spares', () => {
    const dark = seasonIn(lemonUnder({ density: 0.95, length: 12, width: 12 })).cloth[0];
    expect(dark.light[0].standing).toBe('too dark');
    expect(dark.advice.some(({ text }) => text.includes('too little, so take a thinner cloth'))).toBe(true);
    expect(seasonIn(lemonUnder({ density: 0.3 })).cloth[0].light[0].standing).not.toBe('too dark');
  });

  test('the light it leaves is the light that every other page tells of: the summer’s mean at the plant’s top', () => {
    const load = loadOf(tried('courtyard', 'A'), { cell: 1 });
    mustBeOk(load);
    const top = load.value.plants.find(({ id }) => id === 'lemon')?.sides?.[0].dailyLight;
    expect(yearOf('courtyard', 'A').cloth[0].light[0].covered).toBeCloseTo(top ?? NaN, 6);
  });

  test('the more light a plant needs, the shorter cloth hangs over it, and the reason is told', () => {
    const lemon = CATALOGUE.find(({ id }) => id === 'lemon');
    if (lemon === undefined) throw new Error('the catalogue has no lemon');
    const needing = (minDLI: number) => {
      const plan = lemonUnder({ density: 0.7 });
      const features = plan.features.map((one) => (one.kind === 'plant' ? { ...one, plant: 'my-lemon' } : one));
      return seasonIn({ ...plan, features, plants: [{ ...lemon, id: 'my-lemon', minDLI }] }).cloth[0];
    };
    const [modest, hungry] = [needing(2), needing(30)];
    expect(modest.shortOfLight).toEqual([]);
    expect(modest.advice[0].text).toContain('before and after, the cloth spares little');
    expect(hungry.shortOfLight).toEqual(['lemon']);
    expect(hungry.advice[0].text).toContain('before and after, the light is worth more to the plant lemon');
    expect(hungry.up! > modest.up!).toBe(true);
    expect(hungry.down! < modest.down!).toBe(true);
  });

  test('dates drawn on the plan that leave out wanted days are said', () => {
    expect(
      seasonIn(lemonUnder({ up: { from: '07-01', to: '07-31' } })).notes.some((note) =>
        /leaves out \d+ days/.test(note),
      ),
    ).toBe(true);
    expect(seasonIn(lemonUnder({ up: { from: '04-01', to: '11-30' } })).notes).toEqual([]);
  });

  test('months without climate are not invented: the lane’s cloth goes up by 1 December at the latest', () => {
    const { season, climate, site, journal } = demoPlan('lane');
    const [roof] = seasonIn(lemonUnder({}, { season, climate, site, journal })).cloth;
    expect(roof).toMatchObject({ up: '2026-12-01', earlierUnknown: true });
  });
});

describe('the year of both demos', () => {
  const years = { courtyard: yearOf('courtyard', 'B'), lane: seasonIn({ ...tried('lane', 'C'), clay: true }) };

  test.each(['courtyard', 'lane'] as const)(
    '%s: every sentence has its ground, every event its days, all months in order',
    (name) => {
      const season = years[name];
      const sentences = [
        ...season.clay.advice,
        ...season.frost.advice,
        ...season.cloth.flatMap(({ advice }) => advice),
        ...season.months.flatMap(({ advice }) => advice),
        ...season.events.flatMap(({ advice }) => advice),
      ];
      expect(sentences.length).toBeGreaterThan(30);
      for (const { text, basis } of sentences) {
        expect(['trial', 'extension practice', 'common practice', 'our estimate']).toContain(basis);
        expect(text).not.toMatch(/undefined|NaN|null|Infinity|south side|north side/);
        expect(text).toMatch(/\.$/);
      }
      expect(season.events.every(({ from, to }) => from <= to)).toBe(true);
      const order = season.months.map(({ year, month }) => year * 12 + month);
      expect(order).toEqual(order.toSorted((a, b) => a - b));
      expect(new Set(season.events.map(({ id }) => id)).size).toBe(season.events.length);
    },
  );

  test('no date of the year stands twice, and the heat is told before the season’s worst month', () => {
    for (const { months, events } of Object.values(years)) {
      const told = months.flatMap(({ year, month, advice }) => advice.map(({ text }) => `${year}-${month} ${text}`));
      expect(new Set(told).size).toBe(told.length);
      const heat = events.find(({ kind }) => kind === 'heat')!;
      expect(heat.from < heat.to).toBe(true);
    }
    expect(years.courtyard.events.find(({ kind }) => kind === 'heat')!.from < '2026-07-01').toBe(true);
  });

  test('cloth neither puts the heat off nor makes it last: the same dates with every option as with none', () => {
    const heatOf = ({ events }: ReturnType<typeof seasonIn>) => {
      const { from, to } = events.find(({ kind }) => kind === 'heat')!;
      return [from, to];
    };
    const bare = heatOf(seasonIn(demoPlan('courtyard')));
    for (const option of ['A', 'B']) expect(heatOf(yearOf('courtyard', option))).toEqual(bare);
  });

  test('no cloth hangs on a day on which nobody is told to look out for heat; every page has its dates', () => {
    for (const [name, option] of [
      ['courtyard', 'A'],
      ['courtyard', 'B'],
      ['lane', 'A'],
      ['lane', 'B'],
      ['lane', 'C'],
    ] as const) {
      const season = yearOf(name, option);
      const heat = season.events.find(({ kind }) => kind === 'heat')!;
      for (const { canopy, up, down, earlierUnknown, advice } of season.cloth) {
        expect(up! >= heat.from && down! <= heat.to, `${name} ${option} ${canopy}`).toBe(true);
        const dated = season.events.filter(({ features }) => features[0] === canopy);
        expect(dated.map(({ kind, from }) => [kind, from])).toEqual([
          ['cloth-up', up],
          ['cloth-down', down],
        ]);
        expect(advice[0].text).toContain(`${earlierUnknown ? 'by' : 'about'} ${dayWords(up!)}`);
        expect(dated[0].advice).toBe(advice);
      }
      const first = season.events.find(({ kind }) => kind === 'cloth-up')!;
      expect(seasonHeadline(season)).toMatch(new RegExp(`cloth up (about|by) ${dayWords(first.from)}`));
    }
  });

  test('where the months before are not known, the cloth’s dates say so in the calendar too', () => {
    const titles = years.lane.events.map(({ title }) => title);
    expect(titles).toContain('Cloth up at the latest: the thin roof over the raspberries');
    expect(titles).toContain('Cloth down, in steps: the thin roof over the raspberries');
    expect(titles).toContain('Heat may come, perhaps sooner: look at the forecast every evening');
    expect(years.courtyard.events.some(({ title }) => /^Cloth up.*: the screen west of the lemon$/.test(title))).toBe(
      true,
    );
  });

  test('each plant’s coats of clay are one entry of their own days, with the label and the mask beside it', () => {
    const bare = seasonIn({ ...demoPlan('lane'), clay: true });
    const { clay } = bare;
    expect(new Set(clay.plants.map(({ coats }) => coats[0])).size).toBeGreaterThan(1);
    const entries = yearEntries(bare).filter(({ kind }) => kind === 'clay');
    expect(entries.flatMap(({ features }) => features).toSorted()).toEqual(
      clay.plants.map(({ plant }) => plant).toSorted(),
    );
    for (const { from, to, features, title, advice } of entries) {
      const sprayed = clay.plants.filter(({ plant }) => features.includes(plant));
      for (const { coats } of sprayed) expect([from, to]).toEqual([...coats]);
      expect(title).toMatch(/^Clay: the .*\. Two coats a few days apart$/);
      expect(advice.map(({ text }) => text).join(' ')).toContain('Read the label first');
    }
    expect(yearEntries(years.courtyard)).toEqual(years.courtyard.events);
  });

  test('whoever is told to spray, to handle cloth, to work in heat and to cover sees the cautions for it', () => {
    const ids = years.courtyard.cautions.map(({ id }) => id);
    // Nobody chose clay in the courtyard.
    expect(ids).not.toContain('spray');
    expect(years.lane.cautions.map(({ id }) => id)).toContain('spray');
    for (const id of ['heat', 'cloth-off', 'ladder', 'winter-cover']) expect(ids).toContain(id);
  });

  test('pots whose roots would die are wrapped before the heat, and as load says; others are left alone', () => {
    const found: string[] = [];
    for (const [name, option] of [
      ['courtyard', 'B'],
      ['lane', 'C'],
    ] as const) {
      const { events } = years[name];
      const loads = plantLoadsOf(tried(name, option), { period: { kind: 'heatwave' } });
      const dying = loads.ok ? loads.value.filter(({ pot }) => pot?.roots.verdict === 'cooking') : [];
      found.push(...dying.map(({ id }) => id));
      const wraps = events.filter(({ kind }) => kind === 'pots');
      expect(wraps.flatMap(({ features }) => features).toSorted()).toEqual(dying.map(({ id }) => id).toSorted());
      const heat = events.find(({ kind }) => kind === 'heat')!;
      for (const { from, title, features } of wraps) {
        expect(from < heat.from).toBe(true);
        expect(title).toMatch(features.length > 1 ? /^Wrap the pots in white: / : /^Wrap the pot in white: /);
      }
    }
    expect(found).toContain('blueberry');
  });

  test('a pot bought this spring is hardened off from that day, before the summer begins', () => {
    expect(years.lane.events.find(({ kind }) => kind === 'harden')).toMatchObject({
      features: ['blueberry'],
      from: '2026-10-10',
      to: '2026-10-19',
    });
  });

  test('a pot moved since last year is hardened from the sun it had there, and not at all where it has less now', () => {
    const eventsOfMove = (from: readonly [number, number], to: readonly [number, number]) => {
      const at = (place: readonly [number, number]) => ({
        ...changeFeature(demoPlan('courtyard'), 'lemon', { at: place }),
        past: undefined,
      });
      const season = seasonOf({
        ...at(to),
        past: [{ year: 2025, plan: at(from) }],
        journal: [{ date: '2026-05-20', what: 'moved', feature: 'lemon' }],
      });
      return season.ok ? season.value.events.filter(({ kind }) => kind === 'harden') : null;
    };
    const [dark, bright] = [
      [1.2, 0.5],
      [6.1, 3.9],
    ] as const;
    const [event] = eventsOfMove(dark, bright) ?? [];
    expect(event).toMatchObject({ features: ['lemon'], from: '2026-05-20' });
    expect(event.advice[0].text).toMatch(/had (\d+|\d*½) h of sun a day where it stood/);
    expect(eventsOfMove(bright, dark)).toEqual([]);
  });
});

describe('the months looked at', () => {
  const withHighs = (plan: Plan, highs: readonly number[]): Plan => ({
    ...plan,
    climate: { ...plan.climate, months: highs.map((high, k) => ({ month: k + 1, high, low: 10 })) },
  });

  test('the courtyard’s season is widened to May and October, for which there are figures', () => {
    const wide = withWidenedSeason(demoPlan('courtyard'));
    expect(wide.ok && wide.value.season).toMatchObject({ year: 2026, from: '05-01', to: '10-31' });
  });

  test('a climate of twelve months widens a southern season by three on either side and keeps its years right', () => {
    const lane = demoPlan('lane');
    // A summer of the south, hottest at the turn of January.
    const highs = Array.from({ length: 12 }, (_, k) => 25 + 8 * Math.cos(((k - 0.6) * Math.PI) / 6));
    const wide = withWidenedSeason(withHighs(lane, highs));
    expect(wide.ok && wide.value.season).toMatchObject({ year: 2026, from: '09-01', to: '06-30' });
  });

  test('where it is hot again after the monsoon the months up to there are looked at, not the winter before', () => {
    // Means of Ahmedabad, from memory.
    const highs = [28, 31, 36, 40, 41.5, 38.5, 33.5, 32, 34, 36, 33, 29.5];
    const plan = withHighs(demoPlan('courtyard'), highs);
    const wide = withWidenedSeason({ ...plan, season: { ...plan.season, from: '03-15', to: '06-30' } });
    expect(wide.ok && wide.value.season).toMatchObject({ from: '02-01', to: '11-30' });
  });

  test('a date belongs to the summer it falls in: 18 January 2026 to the one begun in December 2025', () => {
    expect(seasonYearOf(demoPlan('lane'), '2026-01-18')).toBe(2025);
    expect(seasonYearOf(demoPlan('lane'), '2026-12-02')).toBe(2026);
    expect(seasonYearOf(demoPlan('courtyard'), '2025-07-19')).toBe(2025);
  });

  test('between two known days a value runs straight: half-way it is half', () => {
    const values = [
      { date: '2026-05-21', value: 0 },
      { date: '2026-05-31', value: 10 },
    ];
    expect(stretchAbove(values, 5, '2026-05-01', '2026-06-30')).toEqual({ first: '2026-05-26', last: '2026-06-30' });
    expect(stretchAbove(values, 11, '2026-05-01', '2026-06-30')).toBeNull();
  });
});
