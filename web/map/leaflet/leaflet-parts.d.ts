/** Leaflet's own files carry no types; those of the whole package hold for its parts. */
declare module 'leaflet/src/map/handler/Map.Drag.js';
declare module 'leaflet/src/map/handler/Map.ScrollWheelZoom.js';
declare module 'leaflet/src/map/handler/Map.TouchZoom.js';
declare module 'leaflet/src/dom/DomUtil.js' {
  import type { DomUtil } from 'leaflet';
  export const setTransform: typeof DomUtil.setTransform;
  export const setPosition: typeof DomUtil.setPosition;
}
declare module 'leaflet/src/geo/crs/CRS.Simple.js' {
  import type { CRS } from 'leaflet';
  export const Simple: typeof CRS.Simple;
}
declare module 'leaflet/src/layer/Layer.js' {
  export { Layer } from 'leaflet';
}
declare module 'leaflet/src/layer/LayerGroup.js' {
  export { LayerGroup } from 'leaflet';
}
declare module 'leaflet/src/layer/SVGOverlay.js' {
  export { svgOverlay } from 'leaflet';
}
declare module 'leaflet/src/layer/marker/DivIcon.js' {
  export { divIcon } from 'leaflet';
}
declare module 'leaflet/src/layer/marker/Marker.js' {
  export { marker } from 'leaflet';
}
declare module 'leaflet/src/layer/vector/CircleMarker.js' {
  export { circleMarker } from 'leaflet';
}
declare module 'leaflet/src/layer/vector/Polygon.js' {
  export { polygon } from 'leaflet';
}
declare module 'leaflet/src/layer/vector/Polyline.js' {
  export { polyline } from 'leaflet';
}
declare module 'leaflet/src/layer/vector/SVG.js' {
  export { svg } from 'leaflet';
}
declare module 'leaflet/src/map/Map.js' {
  export { Map } from 'leaflet';
}
