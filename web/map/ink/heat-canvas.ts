import type { LatLng, LeafletEventHandlerFn, Map as LeafletMap, Point, ZoomAnimEvent } from 'leaflet';
import type { HeatPicture } from '../laid-on/overlays.ts';
import { toLatLng } from '../leaflet/lat-lng.ts';
import { DomUtil, Layer } from '../leaflet/leaflet.ts';

/** The painted grid as one canvas, a pixel a cell, stretched by the browser: no tiles, so no gaps. */
export class HeatCanvas extends Layer {
  private readonly canvas = document.createElement('canvas');
  private picture: HeatPicture | null = null;

  constructor(private readonly paneName: string) {
    super();
    this.canvas.className = 'heat-canvas leaflet-zoom-animated';
    this.canvas.setAttribute('aria-hidden', 'true');
  }

  override onAdd(map: LeafletMap): this {
    map.getPane(this.paneName)!.append(this.canvas);
    this.lay(map);
    return this;
  }

  override onRemove(): this {
    this.canvas.remove();
    return this;
  }

  override getEvents(): Record<string, LeafletEventHandlerFn> {
    return {
      viewreset: () => this.lay(this._map),
      zoom: () => this.lay(this._map),
      zoomanim: (event) => this.follow(event as ZoomAnimEvent),
    };
  }

  show(picture: HeatPicture | null): void {
    this.picture = picture;
    this.canvas.hidden = picture === null;
    if (!picture) return;
    const { columns, rows } = picture.grid;
    this.canvas.width = columns;
    this.canvas.height = rows;
    const image = new ImageData(columns, rows);
    // The grid's first row is the lowest, the canvas's the highest.
    const stride = columns * 4;
    for (let row = 0; row < rows; row += 1)
      image.data.set(picture.rgba.subarray(row * stride, (row + 1) * stride), (rows - 1 - row) * stride);
    this.canvas.getContext('2d')?.putImageData(image, 0, 0);
    if (this._map) this.lay(this._map);
  }

  private lay(map: LeafletMap): void {
    if (!this.picture) return;
    const { x0, y0, cell, columns, rows } = this.picture.grid;
    const topLeft = map.latLngToLayerPoint(toLatLng([x0, y0 + rows * cell]));
    const scale = map.getZoomScale(map.getZoom(), 0);
    DomUtil.setPosition(this.canvas, topLeft);
    this.canvas.style.width = `${columns * cell * scale}px`;
    this.canvas.style.height = `${rows * cell * scale}px`;
  }

  private follow(event: ZoomAnimEvent): void {
    if (!this.picture) return;
    const map = this._map as LeafletMap & {
      _latLngToNewLayerPoint(at: Pick<LatLng, 'lat' | 'lng'>, zoom: number, center: LatLng): Point;
    };
    const { x0, y0, cell, rows } = this.picture.grid;
    const [lat, lng] = toLatLng([x0, y0 + rows * cell]);
    const offset = map._latLngToNewLayerPoint({ lat, lng }, event.zoom, event.center);
    DomUtil.setTransform(this.canvas, offset, map.getZoomScale(event.zoom, map.getZoom()));
  }
}
