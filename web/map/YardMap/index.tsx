import '../leaflet/leaflet.css';
import './style.css';
import './ink.css';
import './draft-bar.css';
import './cloth-grips.css';
import { untracked, useComputed, useSignal, useSignalEffect } from '@preact/signals';
import { useEffect, useRef, useState } from 'preact/hooks';
import { upBearingOf } from '../../../engine/index.ts';
import { openYard, shownPlan, units } from '../../state/yard.ts';
import { NorthArrow } from '../controls/NorthArrow.tsx';
import { ScaleBar } from '../controls/ScaleBar.tsx';
import { SplitBar } from '../controls/SplitBar/index.tsx';
import { crossHair, draft, typingWanted, wantsPoint } from '../drawing/in-hand.ts';
import { Patterns } from '../ink/Patterns.tsx';
import { jump } from '../laid-on/overlays.ts';
import { split } from '../laid-on/split.ts';
import { toLatLng } from '../leaflet/lat-lng.ts';
import { useHandsWanted } from './hands-wanted.ts';
import { MapButtons } from './MapButtons.tsx';
import { layPaper, showYard } from './paper.ts';
import type { Paper } from './paper.ts';
import { drawingHands } from './slots.ts';

/** The way out of the drawing leads to the slip beside it. */
const WAY_OUT = '#slip';

/** The one map of the yard. It shows the plan and what others lay over it, and is where things are drawn. */
export function YardMap() {
  const region = useRef<HTMLElement>(null);
  const container = useRef<HTMLDivElement>(null);
  const [paper, setPaper] = useState<Paper | null>(null);
  const [handsReady, setHandsReady] = useState(false);
  const handsWanted = useHandsWanted(region);
  const pixels = useSignal(32);

  useEffect(() => {
    const laid = layPaper(container.current!, pixels);
    setPaper(laid);
    return () => laid.remove();
  }, []);
  useGoingTo(paper);

  const waiting = wantsPoint.value;
  return (
    <section
      ref={region}
      class={`yard-map${waiting ? ' waiting' : ''}${crossHair.value ? ' by-cross' : ''}`}
      aria-label="Drawing of the yard"
      aria-busy={!handsReady}
      onPointerDown={() => (typingWanted.value = false)}
    >
      <a class="map-way-out" href={WAY_OUT}>
        Leave the drawing
      </a>
      <Patterns />
      <div class="map-frame">
        <div ref={container} class="map-paper" role="application" tabIndex={0} aria-label={mapWords()} />
        {split.value && paper && <SplitBar map={paper.map} />}
        {waiting && crossHair.value && <CrossMark />}
        <MapMargin pixels={pixels.value} />
        <MapButtons map={paper?.map ?? null} />
      </div>
      {handsWanted && paper && (
        <drawingHands.Part yard={paper} region={region.current!} onReady={() => setHandsReady(true)} />
      )}
    </section>
  );
}

/** Follows who asks for a place to be shown, and shows all of another yard on the table. */
function useGoingTo(paper: Paper | null): void {
  useSignalEffect(() => {
    const to = jump.value?.to;
    if (!paper || to === undefined) return;
    if (to === null) showYard(paper.map);
    else paper.map.setView(toLatLng(to), Math.max(paper.map.getZoom(), 5.5), { animate: false });
  });
  useSignalEffect(() => {
    const { id } = openYard.value;
    // What the map tells then is no reason to show it again.
    if (paper && id !== undefined) untracked(() => showYard(paper.map));
  });
}

function MapMargin({ pixels }: { readonly pixels: number }) {
  const north = useComputed(() => upBearingOf(shownPlan.value));
  const northGuessed = useComputed(() => shownPlan.value.site.how?.upBearing?.by === 'guess');
  return (
    <>
      <div class="map-north" data-over-paper>
        <NorthArrow upBearing={north.value} guessed={northGuessed.value} />
      </div>
      <div class="map-scale" data-over-paper>
        <ScaleBar pixels={pixels} units={units.value} />
      </div>
    </>
  );
}

function CrossMark() {
  return (
    <svg class="map-cross" viewBox="-40 -40 80 80" aria-hidden="true">
      <path d="M-38 0H-7M7 0H38M0 -38V-7M0 7V38" />
      <circle r="2" />
    </svg>
  );
}

function mapWords(): string {
  const doing = draft.value
    ? `Drawing a ${draft.value.tool.noun}: arrow keys move the cross, Enter places it, Escape ends.`
    : 'Letters take up a tool; arrow keys nudge what is chosen.';
  return `Plan of the yard. ${doing} Everything on it is in the list that follows.`;
}
