/**
 * The parts of Leaflet that the drawing uses, taken one by one: the package is one piece otherwise, and half of it
 * (tiles, popups, controls, projections) has no place on a plan in metres.
 */

import 'leaflet/src/map/handler/Map.Drag.js';
import 'leaflet/src/map/handler/Map.ScrollWheelZoom.js';
import 'leaflet/src/map/handler/Map.TouchZoom.js';

export * as DomUtil from 'leaflet/src/dom/DomUtil.js';
export { Simple } from 'leaflet/src/geo/crs/CRS.Simple.js';
export { Layer } from 'leaflet/src/layer/Layer.js';
export { LayerGroup } from 'leaflet/src/layer/LayerGroup.js';
export { svgOverlay } from 'leaflet/src/layer/SVGOverlay.js';
export { divIcon } from 'leaflet/src/layer/marker/DivIcon.js';
export { marker } from 'leaflet/src/layer/marker/Marker.js';
export { circleMarker } from 'leaflet/src/layer/vector/CircleMarker.js';
export { polygon } from 'leaflet/src/layer/vector/Polygon.js';
export { polyline } from 'leaflet/src/layer/vector/Polyline.js';
export { svg } from 'leaflet/src/layer/vector/SVG.js';
export { Map as LeafletMap } from 'leaflet/src/map/Map.js';
