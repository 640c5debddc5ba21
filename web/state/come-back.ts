import { effect } from '@preact/signals';
import { STAGES, aside, selection, stage, surveyTopic } from './view.ts';
import type { Aside, Stage, SurveyTopic } from './view.ts';

const KEY = 'shadewright.where';

interface Where {
  readonly stage: Stage;
  readonly aside: Aside | null;
  readonly topic: SurveyTopic;
  readonly selection: readonly string[];
}

/** Cards and topics that hold something half typed. */
const CARDS: readonly Aside[] = ['happened', 'why', 'survey', 'sheet'];
const TOPICS: readonly SurveyTopic[] = ['north', 'height', 'picture', 'climate', 'place', 'lengths'];

/**
 * A page that the phone has put away, or that is loaded again, comes back to the card that was open. A new tab begins
 * anew.
 */
export function comeBack(): void {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(KEY) ?? 'null');
    if (isWhere(kept)) {
      stage.value = kept.stage;
      aside.value = kept.aside;
      surveyTopic.value = kept.topic;
      selection.value = kept.selection;
    }
  } catch {
    // A browser that keeps nothing begins anew.
  }
  effect(() => {
    const card = aside.value;
    const where: Where = {
      stage: stage.value,
      aside: card !== null && CARDS.includes(card) ? card : null,
      topic: surveyTopic.value,
      selection: selection.value,
    };
    try {
      sessionStorage.setItem(KEY, JSON.stringify(where));
    } catch {
      // The same.
    }
  });
}

function isWhere(found: unknown): found is Where {
  if (typeof found !== 'object' || found === null) return false;
  const { stage: at, aside: card, topic, selection: chosen } = found as Readonly<Record<string, unknown>>;
  const isOf = (list: readonly unknown[], value: unknown): boolean => list.includes(value);
  return (
    isOf(STAGES, at) &&
    (card === null || isOf(CARDS, card)) &&
    isOf(TOPICS, topic) &&
    Array.isArray(chosen) &&
    chosen.every((id) => typeof id === 'string')
  );
}
