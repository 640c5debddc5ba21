import './style.css';
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

interface FoldProps {
  /** A few words: they stand on the screen at first sight. */
  readonly title: ComponentChildren;
  /** Opens it when it becomes true; whoever has it open closes it. */
  readonly open?: boolean;
  readonly children: ComponentChildren;
}

/** What else there is, behind a word. */
export function Fold({ title, open = false, children }: FoldProps) {
  const fold = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    if (open && fold.current) fold.current.open = true;
  }, [open]);
  return (
    <details ref={fold} class="fold">
      <summary>{title}</summary>
      {children}
    </details>
  );
}
