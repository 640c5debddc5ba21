import { computed, signal } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import type { Plan } from '../../engine/index.ts';

/** One state of the yard that undo can come back to: the plan, and the action that led to it. */
export interface Step {
  readonly label: string;
  readonly plan: Plan;
}

/** Every state from the first to the newest, and which of them is shown. Plans share what did not change. */
export interface History {
  readonly steps: readonly Step[];
  readonly cursor: number;
}

/** What the shelf knows of the open yard besides its plan. */
export interface OpenYard {
  readonly id: string;
  /** When the yard was last written to a file by the person. [ms UTC] `null`: never. */
  readonly fileCopyAt: number | null;
  /** Set when another tab has a newer state: this one can look, not change. The value says why, in one sentence. */
  readonly readOnly: string | null;
}

const EMPTY: Plan = {
  format: 'shadewright-plan',
  version: 1,
  site: {
    latitude: 0,
    longitude: 0,
    timeZone: 'UTC',
    boundary: [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ],
  },
  season: { year: 2026, from: '06-01', to: '08-31' },
  climate: { hotAir: 35, heatwaveHigh: 42, months: [6, 7, 8].map((month) => ({ month, high: 35, low: 18 })) },
  features: [],
};

/** Written by `web/state` alone; everyone else reads `plan` and calls `commitEdit`. */
export const history = signal<History>({ steps: [{ label: 'Empty yard', plan: EMPTY }], cursor: 0 });
export const openYard = signal<OpenYard>({ id: '', fileCopyAt: null, readOnly: null });

/** Which yard is open: changes when another one is, and with nothing else. */
export const openYardId: ReadonlySignal<string> = computed(() => openYard.value.id);

/** The plan as saved at the end of the last action. */
export const plan: ReadonlySignal<Plan> = computed(() => history.value.steps[history.value.cursor].plan);

/**
 * The plan as a drag under way would leave it; `null` when nothing is being dragged. Never saved, never in the history.
 */
export const preview = signal<Plan | null>(null);

/** What the screen draws: the preview while there is one, else the plan. */
export const shownPlan: ReadonlySignal<Plan> = computed(() => preview.value ?? plan.value);

export const units: ReadonlySignal<'metric' | 'imperial'> = computed(() => plan.value.units ?? 'metric');
