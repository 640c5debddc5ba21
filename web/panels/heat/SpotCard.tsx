import './card.css';
import { Fragment } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { formatLength } from '../../../engine/index.ts';
import type { Quantity } from '../../../engine/index.ts';
import { isStale } from '../../state/live.ts';
import { guessesOf } from '../../state/next.ts';
import { spot } from '../../state/results.ts';
import { mapHeight, pin } from '../../state/view.ts';
import { plan, units } from '../../state/yard.ts';
import { QUANTITY_WORDS, shapeName, valueWords } from '../parts/quantity-words.ts';
import { pinHours } from './hours.ts';
import { HoursTable } from './HoursTable.tsx';
import { pinPictures } from './pictures/pictured.ts';
import { SkyPicture } from './pictures/SkyPicture.tsx';
import { WeeksTable } from './pictures/WeeksTable.tsx';

const SHOWN: readonly Quantity[] = ['hotLoad', 'hotHours', 'sunHours', 'afternoonHours', 'dailyLight', 'skyView'];

/** A spot pinned on open ground: what it gets, when, past what, and what follows. */
export function SpotCard() {
  const at = pin.value;
  const card = useRef<HTMLElement>(null);
  useEffect(() => card.current?.scrollIntoView({ block: 'nearest' }), [at]);
  const live = spot.value;
  const result = live.shown?.value;
  if (!at) return null;
  const nine = result && ('day' in result ? result.day : result.season);
  const guesses = guessesOf(plan.value).length;
  const place = `${formatLength(at[0], units.value)} across, ${formatLength(at[1], units.value)} up`;
  return (
    <section ref={card} class="spot-card" aria-label="The pinned spot">
      <div class="slip-head">
        <h2>The pinned spot</h2>
        <button type="button" onClick={() => (pin.value = null)}>
          Take the pin away
        </button>
      </div>
      <p>
        {place}, {formatLength(mapHeight.value, units.value)} above the ground
        {result?.inside ? `, inside ${shapeName(result.inside)}` : ''}.
      </p>
      {live.problems.map(({ message }) => (
        <p key={message} role="alert">
          {message}
        </p>
      ))}
      {nine && (
        <dl class={isStale(live) ? 'spot-numbers out-of-date' : 'spot-numbers'}>
          {SHOWN.map((name) => (
            <Fragment key={name}>
              <dt>{QUANTITY_WORDS[name].name}</dt>
              <dd>{valueWords(name, nine[name])}</dd>
            </Fragment>
          ))}
          <dt>How sure</dt>
          <dd>
            {guesses === 0
              ? 'every number is measured'
              : `${guesses} ${guesses === 1 ? 'number of the plan is a guess' : 'numbers of the plan are guesses'}`}
          </dd>
          <dt>What to do</dt>
          <dd>
            {nine.grade >= 4
              ? 'Keep tender leaves out of here, or shade it in its hottest hours.'
              : nine.grade >= 3
                ? 'Plants that like sun can stand here; tender ones want afternoon shade.'
                : 'Little harm from the sun here: look whether there is light enough.'}
          </dd>
        </dl>
      )}
      <HoursTable live={pinHours.value} place="the pin" />
      <SkyPicture pictured={pinPictures} place="the pin" />
      <WeeksTable pictured={pinPictures} place="the pin" />
    </section>
  );
}
