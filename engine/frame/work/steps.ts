/** The work in order. Every step names what it takes, and that stands on the shopping list or among the tools. */
import { formatCut, formatSpeed } from '../../plan/units.ts';
import type { Units } from '../../plan/units.ts';
import { UNDER_POST } from '../strength/anchors.ts';
import { castFirst, foundationSteps, holdDownSteps } from './anchor-steps.ts';
import { formatAbout, formatSlight, formatTape } from '../layout/lengths.ts';
import type { FrameBrief, FrameModel } from '../layout/model.ts';
import { step } from './step.ts';
import type { AnchorPlan, ClothPlan, Cost, CutPlan, SettingOut, Step, StormPlan, Tool } from '../types.ts';

const TOOLS = {
  rod: 'thin steel rod to probe the ground',
  tapes: 'two tape measures',
  pegs: 'pegs and string',
  level: 'spirit level, 60 cm (2 ft) or longer',
  marker: 'marker pen',
  saw: 'rolling tube cutter or hacksaw',
  deburr: 'round file or reamer',
  key: 'hex key or spanner for the set screws',
  gloves: 'work gloves',
  goggles: 'goggles',
  ears: 'ear protection',
  ladder: 'step ladder',
  spade: 'spade and digging bar',
  stones: 'flat stones or pieces of brick, 50 mm (2 in) thick, one a post',
  barrow: 'wheelbarrow or tub and a trowel to mix concrete',
  hammer: 'heavy hammer',
  bar: 'strong bar to turn the augers',
  hose: 'hose to fill the cans',
  scissors: 'scissors',
  needle: 'sewing machine or a strong needle',
} as const;
/** Tape measures as they are sold. */
const TAPES = [
  { length: 7.6, metric: '8 m', imperial: '25 ft' },
  { length: 15, metric: '15 m', imperial: '50 ft' },
  { length: 30, metric: '30 m', imperial: '100 ft' },
  { length: 50, metric: '50 m', imperial: '165 ft' },
] as const;
type ToolId = keyof typeof TOOLS;
/** A joint up to here is reached from the ground. [m] */
const REACH = 1.9;

export interface StepInput {
  readonly model: FrameModel;
  readonly brief: FrameBrief;
  readonly cutting: CutPlan;
  readonly cloth: ClothPlan;
  readonly anchors: AnchorPlan;
  readonly settingOut: SettingOut;
  readonly storm: StormPlan;
  readonly cost: Cost;
  readonly sunk: number;
  readonly people: number;
}

/** @returns The steps in order, and every tool that one of them takes. */
export function stepsOf(input: StepInput, units: Units): { steps: readonly Step[]; tools: readonly Tool[] } {
  const steps = [
    ...groundSteps(input, units),
    ...frameSteps(input, units),
    ...holdSteps(input, units),
    ...clothSteps(input, units),
  ];
  const ids = (Object.keys(TOOLS) as ToolId[]).filter((id) => steps.some((step) => step.needs.includes(id)));
  return {
    steps,
    tools: ids.map((id) => ({ id, name: id === 'tapes' ? tapesFor(input.settingOut, units) : TOOLS[id] })),
  };
}

/** Tapes long enough for the longest length of the setting-out table. */
function tapesFor({ posts, diagonals }: SettingOut, units: Units): string {
  const longest = Math.max(
    ...posts.flatMap((post) => [post.fromA, post.fromB]),
    ...diagonals.map((diagonal) => diagonal.length),
  );
  const tape = TAPES.find(({ length }) => length >= longest) ?? TAPES[TAPES.length - 1];
  return `${TOOLS.tapes}, ${units === 'metric' ? tape.metric : tape.imperial} or longer`;
}

function groundSteps({ settingOut, anchors, model, brief, sunk, cost }: StepInput, units: Units): Step[] {
  const [first] = settingOut.diagonals;
  const square =
    model.kind === 'canopy' && first !== undefined
      ? ` Both diagonals, ${settingOut.diagonals.map(({ from, to }) => `${from} to ${to}`).join(' and ')}, must ` +
        `measure ${formatTape(first.length, units)} to within ${formatTape(0.01, units)}: then the corners are square.`
      : first !== undefined
        ? ` From ${first.from} to ${first.to} it must measure ${formatTape(first.length, units)}.`
        : '';
  const stay = model.tubes.find(({ part }) => part === 'stay');
  const stays =
    stay === undefined
      ? ''
      : ` Mark each stay’s foot too, ${formatCut(stay.from[2], units)} from its post, square to the screen, on ` +
        `the side away from the wind you expect.`;
  return [
    step(
      'ask',
      'Before you buy: go through the cautions marked STOP below and settle each one. Write down who owns the ' +
        'walls near by.',
      [],
      ['permission', 'shared-wall', 'overhead-line', 'children', 'engineer'],
    ),
    step(
      'probe',
      anchors.ground === 'paving' || anchors.ground === 'wheels'
        ? 'Look over the floor where each post will stand: firm, level, no drain cover.'
        : 'Push a thin steel rod into the ground at every post: soil, a hard layer, a root or a pipe? Move the ' +
            'frame now, on the plan, if one is in the way.',
      anchors.ground === 'paving' || anchors.ground === 'wheels' ? [] : ['rod'],
      ['buried-lines'],
    ),
    step(
      'set-out',
      `Mark the middle of every post with a peg (a chalk cross on a hard floor), from the setting-out table with ` +
        `two tape measures, and run a string round them.${square}${stays} Hold the string level with the spirit ` +
        `level: where the ground lies lower at a post, that post is cut longer by as much.`,
      ['tapes', 'pegs', 'marker', 'level'],
      [],
    ),
    ...foundationSteps(anchors, brief, idsOf(cost, 'joint-foot'), units),
    ...(brief.ground === null
      ? [
          step(
            'ground',
            `Stop here until you know the ground: choose its kind in the plan and print this sheet ` +
              `again.${sunk > 0 ? ` The posts are counted ${formatCut(sunk, units)} longer than they stand high, to go into holes; that may change.` : ''} Do not raise the frame unanchored.`,
            [],
            ['anchors'],
          ),
        ]
      : []),
  ];
}

function frameSteps({ model, cost, cutting }: StepInput, units: Units): Step[] {
  const tubes = idsOf(cost, 'tube-');
  const joints = idsOf(cost, 'joint-');
  const rolling = cutting.kerf === 0;
  const cutsAny = cutting.tubes.some((tube) => tube.pieces.length > 1 || tube.left > 0 || tube.lost > 0);
  const clamps = joints.filter((id) => id.includes('brace clamp'));
  const feet = joints.filter((id) => id.includes('joint-foot'));
  const upper = joints.filter((id) => !clamps.includes(id) && !feet.includes(id));
  return [
    step(
      'measure',
      `Measure one tube (it may be ${units === 'metric' ? '6 mm' : '1/4 in'} short of its name) and put one joint ` +
        `on it: how far does the tube stop from the joint’s middle? If that is not the take-off on this sheet, ` +
        `type yours in the plan and print again before you cut anything.`,
      ['tapes', ...tubes, ...upper.slice(0, 1)],
      [],
    ),
    ...(cutsAny
      ? [
          step(
            'cut',
            `Mark and cut the tubes as in the cut list, the longest pieces first, with ` +
              `${rolling ? 'a rolling tube cutter' : `a hacksaw that takes no more than ${formatSlight(cutting.kerf, units)} a cut, or a rolling tube cutter`}; write each part’s name on it. Take the burr off with a round file or reamer, inside and out, and paint the cut ends with zinc paint.`,
            ['tapes', 'marker', 'saw', 'deburr', 'goggles', 'ears', 'gloves', 'zinc-paint', ...tubes],
            ['cutting'],
          ),
        ]
      : [
          step(
            'ends',
            'No tube needs cutting. Take any burr off the ends with a round file or reamer and paint bare steel ' +
              'with zinc paint.',
            ['deburr', 'zinc-paint', 'gloves', ...tubes],
            ['cutting'],
          ),
        ]),
    step(
      'join',
      `Lay the ${model.kind === 'canopy' ? 'roof' : 'screen'} out on the ground in the shade, put the rails into ` +
        `their joints and turn the set screws in finger-tight only.`,
      ['gloves', 'screws', ...upper, ...tubes],
      ['heat'],
    ),
  ];
}

function holdSteps({ model, anchors, cost, storm, sunk, brief, people }: StepInput, units: Units): Step[] {
  const joints = idsOf(cost, 'joint-');
  const feet = joints.filter((id) => id.includes('joint-foot'));
  const clamps = joints.filter((id) => id.includes('brace clamp'));
  const stays = model.kind === 'screen' && model.braced;
  const braced = model.braced && clamps.length > 0;
  const onBolts = castFirst(anchors, brief) ? ' over their bolts' : '';
  const onFeet = feet.includes('joint-foot')
    ? `, feet on${onBolts}`
    : sunk > 0
      ? `, standing in their holes${anchors.footing === null ? '' : `, each on a flat stone of ${formatAbout(UNDER_POST, units)}`}`
      : '';
  const high = model.posts.some((post) => post.height > REACH);
  const raise =
    `With ${people === 2 ? 'two' : people} people: lift one side, put its posts in${onFeet}; then the ` +
    `other side. Nobody stands under it. ` +
    `${high ? 'A step ladder only on level ground.' : 'It is low enough to reach from the ground.'}`;
  const ladder = high ? ['ladder'] : [];
  const lowJoints = joints.filter((id) => /joint-(3-way corner|3-way tee|2-way corner)$/.test(id));
  const drops = model.cloths.some(({ where }) => where.startsWith('drop'));
  return [
    step(
      'raise',
      raise,
      [
        ...ladder,
        'gloves',
        ...(sunk > 0 && anchors.footing !== null ? ['stones'] : []),
        ...feet.filter((id) => id === 'joint-foot'),
      ],
      ['ladder', 'overhead-line', 'heat'],
    ),
    ...(brief.bottomRails && model.kind === 'canopy'
      ? [
          step(
            'low-rails',
            'Join the posts’ feet with the bottom rails: a joint on every foot, the rails pushed in one side ' +
              'after the other, screws finger-tight.',
            ['gloves', 'screws', ...lowJoints, ...idsOf(cost, 'tube-')],
            [],
          ),
        ]
      : []),
    step(
      'square',
      `Bring every post upright with the spirit level and the frame back on its string; ` +
        `${model.kind === 'canopy' ? 'measure the diagonals' : 'measure it'} again; then tighten all set screws ` +
        `with the hex key or spanner.`,
      ['level', 'tapes', 'key', 'screws'],
      [],
    ),
    ...(braced
      ? [
          step(
            'brace',
            stays
              ? 'Set the stays on the side away from the wind you expect: a brace clamp on each post, a foot on ' +
                  'the ground, screws tight.'
              : `Fix the braces with their brace ` +
                  `clamps${drops && !brief.braces ? ' in the faces that stand along the push on the drops' : ', two in every upright face'}, screws tight.${drops ? ' A frame with drops is not to carry them before the braces are in.' : ''}`,
            [...clamps, ...feet, 'screws', 'key'],
            ['anchors'],
          ),
        ]
      : []),
    ...holdDownSteps(anchors, brief, feet.length > 0, units),
    step(
      'wait',
      `Before the cloth goes up: push each post firmly with one hand at shoulder height: nothing may rock, turn ` +
        `in its joint or stay bent. Read the storm plan: the cloth comes off before gusts of ` +
        `${formatSpeed(storm.takeDownGust, units)}.`,
      [],
      ['wind-orientation', 'anchors'],
    ),
  ];
}

function clothSteps({ cloth, cost, model, people }: StepInput, units: Units): Step[] {
  const cloths = idsOf(cost, 'cloth-');
  const rolls = cloth.pieces.filter((piece) => piece.buy === 'from the roll');
  const rods = cost.items.some((item) => item.id === 'hem-rods');
  const clips = cost.items.some((item) => item.id === 'clips');
  const high = model.posts.some((post) => post.height > REACH);
  const sew = rolls.some((piece) => piece.seams > 0)
    ? 'Cut the strips with scissors, sew the seams and the hems with the UV-proof thread on a sewing machine or ' +
      'with a strong needle'
    : 'Cut the cloth with scissors and hem it with the UV-proof thread on a sewing machine or with a strong needle';
  return [
    ...(rolls.length > 0
      ? [
          step(
            'sew',
            `${sew}${rods ? '; leave the drops’ lower hems open at one end for the steel rods' : ''}. Lay it out ` +
              `first and measure it: finished sizes are in the cloth list.`,
            ['scissors', 'needle', 'thread', 'tapes', ...cloths],
            [],
          ),
        ]
      : []),
    step(
      'hang',
      `On a calm morning, ${people === 2 ? 'two' : people} people: ` +
        `${clips ? 'put a snap clip at every tie point, then ' : ''}fix the corners with elastic ties, then the ` +
        `middles of the sides, then the rest, one tie every ${formatCut(cloth.tieSpacing, units)} at most and ` +
        `always at corners and posts. The cloth should be flat, the ties half stretched.${rods ? ' Hang the drops the same way and slide the steel rods into their lower hems.' : ''}`,
      [...cloths, 'ties', ...(clips ? ['clips'] : []), ...(rods ? ['hem-rods'] : []), ...(high ? ['ladder'] : [])],
      ['cloth-off', 'ladder', 'fire', 'heat'],
    ),
    step(
      'retighten',
      'After two weeks tighten the ties: new knitted cloth gives. Then measure what you built and type it in as ' +
        'built, so that the plan shows what really stands there.',
      ['ties', 'tapes'],
      [],
    ),
  ];
}

function idsOf(cost: Cost, prefix: string): string[] {
  return cost.items.filter((item) => item.id.startsWith(prefix)).map((item) => item.id);
}
