/** JSON Pointers (RFC 6901). */

/** A key as one token of a pointer: "~" and "/" escaped. */
export function pointerToken(key: string | number): string {
  return String(key).replaceAll('~', '~0').replaceAll('/', '~1');
}

/** The pointer of a list of keys from the document's root. */
export function pointerOf(keys: readonly (string | number)[]): string {
  return keys.map((key) => `/${pointerToken(key)}`).join('');
}
