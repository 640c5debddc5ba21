/** PNG: W3C PNG, third edition, sections 5 and 11; CRC by annex D (from memory). */

import { joined, lettersOf, viewOf } from './bytes.ts';
import { exifOf, orientationOf } from './exif.ts';

export const PNG_SIGNATURE = '\x89PNG\r\n\x1a\n';
/** Parts beside those that every reader must know: clear colour, colour space, pixel size, moving pictures. */
const KEPT = 'tRNS gAMA cHRM sRGB iCCP sBIT bKGD pHYs cICP mDCV cLLI acTL fcTL fdAT'.split(' ');

/** Without texts, times, EXIF but for which way is up, and what hangs on behind the end. */
export function barePng(bytes: Uint8Array): Uint8Array {
  const view = viewOf(bytes);
  const parts: ArrayLike<number>[] = [bytes.subarray(0, PNG_SIGNATURE.length)];
  for (let at = PNG_SIGNATURE.length; at + 12 <= bytes.length;) {
    const end = at + 12 + view.getUint32(at);
    const type = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    if (KEPT.includes(type) || /^[A-Z]/.test(type)) parts.push(bytes.subarray(at, end));
    else if (type === 'eXIf') parts.push(turnOnly(bytes.subarray(at + 8, end - 4)));
    if (type === 'IEND') break;
    at = end;
  }
  return joined(parts);
}

function turnOnly(tiff: Uint8Array): number[] {
  const orientation = orientationOf(tiff);
  if (orientation === 1) return [];
  const body = exifOf(orientation);
  const checked = [...lettersOf('eXIf'), ...body];
  return [0, 0, 0, body.length, ...checked, ...crcOf(checked)];
}

function crcOf(bytes: readonly number[]): number[] {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return [24, 16, 8, 0].map((shift) => ((crc ^ 0xffffffff) >>> shift) & 255);
}
