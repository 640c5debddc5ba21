import { ClothFrame } from '../../../cast/points/cloth-frame.ts';
import type { Cloth } from '../../../plan/types.ts';
import { clothSheets } from '../../../scene/build.ts';
import { bareHarm, bareHarmOf } from '../search/bare-harm.ts';
import { harmOfFruit } from '../search/fruit-hours.ts';
import { type HarmPairs, parabolaAt, TERMS, TERMS_A_PAIR } from '../search/harm-pairs.ts';
import { type ShadeAnswers, writeAnswer } from '../search/responses.ts';
import type { Targets } from '../search/targets.ts';
import { skyRaysOf } from './together.ts';

/** The answers laid out of leaves are this near to their own balance, by their parabolas and their cubics. [K] */
const ANSWERS_WITHIN = 1.1e-3;

/**
 * No less than what any cloth spares together by `togetherScore`, and little more: told without asking the leaves, and
 * a few times sooner. [K·h/day]
 */
export function sparedAtMost(
  targets: Targets,
  pairs: HarmPairs,
  shades: ShadeAnswers,
): (cloth: readonly Cloth[]) => number {
  const raysOf = skyRaysOf(targets);
  const skies = pairs.views.map(({ point, sky }) => raysOf(targets.points[point].at, sky));
  const bareTerms = new Float64Array(pairs.count * TERMS_A_PAIR);
  for (let p = 0; p < pairs.count; p++) writeAnswer(shades, p, 1, bareTerms, p * TERMS_A_PAIR, TERMS);
  const answer = new Float64Array(TERMS);
  const bare = bareHarmOf(pairs, bareTerms, 1);
  const slack = ANSWERS_WITHIN * pairs.weight.reduce((sum, weight) => sum + weight, 0);
  return (cloth) => {
    const sheets = cloth.flatMap(clothSheets);
    let harm = 0;
    for (let v = 0; v < pairs.views.length; v++) {
      const { point, skyView } = pairs.views[v];
      const taken = skies[v].takenBy(sheets);
      const hidden = skyView > 0 ? taken / skyView : 0;
      const frames = sheets.map((sheet) => new ClothFrame(sheet, ...targets.points[point].at));
      harm += harmUnder(v, hidden, frames);
    }
    return pairs.harm - harm + slack;
  };

  function harmUnder(view: number, hidden: number, frames: readonly ClothFrame[]): number {
    const isFruit = bare.isFruit[view] === 1;
    let harm = isFruit ? 0 : bareHarm(bare, view, hidden);
    for (let p = pairs.firstOf[view]; p < pairs.firstOf[view + 1]; p++) {
      let passes = 1;
      for (let s = 0; s < frames.length; s++) passes *= frames[s].transmittance(pairs.dx[p], pairs.dy[p], pairs.dz[p]);
      if (isFruit) harm += harmOfFruit(pairs, p, passes * pairs.fruit.beam[p], hidden);
      else if (passes !== 1) harm += harmOfLeaf(p, passes, hidden) - harmOfLeaf(p, 1, hidden);
    }
    return harm;
  }

  function harmOfLeaf(p: number, passes: number, hidden: number): number {
    writeAnswer(shades, p, passes, answer, 0, TERMS);
    const excess = parabolaAt(answer, 0, hidden);
    return excess > 0 ? pairs.weight[p] * excess : 0;
  }
}
