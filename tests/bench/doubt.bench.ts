import { compareOptions } from '../../engine/advice/compare/compare.ts';
import { doubtOf } from '../../engine/advice/doubt/doubt.ts';
import { doubtInputs } from '../../engine/advice/doubt/inputs.ts';
import { createRayYard } from '../../engine/advice/doubt/rays.ts';
import { placeOf } from '../../engine/advice/place/place.ts';
import { plantLoadsOf } from '../../engine/load/load-of.ts';
import { demoPlan } from '../../engine/plan/demos/index.ts';
import type { Feature, How, Plan } from '../../engine/plan/types.ts';
import { hardPlan, holds } from '../hard-plans.ts';
import { valueOf } from '../parts/outcome.ts';
import type { BenchCase } from './harness.ts';
import { YARD } from './yard.ts';

const ROWS = ['lemon', 'tomato', 'hydrangea', 'fig', 'thyme', 'geranium'];
/** What of a feature is only guessed. */
const GUESSED = [
  'height',
  'thickness',
  'openness',
  'crownWidth',
  'crownBase',
  'eaves',
  'density',
  'at',
  'center',
  'path',
  'outline',
];

/** Seed of a yard of seventy plants. */
const FULL = 7015;

/** Of the shifts so many are laid out anew, the others taken to cost as much. */
const OF_SHIFTS = 4;

export function casesOf(): BenchCase[] {
  const plan = guessedYard();
  const inputs = doubtInputs(plan);
  const shifts = inputs.flatMap((input) => input.shifts);
  const anew = shifts.filter((_, n) => n % Math.floor(shifts.length / OF_SHIFTS) === 0);
  const [courtyard, lane] = [demoPlan('courtyard'), demoPlan('lane')];
  const full = hardPlan('full', FULL);
  return [
    {
      name: 'doubt of thirty plants',
      note:
        `${inputs.length} inputs, ${shifts.length} shifts, ${plan.season.from} to ${plan.season.to}; wanted: ` +
        `60 inputs under 3 s`,
      variants: [
        { name: 'only what a shift touches', run: () => sum(valueOf(doubtOf(plan)).inputs.map(({ moves }) => moves)) },
        {
          name: 'every shift a yard of its own',
          run: () => sum(anew.map(harmOfAll)),
          scale: shifts.length / anew.length,
        },
      ],
      ratios: [{ of: 'only what a shift touches', to: 'every shift a yard of its own' }],
    },
    {
      name: 'verdicts of thirty plants',
      note: 'their season and the heatwave day, each all round; wanted: under 1 s',
      variants: [
        { name: 'among white walls', run: () => valueOf(plantLoadsOf(whitewashed(plan))).length },
        { name: 'the walls taken away', run: () => valueOf(plantLoadsOf(withoutWalls(plan))).length },
      ],
      ratios: [{ of: 'among white walls', to: 'the walls taken away' }],
    },
    {
      name: 'comparing the options of a demo',
      note: 'wanted: under 3 s',
      variants: [
        {
          name: 'courtyard, three options',
          run: () => sparedIn(unseen(courtyard)),
        },
        {
          name: 'courtyard, one of them changed',
          run: () => sparedIn(oneRaised(courtyard)),
        },
        {
          name: 'lane, three options',
          run: () => sparedIn(unseen(lane)),
        },
      ],
      ratios: [{ of: 'courtyard, one of them changed', to: 'courtyard, three options' }],
    },
    {
      name: 'comparing a full yard',
      note: `${holds(full)}; each option moves a pot`,
      variants: [
        { name: 'two options', run: () => sparedIn(structuredClone(unseen(full))) },
        { name: 'verdicts on its plants alone', run: () => valueOf(plantLoadsOf(structuredClone(full))).length },
      ],
      ratios: [{ of: 'two options', to: 'verdicts on its plants alone' }],
    },
    {
      name: 'places for a pot',
      variants: [
        {
          name: 'the lemon of the courtyard',
          run: () => sum(valueOf(placeOf(courtyard, { plant: 'lemon' })).spots.map(({ harm }) => harm)),
        },
      ],
    },
  ];
}

function sparedIn(plan: Plan): number {
  return sum(valueOf(compareOptions(plan)).choices.map(({ spared }) => spared));
}

let changes = 0;

/** Equal yards are judged once: under another name it is judged again. */
function unseen(plan: Plan): Plan {
  return { ...plan, name: `Yard ${changes++}` };
}

/** The yard with its first option's roof a little higher than any time before. */
function oneRaised(plan: Plan): Plan {
  const [first, ...others] = plan.options ?? [];
  const adds = first.adds?.map((cloth) =>
    cloth.kind === 'canopy' ? { ...cloth, height: cloth.height + ++changes / 1000 } : cloth,
  );
  return { ...plan, options: [{ ...first, adds }, ...others] };
}

function harmOfAll(plan: Plan): number {
  return sum(valueOf(createRayYard(plan)).base.map(({ harm }) => harm));
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** Every caster of the bench yard guessed, twenty-four plants and six beds in it, fifteen plants' places paced. */
function guessedYard(): Plan {
  const casters = YARD.features.map((feature): Feature => ({ ...feature, how: guessesOf(feature) }));
  const plants = Array.from({ length: 30 }, (_, n): Feature => (n % 5 === 4 ? bed(n) : pot(n)));
  return { ...YARD, site: { ...YARD.site, how: { upBearing: { by: 'compass' } } }, features: [...casters, ...plants] };
}

function isWall({ kind }: Feature): boolean {
  return kind === 'wall' || kind === 'building';
}

function whitewashed(plan: Plan): Plan {
  const white = (feature: Feature): Feature =>
    isWall(feature) ? ({ ...feature, colour: 'white' } as Feature) : feature;
  return { ...plan, features: plan.features.map(white) };
}

function withoutWalls(plan: Plan): Plan {
  return { ...plan, features: plan.features.filter((feature) => !isWall(feature)) };
}

function guessesOf(feature: Feature): How {
  return Object.fromEntries(GUESSED.filter((key) => key in feature).map((key) => [key, { by: 'guess' }]));
}

function pot(n: number): Feature {
  return {
    id: `plant-${n}`,
    kind: 'plant',
    at: [0.7 + ((n * 5.3) % 16.6), 0.7 + ((n * 3.1) % 7.4)],
    height: 0.8 + 0.1 * (n % 7),
    spread: 0.5 + 0.1 * (n % 4),
    plant: ROWS[n % ROWS.length],
    ...(n < 19 ? { how: { at: { by: 'paced', pm: 0.3 } } as How } : {}),
  };
}

function bed(n: number): Feature {
  const x = 1 + n / 2;
  return {
    id: `bed-${n}`,
    kind: 'bed',
    outline: [
      [x, 3],
      [x + 1, 3],
      [x + 1, 4],
      [x, 4],
    ],
    plantHeight: 0.4,
    plant: ROWS[n % ROWS.length],
  };
}
