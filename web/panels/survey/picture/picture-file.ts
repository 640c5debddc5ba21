const LARGEST_FILE_BYTES = 12e6;
/** The longer side of a picture as it is kept. [pixels] */
const LONGEST_SIDE = 1600;
const QUALITY = 0.85;

export interface CleanPicture {
  /** A JPEG as "data:image/jpeg;base64,…". */
  readonly image: string;
  readonly width: number;
  readonly height: number;
}

/**
 * A picture drawn anew at no more than 1600 pixels: what the camera wrote beside it, such as where it was taken, stays
 * behind.
 * @returns a sentence when it cannot be read
 */
export async function cleanPicture(file: File): Promise<CleanPicture | string> {
  if (file.size > LARGEST_FILE_BYTES)
    return (
      `"${file.name}" has ${(file.size / 1e6).toFixed(0)} MB: at most 12 MB, please. A smaller copy will do, ` +
      `1600 pixels are enough.`
    );
  const bitmap = await createImageBitmap(file).catch(() => null);
  if (bitmap === null) return `"${file.name}" is no picture that this browser can read: take a JPEG, PNG or WebP.`;
  const scale = Math.min(1, LONGEST_SIDE / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(bitmap.width * scale));
  canvas.height = Math.max(1, Math.round(bitmap.height * scale));
  const pen = canvas.getContext('2d');
  if (pen === null) return 'This browser cannot draw pictures just now: close a few other pages and try again.';
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  return { image: canvas.toDataURL('image/jpeg', QUALITY), width: canvas.width, height: canvas.height };
}
