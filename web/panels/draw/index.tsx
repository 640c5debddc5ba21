import '../parts/feature/style.css';
import { drawHeadline } from '../../../engine/index.ts';
import { takeUp } from '../../map/drawing/drawing.ts';
import { deleteFeatures } from '../../map/drawing/feature-edits.ts';
import { guessesOf } from '../../state/next.ts';
import { aside, findOut, selection, surveyTopic } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';
import { Fold } from '../parts/answer/Fold.tsx';
import { StageAnswer } from '../parts/answer/StageAnswer.tsx';
import { PlanList } from './PlanList.tsx';
import { SanityWalk } from './SanityWalk.tsx';
import { YardFields } from './YardFields.tsx';

/** The card of the first stage: everything on the plan, edited in place, and a walk round it. */
export function DrawCard() {
  const many = selection.value.length;
  return (
    <div class="draw-card">
      {many > 1 && (
        <p class="many-chosen">
          {many} things chosen. Arrow keys on the drawing nudge them.{' '}
          <button type="button" onClick={() => deleteFeatures(selection.value)}>
            Delete {many} things
          </button>
        </p>
      )}
      <StageAnswer
        says={drawHeadline(plan.value, guessesOf(plan.value).length)}
        act={plan.value.features.length === 0 ? { text: 'Draw a wall', run: () => takeUp('wall', false) } : undefined}
      />
      <p class="draw-finds">
        <button type="button" onClick={() => findOut(surveyTopic.value)}>
          How do I find this?
        </button>{' '}
        <button type="button" onClick={() => (aside.value = 'sheet')}>
          Field sheet to print
        </button>
      </p>
      <PlanList />
      <SanityWalk />
      <Fold title="The whole yard">
        <YardFields />
      </Fold>
    </div>
  );
}
