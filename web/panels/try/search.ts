import { effect, signal } from '@preact/signals';
import { METRES_PER_FOOT } from '../../../engine/index.ts';
import type {
  ClothKind,
  ClothSize,
  Feature,
  MoreForms,
  Plan,
  SiteRequest,
  SiteResult,
  SiteSeen,
  Units,
} from '../../../engine/index.ts';
import { askEngine } from '../../state/ask.ts';
import { searching } from '../../state/next.ts';
import { readOut, say } from '../../state/speech.ts';
import { aside, goToStage, stage } from '../../state/view.ts';
import { openYardId, plan, units } from '../../state/yard.ts';
import { cheaper } from '../parts/tried.ts';

/** Every eye of the plan. */
export const EVERYONE = Symbol('everyone');

/** The tappable words of the one sentence that says what to look for. */
export interface Wish {
  readonly kind: ClothKind | 'any';
  readonly upTo: Largest;
  /** Whose sight it must be out of: the id of an eye, or of all of them; `null`: it may be seen. */
  readonly hideFrom: string | typeof EVERYONE | null;
  /** Share of light the cloth stops. */
  readonly density: number | 'any';
  /** Ids of the plants that count; `null`: all. */
  readonly plants: readonly string[] | null;
  /** How many things to build together. */
  readonly count: 1 | 2;
}

export const wish = signal<Wish>({
  kind: 'any',
  upTo: 'middling',
  hideFrom: null,
  density: 'any',
  plants: null,
  count: 1,
});

/** Whether the person wants the best found: its form stands open. */
export const finding = signal(false);

/** A search's answer and the plan it was made for. */
export interface Found extends SiteSeen {
  readonly plan: Plan;
}
export const found = signal<Found | null>(null);
/** What is no single cloth, worked out after the search; `null` until then. */
export const more = signal<MoreForms | null>(null);
export const searchProblem = signal<string | null>(null);
let controller: AbortController | null = null;

/**
 * While the form is filled in, the worker that will search looks the yard over: whoever presses the button then waits
 * for the search alone.
 * @returns calls it off, unless it is done
 */
export function lookAhead(): () => void {
  const mine = new AbortController();
  // Called off or broken: the search finds it all out by itself.
  askEngine('lookOver', { plan: bare(plan.peek()) }, { signal: mine.signal }).catch(() => undefined);
  return () => mine.abort();
}

export async function findTheBest(): Promise<void> {
  cancelSearch();
  const mine = new AbortController();
  controller = mine;
  searching.value = { done: 0, what: '' };
  searchProblem.value = null;
  more.value = null;
  const asked = plan.value;
  const chosen = wish.value.plants;
  const args = {
    plan: bare(asked),
    request: { ...requestOf(wish.value), forPlants: chosen ?? undefined, hideFrom: hiddenFromWhom(asked, wish.value) },
  };
  try {
    const answer = await askEngine('site', args, {
      signal: mine.signal,
      onProgress: (progress) => (searching.value = progress),
    });
    if (mine.signal.aborted) return;
    if (answer.ok) {
      found.value = { plan: asked, ...answer.value };
      tellFound(answer.value.result.sentence);
      void lookFurther(args, answer.value.result, mine.signal);
    } else
      searchProblem.value =
        answer.problems[0]?.message ??
        'The search gave no answer. Nothing has changed; put a roof or a screen in by hand and hold it against today.';
    searching.value = null;
  } catch {
    // Called off: whoever did that has set the state.
  }
}

/** A pot moved and a plant covered, and a trellis: nobody waits for them. */
async function lookFurther(
  args: { readonly plan: Plan; readonly request: SiteRequest },
  result: SiteResult,
  called: AbortSignal,
): Promise<void> {
  const moves = cheaper.value.shown?.value.steps.flatMap((step) => step.moves ?? []) ?? [];
  try {
    const answer = await askEngine('moreForms', { ...args, moves, found: result }, { signal: called });
    if (answer.ok && !called.aborted) more.value = answer.value;
  } catch {
    // Called off: the next search looks anew.
  }
}

/** Who has gone to another card meanwhile is told there. */
function tellFound(sentence: string): void {
  if (stage.value === 'try' && aside.value === null) readOut(sentence);
  else say('The search for cloth is done.', 'done', { label: 'See what it found', run: () => goToStage('try') });
}

// Nothing that was asked about one yard stays when another is opened.
let yard = openYardId.peek();
effect(() => {
  if (openYardId.value === yard) return;
  yard = openYardId.value;
  cancelSearch();
  found.value = null;
  more.value = null;
  searchProblem.value = null;
  wish.value = { ...wish.peek(), hideFrom: null, plants: null };
});

export function cancelSearch(): void {
  controller?.abort();
  controller = null;
  if (searching.peek() !== null) say('The search was called off. Nothing has changed.');
  searching.value = null;
}

function requestOf({ kind, upTo, density, count }: Wish): SiteRequest {
  return {
    kinds: kind === 'any' ? ['roof', 'roof with drops', 'screen'] : [kind],
    sizes: sizesUpTo(upTo, units.value),
    heights: 'any',
    densities: density === 'any' ? undefined : [density],
    count,
    units: units.value,
  };
}

/** Left to the search where it is everyone: nobody can hide from a window over the whole yard. */
function hiddenFromWhom({ features }: Plan, { hideFrom }: Wish): readonly string[] | undefined {
  if (hideFrom === EVERYONE) return undefined;
  return features.flatMap(({ id, kind }) => (kind === 'eye' && id === hideFrom ? [id] : []));
}

/** Sides that cloth is cut to, in metres and in feet, and how many of them there are up to the largest size. */
const SIDES: Readonly<Record<Units, readonly number[]>> = {
  metric: [1, 1.5, 2, 2.5, 3, 3.5, 4],
  imperial: [3, 4, 6, 8, 10, 11, 12],
};
const UP_TO = { small: 3, middling: 5, large: 7 } as const;
export type Largest = keyof typeof UP_TO;

/** The largest sizes that may be asked for: "3 × 3 m", "10 × 10 ft". */
export function largestSizes(shown: Units): Readonly<Record<Largest, string>> {
  const words = (most: Largest): string => {
    const side = SIDES[shown][UP_TO[most] - 1];
    return `${side} × ${side} ${shown === 'metric' ? 'm' : 'ft'}`;
  };
  return { small: words('small'), middling: words('middling'), large: words('large') };
}

/** Every size up to the largest, the longer side first. */
function sizesUpTo(most: Largest, shown: Units): ClothSize[] {
  const sides = SIDES[shown].slice(0, UP_TO[most]).map((side) => (shown === 'metric' ? side : side * METRES_PER_FOOT));
  return sides.flatMap((length, k) => sides.slice(0, k + 1).map((width) => ({ length, width })));
}

/** Without what the search has no use for. */
function bare({ journal: _journal, past: _past, ...rest }: Plan): Plan {
  return rest;
}

export function growing({ features }: Plan): readonly Feature[] {
  return features.filter(
    ({ kind, ...rest }) => kind === 'plant' || kind === 'bed' || (kind === 'tree' && 'plant' in rest),
  );
}
