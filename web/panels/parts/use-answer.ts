import { useEffect, useState } from 'preact/hooks';
import { askEngine } from '../../state/ask.ts';
import type { ArgsOf, MethodName, ValueOf } from '../../state/ask.ts';

interface Answer<M extends MethodName> {
  /** What it answers: another question while the newest is worked out. */
  readonly to: ArgsOf<M> | null;
  readonly value: ValueOf<M> | null;
  readonly fault: string | null;
}

const NONE = { to: null, value: null, fault: null } as const;

/** Asks the engine again whenever the question differs; `null` asks nothing and forgets the answer. */
export function useAnswer<M extends MethodName>(
  method: M,
  args: ArgsOf<M> | null,
): Answer<M> & { readonly isNewest: boolean } {
  const [answer, setAnswer] = useState<Answer<M>>(NONE);
  const question = args === null ? null : JSON.stringify(args);
  useEffect(() => {
    if (args === null) {
      setAnswer(NONE);
      return undefined;
    }
    const asking = new AbortController();
    void askEngine(method, args, { signal: asking.signal }).then(
      (found) =>
        setAnswer(
          found.ok
            ? { to: args, value: found.value, fault: null }
            : { to: args, value: null, fault: found.problems[0]?.message ?? null },
        ),
      () => {},
    );
    return () => asking.abort();
  }, [method, question]);
  return { ...answer, isNewest: question === (answer.to === null ? null : JSON.stringify(answer.to)) };
}
