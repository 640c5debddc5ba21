import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

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

test("the README's map is the one the command line draws", () => {
  const drawn = execFileSync(process.execPath, ['--import', 'tsx', 'engine/cli.ts', 'load', 'demo', '--cell', '0.5'], {
    encoding: 'utf8',
    cwd: root.pathname,
    env: { ...process.env, NO_COLOR: '1' },
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  expect(drawn).toContain(block('map').trimEnd().split('\n').slice(0, 17).join('\n'));
});
