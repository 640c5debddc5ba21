import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { formatLength } from '../../../engine/index.ts';
import type { PlanPoint, Units } from '../../../engine/index.ts';
import { Fault } from '../../common/Fault.tsx';
import { units } from '../../state/yard.ts';
import { beginDraft, canFinish, finish } from '../drawing/draft.ts';
import type { Draft } from '../drawing/draft.ts';
import { choosePoint, escape, stepBack, typePoints } from '../drawing/drawing.ts';
import { aim, crossHair, draft, held, typingWanted, wantsPoint } from '../drawing/in-hand.ts';
import { askedPoint, readMapAt } from '../laid-on/overlays.ts';
import { AskedNumbers } from './AskedNumbers.tsx';
import { NudgePad } from './NudgePad.tsx';

interface Props {
  /** Moves the cross (and the paper under it) by whole centimetres. [m] */
  readonly onNudge: (by: PlanPoint) => void;
}

/** The strip under the map while something is drawn or moved: the next step, a box to type in, and its buttons. */
export function DraftBar({ onNudge }: Props) {
  const under = draft.value;
  if (!under && !held.value && !askedPoint.value) return null;
  return (
    <section class="draft-bar" aria-label="Drawing">
      {under?.asking ? (
        <AskedNumbers key={under.tool.id} under={under} />
      ) : (
        <>
          {/* Holds its line also while empty: the paper must not jump when the pointer comes. */}
          <p class="aim-readout">{aim.value ? placeWords(aim.value.at, units.value) : '\u00a0'}</p>
          <TypingBox under={under} />
          <DraftButtons under={under} />
          {crossHair.value && <NudgePad onNudge={onNudge} />}
        </>
      )}
    </section>
  );
}

/** A box for a length, a point or a chain; sent empty it ends a shape that can be ended. */
function TypingBox({ under }: { readonly under: Draft | null }) {
  const [fault, setFault] = useState<string | null>(null);
  const box = useRef<HTMLInputElement>(null);
  const step = under
    ? `${under.tool.id}${under.points.length}${under.asking}`
    : held.value
      ? 'held'
      : askedPoint.value
        ? 'asked'
        : '';
  useLayoutEffect(() => setFault(null), [step]);
  useLayoutEffect(() => {
    if (typingWanted.value && wantsPoint.value) box.current?.focus();
  }, [typingWanted.value, step]);

  function submit(event: Event): void {
    event.preventDefault();
    const text = box.current?.value ?? '';
    if (text.trim() === '' && under && canFinish(under)) {
      draft.value = finish(under);
      return;
    }
    const refused = typePoints(text);
    setFault(refused);
    if (refused === null && box.current) box.current.value = '';
  }

  return (
    <>
      <form class="draft-typing" onSubmit={submit}>
        <label>
          <span>Type it</span>
          <input
            ref={box}
            type="text"
            autocomplete="off"
            enterkeyhint="go"
            placeholder={placeholderOf(under?.points.length ?? 0, under?.box ?? false)}
            aria-invalid={fault !== null}
            aria-describedby={fault ? 'draft-fault' : undefined}
          />
        </label>
        <button type="submit">Put</button>
      </form>
      <Fault id="draft-fault">{fault}</Fault>
    </>
  );
}

function DraftButtons({ under }: { readonly under: Draft | null }) {
  return (
    <div class="draft-buttons">
      {crossHair.value && (
        <button
          type="button"
          class="main here"
          disabled={!aim.value}
          onClick={() => aim.value && choosePoint(aim.value.at)}
        >
          Here
        </button>
      )}
      {under?.tool.shape === 'outline' && under.points.length === 0 && (
        <button
          type="button"
          aria-pressed={!under.box}
          onClick={() => (draft.value = beginDraft(under.tool, !under.box))}
        >
          {under.box ? 'Corner by corner' : 'As a rectangle'}
        </button>
      )}
      {under && canFinish(under) && (
        <button type="button" class="main" onClick={() => (draft.value = finish(under))}>
          Finish {under.tool.noun}
        </button>
      )}
      {under && under.points.length > 0 && (
        <button type="button" onClick={stepBack}>
          Take back
        </button>
      )}
      <button type="button" onClick={escape}>
        Cancel
      </button>
    </div>
  );
}

/**
 * A place on the plan in words, with what the painted map says of it: "2.50 m across, 3.50 m up: 14.3 MJ/m², harsh".
 */
export function placeWords(at: PlanPoint, shownIn: Units): string {
  const place = `${formatLength(at[0], shownIn)} across, ${formatLength(at[1], shownIn)} up`;
  return readMapAt.value ? `${place}: ${readMapAt.value(at)}` : place;
}

function placeholderOf(points: number, box: boolean): string {
  if (points === 0) return '2 3.5';
  return box ? '3 x 2' : '3.4   or   12.4 right 6.1';
}
