import type { Plan } from '../types.ts';
import { courtyard } from './courtyard.ts';
import { lane } from './lane.ts';

/** The yards that come with the project, the first one the default. Places, people and measures are invented. */
export const DEMO_NAMES = ['courtyard', 'lane'] as const;
export type DemoName = (typeof DEMO_NAMES)[number];

const DEMOS: Readonly<Record<DemoName, Plan>> = { courtyard, lane };

/** A demo yard by its name. */
export function demoPlan(name: DemoName): Plan {
  return DEMOS[name];
}

/** Whether a word names a demo yard. */
export function isDemoName(word: string): word is DemoName {
  return (DEMO_NAMES as readonly string[]).includes(word);
}
