/**
 * The command line: reads arguments and files, runs one verb, prints. Everything it computes stands in `engine/output`
 * and upstream, and is
 * loaded with the verb, so that a broken plan is refused without it.
 */
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { type Command, readCommand } from './output/text/command-line.ts';
import { helpText, verbHelpText } from './output/text/help.ts';
import { oneLine } from './output/text/plain-text.ts';
import { verbsFor } from './output/verbs/index.ts';
import { DEMO_NAMES, demoPlan, isDemoName } from './plan/demos/index.ts';
import { withOptions } from './plan/options.ts';
import { parsePlan } from './plan/file/parse.ts';
import { planText } from './plan/file/serialize.ts';
import type { Plan, Problem } from './plan/types.ts';
import { unitsOf } from './plan/units.ts';
import type { Weather } from './sun/weather.ts';

/** The machine as the command line sees it. */
export interface Machine {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly readFile: (path: string) => Uint8Array;
  readonly readInput: () => Uint8Array;
  /** Whether standard output is a terminal, how wide, and whether colour is wanted there. */
  readonly terminal: { readonly columns: number; readonly colour: boolean };
  /** Running time. [ms] */
  readonly now: () => number;
}

const PROGRESS_AFTER_MS = 500;

type Read<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problems: readonly Problem[] };

/** @returns 0 done, 1 the plan or an option is wrong, 2 a fault of the program */
export async function main(argv: readonly string[], machine: Machine): Promise<number> {
  try {
    const verbs = await verbsFor(argv);
    const command = readCommand(argv, verbs);
    if (command.kind === 'wrong') return refuse(machine, command.problems);
    if (command.kind === 'help') {
      machine.out(command.verb ? verbHelpText(command.verb) : helpText(verbs));
      return 0;
    }
    return await run(command, machine);
  } catch (fault) {
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
  const warnings = read?.value.warnings ?? [];
  if (verb.name !== 'check')
    for (const { pointer, message } of warnings) machine.err(`warning ${located(pointer, message)}\n`);

  const typedUnits = values.units?.[0];
  const started = machine.now();
  let told = started;
  const result = await verb.run({
    plan: changed?.plan,
    optionIds,
    warnings,
    period,
    weather: weather?.value,
    units:
      typedUnits === 'imperial' || typedUnits === 'metric' ? typedUnits : changed ? unitsOf(changed.plan) : 'metric',
    values,
    page: machine.terminal,
    progress(done, what) {
      const now = machine.now();
      if (done >= 1 || now - told < PROGRESS_AFTER_MS) return;
      told = now;
      machine.err(`${Math.round(done * 100)} %: ${what}\n`);
    },
  });
  if (!result.ok) return refuse(machine, result.problems);
  for (const note of result.notes ?? []) machine.err(`${oneLine(note)}\n`);
  const text = json ? JSON.stringify(result.json) : result.text;
  const rough = changed?.plan.climate.from === 'rough' && weather === null && verb.common.includes('weather');
  // Beside every number that hangs on it; some pages say so themselves.
  if (rough && !/\brough\b/.test(result.text)) machine.err('The climate is rough: every number that follows is too.\n');
  machine.out(text.endsWith('\n') ? text : `${text}\n`);
  return 0;
}

function readPlan(name: string, machine: Machine): Read<{ plan: Plan; warnings: readonly Problem[] }> {
  const bytes = planBytes(name, machine);
  if (!bytes.ok) return bytes;
  const parsed = parsePlan(bytes.value);
  return parsed.ok ? { ok: true, value: parsed } : parsed;
}

function planBytes(name: string, machine: Machine): Read<Uint8Array | string> {
  if (name === '-') return { ok: true, value: machine.readInput() };
  if (name === 'demo') return { ok: true, value: planText(demoPlan(DEMO_NAMES[0])) };
  if (name.startsWith('demo:')) {
    const demo = name.slice('demo:'.length);
    if (isDemoName(demo)) return { ok: true, value: planText(demoPlan(demo)) };
    return wrongFile(
      `There is no demo yard "${demo}"; there are ${DEMO_NAMES.map((known) => `demo:${known}`).join(' and ')}.`,
    );
  }
  return readBytes(name, machine);
}

async function readWeather(path: string, machine: Machine): Promise<Read<Weather>> {
  const bytes = readBytes(path, machine);
  if (!bytes.ok) return bytes;
  const { parseEpw } = await import('./sun/epw.ts');
  const parsed = parseEpw(bytes.value);
  if (!parsed.ok)
    return { ok: false, problems: parsed.problems.map((problem) => ({ ...problem, pointer: '--weather' })) };
  const { bridged } = parsed.weather;
  if (bridged > 0)
    machine.err(`${bridged} missing values of the weather file were bridged from the hours beside them.\n`);
  return { ok: true, value: parsed.weather };
}

const FILE_FAULTS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'that is a folder',
  EACCES: 'it may not be read',
};

function readBytes(path: string, machine: Machine): Read<Uint8Array> {
  try {
    return { ok: true, value: machine.readFile(path) };
  } catch (fault) {
    const code = fault instanceof Error && 'code' in fault ? String(fault.code) : '';
    return wrongFile(`Cannot read "${path}": ${FILE_FAULTS[code] ?? (code || 'it cannot be read')}.`);
  }
}

function wrongFile(message: string): { ok: false; problems: Problem[] } {
  return { ok: false, problems: [{ pointer: '', message, severity: 'error' }] };
}

/** One line a problem on standard error, nothing on standard output. */
function refuse(machine: Machine, problems: readonly Problem[]): number {
  for (const { pointer, message } of problems) machine.err(`${located(pointer, message)}\n`);
  return 1;
}

function located(pointer: string, message: string): string {
  return oneLine(pointer === '' || message.startsWith(pointer) ? message : `${pointer}: ${message}`);
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const { stdout } = process;
  // A reader such as `head` may close the pipe early: no fault of ours.
  stdout.on('error', () => process.exit(0));
  process.exitCode = await main(process.argv.slice(2), {
    out: (text) => void stdout.write(text),
    err: (text) => void process.stderr.write(text),
    readFile: (path) => readFileSync(path),
    readInput: () => readFileSync(0),
    terminal: {
      columns: stdout.columns ?? 80,
      colour: stdout.isTTY === true && !process.env.NO_COLOR && process.env.TERM !== 'dumb',
    },
    now: () => Math.round(performance.now()),
  });
}
