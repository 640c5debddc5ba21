import type { Colour } from '../plan/types.ts';

/** Share of sunlight that a wall of each colour throws back: a choice of this project. */
export const REFLECTS: Readonly<Record<Colour, number>> = { white: 0.75, light: 0.5, mid: 0.35, dark: 0.2 };
