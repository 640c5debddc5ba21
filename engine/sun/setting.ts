import type { Plan } from '../plan/types.ts';

/** Where a yard is, when its season is and in what climate: all that its sun, sky and air depend on. */
export type Setting = Pick<Plan, 'site' | 'season' | 'climate'>;
