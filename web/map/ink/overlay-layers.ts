import { effect } from '@preact/signals';
import type { LatLng, Layer, Map as LeafletMap } from 'leaflet';
import { distance, openRing, upBearingOf } from '../../../engine/index.ts';
import type { Plan, PlanPoint } from '../../../engine/index.ts';
import type { GradeZone } from '../../charts/grade-zones.ts';
import { labelPlaces } from '../../charts/line-labels.ts';
import { gradeHatchId } from '../../charts/ramp.ts';
import { mapBlocks } from '../../state/view.ts';
import {
  barredRings,
  contourLines,
  gradeZones,
  hatched,
  heatPicture,
  hiddenHeightLines,
  numberedMarks,
  plantMarks,
  pointedAt,
  shadowRings,
  studyLine,
} from '../laid-on/overlays.ts';
import type { LabelledLine, NumberedMark, PlantMark } from '../laid-on/overlays.ts';
import { toLatLng, toLatLngs, toPlanPoint } from '../leaflet/lat-lng.ts';
import { LayerGroup, divIcon, marker, polygon, polyline } from '../leaflet/leaflet.ts';
import { HeatCanvas } from './heat-canvas.ts';
import { exact } from './panes.ts';
import type { PaneName, Renderers } from './panes.ts';
import { textMark } from './paper-marks.ts';
import { plantMarkSvg } from './plant-mark.ts';

/** Lays the overlay signals over the map and keeps them so; the function it returns ends that. */
export function layOverlays(map: LeafletMap, renderers: Renderers, shown: () => Plan, scale: () => number): () => void {
  const heat = new HeatCanvas('heat').addTo(map);
  const group = (): LayerGroup => new LayerGroup().addTo(map);
  const zones = group();
  const shadows = group();
  const barred = group();
  const contours = group();
  const hidden = group();
  const marks = group();
  const numbers = group();
  const study = group();
  const onMove = ({ latlng }: { readonly latlng: LatLng }): void => void (pointedAt.value = toPlanPoint(latlng));
  const onLeave = (): void => void (pointedAt.value = null);
  map.on('mousemove', onMove).on('mouseout', onLeave);
  const stops = [
    onLeave,
    effect(() => heat.show(heatPicture.value)),
    effect(() => void map.getContainer().classList.toggle('blocks', mapBlocks.value)),
    effect(() =>
      refill(
        zones,
        gradeZones.value.flatMap((zone) => hatchedZone(zone, renderers)),
      ),
    ),
    effect(() => void map.getContainer().classList.toggle('hatched', hatched.value && gradeZones.value.length > 0)),
    effect(() => refill(shadows, rings(shadowRings.value, renderers, 'shade', 'nonzero'))),
    effect(() => refill(barred, rings(barredRings.value, renderers, 'barred', 'evenodd'))),
    effect(() => refill(contours, labelled(contourLines.value, shown(), renderers, 'ground', 'contour', scale()))),
    effect(() =>
      refill(hidden, labelled(hiddenHeightLines.value, shown(), renderers, 'marks', 'hidden-height', scale())),
    ),
    effect(() => refill(marks, plantMarksOn(shown(), plantMarks.value, scale()))),
    effect(() => refill(numbers, numberedMarks.value.map(numbered))),
    effect(() =>
      refill(
        study,
        studyLine.value.length > 1
          ? [polyline(toLatLngs(studyLine.value), exact(renderers, 'drawing', 'study-line'))]
          : [],
      ),
    ),
  ];
  return () => stops.forEach((stop) => stop());
}

export function refill(group: LayerGroup, layers: readonly Layer[]): void {
  group.clearLayers();
  for (const layer of layers) group.addLayer(layer);
}

/**
 * @param fillRule `nonzero` where rings overlap: shadows on each other are one shadow, and all turn the same way;
 * `evenodd` where one within another is a hole
 */
function rings(
  shapes: readonly (readonly PlanPoint[])[],
  renderers: Renderers,
  pattern: string,
  fillRule: 'nonzero' | 'evenodd',
): Layer[] {
  if (shapes.length === 0) return [];
  const fill = {
    stroke: false,
    fill: true,
    fillOpacity: 1,
    fillRule,
    fillColor: `url(#${pattern})`,
  };
  return [
    polygon(
      shapes.map((ring) => [toLatLngs(openRing(ring))]),
      exact(renderers, 'shadows', `area-${pattern}`, fill),
    ),
  ];
}

/** Seen on paper, and on the screen by whoever wants hatches. */
function hatchedZone({ grade, rings, numbersAt }: GradeZone, renderers: Renderers): Layer[] {
  const fill = {
    stroke: false,
    fill: true,
    fillOpacity: 1,
    fillRule: 'evenodd' as const,
    fillColor: `url(#${gradeHatchId(grade)})`,
  };
  return [
    polygon(
      rings.map((ring) => toLatLngs(openRing(ring))),
      exact(renderers, 'heat', 'grade-zone', fill),
    ),
    ...numbersAt.map((at) => textMark(at, String(grade), 'map-number grade-number')),
  ];
}

/** Labels keep this far from each other, and half of it from plants. [px] */
const LABELS_APART = 40;

/** A line shorter than this is told by its neighbours. [px] */
const LABELLED_PX = 260;

/** @param pixels a metre */
function labelled(
  shown: readonly LabelledLine[],
  plan: Plan,
  renderers: Renderers,
  pane: PaneName,
  className: string,
  pixels: number,
): Layer[] {
  const lines = shown.flatMap((one) => one.lines.filter(({ length }) => length > 1).map(toLatLngs));
  const plants = plan.features.flatMap((feature) =>
    feature.kind === 'plant' ? [{ at: feature.at, radius: feature.spread / 2 + LABELS_APART / 2 / pixels }] : [],
  );
  const isFree = (at: PlanPoint): boolean => plants.every((plant) => distance(plant.at, at) >= plant.radius);
  return [
    polyline(lines, exact(renderers, pane, `${className} halo`)),
    polyline(lines, exact(renderers, pane, className)),
    ...labelPlaces(shown, LABELS_APART / pixels, isFree, LABELLED_PX / pixels).map(({ at, label }) =>
      textMark(at, label, `map-number ${className}`),
    ),
  ];
}

function plantMarksOn(plan: Plan, known: ReadonlyMap<string, PlantMark>, pixels: number): Layer[] {
  return plan.features.flatMap((feature) => {
    const mark = known.get(feature.id);
    if (!mark || (feature.kind !== 'plant' && feature.kind !== 'tree')) return [];
    const width = feature.kind === 'plant' ? feature.spread : feature.crownWidth * 0.5;
    const size = Math.round(Math.min(40, Math.max(14, width * pixels)));
    return [
      marker(toLatLng(feature.at), {
        pane: 'marks',
        interactive: false,
        keyboard: false,
        icon: divIcon({
          className: 'plant-mark',
          html: plantMarkSvg(mark, size, upBearingOf(plan)),
          iconSize: [size, size],
        }),
      }),
    ];
  });
}

/** A pin whose corner stands on the place, so that what stands there is seen beside it; a word lies over its middle. */
function numbered({ at, label, chosen, outOf = at }: NumberedMark): Layer {
  const isWord = label.length > 2;
  const words = document.createElement('span');
  words.textContent = label;
  // As turns of pins are counted: to the left is one, below is two.
  words.dataset.turn = String(Number(at[0] < outOf[0]) + 2 * Number(at[1] < outOf[1]));
  return marker(toLatLng(at), {
    // Over the line round what is chosen, under its grips.
    pane: 'drawing',
    zIndexOffset: 5000,
    interactive: false,
    keyboard: false,
    icon: divIcon({
      className: `numbered-mark${chosen ? ' chosen' : ''}${isWord ? ' word' : ''}`,
      html: words,
      // A pin's size and corner are its style's.
      iconSize: isWord ? [48, 20] : [0, 0],
    }),
  });
}
