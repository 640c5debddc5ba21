import './style.css';
import type { ComponentChildren, TargetedEvent } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

interface FoldProps {
  /** A few words: they stand on the screen at first sight. */
  readonly title: ComponentChildren;
  /** Opens it when it becomes true; whoever has it open closes it. */
  readonly open?: boolean;
  /** Of the folds of one name one is open at a time. */
  readonly name?: string;
  readonly children: ComponentChildren;
}

/** What else there is, behind a word. */
export function Fold({ title, open = false, name, children }: FoldProps) {
  const fold = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    if (open && fold.current) fold.current.open = true;
  }, [open]);
  return (
    <details ref={fold} class="fold" name={name}>
      <summary onClick={name === undefined ? undefined : keepInPlace}>{title}</summary>
      {children}
    </details>
  );
}

/** One that closes above takes its height away: what was clicked stays under the finger. */
function keepInPlace({ currentTarget: summary }: TargetedEvent<HTMLElement>): void {
  const { top } = summary.getBoundingClientRect();
  requestAnimationFrame(() => summary.closest('.slip-card')?.scrollBy(0, summary.getBoundingClientRect().top - top));
}
