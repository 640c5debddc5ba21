import { describe, expect, test } from 'vitest';
import { cautionsFor } from '../../../../engine/frame/work/cautions.ts';
import type { RiskyTask } from '../../../../engine/frame/work/types.ts';
import { built, roof, screen } from '../yard.ts';

const ids = (...tasks: RiskyTask[]): string[] => cautionsFor(tasks).map((caution) => caution.id);

describe('cautions', () => {
  test('whoever is told to build is told all of these', () => {
    for (const id of [
      'overhead-line',
      'shared-wall',
      'children',
      'permission',
      'engineer',
      'wind-orientation',
      'cloth-off',
      'anchors',
      'ladder',
      'heat',
      'cutting',
      'pvc',
      'fire',
      'paths',
    ]) {
      expect(ids('build')).toContain(id);
    }
  });

  test('digging brings the enquiry about buried lines, climbing the ladder and the line above, spraying the label', () => {
    expect(ids('dig')).toEqual(expect.arrayContaining(['buried-lines', 'shared-wall', 'heat']));
    expect(ids('climb')).toEqual(expect.arrayContaining(['overhead-line', 'ladder', 'heat']));
    expect(ids('spray')).toEqual(expect.arrayContaining(['spray', 'heat']));
    expect(ids('winter')).toEqual(['winter-cover']);
    expect(ids('heat')).toEqual(['heat']);
  });

  test('stops come first, and only they say stop', () => {
    const stops = cautionsFor(['build', 'dig', 'spray']).map((caution) => caution.stop);
    expect(stops.indexOf(false)).toBe(stops.lastIndexOf(true) + 1);
    for (const caution of cautionsFor(['build', 'dig', 'spray', 'winter']))
      expect(caution.text.startsWith('Stop')).toBe(caution.stop);
  });

  test('the wording of every wind figure says what it is not', () => {
    const { wording } = built(roof).uplift;
    for (const words of [
      'Orientation only',
      'several times higher',
      'not a structural design',
      'no permission to build',
      'ASCE 7',
      'EN 1991-1-4',
      'AS/NZS 1170.2',
      'licensed engineer',
    ])
      expect(wording).toContain(words);
  });

  test('measures are told in the units of the yard alone', () => {
    const all = [
      'build',
      'dig',
      'floor',
      'concrete',
      'climb',
      'cut',
      'wind',
      'heat',
      'cloth',
      'drape',
      'spray',
      'winter',
    ] as const;
    const told = (units: 'metric' | 'imperial'): string =>
      cautionsFor(all, { units })
        .map(({ text }) => text)
        .join(' ');
    const metric = /\d (m|m²|mm|cm|°C)(?!\w)/;
    const imperial = /\d (ft|ft²|in(?! the)|°F)(?!\w)/;
    expect(told('metric')).toMatch(metric);
    expect(told('metric')).not.toMatch(imperial);
    expect(told('imperial')).toMatch(imperial);
    expect(told('imperial')).not.toMatch(metric);
    // 3 m are 9 ft 10 in and 4 m 13 ft 1 in; 30 °C are 86 °F; 10 m² are 107.6 ft².
    for (const words of ['within 10 ft of it', 'over 13 ft', 'above about 86 °F', 'over 108 ft²'])
      expect(told('imperial')).toContain(words);
    expect(built(roof, { units: 'imperial' }).uplift.wording).toContain('about 108 ft²');
  });

  test('no sheet calls anything safe', () => {
    for (const thing of [roof, screen, { ...roof, frame: { soil: 'paving' } }])
      expect(JSON.stringify(built(thing))).not.toMatch(/\bsafe\b/i);
  });

  test('a sheet carries the cautions of everything it tells people to do', () => {
    const all = ids('build', 'dig', 'concrete', 'climb', 'cut', 'wind', 'heat', 'cloth', 'winter');
    const carried = (changes: Partial<typeof roof>): string[] =>
      built({ ...roof, ...changes }).cautions.map((caution) => caution.id);
    // Footings by their weight alone; 2.3 m is out of hands' reach, and no fleece is thrown over it.
    expect(carried({})).toEqual(all.filter((id) => id !== 'anchors' && id !== 'winter-cover'));
    // 1.8 m is not; a stake is pull-tested.
    expect(carried({ height: 1.8, frame: { soil: 'garden', anchor: 'stakes', gust: 10 } })).toEqual(
      all.filter((id) => id !== 'ladder' && id !== 'cement'),
    );
    // On paving nothing is dug or driven; it may be a roof's, whose skin is not drilled.
    expect(carried({ frame: { soil: 'paving' } })).toEqual(
      ids('build', 'floor', 'climb', 'cut', 'wind', 'heat', 'cloth').filter((id) => id !== 'anchors'),
    );
    expect(ids('floor')).toEqual(['flat-roof']);
    expect(ids('concrete')).toEqual(['cement']);
    expect(built({ ...roof, frame: { soil: 'paving' } }).cautions.map(({ id }) => id)).not.toContain('cement');
  });
});
