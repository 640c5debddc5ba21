import { nameOf } from '../../plan/names.ts';
import { rowOf } from '../../load/verdict/planted.ts';
import type { Outcome } from '../../load/types.ts';
import { worthOf } from '../../plan/defaults.ts';
import type { Feature, Plan, PlanPoint, Plant } from '../../plan/types.ts';
import { formatDistance, type Units } from '../../plan/units.ts';
import type { Weather } from '../../sun/weather.ts';
import { hardeningOf } from '../place/hardening.ts';
import { harmStep, type LadderStep, percent } from './step.ts';
import { createPotJudge } from '../place/judge.ts';
import { rankingOf, type Tried } from '../place/rank.ts';
import { fewNames } from '../year/words.ts';
import { spotWords } from '../words/spot-words.ts';

/** A move that spares a pot less than this is not worth the carrying. Our choice. [K·h/day] */
const WORTH_CARRYING = 0.5;

export function isMovable(feature: Feature): feature is Plant {
  return feature.kind === 'plant' && feature.container === true && feature.move !== 'never';
}

/**
 * Each pot at the best place that has light enough for it, one after the other, so that no two go to the same.
 * @param harm of the yard [K·h/day]
 */
export function moveStep(
  plan: Plan,
  pots: readonly Plant[],
  harm: number,
  units: Units,
  weather?: Weather,
): Outcome<LadderStep> {
  let moving = plan;
  let spared = 0;
  const moves: { plant: string; at: PlanPoint }[] = [];
  const told: string[] = [];
  const stays: string[] = [];
  for (const pot of pots) {
    const row = rowOf(plan, pot);
    if (row === undefined) continue;
    const judge = createPotJudge(moving, pot, row, weather);
    if (!judge.ok) return judge;
    const { stay, best } = rankingOf(moving, pot, row, judge.value);
    const place: Tried | undefined = best(1)[0];
    if (place === undefined || place.standing === 'too dark' || stay.harm - place.harm < WORTH_CARRYING) {
      stays.push(pot.id);
      continue;
    }
    spared += worthOf(pot) * (stay.harm - place.harm);
    moving = {
      ...moving,
      features: moving.features.map((feature) => (feature.id === pot.id ? { ...pot, at: place.at } : feature)),
    };
    const harden = hardeningOf(stay.light.sunHours, place.light.sunHours) === null ? '' : ' (harden it off first)';
    moves.push({ plant: pot.id, at: place.at });
    told.push(
      `${nameOf(plan, pot.id)} ${spotWords(moving, place.at, pot.id, units)}, ` +
        `${formatDistance(place.metres, units)} away${harden}: ${percent(1 - place.harm / stay.harm)} off it`,
    );
  }
  const name = pots.length > 1 ? 'Move the pots' : 'Move the pot';
  const found = moves.length === 0 ? 'No other place with light enough spares them anything.' : `${told.join('; ')}.`;
  const rest = moves.length > 0 && stays.length > 0 ? ` No better place for ${fewNames(plan, stays)}.` : '';
  return {
    ok: true,
    value: { ...harmStep({ id: 'move', name, cost: 0, sentence: `${found}${rest}` }, spared, harm), moves },
  };
}
