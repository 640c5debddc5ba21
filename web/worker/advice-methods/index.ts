import type { Method } from '../protocol.ts';
import { cheaper } from './cheaper.ts';
import { compare } from './compare.ts';
import { doubt } from './doubt.ts';
import { ground } from './ground.ts';
import { hidden } from './hidden.ts';
import { letter } from './letter.ts';
import { marks } from './marks.ts';
import { payoff } from './payoff.ts';
import { place } from './place.ts';
import { potThere } from './pot-there.ts';
import { report } from './report.ts';
import { review } from './review.ts';
import { season } from './season.ts';
import { section } from './section.ts';
import { shadowEdge } from './shadow-edge.ts';
import { site } from './site.ts';
import { sunEyeOf } from './sun-eye-of.ts';
import { tomorrow } from './tomorrow.ts';
import { trial } from './trial.ts';
import { weeksAt } from './weeks-at.ts';

/**
 * What the page can ask in the later stages. What the first ones ask stands in `web/worker/survey-methods.ts`. To add a
 * method: one file beside this one, one line here.
 */
export const methods = {
  cheaper,
  compare,
  doubt,
  ground,
  hidden,
  letter,
  marks,
  payoff,
  place,
  potThere,
  report,
  review,
  season,
  section,
  shadowEdge,
  site,
  sunEyeOf,
  tomorrow,
  trial,
  weeksAt,
} satisfies Record<string, Method>;

export type AdviceMethods = typeof methods;
