import {
  ANCHOR_KINDS,
  GROUND_KINDS,
  anchorName,
  formatCut,
  formatSpeed,
  formatThin,
  groundName,
  kerfOf,
  parseLength,
  parseSpeed,
  stockTubes,
} from '../../../engine/index.ts';
import type { AnchorKind, GroundKind, StockTube } from '../../../engine/index.ts';
import { plan, units } from '../../state/yard.ts';
import { ChoiceBox } from '../parts/boxes/ChoiceBox.tsx';
import { TextBox } from '../parts/boxes/TextBox.tsx';
import { changeFrame, chooseFrame, chosen } from './chosen.ts';
import { changeStock } from './stock-edits.ts';

const GROUNDS = Object.fromEntries(GROUND_KINDS.map((kind) => [kind, groundName(kind)])) as Record<GroundKind, string>;
const ANCHORS = Object.fromEntries(ANCHOR_KINDS.map((kind) => [kind, anchorName(kind)])) as Record<AnchorKind, string>;

/** What the sheet has to be told: the ground and the gust first, then what seldom changes. */
export function FrameFields() {
  const thing = chosen.value?.thing;
  if (!thing) return null;
  const { frame = {} } = thing;
  const shown = units.value;
  const gust = frame.gust ?? plan.value.climate.gust;
  const length = (
    label: string,
    value: number | undefined,
    placeholder: string,
    most: number,
    take: (metres: number | undefined) => string | null,
  ) => (
    <TextBox
      label={label}
      value={value === undefined ? '' : formatCut(value, shown)}
      placeholder={placeholder}
      onChange={(text) => withLength(text, most, take)}
    />
  );
  return (
    <section class="frame-fields" aria-label="How it is to be built">
      <div class="field-row">
        <ChoiceBox
          label="Ground under the posts"
          value={frame.soil}
          none="not said"
          choices={GROUNDS}
          onChange={(soil) => chooseFrame({ soil })}
        />
        <TextBox
          label="Strongest gust to hold"
          value={gust === undefined ? '' : formatSpeed(gust, shown)}
          placeholder="from your building code"
          onChange={withGust}
        />
      </div>
      <details>
        <summary>Tube, bays, joints, anchors</summary>
        <div class="field-row">
          <ChoiceBox
            label="Tube"
            value={frame.tube}
            none="the usual"
            choices={tubeNames(stockTubes(plan.value), shown)}
            onChange={(tube) => chooseFrame({ tube })}
          />
          <ChoiceBox
            label="Held down by"
            value={frame.anchor}
            none="the usual for the ground"
            choices={ANCHORS}
            onChange={(anchor) => chooseFrame({ anchor })}
          />
        </div>
        <div class="field-row">
          {length('Longest bay', frame.maxBay, 'by the tube', 10, (maxBay) => changeFrame({ maxBay }))}
          {length('Take-off at each joint', frame.takeOff, '0', 0.5, (takeOff) => changeFrame({ takeOff }))}
          <TextBox
            label="Lost at each cut"
            value={formatThin(kerfOf(plan.value), shown)}
            onChange={(text) => withLength(text, 0.02, (kerf) => changeStock('Change what a cut loses', { kerf }))}
          />
        </div>
        <label class="tick">
          <input
            type="checkbox"
            checked={frame.bottomRails === true}
            onChange={(event) => chooseFrame({ bottomRails: event.currentTarget.checked || undefined })}
          />
          Rails along the ground too
        </label>
        {thing.kind === 'canopy' && (
          <label class="tick">
            <input
              type="checkbox"
              checked={frame.braces === true}
              onChange={(event) => chooseFrame({ braces: event.currentTarget.checked || undefined })}
            />
            Braces in every upright face
          </label>
        )}
        {thing.kind === 'canopy' && (
          <label class="tick">
            <input
              type="checkbox"
              checked={frame.braces === true}
              onChange={(event) => chooseFrame({ braces: event.currentTarget.checked || undefined })}
            />
            Braces on every side, against sway
          </label>
        )}
        <p class="quiet">
          Take-off: how much of the way between post middles the joint swallows. Measure one joint before you cut.
        </p>
      </details>
    </section>
  );
}

function withLength(text: string, most: number, take: (metres: number | undefined) => string | null): string | null {
  if (text === '') return take(undefined);
  const metres = parseLength(text, units.value);
  if (metres === null || metres < 0 || metres > most)
    return (
      `"${text}" is not a length up to ${formatCut(most, units.value)}, such as ` +
      `${formatCut(most / 4, units.value)}.`
    );
  return take(metres);
}

function withGust(text: string): string | null {
  if (text === '') return changeFrame({ gust: undefined });
  const gust = parseSpeed(text.replace(/\s*\(.*\)\s*$/, ''), units.value);
  if (gust === null || gust < 5 || gust > 90)
    return (
      `"${text}" is not a gust between ${formatSpeed(5, units.value)} and ${formatSpeed(90, units.value)}, ` +
      `such as ${formatSpeed(25, units.value)}.`
    );
  return changeFrame({ gust });
}

/** One line a tube: the same tube in several lengths is one choice. */
function tubeNames(tubes: readonly StockTube[], shown: 'metric' | 'imperial'): Record<string, string> {
  const first = tubes.filter(
    (tube, index) => tubes.findIndex(({ outside, wall }) => outside === tube.outside && wall === tube.wall) === index,
  );
  return Object.fromEntries(
    first.map((tube) => [tube.id, `${tube.name} (${formatThin(tube.outside, shown)} outside)`]),
  );
}
