import { describe, expect, it } from 'vitest';
import { readCommand } from '../../../../engine/output/text/command-line.ts';
import { helpText, verbHelpText } from '../../../../engine/output/text/help.ts';
import { nearestWord } from '../../../../engine/output/text/nearest-word.ts';
import { VERBS, verbsFor } from '../../../../engine/output/verbs/index.ts';
import type { Verb } from '../../../../engine/output/verbs/verb.ts';

const all = await verbsFor([]);
const read = (...argv: string[]) => readCommand(argv, all);
const runs = (...argv: string[]) => {
  const command = read(...argv);
  if (command.kind !== 'run')
    throw new Error(command.kind === 'wrong' ? command.problems.map(({ message }) => message).join(' ') : 'help');
  return command;
};
const told = (...argv: string[]) => {
  const command = read(...argv);
  if (command.kind !== 'wrong') throw new Error(`Understood: ${argv.join(' ')}`);
  return command.problems.map(({ message }) => message);
};

describe('an argument list', () => {
  it('is a verb, a plan and options in any order, values behind a space or an equals sign', () => {
    const command = runs('load', '--cell', '0.5', 'demo', '--height=1.2', '--json');
    expect(command).toMatchObject({
      plan: 'demo',
      json: true,
      period: { kind: 'season' },
      values: { cell: [0.5], height: [1.2] },
    });
    expect(command.verb.name).toBe('load');
  });

  it('takes negative numbers for values', () => {
    expect(runs('spot', 'demo', '--at', '-1,2').values.at).toEqual([[-1, 2]]);
    expect(runs('spot', 'demo', '--at', '-1.5,-0.25', '--height', '0').values.at).toEqual([[-1.5, -0.25]]);
    expect(runs('spot', 'demo', '--at=-1,-2').values.at).toEqual([[-1, -2]]);
  });

  it('takes what people write: days in words, per cent, decimal commas', () => {
    expect(runs('load', 'demo', '--date', '21 July').period).toEqual({ kind: 'day', date: '07-21' });
    expect(runs('load', 'demo', '--date', 'Aug 3rd').period).toEqual({ kind: 'day', date: '08-03' });
    expect(runs('site', 'demo', '--density', '50%', '--density', '0,3').values.density).toEqual([0.5, 0.3]);
    expect(runs('spot', 'demo', '--at', '9,6;6,4').values.at).toEqual([[9.6, 6.4]]);
    expect(runs('season', 'demo', '--high', '41', '--day', '3 August 2026').values.day).toEqual(['2026-08-03']);
    expect(told('site', 'demo', '--density', '50')).toEqual([
      '--density wants a share from 0 to 1, or per cent, as 0.5 or 50%; got "50".',
    ]);
    expect(told('load', 'demo', '--date', '31 June')).toEqual([
      '--date wants a day of the year, as 07-21 or "21 July"; got "31 June".',
    ]);
  });

  it('reads "-" as standard input, and lengths with their unit', () => {
    expect(runs('load', '-', '--height', '40in')).toMatchObject({ plan: '-', values: { height: [1.016] } });
  });

  it('keeps every --option in order, and one date', () => {
    expect(runs('load', 'demo', '--option', 'B', '--option', 'A').values.option).toEqual(['B', 'A']);
    expect(runs('load', 'demo', '--date', '02-29').period).toEqual({ kind: 'day', date: '02-29' });
    expect(runs('load', 'demo', '--heatwave').period).toEqual({ kind: 'heatwave' });
  });

  it.each([
    [['lod', 'demo'], 'There is no verb "lod"; did you mean "load"?'],
    [['load', 'demo', '--haetwave'], '"load" has no option --haetwave; did you mean --heatwave?'],
    [['check', 'demo', '--date', '07-21'], '"check" has no option --date; it knows --json, --help.'],
    [
      ['review', 'demo', '--weather', 'year.epw'],
      'A review goes by the air of each reading under a clear sky; a weather file’s year is not the day on which ' +
        'it was taken: leave out --weather.',
    ],
    [['load'], 'Say which plan: a file, "-" for standard input, or "demo".'],
    [['load', 'a.plan.json', 'b.plan.json'], 'Only one plan can be read at a time: "a.plan.json" or "b.plan.json"?'],
    [
      ['load', 'demo', '--date', '07-21', '--heatwave'],
      'Choose one of --date and --heatwave: the heatwave day has its own date.',
    ],
    [['load', 'demo', '--date', '7-21'], '--date wants a day of the year, as 07-21 or "21 July"; got "7-21".'],
    [['load', 'demo', '--date', '06-31'], '--date wants a day of the year, as 07-21 or "21 July"; got "06-31".'],
    [['load', 'demo', '--date', '13-01'], '--date wants a day of the year, as 07-21 or "21 July"; got "13-01".'],
    [['load', 'demo', '--cell', '0'], '--cell must be more than 0 m; got "0".'],
    [['load', 'demo', '--cell', 'small'], '--cell wants a length, as 0.25, 25cm or 10in; got "small".'],
    [['load', 'demo', '--cell', '1e999'], '--cell wants a length, as 0.25, 25cm or 10in; got "1e999".'],
    [['load', 'demo', '--cell', 'NaN'], '--cell wants a length, as 0.25, 25cm or 10in; got "NaN".'],
    [['load', 'demo', '--height', '-0.1'], '--height must be at least 0 m; got "-0.1".'],
    [['load', 'demo', '--height', '500'], '--height must be at most 100 m; got "500".'],
    [['load', 'demo', '--cell'], '--cell needs a value: --cell M.'],
    [['load', 'demo', '--cell', '--json'], '--cell needs a value: --cell M.'],
    [['load', 'demo', '--cell', '1', '--cell', '2'], '--cell is given twice; say it once.'],
    [
      ['site', 'demo', '--size', 'x'.repeat(10_000_000)],
      'What is typed there has 10000000 characters; at most 4096 are read.',
    ],
    [['load', 'demo', '--json=yes'], '--json takes no value.'],
    [['load', 'demo', '--units', 'yards'], '--units is one of metric, imperial; got "yards".'],
    [['load', 'demo', '--option='], '--option needs a value.'],
    [['spot', 'demo'], '"spot" needs --at X,Y: the spot, in plan metres, or as "31 ft,21 ft".'],
    [
      ['spot', 'demo', '--at', '1'],
      '--at wants two numbers with a comma between, X,Y in metres with decimal points, or a semicolon between ' +
        'numbers with decimal commas; got "1".',
    ],
    [
      ['spot', 'demo', '--at', '1,2,3'],
      '--at wants two numbers with a comma between, X,Y in metres with decimal points, or a semicolon between ' +
        'numbers with decimal commas; got "1,2,3".',
    ],
    [
      ['spot', 'demo', '--at', '1,b'],
      '--at wants two numbers with a comma between, X,Y in metres with decimal points, or a semicolon between ' +
        'numbers with decimal commas; got "1,b".',
    ],
    [['spot', 'demo', '--at', '10001,0'], '--at 10001,0 is more than 10000 m from the plan’s origin.'],
  ])('refuses %j with one sentence', (argv, message) => {
    expect(told(...argv)).toEqual([message]);
  });

  it('tells everything that is wrong at once', () => {
    expect(told('load', '--cell', 'x', '--height', 'y', '--nonsense')).toHaveLength(4);
  });

  it('without a verb, or asked for it, is a call for help', () => {
    expect(read()).toEqual({ kind: 'help' });
    expect(read('--help')).toEqual({ kind: 'help' });
    expect(read('help')).toEqual({ kind: 'help' });
    expect(read('survey', '--help')).toEqual({ kind: 'help' });
    expect(read('load', '--help')).toMatchObject({ kind: 'help', verb: { name: 'load' } });
    expect(read('spot', 'demo', '-h')).toMatchObject({ kind: 'help', verb: { name: 'spot' } });
  });
});

describe('verbs of two words', () => {
  const verb = (name: string): Verb => ({
    name,
    summary: 'nothing',
    plan: 'none',
    common: [],
    options: [],
    examples: [],
    run: () => ({ ok: true, json: null, text: '' }),
  });
  const verbs = [verb('dig deep'), verb('dig wide'), verb('rest')];

  it('are found before their first word, and offered when it stands alone or misspelt', () => {
    expect(readCommand(['dig', 'wide'], verbs)).toMatchObject({ kind: 'run', verb: { name: 'dig wide' } });
    expect(readCommand(['dig'], verbs)).toMatchObject({
      kind: 'wrong',
      problems: [{ message: 'Say which: dig deep, dig wide.' }],
    });
    expect(readCommand(['dig', 'dep'], verbs)).toMatchObject({
      kind: 'wrong',
      problems: [{ message: 'There is no "dig dep"; did you mean "dig deep"?' }],
    });
  });

  it('that take no plan refuse one', () => {
    expect(readCommand(['rest', 'demo'], verbs)).toMatchObject({
      kind: 'wrong',
      problems: [{ message: '"rest" takes no plan, but "demo" stands there.' }],
    });
  });
});

describe('the verbs', () => {
  it('are called what they are listed as', () =>
    expect(all.map(({ name }) => name)).toEqual(VERBS.map(({ name }) => name)));

  it('are loaded one at a time where one is asked for, and all of them where none is', async () => {
    const loaded = async (...argv: string[]) => (await verbsFor(argv)).map(({ name }) => name);
    expect(await loaded('check', 'demo')).toEqual(['check']);
    expect(await loaded('survey', 'north', '--help')).toEqual(['survey north']);
    for (const argv of [[], ['--help'], ['survey'], ['chekc', 'demo']])
      expect(await loaded(...argv)).toHaveLength(VERBS.length);
  });
});

describe('the help', () => {
  it('names every verb, and of each verb every option and example', () => {
    const page = helpText(all, 120);
    for (const verb of all) {
      expect(page).toContain(verb.name);
      const own = verbHelpText(verb, 120);
      for (const { name } of verb.options) expect(own).toContain(`--${name}`);
      for (const example of verb.examples) expect(own).toContain(example);
      expect(verb.summary).not.toMatch(/\.$/);
    }
  });
});

describe('the nearest word', () => {
  it('is near, or none', () => {
    const words = ['check', 'load', 'spot', 'season', 'survey north'];
    expect(nearestWord('chekc', words)).toBe('check');
    expect(nearestWord('seasn', words)).toBe('season');
    expect(nearestWord('sea', words)).toBe('season');
    expect(nearestWord('Load', words)).toBe('load');
    expect(nearestWord('xyzzy', words)).toBeNull();
  });
});
