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
} from '../../../engine/index.ts';
import type { CrownShape, Estimate, Finding, KnownBy } from '../../../engine/index.ts';
import { commitEdit } from '../../state/edit.ts';
import { say } from '../../state/speech.ts';
import { selection } from '../../state/view.ts';
import { plan, units } from '../../state/yard.ts';
import { Choices, Field } from '../parts/boxes/Field.tsx';
import { CrownRay } from './CrownRay.tsx';
import { Tilts } from './Tilts.tsx';
import { heightAsked, knownOf, measuring, taped } from './measuring.ts';
import type { HeightWay, Measuring, ThingKind } from './measuring.ts';
import { useAnswer } from '../parts/use-answer.ts';
import { WhenFields } from '../parts/boxes/WhenFields.tsx';

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

/**
 * How high a thing is, from the ground: by its shadow, by courses, by a helper in a picture, or from the other side of
 * a wall.
 */
export function Height() {
  const m = measuring.value;
  const tall = plan.value.features.filter(
    (feature) =>
      'height' in feature && feature.kind !== 'canopy' && feature.kind !== 'screen' && feature.kind !== 'eye',
  );
  const feature = tall.find(({ id }) => selection.value.includes(id));
  const change = (next: Partial<Measuring>): void => {
    measuring.value = { ...m, ...next };
  };
  const field = (key: keyof Measuring, label: string, hint?: string, usual?: string) => (
    <Field label={label} value={String(m[key])} hint={hint} usual={usual} onInput={(text) => change({ [key]: text })} />
  );
  const shadowed = m.way === 'clock' || m.way === 'pole';
  const asked = shadowed ? heightAsked(m) : null;
  const { value } = useAnswer('height', asked);
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
      {shadowed && (
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
              {field('width', "Crown's width", 'Under its edge, from one side to the other.')}
              {field('base', 'Where the crown begins', 'Above the ground.')}
            </>
          )}
          {m.thing === 'edge' &&
            field(
              'facing',
              'True bearing in which you measured, away from the edge',
              'At right angles to it. 0° is north, 90° east.',
            )}
          {field(
            'tip',
            m.thing === 'tree'
              ? "From the trunk to the shadow's far tip"
              : m.thing === 'edge'
                ? 'Depth of the shadow, straight away from the edge'
                : 'Length of the shadow, from the foot',
            'On level ground.',
          )}
          {m.way === 'clock' ? (
            <WhenFields value={m.when} onChange={(when) => change({ when })} />
          ) : (
            <>
              {field('pole', "The pole's height", 'Plumb, above the ground.')}
              {field('poleShadow', "The pole's shadow", 'In the same minute, on the same ground. No clock is needed.')}
            </>
          )}
        </>
      )}
      {m.way === 'tilt' && <Tilts measuring={m} onChange={change} />}
      {m.way === 'courses' && (
        <>
          {field('courses', 'Courses, ground to top')}
          {field('course', 'One course with its joint', 'Measure five and divide.')}
          {field('cap', 'Coping on top', undefined, '0')}
        </>
      )}
      {m.way === 'picture' && (
        <>
          {field('helper', "The helper's height")}
          {field('helperPx', 'The helper in the picture, pixels')}
          {field('thingPx', 'The thing in the picture, pixels')}
        </>
      )}
      {m.way === 'theirs' && (
        <>
          {field('theirs', 'Height measured on the other side')}
          {field('higher', 'How much higher the ground is there', 'Below zero where it is lower.', '0')}
        </>
      )}
      {finding && (
        <section aria-label="Height found" class="found" aria-live="polite">
          {finding.ok ? (
            <Found finding={finding} way={m.way} id={feature?.id} />
          ) : (
            <p class="fault">{finding.reason}</p>
          )}
          {finding.ok && value?.tangent && asked && asked.thing.kind !== 'edge' && (
            <CrownRay
              crown={
                asked.thing.kind === 'tree'
                  ? { shape: asked.thing.shape, width: asked.thing.width.value, base: asked.thing.base.value }
                  : null
              }
              height={finding.value.value}
              tip={asked.tip.value}
              tangent={value.tangent}
            />
          )}
        </section>
      )}
    </>
  );
}

interface FoundProps {
  readonly finding: Extract<Finding<Estimate>, { readonly ok: true }>;
  readonly way: HeightWay;
  readonly id: string | undefined;
}

function Found({ finding: { value, notes }, way, id }: FoundProps) {
  const name = plan.value.features.find((one) => one.id === id)?.name ?? id;
  const shown = `${formatLength(value.value, units.value)} ± ${formatLength(value.pm, units.value)}`;
  function take(): void {
    if (id === undefined) return;
    const height = Math.round(value.value * 100) / 100;
    const next = setHow(changeFeature(plan.value, id, { height }), id, 'height', {
      by: KNOWN[way],
      pm: Math.max(0.01, Math.round(value.pm * 100) / 100),
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
        <button type="button" class="main" onClick={take}>
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
