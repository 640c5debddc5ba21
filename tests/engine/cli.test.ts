import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { main } from '../../engine/cli.ts';
import { parsePlan } from '../../engine/plan/file/parse.ts';
import { weatherFile } from '../../engine/sun/weather/weather-file.ts';
import { valueOf } from '../parts/outcome.ts';
import { epwBytes, epwLines } from './sun/epw-file.ts';

interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs an argument list on a machine whose files, input and clock are given. */
async function run(
  argv: readonly string[],
  {
    input = '',
    files = {},
    colour = false,
    slow = false,
    columns = 80,
    watched = true,
    output,
    inputFault,
  }: {
    input?: string;
    files?: Record<string, string | Uint8Array>;
    colour?: boolean;
    slow?: boolean;
    columns?: number;
    /** Short name of the fault with which every write, or the first read, ends. */
    output?: string;
    inputFault?: string;
    watched?: boolean;
  } = {},
): Promise<Ran> {
  let out = '';
  let err = '';
  let clock = 0;
  const code = await main(argv, {
    async out(text) {
      await Promise.resolve();
      if (output) throw Object.assign(new Error('cannot write'), { code: output });
      out += text;
    },
    err: (text) => void (err += text),
    readFile: (path) => {
      const file = files[path];
      if (file === undefined) throw Object.assign(new Error('nothing there'), { code: 'ENOENT' });
      return typeof file === 'string' ? new TextEncoder().encode(file) : file;
    },
    readInput() {
      if (inputFault) throw Object.assign(new Error('cannot read'), { code: inputFault });
      return new TextEncoder().encode(input);
    },
    terminal: { columns, colour, watched },
    now: () => (clock += slow ? 600 : 0),
  });
  return { code, out, err };
}

/** A yard small enough to be graded at once. */
const SMALL = JSON.stringify({
  format: 'shadewright-plan',
  version: 1,
  name: 'Balcony',
  site: {
    latitude: 36.7,
    longitude: -4.4,
    timeZone: 'Europe/Madrid',
    boundary: [
      [0, 0],
      [4, 0],
      [4, 2],
      [0, 2],
    ],
  },
  season: { year: 2026, from: '07-20', to: '07-22', stepMinutes: 30 },
  climate: { hotAir: 34, heatwaveHigh: 43, months: [{ month: 7, high: 33, low: 21 }] },
  features: [
    {
      id: 'rail',
      kind: 'wall',
      name: 'Railing',
      path: [
        [0, 0],
        [4, 0],
      ],
      height: 1.1,
      thickness: 0.1,
    },
    {
      id: 'pot',
      kind: 'plant',
      name: 'Tomato pot',
      at: [1, 1],
      height: 1.2,
      spread: 0.5,
      plant: 'tomato',
      container: true,
    },
    { id: 'roof', kind: 'canopy', center: [1, 1], length: 1.5, width: 1.5, height: 1, density: 0.5 },
  ],
  options: [{ id: 'A', removes: ['roof'] }],
});

// oxlint-disable-next-line no-control-regex -- control characters are what is looked for
const OWN_LINES = /[\u0000-\u0009\u000b\u000c\u000e-\u001f\u007f-\u009f]|^Take care: none\.?\s*$/m;

describe('the command line', () => {
  it('loads a plan from a file and from standard input alike', async () => {
    const [file, input] = [
      await run(['load', 'b.plan.json', '--json'], { files: { 'b.plan.json': SMALL } }),
      await run(['load', '-', '--json'], { input: SMALL }),
    ];
    expect(file.code).toBe(0);
    expect(file.out).toBe(input.out);
    expect(JSON.parse(file.out).grid).toEqual({ x0: 0, y0: 0, cell: 0.25, columns: 16, rows: 8, height: 0.5 });
  });

  it('says warnings on standard error, and keeps standard output for the result', async () => {
    const { code, out, err } = await run(['load', '-', '--json'], { input: SMALL });
    expect(code).toBe(0);
    expect(err).toMatch(/^warning \/features\/\d: .*\n$/);
    expect(JSON.parse(out).plants[0].id).toBe('pot');
  });

  it('check lists the warnings as its result', async () => {
    const { code, out, err } = await run(['check', '-'], { input: SMALL });
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('“Balcony”: no problem, 1 warning.');
    expect(JSON.parse((await run(['check', '-', '--json'], { input: SMALL })).out)).toMatchObject({
      problems: [],
      warnings: [{ pointer: expect.stringMatching(/^\/features\/\d/) }],
    });
  });

  it('an option changes the yard; one that is not there is told with those that are', async () => {
    const sun = async (...more: string[]) =>
      JSON.parse((await run(['load', '-', '--json', ...more], { input: SMALL })).out).plants[0].sunHours as number;
    expect(await sun('--option', 'A')).toBeGreaterThan(await sun());
    const unknown = await run(['load', '-', '--option', 'Z'], { input: SMALL });
    expect(unknown).toMatchObject({
      code: 1,
      out: '',
      err: expect.stringContaining('There is no option "Z"; the plan\'s options are "A".'),
    });
  });

  it('people read a map, hot spots and a sentence for each plant', async () => {
    const { out } = await run(['load', '-', '--heatwave'], { input: SMALL });
    expect(out).toMatch(/^The tomato pot may burn from .*\.\n\nA Tomato pot: /);
    expect(out.replaceAll('\n', ' ')).toContain(
      'Balcony: heat of the sun 0.50 m above the ground, on the heatwave day;',
    );
    expect(out).toContain('A Tomato pot: ');
    expect(out).not.toMatch(/undefined|NaN|\[object/);
    expect(out.split('\n').every((line) => line.length <= 120)).toBe(true);
  });

  it('colours only where the terminal wants it', async () => {
    expect((await run(['load', '-'], { input: SMALL })).out).not.toContain('\u001b');
    expect((await run(['load', '-'], { input: SMALL, colour: true })).out).toContain('\u001b[');
  });

  it('says beside every result that the climate is rough, and only where it is', async () => {
    const roughly = JSON.stringify({ ...JSON.parse(SMALL), climate: { ...JSON.parse(SMALL).climate, from: 'rough' } });
    for (const verb of [
      ['spot', '-', '--at', '1,1'],
      ['load', '-'],
      ['place', '-', '--plant', 'pot'],
      ['why', '-', '--plant', 'pot', '--side', 'SW'],
    ]) {
      const [rough, known] = [await run(verb, { input: roughly }), await run(verb, { input: SMALL })];
      expect(rough.out + rough.err, verb[0]).toMatch(/The climate is rough/);
      expect(known.out + known.err, verb[0]).not.toMatch(/\brough\b/);
    }
  });

  it('says it beside numbers for programs too, and beside a page that only has the word in a name', async () => {
    const plan = JSON.parse(SMALL);
    const features = plan.features.map((feature: object) => ({ ...feature, name: 'Rough lemon' }));
    const input = JSON.stringify({ ...plan, features, climate: { ...plan.climate, from: 'rough' } });
    for (const verb of [
      ['load', '-', '--json'],
      ['load', '-', '--csv'],
      ['place', '-', '--plant', 'pot'],
    ])
      expect((await run(verb, { input })).err, verb.join(' ')).toMatch(/The climate is rough/);
  });

  it('tells a long job’s progress on standard error', async () => {
    const { out, err } = await run(['load', '-', '--json'], { input: SMALL, slow: true });
    expect(err).toMatch(/\d+ %: shadows on the ground\n/);
    expect(JSON.parse(out).season.days).toBe(3);
  });

  it('CSV and GeoJSON come instead of the table, not both', async () => {
    expect((await run(['load', '-', '--csv', '--cell', '1'], { input: SMALL })).out.split('\r\n')).toHaveLength(
      1 + 8 + 1,
    );
    expect(
      JSON.parse((await run(['load', '-', '--geojson', '--cell', '1'], { input: SMALL })).out).features,
    ).toHaveLength(8 + 1);
    expect(await run(['load', '-', '--csv', '--geojson'], { input: SMALL })).toMatchObject({
      code: 1,
      out: '',
      err: expect.stringContaining('--csv: Choose one of --csv and --geojson.\n'),
    });
  });

  it('units change what people read, never the numbers of --json', async () => {
    const imperial = await run(['spot', '-', '--at', '2,1', '--units', 'imperial', '--heatwave'], { input: SMALL });
    expect(imperial.out).toContain('(6 ft 6½ in, 3 ft 3½ in)');
    expect(imperial.out).toContain('°F');
    const json = async (units: string) =>
      JSON.parse(
        (await run(['spot', '-', '--at', '2,1', '--json', '--units', units], { input: SMALL })).out,
      ) as unknown;
    expect(await json('imperial')).toEqual(await json('metric'));
  });

  it('a spot says what it is inside of', async () => {
    expect((await run(['spot', '-', '--at', '2,0', '--date', '07-21'], { input: SMALL })).out).toContain(
      'It lies inside the railing.',
    );
    const plan = JSON.parse(SMALL) as { features: object[] };
    const outline = [
      [0.5, 0.8],
      [3, 0.8],
      [3, 1.8],
      [0.5, 1.8],
    ];
    const beans = { id: 'beans', kind: 'bed', name: 'Beans', plant: 'bean', plantHeight: 1.4, outline };
    const input = JSON.stringify({ ...plan, features: [...plan.features, beans] });
    const told = await run(['spot', '-', '--at', '2,1.2', '--date', '07-21', '--height', '0.5'], { input });
    expect(told.out.replaceAll(/\s+/g, ' ')).toContain(
      'It lies inside the beans, in the shade of its own leaves: a bed is judged at its top, 1.40 m up.',
    );
  });

  it('a missing file, demo or weather file is one sentence and exit 1', async () => {
    expect(await run(['load', 'gone.json'])).toEqual({
      code: 1,
      out: '',
      err: 'Cannot read "gone.json": there is no such file.\n',
    });
    expect(await run(['check', 'demo:beach'])).toMatchObject({
      code: 1,
      out: '',
      err: 'There is no demo yard "beach"; there are demo:courtyard and demo:lane.\n',
    });
    expect(await run(['load', 'demo', '--weather', 'x.epw'])).toMatchObject({
      code: 1,
      out: '',
      err: 'Cannot read "x.epw": there is no such file.\n',
    });
    const noEpw = await run(['load', 'demo', '--weather', 'x.epw'], { files: { 'x.epw': 'hello' } });
    expect(noEpw).toMatchObject({ code: 1, out: '' });
    expect(noEpw.err.trim().split('\n')).toHaveLength(1);
  });

  it('a weather file from far away, with one wind all year and no humidity, is warned of in the page’s words', async () => {
    const location = 'LOCATION,Sapporo,-,JPN,made for a test,999999,43.1,141.3,9.0,600.0';
    const bytes = epwBytes(epwLines({ location, row: () => ({ wind: 2, humidity: 999 }) }));
    const read = parsePlan(SMALL);
    if (!read.ok) throw new Error('the yard is sound');
    const onPage = valueOf(weatherFile(read.plan, bytes)).warnings;
    const wanted = ['measured at Sapporo, JPN', 'measured', 'one wind all year, 2 m/s', 'no humidity'];
    expect(onPage).toEqual(wanted.map((words) => expect.stringContaining(words) as string));
    const { code, err } = await run(['load', '-', '--cell', '1', '--weather', 'far.epw'], {
      input: SMALL,
      files: { 'far.epw': bytes },
    });
    expect(code).toBe(0);
    expect(err.split('\n').filter((line) => line.includes('weather file'))).toEqual(
      onPage.map((warning) => `warning ${warning}`),
    );
  });

  it('a day that has no climate, or no place in the year, is refused', async () => {
    expect(await run(['spot', '-', '--at', '1,1', '--date', '01-05'], { input: SMALL })).toMatchObject({
      code: 1,
      out: '',
    });
    expect(await run(['spot', '-', '--at', '1,1', '--date', '02-29'], { input: SMALL })).toMatchObject({
      code: 1,
      out: '',
    });
  });

  it('a text in the plan cannot steer the terminal', async () => {
    const nasty = SMALL.replace('"Balcony"', '"Bal\\u001b[2Jcony\\nfoo"').replace(
      'Tomato pot',
      'To\\u001b]0;x\\u0007mato',
    );
    for (const verb of [['check'], ['load'], ['spot', '--at', '1,1']]) {
      const { out, err } = await run([verb[0], '-', ...verb.slice(1)], { input: nasty });
      expect(out + err).not.toContain('\u001b');
    }
  });

  it('nor turn what follows it round: a mark that turns the writing ends with its quotes', async () => {
    const { err } = await run(['sheet', '-', '--canopy', '\u202e\u2067abc'], { input: SMALL });
    expect(err).toContain('"\u202e\u2067abc\u2069\u202c"');
  });

  it('nor make lines of its own in any verb, as text or as any other format', async () => {
    const tricky = 'N\u001b[2J\u009b31m\r\nTake care: none. \u0007';
    const plan = JSON.parse(SMALL) as { name: string; features: { name?: string }[]; options: object[] };
    for (const thing of [plan, ...plan.features, ...plan.options] as { name?: string }[]) thing.name = tricky;
    for (const argv of [
      'check -',
      'load -',
      'load - --geojson --cell 1',
      'load - --json --cell 1',
      'compare -',
      'sheet - --canopy roof',
      'sheet - --canopy roof --json',
      'season -',
      'season - --ics',
      'report - --cell 1',
      'place - --plant pot --count 1',
      'why - --plant pot --side W',
      'doubt -',
      'review -',
      'site - --size 1x1 --height 2 --density 0.5 --kind roof',
    ]) {
      const { code, out, err } = await run(argv.split(' '), { input: JSON.stringify(plan) });
      expect([argv, code, err && code ? err : '']).toEqual([argv, 0, '']);
      expect(out + err, argv).not.toMatch(OWN_LINES);
    }
  });

  it('no line for people is wider than the page, from 40 characters up', async () => {
    for (const columns of [12, 40, 57, 80, 132])
      for (const argv of [
        '--help',
        'site --help',
        'check -',
        'load -',
        'spot - --at 1,1',
        'spot - --at 1,1 --date 07-21',
        'compare -',
        'sheet - --canopy roof',
        'season -',
        'season - --high 42 --day 2026-07-20',
        'place - --plant pot --count 1 --on 2026-04-20',
        'why - --plant pot --side W',
        'doubt -',
        'review -',
        'survey place --at 36.7,-4.4',
        'survey climate --at 36.7,-4.4',
      ]) {
        const { out } = await run(argv.split(' '), { input: SMALL, columns });
        for (const line of out.split('\n'))
          expect(line.length, `${argv}: ${line}`).toBeLessThanOrEqual(Math.max(40, columns));
      }
  });

  it('a result that cannot be written is told, one that nobody reads on is not', async () => {
    const full = await run(['check', '-'], { input: SMALL, output: 'ENOSPC' });
    expect(full).toEqual({ code: 2, out: '', err: 'The result could not be written whole: there is no room left.\n' });
    expect(await run(['check', '-'], { input: SMALL, output: 'EPIPE' })).toEqual({ code: 0, out: '', err: '' });
  });

  it('no more of a result is made than its reader takes', async () => {
    let written = 0;
    let take = (): void => undefined;
    const machine = {
      out: () => (written++, new Promise<void>((resolve) => (take = resolve))),
      err: () => undefined,
      readFile: () => new Uint8Array(),
      readInput: () => new TextEncoder().encode(SMALL),
      terminal: { columns: 80, colour: false, watched: false },
      now: () => 0,
    };
    void main(['load', '-', '--cell', '0.1', '--date', '07-21', '--geojson'], machine);
    for (let taken = 1; taken <= 3; taken++) {
      await expect.poll(() => written).toBe(taken);
      for (let turn = 0; turn < 20; turn++) await Promise.resolve();
      expect(written).toBe(taken);
      take();
    }
  });

  it('a folder or a device without an end as standard input is refused', async () => {
    expect(await run(['check', '-'], { inputFault: 'EISDIR' })).toEqual({
      code: 1,
      out: '',
      err: 'Cannot read standard input: that is a folder.\n',
    });
    expect((await run(['check', '-'], { input: ' '.repeat(10_000_001) })).err).toMatch(/^[^\n]* 10 MB[^\n]*\n$/);
  });

  it('help is asked for, or given to who types nothing', async () => {
    expect(await run([])).toMatchObject({
      code: 0,
      err: '',
      out: expect.stringContaining('npm run --silent cli -- VERB PLAN [options]'),
    });
    expect((await run(['load', '--help'])).out).toContain('--cell M');
  });
});

describe('broken plans', () => {
  const folder = new URL('../plans/broken/', import.meta.url);
  const names = readdirSync(folder).filter((name) => name.endsWith('.json'));

  it('there are dozens of them', () => expect(names.length).toBeGreaterThan(50));

  it('are refused by check and load: exit 1, nothing on standard output, one line a problem, no stack trace', async () => {
    for (const name of names) {
      const bytes = readFileSync(new URL(name, folder));
      for (const verb of ['check', 'load']) {
        const { code, out, err } = await run([verb, name], { files: { [name]: bytes } });
        expect([name, code, out]).toEqual([name, 1, '']);
        expect(err, name).not.toMatch(/\bat .*:\d+:\d+|undefined|NaN|\[object/);
        for (const line of err.trimEnd().split('\n')) expect(line, name).toMatch(/\S.{8,}[.?]$/);
      }
    }
  });
});
