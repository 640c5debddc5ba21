import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';

interface Props {
  /** Kept by the caller: the same function for the same part. */
  readonly load: () => Promise<ComponentType>;
  /** What is being opened, for the sentence when it takes long or fails. */
  readonly what: string;
}

const QUIET_MS = 500;

/** A part of the page that is fetched when it is first wanted. */
export function Lazy({ load, what }: Props) {
  const [part, setPart] = useState<{ of: Props['load']; Part: ComponentType } | null>(null);
  const [message, setMessage] = useState('');

  useEffect(() => {
    let wanted = true;
    setMessage('');
    const timer = setTimeout(() => setMessage(`${what} is opening…`), QUIET_MS);
    load().then(
      (Part) => wanted && setPart({ of: load, Part }),
      () => wanted && setMessage(`${what} could not be opened. Reload the page; your yard is kept.`),
    ).finally(() => clearTimeout(timer));
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
  }, [load, what]);

  return part?.of === load ? <part.Part /> : <p class="lazy-message">{message}</p>;
}
