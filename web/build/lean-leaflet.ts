import type { Plugin } from 'vite';

/** Parts of Leaflet that others of its parts ask for and the yard never uses, and what stands in their place. */
const SPARE: Readonly<Record<string, string>> = {
  // Drawing in a browser that had no SVG.
  'layer/vector/SVG.VML': 'export const vmlCreate = null; export const vmlMixin = {};',
  // Markers that are dragged: Leaflet asks whether it is there.
  'layer/marker/Marker.Drag': 'export const MarkerDrag = undefined;',
  // A pin from a picture file: every mark here brings its own icon.
  'layer/marker/Icon.Default': 'export class IconDefault {}',
  // The globe, and the way it is drawn where nobody says otherwise: a plan is in metres.
  'geo/crs/CRS.Earth': 'export const Earth = undefined;',
  'geo/crs/CRS.EPSG3857': 'export const EPSG3857 = undefined;',
  // Double taps: nobody listens to them.
  'dom/DomEvent.DoubleTap':
    'export const addDoubleTapListener = (_, heard) => heard; export const removeDoubleTapListener = () => {};',
  // Every path here is drawn exactly, neither thinned nor clipped.
  'geometry/PolyUtil': 'export const clipPolygon = null; export const polygonCenter = null;',
  'geometry/LineUtil': `
    export const simplify = (points) => points;
    export const isFlat = ([first]) => !Array.isArray(first) || typeof first[0] === 'number';
    export { isFlat as _flat };
    export const clipSegment = null;
    export const pointToSegmentDistance = null;
    export const polylineCenter = null;
    export const _sqClosestPointOnSegment = null;`,
};

/**
 * What parts can do that the yard never asks of them: flying, bounds, the browser's own place, words that hang on a
 * line, pictures that change.
 */
const SPARE_METHODS: Readonly<Record<string, string>> = {
  'core/Events': 'addEventParent removeEventParent',
  'map/Map':
    'zoomIn zoomOut fitWorld flyTo flyToBounds setMaxBounds setMinZoom setMaxZoom panInsideBounds panInside locate ' +
    'stopLocate _handleGeolocationError _handleGeolocationResponse mouseEventToLatLng mouseEventToLayerPoint ' +
    'getPanes wrapLatLng wrapLatLngBounds _getZoomSpan',
  'layer/Layer': 'getAttribution _addZoomLimit _removeZoomLimit _updateZoomLevels',
  'layer/vector/Path': 'setStyle bringToFront bringToBack',
  'layer/vector/Polyline':
    'isEmpty closestLayerPoint getCenter getBounds addLatLng _containsPoint getLatLngs setLatLngs',
  'layer/vector/Polygon': 'isEmpty getCenter _containsPoint',
  'layer/vector/CircleMarker': 'setLatLng getLatLng setRadius getRadius _containsPoint',
  'layer/vector/SVG': '_bringToFront _bringToBack',
  'layer/marker/Icon': 'createIcon createShadow _createIcon _createImg _getIconUrl',
  'layer/marker/Marker': 'setZIndexOffset getIcon setIcon setOpacity _getPopupAnchor _getTooltipAnchor setLatLng',
  'layer/ImageOverlay': 'setOpacity setStyle bringToFront bringToBack setUrl setBounds setZIndex getBounds getCenter',
  'layer/LayerGroup': 'invoke getLayer getLayers setZIndex',
  'geo/LatLngBounds': 'overlaps toBBoxString',
  'geo/LatLng': 'toBounds distanceTo wrap',
  'geo/crs/CRS': 'wrapLatLng wrapLatLngBounds',
  'geometry/Bounds': 'overlaps',
  'geometry/Point': 'scaleBy unscaleBy',
};

/** Takes a method out of an object written as Leaflet writes them; refuses where there is none. */
function without(source: string, method: string): string {
  const start = source.indexOf(`\n\t${method}: function`);
  const end = source.indexOf('\n\t}', start);
  if (start < 0 || end < 0) throw new Error(`Leaflet has no ${method} to leave out.`);
  return source.slice(0, start) + source.slice(end + '\n\t}'.length).replace(/^,/, '');
}

/** Leaves out of the page what Leaflet brings for others. A build that does not meet one of these names breaks off. */
export function leanLeaflet(): Plugin {
  const met = new Set<string>();
  return {
    name: 'lean-leaflet',
    enforce: 'pre',
    load(id) {
      const part = leafletPartOf(id);
      if (part !== undefined) met.add(part);
      return part === undefined ? undefined : SPARE[part];
    },
    transform(source, id) {
      const spare = SPARE_METHODS[leafletPartOf(id) ?? ''];
      return spare?.split(' ').reduce(without, source);
    },
    buildEnd(error) {
      const gone = [...Object.keys(SPARE), ...Object.keys(SPARE_METHODS)].filter((part) => !met.has(part));
      if (error === undefined && gone.length > 0)
        this.error(`The page asks for no ${gone.join(', ')} of Leaflet any more: look again at what it brings.`);
    },
  };
}

function leafletPartOf(id: string): string | undefined {
  return /\/leaflet\/src\/(.+)\.js$/.exec(id)?.[1];
}
