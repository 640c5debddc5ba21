import { bitOdds } from '../common/packing/bit-odds.ts';

/** A text as an arithmetic code of its bits, base 64; `web/common/packing/unpack.ts` reads it. */
export function pack(text: string): { readonly packed: string; readonly length: number } {
  const bytes = new TextEncoder().encode(text);
  const code: number[] = [];
  const { odds, learn } = bitOdds();
  let low = 0;
  let high = 0xffffffff;
  const write = (): void => {
    code.push(high >>> 24);
    low = (low << 8) >>> 0;
    high = ((high << 8) | 255) >>> 0;
  };
  for (const byte of bytes) {
    for (let place = 7; place >= 0; place--) {
      const bit = (byte >> place) & 1;
      const middle = low + Math.floor(((high - low) * odds()) / 4096);
      if (bit) high = middle;
      else low = middle + 1;
      learn(bit);
      while (((low ^ high) & 0xff000000) === 0) write();
    }
  }
  for (let i = 0; i < 4; i++) write();
  return { packed: btoa(String.fromCharCode(...code)), length: bytes.length };
}
