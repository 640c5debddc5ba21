/** Base64 as RFC 4648 has it, section 4; here because a page and a command line share no other way to write it. */
const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
const VALUES = new Uint8Array(128).fill(255);
for (let value = 0; value < ALPHABET.length; value++) VALUES[ALPHABET.charCodeAt(value)] = value;

/** The bytes of a text; what is no letter of the alphabet is passed over. */
export function bytesOf(text: string): Uint8Array {
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let [length, bits, held] = [0, 0, 0];
  for (let k = 0; k < text.length; k++) {
    const value = VALUES[text.charCodeAt(k)] ?? 255;
    if (value === 255) continue;
    held = ((held << 6) | value) & 0xffff;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes[length++] = held >> bits;
  }
  return bytes.subarray(0, length);
}

export function base64Of(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; at += 3) {
    const left = bytes.length - at;
    const three = (bytes[at] << 16) | ((bytes[at + 1] ?? 0) << 8) | (bytes[at + 2] ?? 0);
    parts.push(
      ALPHABET[three >> 18] +
        ALPHABET[(three >> 12) & 63] +
        (left > 1 ? ALPHABET[(three >> 6) & 63] : '=') +
        (left > 2 ? ALPHABET[three & 63] : '='),
    );
  }
  return parts.join('');
}
