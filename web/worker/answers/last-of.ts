/** Keeps the value made last for as long as it is asked for with the same key, compared as JSON. */
export function lastOf<Value>(): (key: unknown, make: () => Value) => Value {
  let kept: { readonly key: string; readonly value: Value } | null = null;
  return (key, make) => {
    const text = JSON.stringify(key);
    if (kept?.key !== text) kept = { key: text, value: make() };
    return kept.value;
  };
}
