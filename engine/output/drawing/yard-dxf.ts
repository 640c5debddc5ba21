/** The yard from above as DXF: a layer for each kind of thing. */

import { canopyRing } from '../../plan/geometry/cloth-shapes.ts';
import { openRing } from '../../plan/geometry/shapes.ts';
import type { Feature, Plan } from '../../plan/types.ts';
import { shownName } from '../../plan/words/shown-name.ts';
import { dxfText } from './dxf.ts';
import type { DxfEntity } from './dxf.ts';

const LETTERS = 0.2;

export function yardDxf({ site, features }: Plan): string {
  return dxfText([
    { kind: 'polyline', layer: 'property line', points: openRing(site.boundary), closed: true },
    ...features.flatMap(entitiesOf),
  ]);
}

function entitiesOf(feature: Feature): DxfEntity[] {
  const layer = feature.kind;
  const name = (at: readonly [number, number]): DxfEntity[] =>
    feature.name === undefined
      ? []
      : [{ kind: 'text', layer: 'names', at, height: LETTERS, text: shownName(feature.name) }];
  switch (feature.kind) {
    case 'wall':
    case 'hedge':
    case 'screen':
    case 'eye':
      return [{ kind: 'polyline', layer, points: feature.path, closed: false }, ...name(feature.path[0])];
    case 'building':
    case 'bed':
    case 'keepout':
    case 'ground': {
      const points = openRing(feature.outline);
      return [{ kind: 'polyline', layer, points, closed: true }, ...name(points[0])];
    }
    case 'tree':
      return [{ kind: 'circle', layer, center: feature.at, radius: feature.crownWidth / 2 }, ...name(feature.at)];
    case 'plant':
      return [{ kind: 'circle', layer, center: feature.at, radius: feature.spread / 2 }, ...name(feature.at)];
    case 'canopy': {
      const points = canopyRing(feature);
      return [{ kind: 'polyline', layer, points, closed: true }, ...name(points[0])];
    }
    case 'reading':
      return [];
  }
}
