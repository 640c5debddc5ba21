import type { PathOptions, PolylineOptions, Renderer } from 'leaflet';

/** The panes of the map from the paper up; every drawn thing names one. */
export const PANES = {
  paper: 150,
  underlay: 160,
  heat: 200,
  shadows: 210,
  ground: 220,
  solids: 230,
  over: 240,
  marks: 250,
  drawing: 260,
} as const;
export type PaneName = keyof typeof PANES;
export type Renderers = Readonly<Record<PaneName, Renderer>>;

/**
 * Leaflet's own options for a path that is drawn exactly: no thinning, no clipping, never in the way of the pointer.
 */
export function exact(
  renderers: Renderers,
  pane: PaneName,
  className: string,
  more: PathOptions = {},
): PolylineOptions {
  return {
    renderer: renderers[pane],
    pane,
    className,
    interactive: false,
    smoothFactor: 0,
    noClip: true,
    fill: false,
    stroke: true,
    ...more,
  };
}
