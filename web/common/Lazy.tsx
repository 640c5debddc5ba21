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

/** Where a part stands that is built above who shows it. */
export interface Slot<P> {
  readonly Part: ComponentType<P>;
  /** Says once, at the start, where the part is fetched. */
  fill(load: () => Promise<ComponentType<P>>): void;
}

/** A place for a part of which only the shell knows in which file of the built page it comes. */
export function slotFor<P extends object = object>(what: string): Slot<P> {
  let fetchPart = (): Promise<ComponentType<P>> => Promise.reject(new Error(`${what}: nobody filled its place.`));
  return {
    Part: lazily(() => fetchPart(), what),
    fill: (load) => {
      fetchPart = load;
    },
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
