interface Branch<T> {
  readonly further: WeakMap<object, Branch<T>>;
  readonly values: Map<string, T>;
}

/** What was worked out of some objects that never change, kept as long as all of them are in use. */
export class Kept<T> {
  private readonly root: Branch<T> = { further: new WeakMap(), values: new Map() };

  /** @param key says what was worked out of them */
  of(objects: readonly object[], key: string, make: () => T): T {
    let branch = this.root;
    for (const object of objects) {
      let next = branch.further.get(object);
      if (!next) branch.further.set(object, (next = { further: new WeakMap(), values: new Map() }));
      branch = next;
    }
    let value = branch.values.get(key);
    if (value === undefined) branch.values.set(key, (value = make()));
    return value;
  }
}
