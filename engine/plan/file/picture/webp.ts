/** WebP: RFC 9649, section 2 (from memory). */

import { joined, lettersOf, viewOf } from './bytes.ts';
import { exifOf, orientationOf } from './exif.ts';

const HEADER_BYTES = 12;
const KEPT = ['VP8 ', 'VP8L', 'VP8X', 'ANIM', 'ANMF', 'ALPH', 'ICCP'];
/** Bits of VP8X that say which notes follow. */
const [SAYS_EXIF, SAYS_XMP] = [0x08, 0x04];

/** Without EXIF but for which way is up, without XMP, unknown parts, and what hangs on behind the end. */
export function bareWebp(bytes: Uint8Array): Uint8Array {
  const view = viewOf(bytes);
  const whole = Math.min(bytes.length, 8 + view.getUint32(4, true));
  const parts: ArrayLike<number>[] = [];
  let turns = false;
  for (let at = HEADER_BYTES; at + 8 <= whole;) {
    const length = view.getUint32(at + 4, true);
    const type = String.fromCharCode(...bytes.subarray(at, at + 4));
    const end = Math.min(whole, at + 8 + length + (length % 2));
    if (KEPT.includes(type)) parts.push(bytes.slice(at, end));
    if (type === 'EXIF') {
      const orientation = orientationOf(bytes.subarray(at + 8, at + 8 + length));
      if (orientation > 1) {
        const body = exifOf(orientation);
        parts.push([...lettersOf('EXIF'), body.length, 0, 0, 0, ...body]);
        turns = true;
      }
    }
    at = end;
  }
  const chunks = joined(parts);
  if (String.fromCharCode(...chunks.subarray(0, 4)) === 'VP8X')
    chunks[8] = (chunks[8] & ~(SAYS_EXIF | SAYS_XMP)) | (turns ? SAYS_EXIF : 0);
  const bare = joined([bytes.subarray(0, HEADER_BYTES), chunks]);
  viewOf(bare).setUint32(4, bare.length - 8, true);
  return bare;
}
