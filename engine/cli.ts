/**
 * The command line: reads arguments and files, runs one verb, prints. Everything it computes stands in `engine/output`
 * and upstream, and is loaded with the verb, so that a broken plan is refused without it.
 */

import { closeSync, openSync, readSync, writeSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { pathToFileURL } from 'node:url';
import { type Command, readCommand } from './output/text/command-line.ts';
import { helpText, verbHelpText } from './output/text/help.ts';
import { jsonPieces } from './output/text/json-text.ts';
import { oneLine, pageOf, withTextsOnOneLine } from './output/text/plain-text.ts';
import { verbsFor } from './output/verbs/index.ts';
import { DEMO_NAMES, demoPlan, isDemoName } from './plan/demos/index.ts';
import { LIMITS } from './plan/file/limits.ts';
import { parsePlan } from './plan/file/parse.ts';
import { planText } from './plan/file/serialize.ts';
import { refusal } from './plan/problems.ts';
import type { Plan, Problem } from './plan/types.ts';
import { unitsOf } from './plan/units/units.ts';
import { closedInQuotes } from './plan/words/shown-name.ts';
import { withOptions } from './plan/yards/options.ts';
import { isRough, type Weather } from './sun/weather/weather.ts';

/** The machine as the command line sees it. */
export interface Machine {
  /** Settles when the text is written, so that no more is made than the reader takes; fails when it cannot be. */
  readonly out: (text: string) => void | Promise<void>;
  readonly err: (text: string) => void;
  /** Both read one byte more than `most` at the most: enough to see that there is more. */
  readonly readFile: (path: string, most: number) => Uint8Array;
  readonly readInput: (most: number) => Uint8Array;
  /** How wide the output is, whether colour is wanted there, and whether somebody watches what goes on. */
  readonly terminal: { readonly columns: number; readonly colour: boolean; readonly watched: boolean };
  /** Running time. [ms] */
  readonly now: () => number;
}

const PROGRESS_AFTER_MS = 500;
/** No page is made narrower, and none wider than a line that is read at a glance. [characters] */
const LEAST_COLUMNS = 40;
const MOST_COLUMNS = 100;

/** A result that could not be written: the machine's fault, thrown by `printed` and told by `main` only. */
class LostOutput extends Error {}

type Read<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * @returns 0 done, 1 the plan or an option is wrong, 2 a fault of the program, or a result that could not be written
 */
export async function main(argv: readonly string[], machine: Machine): Promise<number> {
  const columns = Math.min(MOST_COLUMNS, Math.max(LEAST_COLUMNS, machine.terminal.columns));
  try {
    const verbs = await verbsFor(argv);
    const command = readCommand(argv, verbs);
    if (command.kind === 'wrong') return refuse(machine, command.problems);
    if (command.kind === 'help') {
      const help = command.verb ? verbHelpText(command.verb, columns) : helpText(verbs, columns);
      await print([pageOf(help, columns)], machine);
      return 0;
    }
    return await run(command, { ...machine, terminal: { ...machine.terminal, columns } });
  } catch (fault) {
    // A reader such as `head` may close the pipe early: no fault of ours, and nobody left to tell.
    if (fault instanceof LostOutput && codeOf(fault.cause) === 'EPIPE') return 0;
    if (fault instanceof LostOutput) {
      machine.err(`${fault.message}\n`);
      return 2;
    }
    machine.err(
      `A fault of the program, not of the plan: ${oneLine(fault instanceof Error ? fault.message : String(fault))}\n`,
    );
    return 2;
  }
}

async function run(command: Extract<Command, { kind: 'run' }>, machine: Machine): Promise<number> {
  const { verb, values, period, json } = command;
  const read = command.plan === null ? null : readPlan(command.plan, machine);
  if (read && !read.ok) return refuse(machine, read.problems);
  const optionIds = (values.option ?? []).map(String);
  const changed = read && withOptions(read.value.plan, optionIds);
  if (changed && !changed.ok) return refuse(machine, changed.problems);
  const weather = values.weather ? await readWeather(String(values.weather[0]), machine) : null;
  if (weather && !weather.ok) return refuse(machine, weather.problems);
  if (weather && changed) {
    const { weatherWarnings } = await import('./sun/weather/weather-fit.ts');
    for (const { message } of weatherWarnings(changed.plan, weather.value))
      machine.err(`warning ${oneLine(message)}\n`);
  }
  const drawing = values.drawing ? readDrawing(String(values.drawing[0]), machine) : null;
  if (drawing && !drawing.ok) return refuse(machine, drawing.problems);
  const warnings = read?.value.warnings ?? [];
  if (verb.name !== 'check')
    for (const { pointer, message } of warnings) machine.err(`warning ${located(pointer, message)}\n`);

  const typedUnits = values.units?.[0];
  const started = machine.now();
  let told = started;
  const result = await verb.run({
    plan: changed?.plan,
    drawn: read?.value.plan,
    optionIds,
    warnings,
    period,
    weather: weather?.value,
    drawing: drawing?.value,
    units:
      typedUnits === 'imperial' || typedUnits === 'metric' ? typedUnits : changed ? unitsOf(changed.plan) : 'metric',
    values,
    page: machine.terminal,
    progress(done, what) {
      const now = machine.now();
      if (!machine.terminal.watched || done >= 1 || now - told < PROGRESS_AFTER_MS) return;
      told = now;
      machine.err(`${Math.round(done * 100)} %: ${what}\n`);
    },
  });
  if (!result.ok) return refuse(machine, result.problems);
  for (const note of result.notes ?? []) machine.err(`${oneLine(note)}\n`);
  const rough = changed !== null && isRough(changed.plan, weather?.value) && verb.common.includes('weather');
  const toldThere = json ? result.tellsRough === 'text and json' : result.tellsRough !== undefined;
  // Beside every number that hangs on it.
  if (rough && !toldThere) machine.err('The climate is rough: every number that follows is too.\n');
  const sources = values.sources && result.sources ? `\n${result.sources}` : '';
  const text = () => [pageOf(result.text + sources, machine.terminal.columns)];
  await print(json ? jsonPieces(result.json) : (result.file ?? text()), machine);
  return 0;
}

/** Writes a result piece by piece, the next when the last is gone, and ends its last line. */
async function print(pieces: Iterable<string>, machine: Machine): Promise<void> {
  let last = '';
  const write = async (piece: string) => {
    try {
      await machine.out(piece);
    } catch (fault) {
      const why = FILE_FAULTS[codeOf(fault)] ?? (codeOf(fault) || 'it cannot be written');
      throw new LostOutput(`The result could not be written whole: ${why}.`, { cause: fault });
    }
  };
  for (const piece of pieces) {
    if (piece === '') continue;
    last = piece;
    await write(piece);
  }
  if (!last.endsWith('\n')) await write('\n');
}

function readPlan(name: string, machine: Machine): Read<{ plan: Plan; warnings: readonly Problem[] }> {
  const bytes = planBytes(name, machine);
  if (!bytes.ok) return bytes;
  const parsed = parsePlan(bytes.value);
  // Once for every verb, before anything is made of a name.
  return parsed.ok ? { ok: true, value: { ...parsed, plan: withTextsOnOneLine(parsed.plan) } } : parsed;
}

function planBytes(name: string, machine: Machine): Read<Uint8Array | string> {
  if (name === '-') return readBytes('standard input', () => machine.readInput(LIMITS.fileBytes));
  if (name === 'demo') return { ok: true, value: planText(demoPlan(DEMO_NAMES[0])) };
  if (name.startsWith('demo:')) {
    const demo = name.slice('demo:'.length);
    if (isDemoName(demo)) return { ok: true, value: planText(demoPlan(demo)) };
    return refusal(
      '',
      `There is no demo yard "${demo}"; there are ${DEMO_NAMES.map((known) => `demo:${known}`).join(' and ')}.`,
    );
  }
  return readBytes(`"${name}"`, () => machine.readFile(name, LIMITS.fileBytes));
}

async function readWeather(path: string, machine: Machine): Promise<Read<Weather>> {
  const { EPW_MOST_BYTES, parseEpw } = await import('./sun/weather/epw.ts');
  const bytes = readBytes(`"${path}"`, () => machine.readFile(path, EPW_MOST_BYTES));
  if (!bytes.ok) return bytes;
  const parsed = parseEpw(bytes.value);
  if (!parsed.ok)
    return { ok: false, problems: parsed.problems.map((problem) => ({ ...problem, pointer: '--weather' })) };
  return { ok: true, value: parsed.weather };
}

/** Text of a drawing out of another program. */
function readDrawing(path: string, machine: Machine): Read<string> {
  const bytes = readBytes(`"${path}"`, () => machine.readFile(path, LIMITS.fileBytes));
  if (!bytes.ok) return bytes;
  return bytes.value.length > LIMITS.fileBytes
    ? refusal('', `"${path}" is larger than ${LIMITS.fileBytes / 1e6} MB: save only what you need of it.`)
    : { ok: true, value: new TextDecoder().decode(bytes.value) };
}

const FILE_FAULTS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'that is a folder',
  EACCES: 'it may not be read',
  ENOSPC: 'there is no room left',
  EDQUOT: 'there is no room left',
  EFBIG: 'it would be too large',
};

/** @param what Named in the sentence if it cannot be read. */
function readBytes(what: string, read: () => Uint8Array): Read<Uint8Array> {
  try {
    return { ok: true, value: read() };
  } catch (fault) {
    return refusal('', `Cannot read ${what}: ${FILE_FAULTS[codeOf(fault)] ?? (codeOf(fault) || 'it cannot be read')}.`);
  }
}

/** The system's short name of a fault, as ENOENT; '' if it has none. */
function codeOf(fault: unknown): string {
  return fault instanceof Error && 'code' in fault ? String(fault.code) : '';
}

/** One line a problem on standard error, nothing on standard output. */
function refuse(machine: Machine, problems: readonly Problem[]): number {
  for (const { pointer, message } of problems) machine.err(`${located(pointer, message)}\n`);
  return 1;
}

function located(pointer: string, message: string): string {
  return closedInQuotes(oneLine(pointer === '' || message.startsWith(pointer) ? message : `${pointer}: ${message}`));
}

const [INPUT, OUTPUT] = [0, 1];
const PAUSE_MS = 5;

/** At most one byte more than `most`, so that a device without an end can be named too. */
function readUpTo(file: number, most: number): Uint8Array {
  const chunks: Buffer[] = [];
  for (let left = most + 1; left > 0;) {
    const chunk = Buffer.alloc(Math.min(left, 1_048_576));
    const count = readSync(file, chunk);
    if (count === 0) break;
    chunks.push(chunk.subarray(0, count));
    left -= count;
  }
  return Buffer.concat(chunks);
}

/** Written to the last byte: a disk that fills up may take a part and say nothing; a full pipe is waited for. */
async function writeWhole(file: number, text: string): Promise<void> {
  const bytes = Buffer.from(text);
  for (let at = 0; at < bytes.length;) {
    try {
      at += writeSync(file, bytes, at);
    } catch (fault) {
      if (codeOf(fault) !== 'EAGAIN') throw fault;
      await pause(PAUSE_MS);
    }
  }
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const { stdout, stderr, env } = process;
  // With nobody to tell, only the exit code can say that a warning was lost; a closed pipe was closed on purpose.
  stderr.on('error', (fault) => (process.exitCode = codeOf(fault) === 'EPIPE' ? process.exitCode : 2));
  const columns = Number(env.COLUMNS);
  const code = await main(process.argv.slice(2), {
    out: (text) => writeWhole(OUTPUT, text),
    err: (text) => void stderr.write(text),
    readFile(path, most) {
      const file = openSync(path, 'r');
      try {
        return readUpTo(file, most);
      } finally {
        closeSync(file);
      }
    },
    readInput: (most) => readUpTo(INPUT, most),
    terminal: {
      columns: Number.isInteger(columns) && columns > 0 ? columns : (stdout.columns ?? 80),
      colour: stdout.isTTY === true && !env.NO_COLOR && env.TERM !== 'dumb',
      watched: stderr.isTTY === true,
    },
    now: () => Math.round(performance.now()),
  });
  process.exitCode = Math.max(code, Number(process.exitCode ?? 0));
}
