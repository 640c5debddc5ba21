import { describe, expect, test } from 'vitest';
import { ENGINEER_AREA, ENGINEER_HEIGHT } from '../../../../engine/frame/work/cautions.ts';
import type { Canopy } from '../../../../engine/plan/types.ts';
import { built, roof, yardWith } from '../yard.ts';

describe('the sheet', () => {
  test('a post in a door’s way, or in a bed, is told before anything else', () => {
    const door = {
      id: 'door',
      kind: 'keepout',
      name: 'Door',
      outline: [
        [6, 4],
        [8.5, 4],
        [8.5, 7],
        [6, 7],
      ],
      blocks: ['posts'],
    } as const;
    const { notes, settingOut } = built(
      { ...roof, turn: 0 },
      {
        features: [...yardWith([roof]).features.filter((feature) => feature.id !== 'roof'), { ...roof, turn: 0 }, door],
      },
    );
    expect(notes[0]).toContain('Post P1 would stand in Door');
    expect(settingOut.posts[0].blockedBy).toBe('Door');
  });

  test('asks for an engineer over 10 m² and over 3 m', () => {
    expect(ENGINEER_AREA).toBe(10);
    const large: Canopy = { ...roof, length: 4, width: ENGINEER_AREA / 4 + 0.1 };
    expect(built(large).notes.join(' ')).toContain('licensed engineer');
    expect(built({ ...roof, height: ENGINEER_HEIGHT + 0.1, frame: { tube: 'scaffold-48' } }).notes.join(' ')).toContain(
      'licensed engineer',
    );
    expect(built(roof).notes.join(' ')).not.toContain('licensed engineer');
  });

  test('posts too near a wall for their holes are told before anything is bought, weights are not', () => {
    // The wall's face is at y 0.1: a hole of 30 cm must keep its edge 0.3 m off.
    const near = (more: Partial<Canopy>): string =>
      built({ ...roof, turn: 0, center: [9, 0.1 + 0.25 + 1.7], ...more }).notes.join(' ');
    expect(near({})).toMatch(/Posts P1 and P2 stand too near a wall for a hole: before you buy, move the frame/);
    expect(near({ frame: { soil: 'paving' } })).not.toContain('too near a wall');
    expect(near({ center: [9, 7] })).not.toContain('too near a wall');
  });

  test('tells of everything that one thing keeps from standing in one sentence', () => {
    const { notes } = built(
      { ...roof, turn: 0 },
      {
        features: [
          ...yardWith([]).features,
          { ...roof, turn: 0 },
          {
            id: 'bed',
            kind: 'bed',
            name: 'Beans',
            outline: [
              [6, 4],
              [12, 4],
              [12, 10],
              [6, 10],
            ],
            plantHeight: 1,
          },
        ],
      },
    );
    expect(notes.filter((note) => note.includes('Beans'))).toEqual([
      'Posts P1, P2 and 4 more would stand in Beans: move the frame, or that, before you build.',
    ]);
  });

  test('a frame through a wall, over the property line or over the height that the rules allow is told', () => {
    const site = { ...yardWith([]).site, rules: { maxHeight: 2.2, setback: 0.9 } };
    const told = (changes: Partial<Canopy>): string =>
      built({ ...roof, turn: 0, ...changes }, { site }).notes.join(' ');
    expect(told({ center: [9, 0.5], height: 1.8, drops: [{ side: 'left', depth: 0.9, density: 0.5 }] })).toMatch(
      /run through Garden wall.*Posts P1 and P2 would stand outside the property line/,
    );
    expect(told({ center: [9, 2] })).toMatch(
      /Posts P1 and P2 would stand nearer to the property line than the 0\.90 m/,
    );
    expect(told({})).toContain('It is 2.30 m high; your rules allow 2.20 m.');
    expect(told({ height: 2.1 })).not.toMatch(/run through|property line|your rules/);
    // The wall of 1.9 m passes under a roof of 2.1 m, but not under rails along the ground.
    expect(told({ center: [9, 0.5], height: 2.1 })).not.toContain('run through');
    expect(told({ center: [9, 0.5], height: 2.1, frame: { soil: 'garden', bottomRails: true } })).toContain(
      'run through Garden wall',
    );
  });
});
