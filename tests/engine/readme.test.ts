import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { demoPlan } from '../../engine/plan/demos/index.ts';
import { parsePlan } from '../../engine/plan/file/parse.ts';
import { runLine } from '../command-line.ts';

const root = new URL('../../', import.meta.url);
const readme = readFileSync(new URL('README.md', root), 'utf8');

function block(language: string): string {
  const found = new RegExp(`\`\`\`${language}\n([\\s\\S]*?)\`\`\``).exec(readme);
  if (!found) throw new Error(`The README has no ${language} block.`);
  return found[1];
}

test("the README's engine example prints what stands beneath it", () => {
  const printed = execFileSync(process.execPath, ['--import', 'tsx', '--input-type=module', '--eval', block('ts')], {
    encoding: 'utf8',
    cwd: root.pathname,
  });
  expect(printed).toBe(block('text'));
});

test.each(
  block('sh')
    .trim()
    .split('\n')
    .map((line) => line.replace('npm run --silent cli -- ', '')),
)('the README’s line does what it says: %s', async (line) => {
  const { code, out } = await runLine(line);
  expect(code).toBe(0);
  expect(out.length).toBeGreaterThan(100);
  expect(out).not.toMatch(/undefined|NaN/);
});

test('the README’s plan keys are keys of a plan', () => {
  const plan = { ...demoPlan('courtyard'), ...(JSON.parse(block('json')) as object) };
  const parsed = parsePlan(JSON.stringify(plan));
  expect(parsed).toMatchObject({ ok: true, warnings: [] });
});

test("the README's map is the one the command line draws", () => {
  const drawn = execFileSync(process.execPath, ['--import', 'tsx', 'engine/cli.ts', 'load', 'demo', '--cell', '0.5'], {
    encoding: 'utf8',
    cwd: root.pathname,
    env: { ...process.env, NO_COLOR: '1' },
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  expect(drawn).toContain(block('map').trimEnd().split('\n').slice(0, 17).join('\n'));
});
