import { createHash } from 'node:crypto';
import { closeSync, existsSync, openSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { inject, vi } from 'vitest';
import { main } from '../engine/cli.ts';
import { verbsFor } from '../engine/output/verbs/index.ts';
import type { Verb } from '../engine/output/verbs/verb.ts';

/** What a command line did. */
export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** The same work printed both ways. */
interface RanBothWays {
  readonly text: Ran;
  readonly json: Ran;
}

/** An argument line as a shell splits it: spaces part words, double quotes hold them together. */
function splitLine(line: string): string[] {
  return [...line.matchAll(/"([^"]*)"|(\S+)/g)].map((match) => match[1] ?? match[2]);
}

/**
 * What an argument line does in the project's folder, without a terminal. The same line answers the same, and some
 * take long: in all files of a run it is worked out once, by whoever asks first, and printed as text and as JSON.
 */
export async function runLine(line: string): Promise<Ran> {
  const asText = line.replace(/ --json\b/, '');
  const kept = join(inject('answers'), `${createHash('sha256').update(asText).digest('hex')}.json`);
  const begun = `${kept}.begun`;
  while (!existsSync(kept)) {
    if (isFirst(begun)) {
      try {
        writeFileSync(begun, JSON.stringify(await bothWays(asText)));
        // Whole or not at all: another worker may look for it now.
        renameSync(begun, kept);
      } finally {
        rmSync(begun, { force: true });
      }
    } else await pause(20);
  }
  const ran = JSON.parse(readFileSync(kept, 'utf8')) as RanBothWays;
  return asText === line ? ran.text : ran.json;
}

/** Whether nobody else has begun: of all workers only one makes a file. */
function isFirst(file: string): boolean {
  try {
    closeSync(openSync(file, 'wx'));
    return true;
  } catch (fault) {
    if (fault instanceof Error && 'code' in fault && fault.code === 'EEXIST') return false;
    throw fault;
  }
}

/** Two lines of one verb at once would spy on each other: one after the other. */
let before: Promise<unknown> = Promise.resolve();

function bothWays(asText: string): Promise<RanBothWays> {
  const ran = before.then(() => bothWaysAlone(asText));
  before = ran.catch(() => undefined);
  return ran;
}

/** A verb gives both its text and its values: for the second print it hands out what it gave for the first. */
async function bothWaysAlone(asText: string): Promise<RanBothWays> {
  const words = splitLine(asText);
  const given = new Map<Verb, ReturnType<Verb['run']>>();
  const spies = (await verbsFor(words)).map((verb) => {
    const { run } = verb;
    return vi.spyOn(verb, 'run').mockImplementation((request) => {
      const result = given.get(verb) ?? run(request);
      given.set(verb, result);
      return result;
    });
  });
  try {
    return { text: await printed(words), json: await printed([...words, '--json']) };
  } finally {
    for (const spy of spies) spy.mockRestore();
  }
}

async function printed(words: readonly string[]): Promise<Ran> {
  let out = '';
  let err = '';
  const code = await main(words, {
    out: (text) => void (out += text),
    err: (text) => void (err += text),
    readFile: (path) => readFileSync(path),
    readInput() {
      throw new Error('nobody types here');
    },
    terminal: { columns: 80, colour: false, watched: true },
    now: () => 0,
  });
  return { code, out, err };
}

/** The JSON that a line prints. */
export async function jsonOf(line: string): Promise<unknown> {
  const { code, out, err } = await runLine(`${line} --json`);
  if (code !== 0) throw new Error(err);
  return JSON.parse(out);
}
