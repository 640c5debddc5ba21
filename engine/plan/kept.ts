interface Branch<T> {
  readonly further: WeakMap<object, Branch<T>>;
  readonly values: Map<string, T>;
}

/** What was worked out of some objects that never change, kept as long as all of them are in use. */
export class Kept<T> {
  private readonly root: Branch<T> = { further: new WeakMap(), values: new Map() };

  /** What was kept of them, if anything was. */
  known(objects: readonly object[], key: string): T | undefined {
    let branch: Branch<T> | undefined = this.root;
    for (const object of objects) branch = branch?.further.get(object);
    return branch?.values.get(key);
  }

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

/** What was worked out of plain data, kept for the last few of them that were equal, whoever made them. */
export class KeptByContent<T> {
  private readonly values = new Map<string, T>();

  constructor(private readonly most: number) {}

  of(content: unknown, make: () => T): T {
    const key = JSON.stringify(content);
    const value = this.values.get(key) ?? make();
    // Its latest use stands last, so that the longest unused goes first.
    this.values.delete(key);
    this.values.set(key, value);
    if (this.values.size > this.most) this.values.delete(this.values.keys().next().value!);
    return value;
  }
}
