import type { Plugin } from 'vite';

/** Parts of Leaflet that others of its parts ask for and the yard never uses, and what stands in their place. */
const SPARE: Readonly<Record<string, string>> = {
  // Drawing in a browser that had no SVG.
  'layer/vector/SVG.VML': 'export const vmlCreate = null; export const vmlMixin = {};',
  // Markers that are dragged: Leaflet asks whether it is there.
  'layer/marker/Marker.Drag': 'export const MarkerDrag = undefined;',
  // A pin from a picture file: every mark here brings its own icon.
  'layer/marker/Icon.Default': 'export class IconDefault {}',
};

/** Leaves out of the page what Leaflet brings for others. */
export function leanLeaflet(): Plugin {
  return {
    name: 'lean-leaflet',
    enforce: 'pre',
    load(id) {
      const part = /\/leaflet\/src\/(.+)\.js$/.exec(id)?.[1];
      return part === undefined ? undefined : SPARE[part];
    },
  };
}
