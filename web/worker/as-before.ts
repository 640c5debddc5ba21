/**
 * What a worker is sent is a copy each time, and the engine keeps what it found out about a thing by the thing itself.
 * So what is as it was is given back as the object that it was: after an edit all but what was edited is known.
 */

/**
 * @param now just received, and nobody else's: its parts are put in place
 * @param before what was received the time before
 * @returns `before` itself where both say the same; else `now`, each of whose parts that is as it was is the very part
 *   of `before`: in lists of things with an id that of the same id, in others that of the same place
 */
export function asBefore<Value>(now: Value, before: unknown): Value;
export function asBefore(now: unknown, before: unknown): unknown {
  if (!isObject(now) || !isObject(before) || Object.getPrototypeOf(now) !== Object.getPrototypeOf(before)) return now;
  if (ArrayBuffer.isView(now)) return isSameBytes(now, before) ? before : now;
  const had = Array.isArray(now) && Array.isArray(before) ? inOrderOf(now, before) : before;
  let isSame = Object.keys(now).length === Object.keys(before).length;
  for (const [key, part] of Object.entries(now)) {
    now[key] = asBefore(part, had[key]);
    isSame &&= key in before && now[key] === before[key];
  }
  return isSame ? before : now;
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

/** What stands in an earlier list for each item of a later one. */
function inOrderOf(now: readonly unknown[], before: readonly unknown[]): Record<string, unknown> {
  const byId = new Map(before.flatMap((item) => (isObject(item) && 'id' in item ? [[item.id, item]] : [])));
  return { ...now.map((item, n) => (isObject(item) && 'id' in item ? byId.get(item.id) : before[n])) };
}

function isSameBytes(now: ArrayBufferView, before: unknown): boolean {
  if (!ArrayBuffer.isView(before) || now.byteLength !== before.byteLength) return false;
  const [a, b] = [now, before].map((view) => new Uint8Array(view.buffer, view.byteOffset, view.byteLength));
  return a.every((byte, n) => byte === b[n]);
}
