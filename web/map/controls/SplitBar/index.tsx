import './style.css';
import { useSignal } from '@preact/signals';
import type { Map as LeafletMap } from 'leaflet';
import { useEffect } from 'preact/hooks';
import { formatLength } from '../../../../engine/index.ts';
import { units } from '../../../state/yard.ts';
import { SPLIT_STEP, moveSplit, split } from '../../laid-on/split.ts';
import { toLatLng } from '../../leaflet/lat-lng.ts';
import { pointerPoint } from '../../leaflet/leaflet-map.ts';

/** The bar itself: dragged, or moved by the arrow keys; it stays where it is on the plan when the paper is moved. */
export function SplitBar({ map }: { readonly map: LeafletMap }) {
  const left = useSignal(0);
  const now = split.value;
  useEffect(() => {
    const place = (): void => {
      const at = split.peek();
      if (at) left.value = map.latLngToContainerPoint(toLatLng([at.x, 0])).x;
    };
    place();
    map.on('move zoom resize', place);
    return () => void map.off('move zoom resize', place);
  }, [map, now?.x]);
  if (!now) return null;

  function onKeyDown(event: KeyboardEvent): void {
    if (!now) return;
    const to = {
      ArrowLeft: now.x - SPLIT_STEP,
      ArrowDown: now.x - SPLIT_STEP,
      ArrowRight: now.x + SPLIT_STEP,
      ArrowUp: now.x + SPLIT_STEP,
      Home: now.from,
      End: now.to,
    }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    moveSplit(now, to);
  }

  return (
    <div
      class="split-bar"
      role="slider"
      tabIndex={0}
      aria-label={`Bar between ${now.left} and ${now.right}`}
      aria-valuemin={now.from}
      aria-valuemax={now.to}
      aria-valuenow={now.x}
      aria-valuetext={`${now.left} to the left of ${formatLength(now.x, units.value)} across`}
      style={{ left: `${left.value}px` }}
      onKeyDown={onKeyDown}
      onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
      onPointerMove={(event) =>
        event.currentTarget.hasPointerCapture(event.pointerId) && moveSplit(now, pointerPoint(map, event)[0])
      }
    >
      <span class="split-word left">{now.left}</span>
      <span class="split-word right">{now.right}</span>
      <span class="split-knob" aria-hidden="true">
        ◂▸
      </span>
    </div>
  );
}
