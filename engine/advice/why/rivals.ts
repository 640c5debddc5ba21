import { rootsAbout } from '../../load/pot/pot-words.ts';
import type { Roots } from '../../load/types.ts';
import type { CivilDate, Plan } from '../../plan/types.ts';
import type { Units } from '../../plan/units/units.ts';
import { type Agreeing, agreeingWith } from '../../plan/words/agreement.ts';
import { capital } from '../../plan/words/first-letter.ts';
import { nameOf } from '../../plan/words/names.ts';
import { daysAfter } from '../../sun/days/calendar.ts';

/** What else browns a plant. Common practice, no source. */
export const RIVAL_IDS = ['dry', 'roots', 'salt', 'wind', 'spray', 'glare', 'moved', 'pruned'] as const;
export type RivalId = (typeof RIVAL_IDS)[number];

/** A rival cause, as a question with yes or no. */
export interface Rival {
  readonly id: RivalId;
  readonly question: string;
  /** What to look at, inside a sentence. */
  readonly lookAt: string;
  /** Answered yes by the person or by the journal. */
  readonly yes: boolean;
  /** What the journal says to it; `null`: nothing. */
  readonly noted: string | null;
}

/** A spray or a move counts when it came at most this long before the damage. */
const DAYS_BEFORE = 14;

interface RivalWords {
  /** @param who words that agree with the plant's name */
  readonly question: (who: Agreeing) => string;
  readonly lookAt: string;
}

const WORDS: Readonly<Record<RivalId, RivalWords>> = {
  dry: {
    question: ({ they }) => `Was the root ball dry, or did ${they} miss a watering that week?`,
    lookAt: 'a dry root ball',
  },
  roots: {
    question: ({ their }) => `Is the sunny wall of ${their} pot too hot to keep a hand on?`,
    lookAt: 'roots cooked in the pot',
  },
  salt: {
    question: () => 'Did the tips and edges of lower leaves go crisp first, or is there a white crust on the soil?',
    lookAt: 'salt (crisp tips, a white crust)',
  },
  wind: { question: () => 'Was there a hot, dry wind?', lookAt: 'wind' },
  spray: {
    question: (who) => `${wereThey(who)} sprayed with oil, soap, sulphur or feed in the two weeks before?`,
    lookAt: 'a spray in the sun',
  },
  glare: {
    question: () => 'Does a window, a pool or a bright wall throw light on that side?',
    lookAt: "a window's glare",
  },
  moved: {
    question: (who) => `${wereThey(who)} moved, repotted or bought in the two weeks before?`,
    lookAt: 'a move or purchase within two weeks (not hardened)',
  },
  pruned: {
    question: (who) => `${wereThey(who)} pruned hard this spring, so that shaded bark or leaves came into the open?`,
    lookAt: 'hard pruning',
  },
};

function wereThey({ were, they }: Agreeing): string {
  return `${capital(were)} ${they}`;
}

/**
 * The checklist for a damaged plant: what the person says yes to, and what the journal knows already.
 * @param date Of the damage; `null` where nobody knows.
 * @param roots of its pot on the hot day; `null` of what stands in none
 */
export function rivalsOf(
  plan: Plan,
  plantId: string,
  date: CivilDate | null,
  yes: readonly RivalId[],
  roots: Roots | null,
  units: Units,
): Rival[] {
  const who = agreeingWith(nameOf(plan, plantId));
  return RIVAL_IDS.filter((id) => id !== 'roots' || roots !== null).map((id) => {
    const noted = date === null ? null : notedOf(plan, plantId, date, id, who);
    const { question, lookAt } = WORDS[id];
    const reach =
      id === 'roots' && roots !== null
        ? ` ${capital(who.their)} roots reach ${rootsAbout(roots, units)} on such a day.`
        : '';
    return { id, question: question(who) + reach, lookAt, yes: yes.includes(id) || noted !== null, noted };
  });
}

function notedOf(plan: Plan, plantId: string, date: CivilDate, id: RivalId, who: Agreeing): string | null {
  if (id !== 'spray' && id !== 'moved') return null;
  const earliest = daysAfter(date, -DAYS_BEFORE);
  const within = (day: string): boolean => day >= earliest && day <= date;
  const entry = (plan.journal ?? []).find(
    ({ what, feature, date: day }) => what === id && (feature === undefined || feature === plantId) && within(day),
  );
  if (entry !== undefined) return `Your journal has ${id === 'spray' ? 'a spray' : 'a move'} on ${entry.date}.`;
  const feature = plan.features.find((candidate) => candidate.id === plantId);
  const planted = feature !== undefined && 'planted' in feature ? feature.planted : undefined;
  return id === 'moved' && planted?.length === 10 && within(planted)
    ? `${capital(who.they)} ${who.were} planted on ${planted}.`
    : null;
}
