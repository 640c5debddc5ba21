import { spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { demoPlan } from '../../engine/plan/demos/index.ts';
import { planText } from '../../engine/plan/file/serialize.ts';
import type { Feature, Plan } from '../../engine/plan/types.ts';

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

/** Runs a shell's line, `$CLI` standing for the command line. */
function shell(line: string, input = ''): Pick<Ended, 'code' | 'err'> {
  const { status, stderr } = spawnSync('/bin/sh', ['-c', line], {
    input,
    cwd: new URL('../..', import.meta.url),
    env: { ...process.env, CLI: `${process.execPath} --import tsx engine/cli.ts` },
    encoding: 'utf8',
  });
  return { code: status, err: stderr.replaceAll(/^\d+ %: .*\n/gm, '') };
}

/** One that the check takes, and warns of. */
function planWithATallPot(): Plan {
  const plan = demoPlan('courtyard');
  return {
    ...plan,
    features: plan.features.map((one) => (one.id === 'lemon' ? { ...one, height: 30 } : one)) as Feature[],
  };
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

  it('ends at once where a search is called off with Ctrl+C, nothing half told', async () => {
    const child = spawn(process.execPath, ['--import', 'tsx', 'engine/cli.ts', 'site', 'demo:lane'], {
      cwd: new URL('../..', import.meta.url),
    });
    let out = '';
    child.stdout.on('data', (chunk) => (out += chunk));
    setTimeout(() => child.kill('SIGINT'), 2_000);
    // What a shell tells as 130.
    const signal = await new Promise((resolve) => child.on('close', (_, by) => resolve(by)));
    expect([signal, out]).toEqual(['SIGINT', '']);
  });

  // Linux has a device that is always full; the shell's limit on the size of a file takes a part of the last write.
  it.runIf(existsSync('/dev/full'))('a full disk is said, with exit 2, also where a part was still taken', () => {
    const lost = { code: 2, err: expect.stringMatching(/^The result could not be written whole: [a-z ]+\.\n$/) };
    expect(shell('$CLI check demo > /dev/full')).toEqual(lost);
    expect(shell('trap "" XFSZ; ulimit -f 8; $CLI draw demo --as dxf > /tmp/shadewright-lost.dxf')).toEqual(lost);
    expect(shell('$CLI sheet demo --option A --canopy lemon-roof 2> /dev/full').code).toBe(0);
    // A warning that could not be told; closed on purpose it is not missed.
    const tall = planText(planWithATallPot());
    expect(shell('$CLI draw - > /dev/null', tall).err).toMatch(/^warning /);
    expect(shell('$CLI draw - > /dev/null 2> /dev/full', tall).code).toBe(2);
    expect(shell('{ $CLI draw - 2>&1 > /dev/null; echo $? >&3; } 3>&2 | true', tall).err.trim()).toBe('0');
  });

  it('a reader that has seen enough ends it in silence', () => {
    expect(shell('{ $CLI load demo --cell 0.5 --json; echo $? >&2; } | head -c 10 > /dev/null').err.trim()).toBe('0');
  });

  it('a folder as standard input is refused', () => {
    expect(shell('$CLI check - < engine')).toEqual({
      code: 1,
      err: 'Cannot read standard input: that is a folder.\n',
    });
  });

  it('keeps to the width that the shell gives', () => {
    const lines = spawnSync(process.execPath, ['--import', 'tsx', 'engine/cli.ts', 'sheet', 'demo', '--option', 'A'], {
      cwd: new URL('../..', import.meta.url),
      env: { ...process.env, COLUMNS: '47' },
      encoding: 'utf8',
    }).stdout.split('\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(47);
    expect(Math.max(...lines.map((line) => line.length))).toBeGreaterThan(40);
  });
});
