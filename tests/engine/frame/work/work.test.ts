import { describe, expect, test } from 'vitest';
import { built, roof, screen } from '../yard.ts';

describe('hands and hours: this project’s own estimate, no source', () => {
  test('they are called an estimate, their parts add up, and the range is honest: twice and more', () => {
    for (const thing of [roof, screen, { ...roof, frame: {} }]) {
      const { work } = built(thing);
      for (const end of ['low', 'high'] as const)
        expect(work.parts.reduce((sum, { hours }) => sum + hours[end], 0)).toBeCloseTo(work.hours[end], 9);
      expect(work.hours.high).toBeGreaterThanOrEqual(2 * work.hours.low);
      expect(work.sentences.join(' ')).toMatch(/our estimate/);
      expect(work.sentences.join(' ')).toMatch(/never alone/);
    }
  });

  test('nobody builds alone, and a roof with heavier rails wants more hands', () => {
    expect(built(roof).work.people).toBe(2);
    expect(built({ ...roof, length: 5.5, width: 5.5, frame: { tube: 'scaffold-48' } }).work.people).toBeGreaterThan(3);
    const huge = built({ ...roof, length: 12, width: 9, frame: { tube: 'scaffold-48' } }).work;
    expect(huge.people).toBe(6);
    expect(huge.sentences.join(' ')).toContain('who do it for a living');
  });

  test('hard ground and more posts take longer; concrete must harden, straps need not', () => {
    const hours = (frame: object) => built({ ...roof, frame }).work.hours.high;
    expect(hours({ soil: 'hard' })).toBeGreaterThan(hours({ soil: 'loose', anchor: 'augers' }));
    expect(hours({ soil: 'garden', maxBay: 1.2 })).toBeGreaterThan(hours({ soil: 'garden' }));
    const words = (frame: object) => built({ ...roof, frame }).work.sentences.join(' ');
    expect(words({ soil: 'garden' })).toContain('a week between');
    expect(words({ soil: 'garden', anchor: 'stakes' })).not.toContain('a week between');
    expect(words({})).toContain('what the ground takes comes on top');
  });
});
