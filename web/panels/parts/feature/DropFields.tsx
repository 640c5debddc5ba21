import type { Canopy, Drop, DropSide } from '../../../../engine/index.ts';
import type { NumberField } from '../../../common/fields/number-field.ts';
import { calledOf, change } from '../../../map/drawing/feature-edits.ts';
import { NumberBox } from '../boxes/NumberBox.tsx';

const SIDES: readonly DropSide[] = ['front', 'right', 'back', 'left'];
const FIRST_DEPTH = 0.9;

function dropField(label: string, unit: 'length' | 'percent', least: number, most: number): NumberField {
  return { key: label, label, unit, asked: false, least, most, read: () => undefined, write: () => ({}) };
}

const DEPTH = dropField('Depth', 'length', 0.05, 10);
const DENSITY = dropField('Cloth stops', 'percent', 0, 1);

/** The drops that hang from a roof's edges like side curtains: which sides, how deep, how dense. */
export function DropFields({ canopy }: { readonly canopy: Canopy }) {
  const drops = canopy.drops ?? [];
  const set = (next: readonly Drop[]): string | null =>
    change(canopy.id, `Change the drops of ${calledOf(canopy)}`, { drops: next.length === 0 ? undefined : next });
  return (
    <fieldset>
      <legend>Drops (cloth hanging from its edges)</legend>
      {SIDES.map((side) => {
        const drop = drops.find((each) => each.side === side);
        const others = drops.filter((each) => each.side !== side);
        return (
          <div key={side} class="field-row">
            <label class="tick">
              <input
                type="checkbox"
                checked={drop !== undefined}
                onChange={() => set(drop ? others : [...drops, { side, depth: FIRST_DEPTH, density: canopy.density }])}
              />
              {side}
            </label>
            {drop && (
              <NumberBox
                field={DEPTH}
                value={drop.depth}
                onChange={(depth) =>
                  set(drops.map((each) => (each === drop ? { ...drop, depth: depth ?? drop.depth } : each)))
                }
              />
            )}
            {drop && (
              <NumberBox
                field={DENSITY}
                value={drop.density}
                onChange={(density) =>
                  set(drops.map((each) => (each === drop ? { ...drop, density: density ?? drop.density } : each)))
                }
              />
            )}
          </div>
        );
      })}
    </fieldset>
  );
}
