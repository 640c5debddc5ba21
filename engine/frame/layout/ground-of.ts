/** What the posts of a yard stand in. */

import { isCloth } from '../../plan/kinds.ts';
import type { Plan } from '../../plan/types.ts';
import { drawnAnywhere } from '../../plan/yards/options.ts';
import { GROUND_KINDS } from '../strength/grounds.ts';
import type { GroundKind } from '../strength/types.ts';

/** What frames are priced for where nobody has said it, and the yard is not drawn as paved: the usual garden. */
const USUAL_GROUND: GroundKind = 'garden';

/** As the yard says, else as one of its frames does, else as its surface looks: nobody pushes a rod into paving. */
export function groundOf(plan: Plan): {
  readonly ground: GroundKind;
  readonly isSaid: boolean;
} {
  const { site } = plan;
  if (site.soil !== undefined) return { ground: site.soil, isSaid: true };
  const soils = drawnAnywhere(plan).flatMap((feature) => (isCloth(feature) ? [feature.frame?.soil] : []));
  const said = GROUND_KINDS.find((kind) => soils.includes(kind));
  const looks = site.surface === 'paving' ? 'paving' : USUAL_GROUND;
  return { ground: said ?? looks, isSaid: said !== undefined };
}

/** The yard with its ground said, so that whatever is priced in it has its anchors. */
export function withGround(plan: Plan): Plan {
  return { ...plan, site: { ...plan.site, soil: groundOf(plan).ground } };
}
