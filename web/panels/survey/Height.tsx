import {
  changeFeature,
  formatLength,
  heightByCourses,
  heightFromOtherSide,
  heightFromPicture,
  heightFromTilt,
  parseNumber,
  setHow,
  shownName,
  toCentimetre,
  isCloth,
} from '../../../engine/index.ts';
import type { CrownShape, Estimate, Finding, KnownBy, ShadowSeen } from '../../../engine/index.ts';
import type { ValueOf } from '../../state/ask.ts';
import { commitEdit } from '../../state/edit.ts';
import { say } from '../../state/speech.ts';
import { selection } from '../../state/view.ts';
import { plan, units } from '../../state/yard.ts';
import { Choices, Field } from '../parts/boxes/Field.tsx';
import { WhenFields } from '../parts/boxes/WhenFields.tsx';
import { useAnswer } from '../parts/use-answer.ts';
import { CrownRay } from './CrownRay.tsx';
import { heightAsked, knownOf, measuring, taped } from './measuring.ts';
import type { HeightWay, Measuring, ThingKind } from './measuring.ts';
import { Tilts } from './Tilts.tsx';

const WAYS: Readonly<Record<HeightWay, string>> = {
  clock: 'Its shadow and the minute',
  pole: "A pole's shadow beside it",
  tilt: 'Sighting its top and foot',
  courses: 'Courses of brick or block',
  picture: 'A helper in a picture',
  theirs: "The neighbour's side",
};
const THINGS: Readonly<Record<ThingKind, string>> = {
  top: 'A post, a corner, a sharp top',
  tree: 'A tree with a crown',
  edge: 'A long straight edge',
};
const SHAPES: Readonly<Record<CrownShape, string>> = { round: 'round', cone: 'cone', column: 'column' };
const KNOWN: Readonly<Record<HeightWay, KnownBy>> = {
  clock: 'shadow',
  pole: 'shadow',
  tilt: 'paced',
  courses: 'tape',
  picture: 'picture',
  theirs: 'tape',
};

interface AskProps {
  readonly m: Measuring;
  readonly change: (next: Partial<Measuring>) => void;
}

/**
 * How high a thing is, from the ground: by its shadow, by courses, by a helper in a picture, or from the other side of
 * a wall.
 */
export function Height() {
  const m = measuring.value;
  const tall = plan.value.features.filter(
    (feature) => 'height' in feature && !isCloth(feature) && feature.kind !== 'eye',
  );
  const feature = tall.find(({ id }) => selection.value.includes(id));
  const change = (next: Partial<Measuring>): void => {
    measuring.value = { ...m, ...next };
  };
  const shadowed = m.way === 'clock' || m.way === 'pole';
  const asked = shadowed ? heightAsked(m) : null;
  const { value, to, isNewest } = useAnswer('height', asked);
  const finding = shadowed ? (value?.finding ?? null) : handFinding(m);
  return (
    <>
      <p class="asked-field">
        <label for="height-of">Height of</label>
        <select
          id="height-of"
          value={feature?.id ?? ''}
          onChange={(event) => {
            const id = event.currentTarget.value;
            selection.value = id === '' ? [] : [id];
            change(knownOf(tall.find((one) => one.id === id)));
          }}
        >
          <option value="">something not on the plan</option>
          {tall.map((one) => (
            <option key={one.id} value={one.id}>
              {shownName(one.name ?? one.id)}
            </option>
          ))}
        </select>
      </p>
      <Choices
        legend="Find it by"
        name="height-way"
        value={m.way}
        choices={WAYS}
        class="choices-ways"
        onChange={(way) => change({ way })}
      />
      {shadowed ? <ShadowBoxes m={m} change={change} /> : <HandBoxes m={m} change={change} />}
      {finding && (
        <section aria-label="Height found" class="found" aria-live="polite">
          {finding.ok ? (
            <Found finding={finding} way={m.way} id={feature?.id} isNewest={isNewest} />
          ) : (
            <p class="fault">{finding.reason}</p>
          )}
          {finding.ok && value?.tangent && to && (
            <RayToTip asked={to} height={finding.value.value} tangent={value.tangent} />
          )}
        </section>
      )}
    </>
  );
}

interface BoxProps extends AskProps {
  readonly of: keyof Measuring;
  readonly label: string;
  readonly hint?: string;
  readonly usual?: string;
}

function Box({ m, change, of, label, hint, usual }: BoxProps) {
  return (
    <Field label={label} value={String(m[of])} hint={hint} usual={usual} onInput={(text) => change({ [of]: text })} />
  );
}

const TIP_LABELS: Readonly<Record<ThingKind, string>> = {
  tree: "From the trunk to the shadow's far tip",
  edge: 'Depth of the shadow, straight away from the edge',
  top: 'Length of the shadow, from the foot',
};

/** What throws the shadow, how long it is, and the minute or the pole that says how high the sun stood. */
function ShadowBoxes({ m, change }: AskProps) {
  const ask = { m, change };
  return (
    <>
      <Choices
        legend="What throws the shadow"
        name="height-thing"
        value={m.thing}
        choices={THINGS}
        onChange={(thing) => change({ thing })}
      />
      {m.thing === 'tree' && (
        <>
          <Choices
            legend="Its crown"
            name="height-crown"
            value={m.shape}
            choices={SHAPES}
            onChange={(shape) => change({ shape })}
          />
          <Box {...ask} of="width" label="Crown's width" hint="Under its edge, from one side to the other." />
          <Box {...ask} of="base" label="Where the crown begins" hint="Above the ground." />
        </>
      )}
      {m.thing === 'edge' && (
        <Box
          {...ask}
          of="facing"
          label="True bearing in which you measured, away from the edge"
          hint="At right angles to it. 0° is north, 90° east."
        />
      )}
      <Box {...ask} of="tip" label={TIP_LABELS[m.thing]} hint="On level ground." />
      {m.way === 'clock' ? (
        <WhenFields value={m.when} onChange={(when) => change({ when })} />
      ) : (
        <>
          <Box {...ask} of="pole" label="The pole's height" hint="Plumb, above the ground." />
          <Box
            {...ask}
            of="poleShadow"
            label="The pole's shadow"
            hint="In the same minute, on the same ground. No clock is needed."
          />
        </>
      )}
    </>
  );
}

/** What needs neither sun nor clock. */
function HandBoxes({ m, change }: AskProps) {
  const ask = { m, change };
  switch (m.way) {
    case 'tilt':
      return <Tilts measuring={m} onChange={change} />;
    case 'courses':
      return (
        <>
          <Box {...ask} of="courses" label="Courses, ground to top" />
          <Box {...ask} of="course" label="One course with its joint" hint="Measure five and divide." />
          <Box {...ask} of="cap" label="Coping on top" usual="0" />
        </>
      );
    case 'picture':
      return (
        <>
          <Box {...ask} of="helper" label="The helper's height" />
          <Box {...ask} of="helperPx" label="The helper in the picture, pixels" />
          <Box {...ask} of="thingPx" label="The thing in the picture, pixels" />
        </>
      );
    case 'theirs':
      return (
        <>
          <Box {...ask} of="theirs" label="Height measured on the other side" />
          <Box
            {...ask}
            of="higher"
            label="How much higher the ground is there"
            hint="Below zero where it is lower."
            usual="0"
          />
        </>
      );
    default:
      return null;
  }
}

interface RayProps {
  readonly asked: ShadowSeen;
  /** [m] */
  readonly height: number;
  readonly tangent: NonNullable<ValueOf<'height'>['tangent']>;
}

/** The ray by which a crown or a top throws its shadow's tip; an edge has none to draw. */
function RayToTip({ asked: { thing, tip }, height, tangent }: RayProps) {
  if (thing.kind === 'edge') return null;
  const crown = thing.kind === 'tree' ? { shape: thing.shape, width: thing.width.value, base: thing.base.value } : null;
  return <CrownRay crown={crown} height={height} tip={tip.value} tangent={tangent} />;
}

interface FoundProps {
  readonly finding: Extract<Finding<Estimate>, { readonly ok: true }>;
  readonly way: HeightWay;
  readonly id: string | undefined;
  /** Of what is asked now: else it is still the height of what was measured before. */
  readonly isNewest: boolean;
}

function Found({ finding: { value, notes }, way, id, isNewest }: FoundProps) {
  const name = plan.value.features.find((one) => one.id === id)?.name ?? id;
  const shown = `${formatLength(value.value, units.value)} ± ${formatLength(value.pm, units.value)}`;
  function take(): void {
    if (id === undefined) return;
    const height = toCentimetre(value.value);
    const next = setHow(changeFeature(plan.value, id, { height }), id, 'height', {
      by: KNOWN[way],
      pm: Math.max(0.01, toCentimetre(value.pm)),
    });
    if (commitEdit(`Set the height of ${name}`, next)) say(`${name} is ${formatLength(height, units.value)} high now.`);
  }
  return (
    <>
      <p class="found-number">{shown} high</p>
      {notes.map((note) => (
        <p key={note}>{note}</p>
      ))}
      {id !== undefined && (
        <button type="button" class="main" disabled={!isNewest} onClick={take}>
          Use it for <bdi>{name}</bdi>
        </button>
      )}
    </>
  );
}

/** What needs neither sun nor clock. `null` while something is still to come. */
function handFinding(m: Measuring): Finding<Estimate> | null {
  const zero = { value: 0, pm: 0 };
  if (m.way === 'courses') {
    const rows = parseNumber(m.courses);
    const course = taped(m.course);
    return rows === null || course === null ? null : heightByCourses(rows, course.value, (taped(m.cap) ?? zero).value);
  }
  if (m.way === 'theirs') {
    const theirs = taped(m.theirs);
    return theirs && heightFromOtherSide(theirs, taped(m.higher) ?? zero);
  }
  if (m.way === 'tilt') {
    const away = taped(m.away);
    const [top, foot] = [m.topTilt, m.footTilt].map((text) => parseNumber(text.replace('°', '')));
    return away === null || top === null || foot === null ? null : heightFromTilt(away, top, foot);
  }
  const helper = taped(m.helper);
  const [helperPx, thingPx] = [parseNumber(m.helperPx), parseNumber(m.thingPx)];
  return helper === null || helperPx === null || thingPx === null ? null : heightFromPicture(helper, helperPx, thingPx);
}
