import { describe, expect, test } from 'vitest';
import { castGrid } from '../../../../../engine/cast/grids/cast-grid.ts';
import { createTrialCaster } from '../../../../../engine/cast/grids/trial/trial-caster.ts';
import type { Passes } from '../../../../../engine/cast/passes.ts';
import { inYearlySpan } from '../../../../../engine/plan/dates/year-span.ts';
import type { Canopy, Feature, Plan, Screen } from '../../../../../engine/plan/types.ts';
import { buildScene, clothSheets, stateOf } from '../../../../../engine/scene/build.ts';
import { randomFrom } from '../../../../parts/random.ts';
import { randomPlan } from '../../random-plans.ts';

const DAYS = ['01-10', '05-01', '07-01', '08-20', '12-01'];
const COUNT = 60;
const GRID = { x0: -7.13, y0: -6.4, cell: 0.53, columns: 27, rows: 23, height: 0.37 };

function passesOver(
  plan: Plan,
  random: () => number,
): { passes: Passes; monthDays: string[]; channels: Float64Array[] } {
  const scene = buildScene(plan);
  const monthDays = Array.from({ length: COUNT }, (_, k) => DAYS[k % DAYS.length]);
  const column = (of: () => number) => Float64Array.from(monthDays, of);
  return {
    passes: {
      count: COUNT,
      azimuth: column(() => 360 * random()),
      altitude: column(() => 85 * random() ** 1.4),
      state: Uint16Array.from(monthDays, (day) => stateOf(scene, day)),
    },
    monthDays,
    channels: [column(() => random()), column(() => (random() < 0.5 ? 0 : 3 * random()))],
  };
}

function expectSame(actual: readonly Float64Array[], expected: readonly Float64Array[]): void {
  actual.forEach((sums, c) =>
    sums.forEach((sum, index) => expect(Math.abs(sum - expected[c][index])).toBeLessThan(1e-9)),
  );
}

describe('a trial', () => {
  test('gives what castGrid gives the yard with the cloth drawn into it, move after move (random plans 701 to 712)', () => {
    let changed = 0;
    for (let seed = 701; seed <= 712; seed++) {
      const random = randomFrom(seed + 3);
      const plan = randomPlan(seed);
      const { passes, monthDays, channels } = passesOver(plan, random);
      const trial = createTrialCaster(buildScene(plan), GRID, passes, channels);
      const open = castGrid(buildScene(plan), GRID, passes, channels);
      expectSame(trial.sums(), open);
      for (let move = 0; move < 6; move++) {
        const canopy: Canopy = {
          id: 'trial',
          kind: 'canopy',
          center: [8 * random() - 4, 8 * random() - 4],
          length: 1 + 3 * random(),
          width: 1 + 3 * random(),
          turn: 360 * random(),
          height: 2 + random(),
          rise: random() - 0.5,
          density: move === 3 ? 1 : 0.3 + 0.6 * random(),
          drops:
            move % 2 === 0
              ? [
                  { side: 'left', depth: 1.2, density: 0.5 },
                  { side: 'back', depth: 0.8, density: 0.7 },
                ]
              : [],
          up: move === 4 ? { from: '06-15', to: '10-01' } : undefined,
        };
        const screen: Screen = {
          id: 'trial',
          kind: 'screen',
          path: [
            [-3 + random(), 1],
            [2, 2 + random()],
            [3, -1],
          ],
          bottom: 0.2,
          height: 1.9,
          density: 0.6,
        };
        const cloth = move === 5 ? screen : canopy;
        const { up } = cloth;
        trial.hang(clothSheets(cloth), up && Uint8Array.from(monthDays, (day) => (inYearlySpan(up, day) ? 1 : 0)));
        const drawn: Plan = { ...plan, features: [...plan.features, cloth as Feature] };
        const scene = buildScene(drawn);
        const full = castGrid(
          scene,
          GRID,
          { ...passes, state: Uint16Array.from(monthDays, (day) => stateOf(scene, day)) },
          channels,
        );
        expectSame(trial.sums(), full);
        if (full[0].some((sum, index) => sum < open[0][index] - 0.01)) changed++;
      }
      trial.hang([]);
      expectSame(trial.sums(), open);
    }
    expect(changed).toBeGreaterThan(60);
  });

  test('a thousand moves leave no trace', () => {
    const random = randomFrom(31);
    const plan = randomPlan(713);
    const { passes, channels } = passesOver(plan, random);
    const trial = createTrialCaster(buildScene(plan), GRID, passes, channels);
    const before = trial.sums();
    for (let move = 0; move < 1000; move++) {
      trial.hang(
        clothSheets({
          id: 't',
          kind: 'canopy',
          center: [random(), random()],
          length: 3,
          width: 2,
          height: 2.2,
          density: 0.37,
        }),
      );
    }
    trial.hang([]);
    expectSame(trial.sums(), before);
  });
});
