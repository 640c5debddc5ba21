import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';

const root = new URL('../../', import.meta.url).pathname;

interface Planted {
  readonly path: string;
  readonly source: string;
}

/**
 * What the linter says of each file, every one in a house of its own, by the project's table of arrows. One run for
 * all: the linter takes longer to start than to read.
 */
function refusalsOf(planted: readonly Planted[]): readonly string[] {
  const street = mkdtempSync(join(tmpdir(), 'arrows-'));
  symlinkSync(join(root, 'node_modules'), join(street, 'node_modules'));
  for (const [house, { path, source }] of planted.entries()) {
    const file = join(street, `${house}`, path);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, source);
  }
  const { stdout } = spawnSync(
    join(root, 'node_modules/.bin/oxlint'),
    [
      '-c',
      join(root, 'tests/oxlint.config.mjs'),
      '--deny-warnings',
      '--format',
      'json',
      ...planted.map((_, house) => `${house}`),
    ],
    { encoding: 'utf8', cwd: street, maxBuffer: 2 ** 26 },
  );
  rmSync(street, { recursive: true, force: true });
  const { diagnostics } = JSON.parse(stdout) as {
    readonly diagnostics: readonly {
      readonly code: string;
      readonly message: string;
      readonly help?: string;
      readonly filename: string;
    }[];
  };
  return planted.map(({ path }, house) =>
    diagnostics
      .filter(({ filename }) => filename.endsWith(`${house}/${path}`))
      .map(({ code, message, help = '' }) => `${code} ${message} ${help}`)
      .join('\n'),
  );
}

const REFUSED = [
  ['engine/sun/planted.ts', "export { loadOf } from '../load/load-of.ts';", 'engine/sun may import only from plan'],
  ['engine/load/planted.ts', "export { csvOf } from '../output/csv.ts';", 'engine/load may import only from'],
  ['engine/frame/planted.ts', "export { castRay } from '../cast/ray.ts';", 'engine/frame may import only from plan'],
  [
    'engine/survey/planted.ts',
    "export { castRay } from '../cast/ray.ts';",
    'engine/survey may import only from plan, sun',
  ],
  [
    'engine/cast/planted.ts',
    "import type { LoadResult } from '../load/types.ts';\nexport type Own = LoadResult;",
    'engine/cast may import only from',
  ],
  ['engine/scene/planted.ts', "export { default } from 'leaflet';", 'The engine knows no page'],
  ['engine/load/planted.ts', "export { getPosition } from 'suncalc';", 'suncalc enters the engine in engine/sun only'],
  [
    'engine/plan/check/planted.ts',
    "export { union } from '@turf/union';",
    'enters the engine in engine/plan/geometry only',
  ],
  [
    'engine/advice/planted.ts',
    "export { kinks } from '@turf/kinks';",
    'enters the engine in engine/plan/geometry only',
  ],
  [
    'engine/plan/geometry/planted.ts',
    "export { castRay } from '../../cast/ray.ts';",
    'engine/plan may import only from nothing upstream',
  ],
  ['web/map/planted.ts', "export { kinks } from '@turf/kinks';", 'stands in engine/plan/geometry only'],
  [
    'engine/sun/planted.ts',
    "export { fromEpochMilliseconds } from 'temporal-polyfill/fns/Instant';",
    'the engine does without it',
  ],
  ['engine/plan/planted.ts', 'export const now = () => Date.now();', 'no clock'],
  ['engine/cast/planted.ts', 'export const luck = () => Math.random();', 'Randomness comes with a seed'],
  ['engine/plan/planted.ts', 'export const page = () => document;', 'no page'],
  ['web/panels/planted.ts', "export { castRay } from '../../engine/cast/points/ray.ts';", 'through engine/index.ts'],
  ['web/common/planted.ts', "export { plan } from '../state/yard.ts';", 'web/common may import only from the engine'],
  ['web/worker/planted.ts', "export { weatherInUse } from '../state/weather.ts';", 'web/worker may import only from'],
  [
    'web/charts/planted.ts',
    "export { wornTheme } from '../state/settings.ts';",
    'web/charts may import only from common',
  ],
  ['web/state/planted.ts', "export { overlays } from '../map/laid-on/overlays.ts';", 'web/state may import only from'],
  ['web/state/planted.ts', "export { createBridge } from '../worker/bridge.ts';", 'through web/worker/ask.ts'],
  ['web/map/planted.ts', "export type { Progress } from '../worker/ask.ts';", 'web/map may import only from'],
  ['web/map/leaflet/planted.ts', "export { Lazy } from '../../app/Lazy.tsx';", 'web/map may import only from'],
  ['web/panels/heat/planted.ts', "export { DrawCard } from '../draw/index.tsx';", 'Panels do not import each other'],
  ['web/panels/heat/planted.ts', "export { ask } from '../../worker/ask.ts';", 'web/panels may import only from'],
  ['web/worker/planted.ts', "export { colourOf } from '../charts/ramp.ts';", 'web/worker may import only from common'],
  ['web/panels/heat/planted.ts', "export { CARDS } from '../../app/cards.ts';", 'web/panels may import only from'],
  ['web/panels/parts/planted.ts', "export { HeatCard } from '../heat/index.tsx';", 'Panels do not import each other'],
  ['web/panels/year/strip/planted.ts', "export { Sheet } from '../../build/Sheet.tsx';", 'do not import each other'],
  ['web/panels/heat/planted.ts', "export { default } from 'leaflet';", 'Leaflet stands in web/map only'],
  ['engine/cli.ts', "export { loadOf } from './load/load-of.ts';", 'is loaded with it'],
] as const;

const ALLOWED = [
  ['engine/load/planted.ts', "export { castRay } from '../cast/ray.ts';"],
  ['engine/plan/geometry/planted.ts', "export { kinks } from '@turf/kinks';"],
  ['engine/advice/planted.ts', "export { sheetOf } from '../frame/sheet.ts';"],
  ['web/panels/planted.ts', "export { castRay } from '../../engine/index.ts';"],
  ['web/panels/heat/planted.ts', "export { ChoiceBox } from '../parts/boxes/ChoiceBox.tsx';"],
  ['web/panels/year/strip/planted.ts', "export { plan } from '../../../state/yard.ts';"],
  ['web/state/planted.ts', "export { ask } from '../worker/ask.ts';"],
  ['web/app/planted.ts', "export { HeatCard } from '../panels/heat/index.tsx';"],
] as const;

const body = (lines: number): string => {
  const sums = '  sum += 1;\n'.repeat(lines - 4);
  return `export function long(): number {\n  let sum = 0;\n${sums}\n  // Why.\n  return sum;\n}\n`;
};

const LENGTHS = [
  ['engine/load/planted.ts', 61],
  ['web/map/planted.ts', 61],
  ['engine/load/planted.ts', 60],
] as const;

const said = refusalsOf([
  ...[...REFUSED, ...ALLOWED].map(([path, source]) => ({ path, source })),
  ...LENGTHS.map(([path, lines]) => ({ path, source: body(lines) })),
]);

test.each(REFUSED.map((row, house) => [...row, said[house]] as const))(
  '%s may not say %s',
  (_path, _source, sentence, refusals) => {
    expect(refusals).toContain(sentence);
  },
);

test.each(ALLOWED.map((row, k) => [...row, said[REFUSED.length + k]] as const))(
  '%s may say %s',
  (_path, _source, refusals) => {
    expect(refusals).not.toContain('restricted');
  },
);

test('a function of more than 60 lines is refused; empty lines and comments do not count', () => {
  const [engine, web, shorter] = said.slice(-LENGTHS.length);
  expect(engine).toContain('too many lines');
  expect(web).toContain('too many lines');
  expect(shorter).not.toContain('too many lines');
});
