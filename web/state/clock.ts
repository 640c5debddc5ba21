import { computed } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import { settings } from './settings.ts';
import { units } from './yard.ts';

/** How clock times are written: feet and °F are read by people whose clocks say am and pm; else as it is set. */
export const shownClock: ReadonlySignal<'24' | '12'> = computed(() =>
  units.value === 'imperial' ? '12' : settings.value.clock,
);
