import { expect, test } from 'vitest';
import { barredGround, demoPlan, featureOf, potGround } from '../../../../engine/index.ts';

test('of the ground under a yard exactly the squares are barred whose middle the pot may not stand on', () => {
  const plan = demoPlan('courtyard');
  const pot = featureOf(plan, 'lemon');
  const ground = barredGround(plan, 'lemon');
  if (pot?.kind !== 'plant' || !ground.ok) throw new Error('No lemon.');
  const { step, barred } = ground.value;
  const { reasonAt } = potGround(plan, pot);
  expect(barred.length).toBeGreaterThan(50);
  for (const { at, reason } of barred) expect(reasonAt(at)).toBe(reason);
  const [x, y] = pot.at.map((value) => (Math.floor(value / step) + 0.5) * step);
  expect(barred.some(({ at }) => at[0] === x && at[1] === y)).toBe(reasonAt([x, y]) !== null);
});

test('a pot that is gone is a problem in words', () => {
  expect(barredGround(demoPlan('courtyard'), 'gone')).toMatchObject({
    ok: false,
    problems: [{ message: 'This pot is no longer on the plan.' }],
  });
});
