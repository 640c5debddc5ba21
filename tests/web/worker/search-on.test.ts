import fc from 'fast-check';
import { expect, test } from 'vitest';
import { siteSeen } from '../../../engine/advice/site/sights.ts';
import { siteOf } from '../../../engine/advice/site/site.ts';
import type { Outcome, SiteRequest } from '../../../engine/index.ts';
import { answers } from '../../../web/worker/answers/advice.ts';
import type { Bridge, CallOptions } from '../../../web/worker/bridge.ts';
import { searchOn } from '../../../web/worker/search-on.ts';
import { smallPlan } from '../../engine/advice/site/small-plans.ts';
import { valueOf } from '../../parts/outcome.ts';

const REQUEST: SiteRequest = {
  kinds: ['roof', 'screen'],
  sizes: [{ length: 1.5, width: 1 }],
  heights: [1.8],
  step: 0.5,
  turnStep: 45,
};

interface Worked {
  readonly bridge: Bridge;
  readonly calls: string[];
  readonly aborted: string[];
}

/** A worker in this thread: each answer is so many turns of the loop late. */
function worker(late: () => number, fails = (_method: string) => false): Worked {
  const calls: string[] = [];
  const aborted: string[] = [];
  const call = async (method: string, args: unknown, { signal, onProgress }: CallOptions = {}) => {
    calls.push(method);
    signal?.addEventListener('abort', () => aborted.push(method));
    const sent = structuredClone(args) as never;
    for (let k = late(); k > 0; k--) await new Promise((go) => setImmediate(go));
    if (fails(method)) return { ok: false, problems: [] } as Outcome<never>;
    signal?.throwIfAborted();
    return answers[method as 'siteStep'](sent, {
      progress: (done, what) => onProgress?.({ done, what }),
    });
  };
  return { bridge: { call, end: () => undefined }, calls, aborted };
}

test('two workers tell what one thread tells, however late either is', { timeout: 120_000 }, async () => {
  const plan = smallPlan(7);
  const whole = siteSeen(plan, valueOf(siteOf(plan, REQUEST)));
  expect(whole.result.options.length).toBeGreaterThan(0);
  await fc.assert(
    fc.asyncProperty(fc.array(fc.nat(30), { minLength: 12, maxLength: 12 }), async (delays) => {
      let k = 0;
      const workers = [0, 1].map(() => worker(() => delays[k++ % delays.length]));
      const told: number[] = [];
      const onProgress: CallOptions['onProgress'] = ({ done }) => told.push(done);
      const found = await searchOn(
        workers.map(({ bridge }) => bridge),
        { plan, request: REQUEST },
        { onProgress },
      );
      expect(JSON.stringify(valueOf(found))).toBe(JSON.stringify(whole));
      expect(told).toEqual(told.toSorted((a, b) => a - b));
    }),
    { numRuns: 3, seed: 3 },
  );
});

test('both take part, both are called off together, and what goes wrong with either is told', async () => {
  const args = { plan: smallPlan(7), request: REQUEST };
  const both = [worker(() => 1), worker(() => 1)];
  const bridges = both.map(({ bridge }) => bridge);
  expect((await searchOn(bridges, args)).ok).toBe(true);
  for (const { calls } of both) expect(calls).toContain('siteTask');

  const controller = new AbortController();
  const slow = [worker(() => 50), worker(() => 50)];
  const search = searchOn(
    slow.map(({ bridge }) => bridge),
    args,
    { signal: controller.signal },
  );
  controller.abort();
  await expect(search).rejects.toThrow();
  for (const { aborted } of slow) expect(aborted).toEqual(['siteStep']);

  for (const bad of [0, 1]) {
    const workers = [0, 1].map((k) =>
      worker(
        () => 1,
        (method) => k === bad && method === 'siteTask',
      ),
    );
    const found = await searchOn(
      workers.map(({ bridge }) => bridge),
      args,
    );
    expect(found.ok).toBe(false);
  }
});
