import { main } from '../../../../engine/cli.ts';

/** What a command line did. */
export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** An argument line as a shell splits it: spaces part words, double quotes hold them together. */
function splitLine(line: string): string[] {
  return [...line.matchAll(/"([^"]*)"|(\S+)/g)].map((match) => match[1] ?? match[2]);
}

/** Runs an argument line without a file or a terminal. */
export async function runLine(line: string): Promise<Ran> {
  let out = '';
  let err = '';
  const nothing = (): Uint8Array => {
    throw new Error('no file here');
  };
  const code = await main(splitLine(line), {
    out: (text) => void (out += text),
    err: (text) => void (err += text),
    readFile: nothing,
    readInput: nothing,
    terminal: { columns: 80, colour: false, watched: true },
    now: () => 0,
  });
  return { code, out, err };
}

/** The JSON that a line prints. */
export async function jsonOf(line: string): Promise<unknown> {
  const { code, out, err } = await runLine(`${line} --json`);
  if (code !== 0) throw new Error(err);
  return JSON.parse(out);
}
