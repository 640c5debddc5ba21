/**
 * EXIF: which way up a picture is, and nothing else. Source of the layout: TIFF 6.0, section 2, and CIPA DC-008 (Exif),
 * section 4.6 (from memory).
 */

import { saysAt, viewOf } from './bytes.ts';

const ORIENTATION = 0x0112;
const SHORT = 3;
const ENTRY_BYTES = 12;

/**
 * How a picture that was stored as taken is to be turned, 2 to 8; 1 where it says nothing.
 * @param tiff from "II" or "MM" on
 */
export function orientationOf(tiff: Uint8Array): number {
  const little = saysAt(tiff, 0, 'II');
  if ((!little && !saysAt(tiff, 0, 'MM')) || tiff.length < 8) return 1;
  const view = viewOf(tiff);
  const first = view.getUint32(4, little);
  if (first + 2 > tiff.length) return 1;
  const entries = view.getUint16(first, little);
  for (let k = 0; k < entries; k++) {
    const at = first + 2 + k * ENTRY_BYTES;
    if (at + ENTRY_BYTES > tiff.length) return 1;
    if (view.getUint16(at, little) !== ORIENTATION) continue;
    const value = view.getUint16(at + 8, little);
    return value >= 1 && value <= 8 ? value : 1;
  }
  return 1;
}

/** The least EXIF that says an orientation: one directory of one entry. */
export function exifOf(orientation: number): number[] {
  const header = [0x4d, 0x4d, 0, 42, 0, 0, 0, 8];
  const entry = [ORIENTATION >> 8, ORIENTATION & 255, 0, SHORT, 0, 0, 0, 1, 0, orientation, 0, 0];
  return [...header, 0, 1, ...entry, 0, 0, 0, 0];
}
