/** The tools that the steps take. */

import type { Units } from '../../plan/units/units.ts';
import type { SettingOut } from '../layout/types.ts';
import type { Step, Tool } from './types.ts';

const TOOLS = {
  rod: 'thin steel rod to probe the ground',
  tapes: 'two tape measures',
  pegs: 'pegs (chalk on a hard floor) and string',
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
export type ToolId = keyof typeof TOOLS;

/** Every tool that one of the steps takes. */
export function toolsOf(steps: readonly Step[], placed: SettingOut, units: Units): Tool[] {
  const ids = (Object.keys(TOOLS) as ToolId[]).filter((id) => steps.some((step) => step.needs.includes(id)));
  return ids.map((id) => ({ id, name: id === 'tapes' ? tapesFor(placed, units) : TOOLS[id] }));
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
