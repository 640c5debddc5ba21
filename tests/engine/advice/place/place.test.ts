import { describe, expect, test } from 'vitest';
import { potGround } from '../../../../engine/advice/place/ground.ts';
import { hardeningOf } from '../../../../engine/advice/place/hardening.ts';
import { createPotJudges } from '../../../../engine/advice/place/judge.ts';
import { placeOf } from '../../../../engine/advice/place/place.ts';
import { potNamed, potThere } from '../../../../engine/advice/place/pot-there.ts';
import { better, type Tried } from '../../../../engine/advice/place/rank.ts';
import { winterDayOf } from '../../../../engine/advice/place/winter-day.ts';
import { wantsWinterSun, WINTER_SUN, winterWarning } from '../../../../engine/advice/place/winter.ts';
import { harmOf } from '../../../../engine/load/verdict/harm-of.ts';
import { plantRowOf } from '../../../../engine/plan/catalogue/plants.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Feature, Plan, Plant, PlantRow } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../../load/yard-plan.ts';
import * as planted from '../planted.ts';
import { POT } from '../planted.ts';

const TOWER: Feature = { ...planted.TOWER, eaves: 0.5 };
const complaint = (plan: Plan, plant: string): string => {
  const outcome = placeOf(plan, { plant });
  return outcome.ok ? '' : outcome.problems[0].message;
};

// As the year says it: the first frost ends an annual; what lives on is carried in.
test('in a frosty place a tomato is sent nowhere for the winter, a lemon in', () => {
  const frosty = (kind: string): string[] => {
    const plan = yardPlan([TOWER, { ...POT, plant: kind }]);
    const frost = { first: '10-15', last: '05-05', lowest: -12 } as const;
    return [...valueOf(placeOf({ ...plan, climate: { ...plan.climate, frost } }, { plant: 'pot', count: 1 })).notes];
  };
  expect(frosty('tomato').join(' ')).not.toMatch(/[Ww]inter nights/);
  expect(frosty('lemon').join(' ')).toMatch(/Winter nights fall to −12 °C here.*: carry it in for such nights\./);
});

describe('places for a pot', () => {
  const plan = yardPlan([TOWER, POT]);
  const { spots } = valueOf(placeOf(plan, { plant: 'pot', count: 3 }));

  test('the best is in the tower’s afternoon shade, with light enough and less harm; staying is in the list', () => {
    expect(spots[0].at[0]).toBeGreaterThan(2);
    expect(spots[0].at[0]).toBeLessThan(4.5);
    expect(spots[0].spared).toBeGreaterThan(0);
    expect(spots[0].standing).not.toBe('too dark');
    expect(spots.filter(({ stay }) => stay)).toHaveLength(1);
    expect(spots.map(({ rank }) => rank)).toEqual([1, 2, 3, 4]);
  });

  test('where it stands already comes first if no other place is better', () => {
    const there = valueOf(placeOf(yardPlan([TOWER, { ...POT, at: spots[0].at }]), { plant: 'pot', count: 2 })).spots;
    expect(there.map(({ stay }) => stay)).toEqual([true, false, false]);
    expect(there[0].harm).toBeLessThanOrEqual(there[1].harm + 0.5);
  });

  test('each spot’s harm is what the plan with the pot there has, and its metres are the way there', () => {
    for (const { at, harm, metres } of spots) {
      expect(harm).toBeCloseTo(valueOf(harmOf(yardPlan([TOWER, { ...POT, at }])))[0].harm, 1);
      expect(metres).toBeCloseTo(Math.hypot(at[0] - 6, at[1] - 4), 9);
    }
  });

  test('no other allowed place on the lattice that has the light is harmed less', () => {
    const row = plantRowOf(plan, 'lemon');
    if (!row) throw new Error('lemon is in the catalogue');
    const judge = valueOf(createPotJudges(plan)).of(POT, row);
    const ground = potGround(plan, POT);
    for (let x = 0.25; x < 12; x += 1) {
      for (let y = 0.25; y < 8; y += 1) {
        if (ground.reasonAt([x, y]) !== null) continue;
        const light = judge.lightAt([x, y]);
        if (light.standing === 'enough' && light.sunHours <= row.sunHours[1])
          expect(judge.harmAt([x, y])).toBeGreaterThan(spots[0].harm - 0.55);
      }
    }
  });
});

test('with a day to move it, hardening has its dates', () => {
  const shade: Feature = {
    id: 'shade',
    kind: 'canopy',
    center: [6, 4],
    length: 2.4,
    width: 2.4,
    height: 2,
    density: 0.95,
  };
  const { spots } = valueOf(placeOf(yardPlan([shade, POT]), { plant: 'pot', count: 1, on: '2026-04-20' }));
  const moved = spots.find(({ stay }) => !stay);
  expect(moved?.hardening?.days.map(({ date }) => date).slice(0, 2)).toEqual(['2026-04-20', '2026-04-21']);
});

describe('where a pot may not stand', () => {
  const others: Feature[] = [
    TOWER,
    {
      id: 'low-wall',
      kind: 'wall',
      name: 'Low wall',
      path: [
        [5, 0.5],
        [8, 0.5],
      ],
      height: 0.6,
      thickness: 0.2,
    },
    {
      id: 'bed',
      kind: 'bed',
      name: 'Herbs',
      outline: [
        [9, 1],
        [11, 1],
        [11, 2],
        [9, 2],
      ],
      plantHeight: 0.4,
    },
    { id: 'fig', kind: 'tree', name: 'Fig', at: [10, 6], height: 4, crownWidth: 3, crownBase: 1.2, openness: 0.2 },
    {
      id: 'well',
      kind: 'keepout',
      name: 'Well',
      outline: [
        [6, 6.5],
        [7, 6.5],
        [7, 7.5],
        [6, 7.5],
      ],
      blocks: ['pots'],
    },
    { id: 'basil', kind: 'plant', name: 'Basil', at: [4.5, 2.2], height: 0.5, spread: 0.6, container: true },
  ];
  const plan = yardPlan([...others, POT]);
  const ground = potGround(plan, POT);
  test.each<[string, number, number, string | null]>([
    ['off the property', 12.4, 4, 'outside the property'],
    ['half over the boundary', 11.9, 4, 'outside the property'],
    ['in a building', 1.2, 3, 'it would stand in the'],
    ['under its eaves’ edge', 2.5, 4, 'under the drip edge'],
    ['in a wall', 6, 0.7, 'it would stand in the low wall'],
    ['in a bed', 10, 1.1, 'it would stand in the herbs'],
    ['in a crown that hangs lower than it is tall', 9.2, 6, 'in the crown of the fig'],
    ['on a keepout', 6.6, 6.4, 'no pot may stand on the well'],
    ['against another plant', 5.1, 2.4, 'it would grow into the basil'],
    ['in the open', 7.5, 3.1, null],
  ])('%s', (_, x, y, reason) => {
    const said = ground.reasonAt([x, y]);
    if (reason === null) expect(said).toBeNull();
    else expect(said).toContain(reason);
  });

  test('the hose must reach it', () => {
    const short = yardPlan([POT], { site: { ...plan.site, tap: [1, 1], hose: 5 } });
    expect(potGround(short, POT).reasonAt([7.5, 3])).toContain('hose of 5.0 m');
    expect(potGround(short, POT).reasonAt([4, 3])).toBeNull();
  });

  test('a lane between two houses stays open 0.9 m wide', () => {
    const houses: Feature[] = [
      {
        id: 'a',
        kind: 'building',
        outline: [
          [5, 0],
          [7, 0],
          [7, 3.3],
          [5, 3.3],
        ],
        height: 3,
      },
      {
        id: 'b',
        kind: 'building',
        outline: [
          [5, 4.9],
          [7, 4.9],
          [7, 8],
          [5, 8],
        ],
        height: 3,
      },
    ];
    const lane = potGround(yardPlan([...houses, { ...POT, at: [2, 2] }]), POT);
    expect(lane.reasonAt([6, 4.1])).toContain('0.90 m wide');
    expect(lane.reasonAt([3, 6])).toBeNull();
  });
});

test('a plant in the ground, one too heavy, one unknown and a word that is nothing are refused in words', () => {
  expect(complaint(yardPlan([{ ...POT, container: false }]), 'pot')).toContain('does not stand in a pot');
  expect(complaint(yardPlan([{ ...POT, move: 'never' }]), 'pot')).toContain('too heavy to move');
  expect(complaint(yardPlan([{ ...POT, plant: undefined }]), 'pot')).toMatch(
    /^Say what plant the .* is: then light and limit are known\.$/,
  );
  expect(complaint(yardPlan([POT]), 'lime')).toBe('There is nothing called "lime"; the plants in pots are "pot".');
});

test('where nothing is light enough it says by how much the brightest misses', () => {
  const dark: Feature = { id: 'dark', kind: 'canopy', center: [6, 4], length: 30, width: 30, height: 3, density: 0.9 };
  const { notes, spots } = valueOf(placeOf(yardPlan([dark, POT]), { plant: 'pot', count: 1 }));
  expect(spots.every(({ standing }) => standing === 'too dark')).toBe(true);
  expect(notes.some((note) => /at the brightest it gets [1-9]?\d % of the light that it needs/.test(note))).toBe(true);
});

test('a shade plant and a sun plant that stand the wrong way round gain by changing places', () => {
  const hydrangea: Plant = {
    id: 'hydrangea',
    kind: 'plant',
    at: [9, 4],
    height: 0.8,
    spread: 0.8,
    plant: 'hydrangea',
    container: true,
  };
  const olive: Plant = { ...POT, name: 'Olive', plant: 'olive', at: [2.95, 5] };
  const found = valueOf(placeOf(yardPlan([TOWER, olive, hydrangea]), { plant: 'hydrangea', count: 1 }));
  const { swaps } = found;
  expect(swaps.map((swap) => swap.with)).toEqual(['pot']);
  expect(swaps[0].spared).toBeGreaterThan(0);
  // A lemon burns in the sun too: a tenth for two pots carried and one kept cool is no advice.
  const lemon: Plant = { ...POT, at: [2.95, 5] };
  const poor = valueOf(placeOf(yardPlan([TOWER, lemon, hydrangea]), { plant: 'hydrangea', count: 1 }));
  expect(poor.swaps).toEqual([]);
  // What is bare in winter, or grows in shade, is sent nowhere for its sun.
  expect(found.winterBest).toBeNull();
  for (const { winterSunHours, sentence } of found.spots) {
    expect(winterSunHours).toBeNull();
    expect(sentence).not.toContain('mid-winter');
  }
  // The olive's roots live in the shade, and in the sun only in a pot that is kept cool.
  expect(swaps[0].sentence).toContain('for the two together; then keep the pot of the olive cool.');
  // Among many that gain less it is found as well, and no more are told than somebody would try.
  const alike = Array.from({ length: 10 }, (_, k): Plant => ({
    ...hydrangea,
    id: `alike-${k}`,
    at: [5 + 0.9 * (k % 5), k < 5 ? 2 : 6.5],
    height: 0.5,
    spread: 0.4,
  }));
  const crowd = valueOf(placeOf(yardPlan([TOWER, ...alike, olive, hydrangea]), { plant: 'hydrangea', count: 1 }));
  expect(crowd.swaps.length).toBeLessThanOrEqual(3);
  expect(crowd.swaps[0].with).toBe('pot');
  expect(crowd.swaps[0].spared).toBeCloseTo(swaps[0].spared, 6);
  // The other way round they stand right: a change would harm one and darken the other, and is not offered.
  const right = [
    { ...olive, at: hydrangea.at },
    { ...hydrangea, at: olive.at },
  ];
  expect(valueOf(placeOf(yardPlan([TOWER, ...right]), { plant: 'hydrangea', count: 1 })).swaps).toEqual([]);
});

describe('two homes a year', () => {
  const tried = (harm: number, standing: Tried['standing'] = 'enough', more: Partial<Tried> = {}): Tried => ({
    at: [harm, 0],
    metres: 1,
    steps: 0,
    round: [],
    harm,
    light: { sunHours: 5, dailyLight: 20, least: 18, standing },
    standing,
    over: 0,
    work: 0,
    rootsDie: false,
    ...more,
  });

  test('an evergreen’s place without winter sun must spare a tenth of today’s harm more, and light goes before both', () => {
    // The place of 10 has no winter sun: it has to be left every autumn.
    const order = (other: Tried, now: number) =>
      [tried(10, 'enough', { work: now / 10 }), other].toSorted(better).map(({ harm }) => harm);
    expect(order(tried(12), 40)).toEqual([12, 10]);
    expect(order(tried(12), 15)).toEqual([10, 12]);
    expect(order(tried(12, 'short'), 40)).toEqual([10, 12]);
  });

  test('the courtyard’s lemon is sent to the south wall only with the place where it spends the winter', () => {
    const courtyard = demoPlan('courtyard');
    const { spots, winterBest, notes } = valueOf(placeOf(courtyard, { plant: 'lemon', count: 1 }));
    expect(spots[0].winterSunHours).toBeLessThan(WINTER_SUN);
    expect(winterBest).toMatchObject({ isWanted: true });
    expect(notes.some((note) => note.startsWith(`Winter is spent elsewhere: ${winterBest!.where}`))).toBe(true);
    // Hydrangeas are bare in winter.
    expect(wantsWinterSun(plantRowOf(courtyard, 'hydrangea') as PlantRow)).toBe(false);
    // It keeps its fronds, and grows where no sun comes: common practice, no source.
    expect(wantsWinterSun(plantRowOf(courtyard, 'fern') as PlantRow)).toBe(false);
    expect(wantsWinterSun(plantRowOf(courtyard, 'lemon') as PlantRow)).toBe(true);
  });
});

test(
  'summer must not decide winter: in mid-January the courtyard’s west wall spot has 3.7 h of sun, the south ' +
    'wall’s none',
  () => {
    const courtyard = demoPlan('courtyard');
    const lemon = courtyard.features.find((feature) => feature.id === 'lemon');
    const row = plantRowOf(courtyard, 'lemon');
    if (lemon?.kind !== 'plant' || !row) throw new Error('the demo has it');
    const judge = valueOf(createPotJudges(courtyard)).of(lemon, row);
    expect(winterDayOf(courtyard)).toBe('01-15');
    expect(winterDayOf(demoPlan('lane'))).toBe('07-15');
    expect(judge.winterAt([1, 5.6])).toBeGreaterThan(3.3);
    expect(judge.winterAt([1, 5.6])).toBeLessThan(4.1);
    expect(judge.winterAt([5.5, 1])).toBe(0);
  },
);

test('a place tried for an evergreen is told for want of winter sun as well, other plants are not', () => {
  const courtyard = demoPlan('courtyard');
  const tried = (id: string, at: readonly [number, number]) => {
    const pot = valueOf(potNamed(courtyard, id));
    return valueOf(potThere(courtyard, pot, at, potGround(courtyard, pot), { period: { kind: 'heatwave' } }));
  };
  // Under the south wall's foot the sun of mid-January never comes: it stands below 31° there, the wall is 2.6 m high.
  const dark = tried('lemon', [5.5, 1]);
  expect(dark.winterSunHours).toBe(0);
  expect(winterWarning(dark.winterSunHours)).toBe('No sun there in mid-winter.');
  const light = tried('lemon', [1, 5.6]);
  // The same number as where places are ranked.
  const { winterBest } = valueOf(placeOf(courtyard, { plant: 'lemon', count: 1 }));
  expect(tried('lemon', winterBest!.at as [number, number]).winterSunHours).toBeCloseTo(winterBest!.sunHours, 6);
  expect(light.winterSunHours).toBeGreaterThan(WINTER_SUN);
  expect(winterWarning(light.winterSunHours)).toBe('');
  expect(tried('hydrangea', [5.5, 1]).winterSunHours).toBe(null);
});

describe('hardening', () => {
  test('from shade to sun it takes 10 to 14 days, at most an hour more a day, and ends in the new sun without cloth', () => {
    for (const [from, to] of [
      [1.3, 4.1],
      [0.4, 11.8],
      [2, 9.7],
    ] as const) {
      const days = hardeningOf(from, to)?.days ?? [];
      expect(days.length).toBeGreaterThanOrEqual(10);
      expect(days.length).toBeLessThanOrEqual(14);
      for (let n = 0; n < days.length; n++)
        expect(days[n].sunHours - (n === 0 ? from : days[n - 1].sunHours)).toBeLessThanOrEqual(1 + 1e-9);
      expect(days.at(-1)?.sunHours).toBeCloseTo(to, 9);
      expect(days[0].cloth).toBe(60);
      expect(days.at(-1)?.cloth).toBe(0);
    }
  });
  test('into less sun, or hardly more, it needs none', () => {
    expect(hardeningOf(6, 4)).toBeNull();
    expect(hardeningOf(6, 6.9)).toBeNull();
    // Ten days under cloth for an hour more would be more work than the move.
    expect(hardeningOf(4.8, 5.9)).toBeNull();
    expect(hardeningOf(4.8, 7)).not.toBeNull();
  });
  test('with a day to start it has dates', () =>
    expect(hardeningOf(2, 7, '2026-04-28')?.days[4].date).toBe('2026-05-02'));
});
