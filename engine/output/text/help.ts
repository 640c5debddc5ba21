import type { OptionSpec, Verb } from '../verbs/verb.ts';
import { optionsOf } from './command-line.ts';
import { table } from './plain-text.ts';

const MARGIN = '  ';
const CALL = 'npm run --silent cli --';

/** The page of `--help`: what the verbs are. */
export function helpText(verbs: readonly Verb[], columns: number): string {
  const list = indented(
    table(
      columns - MARGIN.length,
      ['verb', 'what it gives'],
      verbs.map(({ name, summary }) => [name, summary]),
    ),
  );
  return [
    `${CALL} VERB PLAN [options]`,
    list,
    'PLAN is a file, "-" for standard input, or "demo" ("demo:lane" for the other yard).',
    'Results stand on standard output, everything else on standard error. Exit 0: done; 1: the plan or an option ' +
      'is wrong; 2: a fault of the program.',
    `Examples\n${indented(
      ['load demo', ...verbs.filter(({ examples }) => examples.length > 0).map(({ examples }) => `${examples[0]}`)]
        .filter((line, k, all) => all.indexOf(line) === k)
        .map((line) => `${CALL} ${line}`)
        .join('\n'),
    )}`,
    `More on one verb: ${CALL} VERB --help\n`,
  ].join('\n\n');
}

/** The page of `VERB --help`. */
export function verbHelpText(verb: Verb, columns: number): string {
  const plan = { required: ' PLAN', optional: ' [PLAN]', none: '' }[verb.plan];
  const options = table(
    columns - MARGIN.length,
    ['option', ''],
    optionsOf(verb).map((spec) => [typedForm(spec), spec.summary + (spec.required ? ' (needed)' : '')]),
  );
  const examples = verb.examples.map((line) => `${CALL} ${line}`).join('\n');
  return `${[
    `${CALL} ${verb.name}${plan} [options]`,
    `Gives ${verb.summary}.`,
    indented(options),
    ...(examples === '' ? [] : [`Examples\n${indented(examples)}`]),
  ].join('\n\n')}\n`;
}

function typedForm({ name, kind, placeholder }: OptionSpec): string {
  return kind === 'flag' ? `--${name}` : `--${name} ${placeholder ?? 'VALUE'}`;
}

function indented(text: string): string {
  return text.replaceAll(/^(?=.)/gm, MARGIN);
}
