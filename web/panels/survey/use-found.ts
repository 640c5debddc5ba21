import { useEffect, useState } from 'preact/hooks';
import { say } from '../../state/speech.ts';

/** What a search on the page finds out, again whenever the question differs; `null` until it is there. */
export function useFound<Q, A>(asked: Q, find: (asked: Q) => Promise<A>): A | null {
  const [found, setFound] = useState<A | null>(null);
  useEffect(() => {
    let wanted = true;
    void find(asked).then(
      (answer) => wanted && setFound(answer),
      () => say('What this needs could not be fetched. Reload the page; your yard is kept.', 'problem'),
    );
    return () => {
      wanted = false;
    };
  }, [JSON.stringify(asked)]);
  return found;
}
