import { deleteCorner, distance, formatLength, insertCorner, moveCorner } from '../../../../engine/index.ts';
import type { CornersOf, Feature, PlanPoint } from '../../../../engine/index.ts';
import { NudgePad } from '../../../map/controls/NudgePad.tsx';
import { calledOf, change, commitChecked, calledById, nudge } from '../../../map/drawing/feature-edits.ts';
import { YARD_EDGE } from '../../../map/drawing/grips.ts';
import { plan, units } from '../../../state/yard.ts';
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
  return (
    <details class="corner-list" open={points.length <= 4}>
      <summary>
        {points.length} {called.toLowerCase()}s
      </summary>
      <ol>
        {points.map((point, index) => (
          <li key={index}>
            <Corner id={id} point={point} index={index} called={called} canGo={points.length > least} />
            {index + 1 < points.length && <SideToNext id={id} point={point} next={points[index + 1]} index={index} />}
          </li>
        ))}
      </ol>
    </details>
  );
}

function whoseCorners(id: string): CornersOf {
  return id === YARD_EDGE ? 'boundary' : { feature: id };
}

interface OneCornerProps {
  readonly id: string;
  readonly point: PlanPoint;
  readonly index: number;
}

function Corner({
  id,
  point,
  index,
  called,
  canGo,
}: OneCornerProps & { readonly called: string; readonly canGo: boolean }) {
  const takeOut = () =>
    commitChecked(`Take a corner out of ${calledById(id)}`, deleteCorner(plan.value, whoseCorners(id), index), id);
  return (
    <div class="field-row">
      {([0, 1] as const).map((axis) => (
        <NumberBox
          key={axis}
          field={coordinateField(axis, `${called} ${index + 1} ${axis === 0 ? 'x' : 'y'}`)}
          value={point[axis]}
          onChange={(value) =>
            commitChecked(
              `Move a corner of ${calledById(id)}`,
              moveCorner(plan.value, whoseCorners(id), index, withCoordinate(point, axis, value ?? 0)),
              id,
            )
          }
        />
      ))}
      {canGo && (
        <button type="button" aria-label={`Take out ${called.toLowerCase()} ${index + 1}`} onClick={takeOut}>
          ×
        </button>
      )}
    </div>
  );
}

function SideToNext({ id, point, next, index }: OneCornerProps & { readonly next: PlanPoint }) {
  const middle: PlanPoint = [(point[0] + next[0]) / 2, (point[1] + next[1]) / 2];
  const addCorner = () =>
    commitChecked(
      `Add a corner to ${calledById(id)}`,
      insertCorner(plan.value, whoseCorners(id), index + 1, middle),
      id,
    );
  return (
    <p class="side-length">
      {formatLength(distance(point, next), units.value)} to the next{' '}
      <button type="button" onClick={addCorner}>
        Add a corner here
      </button>
    </p>
  );
}
