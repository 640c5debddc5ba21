import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../../../../engine/plan/check/check.ts';
import { demoPlan } from '../../../../../engine/plan/demos/index.ts';
import type { Feature, Plan, Site, YardOption } from '../../../../../engine/plan/types.ts';
import { wall } from '../../../../parts/drawn.ts';

const base = demoPlan('courtyard');

/** What check says of an empty 11 by 8.5 m yard with these things in it. */
function saysOf(features: readonly Feature[], more: Partial<Plan> = {}): string[] {
  const problems = checkPlan({ ...base, journal: [], options: [], features, ...more });
  for (const { severity } of problems) expect(severity).toBe('warning');
  return problems.map(({ pointer, message }) => `${pointer} ${message}`);
}

const plant = (at: [number, number], height = 1): Feature => ({ id: 'p', kind: 'plant', at, height, spread: 0.6 });
const roof: Feature = {
  id: 'c',
  kind: 'canopy',
  center: [5, 4],
  length: 3,
  width: 3,
  height: 2,
  rise: -0.6,
  density: 0.5,
};

describe('the sanity walk', () => {
  it('the demo yards pass it', () => {
    expect(checkPlan(base)).toEqual([]);
    expect(checkPlan(demoPlan('lane'))).toEqual([]);
  });

  it('a plant taller than the cloth just over it, not than the cloth elsewhere', () => {
    // The cloth falls from 2.0 m at the back to 1.4 m in front: 1.5 m at y = 5, 1.9 m at y = 3.
    expect(saysOf([roof, plant([5, 5], 1.7)])).toEqual([
      '/features/1 Plant "p" is 1.7 m high, taller than Canopy "c" over it, which hangs at 1.50 m there.',
    ]);
    expect(saysOf([roof, plant([5, 3], 1.7)])).toEqual([]);
    expect(saysOf([roof, plant([8, 5], 1.7)])).toEqual([]);
    expect(
      saysOf([
        roof,
        {
          id: 'b',
          kind: 'bed',
          outline: [
            [4, 3],
            [6, 3],
            [6, 5.4],
            [4, 5.4],
          ],
          plantHeight: 1.5,
        },
      ])[0],
    ).toContain('Bed "b" is 1.5 m high');
  });

  it('in an option too: a roof tried, or a pot moved under one', () => {
    const tried: YardOption[] = [{ id: 'A', adds: [roof] }];
    expect(saysOf([plant([5, 5], 1.7)], { options: tried })).toHaveLength(1);
    expect(saysOf([roof, plant([9, 5], 1.7)], { options: [{ id: 'A', moves: { p: [5, 5] } }] })).toHaveLength(1);
  });

  it('a wall of 18 m was meant to be 1.8 m', () => {
    expect(
      saysOf([
        wall(
          'w',
          [
            [0, 0],
            [5, 0],
          ],
          { height: 18 },
        ),
      ]),
    ).toEqual(['/features/0/height Wall "w" is 18 m high; did you mean 1.8 m?']);
    expect(
      saysOf([
        wall(
          'w',
          [
            [0, 0],
            [5, 0],
          ],
          { height: 4 },
        ),
      ]),
    ).toEqual(['/features/0/height Wall "w" is 4 m high; is that right?']);
    expect(
      saysOf([
        wall(
          'w',
          [
            [0, 0],
            [5, 0],
          ],
          { height: 3.9 },
        ),
      ]),
    ).toEqual([]);
  });

  it('a slit between two walls, but neither a joint nor a gate', () => {
    const along = (gap: number) =>
      saysOf([
        wall('a', [
          [0, 0],
          [4, 0],
        ]),
        wall('b', [
          [4 + gap, 0],
          [9, 0],
        ]),
      ]);
    expect(along(0.2)).toEqual([
      '/features/0/path Wall "a" ends 0.20 m short of wall "b"; sun comes through the slit.',
    ]);
    expect(along(0)).toEqual([]);
    expect(along(0.04)).toEqual([]);
    expect(along(0.9)).toEqual([]);
    // Against the face of a wall its half thickness counts, against a house the house's own face.
    expect(
      saysOf([
        wall('a', [
          [0, 0],
          [4, 0],
        ]),
        wall('b', [
          [4.3, -3],
          [4.3, 3],
        ]),
      ])[0],
    ).toContain('0.20 m short');
    expect(
      saysOf([
        wall('a', [
          [0, 1],
          [4, 1],
        ]),
        {
          id: 'h',
          kind: 'building',
          outline: [
            [4.15, 0],
            [6, 0],
            [6, 3],
            [4.15, 3],
          ],
          height: 3,
        },
      ])[0],
    ).toContain('0.15 m short of building "h"');
    expect(
      saysOf([
        wall('a', [
          [0, 0],
          [4, 0],
          [4, 3],
          [0, 3],
          [0, 0.2],
        ]),
      ])[0],
    ).toContain('its own other end');
    expect(
      saysOf([
        wall('a', [
          [0, 0],
          [4, 0],
          [4, 3],
          [0, 3],
          [0, 0],
        ]),
      ]),
    ).toEqual([]);
  });

  it('beds and plants outside the boundary; houses, trees and eyes may be there', () => {
    expect(saysOf([plant([12, 4])])).toEqual(['/features/0/at Plant "p" stands outside the boundary.']);
    expect(
      saysOf([
        {
          id: 'b',
          kind: 'bed',
          outline: [
            [9, 1],
            [12, 1],
            [12, 2],
            [9, 2],
          ],
          plantHeight: 0.3,
        },
      ])[0],
    ).toContain('reaches outside');
    expect(saysOf([plant([11, 4])])).toEqual([]);
    expect(
      saysOf([
        { id: 't', kind: 'tree', at: [14, 4], height: 6, crownWidth: 3, crownBase: 2, openness: 0.3 },
        {
          id: 'h',
          kind: 'building',
          outline: [
            [12, 0],
            [16, 0],
            [16, 3],
          ],
          height: 4,
        },
        { id: 'e', kind: 'eye', path: [[13, 4]], height: 1.6 },
      ]),
    ).toEqual([]);
  });

  it('an eye inside the yard', () => {
    expect(
      saysOf([
        {
          id: 'e',
          kind: 'eye',
          path: [
            [13, 4],
            [5, 4],
          ],
          height: 1.6,
        },
      ])[0],
    ).toContain('looks from inside the yard');
  });

  it('a trunk wider than its crown', () => {
    // Radius 0.03 · height: a tree of 10 m has a trunk of 0.6 m.
    const palm = (crownWidth: number): Feature => ({
      id: 't',
      kind: 'tree',
      at: [5, 4],
      height: 10,
      crownWidth,
      crownBase: 9,
      openness: 0.4,
    });
    expect(saysOf([palm(0.59)])[0]).toContain('trunk, taken as 0.60 m wide');
    expect(saysOf([palm(0.61)])).toEqual([]);
  });

  it('overlapping buildings, a bed under one, a plant inside one; a shared wall is none', () => {
    const house: Feature = {
      id: 'h',
      kind: 'building',
      outline: [
        [2, 2],
        [6, 2],
        [6, 6],
        [2, 6],
      ],
      height: 3,
    };
    const other: Feature = {
      id: 'o',
      kind: 'building',
      outline: [
        [6, 2],
        [9, 2],
        [9, 6],
        [6, 6],
      ],
      height: 3,
    };
    expect(saysOf([house, other])).toEqual([]);
    expect(
      saysOf([
        house,
        {
          ...other,
          outline: [
            [5.9, 2],
            [9, 2],
            [9, 6],
            [5.9, 6],
          ],
        } as Feature,
      ]),
    ).toEqual(['/features/1/outline Building "o" and building "h" overlap.']);
    expect(
      saysOf([
        house,
        {
          id: 'b',
          kind: 'bed',
          outline: [
            [5, 5],
            [7, 5],
            [7, 7],
            [5, 7],
          ],
          plantHeight: 0.3,
        },
      ])[0],
    ).toContain('lies partly under building "h"');
    expect(saysOf([house, plant([3, 3])])[0]).toContain('stands inside building "h"');
  });

  it('a time zone whose clocks stand nowhere near the sun of the longitude', () => {
    const at = (longitude: number, timeZone: string): string[] =>
      saysOf([], { site: { ...base.site, longitude, timeZone } });
    expect(at(-4.8, 'Asia/Tokyo')).toEqual([
      '/site/timeZone The clocks of Asia/Tokyo are 9 h ahead of UTC, but at longitude -4.8 the sun is 0.3 h behind ' +
        'it: every hour here is wrong if one of them is.',
    ]);
    expect(at(4.8, 'America/Phoenix')[0]).toContain('7 h behind UTC');
    // As far from the sun as clocks are anywhere: Kashgar by Beijing's time, Galicia, and both sides of the date line.
    expect(at(76, 'Asia/Shanghai')).toEqual([]);
    expect(at(-9.2, 'Europe/Madrid')).toEqual([]);
    expect(at(-172, 'Pacific/Apia')).toEqual([]);
    expect(at(179, 'Pacific/Auckland')).toEqual([]);
    expect(at(-67, 'America/Argentina/Buenos_Aires')).toEqual([]);
  });

  it('a skyline of too few points, or with a gap of more than half the horizon', () => {
    const skyline = (...azimuths: number[]): Partial<Plan> => ({
      site: { ...base.site, skyline: azimuths.map((azimuth) => ({ azimuth, altitude: 3 })) } satisfies Site,
    });
    expect(saysOf([], skyline(40))[0]).toContain('only one point');
    expect(saysOf([], skyline(40, 220))[0]).toContain('only two points');
    expect(saysOf([], skyline(350, 10, 169))[0]).toContain('gap of 181 degrees');
    expect(saysOf([], skyline(350, 10, 171))).toEqual([]);
    // Round over north, too.
    expect(saysOf([], skyline(10, 100, 175))[0]).toContain('gap of 195 degrees');
  });

  it('numbers that do not go together: heatwave, latitude, a limit, the journal', () => {
    expect(saysOf([], { climate: { ...base.climate, heatwaveHigh: 36 } })[0]).toContain('below July');
    expect(saysOf([], { site: { ...base.site, latitude: 78 } })[0]).toContain('swapped');
    expect(
      saysOf([], {
        plants: [
          {
            id: 'm',
            name: 'M',
            sunHours: [2, 4],
            heatLimit: 30,
            limitOf: 'leaf',
            afternoonShade: 'no',
            leafWidth: 0.03,
          },
        ],
      })[0],
    ).toContain('35 to 65 °C');
    expect(saysOf([], { journal: base.journal })[0]).toContain('speaks of "lemon", which is not drawn');
    expect(saysOf([{ id: 'r', kind: 'reading', at: [1, 1], when: '2026-07-01T15:00', pair: 'gone' }])[0]).toContain(
      '/features/0/pair',
    );
  });
});
