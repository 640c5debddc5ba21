import type { Map as LeafletMap } from 'leaflet';
import { crossHair } from '../drawing/in-hand.ts';
import { showAll } from './paper.ts';

/** @param map `null` until it is laid */
export function MapButtons({ map }: { readonly map: LeafletMap | null }) {
  const zoom = (by: number): void => void map?.setZoom(map.getZoom() + by);
  return (
    <div class="map-buttons" data-over-paper>
      <button type="button" aria-label="Closer" onClick={() => zoom(0.5)}>
        +
      </button>
      <button type="button" aria-label="Farther" onClick={() => zoom(-0.5)}>
        −
      </button>
      <button type="button" aria-label="Whole yard" onClick={() => map && showAll(map)}>
        <WholeIcon />
      </button>
      <button
        type="button"
        aria-label="Draw with a cross-hair"
        aria-pressed={crossHair.value}
        onClick={() => (crossHair.value = !crossHair.value)}
      >
        <CrossIcon />
      </button>
    </div>
  );
}

function CrossIcon() {
  return (
    <svg class="button-icon" viewBox="-12 -12 24 24" aria-hidden="true">
      <path d="M-10 0H-3M3 0H10M0 -10V-3M0 3V10M-6 0A6 6 0 1 1 6 0A6 6 0 1 1 -6 0" />
    </svg>
  );
}

function WholeIcon() {
  return (
    <svg class="button-icon" viewBox="-12 -12 24 24" aria-hidden="true">
      <path d="M-9 -4V-8H-5M5 -8H9V-4M9 4V8H5M-5 8H-9V4M-4 -3H4V3H-4Z" />
    </svg>
  );
}
