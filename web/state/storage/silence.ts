/** What has not answered for so long counts as silent: the page goes on without it. [ms] */
export const SILENT_MS = 3_000;

/** A write that has not answered for so long is called off. A large picture on a slow card takes a few seconds. [ms] */
export const GIVEN_UP_MS = 30_000;

/**
 * Asks, and asks again after each silence, each twice as long: some browsers forget a question. The first answer holds,
 * a refusal too.
 * @param unwanted what is done with an answer that comes after it
 */
export function untilAnswered<T>(ask: () => Promise<T>, unwanted: (late: T) => void = () => undefined): Promise<T> {
  return new Promise((resolve, reject) => {
    let answered = false;
    let timer: ReturnType<typeof setTimeout>;
    const end = (): boolean => {
      if (answered) return false;
      answered = true;
      clearTimeout(timer);
      return true;
    };
    const attempt = (patienceMs: number): void => {
      timer = setTimeout(() => attempt(2 * patienceMs), patienceMs);
      ask().then(
        (answer) => (end() ? resolve(answer) : unwanted(answer)),
        (error: unknown) => end() && reject(error),
      );
    };
    attempt(SILENT_MS);
  });
}

/** The answer, or `'silent'` where it does not come in time; the work goes on. */
export function unlessSilent<T>(work: Promise<T>): Promise<T | 'silent'> {
  let timer: ReturnType<typeof setTimeout>;
  const silence = new Promise<'silent'>((resolve) => {
    timer = setTimeout(() => resolve('silent'), SILENT_MS);
  });
  return Promise.race([work, silence]).finally(() => clearTimeout(timer));
}
