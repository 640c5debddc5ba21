/** Drawings written by programs of somebody else: dxf-writer 1.18.4, and @turf/helpers 7.4.0 for GeoJSON. */

import { lineString, point, polygon } from '@turf/helpers';
import Drawing from 'dxf-writer';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { yardDxf } from '../../../../engine/output/drawing/yard-dxf.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import { withOutlines } from '../../../../engine/plan/file/outlines/put-in.ts';
import type { OutlineKind } from '../../../../engine/plan/file/outlines/types.ts';
import { lonLatOf, planPointOf } from '../../../../engine/plan/geometry/lon-lat.ts';
import type { Feature, PlanPoint } from '../../../../engine/plan/types.ts';
import { mustBeOk } from '../../../parts/outcome.ts';

const plan = demoPlan('courtyard');

function putIn(text: string, kind: OutlineKind, corner?: PlanPoint): { added: readonly Feature[]; notes: string } {
  const result = withOutlines(plan, text, kind, corner);
  mustBeOk(result);
  const added = result.plan.features.filter(({ id }) => result.ids.includes(id));
  return { added, notes: result.notes.join(' ') };
}

function refusal(text: string, kind: OutlineKind): string {
  const result = withOutlines(plan, text, kind);
  return result.ok ? 'taken' : result.problems[0].message;
}

function drawing(units: 'Meters' | 'Millimeters', scale: number): string {
  const dxf = new Drawing();
  dxf.setUnits(units);
  dxf.addLayer('shed', Drawing.ACI.GREEN, 'CONTINUOUS').setActiveLayer('shed');
  const corners: [number, number][] = [
    [2, 3],
    [5, 3],
    [5, 5],
    [2, 5],
  ];
  dxf.drawPolyline(
    corners.map(([x, y]) => [x * scale, y * scale]),
    true,
  );
  dxf.drawLine(0, 1 * scale, 4 * scale, 1 * scale);
  dxf.drawCircle(1 * scale, 1 * scale, 0.5 * scale);
  return dxf.toDxfString();
}

describe('outlines out of a drawing', () => {
  test.each([
    ['Meters', 1],
    ['Millimeters', 1000],
  ] as const)('a DXF in %s gives walls, buildings and beds in metres, and says what stayed out', (units, scale) => {
    const ring = [
      [2, 3],
      [5, 3],
      [5, 5],
      [2, 5],
    ];
    const building = putIn(drawing(units, scale), 'building');
    expect(building.added).toEqual([
      expect.objectContaining({ kind: 'building', name: 'shed', outline: ring, how: { height: { by: 'guess' } } }),
    ]);
    expect(building.notes).toContain('2 things of the drawing could not be a building');
    const walls = putIn(drawing(units, scale), 'wall').added;
    expect(walls.map((wall) => wall.kind === 'wall' && wall.path)).toEqual([
      [...ring, ring[0]],
      [
        [0, 1],
        [4, 1],
      ],
    ]);
    expect(putIn(drawing(units, scale), 'bed', [10, 20]).added[0]).toMatchObject({
      outline: [
        [10, 20],
        [13, 20],
        [13, 22],
        [10, 22],
      ],
    });
  });

  test('a GeoJSON on the globe comes back to where it lies on the plan, and one in metres stays', () => {
    const ring: PlanPoint[] = [
      [2, 3],
      [5, 3],
      [5, 5.5],
      [2, 3],
    ];
    const features = [
      polygon([ring.map((corner) => [...lonLatOf(plan, corner)])], { name: 'Bed by the well' }),
      point([...lonLatOf(plan, [1, 1])]),
    ];
    const onGlobe = { type: 'FeatureCollection', features };
    const { added, notes } = putIn(JSON.stringify(onGlobe), 'bed');
    expect(added).toEqual([
      expect.objectContaining({ kind: 'bed', name: 'Bed by the well', outline: ring.slice(0, -1) }),
    ]);
    expect(notes).toContain('1 thing of the drawing could not be a bed');
    const metres = putIn(
      JSON.stringify(
        lineString([
          [0, 4.25],
          [3, 4.25],
        ]),
      ),
      'wall',
    ).added;
    expect(metres[0]).toMatchObject({
      path: [
        [0, 4.25],
        [3, 4.25],
      ],
    });
  });

  test('the globe and back is the same point to a tenth of a millimetre', () => {
    const metres = fc.double({ min: -500, max: 500, noNaN: true });
    fc.assert(
      fc.property(
        metres,
        metres,
        fc.integer({ min: -65, max: 65 }),
        fc.integer({ min: -180, max: 180 }),
        (x, y, latitude, upBearing) => {
          const there = { ...plan, site: { ...plan.site, latitude, upBearing } };
          const [backX, backY] = planPointOf(there, lonLatOf(there, [x, y]));
          expect(Math.hypot(backX - x, backY - y)).toBeLessThan(2e-4);
        },
      ),
      { seed: 12, numRuns: 200 },
    );
  });

  test('what this project draws it can take in again', () => {
    const buildings = plan.features.flatMap((feature) => (feature.kind === 'building' ? [feature.outline] : []));
    const outlines = putIn(yardDxf(plan), 'building').added.map(
      (feature) => feature.kind === 'building' && feature.outline,
    );
    expect(outlines).toEqual(expect.arrayContaining(buildings.map((outline) => outline.map((corner) => [...corner]))));
  });

  test('a drawing with an origin of its own is set on the yard’s corner, and that is said', () => {
    const far = lineString([
      [451000, 4190000],
      [451003, 4190000],
    ]);
    const { added, notes } = putIn(JSON.stringify(far), 'wall');
    expect(added[0]).toMatchObject({
      path: [
        [0, 0],
        [3, 0],
      ],
    });
    expect(notes).toContain('lay far from the yard');
  });

  test('refuses in one sentence what it cannot read', () => {
    expect(refusal('{"type": "Feature', 'wall')).toContain('cut off');
    expect(refusal('{}', 'wall')).toContain('no GeoJSON');
    expect(refusal('hello', 'wall')).toMatch(/ENTITIES|group code/);
    expect(refusal('0\nSECTION\n2\nHEADER\n', 'wall')).toContain('no section ENTITIES');
    expect(refusal(JSON.stringify(point([1, 1])), 'wall')).toContain('no line');
    expect(
      refusal(
        JSON.stringify(
          lineString([
            [0, 0],
            [1, 0],
          ]),
        ),
        'bed',
      ),
    ).toContain('no closed outline');
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(refusal(text, 'wall')).toMatch(/\.$|taken/);
      }),
      { seed: 3, numRuns: 200 },
    );
  });
});
