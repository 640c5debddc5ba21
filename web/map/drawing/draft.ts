import { distance, formatLength } from '../../../engine/index.ts';
import type { PlanPoint, Units } from '../../../engine/index.ts';
import { rectangle } from './tools.ts';
import type { Tool } from './tools.ts';

/**
 * A thing being drawn, before it is in the plan. Mouse, taps under the cross-hair and typed numbers all go through
 * `place`, so the same points make the same thing whichever hand drew it.
 */
export interface Draft {
  readonly tool: Tool;
  /** Outlines by two opposite corners (true) or corner by corner (false). Lines and points: always false. */
  readonly box: boolean;
  readonly points: readonly PlanPoint[];
  /** The shape is whole; its numbers are being asked. */
  readonly asking: boolean;
}

export function beginDraft(tool: Tool, box = tool.shape === 'outline' || tool.shape === 'rectangle'): Draft {
  return { tool, box, points: [], asking: false };
}

/** Puts the next point down. The last point again ends a line; the first one again closes it. */
export function place(draft: Draft, at: PlanPoint): Draft {
  if (draft.asking) return draft;
  const { tool, box, points } = draft;
  if (tool.shape === 'point') return { ...draft, points: [at], asking: true };
  const last = points[points.length - 1];
  if (last && distance(last, at) < 0.001) return finish(draft);
  if (box) {
    if (points.length === 0) return { ...draft, points: [at] };
    const [from] = points;
    if (Math.abs(from[0] - at[0]) < 0.001 || Math.abs(from[1] - at[1]) < 0.001) return draft;
    return { ...draft, points: tool.shape === 'rectangle' ? [from, at] : rectangle(from, at), asking: true };
  }
  const closes = points.length >= 3 && distance(points[0], at) < 0.001;
  if (closes && tool.shape === 'outline') return { ...draft, asking: true };
  return { ...draft, points: [...points, at], asking: closes };
}

/** Takes the last point back; from the numbers it goes back to the shape. */
export function takeBack(draft: Draft): Draft {
  if (draft.asking && draft.tool.shape === 'line' && draft.points.length > 1) return { ...draft, asking: false };
  if (draft.box && draft.tool.shape === 'outline')
    return { ...draft, points: draft.asking ? [draft.points[0]] : [], asking: false };
  return { ...draft, points: draft.points.slice(0, -1), asking: false };
}

/** Whether there are points enough to end here. */
export function canFinish(draft: Draft): boolean {
  return !draft.asking && !draft.box && draft.points.length >= draft.tool.fewest;
}

/** Ends the shape and turns to its numbers; unchanged while there are too few points. */
export function finish(draft: Draft): Draft {
  return canFinish(draft) ? { ...draft, asking: true } : draft;
}

/** The next step in one sentence. @param hand how the next point comes */
export function nextStep(draft: Draft, hand: 'pointer' | 'cross-hair'): string {
  const { tool, points, box } = draft;
  if (draft.asking)
    return tool.asked.length === 0
      ? `Name the ${tool.noun} if you like, then add it.`
      : `Type the numbers you know; the ones left empty are marked as guessed.`;
  const how = hand === 'cross-hair' ? 'under the cross, then Here' : 'click or type it';
  return `${whatNext(tool, points.length, box)}: ${how}.`;
}

function whatNext(tool: Tool, drawn: number, box: boolean): string {
  if (tool.shape === 'point') return `Where the ${tool.noun} stands`;
  if (tool.shape === 'line' && drawn === 0) return `Where the ${tool.noun} begins`;
  if (drawn === 0) return `One corner of the ${tool.noun}`;
  if (box) return 'The opposite corner';
  if (drawn < tool.fewest) return tool.shape === 'line' ? 'The next corner or the end' : 'The next corner';
  return 'The next corner, or finish here';
}

/** Length and direction of the leg being drawn, to be shown beside the pointer: "3.40 m" or "3.00 × 2.00 m". */
export function legText(draft: Draft, aim: PlanPoint, units: Units): string | null {
  const last = draft.points[draft.points.length - 1];
  if (!last || draft.asking) return null;
  if (draft.box)
    return `${formatLength(Math.abs(aim[0] - last[0]), units)} × ${formatLength(Math.abs(aim[1] - last[1]), units)}`;
  return formatLength(distance(last, aim), units);
}
