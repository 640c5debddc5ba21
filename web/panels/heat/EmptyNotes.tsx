import type { FeatureKind } from '../../../engine/index.ts';
import { heat } from '../../state/results.ts';
import { goToStage, quantity } from '../../state/view.ts';
import { shownPlan } from '../../state/yard.ts';

const CASTS: ReadonlySet<FeatureKind> = new Set(['wall', 'hedge', 'building', 'tree', 'canopy', 'screen']);

/** What a map that is all of one colour means: nothing that throws shade, or no heat. */
export function EmptyNotes() {
  const result = heat.value.shown?.value;
  if (!result) return null;
  const { features } = shownPlan.value;
  const isBare = !features.some(({ kind }) => CASTS.has(kind));
  const isMild = quantity.value !== 'dailyLight' && result.cells.grade.every((grade) => !(grade > 1));
  return (
    <>
      {isBare && (
        <p class="heat-note">
          Nothing on the plan throws shade yet, so every spot is reckoned in the open.{' '}
          {/* In an empty yard that is what is to be done at all, and stands as that. */}
          {features.length > 0 && (
            <button type="button" onClick={() => goToStage('draw')}>
              Draw walls, house and trees
            </button>
          )}
        </p>
      )}
      {isMild && (
        <p class="heat-note">
          No spot gets beyond <em>mild</em>: where the sun reaches, the air is not hot enough for it to do much harm.
          What may be short is light.{' '}
          <button type="button" onClick={() => (quantity.value = 'dailyLight')}>
            Show the light
          </button>
        </p>
      )}
    </>
  );
}
