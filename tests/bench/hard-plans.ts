/**
 * Plans that `check` accepts, as hard as they come, through all verbs of the command line: what takes longer than it
 * should, and what ends otherwise than with a result or a refusal in plain sentences. Run by hand:
 * `node --import tsx tests/bench/hard-plans.ts COUNT SEED [VERB …]`; without verbs all but `site`, which takes as long
 * as the others together.
 */
import { main } from '../../engine/cli.ts';
import type { Feature, Plan, PlanPoint } from '../../engine/plan/types.ts';
import { CATALOGUE } from '../../engine/plan/catalogue.ts';
import { randomFrom, randomPlan } from '../engine/cast/random-plans.ts';
import { YARD } from './yard.ts';

/** Of the processor's own time, so that what else runs on the machine does not count. [ms] */
const SLOW = 5000;

const VERBS = [
  'check -',
  'load -',
  'spot - --at 3,3',
  'why - --plant p0',
  'season -',
  'review -',
  'sheet - --canopy roof',
  'compare -',
  'place - --plant p0',
  'doubt -',
  'site - --size 2x2 --height 2.4',
  'draw -',
  'report -',
  'load - --json',
];

const [count, seed] = [Number(process.argv[2] ?? 20), Number(process.argv[3] ?? 1)];
const wanted = process.argv.slice(4);
const asked = VERBS.filter((verb) => {
  const [name] = verb.split(' ');
  return wanted.length > 0 ? name === 'check' || wanted.includes(name) : name !== 'site';
});
const random = randomFrom(seed);
const upTo = (most: number) => random() * most;
/** Mostly few, now and then very many. */
const many = (most: number) => Math.floor(most * random() ** 6);

/** What every plan has, so that every verb has something to work on. */
const TREATED: readonly Feature[] = [
  { id: 'p0', kind: 'plant', at: [2, 2], height: 1.2, spread: 0.6, plant: 'lemon', container: true },
  { id: 'roof', kind: 'canopy', center: [2, 2], length: 2, width: 2, height: 2.2, density: 0.5 },
];

/** A crowded yard of every kind of thing, with plants out of the table. */
function crowdedYard(): Plan {
  const plan = randomPlan(Math.floor(upTo(2 ** 31)));
  const planted = plan.features.map((feature) =>
    feature.kind === 'plant' || feature.kind === 'bed'
      ? { ...feature, plant: CATALOGUE[Math.floor(upTo(CATALOGUE.length))].id }
      : feature,
  );
  return { ...YARD, site: { ...YARD.site, ...plan.site }, features: [...TREATED, ...planted] };
}

/** Very many walls and trees on any ground. */
function crammedYard(): Plan {
  const [width, height] = [4 + upTo(40) + 160 * random() ** 8, 4 + upTo(40)];
  const at = (): PlanPoint => [upTo(width), upTo(height)];
  const list = (most: number, make: (k: number) => Feature) => Array.from({ length: many(most) }, (_, k) => make(k));
  const features: Feature[] = [
    ...TREATED,
    ...list(600, (k) => ({
      id: `wall-${k}`,
      kind: 'wall',
      path: [at(), at(), at()],
      height: 0.5 + upTo(3),
      thickness: 0.05 + upTo(0.3),
    })),
    ...list(600, (k) => ({
      id: `tree-${k}`,
      kind: 'tree',
      at: at(),
      height: 3 + upTo(9),
      crownWidth: 0.5 + upTo(5),
      crownBase: 1,
      openness: upTo(1),
    })),
  ];
  const boundary: PlanPoint[] = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
  const options = [{ id: 'A', name: 'Moved', moves: { p0: at() } }];
  return { ...YARD, site: { ...YARD.site, boundary }, features, options };
}

/** What somebody has who cannot pass a nursery: a house, a wall round it, a few trees and beds, and pots and pots. */
function fullYard(): Plan {
  const [width, height] = [12 + upTo(18), 10 + upTo(12)];
  const at = (): PlanPoint => [1 + upTo(width - 2), 1 + upTo(height - 5)];
  const known = () => CATALOGUE[Math.floor(upTo(CATALOGUE.length))].id;
  const list = (from: number, most: number, make: (k: number) => Feature) =>
    Array.from({ length: from + Math.floor(upTo(most)) }, (_, k) => make(k));
  const box = ([x, y]: PlanPoint, wide: number, deep: number): PlanPoint[] => [
    [x, y],
    [x + wide, y],
    [x + wide, y + deep],
    [x, y + deep],
  ];
  const boundary = box([0, 0], width, height);
  const features: Feature[] = [
    ...TREATED,
    { id: 'fence', kind: 'wall', path: [...boundary, boundary[0]], height: 1.8, thickness: 0.2 },
    { id: 'house', kind: 'building', outline: box([3, height - 4], width - 6, 3.5), height: 3, eaves: 0.4 },
    ...list(1, 6, (k) => ({
      id: `tree-${k}`,
      kind: 'tree',
      at: at(),
      height: 3 + upTo(4),
      crownWidth: 2 + upTo(3),
      crownBase: 1,
      openness: upTo(0.4),
    })),
    ...list(2, 6, (k) => ({
      id: `bed-${k}`,
      kind: 'bed',
      outline: box(at(), 1 + upTo(3), 0.8),
      plantHeight: 0.2 + upTo(0.8),
      plant: known(),
    })),
    ...list(10, 60, (k) => ({
      id: `plant-${k}`,
      kind: 'plant',
      at: at(),
      height: 0.4 + upTo(1.2),
      spread: 0.3 + upTo(0.6),
      plant: known(),
      container: random() < 0.8,
    })),
  ];
  const options = ['A', 'B'].map((id) => ({ id, name: id, moves: { p0: at() } }));
  return { ...YARD, site: { ...YARD.site, boundary }, features, options };
}

const YARDS = [crowdedYard, crammedYard, fullYard];

const tookBy: Record<string, number[]> = {};
const found = { calls: 0, done: 0, refused: 0, slow: 0, faults: 0 };
for (let k = 0; k < count; k++) {
  const plan = YARDS[k % YARDS.length]();
  const input = new TextEncoder().encode(JSON.stringify(plan));
  for (const verb of asked) {
    let err = '';
    const started = process.cpuUsage();
    const code = await main(verb.split(' '), {
      out: () => undefined,
      err: (text) => void (err += text),
      readFile: () => input,
      readInput: () => input,
      terminal: { columns: 80, colour: false, watched: true },
      now: () => 0,
    });
    const { user, system } = process.cpuUsage(started);
    const took = (user + system) / 1000;
    found.calls += 1;
    found.done += Number(code === 0);
    found.refused += Number(code === 1);
    found.faults += Number(code > 1);
    found.slow += Number(took > SLOW);
    (tookBy[verb] ??= []).push(took);
    if (took > SLOW || code > 1) {
      const why = code > 1 ? ` ${err.slice(0, 500)}` : '';
      console.log(`plan ${k}, ${plan.features.length} things: ${verb}: exit ${code}, ${Math.round(took)} ms${why}`);
    }
    if (verb.startsWith('check') && code === 1) break;
  }
}
for (const [verb, times] of Object.entries(tookBy)) {
  const sorted = times.sort((a, b) => a - b);
  const at = (share: number) => `${Math.round(sorted[Math.floor(share * (sorted.length - 1))])} ms`;
  console.log(`${verb}: half under ${at(0.5)}, 95 of 100 under ${at(0.95)}, most ${at(1)}`);
}
console.log(JSON.stringify(found));
