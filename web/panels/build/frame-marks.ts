import { effect } from '@preact/signals';
import { canopyEdge, meanOf } from '../../../engine/index.ts';
import type { Canopy, PlanPoint } from '../../../engine/index.ts';
import { numberedMarks } from '../../map/laid-on/overlays.ts';
import type { NumberedMark } from '../../map/laid-on/overlays.ts';
import { chosen, sheet } from './chosen.ts';

/** The sheet's words for the two sides of a roof stand so far outside it. [m] */
const OUTSIDE = 0.4;

/** The posts as the sheet calls them, front and back, on the drawing until the function it returns is called. */
export function layFrameMarks(): () => void {
  const stop = effect(() => {
    const thing = chosen.value?.thing;
    const posts = sheet.value?.ok ? sheet.value.sheet.settingOut.posts : [];
    const outOf: PlanPoint = [meanOf(posts.map(({ at }) => at[0])), meanOf(posts.map(({ at }) => at[1]))];
    numberedMarks.value = [
      ...posts.map(({ id, at }): NumberedMark => ({ at, label: id, outOf })),
      ...(thing?.kind === 'canopy' ? (['front', 'back'] as const).map((side) => sideMark(thing, side)) : []),
    ];
  });
  return () => {
    stop();
    numberedMarks.value = [];
  };
}

function sideMark(roof: Canopy, side: 'front' | 'back'): NumberedMark {
  const [[ax, ay], [bx, by]] = canopyEdge(roof, side);
  const [x, y] = [(ax + bx) / 2, (ay + by) / 2];
  const [dx, dy] = [x - roof.center[0], y - roof.center[1]];
  const out = 1 + OUTSIDE / Math.hypot(dx, dy);
  const at: PlanPoint = [roof.center[0] + dx * out, roof.center[1] + dy * out];
  return { at, label: side };
}
