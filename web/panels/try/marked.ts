import { effect, signal } from '@preact/signals';
import { numberedMarks } from '../../map/laid-on/overlays.ts';
import type { NumberedMark } from '../../map/laid-on/overlays.ts';

/** What the search found, by number, and the corners of cloth that show most: both stand on the drawing. */
export const foundMarks = signal<readonly NumberedMark[]>([]);
export const topMarks = signal<readonly NumberedMark[]>([]);

/** Lays them on the drawing until the function it returns is called. */
export function layMarks(): () => void {
  const stop = effect(() => {
    numberedMarks.value = [...foundMarks.value, ...topMarks.value];
  });
  return () => {
    stop();
    numberedMarks.value = [];
  };
}
