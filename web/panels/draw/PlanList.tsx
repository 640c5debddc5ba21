import { useEffect, useRef } from 'preact/hooks';
import type { Feature } from '../../../engine/index.ts';
import { takeUp } from '../../map/drawing/drawing.ts';
import { drawnPlan } from '../../map/drawing/drawn-plan.ts';
import { calledOf } from '../../map/drawing/feature-edits.ts';
import { YARD_EDGE } from '../../map/drawing/grips.ts';
import { TOOLS } from '../../map/drawing/tools.ts';
import type { Tool } from '../../map/drawing/tools.ts';
import { selection } from '../../state/view.ts';
import { units } from '../../state/yard.ts';
import { FeatureEditor } from '../parts/feature/FeatureEditor.tsx';
import { CornerList } from '../parts/feature/PlaceFields.tsx';
import { groupsOf, leastKnown, sizeWords } from './listing.ts';

/** Everything on the plan: the full equal of the drawing for keyboard, screen reader and thumb. */
export function PlanList() {
  const { boundary } = drawnPlan.value.site;
  const edgeChosen = selection.value.includes(YARD_EDGE);
  return (
    <section class="plan-list" aria-label="Everything on the plan">
      <h2 class="unseen">Everything on the plan</h2>
      <p class="add-row" role="group" aria-label="Add to the plan">
        {TOOLS.map((tool) => (
          <AddButton key={tool.id} tool={tool} />
        ))}
      </p>
      {groupsOf(drawnPlan.value).map(({ name, features }) => (
        <section key={name} class="plan-group" aria-label={name}>
          <h3>{name}</h3>
          <ul>
            {features.map((feature) => (
              <Row key={feature.id} feature={feature} />
            ))}
          </ul>
        </section>
      ))}
      <section class="plan-group" aria-label="The yard's edge">
        <h3>The yard's edge</h3>
        <ul>
          <li class={edgeChosen ? 'plan-row chosen' : 'plan-row'}>
            <button type="button" class="row-name" aria-expanded={edgeChosen} onClick={() => choose(YARD_EDGE)}>
              <strong>Edge</strong> <span>{boundary.length} corners</span>
            </button>
            {edgeChosen && <CornerList id={YARD_EDGE} points={boundary} called="Corner" least={3} />}
          </li>
        </ul>
      </section>
    </section>
  );
}

function AddButton({ tool: { id, button } }: { readonly tool: Tool }) {
  return (
    <button type="button" class="add" onClick={(event) => takeUp(id, event.detail === 0)}>
      <span class="unseen">Add </span>
      {button}
    </button>
  );
}

function choose(id: string): void {
  selection.value = selection.value.length === 1 && selection.value[0] === id ? [] : [id];
}

function Row({ feature }: { readonly feature: Feature }) {
  const chosen = selection.value.includes(feature.id);
  const alone = chosen && selection.value.length === 1;
  const known = leastKnown(feature);
  const row = useRef<HTMLLIElement>(null);
  useEffect(() => {
    // Its head alone: a list that was opened by hand does not jump.
    if (alone) row.current?.querySelector('button')?.scrollIntoView({ block: 'nearest' });
  }, [alone]);
  return (
    <li ref={row} class={chosen ? 'plan-row chosen' : 'plan-row'}>
      <button type="button" class="row-name" aria-expanded={alone} onClick={() => choose(feature.id)}>
        <strong dir="auto">{calledOf(feature)}</strong> <span>{sizeWords(feature, units.value)}</span>
        {known && <em class={`known-mark ${known.by}`}>{known.words}</em>}
      </button>
      {alone && <FeatureEditor feature={feature} />}
    </li>
  );
}
