import type { PlanPoint, Units } from '../../../engine/index.ts';
import { toolByLetter } from './tools.ts';
import type { ToolId } from './tools.ts';

interface Nudge {
  /** [m] */
  readonly length: number;
  readonly words: string;
}

/** The two steps of a nudge, as people who measure so would say them. */
export const NUDGES: Readonly<Record<Units, { readonly wide: Nudge; readonly fine: Nudge }>> = {
  metric: { wide: { length: 0.1, words: '10 cm' }, fine: { length: 0.01, words: '1 cm' } },
  imperial: { wide: { length: 0.1016, words: '4 in' }, fine: { length: 0.0127, words: '½ in' } },
};

/** What a key asks of the drawing. */
export type KeyMeaning =
  | { readonly does: 'tool'; readonly tool: ToolId }
  | { readonly does: 'nudge'; readonly by: PlanPoint }
  | { readonly does: 'zoom'; readonly by: number }
  | { readonly does: 'put' | 'finish' | 'escape' | 'delete' | 'duplicate' | 'whole yard' };

export interface KeyPressed {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly altKey: boolean;
  readonly metaKey: boolean;
  readonly target: EventTarget | null;
}

interface Where {
  /** A point is waited for. */
  readonly waiting: boolean;
  /** The paper itself has the focus, not a button or a box beside it. */
  readonly onMap: boolean;
  readonly units: Units;
}

const ARROWS: Readonly<Record<string, PlanPoint>> = {
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
};

/**
 * Reads a key pressed inside the drawing's region; `null` leaves it to the page. Keys typed into a box are never taken.
 */
export function keyMeaning(
  { key, shiftKey, ctrlKey, altKey, metaKey, target }: KeyPressed,
  { waiting, onMap, units }: Where,
): KeyMeaning | null {
  if (ctrlKey || altKey || metaKey) return null;
  if (key === 'Escape') return { does: 'escape' };
  if (isTyping(target)) return null;
  const arrow = onMap ? ARROWS[key] : undefined;
  if (arrow) {
    const step = NUDGES[units][shiftKey ? 'fine' : 'wide'].length;
    return { does: 'nudge', by: [arrow[0] * step, arrow[1] * step] };
  }
  if (onMap && key === 'Enter') return waiting ? { does: shiftKey ? 'finish' : 'put' } : null;
  if (key === 'Delete' || (key === 'Backspace' && onMap)) return { does: 'delete' };
  if (shiftKey && key === 'D') return { does: 'duplicate' };
  if (key === '+' || key === '=') return { does: 'zoom', by: 0.5 };
  if (key === '-' || key === '−') return { does: 'zoom', by: -0.5 };
  if (key === '0') return { does: 'whole yard' };
  const taken = shiftKey ? undefined : toolByLetter(key);
  return taken ? { does: 'tool', tool: taken.id } : null;
}

function isTyping(target: EventTarget | null): boolean {
  const element = target as { readonly tagName?: string; readonly isContentEditable?: boolean } | null;
  return element?.isContentEditable === true || ['INPUT', 'TEXTAREA', 'SELECT'].includes(element?.tagName ?? '');
}
