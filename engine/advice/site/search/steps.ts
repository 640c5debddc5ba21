/** The steps of another work as steps of one's own. */
export function* mapped<T, R>(steps: Generator<number, R, void>, of: (done: number) => T): Generator<T, R, void> {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    yield of(step.value);
  }
}

/** Takes all the steps in one go. */
export function finished<R>(steps: Generator<unknown, R, void>): R {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
