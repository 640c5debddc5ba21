import { createHash } from 'node:crypto';
import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { inject } from 'vitest';
import { main } from '../../../../engine/cli.ts';

/** What a command line did. */
export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** An argument line as a shell splits it: spaces part words, double quotes hold them together. */
function splitLine(line: string): string[] {
  return [...line.matchAll(/"([^"]*)"|(\S+)/g)].map((match) => match[1] ?? match[2]);
}

/**
 * What an argument line does in the project's folder, without a terminal. The same line answers the same, and some
 * take long: it is run once in all the run's files.
 */
export async function runLine(line: string): Promise<Ran> {
  const kept = join(inject('answers'), `${createHash('sha256').update(line).digest('hex')}.json`);
  if (existsSync(kept)) return JSON.parse(readFileSync(kept, 'utf8')) as Ran;
  const ran = await runAnew(line);
  // Whole or not at all: another worker may look for it now.
  const begun = `${kept}.${process.pid}`;
  writeFileSync(begun, JSON.stringify(ran));
  renameSync(begun, kept);
  return ran;
}

async function runAnew(line: string): Promise<Ran> {
  let out = '';
  let err = '';
  const code = await main(splitLine(line), {
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
