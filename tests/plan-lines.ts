/** What the verbs of the command line do with a plan on standard input. */

import { main } from '../engine/cli.ts';

/** Argument lines of the verbs that take a plan, for one with the plant `p0` and the canopy `roof`. */
export const PLAN_LINES = [
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
  'doubt - --option A',
  'site - --size 2x2 --height 2.4',
  'site - --hidden-heights',
  'draw -',
  'draw - --as dxf',
  'draw - --canopy roof --view side',
  'survey marks - --mark roof@3,3@2026-05-02T10:40',
  'report -',
  'load - --json',
  'load - --geojson --cell 1',
] as const;

/** What no text for people holds, unless a program went wrong. */
export const NO_VALUE = /\b(?:NaN|undefined|Infinity)\b|\[object /;

export interface Ran {
  readonly code: number;
  /** [ms of processor time] */
  readonly took: number;
  readonly out: string;
  readonly err: string;
}

/** What a verb does with a plan on its standard input. */
export async function ran(line: string, input: Uint8Array): Promise<Ran> {
  let [out, err] = ['', ''];
  const started = process.cpuUsage();
  const code = await main(line.split(' '), {
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
