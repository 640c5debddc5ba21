/** Held by a reader of somebody else’s: dxf-parser 1.1.2. */

import DxfParser from 'dxf-parser';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dxfText } from '../../../../engine/output/drawing/dxf.ts';
import { frameDxf } from '../../../../engine/output/drawing/frame-dxf.ts';
import { yardDxf } from '../../../../engine/output/drawing/yard-dxf.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import { openRing } from '../../../../engine/plan/geometry/shapes.ts';
import { anyFrame, built } from '../../frame/yard.ts';

interface Place {
  readonly x: number;
  readonly y: number;
  readonly z?: number;
}
interface Read {
  readonly type: string;
  readonly layer: string;
  readonly vertices?: readonly Place[];
  readonly shape?: boolean;
  readonly center?: Place;
  readonly radius?: number;
  readonly text?: string;
}

function read(text: string) {
  const drawing = new DxfParser().parseSync(text);
  if (drawing === null) throw new Error('no drawing');
  return { header: drawing.header, entities: drawing.entities as unknown as readonly Read[] };
}

describe('a DXF opened in another program', () => {
  test.each(['courtyard', 'lane'] as const)('has every outline and crown of the %s in metres, on its layer', (name) => {
    const plan = demoPlan(name);
    const { header, entities } = read(yardDxf(plan));
    expect(header.$INSUNITS).toBe(6);
    const on = (layer: string): readonly Read[] => entities.filter((entity) => entity.layer === layer);
    const buildings = plan.features.flatMap((feature) => (feature.kind === 'building' ? [feature] : []));
    expect(on('BUILDING').map(({ vertices, shape }) => [vertices?.map(({ x, y }) => [x, y]), shape])).toEqual(
      buildings.map(({ outline }) => [openRing(outline).map((point) => [...point]), true]),
    );
    const plants = plan.features.flatMap((feature) => (feature.kind === 'plant' ? [feature] : []));
    expect(on('PLANT').map(({ center, radius }) => [center?.x, center?.y, radius])).toEqual(
      plants.map(({ at, spread }) => [...at, spread / 2]),
    );
    expect(on('PROPERTY_LINE')[0].vertices).toHaveLength(openRing(plan.site.boundary).length);
  });

  test('has the middle line of every tube of a frame, in three dimensions', () => {
    fc.assert(
      fc.property(anyFrame, (thing) => {
        const sheet = built(thing);
        const lines = read(frameDxf(sheet)).entities.filter(({ type }) => type === 'LINE');
        expect(lines).toHaveLength(sheet.sockets.tubes);
        for (const [k, { vertices = [] }] of lines.entries()) {
          const { from, to } = sheet.drawing.tubes[k];
          for (const [end, point] of [from, to].entries()) {
            expect(vertices[end].x).toBeCloseTo(point[0], 4);
            expect(vertices[end].y).toBeCloseTo(point[1], 4);
            expect(vertices[end].z ?? 0).toBeCloseTo(point[2], 4);
          }
        }
      }),
      { seed: 77, numRuns: 10 },
    );
  });

  test('a person’s text stays text on one line, whatever is in it', () => {
    const text = '0\r\nEOF\r\nJosé’s 木';
    const { entities } = read(dxfText([{ kind: 'text', layer: 'names', at: [1, 2], height: 0.2, text }]));
    expect(entities).toHaveLength(1);
    expect(entities[0].text).toContain('0 EOF Jos');
  });
});
