import { formatShare } from '../plan/units/shown.ts';
import { type Finding, found, refused } from './estimate.ts';

/** A known length in a picture: two points in it, and how far they are apart on the ground. */
export interface PictureLength {
  readonly fromPx: readonly [number, number];
  readonly toPx: readonly [number, number];
  /** [m] */
  readonly length: number;
}

export interface PictureScale {
  readonly metresPerPixel: number;
  /** Of the whole picture. [m] */
  readonly width: number;
  /** A pixel at each end. [m per pixel] */
  readonly pm: number;
  /**
   * How much longer the second known length is by this scale than was said: 0.08 is 8 % too long. `null` without one.
   */
  readonly disagreement: number | null;
}

const LEAST_PIXELS = 20;
const LEAST_LENGTH = 2;
const LARGEST_DISAGREEMENT = 0.03;

/** Said when a picture is traced. */
const TRACING_NOTE = "Trace a wall's foot and a tree's trunk: in a picture from above, high things lean outwards.";

/**
 * Scale of a picture from one known length, held against a second.
 * @param widthPx Of the picture as it is shown. [pixels]
 */
export function pictureScale(known: PictureLength, widthPx: number, check?: PictureLength): Finding<PictureScale> {
  const refusal = refusalOf(known) ?? (check === undefined ? null : refusalOf(check));
  if (refusal !== null) return refused(refusal);
  const pixels = pixelsOf(known);
  const metresPerPixel = known.length / pixels;
  const disagreement = check === undefined ? null : (pixelsOf(check) * metresPerPixel) / check.length - 1;
  const notes = [TRACING_NOTE];
  if (disagreement !== null && Math.abs(disagreement) > LARGEST_DISAGREEMENT) {
    notes.unshift(
      `The second length is ${formatShare(Math.abs(disagreement))} ` +
        `${disagreement > 0 ? 'longer' : 'shorter'} in the picture than you said: the picture leans or is stretched.`,
    );
  }
  return found(
    { metresPerPixel, width: widthPx * metresPerPixel, pm: (metresPerPixel * Math.SQRT2) / pixels, disagreement },
    notes,
  );
}

function refusalOf(known: PictureLength): string | null {
  const pixels = pixelsOf(known);
  if (!(pixels >= LEAST_PIXELS))
    return (
      `The two points are ${pixels.toFixed(0)} pixels apart: too short, 1 pixel off is ` +
      `${(100 / Math.max(pixels, 1)).toFixed(0)} %.`
    );
  if (!(known.length >= LEAST_LENGTH))
    return (
      `${known.length.toFixed(2)} m is too short to scale a picture by: choose a length of ` +
      `${LEAST_LENGTH} m or more.`
    );
  return null;
}

function pixelsOf({ fromPx, toPx }: PictureLength): number {
  return Math.hypot(toPx[0] - fromPx[0], toPx[1] - fromPx[1]);
}
