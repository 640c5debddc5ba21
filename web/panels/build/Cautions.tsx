import { signal } from '@preact/signals';
import type { ComponentChild, TargetedEvent } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { cautionsFor } from '../../../engine/index.ts';
import type { BuildSheet, Caution } from '../../../engine/index.ts';
import { plan, units } from '../../state/yard.ts';
import { Fold } from '../parts/answer/Fold.tsx';
import { keepText, keptText } from '../parts/kept-stock.ts';
import { keptPrefix } from './chosen.ts';
import { mindedAt, mindedFirst, STOP_TITLES } from './minded.ts';
import type { MindedWork } from './minded.ts';

/** The stops that nobody has ticked yet. */
export function openStops(sheet: BuildSheet): readonly Caution[] {
  return sheet.cautions.filter(({ id, stop }) => stop && keptText(tickKey(id)) === '');
}

/** Whether somebody is settling them, or wanted to print before they were: then the first that is left is shown. */
export const stopsAsked = signal(false);

interface StopsProps {
  readonly sheet: BuildSheet;
  /** What asks for leave, where leave has to be asked for. */
  readonly letter: ComponentChild;
}

/** Stops to answer one by one before the sheet is printed, then what no single work tells. */
export function Stops({ sheet, letter }: StopsProps) {
  const left = openStops(sheet);
  useEffect(() => () => void (stopsAsked.value = false), []);
  return (
    <>
      <p>
        Local rules and licensed trades come before this sheet.{' '}
        {left.length === 0
          ? 'All stops are settled.'
          : `Settle ${left.length === 1 ? 'this stop' : `${left.length} stops`}, then the sheet prints.`}
      </p>
      {mindedFirst(sheet.cautions).map((caution) =>
        caution.stop ? (
          <Stop key={caution.id} caution={caution} open={stopsAsked.value && caution === left[0]}>
            {caution.id === 'permission' && letter}
          </Stop>
        ) : (
          <p key={caution.id} class="caution">
            {caution.text}
          </p>
        ),
      )}
    </>
  );
}

interface StopProps {
  readonly caution: Caution;
  readonly open: boolean;
  readonly children: ComponentChild;
}

/** Ticked under its words, so that nobody ticks what was not read; the next one opens then. */
function Stop({ caution: { id, text }, open, children }: StopProps) {
  const title = STOP_TITLES[id] ?? text;
  const settled = keptText(tickKey(id)) !== '';
  const here = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (open) here.current?.querySelector('summary')?.focus();
  }, [open]);
  function settle({ currentTarget }: TargetedEvent<HTMLInputElement>): void {
    keepText(tickKey(id), currentTarget.checked ? 'answered' : '');
    stopsAsked.value = true;
  }
  return (
    <div ref={here}>
      <Fold name="stops" open={open} title={`${settled ? '✓' : '☐'} ${title}`}>
        <p class="caution stop">{text}</p>
        {children}
        <label class="tick">
          <input type="checkbox" checked={settled} onChange={settle} />
          <span>
            Settled<span class="unseen">: {title}</span>
          </span>
        </label>
      </Fold>
    </div>
  );
}

interface MindProps {
  readonly sheet: BuildSheet;
  readonly work: MindedWork;
}

/** What there is to mind at one work. */
export function MindAt({ sheet, work }: MindProps) {
  return mindedAt(work, sheet.cautions, units.value).map(({ id, stop, text }) => (
    <p key={id} class={stop ? 'caution stop' : 'caution'}>
      {text}
    </p>
  ));
}

/** For paper that is not the sheet itself: what is printed of this stage never goes without its cautions. */
export function CautionsOnPaper({ sheet }: { readonly sheet: BuildSheet | null }) {
  const cautions = sheet?.cautions ?? cautionsFor(['build', 'dig', 'climb', 'wind', 'cloth'], plan.value);
  return (
    <div class="paper-only">
      <p>This is the plan alone. The build sheet is printed with its own button, once each stop below is answered.</p>
      <ul>
        {cautions.map(({ id, text }) => (
          <li key={id}>{text}</li>
        ))}
      </ul>
    </div>
  );
}

function tickKey(id: string): string {
  return `${keptPrefix.value}caution/${id}`;
}
