/**
 * Plans that `check` accepts, as hard as they come, through all verbs of the command line: what takes longer than it
 * should, what ends otherwise than with a result or a refusal in plain sentences, and what tells a person of a value
 * that is none. Run by hand: `node --import tsx tests/bench/hard-plans.ts COUNT SEED [YARD …] [VERB …]`; without yards
 * every kind in turn, without verbs all but `site`, which takes as long as the others together.
 */

import { main } from '../../engine/cli.ts';
import { CATALOGUE } from '../../engine/plan/catalogue/plants.ts';
import type { Feature, Plan, PlanPoint } from '../../engine/plan/types.ts';
import { randomFrom, randomPlan } from '../engine/cast/random-plans.ts';
import { YARD } from './yard.ts';

/** Of the processor's own time, so that what else runs on the machine does not count. [ms] */
const SLOW = 5000;

/** What no text for people holds, unless a program went wrong. */
const NO_VALUE = /\b(?:NaN|undefined|Infinity)\b|\[object /;

const VERBS = [
  'check -',
  'load -',
  'spot - --at 3,3',
  'spot - --at 2,2 --sky',
  'spot - --at 2,2 --weeks year --plant p0',
  'why - --plant p0',
  'why - --plant p0 --side SW',
  'season -',
  'season - --ics',
  'season - --high 41 --day 2026-07-21',
  'review -',
  'sheet - --canopy roof',
  'compare -',
  'place - --plant p0',
  'doubt -',
  'site - --size 2x2 --height 2.4',
  'site - --hidden-heights',
  'draw -',
  'draw - --as dxf',
  'draw - --canopy roof --view side',
  'report -',
  'load - --json',
  'load - --geojson --cell 1',
];

const [count, seed] = [Number(process.argv[2] ?? 20), Number(process.argv[3] ?? 1)];
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

interface Planted {
  readonly width: readonly [number, number];
  readonly depth: readonly [number, number];
  readonly trees: readonly [number, number];
  readonly beds: readonly [number, number];
  readonly plants: readonly [number, number];
}

/** A house, a wall round it, a few trees and beds, and pots and pots, in a place where the sun comes high or low. */
function plantedYard(sizes: Planted): Plan {
  const between = ([low, high]: readonly [number, number]) => low + upTo(high - low);
  const [width, height] = [between(sizes.width), between(sizes.depth)];
  const at = (): PlanPoint => [1 + upTo(width - 2), 1 + upTo(height - 5)];
  const known = () => CATALOGUE[Math.floor(upTo(CATALOGUE.length))].id;
  const list = (often: readonly [number, number], make: (k: number) => Feature) =>
    Array.from({ length: Math.floor(between(often)) }, (_, k) => make(k));
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
    { id: 'window', kind: 'eye', path: [[width + 4, upTo(height)]], height: 1 + upTo(5) },
    ...list(sizes.trees, (k) => ({
      id: `tree-${k}`,
      kind: 'tree',
      at: at(),
      height: 3 + upTo(4),
      crownWidth: 2 + upTo(3),
      crownBase: 1,
      openness: upTo(0.4),
    })),
    ...list(sizes.beds, (k) => ({
      id: `bed-${k}`,
      kind: 'bed',
      outline: box(at(), 1 + upTo(3), 0.8),
      plantHeight: 0.2 + upTo(0.8),
      plant: known(),
    })),
    ...list(sizes.plants, (k) => ({
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
  const latitude = random() < 0.5 ? YARD.site.latitude : upTo(110) - 55;
  return { ...YARD, ...yearAt(latitude), site: { ...YARD.site, latitude, boundary }, features, options };
}

/** A season of the summer there, and months of every kind of climate. */
function yearAt(latitude: number): Pick<Plan, 'season' | 'climate'> {
  const [mean, swing] = [14 + upTo(20), upTo(14) * Math.sign(latitude)];
  const months = Array.from({ length: 12 }, (_, k) => {
    const high = mean - swing * Math.cos((k * Math.PI) / 6);
    return { month: k + 1, high, low: high - 4 - upTo(14), humidity: upTo(100), sunshine: upTo(1), wind: upTo(8) };
  });
  const hottest = Math.max(...months.map(({ high }) => high));
  const season = latitude < 0 ? { year: 2026, from: '11-15', to: '03-15' } : YARD.season;
  const frost = random() < 0.5 ? { first: '11-20', last: '03-10', lowest: -upTo(12) } : undefined;
  return { season, climate: { hotAir: hottest - 2, heatwaveHigh: hottest + 6, months, frost } };
}

/** What a balcony or a court has, what a garden has, and what somebody has who cannot pass a nursery. */
const smallYard = () => plantedYard({ width: [8, 12], depth: [7, 10], trees: [0, 2], beds: [0, 2], plants: [0, 5] });
const middleYard = () => plantedYard({ width: [10, 18], depth: [9, 14], trees: [1, 4], beds: [1, 4], plants: [5, 16] });
const fullYard = () => plantedYard({ width: [12, 30], depth: [10, 22], trees: [1, 7], beds: [2, 8], plants: [10, 70] });

const YARDS = {
  small: smallYard,
  middle: middleYard,
  full: fullYard,
  crowded: crowdedYard,
  crammed: crammedYard,
};
type YardName = keyof typeof YARDS;

const isYard = (word: string): word is YardName => Object.hasOwn(YARDS, word);
const words = process.argv.slice(4);
const wanted = words.filter((word) => !isYard(word));
const asked = VERBS.filter((verb) => {
  const [name] = verb.split(' ');
  return wanted.length > 0 ? name === 'check' || wanted.includes(name) : !verb.startsWith('site - --size');
});
const named = words.filter(isYard);
const yards = (named.length > 0 ? named : (Object.keys(YARDS) as YardName[])).map((name) => YARDS[name]);

const tookBy: Record<string, number[]> = {};
const found = { plans: 0, calls: 0, done: 0, refused: 0, slow: 0, faults: 0, noValue: 0 };
for (let k = 0; k < count; k++) {
  const plan = yards[k % yards.length]();
  const input = new TextEncoder().encode(JSON.stringify(plan));
  found.plans += 1;
  for (const verb of asked) {
    const { code, took, out, err } = await ran(verb, input);
    const empty = NO_VALUE.exec(`${out}\n${err}`);
    found.calls += 1;
    found.done += Number(code === 0);
    found.refused += Number(code === 1);
    found.faults += Number(code > 1);
    found.slow += Number(took > SLOW);
    found.noValue += Number(empty !== null);
    (tookBy[verb] ??= []).push(took);
    if (took > SLOW || code > 1 || empty !== null) {
      const why = code > 1 ? ` ${err.slice(0, 500)}` : '';
      const told = empty === null ? '' : ` says ${empty.input.slice(Math.max(0, empty.index - 60), empty.index + 30)}`;
      console.log(
        `plan ${k}, ${plan.features.length} things: ${verb}: exit ${code}, ${Math.round(took)} ms${why}${told}`,
      );
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

interface Ran {
  readonly code: number;
  /** [ms of processor time] */
  readonly took: number;
  readonly out: string;
  readonly err: string;
}

/** What a verb does with a plan on its standard input. */
async function ran(verb: string, input: Uint8Array): Promise<Ran> {
  let [out, err] = ['', ''];
  const started = process.cpuUsage();
  const code = await main(verb.split(' '), {
    out: (text) => void (out += text),
    err: (text) => void (err += text),
    readFile: () => input,
    readInput: () => input,
    terminal: { columns: 80, colour: false, watched: true },
    now: () => 0,
  });
  const { user, system } = process.cpuUsage(started);
  return { code, took: (user + system) / 1000, out, err };
}
