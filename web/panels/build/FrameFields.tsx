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
import type { AnchorKind, FrameChoice, GroundKind, StockTube } from '../../../engine/index.ts';
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
  const { soil } = plan.value.site;
  const gust = frame.gust ?? plan.value.climate.gust;
  return (
    <section class="frame-fields" aria-label="How it is to be built">
      <div class="field-row">
        <ChoiceBox
          label="Ground under the posts"
          value={frame.soil}
          none={soil === undefined ? 'not said' : `as the yard: ${groundName(soil)}`}
          choices={GROUNDS}
          onChange={(soil) => chooseFrame({ soil })}
        />
        <TextBox
          label="Strongest gust to hold"
          value={gust === undefined ? '' : formatSpeed(gust, units.value)}
          placeholder="from your building code"
          onChange={withGust}
        />
      </div>
      <SeldomChanged frame={frame} braces={thing.kind === 'canopy'} />
    </section>
  );
}

/** @param braces Whether the frame can have any: a screen has stays. */
function SeldomChanged({ frame, braces }: { readonly frame: FrameChoice; readonly braces: boolean }) {
  return (
    <details>
      <summary>Tube, bays, joints, anchors</summary>
      <div class="field-row">
        <ChoiceBox
          label="Tube"
          value={frame.tube}
          none="the cheapest that holds"
          choices={tubeNames(stockTubes(plan.value), units.value)}
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
        <LengthBox
          label="Longest bay"
          value={frame.maxBay}
          placeholder="by the tube"
          most={10}
          take={(maxBay) => changeFrame({ maxBay })}
        />
        <LengthBox
          label="Take-off at each joint"
          value={frame.takeOff}
          placeholder="0"
          most={0.5}
          take={(takeOff) => changeFrame({ takeOff })}
        />
        <TextBox
          label="Lost at each cut"
          value={formatThin(kerfOf(plan.value), units.value)}
          onChange={(text) => withLength(text, 0.02, (kerf) => changeStock('Change what a cut loses', { kerf }))}
        />
      </div>
      <Tick
        label="Rails along the ground too"
        on={frame.bottomRails}
        onChange={(bottomRails) => chooseFrame({ bottomRails })}
      />
      {braces && <BracesChoice frame={frame} />}
      <p class="quiet">Take-off: what the joint swallows of the way between post middles.</p>
    </details>
  );
}

function BracesChoice({ frame: { braces, tube } }: { readonly frame: FrameChoice }) {
  return (
    <ChoiceBox
      label="Braces in every upright face"
      value={braces === undefined ? undefined : braces ? 'yes' : 'no'}
      none={tube === undefined ? 'where a post alone would bend' : 'no'}
      choices={{ yes: 'yes', no: 'no' }}
      onChange={(answer) => chooseFrame({ braces: answer === undefined ? undefined : answer === 'yes' })}
    />
  );
}

interface LengthBoxProps {
  readonly label: string;
  /** [m] */
  readonly value: number | undefined;
  readonly placeholder: string;
  /** [m] */
  readonly most: number;
  readonly take: (metres: number | undefined) => string | null;
}

function LengthBox({ label, value, placeholder, most, take }: LengthBoxProps) {
  return (
    <TextBox
      label={label}
      value={value === undefined ? '' : formatCut(value, units.value)}
      placeholder={placeholder}
      onChange={(text) => withLength(text, most, take)}
    />
  );
}

interface TickProps {
  readonly label: string;
  readonly on: boolean | undefined;
  readonly onChange: (on: true | undefined) => void;
}

function Tick({ label, on, onChange }: TickProps) {
  return (
    <label class="tick">
      <input
        type="checkbox"
        checked={on === true}
        onChange={(event) => onChange(event.currentTarget.checked || undefined)}
      />
      {label}
    </label>
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
