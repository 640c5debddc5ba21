import type { Map as LeafletMap } from 'leaflet';
import { useEffect, useMemo } from 'preact/hooks';
import { readOut } from '../../state/speech.ts';
import { selection } from '../../state/view.ts';
import { units } from '../../state/yard.ts';
import { DraftBar, placeWords } from '../controls/DraftBar.tsx';
import { crossOver } from '../drawing/cross.ts';
import type { Cross } from '../drawing/cross.ts';
import { finish } from '../drawing/draft.ts';
import { choosePoint, escape, nudgeChosen, takeUp } from '../drawing/drawing.ts';
import { deleteFeatures, duplicate } from '../drawing/feature-edits.ts';
import { aim, crossHair, draft, wantsPoint } from '../drawing/in-hand.ts';
import { keyMeaning } from '../drawing/keys.ts';
import type { KeyMeaning } from '../drawing/keys.ts';
import { listenToPointer } from '../drawing/pointer.ts';
import { layDrawing } from '../ink/drawing-layers.ts';
import { showAll } from './paper.ts';
import type { HandsProps } from './slots.ts';

/** What draws on the map: pointer, keys and cross, the pencil over the ink, and the strip to type in. */
export function DrawingHands({ yard: { map, renderers }, region, onReady }: HandsProps) {
  const cross = useMemo(() => crossOver(map), [map]);
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent): void => {
      const onMap = event.target === map.getContainer();
      const meaning = keyMeaning(event, { waiting: wantsPoint.value, onMap, units: units.value });
      if (!meaning) return;
      event.preventDefault();
      obey(meaning, map, cross);
    };
    region.addEventListener('keydown', onKeyDown);
    const stops = [layDrawing(map, renderers), listenToPointer(map, cross.moveTo), cross.follow()];
    onReady();
    return () => {
      region.removeEventListener('keydown', onKeyDown);
      stops.forEach((stop) => stop());
    };
  }, [map]);
  return <DraftBar onNudge={cross.nudge} />;
}

function obey(meaning: KeyMeaning, map: LeafletMap, cross: Cross): void {
  switch (meaning.does) {
    case 'tool':
      return takeUp(meaning.tool, true);
    case 'nudge':
      if (!wantsPoint.value) return nudgeChosen(meaning.by);
      crossHair.value = true;
      cross.nudge(meaning.by);
      return readOut(placeWords(aim.value?.at ?? [0, 0], units.value));
    case 'put':
      if (aim.value) choosePoint(aim.value.at);
      return;
    case 'finish':
      if (draft.value) draft.value = finish(draft.value);
      return;
    case 'escape':
      return escape();
    case 'delete':
      return deleteFeatures(selection.value);
    case 'duplicate':
      if (selection.value.length === 1) duplicate(selection.value[0]);
      return;
    case 'zoom':
      map.setZoom(map.getZoom() + meaning.by, { animate: false });
      return;
    case 'whole yard':
      return showAll(map);
  }
}
