import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';

interface LazyProps {
  /** Kept by the caller: the same function for the same part. */
  readonly load: () => Promise<ComponentType>;
  /** What is being opened, for the sentence when it takes long or fails. */
  readonly what: string;
}

const QUIET_MS = 500;

/** A part of the page that is fetched when it is first wanted. */
export function Lazy({ load, what }: LazyProps) {
  const { Part, message } = usePart(load, what);
  return Part ? <Part /> : <p class="lazy-message">{message}</p>;
}

/** The same for a part that takes props: stands for the component until it is there. */
export function lazily<P extends object>(load: () => Promise<ComponentType<P>>, what: string): ComponentType<P> {
  return function LazyPart(props: P) {
    const { Part, message } = usePart(load, what);
    return Part ? <Part {...props} /> : <p class="lazy-message">{message}</p>;
  };
}

function usePart<P>(
  load: () => Promise<ComponentType<P>>,
  what: string,
): { Part: ComponentType<P> | null; message: string } {
  const [part, setPart] = useState<{ of: typeof load; Part: ComponentType<P> } | null>(null);
  const [message, setMessage] = useState('');

  useEffect(() => {
    let wanted = true;
    setMessage('');
    const timer = setTimeout(() => setMessage(`${what} is opening…`), QUIET_MS);
    load()
      .then(
        (Part) => wanted && setPart({ of: load, Part }),
        () => wanted && setMessage(`${what} could not be opened. Reload the page; your yard is kept.`),
      )
      .finally(() => clearTimeout(timer));
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
  }, [load, what]);

  return { Part: part?.of === load ? part.Part : null, message };
}
