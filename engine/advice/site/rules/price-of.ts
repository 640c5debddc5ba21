import { type Fitted, type Footing, frameFitter } from '../../../frame/fit-frame.ts';
import { blockersBelow } from '../../../frame/layout/surroundings.ts';
import { footprintOf } from '../../../plan/geometry/cloth-shapes.ts';
import { Kept } from '../../../plan/kept.ts';
import type { Cloth, Plan, PlanPoint, Wall } from '../../../plan/types.ts';
import { hungOf, kindOf, legsOf } from '../kinds/hung.ts';

/** What cloth costs with all that holds it up and down, worked out once a form. */
export interface Prices {
  /** The cloth with its frame, where it stands; `null`: the shop's tube cannot make it. */
  fit(cloth: Cloth): Fitted | null;
  /** The same where nothing keeps the wind from passing below: nowhere is it cheaper. */
  fitInTheOpen(cloth: Cloth): Fitted | null;
}

const known = new Kept<Prices>();

/** Kept by the plan: one search after the other asks them. */
export function pricesOf(plan: Plan, footing: Footing): Prices {
  return known.of([plan], JSON.stringify(footing), () => pricesFor(plan, footing));
}

function pricesFor(plan: Plan, footing: Footing): Prices {
  const fits = new Map<string, Fitted | null>();
  const inTheOpen = frameFitter({ ...plan, features: [] }, footing);
  const overAWall = frameFitter({ ...plan, features: [WALL] }, footing);
  const remembered = (key: string, work: () => Fitted | null): Fitted | null => {
    let fitted = fits.get(key);
    if (fitted === undefined) fits.set(key, (fitted = work()));
    return fitted;
  };
  const openly = (cloth: Cloth): Fitted | null =>
    remembered(`${hungOf(cloth).form()} open`, () => inTheOpen(inItsForm(cloth)));
  return {
    fit(cloth) {
      const fitted = catchesWind(plan, cloth)
        ? remembered(`${hungOf(cloth).form()} blocked`, () => overAWall(inItsForm(cloth)))
        : openly(cloth);
      return fitted && { ...fitted, cloth: { ...cloth, frame: fitted.cloth.frame } };
    },
    fitInTheOpen: openly,
  };
}

/** Whether what stands there keeps the wind from passing below a roof: with drops it is caught wherever that hangs. */
function catchesWind(plan: Plan, cloth: Cloth): boolean {
  return kindOf(cloth) === 'roof' && blockersBelow(plan, footprintOf(cloth), cloth.height).length > 0;
}

/** Keeps the wind from passing below a roof in its form, and stands in nothing else's way. */
const WALL: Wall = {
  id: 'wall',
  kind: 'wall',
  path: [
    [-9, 0],
    [9, 0],
  ],
  height: 9,
  thickness: 0.1,
};

/** Cloth as it is priced: where it hangs must not tell which of one form was asked first. */
function inItsForm(cloth: Cloth): Cloth {
  if (cloth.kind === 'canopy') return { ...cloth, center: [0, 0], turn: 0 };
  const path: PlanPoint[] = [[0, 0]];
  for (const [k, leg] of legsOf(cloth).entries()) {
    const [x, y] = path[k];
    path.push(k % 2 === 0 ? [x + leg, y] : [x, y + leg]);
  }
  return { ...cloth, path };
}
