import { effect } from '@preact/signals';
import type { Layer, Map as LeafletMap } from 'leaflet';
import type { Feature, PlanPoint } from '../../../engine/index.ts';
import { pin, selection } from '../../state/view.ts';
import { units } from '../../state/yard.ts';
import { chosenGrips } from '../drawing/chosen-grips.ts';
import { clothGripWords, unfolded } from '../drawing/cloth-grips.ts';
import { legText } from '../drawing/draft.ts';
import { drawnPlan } from '../drawing/drawn-plan.ts';
import { YARD_EDGE } from '../drawing/grips.ts';
import type { Grip } from '../drawing/grips.ts';
import { aim, draft, held, wantsPoint } from '../drawing/in-hand.ts';
import { rectangle } from '../drawing/tools.ts';
import { barredPosts } from '../laid-on/barred-posts.ts';
import { toLatLng, toLatLngs } from '../leaflet/lat-lng.ts';
import { LayerGroup, circleMarker, polygon, polyline } from '../leaflet/leaflet.ts';
import { emphasisOf } from './ink.ts';
import { refill } from './overlay-layers.ts';
import { exact } from './panes.ts';
import type { Renderers } from './panes.ts';
import { textMark } from './paper-marks.ts';

/** What is chosen, what can be taken hold of, and what is being drawn: the pencil over the ink. */
export function layDrawing(map: LeafletMap, renderers: Renderers): () => void {
  const chosen = new LayerGroup().addTo(map);
  const pencil = new LayerGroup().addTo(map);
  const stops = [
    effect(() =>
      refill(chosen, [
        ...barredPosts.value.map((at) => hollowPost(at, renderers)),
        ...chosenLayers(renderers),
        ...pinLayers(renderers),
      ]),
    ),
    effect(() => refill(pencil, pencilLayers(renderers))),
  ];
  return () => stops.forEach((stop) => stop());
}

function chosenLayers(renderers: Renderers): Layer[] {
  const { features, site } = drawnPlan.value;
  const ids = selection.value;
  const halo = features
    .filter(({ id }) => ids.includes(id))
    .flatMap((feature) => [
      ...emphasisOf(feature, renderers, 'chosen halo'),
      ...emphasisOf(feature, renderers, 'chosen'),
    ]);
  const edge = ids.includes(YARD_EDGE)
    ? [polygon(toLatLngs(site.boundary), exact(renderers, 'drawing', 'chosen'))]
    : [];
  const taken = chosenGrips();
  if (taken === null) return [...halo, ...edge];
  const { feature, grips } = taken;
  const hung =
    feature?.kind === 'canopy'
      ? unfolded(feature).map((line) => polyline(toLatLngs(line), exact(renderers, 'drawing', 'unfolded')))
      : [];
  return [
    ...halo,
    ...edge,
    ...hung,
    ...grips.map((grip) => gripMark(grip, renderers)),
    ...(feature ? grips.flatMap((grip) => gripWords(feature, grip)) : []),
  ];
}

/** A height, a tilt and a drop are not to be seen on a plan: their grips say them. */
function gripWords(feature: Feature, grip: Grip): Layer[] {
  const words = clothGripWords(feature, grip, units.value);
  return words === null ? [] : [textMark(grip.at, words, `map-number grip-words ${grip.part}`)];
}

function gripMark(grip: Grip, renderers: Renderers): Layer {
  const taken =
    held.value?.grip.part === grip.part && held.value.grip.at[0] === grip.at[0] && held.value.grip.at[1] === grip.at[1];
  const className = `grip ${grip.part.replace(' ', '-')}${taken ? ' taken' : ''}`;
  return circleMarker(toLatLng(grip.at), {
    ...exact(renderers, 'drawing', className, { fill: true, fillOpacity: 1 }),
    radius: grip.part === 'new corner' ? 4 : 6.5,
  });
}

function hollowPost(at: PlanPoint, renderers: Renderers): Layer {
  return circleMarker(toLatLng(at), {
    ...exact(renderers, 'drawing', 'post-barred', { fill: true, fillOpacity: 1 }),
    radius: 9,
  });
}

function pinLayers(renderers: Renderers): Layer[] {
  if (!pin.value) return [];
  return [
    circleMarker(toLatLng(pin.value), { ...exact(renderers, 'drawing', 'pin'), radius: 9 }),
    circleMarker(toLatLng(pin.value), {
      ...exact(renderers, 'drawing', 'pin-point', { fill: true, fillOpacity: 1, stroke: false }),
      radius: 2.5,
    }),
  ];
}

function pencilLayers(renderers: Renderers): Layer[] {
  const under = draft.value;
  const at = wantsPoint.value ? aim.value : null;
  const layers: Layer[] = [];
  if (at?.guide) layers.push(polyline(toLatLngs(at.guide), exact(renderers, 'drawing', 'guide')));
  if (under) layers.push(...draftLayers(under.points, at?.at ?? null, under, renderers));
  if (at)
    layers.push(
      circleMarker(toLatLng(at.at), {
        ...exact(renderers, 'drawing', `aim ${at.kind.replace(' ', '-')}`),
        radius: at.kind === 'corner' ? 8 : 5,
      }),
    );
  const leg = under && at ? legText(under, at.at, units.value) : null;
  if (leg && at) layers.push(textMark(at.at, leg, 'map-number leg'));
  return layers;
}

function draftLayers(
  points: readonly PlanPoint[],
  at: PlanPoint | null,
  { box, asking, tool }: NonNullable<typeof draft.value>,
  renderers: Renderers,
): Layer[] {
  const options = exact(renderers, 'drawing', 'pencil');
  const layers: Layer[] = [];
  if (tool.shape === 'rectangle' && points.length === 2)
    layers.push(polygon(toLatLngs(rectangle(points[0], points[1])), options));
  else if (box && at && points.length === 1 && !asking)
    layers.push(polygon(toLatLngs(rectangle(points[0], at)), options));
  else if (asking && tool.shape === 'outline') layers.push(polygon(toLatLngs(points), options));
  else if (points.length > 0 && !asking && at) layers.push(polyline(toLatLngs([...points, at]), options));
  else if (points.length > 1) layers.push(polyline(toLatLngs(points), options));
  return [
    ...layers,
    ...points.map((point) =>
      circleMarker(toLatLng(point), {
        ...exact(renderers, 'drawing', 'pencil-point', { fill: true, fillOpacity: 1 }),
        radius: 3.5,
      }),
    ),
  ];
}
