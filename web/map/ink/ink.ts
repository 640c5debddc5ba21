import type { Layer } from 'leaflet';
import { boundsOf, centroid, eavesOf, opennessOf, potOf, trunkRadius, canopyEdge } from '../../../engine/index.ts';
import type { Canopy, Feature, FeatureOf, PlanPoint } from '../../../engine/index.ts';
import { centreLine, circle, footprint, outset } from '../drawing/outline.ts';
import { toLatLng, toLatLngs } from '../leaflet/lat-lng.ts';
import { circleMarker, polygon, polyline } from '../leaflet/leaflet.ts';
import { alongPath, crownEdge, stipple } from './ink-points.ts';
import { exact, type PaneName, type Renderers } from './panes.ts';
import { label, symbol } from './paper-marks.ts';
import { weaveId } from './Patterns.tsx';

/**
 * Solid shapes with one outline however many rings overlap: outline first, paper over its inner half, then the hatch.
 */
function solid(
  renderers: Renderers,
  pane: PaneName,
  rings: readonly (readonly PlanPoint[])[],
  ink: string,
  pattern: string,
): Layer[] {
  const shape = rings.map((ring) => [toLatLngs(ring)]);
  return [
    polygon(shape, exact(renderers, pane, `ink ${ink}`)),
    polygon(shape, exact(renderers, pane, `fill ${ink}`, { stroke: false, fill: true, fillRule: 'nonzero' })),
    polygon(
      shape,
      exact(renderers, pane, 'pattern', {
        stroke: false,
        fill: true,
        fillOpacity: 1,
        fillColor: `url(#${pattern})`,
        fillRule: 'nonzero',
      }),
    ),
  ];
}

/** Whether any number of a thing is guessed: its edge is dashed. */
export function isGuessed(feature: Pick<Feature, 'how'>): boolean {
  return Object.values(feature.how ?? {}).some(({ by }) => by === 'guess');
}

/** One feature in ink: the layers that draw it, from below to above. */
export function inkOf(feature: Feature, renderers: Renderers): Layer[] {
  const guess = isGuessed(feature) ? ' guessed' : '';
  switch (feature.kind) {
    case 'wall':
      return solid(
        renderers,
        'solids',
        footprint(feature),
        `wall${guess}`,
        opennessOf(feature) > 0 ? 'hatch-open' : 'hatch-wall',
      );
    case 'hedge':
      return solid(renderers, 'solids', footprint(feature), `hedge${guess}`, 'leaves');
    case 'building':
      return building(feature, renderers, guess);
    case 'tree':
      return tree(feature, renderers, guess);
    case 'plant':
      return plant(feature, renderers, guess);
    case 'bed':
      return [
        polygon(
          toLatLngs(feature.outline),
          exact(renderers, 'ground', `ink bed${guess}`, { fill: true, fillOpacity: 1, fillColor: 'url(#rows)' }),
        ),
        ...label(feature, centroid(feature.outline), 'on'),
      ];
    case 'keepout':
      return [
        polygon(
          toLatLngs(feature.outline),
          exact(renderers, 'ground', `ink keepout${guess}`, { fill: true, fillOpacity: 1, fillColor: 'url(#crosses)' }),
        ),
      ];
    case 'ground':
      return [
        polygon(
          toLatLngs(feature.outline),
          exact(renderers, 'ground', `ink surface${feature.steps ? ' raised' : ''}${guess}`, {
            fill: true,
            fillOpacity: 1,
            fillColor: 'url(#surface)',
          }),
        ),
        ...label(feature, centroid(feature.outline), 'on'),
      ];
    case 'canopy':
      return canopy(feature, renderers, guess);
    case 'screen':
      return screen(feature, renderers, guess);
    case 'eye':
      return eye(feature, renderers, guess);
    case 'reading':
      return [symbol(feature.at, 'reading-mark', ['M8 1.5 14.5 8 8 14.5 1.5 8Z', 'M8 5v4.5', 'M8 11.4v.2'])];
  }
}

function building(feature: FeatureOf<'building'>, renderers: Renderers, guess: string): Layer[] {
  const eaves = eavesOf(feature);
  const drip =
    eaves > 0 ? [polygon(toLatLngs(outset(feature.outline, eaves)), exact(renderers, 'solids', 'ink drip-line'))] : [];
  return [
    ...drip,
    ...solid(renderers, 'solids', footprint(feature), `building${guess}`, 'hatch-building'),
    ...label(feature, centroid(feature.outline), 'on'),
  ];
}

function tree(feature: FeatureOf<'tree'>, renderers: Renderers, guess: string): Layer[] {
  const radius = feature.crownWidth / 2;
  const dots = stipple(feature.at, radius, feature.openness).map((dot) => [toLatLng(dot), toLatLng(dot)]);
  return [
    polygon(toLatLngs(crownEdge(feature.at, radius)), exact(renderers, 'over', `ink crown${guess}`, { fill: true })),
    polyline(dots, exact(renderers, 'over', 'stipple')),
    polygon(
      toLatLngs(circle(feature.at, Math.max(0.05, trunkRadius(feature.height)), 16)),
      exact(renderers, 'over', 'trunk', { stroke: false, fill: true, fillOpacity: 1 }),
    ),
    ...label(feature, feature.at, 'beside', [radius, radius]),
  ];
}

function plant(feature: FeatureOf<'plant'>, renderers: Renderers, guess: string): Layer[] {
  const radius = feature.spread / 2;
  const pot = potOf(feature);
  const potEdge = feature.container
    ? [
        polygon(
          toLatLngs(circle(feature.at, pot.width / 2, 32)),
          exact(renderers, 'solids', 'ink pot', { fill: true, fillOpacity: 1 }),
        ),
        polygon(toLatLngs(circle(feature.at, (pot.width / 2) * 0.78, 32)), exact(renderers, 'solids', 'ink pot-rim')),
      ]
    : [
        circleMarker(toLatLng(feature.at), {
          ...exact(renderers, 'solids', 'stem', { stroke: false, fill: true, fillOpacity: 1 }),
          radius: 2.2,
        }),
      ];
  return [
    polygon(toLatLngs(crownEdge(feature.at, radius)), exact(renderers, 'solids', `ink plant${guess}`, { fill: true })),
    ...potEdge,
    ...label(feature, feature.at, 'beside', [radius, radius]),
  ];
}

function canopy(feature: Canopy, renderers: Renderers, guess: string): Layer[] {
  const [ring] = footprint(feature);
  const drops = (feature.drops ?? []).map(({ side }) =>
    polyline(
      toLatLngs(canopyEdge(feature, side).map(([x, y]): PlanPoint => [x, y])),
      exact(renderers, 'over', 'ink drop'),
    ),
  );
  const [frontLeft, , , frontRight] = ring;
  const standing = feature.onWall === true ? [frontLeft, frontRight] : ring;
  const posts = standing.map((corner) =>
    circleMarker(toLatLng(corner), {
      ...exact(renderers, 'over', 'ink post', { fill: true, fillOpacity: 1 }),
      radius: 3,
    }),
  );
  const { maxX, maxY } = boundsOf(ring);
  const weave = {
    fill: true,
    fillOpacity: 1,
    fillColor: `url(#${weaveId(feature.measuredDensity ?? feature.density)})`,
  };
  return [
    polygon(toLatLngs(ring), exact(renderers, 'over', `ink cloth${guess}`, weave)),
    ...drops,
    ...posts,
    ...label(feature, feature.center, 'beside', [maxX - feature.center[0], maxY - feature.center[1]]),
  ];
}

/** A standing cloth: its line, and the threads that cross it, closer the denser the cloth. */
function screen(feature: FeatureOf<'screen'>, renderers: Renderers, guess: string): Layer[] {
  const density = feature.measuredDensity ?? feature.density;
  const threads = alongPath(feature.path, 0.08 + 0.3 * (1 - density)).map(({ at, ux, uy }) =>
    toLatLngs([
      [at[0] - 0.07 * (ux - uy), at[1] - 0.07 * (uy + ux)],
      [at[0] + 0.07 * (ux - uy), at[1] + 0.07 * (uy + ux)],
    ]),
  );
  return [
    polyline(threads, exact(renderers, 'over', 'ink thread')),
    polyline(toLatLngs(feature.path), exact(renderers, 'over', `ink screen${guess}`)),
  ];
}

function eye(feature: FeatureOf<'eye'>, renderers: Renderers, guess: string): Layer[] {
  const { path } = feature;
  const ends = path.length === 1 ? [path[0]] : [path[0], path[path.length - 1]];
  return [
    polyline(toLatLngs(path), exact(renderers, 'ground', `ink eye${guess}`)),
    ...ends.map((at) =>
      symbol(at, 'eye-mark', ['M8 1.5a6.5 6.5 0 1 0 .01 0Z', 'M5.7 6v1.4', 'M10.3 6v1.4', 'M5.4 10.2q2.6 2 5.2 0']),
    ),
    ...label(feature, ends[0], 'beside', [0, 0]),
  ];
}

/** The line along which a thing is chosen or focused, in the drawing pane. */
export function emphasisOf(feature: Feature, renderers: Renderers, className: string): Layer[] {
  const rings = footprint(feature);
  if (rings.length > 0) return rings.map((ring) => polygon(toLatLngs(ring), exact(renderers, 'drawing', className)));
  const line = centreLine(feature);
  if (line.length > 1) return [polyline(toLatLngs(line), exact(renderers, 'drawing', className))];
  return [circleMarker(toLatLng(line[0]), { ...exact(renderers, 'drawing', className), radius: 12 })];
}
