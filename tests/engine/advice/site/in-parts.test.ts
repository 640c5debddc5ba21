import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type SiteDone, siteSearch } from '../../../../engine/advice/site/site-search.ts';
import { siteOf } from '../../../../engine/advice/site/site.ts';
import type { SiteRequest, SiteResult } from '../../../../engine/advice/site/types.ts';
import { siteText } from '../../../../engine/output/text/site-text.ts';
import type { Plan } from '../../../../engine/plan/types.ts';
import { LONG } from '../../../long.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { smallPlan } from './small-plans.ts';

const YARDS = LONG ? 60 : 6;

/** Small cloth of every kind, both of what is on the lattice and of what lies between its steps. */
const REQUESTS: readonly SiteRequest[] = [
  { sizes: [{ length: 1.5, width: 1 }], heights: [1.6, 2.2], dropDepths: [0.8], step: 0.5, turnStep: 30 },
  { kinds: ['roof', 'screen'], sizes: [{ length: 2, width: 1.5 }], heights: [2], step: 0.5, turnStep: 22.5, count: 2 },
  { kinds: ['screen'], sizes: 'any', step: 0.5, turnStep: 15, keepLight: false },
];

/** Who does a task, when, and what they know of the other tasks of the step. */
interface Deal {
  readonly hand: number;
  readonly rank: number;
  readonly sees: boolean;
}

const DEALS = fc.array(fc.record({ hand: fc.nat(2), rank: fc.nat(99), sees: fc.boolean() }), {
  minLength: 16,
  maxLength: 16,
});

/** The search dealt out to three hands, each with a yard of its own; between them everything goes as plain data. */
function dealtOut(plan: Plan, request: SiteRequest, deals: readonly Deal[]): SiteResult {
  const sent = <Value>(value: Value): Value => structuredClone(value);
  const hands = [0, 1, 2].map(() => valueOf(siteSearch(sent(plan), request, () => undefined, 2)));
  const steps: SiteDone[][] = [];
  for (;;) {
    const step = hands[steps.length % 2].next(sent(steps));
    if ('result' in step) return step.result;
    const done: SiteDone[] = [];
    const dealt = step.tasks.map((task, k) => ({ task, k, ...deals[(k + steps.length) % deals.length] }));
    for (const { task, k, hand, sees } of dealt.toSorted((a, b) => a.rank - b.rank))
      done[k] = sent(hands[hand].work(sent(task), sent(sees ? done.flat() : []), () => undefined));
    steps.push(done);
  }
}

describe('a search dealt out to several hands', () => {
  test(
    `tells what one hand tells, to the letter, whoever did what and when (${YARDS} yards)`,
    { timeout: 300_000 },
    () => {
      let told = 0;
      fc.assert(
        fc.property(fc.integer({ min: 1, max: 200 }), fc.nat(REQUESTS.length - 1), DEALS, (seed, asked, deals) => {
          const plan = smallPlan(seed);
          const whole = valueOf(siteOf(plan, REQUESTS[asked]));
          const parts = dealtOut(plan, REQUESTS[asked], deals);
          expect(JSON.stringify(parts)).toBe(JSON.stringify(whole));
          const text = (result: SiteResult) =>
            siteText(result, [], { together: null, living: null }, { plan, units: 'metric', columns: 80 });
          expect(text(parts)).toBe(text(whole));
          if (whole.options.length > 0) told++;
        }),
        { numRuns: YARDS, seed: 10 },
      );
      expect(told).toBeGreaterThan(YARDS / 2);
    },
  );
});
