import { expect, test } from 'vitest';
import { hidingOf } from '../../../../../engine/advice/site/rules/hiding.ts';
import { askedOf, lowestOf } from '../../../../../engine/advice/site/request.ts';
import { demoPlan } from '../../../../../engine/plan/demos/index.ts';
import { valueOf } from '../../../load/yard-plan.ts';

test(
  'from the window behind the lane yard nothing is hidden near a plant, not even the lowest screen, so it ' +
    'binds nothing; the lane does',
  () => {
    const plan = demoPlan('lane');
    expect(lowestOf(valueOf(askedOf(plan, {})).lattice)).toBe(1.2);
    expect(hidingOf(plan, 1.2)).toMatchObject({ impossible: ['upstairs'], from: ['lane'] });
  },
);

test(
  'the edge of the east house hides from the terrace above it what stands near enough, by the line of sight ' +
    'over that edge',
  () => {
    const hiding = hidingOf(demoPlan('courtyard'), 2);
    expect(hiding.from).toEqual(['terrace']);
    // From 7.2 m, 2 m behind an edge of 5.8 m: the line falls 0.7 m a metre.
    for (const away of [1, 2, 4]) expect(hiding.heightAt([11 - away, 4])).toBeCloseTo(5.8 - 0.7 * away, 3);
    expect(hiding.heightAt([1.2, 3])).toBeLessThan(0.1);
  },
);
