import { useSignal, useSignalEffect } from '@preact/signals';
import type { RefObject } from 'preact';
import { useEffect } from 'preact/hooks';
import { heat } from '../../state/results.ts';
import { stage } from '../../state/view.ts';
import { askedPoint } from '../laid-on/overlays.ts';

/**
 * Whether what draws is to be fetched: once the first picture is painted, so that it does not come before it on a slow
 * line, or earlier when somebody reaches for the drawing.
 */
export function useHandsWanted(region: RefObject<HTMLElement | null>): boolean {
  const wanted = useSignal(false);
  useSignalEffect(() => {
    const settled = heat.value.shown !== null || heat.value.problems.length > 0;
    if (settled) afterPaint(() => (wanted.value = true));
    if (stage.value === 'draw' || askedPoint.value !== null) wanted.value = true;
  });
  useEffect(() => {
    const reachedFor = (): void => void (wanted.value = true);
    const kinds = ['pointerenter', 'pointerdown', 'focusin'] as const;
    for (const kind of kinds) region.current!.addEventListener(kind, reachedFor);
    return () => {
      for (const kind of kinds) region.current?.removeEventListener(kind, reachedFor);
    };
  }, []);
  return wanted.value;
}

function afterPaint(then: () => void): void {
  requestAnimationFrame(() => setTimeout(then));
}
