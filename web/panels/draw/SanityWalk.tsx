import { checkPlan, middleOf } from '../../../engine/index.ts';
import type { Plan, Problem } from '../../../engine/index.ts';
import { YARD_EDGE } from '../../map/drawing/grips.ts';
import { showOnMap } from '../../map/laid-on/overlays.ts';
import { selection } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';

/** A walk round the drawing: what it says but seldom means, each with a jump to the thing. */
export function SanityWalk() {
  const oddities = checkPlan(plan.value);
  if (oddities.length === 0) return null;
  return (
    <section class="sanity-walk" aria-label="Is that right?">
      <h2>Is that right?</h2>
      <ul>
        {oddities.map((problem, index) => {
          const id = idAt(plan.value, problem);
          return (
            <li key={index} class={problem.severity}>
              {problem.message}{' '}
              {id !== null && (
                <button type="button" onClick={() => goTo(id)}>
                  Show it
                </button>
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}

/** The feature a problem is about; `null` where it is about none that is drawn. */
function idAt(of: Plan, { pointer }: Problem): string | null {
  if (pointer.startsWith('/site/boundary')) return YARD_EDGE;
  const feature = /^\/features\/(\d+)/.exec(pointer);
  return feature ? (of.features[Number(feature[1])]?.id ?? null) : null;
}

function goTo(id: string): void {
  const feature = plan.value.features.find((each) => each.id === id);
  selection.value = [id];
  showOnMap(feature ? middleOf(feature) : null);
}
