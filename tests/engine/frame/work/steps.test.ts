import { describe, expect, test } from 'vitest';
import type { Cloth } from '../../../../engine/plan/types.ts';
import { built, roof, screen } from '../yard.ts';

describe('the sheet', () => {
  test('footings harden before a frame stands on them; posts in holes and rails across holes are cast round', () => {
    const order = (thing: Cloth): string[] => built(thing).steps.map(({ id }) => id);
    const before = (ids: string[], first: string, second: string): boolean =>
      ids.includes(first) && ids.indexOf(first) < ids.indexOf(second);
    const onFeet = order({ ...roof, frame: { soil: 'garden', anchor: 'footing' } });
    expect(before(onFeet, 'concrete', 'raise') && before(onFeet, 'raise', 'bolt')).toBe(true);
    for (const thing of [
      { ...roof, frame: { soil: 'garden', anchor: 'sunk' } },
      { ...roof, frame: { soil: 'garden', bottomRails: true } },
      screen,
    ]) {
      expect(before(order(thing), 'raise', 'concrete')).toBe(true);
      expect(order(thing)).not.toContain('bolt');
    }
  });

  test('where stays hold a screen, their feet are set out too', () => {
    const staked = built({ ...screen, frame: { soil: 'garden', anchor: 'stakes' } });
    expect(staked.pieces.some(({ part }) => part === 'stay')).toBe(true);
    // Six tenths of the post's 1.9 m, to the 5 cm that a tape shows at a glance.
    expect(staked.steps.find(({ id }) => id === 'set-out')?.text).toContain(
      'Mark each stay’s foot too, 1150 mm from its post',
    );
    expect(built(screen).steps.find(({ id }) => id === 'set-out')?.text).not.toContain('stay');
  });

  test('rails along the ground have a step of their own, after the posts stand', () => {
    const order = built({ ...roof, frame: { soil: 'garden', bottomRails: true } }).steps.map(({ id }) => id);
    expect(order.indexOf('low-rails')).toBe(order.indexOf('raise') + 1);
    expect(built(roof).steps.map(({ id }) => id)).not.toContain('low-rails');
  });

  test('stays are told where they are clamped: as high as their feet stand out', () => {
    const { steps } = built({ ...screen, frame: { soil: 'paving' } });
    const marked = /Mark each stay’s foot too, (\d+ mm) from its post/.exec(
      steps.map(({ text }) => text).join(' '),
    )?.[1];
    expect(steps.find(({ id }) => id === 'brace')?.text).toContain(
      `a brace clamp on each post, ${marked} above the ground, a foot on the ground as far from it`,
    );
  });

  test('screens on feet go up as they can be held: stood up whole, stayed, then squared and weighed down', () => {
    const { steps } = built({ ...screen, frame: { soil: 'paving' } });
    const order = steps
      .map(({ id }) => id)
      .filter((id) => ['join', 'raise', 'brace', 'square', 'ballast'].includes(id));
    expect(order).toEqual(['join', 'raise', 'brace', 'square', 'ballast']);
    const raise = steps.find(({ id }) => id === 'raise')?.text ?? '';
    expect(raise).toContain('hold it until its stays are fixed');
    expect(raise).not.toMatch(/Nobody stands under|the other side/);
    const sunk = built(screen).steps.find(({ id }) => id === 'raise')?.text;
    expect(sunk).toMatch(/posts in their holes, each on a flat stone of 50 mm, and prop it on both sides/);
  });
});
