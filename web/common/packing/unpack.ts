import { bitOdds } from './bit-odds.ts';

/**
 * The text that `web/build/packed-data.ts` packed: an arithmetic code of its bits, base 64. The code is one long
 * number; each bit takes its part of what is left between `low` and `high`, a large part where it was expected, and
 * bytes in which both agree are done with (Witten, Neal & Cleary 1987, Commun. ACM 30:520; from memory).
 * @param length of the text in UTF-8 [bytes]
 */
export function unpack(packed: string, length: number): string {
  const code = Uint8Array.from(atob(packed), (sign) => sign.charCodeAt(0));
  const bytes = new Uint8Array(length);
  const { odds, learn } = bitOdds();
  let at = 0;
  let low = 0;
  let high = 0xffffffff;
  let value = 0;
  const shift = (): void => {
    value = ((value << 8) | (code[at++] ?? 0)) >>> 0;
  };
  for (let i = 0; i < 4; i++) shift();
  for (let i = 0; i < 8 * length; i++) {
    const middle = low + Math.floor(((high - low) * odds()) / 4096);
    const bit = Number(value <= middle);
    if (bit) high = middle;
    else low = middle + 1;
    learn(bit);
    bytes[i >> 3] = (bytes[i >> 3] << 1) | bit;
    while (((low ^ high) & 0xff000000) === 0) {
      low = (low << 8) >>> 0;
      high = ((high << 8) | 255) >>> 0;
      shift();
    }
  }
  return new TextDecoder().decode(bytes);
}
