import { useSignalEffect } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { formatArea, formatLength, formatPerArea, formatShare } from '../../../engine/index.ts';
import type { ComparedChoice } from '../../../engine/index.ts';
import type { NumberField } from '../../common/fields/number-field.ts';
import { LESS_LIGHT } from '../../common/figures.ts';
import { standIn } from '../../map/laid-on/heat-on-map.ts';
import { SPLIT_STEP, moveSplit, split } from '../../map/laid-on/split.ts';
import { quantity } from '../../state/view.ts';
import { units } from '../../state/yard.ts';
import { NumberBox } from '../parts/boxes/NumberBox.tsx';
import { QUANTITY_WORDS } from '../parts/quantity-words.ts';
import { barAt, barPlace, barRange, changed, firstCloth, heldPicture, paying, side, unchanged } from './held.ts';
import type { Side } from './held.ts';

/** A smaller share of a plant's heat damage is no change. */
const LEAST_TOLD = 0.02;

const SIDES: Readonly<Record<Side, string>> = {
  before: 'Before',
  split: 'Split',
  after: 'After',
  difference: 'Difference',
  payoff: 'Where it pays',
};

/** What the drawing shows of the open option, with the finding in one sentence above. */
export function BeforeAfter({ choice }: { readonly choice: ComparedChoice | undefined }) {
  useEffect(() => {
    standIn.value = heldPicture;
    return () => {
      standIn.value = null;
      side.value = 'after';
    };
  }, []);
  useSignalEffect(() => {
    split.value =
      side.value === 'split'
        ? { ...barRange.value, x: barPlace.value, left: 'before', right: 'after', move: (x) => (barAt.value = x) }
        : null;
  });
  useEffect(
    () => () => {
      split.value = null;
    },
    [],
  );
  return (
    <div class="before-and-after">
      {choice && <p class="finding">{findingOf(choice)}</p>}
      <div class="tab-row" role="group" aria-label="The drawing shows">
        {(Object.keys(SIDES) as Side[])
          .filter((each) => each !== 'payoff' || firstCloth.value !== null)
          .map((each) => (
            <button key={each} type="button" aria-pressed={side.value === each} onClick={() => (side.value = each)}>
              {SIDES[each]}
            </button>
          ))}
      </div>
      {side.value === 'split' && <BarPlace />}
      {side.value === 'difference' && <Key />}
      {side.value === 'payoff' && <PayoffKey />}
    </div>
  );
}

const BAR_FIELD: NumberField = {
  key: 'bar',
  label: 'The bar stands at, across',
  unit: 'length',
  asked: false,
  least: -1e4,
  most: 1e4,
  read: () => undefined,
  write: () => ({}),
};

/** The bar's place, for whoever does not drag it on the drawing. */
function BarPlace() {
  const now = split.value;
  if (!now) return null;
  return (
    <div class="bar-place">
      <p class="quiet">Drag the bar on the drawing, or move it here.</p>
      <input
        type="range"
        aria-label="Bar between before and after"
        min={now.from}
        max={now.to}
        step={SPLIT_STEP}
        value={now.x}
        onInput={(event) => moveSplit(now, event.currentTarget.valueAsNumber)}
      />
      <NumberBox field={BAR_FIELD} value={now.x} onChange={(x) => (moveSplit(now, x ?? now.x), null)} />
    </div>
  );
}

/** What the two textures mean, and how much ground they cover. */
function Key() {
  const areas = changed.value;
  const what = QUANTITY_WORDS[quantity.value].name.toLowerCase();
  if (!areas)
    return (
      <p class="quiet" role="status">
        {unchanged.value.problems[0]?.message ?? 'Reckoning the yard without it…'}
      </p>
    );
  return (
    <p class="difference-key" role="status">
      <span class="swatch less" aria-hidden="true" /> Lines: less {what}, {formatArea(areas.less, units.value)} of
      ground. <span class="swatch more" aria-hidden="true" /> Dots: more, {formatArea(areas.more, units.value)}. Blank:
      no change.
    </p>
  );
}

function PayoffKey() {
  const { shown, problems } = paying.value;
  if (!shown)
    return (
      <p class="quiet" role="status">
        {problems[0]?.message ?? 'Carrying the hot rays back to the cloth…'}
      </p>
    );
  const { args, value } = shown;
  return (
    <p class="quiet" role="status">
      Cloth {formatLength(args.height, units.value)} up that stops {formatShare(args.density)}: the lighter the colour,
      the more cloth spares there, at most {formatPerArea(value.most, 'K·h', units.value)} a hot day. Blank: cloth there
      spares no plant.
    </p>
  );
}

/** "Heat damage: Lemon pot 64 % less, hydrangea 25 % less. Too dark for the tomatoes." */
function findingOf({ plants, tooDark }: ComparedChoice): string {
  const changes = plants.flatMap(({ name, before, after }) => {
    const [was, is] = [before?.harm ?? 0, after?.harm ?? 0];
    const share = was > 0 ? (was - is) / was : 0;
    if (!before || !after || Math.abs(share) < LEAST_TOLD) return [];
    return [`${name} ${formatShare(Math.abs(share))} ${share > 0 ? 'less' : 'more'}`];
  });
  const dark = plants.flatMap(({ id, name, before, after }) =>
    before && after && tooDark.includes(id) && before.light.dailyLight - after.light.dailyLight >= LESS_LIGHT
      ? [name]
      : [],
  );
  return `${changes.length > 0 ? `Heat damage: ${changes.join(', ')}.` : 'It changes no plant’s heat damage.'}${
    dark.length > 0 ? ` Too dark for ${dark.join(', ')}.` : ''
  }`;
}
