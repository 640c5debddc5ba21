import { siteSteps } from '../../engine/advice/site/site.ts';
import type { SiteRequest } from '../../engine/advice/site/site-types.ts';
import { createTrial, type Trial } from '../../engine/advice/site/trial.ts';
import { gridOf } from '../../engine/load/grid-of.ts';
import { demoPlan, type DemoName } from '../../engine/plan/demos/index.ts';
import type { Plan } from '../../engine/plan/types.ts';
import type { BenchCase } from './harness.ts';

/** Search and trial on the demo yards. The search's longest step is how long a cancel waits. */
export function casesOf(): BenchCase[] {
  return [
    {
      name: 'site, one size and height',
      note: 'wanted: under 300 ms for the search; the options in full come on top',
      variants: [
        { name: 'courtyard, search', run: () => search('courtyard', { kinds: ['roof'], sizes: [{ length: 3, width: 3 }], heights: [2.2] }) },
        { name: 'courtyard, with one option in full', run: () => whole('courtyard', { kinds: ['roof'], sizes: [{ length: 3, width: 3 }], heights: [2.2], show: 1 }) },
      ],
    },
    {
      name: 'site, all roofs',
      note: 'sizes to 4 × 4 m, turns of 5°, five heights, three densities; wanted: under 3 s',
      variants: [{ name: 'courtyard, search', run: () => search('courtyard', { kinds: ['roof'] }) }],
    },
    {
      name: 'trial, one move',
      note: 'map of the season at 0.25 m, verdicts, payoff; wanted: 16 ms',
      variants: (['courtyard', 'lane'] as const).map((name) => moveOn(name)),
    },
  ];
}

/** The search alone: stopped where the options would be cast in full. */
function search(name: DemoName, request: SiteRequest): number {
  let steps = 0;
  for (const { done } of { [Symbol.iterator]: () => siteSteps(demoPlan(name), request) }) {
    steps++;
    if (done >= 0.8) break;
  }
  return steps;
}

function whole(name: DemoName, request: SiteRequest): number {
  const steps = siteSteps(demoPlan(name), request);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value.ok ? step.value.value.bound : NaN;
  }
}

function moveOn(name: DemoName) {
  const plan = demoPlan(name);
  const [x, y] = name === 'lane' ? [6.3, 9.7] : [8.6, 6.1];
  let trial: Trial | null = null;
  let at = 0;
  const move = (): number => {
    trial ??= laidOut(plan);
    return trial.score([{ id: 'tried', kind: 'canopy', center: [x + 0.05 * (at++ % 20), y], length: 2.5, width: 2.5, height: 2.2, density: 0.5 }]).spared;
  };
  // Twenty moves a round: one alone is lost in the collector's noise.
  return { name, run: () => Array.from({ length: 20 }, move)[19], scale: 1 / 20 };
}

function laidOut(plan: Plan): Trial {
  const trial = createTrial(plan, { kind: 'season' }, gridOf(plan, { cell: 0.25, height: 0.5 }));
  if (!trial.ok) throw new Error(trial.problems[0].message);
  return trial.value;
}
