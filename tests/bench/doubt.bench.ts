import { doubtOf } from '../../engine/advice/doubt.ts';
import { doubtInputs } from '../../engine/advice/doubt-inputs.ts';
import type { Feature, How, Plan } from '../../engine/plan/types.ts';
import type { BenchCase } from './harness.ts';
import { YARD } from './yard.ts';

const ROWS = ['lemon', 'tomato', 'hydrangea', 'fig', 'thyme', 'geranium'];
/** What of a feature is only guessed. */
const GUESSED = ['height', 'thickness', 'openness', 'crownWidth', 'crownBase', 'eaves', 'density', 'at', 'center', 'path', 'outline'];

export function casesOf(): BenchCase[] {
  const plan = guessedYard();
  const inputs = doubtInputs(plan);
  const shifts = inputs.reduce((sum, input) => sum + input.shifts.length, 0);
  return [
    {
      name: 'doubt of thirty plants',
      note: `${inputs.length} inputs, ${shifts} shifts, ${plan.season.from} to ${plan.season.to}; wanted: 60 inputs under 3 s`,
      variants: [{ name: 'doubtOf', run: () => doubt(plan) }],
    },
  ];
}

function doubt(plan: Plan): number {
  const outcome = doubtOf(plan);
  if (!outcome.ok) throw new Error(outcome.problems.map(({ message }) => message).join(' '));
  return outcome.value.inputs.reduce((sum, { moves }) => sum + moves, 0);
}

/** Every caster of the bench yard guessed, twenty-four plants and six beds in it, fifteen plants' places paced. */
function guessedYard(): Plan {
  const casters = YARD.features.map((feature): Feature => ({ ...feature, how: guessesOf(feature) }));
  const plants = Array.from({ length: 30 }, (_, n): Feature => (n % 5 === 4 ? bed(n) : pot(n)));
  return { ...YARD, site: { ...YARD.site, how: { upBearing: { by: 'compass' } } }, features: [...casters, ...plants] };
}

function guessesOf(feature: Feature): How {
  return Object.fromEntries(GUESSED.filter((key) => key in feature).map((key) => [key, { by: 'guess' }]));
}

function pot(n: number): Feature {
  return {
    id: `plant-${n}`, kind: 'plant', at: [0.7 + ((n * 5.3) % 16.6), 0.7 + ((n * 3.1) % 7.4)], height: 0.8 + 0.1 * (n % 7), spread: 0.5 + 0.1 * (n % 4),
    plant: ROWS[n % ROWS.length], ...(n < 19 ? { how: { at: { by: 'paced', pm: 0.3 } } as How } : {}),
  };
}

function bed(n: number): Feature {
  const x = 1 + n / 2;
  return { id: `bed-${n}`, kind: 'bed', outline: [[x, 3], [x + 1, 3], [x + 1, 4], [x, 4]], plantHeight: 0.4, plant: ROWS[n % ROWS.length] };
}
