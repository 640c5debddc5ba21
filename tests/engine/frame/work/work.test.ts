import { describe, expect, test } from 'vitest';
import { costOf } from '../../../../engine/frame/sheet.ts';
import { hoursWords, toldHours } from '../../../../engine/frame/work/work-words.ts';
import { built, roof, screen, yardWith } from '../yard.ts';

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

  test('hours are told as a person would: whole ones up to ten, then to five, never half of one', () => {
    expect([0.2, 2.5, 6.5, 10, 14, 20.5, 30.5, 88, 131].map(toldHours)).toEqual([1, 3, 7, 10, 15, 20, 30, 90, 130]);
    expect(hoursWords({ low: 14, high: 30.5 })).toBe('15 to 30 hours');
    for (const thing of [roof, screen]) {
      const { work } = built(thing);
      expect(work.sentences[0]).toContain(`${hoursWords(work.hours)} of work in all`);
      expect(work.sentences.join(' ')).not.toMatch(/\d\.\d/);
    }
  });

  test('where the ground is not known the hours with anchors are told too: those that options are compared by', () => {
    const anchored = costOf({ ...roof, frame: { soil: 'garden' } }, yardWith([]));
    if (!anchored.ok) throw new Error('it can be built');
    expect(built({ ...roof, frame: {} }).work.sentences[0]).toContain(
      `with anchors, as in garden soil, ${hoursWords(anchored.hours)} in all`,
    );
  });
});
