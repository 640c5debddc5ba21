import { readCivilDate, readMonthDay } from '../../plan/dates/typed-day.ts';
import { errorAt } from '../../plan/problems.ts';
import type { Problem } from '../../plan/types.ts';
import { parseLength, parseNumber } from '../../plan/units/typed.ts';
import type { Period } from '../../sun/samples.ts';
import { ALWAYS, COMMON_OPTIONS } from '../verbs/options.ts';
import type { OptionSpec, OptionValue, OptionValues, Verb } from '../verbs/verb.ts';
import { nearestWord } from './nearest-word.ts';

/** What a person typed, understood; or every reason why not. */
export type Command =
  | { readonly kind: 'help'; readonly verb?: Verb }
  | {
      readonly kind: 'run';
      readonly verb: Verb;
      readonly plan: string | null;
      readonly values: OptionValues;
      readonly period: Period;
      readonly json: boolean;
    }
  | { readonly kind: 'wrong'; readonly problems: readonly Problem[] };

/** The plan's own limit. [m] */
const MAX_COORDINATE = 10_000;

/** More than a path, a name or a number has. [characters] */
const LONGEST = 4096;

/** Understands an argument list against the verbs there are. A value may begin with a minus sign. */
export function readCommand(argv: readonly string[], verbs: readonly Verb[]): Command {
  const long = argv.findIndex(({ length }) => length > LONGEST);
  if (long >= 0) {
    const before = argv[long - 1] ?? '';
    const message = `What is typed there has ${argv[long].length} characters; at most ${LONGEST} are read.`;
    return wrong(before.startsWith('--') ? before : '', message);
  }
  const asksHelp = argv.includes('--help') || argv.includes('-h');
  const found = findVerb(argv, verbs);
  if (found === null) {
    const [word, second] = argv.filter((argument) => argument !== '--help' && argument !== '-h');
    const asksOfGroup = asksHelp && second === undefined && verbs.some(({ name }) => name.startsWith(`${word} `));
    return word === undefined || word === 'help' || asksOfGroup
      ? { kind: 'help' }
      : wrong(argv[0].startsWith('--') ? argv[0] : '', unknownVerb(word, argv, verbs));
  }
  if (asksHelp) return { kind: 'help', verb: found.verb };
  return readOptions(found.verb, argv.slice(found.words));
}

/** Every option a verb knows, its own first. */
export function optionsOf(verb: Verb): OptionSpec[] {
  return [...verb.options, ...verb.common.map((name) => COMMON_OPTIONS[name]), ...ALWAYS];
}

function findVerb(argv: readonly string[], verbs: readonly Verb[]): { verb: Verb; words: number } | null {
  for (const words of [2, 1]) {
    const typed = argv.slice(0, words).join(' ');
    const verb = verbs.find(({ name }) => name === typed && name.split(' ').length === words);
    if (verb) return { verb, words };
  }
  return null;
}

function unknownVerb(word: string, argv: readonly string[], verbs: readonly Verb[]): string {
  const group = verbs.filter(({ name }) => name.startsWith(`${word} `)).map(({ name }) => name);
  if (group.length > 0) {
    const near = argv[1] === undefined ? null : nearestWord(argv.slice(0, 2).join(' '), group);
    return near === null
      ? `Say which: ${group.join(', ')}.`
      : `There is no "${argv.slice(0, 2).join(' ')}"; did you mean "${near}"?`;
  }
  const near = nearestWord(
    word,
    verbs.map(({ name }) => name),
  );
  return (
    `There is no verb "${word}"; ` +
    `${near === null ? `the verbs are ${verbs.map(({ name }) => name).join(', ')}` : `did you mean "${near}"?`}`
  );
}

function readOptions(verb: Verb, rest: readonly string[]): Command {
  const specs = optionsOf(verb);
  const values: Record<string, OptionValue[]> = {};
  const problems: Problem[] = [];
  let plan: string | null = null;
  const afterPlan = specs.find((spec) => spec.afterPlan);
  for (let k = 0; k < rest.length; k++) {
    const argument = rest[k];
    if (!argument.startsWith('--')) {
      if (verb.plan === 'none')
        problems.push(errorAt('', `"${verb.name}" takes no plan, but "${argument}" stands there.`));
      else if (plan !== null && afterPlan && !values[afterPlan.name]) values[afterPlan.name] = [argument];
      else if (plan !== null)
        problems.push(errorAt('', `Only one plan can be read at a time: "${plan}" or "${argument}"?`));
      else plan = argument;
      continue;
    }
    const equals = argument.indexOf('=');
    const name = argument.slice(2, equals < 0 ? undefined : equals);
    const spec = specs.find((candidate) => candidate.name === name);
    if (!spec) {
      problems.push(errorAt(`--${name}`, unknownOption(verb, name, specs)));
      // What stands behind an unknown option is taken for its value, so that it is not taken for a plan.
      if (equals < 0 && k + 1 < rest.length && !rest[k + 1].startsWith('--') && plan !== null) k += 1;
      continue;
    }
    let typed = equals < 0 ? undefined : argument.slice(equals + 1);
    if (spec.kind === 'flag') {
      if (typed !== undefined) problems.push(errorAt(`--${name}`, `--${name} takes no value.`));
    } else if (typed === undefined) {
      typed = rest[k + 1]?.startsWith('--') ? undefined : rest[++k];
      if (typed === undefined) {
        problems.push(errorAt(`--${name}`, `--${name} needs a value: --${name} ${spec.placeholder ?? 'VALUE'}.`));
        continue;
      }
    }
    const value = spec.kind === 'flag' ? true : readValue(spec, typed ?? '');
    if (isProblem(value)) problems.push(value);
    else if (values[name] && !spec.repeatable)
      problems.push(errorAt(`--${name}`, `--${name} is given twice; say it once.`));
    else (values[name] ??= []).push(value);
  }
  for (const spec of specs) {
    if (spec.required && !values[spec.name] && !problems.some(({ pointer }) => pointer === `--${spec.name}`)) {
      problems.push(
        errorAt(`--${spec.name}`, `"${verb.name}" needs --${spec.name} ${spec.placeholder ?? ''}: ${spec.summary}.`),
      );
    }
  }
  if (verb.plan === 'required' && plan === null)
    problems.push(errorAt('', 'Say which plan: a file, "-" for standard input, or "demo".'));
  const period = periodOf(values);
  if (isProblem(period)) problems.push(period);
  if (problems.length > 0 || isProblem(period)) return { kind: 'wrong', problems };
  return { kind: 'run', verb, plan, values, period, json: values.json !== undefined };
}

function unknownOption(verb: Verb, name: string, specs: readonly OptionSpec[]): string {
  const refused = verb.refused?.find((option) => option.name === name);
  if (refused !== undefined) return refused.why;
  const near = nearestWord(
    name,
    specs.map((spec) => spec.name),
  );
  const hint =
    near === null ? `it knows ${specs.map((spec) => `--${spec.name}`).join(', ')}` : `did you mean --${near}?`;
  return `"${verb.name}" has no option --${name}; ${hint}${near === null ? '.' : ''}`;
}

function readValue(spec: OptionSpec, typed: string): OptionValue | Problem {
  const pointer = `--${spec.name}`;
  switch (spec.kind) {
    case 'number':
      return inBounds(spec, typed, parseNumber(typed), '');
    case 'length':
      return inBounds(spec, typed, parseLength(typed, 'metric'), ' m');
    case 'point': {
      const [x, y, ...more] = typed.split(typed.includes(';') ? ';' : ',').map((each) => parseLength(each, 'metric'));
      if (x === null || y === null || y === undefined || more.length > 0) {
        return errorAt(
          pointer,
          `${pointer} wants two numbers with a comma between, ${spec.placeholder ?? 'X,Y'} in metres with decimal ` +
            `points, or a semicolon between numbers with decimal commas; got "${typed}".`,
        );
      }
      if (Math.max(Math.abs(x), Math.abs(y)) > MAX_COORDINATE)
        return errorAt(pointer, `${pointer} ${typed} is more than ${MAX_COORDINATE} m from the plan’s origin.`);
      return [x, y];
    }
    case 'share':
      return readShare(spec, typed);
    case 'day':
      return (
        readCivilDate(typed) ??
        errorAt(pointer, `${pointer} wants a day with its year, as 2026-04-20 or "20 April 2026"; got "${typed}".`)
      );
    default:
      if (typed === '') return errorAt(pointer, `${pointer} needs a value.`);
      if (spec.choices && !spec.choices.includes(typed))
        return errorAt(pointer, `${pointer} is one of ${spec.choices.join(', ')}; got "${typed}".`);
      return typed;
  }
}

/** A share of 1, typed so or in per cent. */
function readShare(spec: OptionSpec, typed: string): number | Problem {
  const inPerCent = /^(.*\S)\s*(?:%|per ?cent)$/.exec(typed.trim());
  const value = inPerCent ? parseNumber(inPerCent[1]) : parseNumber(typed);
  const share = value !== null && inPerCent ? value / 100 : value;
  return share === null || share < 0 || share > 1
    ? errorAt(`--${spec.name}`, `--${spec.name} wants a share from 0 to 1, or per cent, as 0.5 or 50%; got "${typed}".`)
    : share;
}

function inBounds(spec: OptionSpec, typed: string, value: number | null, unit: string): number | Problem {
  const pointer = `--${spec.name}`;
  if (value === null || !Number.isFinite(value)) {
    const kind =
      spec.kind === 'length' ? 'a length, as 0.25, 25cm or 10in' : spec.integer ? 'a whole number' : 'a number';
    return errorAt(pointer, `${pointer} wants ${kind}; got "${typed}".`);
  }
  if (spec.integer && !Number.isInteger(value))
    return errorAt(pointer, `${pointer} wants a whole number; got "${typed}".`);
  const { min, max, minIncluded } = spec;
  if (min !== undefined && (minIncluded ? value < min : value <= min)) {
    return errorAt(
      pointer,
      `${pointer} must be ${minIncluded ? 'at least' : 'more than'} ${min}${unit}; got "${typed}".`,
    );
  }
  if (max !== undefined && value > max)
    return errorAt(pointer, `${pointer} must be at most ${max}${unit}; got "${typed}".`);
  return value;
}

function periodOf(values: OptionValues): Period | Problem {
  const date = values.date?.[0];
  if (date !== undefined && values.heatwave !== undefined) {
    return errorAt('--date', 'Choose one of --date and --heatwave: the heatwave day has its own date.');
  }
  if (values.heatwave !== undefined) return { kind: 'heatwave' };
  if (typeof date !== 'string') return { kind: 'season' };
  const day = readMonthDay(date);
  return day === null
    ? errorAt('--date', `--date wants a day of the year, as 07-21 or "21 July"; got "${date}".`)
    : { kind: 'day', date: day };
}

function isProblem(value: OptionValue | Period | Problem): value is Problem {
  return typeof value === 'object' && 'severity' in value;
}

function wrong(pointer: string, message: string): Command {
  return { kind: 'wrong', problems: [errorAt(pointer, message)] };
}
