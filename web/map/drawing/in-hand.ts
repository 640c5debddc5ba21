import { computed, signal } from '@preact/signals';
import { askedPoint } from '../laid-on/overlays.ts';
import type { Draft } from './draft.ts';
import type { Grip } from './grips.ts';
import type { Snapped } from './snap.ts';

/**
 * What the drawing hand holds and waits for. The map and its captions read it from the first picture on; what the hand
 * does (`drawing.ts`) comes after it.
 */

/** The thing under way, not in the plan yet. A reload forgets it whole. */
export const draft = signal<Draft | null>(null);

/** Where the next point would land: under the pointer, or under the cross. */
export const aim = signal<Snapped | null>(null);

/** Whether points come from the fixed cross in the middle of the map (phone, keyboard) rather than from the pointer. */
export const crossHair = signal(false);

/** A grip picked up by a tap or a key, waiting for its new place. */
export const held = signal<{ readonly id: string; readonly grip: Grip } | null>(null);

/** The round thing whose size is being changed by hand: only then has it a grip, so that a finger on it moves it. */
export const sized = signal<string | null>(null);

/** How near counts as "at" something, in metres at the present zoom; the map keeps it up to date. */
export const reach = signal(0.1);

/** Set when a tool is taken up by a key or from the list: the box to type in takes the focus. */
export const typingWanted = signal(false);

/** Whether the map waits for a point, and so shows the cross where one is used. */
export const wantsPoint = computed(
  () => (draft.value !== null && !draft.value.asking) || held.value !== null || askedPoint.value !== null,
);
