import { useEffect } from 'preact/hooks';
import { formatLength, gradeOf, inYearlySpan, nameOf, QUANTITY_UNITS, dayWords } from '../../../engine/index.ts';
import type { Period, PlanPoint } from '../../../engine/index.ts';
import { SCALES, stretchesOf } from '../../charts/ramp.ts';
import { valueAt } from '../../charts/value-at.ts';
import { aim } from '../../map/drawing/in-hand.ts';
import { paintedColour, standIn } from '../../map/laid-on/heat-on-map.ts';
import { hatched, pointedAt, readMapAt } from '../../map/laid-on/overlays.ts';
import { isGraded, mapHeightWords, QUANTITY_WORDS, valueWords } from '../../panels/parts/quantity-words.ts';
import { isStale } from '../../state/live.ts';
import { heat } from '../../state/results.ts';
import { toolHint } from '../../state/speech.ts';
import { monthDay, periodKind, pin, quantity } from '../../state/view.ts';
import { plan, units } from '../../state/yard.ts';
import './style.css';

/**
 * What the painted map is of, in words on the map itself: quantity, height, period; what is wrong with it; and its
 * value under the pointer, the cross or the pin.
 */
export function MapCaption() {
  const live = heat.value;
  const isHeat = !standIn.value?.value;
  useEffect(() => {
    readMapAt.value = isHeat ? readingAt : null;
    return () => void (readMapAt.value = null);
  }, [isHeat]);
  // What to do next stands in its place, and what the map says under the cross beside the buttons.
  if (!live.shown || !isHeat || toolHint.value !== null) return null;
  const {
    args: { height, period, options },
    value: { plants },
  } = live.shown;
  const { season, climate } = plan.value;
  const offSeason = periodKind.value === 'day' && !inYearlySpan(season, monthDay.value);
  return (
    <div class="map-caption" data-over-paper>
      <p>
        <strong>{QUANTITY_WORDS[quantity.value].name}</strong>
        <span class="map-caption-height">
          {' '}
          {mapHeightWords(height, plants, units.value, (id) => nameOf(plan.value, id))}
        </span>
        , {periodWords(period)}
        {options.length > 0 && (
          <>
            , <b>with option {options.join(' and ')}</b>
          </>
        )}
        {climate.from === 'rough' && (
          <>
            , <b>rough climate</b>
          </>
        )}
      </p>
      {!hatched.value && <Key />}
      {offSeason && (
        <p class="map-caption-date">
          {dayWords(monthDay.value)}: <em>not your season</em>
        </p>
      )}
      {live.problems.length > 0 ? (
        <p>
          <b>Out of date: there is no newer map, see beside</b>
        </p>
      ) : (
        isStale(live) && (
          <p>
            <b>Out of date, being worked out again</b>
          </p>
        )
      )}
      <Readout />
    </div>
  );
}

/** The ramp in one line: the five words and the numbers of the lines between, or the ends with the unit. */
function Key() {
  const of = quantity.value;
  const { ramp, from, to } = SCALES[of];
  if (isGraded(of)) {
    return (
      <p class="map-caption-key">
        {stretchesOf(of).map(({ from: edge, colour, word }) => (
          <span key={edge}>
            {edge > 0 && <small>{edge}</small>}
            <i style={{ background: paintedColour(colour) }} />
            {word && <b>{word}</b>}
          </span>
        ))}
      </p>
    );
  }
  return (
    <p class="map-caption-key">
      <span>{from}</span>
      <i class="ramp-line" style={{ background: `linear-gradient(to right, ${ramp.map(paintedColour).join(', ')})` }} />
      <span>
        {to} {QUANTITY_UNITS[of]}
      </span>
    </p>
  );
}

/** Of what is painted, which may be older than what is asked. */
function periodWords(period: Period): string {
  const { season } = plan.value;
  switch (period.kind) {
    case 'season':
      return `a mean day, ${dayWords(season.from)} to ${dayWords(season.to)}`;
    case 'day':
      return dayWords(period.date);
    default:
      return 'heatwave day';
  }
}

/** The value under the cross while one is aimed, else under the pointer, else at the pin. */
function Readout() {
  const [where, at]: readonly [string, PlanPoint | null] = aim.value
    ? ['here', aim.value.at]
    : pointedAt.value
      ? ['here', pointedAt.value]
      : ['at the pin', pin.value];
  return (
    at && (
      <p class="map-caption-readout">
        {where}: <b>{readingAt(at)}</b>
      </p>
    )
  );
}

function readingAt(at: PlanPoint): string {
  const { shown } = heat.value;
  if (!shown) return '';
  const { grid, cells } = shown.value;
  const graded = quantity.value === 'grade';
  const value = valueAt(grid, cells[graded ? 'hotLoad' : quantity.value], at);
  if (value === null) return 'not your ground';
  if (Number.isNaN(value)) return `no open ground ${formatLength(shown.args.height, units.value)} up`;
  return valueWords(quantity.value, graded ? gradeOf(value) : value);
}
