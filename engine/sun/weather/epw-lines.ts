// In every browser and in Node, though no part of the language's own library.
declare const TextDecoder: new (encoding: string, options: { fatal: boolean }) => { decode(bytes: Uint8Array): string };

/** Lines before the hours. */
export const HEADER_LINES = 8;

/** What makes a file unreadable, in one sentence; thrown while it is read, and caught where it is parsed. */
export class EpwError extends Error {}

/** @throws EpwError that names the line, counted from 1 */
export function fail(line: number, message: string): never {
  throw new EpwError(`Weather file, line ${line}: ${message}`);
}

/** Without empty ones at the end. */
export function linesOf(bytes: Uint8Array): string[] {
  const lines = textOf(bytes).split(/\r\n|\n|\r/);
  while (lines.length > 1 && lines[lines.length - 1].trim() === '') lines.pop();
  return lines;
}

/**
 * The bytes as UTF-8 (a byte order mark taken off), or as Latin-1 where they are not that: names of places come in
 * both.
 */
function textOf(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('latin1', { fatal: false }).decode(bytes);
  }
}
