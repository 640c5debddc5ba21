import { slotFor } from '../../common/Lazy.tsx';
import type { LeafletYard } from '../leaflet/leaflet-map.ts';

export interface HandsProps {
  readonly yard: LeafletYard;
  /** Keys pressed anywhere in it are meant for the drawing. */
  readonly region: HTMLElement;
  readonly onReady: () => void;
}

/** What draws on the map: it comes with the first stages, after the first picture. */
export const drawingHands = slotFor<HandsProps>('Drawing by hand');
