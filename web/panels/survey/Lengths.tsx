import {
  checkPace,
  closeWalk,
  formatLength,
  levelNotes,
  pacedLength,
  parseLength,
  parseNumber,
  parseWalk,
  placeFromTapes,
  setPartHow,
  setSite,
  withPace,
} from '../../../engine/index.ts';
import { Fault } from '../../common/Fault.tsx';
import { commitEdit } from '../../state/edit.ts';
import { keptForYard } from '../../state/kept.ts';
import { say } from '../../state/speech.ts';
import { pin } from '../../state/view.ts';
import { plan, units } from '../../state/yard.ts';
import { Field } from '../parts/boxes/Field.tsx';
import { pointOf, pointText } from '../parts/typed.ts';
import { taped } from './measuring.ts';
import { PointField } from './PointField.tsx';

const typed = keptForYard('lengths', {
  steps: '20',
  length: '',
  walked: '',
  walk: '',
  a: '',
  fromA: '',
  b: '',
  fromB: '',
  fall: '',
});

function type(change: Partial<typeof typed.value>): void {
  typed.value = { ...typed.value, ...change };
}

/**
 * Lengths without much of a tape: steps, a walk round the fence, two tapes to a point, and whether the ground is level.
 */
export function Lengths() {
  return (
    <>
      <Pace />
      <Walk />
      <Tapes />
      <Level />
    </>
  );
}

function Pace() {
  const { pace } = plan.value.site;
  const { steps, length, walked } = typed.value;
  const count = parseNumber(steps);
  const metres = parseLength(length, units.value);
  const finding = count !== null && metres !== null ? checkPace({ steps: count, length: metres }) : null;
  const own = parseNumber(walked);
  const paced = pace && own !== null && own > 0 ? pacedLength(own, pace) : null;
  return (
    <section aria-label="Your steps">
      <h3>Your steps</h3>
      <p>
        {pace
          ? `${pace.steps} of your steps are ${formatLength(pace.length, units.value)}.`
          : 'Walk twenty steps as you always do, and measure them.'}
      </p>
      <Field label="Steps" value={steps} onInput={(text) => type({ steps: text })} />
      <Field label="They cover" value={length} onInput={(text) => type({ length: text })} />
      {finding &&
        (finding.ok ? finding.notes.map((note) => <p key={note}>{note}</p>) : <Fault>{finding.reason}</Fault>)}
      {finding?.ok && (
        <button type="button" onClick={() => commitEdit('Set the pace', withPace(plan.value, finding.value))}>
          Keep these steps
        </button>
      )}
      {pace && <Field label="A length in steps" value={walked} onInput={(text) => type({ walked: text })} />}
      {paced && (
        <p class="found-number">
          {formatLength(paced.value, units.value)} ± {formatLength(paced.pm, units.value)}
        </p>
      )}
    </section>
  );
}

function Walk() {
  const text = typed.value.walk;
  const legs = text.trim() === '' ? null : parseWalk(text, units.value);
  const finding = legs?.ok && legs.value.length >= 3 ? closeWalk(legs.value, undefined, undefined, units.value) : null;
  const corners = finding?.ok ? finding.value.corrected : null;
  function take(): void {
    if (
      !corners ||
      !commitEdit(
        'Draw the walk',
        setPartHow(setSite(plan.value, { boundary: corners }), 'site', 'boundary', undefined),
      )
    )
      return;
    type({ walk: '' });
    say("The yard's edge is your walk now.");
  }
  return (
    <section aria-label="A walk round the fence">
      <h3>A walk round the fence</h3>
      <Field
        label="Lengths and turns"
        value={text}
        usual="12.4 right 6.1 right 12.4 right 6.1"
        hint={
          'From the lower left corner, first straight up the drawing. A turn is a quarter unless degrees follow: ' +
          'left 30°.'
        }
        onInput={(walk) => type({ walk })}
      />
      {legs && !legs.ok && <Fault>{legs.reason}</Fault>}
      {finding &&
        (finding.ok ? finding.notes.map((note) => <p key={note}>{note}</p>) : <Fault>{finding.reason}</Fault>)}
      {corners && (
        <button type="button" onClick={take}>
          Make it the yard's edge
        </button>
      )}
    </section>
  );
}

function Tapes() {
  const given = typed.value;
  const [a, b] = [pointOf(given.a), pointOf(given.b)];
  const [fromA, fromB] = [taped(given.fromA), taped(given.fromB)];
  const finding = a && b && fromA && fromB ? placeFromTapes(a, fromA.value, b, fromB.value) : null;
  return (
    <section aria-label="Two tapes to a point">
      <h3>Two tapes to a point</h3>
      <p>Measure from two drawn corners to the thing.</p>
      <PointField label="One corner" value={given.a} onInput={(text) => type({ a: text })} />
      <Field label="From it" value={given.fromA} onInput={(text) => type({ fromA: text })} />
      <PointField label="Other corner" value={given.b} onInput={(text) => type({ b: text })} />
      <Field label="From that" value={given.fromB} onInput={(text) => type({ fromB: text })} />
      {finding && !finding.ok && <Fault>{finding.reason}</Fault>}
      {finding?.ok && (
        <>
          {finding.notes.map((note) => (
            <p key={note}>{note}</p>
          ))}
          <p>It stands at one of these; see which on the drawing:</p>
          {finding.value.map(({ at, pm }, index) => (
            <button key={index} type="button" onClick={() => (pin.value = at)}>
              Pin {pointText(at)} (± {formatLength(pm, units.value)})
            </button>
          ))}
        </>
      )}
    </section>
  );
}

function Level() {
  const { fall } = typed.value;
  const metres = parseLength(fall, units.value);
  const notes = metres === null ? [] : levelNotes(metres);
  return (
    <section aria-label="Is the yard level?">
      <h3>Is the yard level?</h3>
      <Field
        label="Fall from one end to the other"
        value={fall}
        usual="0"
        hint="A hand's width does not matter."
        onInput={(text) => type({ fall: text })}
      />
      {metres !== null && (notes.length === 0 ? <p>Level enough.</p> : notes.map((note) => <p key={note}>{note}</p>))}
    </section>
  );
}
