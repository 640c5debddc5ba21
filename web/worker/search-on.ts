import type { Outcome, SiteDone, SiteSeen, SiteStep, SiteTask } from '../../engine/index.ts';
import type { SiteArgs } from './answers/advice.ts';
import type { Bridge, CallOptions } from './bridge.ts';

type Step = SiteStep<SiteSeen>;
type Work = Exclude<Step, { readonly result: unknown }>;

/**
 * A search for cloth on several workers at once: whoever is free takes the next task. The answer is that of one worker
 * alone, to the bit. Aborting ends them all.
 */
export async function searchOn(
  [first, ...others]: readonly Bridge[],
  args: SiteArgs,
  options: CallOptions = {},
): Promise<Outcome<SiteSeen>> {
  const silent = { signal: options.signal, weather: options.weather };
  const stepOf = (bridge: Bridge, done: readonly (readonly SiteDone[])[], how: CallOptions) =>
    bridge.call('siteStep', { ...args, done }, how) as Promise<Outcome<Step>>;
  // They lay the yard out meanwhile; what may go wrong with that is told with their tasks.
  for (const other of others) stepOf(other, [], silent).catch(() => undefined);
  const steps: (readonly SiteDone[])[] = [];
  for (;;) {
    const onProgress = steps.length === 0 ? options.onProgress : undefined;
    const step = await stepOf(first, steps, { ...silent, onProgress });
    if (!step.ok) return step;
    if ('result' in step.value) return { ok: true, value: step.value.result };
    const done = await workedOn([first, ...others], step.value, args, options);
    if (!done.ok) return done;
    steps.push(done.value);
  }
}

/** What a step's tasks came to, in their order. */
async function workedOn(
  bridges: readonly Bridge[],
  { tasks, from, to }: Work,
  args: SiteArgs,
  options: CallOptions,
): Promise<Outcome<SiteDone[]>> {
  const left = [...tasks.entries()];
  const done: SiteDone[] = [];
  const reached = tasks.map(() => 0);
  let wrong: Outcome<never> | null = null;
  const work = async (bridge: Bridge, k: number, task: SiteTask): Promise<void> => {
    const onProgress: CallOptions['onProgress'] = ({ done: share, what }) => {
      reached[k] = share;
      const all = reached.reduce((sum, each) => sum + each, 0) / tasks.length;
      options.onProgress?.({ done: from + (to - from) * all, what });
    };
    const asked = { ...args, task, beside: done.filter(Boolean) };
    const answer = (await bridge.call('siteTask', asked, { ...options, onProgress })) as Outcome<SiteDone>;
    reached[k] = 1;
    if (answer.ok) done[k] = answer.value;
    else wrong = answer;
  };
  // Whoever did the like before knows more of it already.
  const nextFor = (turn: number) => {
    const like = left.findIndex(([k]) => k % bridges.length === turn);
    return left.splice(Math.max(0, like), 1)[0];
  };
  await Promise.all(
    bridges.map(async (bridge, turn) => {
      for (let next; wrong === null && (next = nextFor(turn)) !== undefined;) await work(bridge, ...next);
    }),
  );
  return wrong ?? { ok: true, value: done };
}
