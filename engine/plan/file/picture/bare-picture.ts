/** A picture without what its camera noted: where and when it was taken, and by whom. */

import type { Plan } from '../../types.ts';
import { base64Of, bytesOf } from './base64.ts';
import { saysAt } from './bytes.ts';
import { bareGif } from './gif.ts';
import { bareJpeg } from './jpeg.ts';
import { barePng, PNG_SIGNATURE } from './png.ts';
import { bareWebp } from './webp.ts';

/** A plan whose pictures to trace over, in earlier years too, say nothing but what they show. */
export function withBarePictures(plan: Plan): Plan {
  const { site, past } = plan;
  const image = site.underlay && barePicture(site.underlay.image);
  const years = past?.map((each) => {
    const year = withBarePictures(each.plan);
    return year === each.plan ? each : { ...each, plan: year };
  });
  const same = image === site.underlay?.image && (years?.every((each, k) => each === past?.[k]) ?? true);
  if (same) return plan;
  return {
    ...plan,
    ...(site.underlay && image && { site: { ...site, underlay: { ...site.underlay, image } } }),
    ...(years && { past: years }),
  };
}

/**
 * The same picture, as a data address, without metadata but which way is up. Its kind is told by its bytes, as browsers
 * tell it; what is none of the four kinds that a plan may hold stays as it is.
 */
export function barePicture(address: string): string {
  const comma = address.indexOf(',');
  const bytes = bytesOf(address.slice(comma + 1));
  const bare = bareOf(bytes);
  const same = bare.length === bytes.length && bare.every((byte, at) => byte === bytes[at]);
  return same ? address : address.slice(0, comma + 1) + base64Of(bare);
}

function bareOf(bytes: Uint8Array): Uint8Array {
  if (saysAt(bytes, 0, '\xff\xd8\xff')) return bareJpeg(bytes);
  if (saysAt(bytes, 0, PNG_SIGNATURE)) return barePng(bytes);
  if (saysAt(bytes, 0, 'RIFF') && saysAt(bytes, 8, 'WEBP')) return bareWebp(bytes);
  return saysAt(bytes, 0, 'GIF8') && bytes.length > 13 ? bareGif(bytes) : bytes;
}
