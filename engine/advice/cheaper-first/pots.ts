import type { Outcome } from '../../load/types.ts';
import { rowOf } from '../../load/verdict/planted.ts';
import { worthOf } from '../../plan/defaults.ts';
import { isMovable } from '../../plan/kinds.ts';
import type { Plan, PlanPoint, Plant } from '../../plan/types.ts';
import { formatShare } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { agreeingWith } from '../../plan/words/agreement.ts';
import { capital } from '../../plan/words/first-letter.ts';
import { namedInside, nameOf, fewNames } from '../../plan/words/names.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import { hardeningOf } from '../place/hardening.ts';
import { createPotJudges } from '../place/judge.ts';
import { rankingOf } from '../place/rank.ts';
import { wayWords } from '../place/way.ts';
import { type Harmed, sharedBy } from '../words/served.ts';
import { spotWords } from '../words/spot-words.ts';
import { harmStep, type LadderStep } from './step.ts';

/** Of more pots nobody carries all; each takes as long as a question for its place. */
const MOST_CARRIED = 6;

/**
 * Each pot at the best place that has light enough for it, one after the other, so that no two go to the same.
 * @param harmed the pots that heat harms, the most harmed first: of many only so many are carried
 */
export function moveStep(plan: Plan, harmed: readonly Plant[], units: Units, weather?: Weather): Outcome<LadderStep> {
  const pots = plan.features.filter(isMovable).filter((pot) => harmed.slice(0, MOST_CARRIED).includes(pot));
  let moving = plan;
  let judges = createPotJudges(plan, weather);
  const moved: Harmed[] = [];
  const moves: { plant: string; at: PlanPoint }[] = [];
  const told: string[] = [];
  const stays: string[] = [];
  for (const pot of pots) {
    const row = rowOf(plan, pot);
    if (row === undefined) continue;
    if (!judges.ok) return judges;
    const { stay, ranked } = rankingOf(moving, pot, row, judges.value.of(pot, row));
    const [place] = ranked(1);
    if (place === stay || place.standing === 'too dark' || place.harm >= stay.harm) {
      stays.push(pot.id);
      continue;
    }
    moved.push({ id: pot.id, worth: worthOf(pot), before: stay.harm, after: place.harm });
    const harden =
      hardeningOf(stay.light.sunHours, place.light.sunHours) === null
        ? ''
        : ` (harden ${agreeingWith(nameOf(plan, pot.id)).them} off first)`;
    told.push(
      `${namedInside(plan, pot.id)} ${spotWords(moving, place.at, pot.id, units)}, ` +
        `${wayWords(plan, place, units)}${harden}`,
    );
    moving = {
      ...moving,
      features: moving.features.map((feature) => (feature.id === pot.id ? { ...pot, at: place.at } : feature)),
    };
    judges = createPotJudges(moving, weather, judges.value);
    moves.push({ plant: pot.id, at: place.at });
  }
  const name = pots.length > 1 ? 'Move the pots' : 'Move the pot';
  const step = { id: 'move', name, cost: 0 } as const;
  if (moves.length === 0) return { ok: true, value: { ...step, ...NO_BETTER_PLACE, moves } };
  // Of one pot the share stands in the effect already.
  const offEach = moved.map(({ id, before, after }) =>
    moves.length > 1 ? `: ${formatShare(1 - after / before)} off ${agreeingWith(nameOf(plan, id)).them}` : '',
  );
  const found = capital(`${told.map((where, k) => where + offEach[k]).join('; ')}.`);
  const rest = `${staysWords(plan, stays)}${manyWords(harmed.length, pots.length)}`;
  const does = {
    serves: moved.map(({ id }) => id),
    spared: moved.reduce((sum, { worth, before, after }) => sum + worth * (before - after), 0),
    sparedShare: sharedBy(moved),
  };
  return { ok: true, value: { ...harmStep(plan, { ...step, sentence: `${found}${rest}` }, does), moves, moved } };
}

const NO_BETTER_PLACE = {
  cost: null,
  serves: [],
  spared: 0,
  sparedShare: 0,
  gain: 'nothing to gain',
  effect: 'nothing to gain',
  sentence: 'No other place with light enough spares them anything.',
} as const;

function staysWords(plan: Plan, stays: readonly string[]): string {
  return stays.length > 0 ? ` No better place for ${fewNames(plan, stays)}.` : '';
}

function manyWords(harmed: number, carried: number): string {
  return harmed > carried
    ? ` Of ${harmed} pots that burn these burn most; ask for the place of another by itself.`
    : '';
}
