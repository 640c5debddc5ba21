import { expect, test } from 'vitest';
import { demoPlan, spotOf, weeksAt } from '../../../../engine/index.ts';
import { mustBeOk } from '../../../parts/outcome.ts';

test('the hours of all weeks add up to the season’s own hot hours and sun hours at the spot', () => {
  const plan = demoPlan('courtyard');
  const spot = spotOf(plan, [4.3, 2.9], { height: 0.7 });
  const weeks = weeksAt(plan, [4.3, 2.9], { height: 0.7, span: 'season' });
  if (!spot.ok || !weeks.ok || !('season' in spot.value)) throw new Error('No season.');
  const days = spot.value.days.length;
  const mean = (of: 'harmful' | 'sun'): number =>
    weeks.value.reduce(
      (sum, week, k) => sum + Math.min(7, days - 7 * k) * week[of].reduce((total, hour) => total + hour, 0),
      0,
    ) / days;
  expect(mean('harmful')).toBeCloseTo(spot.value.season.hotHours, 9);
  expect(mean('sun')).toBeCloseTo(spot.value.season.sunHours, 9);
  expect(weeks.value.every(({ sun }) => sun[2] === 0 && sun.every((hour) => hour >= 0 && hour <= 1.001))).toBe(true);
});

test('where the season crosses a change of the clocks, the week after it says so', () => {
  const plan = {
    ...demoPlan('courtyard'),
    season: { ...demoPlan('courtyard').season, year: 2026, from: '10-12', to: '11-08' },
  };
  const months = [10, 11].map((month) => ({ month, high: 30, low: 15 }));
  const weeks = weeksAt({ ...plan, climate: { ...plan.climate, months } }, [4.3, 2.9], { height: 0.7, span: 'season' });
  // European Union: the last Sunday of October, 25 October 2026.
  expect(weeks.ok && weeks.value.map(({ clocksChanged }) => clocksChanged)).toEqual([false, false, true, false]);
});

test('a whole year has more sun in June than in December, though the plan knows the climate of its summer alone', () => {
  const plan = demoPlan('courtyard');
  const weeks = weeksAt({ ...plan, features: [] }, [4.3, 2.9], { height: 0.7, span: 'year' });
  mustBeOk(weeks);
  expect(weeks.value).toHaveLength(53);
  const hours = (k: number): number => weeks.value[k].sun.reduce((sum, hour) => sum + hour, 0);
  expect(hours(24)).toBeGreaterThan(hours(50));
  // 37.9° north in mid-December: 9 h 30 min from sunrise to sunset, the first and last of it too faint to count.
  expect(hours(50)).toBeGreaterThan(8);
  expect(hours(50)).toBeLessThan(9.5);
  expect(weeks.value.filter(({ clocksChanged }) => clocksChanged)).toHaveLength(2);
});

test('the lemon’s leaf is too hot in no hour without sun on its top, and later in the day than in the morning', () => {
  const plan = demoPlan('courtyard');
  const lemon = plan.features.find(({ id }) => id === 'lemon');
  if (lemon?.kind !== 'plant') throw new Error('No lemon.');
  const weeks = weeksAt(plan, lemon.at, { height: lemon.height + 0.01, plant: 'lemon', span: 'season' });
  mustBeOk(weeks);
  const july = weeks.value.find(({ middle }) => middle.slice(5, 7) === '07');
  const over = (july?.over ?? []).flatMap((hot, hour) => (hot ? [hour] : []));
  expect(over.length).toBeGreaterThan(0);
  for (const hour of over) expect(july?.sun[hour], `${hour} h`).toBeGreaterThan(0);
  expect(Math.min(...over)).toBeGreaterThanOrEqual(12);
  expect(weeksAt(plan, lemon.at, { height: 1, span: 'season' })).toMatchObject({
    ok: true,
    value: [{ over: null }, ...weeks.value.slice(1).map(() => ({}))],
  });
});
