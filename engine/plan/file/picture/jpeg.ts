/** JPEG: ITU-T T.81, annex B (markers; from memory). */

import { joined, lettersOf, saysAt } from './bytes.ts';
import { exifOf, orientationOf } from './exif.ts';

const EXIF = 'Exif\0\0';
/** Markers by their second byte. */
const [SOI, EOI, SOS, APP0, APP1, APP2, APP14, APP15, COM] = [0xd8, 0xd9, 0xda, 0xe0, 0xe1, 0xe2, 0xee, 0xef, 0xfe];

/** Without what is no picture: whatever programs and cameras note, and what hangs on behind the end. */
export function bareJpeg(bytes: Uint8Array): Uint8Array {
  const parts: ArrayLike<number>[] = [[0xff, SOI]];
  let at = 2;
  while (at + 1 < bytes.length) {
    if (bytes[at] !== 0xff) break;
    const marker = bytes[at + 1];
    if (marker === 0xff) {
      at++;
      continue;
    }
    if (marker === EOI) {
      parts.push([0xff, EOI]);
      break;
    }
    const length = 2 + ((bytes[at + 2] << 8) | bytes[at + 3]);
    const end = marker === SOS ? endOfScan(bytes, at + length) : at + length;
    const segment = bytes.subarray(at, end);
    if (isPicture(marker, segment)) parts.push(segment);
    else if (marker === APP1 && saysAt(segment, 4, EXIF)) parts.push(turnOnly(segment.subarray(4 + EXIF.length)));
    at = Math.max(end, at + 2);
  }
  return joined(parts);
}

/** What colours and pixels need: no application's notes but the size, the colour profile and the colour transform. */
function isPicture(marker: number, segment: Uint8Array): boolean {
  if (marker === COM) return false;
  if (marker < APP0 || marker > APP15) return true;
  return (
    (marker === APP0 && saysAt(segment, 4, 'JFIF\0')) ||
    (marker === APP2 && saysAt(segment, 4, 'ICC_PROFILE\0')) ||
    (marker === APP14 && saysAt(segment, 4, 'Adobe'))
  );
}

function turnOnly(tiff: Uint8Array): number[] {
  const orientation = orientationOf(tiff);
  if (orientation === 1) return [];
  const body = [...lettersOf(EXIF), ...exifOf(orientation)];
  return [0xff, APP1, 0, body.length + 2, ...body];
}

/** Pixels run on to the next marker; 0xFF within them is followed by 0 or by a restart's number. */
function endOfScan(bytes: Uint8Array, from: number): number {
  for (let at = from; at + 1 < bytes.length; at++) {
    if (bytes[at] !== 0xff) continue;
    const next = bytes[at + 1];
    if (next !== 0 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) return at;
  }
  return bytes.length;
}
