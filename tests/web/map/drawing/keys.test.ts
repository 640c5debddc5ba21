import { describe, expect, test } from 'vitest';
import { keyMeaning } from '../../../../web/map/drawing/keys.ts';
import type { KeyPressed } from '../../../../web/map/drawing/keys.ts';

const press = (key: string, more: Partial<KeyPressed> = {}): KeyPressed => ({
  key,
  shiftKey: false,
  ctrlKey: false,
  altKey: false,
  metaKey: false,
  target: null,
  ...more,
});
const onMap = { waiting: false, onMap: true, units: 'metric' } as const;

describe('a key pressed on the drawing', () => {
  test('an arrow nudges by 10 cm, with Shift by 1 cm; by 4 in and ½ in where feet are chosen', () => {
    const inFeet = { ...onMap, units: 'imperial' } as const;
    expect(keyMeaning(press('ArrowLeft'), inFeet)).toEqual({ does: 'nudge', by: [-4 * 0.0254, 0] });
    expect(keyMeaning(press('ArrowUp', { shiftKey: true }), inFeet)).toEqual({ does: 'nudge', by: [0, 0.0254 / 2] });
    expect(keyMeaning(press('ArrowLeft'), onMap)).toEqual({ does: 'nudge', by: [-0.1, 0] });
    expect(keyMeaning(press('ArrowUp', { shiftKey: true }), onMap)).toEqual({ does: 'nudge', by: [0, 0.01] });
  });

  test('an arrow on a button beside the paper is the page’s', () => {
    expect(keyMeaning(press('ArrowLeft'), { ...onMap, onMap: false })).toBeNull();
  });

  test('a letter takes up its tool, but not while someone types, and not with Ctrl', () => {
    expect(keyMeaning(press('w'), onMap)).toEqual({ does: 'tool', tool: 'wall' });
    expect(keyMeaning(press('w', { target: { tagName: 'INPUT' } as unknown as EventTarget }), onMap)).toBeNull();
    expect(keyMeaning(press('c', { ctrlKey: true }), onMap)).toBeNull();
  });

  test('Enter places what is aimed at; with Shift it ends the shape', () => {
    expect(keyMeaning(press('Enter'), { ...onMap, waiting: true })).toEqual({ does: 'put' });
    expect(keyMeaning(press('Enter', { shiftKey: true }), { ...onMap, waiting: true })).toEqual({ does: 'finish' });
    expect(keyMeaning(press('Enter'), onMap)).toBeNull();
  });

  test('Escape always leads out', () => {
    expect(keyMeaning(press('Escape', { target: { tagName: 'INPUT' } as unknown as EventTarget }), onMap)).toEqual({
      does: 'escape',
    });
  });
});
