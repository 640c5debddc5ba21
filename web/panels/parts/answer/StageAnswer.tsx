import './style.css';
import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { headline, nextThing } from '../../../state/next.ts';
import type { NextThing } from '../../../state/next.ts';

interface StageAnswerProps {
  /** At most 20 words, the engine's own; `null` while it is being worked out. */
  readonly says: string | null;
  /** The one thing to do; `null` where the picture holds it; without it, what is most worth doing in the yard now. */
  readonly act?: NextThing | null;
  /** The picture that shows it. */
  readonly children?: ComponentChildren;
}

/**
 * What each stage opens with: its answer in a sentence (the slip shows it over the card, also where the card is folded
 * away), the picture that shows it, and one thing to do. All else stands in folds under it.
 */
export function StageAnswer({ says, act, children }: StageAnswerProps) {
  useEffect(() => {
    headline.value = says;
  }, [says]);
  useEffect(() => () => void (headline.value = null), []);
  const next = act === undefined ? nextThing.value : act;
  return (
    <div class="stage-answer">
      {children}
      {next && (
        <p class="stage-act">
          {next.run ? (
            <button type="button" class="main" onClick={next.run}>
              {next.text}
            </button>
          ) : (
            next.text
          )}
        </p>
      )}
    </div>
  );
}
