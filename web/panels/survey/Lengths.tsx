import { useState } from 'preact/hooks';
import { checkPace, closeWalk, formatLength, levelNotes, pacedLength, parseLength, parseNumber, parseWalk, placeFromTapes, setPartHow, setSite, withPace } from '../../../engine/index.ts';
import { commitEdit } from '../../state/edit.ts';
import { say } from '../../state/speech.ts';
import { pin } from '../../state/view.ts';
import { plan, units } from '../../state/yard.ts';
import { Field } from '../first/Field.tsx';
import { taped } from './measuring.ts';
import { PointField } from './PointField.tsx';
import { pointOf, pointText } from './typed.ts';

/** Lengths without much of a tape: steps, a walk round the fence, two tapes to a point, and whether the ground is level. */
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
  const [steps, setSteps] = useState('20');
  const [length, setLength] = useState('');
  const [walked, setWalked] = useState('');
  const count = parseNumber(steps);
  const metres = parseLength(length, units.value);
  const finding = count !== null && metres !== null ? checkPace({ steps: count, length: metres }) : null;
  const own = parseNumber(walked);
  const paced = pace && own !== null && own > 0 ? pacedLength(own, pace) : null;
  return (
    <section aria-label="Your steps">
      <h3>Your steps</h3>
      <p>{pace ? `${pace.steps} of your steps are ${formatLength(pace.length, units.value)}.` : 'Walk twenty steps as you always do, and measure them.'}</p>
      <Field label="Steps" value={steps} onInput={setSteps} />
      <Field label="They cover" value={length} onInput={setLength} />
      {finding && (finding.ok ? finding.notes.map((note) => <p key={note}>{note}</p>) : <p class="box-said fault" role="alert">{finding.reason}</p>)}
      {finding?.ok && <button type="button" onClick={() => commitEdit('Set the pace', withPace(plan.value, finding.value))}>Keep these steps</button>}
      {pace && <Field label="A length in steps" value={walked} onInput={setWalked} />}
      {paced && <p class="found-number">{formatLength(paced.value, units.value)} ± {formatLength(paced.pm, units.value)}</p>}
    </section>
  );
}

function Walk() {
  const [text, setText] = useState('');
  const legs = text.trim() === '' ? null : parseWalk(text, units.value);
  const finding = legs?.ok && legs.value.length >= 3 ? closeWalk(legs.value) : null;
  const corners = finding?.ok ? finding.value.corrected : null;
  function take(): void {
    if (corners && commitEdit('Draw the walk', setPartHow(setSite(plan.value, { boundary: corners }), 'site', 'boundary', undefined))) say("The yard's edge is your walk now.");
  }
  return (
    <section aria-label="A walk round the fence">
      <h3>A walk round the fence</h3>
      <Field label="Lengths and turns" value={text} usual="12.4 right 6.1 right 12.4 right 6.1" hint="From the lower left corner, first straight up the drawing. A turn is a quarter unless degrees follow: left 30°." onInput={setText} />
      {legs && !legs.ok && <p class="box-said fault" role="alert">{legs.reason}</p>}
      {finding && (finding.ok ? finding.notes.map((note) => <p key={note}>{note}</p>) : <p class="box-said fault" role="alert">{finding.reason}</p>)}
      {corners && <button type="button" onClick={take}>Make it the yard's edge</button>}
    </section>
  );
}

function Tapes() {
  const [typed, setTyped] = useState({ a: '', fromA: '', b: '', fromB: '' });
  const [a, b] = [pointOf(typed.a), pointOf(typed.b)];
  const [fromA, fromB] = [taped(typed.fromA), taped(typed.fromB)];
  const finding = a && b && fromA && fromB ? placeFromTapes(a, fromA.value, b, fromB.value) : null;
  return (
    <section aria-label="Two tapes to a point">
      <h3>Two tapes to a point</h3>
      <p>Measure from two drawn corners to the thing.</p>
      <PointField label="One corner" value={typed.a} onInput={(text) => setTyped({ ...typed, a: text })} />
      <Field label="From it" value={typed.fromA} onInput={(text) => setTyped({ ...typed, fromA: text })} />
      <PointField label="Other corner" value={typed.b} onInput={(text) => setTyped({ ...typed, b: text })} />
      <Field label="From that" value={typed.fromB} onInput={(text) => setTyped({ ...typed, fromB: text })} />
      {finding && !finding.ok && <p class="box-said fault" role="alert">{finding.reason}</p>}
      {finding?.ok && (
        <>
          {finding.notes.map((note) => <p key={note}>{note}</p>)}
          <p>It stands at one of these; see which on the drawing:</p>
          {finding.value.map(({ at, pm }, index) => <button key={index} type="button" onClick={() => (pin.value = at)}>Pin {pointText(at)} (± {formatLength(pm, units.value)})</button>)}
        </>
      )}
    </section>
  );
}

function Level() {
  const [fall, setFall] = useState('');
  const metres = parseLength(fall, units.value);
  const notes = metres === null ? [] : levelNotes(metres);
  return (
    <section aria-label="Is the yard level?">
      <h3>Is the yard level?</h3>
      <Field label="Fall from one end to the other" value={fall} usual="0" hint="A hand's width does not matter." onInput={setFall} />
      {metres !== null && (notes.length === 0 ? <p>Level enough.</p> : notes.map((note) => <p key={note}>{note}</p>))}
    </section>
  );
}
