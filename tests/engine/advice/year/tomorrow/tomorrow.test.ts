import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CLOSE_CALL } from '../../../../../engine/advice/year/tomorrow/heat.ts';
import { tomorrowOf } from '../../../../../engine/advice/year/tomorrow/tomorrow.ts';
import type { Forecast } from '../../../../../engine/advice/year/tomorrow/types.ts';
import { plantLoadsOf } from '../../../../../engine/load/load-of.ts';
import { CATALOGUE } from '../../../../../engine/plan/catalogue/plants.ts';
import { demoPlan } from '../../../../../engine/plan/demos/index.ts';
import type { Plan } from '../../../../../engine/plan/types.ts';
import { withOptions } from '../../../../../engine/plan/yards/options.ts';
import { mustBeOk } from '../../../../parts/outcome.ts';

const courtyard = demoPlan('courtyard');

function dayOf(plan: Plan, forecast: Forecast) {
  const result = tomorrowOf(plan, forecast);
  mustBeOk(result);
  return result.value;
}

describe('tomorrow', () => {
  const hot = dayOf(courtyard, { date: '2026-07-20', high: 42, low: 23 });

  it('lists the day in its order, the evening before first', () => {
    const clocks = hot.tasks.map(({ at }) => at);
    expect(clocks[0]).toBe('the evening before');
    const day = clocks.filter((at) => at !== 'the evening before');
    expect(day).toEqual(day.toSorted());
    for (const at of day) expect(at).toMatch(/^\d\d:\d\d$/);
  });

  it('has each plant that water does not save in the shade before its leaf reaches the limit, told as the reason', () => {
    const harmed = hot.plants.filter(({ verdict }) => verdict === 'will burn' || verdict === 'at risk');
    expect(harmed.map(({ plant }) => plant)).toContain('hydrangea');
    for (const { plant, when, thirsty, watered, limit } of harmed) {
      expect(thirsty).toBeGreaterThanOrEqual(limit);
      const [task] = hot.tasks.filter(
        ({ plants, advice }) => plants.includes(plant) && /shade|cloth/.test(advice.text) && plants.length === 1,
      );
      expect(task.at < when!.from).toBe(true);
      const begins =
        watered > limit - CLOSE_CALL ? `until ${when!.to}. From ${when!.from}` : `well watered. From ${when!.from}`;
      expect(task.advice.text).toContain(begins);
    }
  });

  it('sends nobody out of the garden before the morning’s work can be done', () => {
    const last = (day: typeof hot) => day.tasks.at(-1)!;
    expect(last(hot).advice.text).toMatch(/^Be out of the garden by now/);
    const warm = dayOf(courtyard, { date: '2026-07-20', high: 44, low: 31 });
    const text = last(warm).advice.text;
    expect(last(warm).at).toBe(warm.sunUp!.from);
    expect(text).toMatch(/^Do what you can the evening before, the rest now, a few minutes at a time/);
    expect(text).not.toMatch(/Be out/);
  });

  it('hangs no cloth where water is enough, least over herbs that are short of light', () => {
    const herbs = hot.plants.find(({ plant }) => plant === 'herbs')!;
    expect(herbs.watered).toBeLessThan(herbs.limit);
    const told = hot.tasks.filter(({ plants }) => plants.includes('herbs')).map(({ advice }) => advice.text);
    expect(told.join(' ')).toContain('they get by without cloth');
    expect(told.join(' ')).not.toMatch(/Hang|Carry/);
    // Nobody is told to get by on water that leaves a leaf over its limit.
    for (const { plants, advice } of hot.tasks.filter((task) => /gets? by/.test(task.advice.text))) {
      const { watered, limit } = hot.plants.find(({ plant }) => plant === plants[0])!;
      expect(watered, advice.text).toBeLessThanOrEqual(limit - CLOSE_CALL);
    }
  });

  it('tells a pot that water saves once: how much, and what happens without', () => {
    const pot = { ...courtyard, plants: [{ ...CATALOGUE.find(({ id }) => id === 'lemon')!, heatLimit: 49 }] };
    const day = dayOf(pot, { date: '2026-07-20', high: 42, low: 23 });
    const lines = day.tasks.filter(({ at, plants }) => at !== 'the evening before' && plants.includes('lemon'));
    expect(lines.map(({ advice }) => advice.text)).toEqual([
      expect.stringMatching(/^Water the lemon pot: .* to the brim\. From .* it gets by without cloth\.$/),
    ]);
  });

  it('wraps the evening before the pots whose roots would die, and none that is white or stays cool', () => {
    const wraps = (plan: Plan, high: number) =>
      dayOf(plan, { date: '2026-07-20', high, low: high - 19 }).tasks.filter(({ advice }) =>
        advice.text.startsWith('Wrap the pot in white'),
      );
    const [task, ...more] = wraps(courtyard, 42);
    expect(more).toEqual([]);
    expect(task.at).toBe('the evening before');
    const dying = hot.plants.filter(({ roots }) => roots?.verdict === 'cooking').map(({ plant }) => plant);
    expect(dying.length).toBeGreaterThan(0);
    expect(task.plants.toSorted()).toEqual(dying.toSorted());
    expect(wraps(courtyard, 22)).toEqual([]);
    const white: Plan = {
      ...courtyard,
      features: courtyard.features.map((feature) =>
        feature.kind === 'plant'
          ? { ...feature, pot: { ...feature.pot, width: 0.4, height: 0.35, colour: 'white' } }
          : feature,
      ),
    };
    expect(wraps(white, 42)).toEqual([]);
  });

  it('sends nobody out in the heat: all that means work stands before it, and it says what to mind', () => {
    const last = hot.tasks.at(-1)!;
    expect(last.advice.text).toMatch(/^Be out of the garden by now.*the air is over 30 °C until/);
    for (const { at } of hot.tasks.slice(0, -1)) expect(at === 'the evening before' || at < last.at).toBe(true);
    expect(hot.tasks.map(({ advice }) => advice.text).join(' ')).not.toMatch(/midday|afternoon/);
    expect(hot.cautions.map(({ id }) => id)).toEqual(expect.arrayContaining(['heat', 'cloth-off']));
  });

  it('asks back what is far from the month’s, and takes a freezing July night for a slip', () => {
    expect(hot.asked).toBeNull();
    expect(dayOf(courtyard, { date: '2026-07-20', high: 52, low: 25 }).asked).toMatch(/high of 52 °C right\?/);
    expect(dayOf(courtyard, { date: '2026-07-20', high: 12 }).asked).toMatch(/high of 12 °C/);
    const slip = dayOf(courtyard, { date: '2026-07-20', high: 38, low: -2 });
    expect(slip.asked).toMatch(/low of −2 °C/);
    expect(slip.tasks.some(({ advice }) => /freez|before sunset/i.test(advice.text))).toBe(false);
    expect(slip.cautions.map(({ id }) => id)).not.toContain('winter-cover');
    expect(tomorrowOf(courtyard, { date: '2026-07-20', high: 97 })).toMatchObject({
      problems: [{ message: expect.stringMatching(/97 °F would be 36 °C/) as string }],
    });
  });

  it('carries pots in before frost, and leaves alone what can be neither carried nor wrapped', () => {
    const cold = dayOf(courtyard, { date: '2026-12-20', high: 6, low: -6 });
    const told = cold.tasks.map(({ advice }) => advice.text).join(' ');
    expect(told).toMatch(/Carry in the lemon pot before sunset/);
    expect(told).toMatch(/Cover the geraniums along the house before sunset/);
    expect(told).not.toMatch(/orange tree/);
  });

  it('covers tomatoes before an early frost and a late one, and no bed that the first frost has ended', () => {
    const lane = demoPlan('lane');
    const covers = (date: string) =>
      dayOf(lane, { date, high: 12, low: -1 }).tasks.some(({ advice }) => advice.text.startsWith('Cover the tomatoes'));
    // The lane's frost goes from 25 May to 15 September.
    expect(['2027-05-20', '2027-05-30', '2026-09-20'].map(covers)).toEqual([true, true, true]);
    expect(['2027-06-20', '2026-07-10', '2026-09-10'].map(covers)).toEqual([false, false, false]);
  });

  it('speaks of ladders only where a cloth hangs', () => {
    const ladders = (plan: Plan): number =>
      dayOf(plan, { date: '2026-07-20', high: 42, low: 23 }).cautions.filter(({ id }) => id === 'ladder').length;
    const covered = withOptions(courtyard, ['A']);
    if (!covered.ok) throw new Error('no option A');
    const hangs = (plan: Plan): boolean => plan.features.some(({ kind }) => kind === 'canopy' || kind === 'screen');
    for (const plan of [courtyard, covered.plan]) expect(ladders(plan)).toBe(hangs(plan) ? 1 : 0);
    expect(hangs(courtyard)).not.toBe(hangs(covered.plan));
  });

  it('is the heatwave day when its numbers are typed: the same leaves, for the month’s vapour is in the air', () => {
    const { months, heatwaveHigh } = courtyard.climate;
    const hottest = months.reduce((a, b) => (b.high > a.high ? b : a));
    const date = `2026-${String(hottest.month).padStart(2, '0')}-21`;
    const low = hottest.low + heatwaveHigh - hottest.high;
    const loads = plantLoadsOf(courtyard, { period: { kind: 'heatwave' } });
    mustBeOk(loads);
    const { plants } = dayOf(courtyard, { date, high: heatwaveHigh, low });
    for (const { plant, watered, thirsty, limit } of plants) {
      const { leaf } = loads.value.find(({ id }) => id === plant)!;
      expect(leaf?.thirsty, plant).toBeCloseTo(thirsty, 6);
      expect(leaf?.watered, plant).toBeCloseTo(watered, 6);
      expect(leaf?.limit, plant).toBe(limit);
    }
    expect(plants.length).toBeGreaterThan(2);
  });

  it('a frosty morning sends nobody out to water, and a July night nobody out to cover', () => {
    const waters = (low: number): boolean =>
      dayOf(courtyard, { date: '2026-12-20', high: 9, low }).tasks.some(({ advice }) =>
        advice.text.startsWith('Water'),
      );
    expect(waters(6)).toBe(true);
    expect(waters(2)).toBe(false);
    expect(waters(-3)).toBe(false);
    const july = dayOf(courtyard, { date: '2026-07-20', high: 33, low: 18 });
    expect(july.tasks.some(({ advice }) => /frost|freez|cover/i.test(advice.text))).toBe(false);
    expect(july.cautions.map(({ id }) => id)).not.toContain('winter-cover');
  });

  it('a mild day asks for water alone, a cold night for a cover and its caution', () => {
    const mild = dayOf(courtyard, { date: '2026-06-02', high: 17, low: 8 });
    expect(mild.plants.every(({ when }) => when === null)).toBe(true);
    expect(mild.tasks.every(({ advice }) => advice.text.startsWith('Water'))).toBe(true);
    const cold = dayOf(courtyard, { date: '2026-12-20', high: 9, low: -3 });
    expect(cold.tasks[0]).toMatchObject({ at: 'the evening before' });
    expect(cold.tasks[0].plants).toContain('lemon');
    expect(cold.cautions.map(({ id }) => id)).toContain('winter-cover');
  });

  it('hangs the cloth that the plan has down that day', () => {
    const covered = withOptions(courtyard, ['B']);
    if (!covered.ok) throw new Error('no option B');
    const down: Plan = {
      ...covered.plan,
      features: covered.plan.features.map((each) =>
        each.kind === 'canopy' ? { ...each, up: { from: '08-01', to: '09-15' } } : each,
      ),
    };
    const says = (date: string) =>
      dayOf(down, { date, high: 43, low: 24 }).tasks.some(({ advice }) => advice.text.includes('down that day'));
    expect(says('2026-07-20')).toBe(true);
    expect(says('2026-08-20')).toBe(false);
  });

  it('takes cloth to be as the diary has it: down, it shades nobody and is hung; unsaid, the list says what it took', () => {
    const roof = withOptions(courtyard, ['A']);
    mustBeOk(roof);
    const told = (journal: Plan['journal']) => {
      const day = dayOf({ ...roof.plan, journal }, { date: '2026-07-20', high: 42, low: 23 });
      return {
        thirsty: day.plants.find(({ plant }) => plant === 'lemon')!.thirsty,
        isHung: day.tasks.some(({ advice }) => advice.text.includes('is down that day: hang it now')),
        isTaken: day.notes.some((note) => note.includes('is taken to hang')),
      };
    };
    const entry = (what: 'cloth-up' | 'cloth-down', date: string) => ({ what, date, feature: 'lemon-roof' });
    const unsaid = told([]);
    const up = told([entry('cloth-up', '2026-06-05')]);
    const down = told([entry('cloth-up', '2026-06-05'), entry('cloth-down', '2026-07-18')]);
    expect([unsaid.isHung, up.isHung, down.isHung]).toEqual([false, false, true]);
    expect([unsaid.isTaken, up.isTaken, down.isTaken]).toEqual([true, false, false]);
    expect(up.thirsty).toBe(unsaid.thirsty);
    expect(down.thirsty).toBeGreaterThan(up.thirsty + 1);
    // What was noted last summer, or comes later, says nothing of today.
    expect(told([entry('cloth-down', '2025-09-10'), entry('cloth-down', '2026-09-02')])).toEqual(unsaid);
  });

  it('without a low takes the month’s usual swing, and says so', () => {
    const { low, notes } = dayOf(courtyard, { date: '2026-07-20', high: 40 });
    const july = courtyard.climate.months.find(({ month }) => month === 7)!;
    expect(low).toBeCloseTo(40 - (july.high - july.low), 9);
    expect(notes.some((note) => note.startsWith('No low was given'))).toBe(true);
    expect(hot.notes.some((note) => note.startsWith('No low was given'))).toBe(false);
  });

  it('a warmer forecast never leaves a leaf cooler (law)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 44 }), fc.integer({ min: 1, max: 5 }), (high, more) => {
        const [cooler, warmer] = [high, high + more].map(
          (each) =>
            new Map(
              dayOf(courtyard, { date: '2026-07-20', high: each, low: each - 17 }).plants.map(({ plant, thirsty }) => [
                plant,
                thirsty,
              ]),
            ),
        );
        for (const [plant, thirsty] of cooler) expect(warmer.get(plant)).toBeGreaterThan(thirsty);
      }),
      { seed: 11, numRuns: 5 },
    );
  });

  it.each([
    [{ date: 'friday', high: 40, low: 20 }, '--date'],
    [{ date: '2026-07-20', high: 400, low: 20 }, '--high'],
    [{ date: '2026-07-20', high: NaN, low: 20 }, '--high'],
    [{ date: '2026-07-20', high: 30, low: 31 }, '--low'],
  ])('refuses %j in a sentence', (forecast, pointer) => {
    expect(tomorrowOf(courtyard, forecast)).toMatchObject({ ok: false, problems: [{ pointer }] });
  });
});
