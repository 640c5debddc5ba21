/** GIF: version 89a of the specification, sections 17 to 27 (from memory). */

import { joined, saysAt } from './bytes.ts';

const [IMAGE, EXTENSION, CONTROL, APPLICATION, TRAILER] = [0x2c, 0x21, 0xf9, 0xff, 0x3b];
/** The two applications whose block says how often a moving picture runs. */
const LOOPS = ['NETSCAPE2.0', 'ANIMEXTS1.0'];

/** Without comments, other programs' blocks, and what hangs on behind the end. */
export function bareGif(bytes: Uint8Array): Uint8Array {
  let at = 13 + coloursBytes(bytes[10]);
  const parts: ArrayLike<number>[] = [bytes.subarray(0, at)];
  while (at < bytes.length && (bytes[at] === IMAGE || bytes[at] === EXTENSION)) {
    const isImage = bytes[at] === IMAGE;
    const end = endOfBlocks(bytes, isImage ? at + 11 + coloursBytes(bytes[at + 9]) : at + 2);
    const runs = bytes[at + 1] === APPLICATION && LOOPS.some((name) => saysAt(bytes, at + 3, name));
    if (isImage || bytes[at + 1] === CONTROL || runs) parts.push(bytes.subarray(at, end));
    at = end;
  }
  return joined([...parts, bytes[at] === TRAILER ? [TRAILER] : []]);
}

/** Length of the table of colours that a byte of flags announces. */
function coloursBytes(flags: number): number {
  return flags & 0x80 ? 3 * 2 ** ((flags & 7) + 1) : 0;
}

function endOfBlocks(bytes: Uint8Array, from: number): number {
  let at = from;
  while (at < bytes.length && bytes[at] !== 0) at += bytes[at] + 1;
  return at + 1;
}
