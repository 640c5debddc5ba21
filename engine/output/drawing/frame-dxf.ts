/** A frame as DXF in three dimensions: the middle line of every tube, in the frame's own axes. */

import type { BuildSheet } from '../../frame/types.ts';
import { dxfText } from './dxf.ts';

const LETTERS = 0.1;

export function frameDxf({ drawing }: BuildSheet): string {
  return dxfText([
    ...drawing.tubes.map(({ kind, from, to }) => ({ kind: 'line' as const, layer: kind, from, to })),
    ...drawing.cloths.map(({ corners }) => ({
      kind: 'polyline' as const,
      layer: 'cloth',
      points: corners.map(([x, y]) => [x, y] as const),
      closed: true,
    })),
    ...drawing.posts.map(({ id, foot }) => ({
      kind: 'text' as const,
      layer: 'names',
      at: foot,
      height: LETTERS,
      text: id,
    })),
  ]);
}
