import { expect, test } from 'vitest';
import { groundMask } from '../../../../../engine/advice/site/rules/ground-mask.ts';
import { hidingOf } from '../../../../../engine/advice/site/rules/hiding.ts';
import { yardRules } from '../../../../../engine/advice/site/rules/yard-rules.ts';
import { roofOf } from '../../../../../engine/advice/site/search/candidates.ts';
import { turnedLattice } from '../../../../../engine/advice/site/search/turned-lattice.ts';
import { demoPlan } from '../../../../../engine/plan/demos/index.ts';
import { randomFrom } from '../../../../parts/random.ts';

test('nodes tell of a roof on the lattice whether anybody sees it as looking at all of its edge does', () => {
  const plan = demoPlan('lane');
  const hiding = hidingOf(plan, ['lane']);
  const random = randomFrom(7);
  const whole = (most: number) => Math.floor(random() * most);
  const told = { hidden: 0, seen: 0 };
  for (const turn of [0, 30]) {
    const turned = turnedLattice(plan.site.boundary, turn, 0.25);
    const mask = groundMask(yardRules(plan), (at) => hiding.heightAt(at, 1.2, 3), turned);
    for (let n = 0; n < 300; n++) {
      const [a, b] = [4 + whole(9), 4 + whole(9)];
      const [i, j] = [whole(turned.columns - a), whole(turned.rows - b)];
      const height = 1.5 + 0.1 * whole(12);
      const isHidden = mask.isHidden(i, j, a, b, height);
      expect(isHidden, `${turn}° ${i} ${j} ${a} × ${b} at ${height}`).toBe(
        hiding.isHidden(roofOf(turned, { i, j, a, b, height }, 0.5)),
      );
      told[isHidden ? 'hidden' : 'seen']++;
    }
  }
  expect(Math.min(told.hidden, told.seen)).toBeGreaterThan(40);
});

test('heights over the same things of the yard share what may be covered, others do not', () => {
  const rules = yardRules(demoPlan('courtyard'));
  const turned = turnedLattice(demoPlan('courtyard').site.boundary, 15, 0.5);
  const mask = groundMask(rules, () => Infinity, turned);
  for (const height of [1.6, 2, 2.2, 2.7, 3, 3.4]) {
    const fresh = groundMask(rules, () => Infinity, turned).blockedAt(height);
    expect(mask.blockedAt(height), `${height} m`).toEqual(fresh);
  }
});
