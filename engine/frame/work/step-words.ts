/** What each step says. */

import { formatCut, formatSpeed } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import type { CutPlan } from '../cuts/types.ts';
import { isCrosswise } from '../layout/canopy-braces.ts';
import { formatAbout, formatMark, formatSlight, formatTape } from '../layout/lengths.ts';
import type { FrameModel } from '../layout/model.ts';
import { UNDER_POST } from '../strength/footings.ts';
import type { StepInput } from './step.ts';

export const ASK =
  'Before you buy: go through the cautions marked STOP and settle each one. Write down who owns the walls near by.';

export function probeWords(onFloor: boolean): string {
  return onFloor
    ? 'Look over the floor where each post will stand: firm, level, no drain cover.'
    : 'Push a thin steel rod into the ground at every post: soil, a hard layer, a root or a pipe? Move the ' +
        'frame now, on the plan, if one is in the way.';
}

export function setOutWords(input: StepInput, units: Units): string {
  return (
    `Mark the middle of every post with a peg (a chalk cross on a hard floor), from the setting-out table with ` +
    `two tape measures, and run a string round them.${squareWords(input, units)}${stayWords(input.model, units)} ` +
    `Hold the string level with the spirit ` +
    `level: where the ground lies lower at a post, that post is cut longer by as much.`
  );
}

function squareWords({ settingOut: { diagonals }, model }: StepInput, units: Units): string {
  const first = diagonals.at(0);
  if (first === undefined) return '';
  if (model.kind === 'screen')
    return ` From ${first.from} to ${first.to} it must measure ${formatTape(first.length, units)}.`;
  return (
    ` Both diagonals, ${diagonals.map(({ from, to }) => `${from} to ${to}`).join(' and ')}, must ` +
    `measure ${formatTape(first.length, units)} to within ${formatTape(0.01, units)}: then the corners are square.`
  );
}

/** Stays run at 45°: as far out as they are high. */
function stayHeights({ tubes }: FrameModel, units: Units): string {
  const heights = tubes.filter(({ kind }) => kind === 'stay').map(({ from }) => formatMark(from[2], units));
  return [...new Set(heights)].join(' or ');
}

function stayWords(model: FrameModel, units: Units): string {
  return stayHeights(model, units) === ''
    ? ''
    : ` Mark each stay’s foot too, ${stayHeights(model, units)} from its post, square to the screen, on ` +
        `the side away from the wind you expect.`;
}

export function unknownGroundWords(sunk: number, units: Units): string {
  const longer =
    sunk > 0
      ? ` The posts are counted ${formatCut(sunk, units)} longer than they stand high, to go into holes; that may ` +
        `change.`
      : '';
  return (
    `Stop here until you know the ground: choose its kind in the plan and print this sheet again.${longer} Do not ` +
    `raise the frame unanchored.`
  );
}

export function measureWords(units: Units): string {
  return (
    `Measure one tube (it may be ${units === 'metric' ? '6 mm' : '1/4 in'} short of its name) and put one joint ` +
    `on it: how far does the tube stop from the joint’s middle? If that is not the take-off on this sheet, ` +
    `type yours in the plan and print again before you cut anything.`
  );
}

export function cutWords({ kerf }: CutPlan, units: Units): string {
  const saw =
    kerf === 0
      ? 'a rolling tube cutter'
      : `a hacksaw that takes no more than ${formatSlight(kerf, units)} a cut, or a rolling tube cutter`;
  return (
    `Mark and cut the tubes as in the cut list, the longest pieces first, with ${saw}; write each part’s name on it. ` +
    `Take the burr off with a round file or reamer, inside and out, and paint the cut ends with zinc paint.`
  );
}

export const ENDS =
  'No tube needs cutting. Take any burr off the ends with a round file or reamer and paint bare steel with zinc paint.';

/** A screen is put together lying flat, post and all; of a roof the posts come when it is lifted. */
export function joinWords({ kind }: FrameModel): string {
  return kind === 'canopy'
    ? 'Lay the roof out on the ground in the shade, put the rails into their joints and turn the set screws in ' +
        'finger-tight only.'
    : 'Lay the screen out flat on the ground in the shade, posts and rails together, one straight stretch at a time; ' +
        'turn the set screws in finger-tight only.';
}

/** @param height Of the rail's middle. [m] */
export function wallWords(height: number, units: Units): string {
  return (
    `Have the wall brackets fixed by somebody licensed for it, who has looked at the wall, with the fixings that ` +
    `they choose: the rail’s middle ${formatCut(height, units)} above the ground, level from bracket to bracket.`
  );
}

/**
 * @param onFeet Whether posts stand on feet.  @param bolted Whether those feet go over bolts that were cast before.
 * @param high Whether a ladder is needed.
 */
export function raiseWords(
  { people, sunk, anchors, model }: StepInput,
  { onFeet, bolted, high }: { readonly onFeet: boolean; readonly bolted: boolean; readonly high: boolean },
  units: Units,
): string {
  const stone = anchors.concrete === null ? '' : `, each on a flat stone of ${formatAbout(UNDER_POST, units)}`;
  const reach = high
    ? 'A step ladder set open on firm ground, never against the frame.'
    : 'It is low enough to reach from the ground.';
  if (model.kind === 'screen') {
    const up =
      sunk > 0
        ? `stand the screen up, its posts in their holes${stone}, and prop it on both sides until they hold`
        : `stand the screen up on its marks, feet on${bolted ? ' over their bolts' : ''}, and hold it until its ` +
          `stays are fixed`;
    return `With ${peopleWord(people)} people: ${up}. ${reach}`;
  }
  const stands = onFeet
    ? `, feet on${bolted ? ' over their bolts' : ''}`
    : sunk > 0
      ? `, standing in their holes${stone}`
      : '';
  const sides = model.posts.some(({ onWall }) => onWall === true)
    ? `lift the wall’s side into its brackets and close them; then the other side, and put its posts in${stands}`
    : `lift one side, put its posts in${stands}; then the other side`;
  return `With ${peopleWord(people)} people: ${sides}. Nobody stands under it. ${reach}`;
}

export const LOW_RAILS =
  'Join the posts’ feet with the bottom rails: a joint on every foot, the rails pushed in one side after the other, ' +
  'screws finger-tight.';

export function squareUpWords({ kind }: FrameModel): string {
  return (
    `Bring every foot back to the string and every post upright with the spirit level; ` +
    `${kind === 'canopy' ? 'measure the diagonals' : 'measure it'} again; then tighten all set screws ` +
    `with the hex key or spanner.`
  );
}

/** @param drops Whether any cloth hangs from an edge of the roof. */
export function braceWords({ model, brief }: StepInput, drops: boolean, units: Units): string {
  if (model.kind === 'screen')
    return (
      `Set the stays on the side away from the wind you expect: a brace clamp on each post, ` +
      `${stayHeights(model, units)} above the ground, a foot on the ground as far from it, screws tight.`
    );
  const faces =
    drops && !brief.braces ? ' in the faces that stand along the push on the drops' : ', two in every upright face';
  const first = drops ? ' A frame with drops is not to carry them before the braces are in.' : '';
  return `Fix the braces with their brace clamps${faces}: ${clampWords(model, units)}, screws tight.${first}`;
}

/** Where the two clamps of a brace close, from the joint on top of its post. */
function clampWords({ tubes }: FrameModel, units: Units): string {
  const ways = tubes
    .filter(({ kind }) => kind === 'brace')
    .map(({ from, to }) => ({
      way: formatMark(Math.hypot(to[0] - from[0], to[1] - from[1]), units),
      runs: isCrosswise(from, to) ? 'crosswise' : 'lengthwise',
    }));
  const each = [...new Set(ways.map(({ way }) => way))].map((way) => {
    const runs = [...new Set(ways.filter((one) => one.way === way).map((one) => one.runs))];
    return { way, runs: runs.join(' and ') };
  });
  const down =
    each.length === 1
      ? `${each[0].way} down the post`
      : `${each.map(({ way, runs }) => `${way} down the post where the brace runs ${runs}`).join(' and ')}`;
  return `one clamp ${down}, the other as far along the rail`;
}

export function waitWords({ storm }: StepInput, units: Units): string {
  return (
    `Before the cloth goes up: push each post firmly with one hand at shoulder height: nothing may rock, turn ` +
    `in its joint or stay bent. Read the storm plan: the cloth comes off before gusts of ` +
    `${formatSpeed(storm.takeDownGust, units)}.`
  );
}

/** @param seams Whether strips are sewn together.  @param rods Whether rods go into the lower hems. */
export function sewWords(seams: boolean, rods: boolean): string {
  const sew = seams
    ? 'Cut the strips with scissors, sew the seams and the hems with the UV-proof thread on a sewing machine or ' +
      'with a strong needle'
    : 'Cut the cloth with scissors and hem it with the UV-proof thread on a sewing machine or with a strong needle';
  const open = rods ? '; leave the drops’ lower hems open at one end for the steel rods' : '';
  return `${sew}${open}. Lay it out first and measure it: finished sizes are in the cloth list.`;
}

export function hangWords({ people, cloth }: StepInput, clips: boolean, rods: boolean, units: Units): string {
  return (
    `On a calm morning, ${peopleWord(people)} people: ` +
    `${clips ? 'put a snap clip at every tie point, then ' : ''}fix the corners with elastic ties, then the ` +
    `middles of the sides, then the rest, as far apart as the cloth list says (no more than ` +
    `${formatAbout(cloth.tieSpacing, units)}), one at every corner and post. The cloth should be flat, ` +
    `the ties half stretched.` +
    `${rods ? ' Hang the drops the same way and slide the steel rods into their lower hems.' : ''}`
  );
}

export const RETIGHTEN =
  'After two weeks tighten the ties: knitted cloth gives 1 to 3 % in its first summer. Then measure what you built ' +
  'and type it in as built, so that the plan shows what really stands there.';

function peopleWord(people: number): string {
  return people === 2 ? 'two' : String(people);
}
