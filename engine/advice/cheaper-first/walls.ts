import { compassWord } from '../../plan/compass.ts';
import { namedInside } from '../../plan/names.ts';
import { plantPoints } from '../../load/verdict/plant-points.ts';
import { potSides } from '../../load/verdict/plant-load.ts';
import type { Outcome } from '../../load/types.ts';
import { yardOf } from '../../load/yard.ts';
import type { Plan, Plant } from '../../plan/types.ts';
import type { Weather } from '../../sun/weather.ts';
import type { LadderStep } from './step.ts';
import { listWords } from '../../plan/list-words.ts';

/** Pots set close cover so many sides next to each other, of the eight that are judged. Our choice. */
const COVERED = 3;
/** Less hot sun than this on a pot's wall is none. [h/day] */
const NONE = 0.05;

/**
 * What a pot's wall gets of hot sun, and what pots set close to its hottest sides would keep off. Season means. [h/day]
 */
interface Wall {
  readonly id: string;
  readonly hotHours: number;
  readonly covered: number;
  /** Bearing in the middle of those sides. [°] */
  readonly toward: number;
}

/** Roots are told in hours of hot sun on the pot, not in degrees, so that what wrapping spares them is told so too. */
export function wrapStep(plan: Plan, weather?: Weather): Outcome<LadderStep> {
  const yard = yardOf(plan, { kind: 'season' }, weather);
  if (!yard.ok) return yard;
  const pots = plan.features.filter(
    (feature): feature is Plant => feature.kind === 'plant' && feature.container === true,
  );
  const walls = pots.map((pot): Wall => {
    const hot = potSides(yard.value, pot, plantPoints(plan, pot).own).map(({ hotHours }) => hotHours);
    const around = hot.map((_, k) =>
      Array.from({ length: COVERED }, (__, n) => hot[(k + n) % hot.length]).reduce((sum, hours) => sum + hours, 0),
    );
    const first = around.indexOf(Math.max(...around));
    return {
      id: pot.id,
      hotHours: sumOf(hot) / hot.length,
      covered: around[first] / hot.length,
      toward: ((first + (COVERED - 1) / 2) * 360) / hot.length,
    };
  });
  const warm = walls.filter(({ hotHours }) => hotHours >= NONE).toSorted((a, b) => b.hotHours - a.hotHours);
  const named = {
    id: 'wrap',
    name: pots.length > 1 ? 'Group and wrap the pots' : 'Wrap the pot',
    spared: null,
    sparedShare: null,
    cost: null,
  } as const;
  if (warm.length === 0)
    return {
      ok: true,
      value: {
        ...named,
        effect: 'little to gain',
        sentence: 'On most days of the season no hot sun reaches a pot’s wall.',
      },
    };
  const [worst] = warm;
  const wrapped =
    `A wrap, or a second pot around it with air between: ` +
    `${listWords(warm.map(({ id, hotHours }) => `${hotHours.toFixed(1)} h off ${namedInside(plan, id)}`))}.`;
  const grouped =
    pots.length > 1
      ? ` Other pots close on the ${compassWord(worst.toward)} of ${namedInside(plan, worst.id)}: up to ` +
        `${worst.covered.toFixed(1)} h.`
      : '';
  const effect = `takes up to ${worst.hotHours.toFixed(1)} h of hot sun a day off a pot’s wall`;
  return {
    ok: true,
    value: { ...named, effect, sentence: `${wrapped}${grouped} It helps roots; the leaves stand in the same sun.` },
  };
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
