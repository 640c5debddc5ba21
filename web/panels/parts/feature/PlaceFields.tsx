import { deleteCorner, distance, formatLength, insertCorner, moveCorner } from '../../../../engine/index.ts';
import type { CornersOf, Feature, Plan, PlanPoint } from '../../../../engine/index.ts';
import { plan, units } from '../../../state/yard.ts';
import { calledOf, change, commitChecked, calledById, nudge } from '../../../map/drawing/feature-edits.ts';
import { YARD_EDGE } from '../../../map/drawing/grips.ts';
import { NudgePad } from '../../../map/controls/NudgePad.tsx';
import { NumberBox } from '../boxes/NumberBox.tsx';
import { coordinateField, placeChange, pointsOf, withCoordinate } from './place-fields.ts';

/** Where a thing stands: one place as two numbers, or every corner of it, and arrows that move the whole. */
export function PlaceFields({ feature }: { readonly feature: Feature }) {
  const { points, called } = pointsOf(feature);
  const single = called === 'Place' || called === 'Middle';
  return (
    <div class="place-fields">
      {single ? (
        <div class="field-row">
          {([0, 1] as const).map((axis) => (
            <NumberBox
              key={axis}
              field={coordinateField(axis)}
              value={points[0][axis]}
              onChange={(value) =>
                change(
                  feature.id,
                  `Move ${calledOf(feature)}`,
                  placeChange(feature, withCoordinate(points[0], axis, value ?? 0)),
                )
              }
            />
          ))}
        </div>
      ) : (
        <CornerList
          id={feature.id}
          points={points}
          called={called}
          least={feature.kind === 'eye' ? 1 : 'outline' in feature ? 3 : 2}
        />
      )}
      <NudgePad onNudge={nudge} />
    </div>
  );
}

interface CornerProps {
  /** A feature's id, or the yard's edge. */
  readonly id: string;
  readonly points: readonly PlanPoint[];
  readonly called: string;
  readonly least: number;
}

/** Every corner as two numbers, with the length of the side to the next; corners can be added and taken out. */
export function CornerList({ id, points, called, least }: CornerProps) {
  const whose: CornersOf = id === YARD_EDGE ? 'boundary' : { feature: id };
  const name = calledById(id);
  const edit = (label: string, next: Plan): string | null => commitChecked(label, next, id);
  return (
    <details class="corner-list" open={points.length <= 4}>
      <summary>
        {points.length} {called.toLowerCase()}s
      </summary>
      <ol>
        {points.map((point, index) => {
          const next = points[index + 1];
          return (
            <li key={index}>
              <div class="field-row">
                {([0, 1] as const).map((axis) => (
                  <NumberBox
                    key={axis}
                    field={coordinateField(axis, `${called} ${index + 1} ${axis === 0 ? 'x' : 'y'}`)}
                    value={point[axis]}
                    onChange={(value) =>
                      edit(
                        `Move a corner of ${name}`,
                        moveCorner(plan.value, whose, index, withCoordinate(point, axis, value ?? 0)),
                      )
                    }
                  />
                ))}
                {points.length > least && (
                  <button
                    type="button"
                    aria-label={`Take out ${called.toLowerCase()} ${index + 1}`}
                    onClick={() => edit(`Take a corner out of ${name}`, deleteCorner(plan.value, whose, index))}
                  >
                    ×
                  </button>
                )}
              </div>
              {next && (
                <p class="side-length">
                  {formatLength(distance(point, next), units.value)} to the next{' '}
                  <button
                    type="button"
                    onClick={() =>
                      edit(
                        `Add a corner to ${name}`,
                        insertCorner(plan.value, whose, index + 1, [
                          (point[0] + next[0]) / 2,
                          (point[1] + next[1]) / 2,
                        ]),
                      )
                    }
                  >
                    Add a corner here
                  </button>
                </p>
              )}
            </li>
          );
        })}
      </ol>
    </details>
  );
}
