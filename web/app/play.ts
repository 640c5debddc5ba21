import { effect } from '@preact/signals';
import { day } from '../state/results.ts';
import { minute, playing } from '../state/view.ts';

/** A day from sunrise to sunset takes about half a minute. */
const MINUTES_A_SECOND = 30;
const FRAME_MS = 66;

/**
 * Moves the time bead by itself while `playing`, from sunrise to sunset and round again. Starts by itself unless less
 * motion is asked for.
 */
export function startPlaying(): void {
  playing.value = !matchMedia('(prefers-reduced-motion: reduce)').matches;
  effect(() => {
    if (!playing.value) return undefined;
    let lastMs = performance.now();
    let exact = minute.peek();
    const timer = setInterval(() => {
      const nowMs = performance.now();
      const passed = Math.min(500, nowMs - lastMs);
      lastMs = nowMs;
      const table = day.peek().shown?.value;
      if (!table || document.hidden) return;
      if (Math.abs(exact - minute.peek()) > 2) exact = minute.peek();
      exact += (passed / 1000) * MINUTES_A_SECOND;
      if (table.altitude[Math.min(table.minutes, Math.round(exact))] <= 0)
        exact = Math.max(
          0,
          table.altitude.findIndex((altitude) => altitude > 0),
        );
      minute.value = Math.round(exact);
    }, FRAME_MS);
    return () => clearInterval(timer);
  });
}
