import { useEffect, useState } from 'preact/hooks';
import { askEngine } from '../../state/ask.ts';
import type { ArgsOf, MethodName, ValueOf } from '../../state/ask.ts';

/** Asks the engine again whenever the question differs; `null` asks nothing and forgets the answer. */
export function useAnswer<M extends MethodName>(
  method: M,
  args: ArgsOf<M> | null,
): { readonly value: ValueOf<M> | null; readonly fault: string | null } {
  const [answer, setAnswer] = useState<{ readonly value: ValueOf<M> | null; readonly fault: string | null }>({
    value: null,
    fault: null,
  });
  const question = args === null ? null : JSON.stringify(args);
  useEffect(() => {
    if (args === null) {
      setAnswer({ value: null, fault: null });
      return undefined;
    }
    const asking = new AbortController();
    void askEngine(method, args, { signal: asking.signal }).then(
      (found) =>
        setAnswer(
          found.ok ? { value: found.value, fault: null } : { value: null, fault: found.problems[0]?.message ?? null },
        ),
      () => {},
    );
    return () => asking.abort();
  }, [method, question]);
  return answer;
}
