/**
 * Plans that `check` accepts, as hard as they come, through all verbs of the command line: what takes longer than it
 * should, and of which verb which plan takes longest. Run by hand: `node --import tsx tests/bench/hard-plans.ts COUNT
 * SEED [YARD …] [VERB …]`; without yards every kind in turn, without verbs all but `site`, which takes as long as the
 * others together. Each plan has a seed of its own, by which it comes again: COUNT 1, SEED, its YARD.
 */

import { hardPlan, holds, YARD_NAMES, type YardName } from '../hard-plans.ts';
import { NO_VALUE, PLAN_LINES, ran } from '../plan-lines.ts';

/** Of the processor's own time, so that what else runs on the machine does not count. [ms] */
const SLOW = 5000;

interface Took {
  readonly ms: number;
  readonly of: string;
}

const [count, seed] = [Number(process.argv[2] ?? 20), Number(process.argv[3] ?? 1)];
const words = process.argv.slice(4);
const isYard = (word: string): word is YardName => YARD_NAMES.some((name) => name === word);
const named = words.filter(isYard);
const wanted = words.filter((word) => !isYard(word));
const lines = PLAN_LINES.filter((line) => {
  const [verb] = line.split(' ');
  return wanted.length > 0 ? verb === 'check' || wanted.includes(verb) : !line.startsWith('site - --size');
});

const took = new Map<string, Took[]>();
const found = { plans: 0, accepted: 0, calls: 0, done: 0, refused: 0, slow: 0, faults: 0, noValue: 0 };
for (let k = 0; k < count; k++) {
  const yards = named.length > 0 ? named : YARD_NAMES;
  const yard = yards[k % yards.length];
  const plan = hardPlan(yard, seed + k);
  const input = new TextEncoder().encode(JSON.stringify(plan));
  const of = `${yard} ${seed + k}: ${holds(plan)}`;
  found.plans += 1;
  for (const line of lines) {
    const { code, took: ms, out, err } = await ran(line, input);
    const empty = NO_VALUE.exec(`${out}\n${err}`);
    found.calls += 1;
    found.done += Number(code === 0);
    found.refused += Number(code === 1);
    found.faults += Number(code > 1);
    found.slow += Number(ms > SLOW);
    found.noValue += Number(empty !== null);
    took.set(line, [...(took.get(line) ?? []), { ms, of }]);
    if (ms > SLOW || code > 1 || empty !== null) {
      const why = code > 1 ? ` ${err.slice(0, 500)}` : '';
      const told = empty === null ? '' : ` says ${empty.input.slice(Math.max(0, empty.index - 60), empty.index + 30)}`;
      console.log(`${line}: exit ${code}, ${Math.round(ms)} ms, ${of}${why}${told}`);
    }
    if (line.startsWith('check') && code === 1) break;
    if (line.startsWith('check')) found.accepted += 1;
  }
}
for (const [line, all] of took) {
  const sorted = all.toSorted((a, b) => a.ms - b.ms);
  const at = (share: number) => sorted[Math.floor(share * (sorted.length - 1))];
  const [half, most, worst] = [0.5, 0.95, 1].map((share) => `${Math.round(at(share).ms)} ms`);
  console.log(`${line}: half under ${half}, 95 of 100 under ${most}, most ${worst} (${at(1).of})`);
}
console.log(JSON.stringify(found));
