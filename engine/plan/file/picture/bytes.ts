/** Whether the bytes at a place are these letters, each below 256. */
export function saysAt(bytes: Uint8Array, at: number, letters: string): boolean {
  for (let k = 0; k < letters.length; k++) if (bytes[at + k] !== letters.charCodeAt(k)) return false;
  return true;
}

export function lettersOf(letters: string): number[] {
  return Array.from(letters, (letter) => letter.charCodeAt(0));
}

export function joined(parts: readonly ArrayLike<number>[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

export function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}
