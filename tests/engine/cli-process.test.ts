import { spawn } from 'node:child_process';
import { describe, expect, it } from 'vitest';

interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Starts the command line as a process of its own, the way `npm run cli` does. */
function start(argv: readonly string[], input = ''): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['--import', 'tsx', 'engine/cli.ts', ...argv], {
      cwd: new URL('../..', import.meta.url),
    });
    let out = '';
    let err = '';
    child.stdout.on('data', (chunk) => (out += chunk));
    child.stderr.on('data', (chunk) => (err += chunk));
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, out, err }));
    child.stdin.on('error', () => {});
    child.stdin.end(input);
  });
}

describe('the command line as a process', () => {
  it('grades a demo yard: result on standard output, exit 0, no colour in a pipe', async () => {
    const { code, out } = await start(['load', 'demo', '--date', '07-21', '--cell', '1']);
    expect(code).toBe(0);
    expect(out).toContain('The well courtyard');
    expect(out).not.toContain('\u001b');
  });

  it('refuses a broken plan from standard input: exit 1, nothing on standard output', async () => {
    const { code, out, err } = await start(['load', '-'], '{"format": "shadewright-plan", "version": 1');
    expect([code, out]).toEqual([1, '']);
    expect(err.trim().split('\n')).toHaveLength(1);
  });

  it('takes negative coordinates', async () => {
    const { code, out } = await start(['spot', 'demo:lane', '--at', '-1,2', '--date', '01-21', '--json']);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ at: [-1, 2], height: 0.5, date: '2027-01-21', inside: null });
  });
});
