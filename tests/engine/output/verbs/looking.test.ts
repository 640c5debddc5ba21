import { expect, test } from 'vitest';
import { demoPlan, hiddenHeightAt, plantLoadsOf, sightLinesOf, skyFrom, spotOf } from '../../../../engine/index.ts';
import type { HiddenHeights, PotThere, SkyPicture, SpotWeek } from '../../../../engine/index.ts';
import { jsonOf, runLine } from '../../../command-line.ts';

const PLAN = demoPlan('courtyard');

test('week by week, a spot has the sun of its season', async () => {
  const { weeks } = (await jsonOf('spot demo --at 9.6,6.4 --height 1.7 --weeks season')) as { weeks: SpotWeek[] };
  const spot = spotOf(PLAN, [9.6, 6.4], { height: 1.7 });
  if (!spot.ok || spot.value.date !== null) throw new Error('No season.');
  const days = spot.value.days.length;
  const sun = weeks.reduce(
    (sum, week, k) => sum + Math.min(7, days - 7 * k) * week.sun.reduce((total, hour) => total + hour, 0),
    0,
  );
  expect(sun / days).toBeCloseTo(spot.value.season.sunHours, 9);
});

test('a spot answers in a sentence first, also week by week and of its sky, and is typed in feet too', async () => {
  const first = async (line: string): Promise<string> => (await runLine(line)).out.replaceAll(/\s+/g, ' ');
  expect(await first('spot demo --at 9.6,6.4 --height 1.7 --weeks season')).toMatch(
    /^Hot sun comes there in \d+ of 16 weeks, \d\d:00 to \d\d:00\./,
  );
  const sky = await first('spot demo --at 9.6,6.4 --height 1.7 --sky');
  expect(sky).toMatch(/^On 21 July sun reaches it \d\d:\d\d to /);
  expect(sky).not.toMatch(/(sunset|\d\d:\d\d) to \1 /);
  expect(await first('spot demo --at "31 ft 6 in, 21 ft" --height 1.7 --date 07-21')).toMatch(
    /At \(9\.60 m, 6\.40 m\)/,
  );
});

test('a verb that is asked with a file has no examples, and heads none', async () => {
  expect((await runLine('outlines --help')).out).not.toMatch(/Examples/);
  expect((await runLine('spot --help')).out).toMatch(/Examples\n  npm run/);
});

test('the sky of a spot goes by the hottest month unless a day is given, and says what stands before the sun', async () => {
  const sky = (await jsonOf('spot demo --at 9.6,6.4 --sky')) as SkyPicture & { monthDay: string };
  expect(sky.monthDay).toBe('07-21');
  expect(sky.paths.map(({ monthDay }) => monthDay.slice(0, 2))).toEqual(['06', '07', '08', '09']);
  const direct = skyFrom(PLAN, [9.6, 6.4], 0.5, '07-21');
  expect(sky.paths).toEqual(direct.ok && direct.value.paths);
  const { out } = await runLine('spot demo --at 9.6,6.4 --sky --date 01-21');
  expect(out.replaceAll(/\s+/g, ' ')).toMatch(/21 June .*white wall/);
  expect(((await jsonOf('spot demo --at 9.6,6.4 --sky --date 01-21')) as { monthDay: string }).monthDay).toBe('01-21');
});

test('hidden heights are those of every cell’s middle, null where anything is hidden', async () => {
  const { grid, heights } = (await jsonOf('site demo --hidden-heights')) as HiddenHeights;
  const sight = sightLinesOf(PLAN);
  for (let k = 0; k < grid.columns * grid.rows; k += 37) {
    const [i, j] = [k % grid.columns, Math.floor(k / grid.columns)];
    const { height } = hiddenHeightAt(sight, [grid.x0 + (i + 0.5) * grid.cell, grid.y0 + (j + 0.5) * grid.cell]);
    expect(heights[k]).toBe(height === Infinity ? null : height);
  }
});

test('a pot where it stands fares there as it fares in its place, and outside the yard it may not stand', async () => {
  const lemon = PLAN.features.find(({ id }) => id === 'lemon');
  if (lemon?.kind !== 'plant') throw new Error('No lemon.');
  const there = (await jsonOf(`place demo --plant lemon --at ${lemon.at.join(',')}`)) as PotThere;
  const loads = plantLoadsOf(PLAN, { period: { kind: 'season' } });
  const stays = loads.ok ? loads.value.find(({ id }) => id === 'lemon') : undefined;
  expect(there.reason).toBe(null);
  expect(there.load.verdict).toBe(stays?.verdict);
  expect(there.load.sunHours).toBeCloseTo(stays?.sunHours ?? NaN, 6);
  expect(((await jsonOf('place demo --plant lemon --at -3,0')) as PotThere).reason).toMatch(/outside/);
});

test.each([
  ['spot demo --at 1,1 --weeks season --plant nobody', /There is no "nobody" on the plan/],
  ['site demo --hidden-heights --eye nobody', /There is no onlooker "nobody"/],
  ['place demo --plant nobody --at 1,1', /Name a plant of the plan/],
])('%s is refused in words', async (line, words) => {
  const { code, err } = await runLine(line);
  expect(code).toBe(1);
  expect(err).toMatch(words);
});
