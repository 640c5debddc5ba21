import type { FeatureOf, PlaceSpot } from '../../../engine/index.ts';
import { formatLength } from '../../../engine/index.ts';
import { siteClock } from '../../map/site-clock.ts';
import { showOnMap } from '../../map/overlays.ts';
import { shownOptions } from '../../state/view.ts';
import { plan, units } from '../../state/yard.ts';
import { haveMoved, putInOption } from './place-edits.ts';

interface Props {
  readonly pot: FeatureOf<'plant'>;
  readonly spot: PlaceSpot;
  readonly chosen: boolean;
  readonly onChoose: () => void;
}

const STANDING = { enough: 'enough light', nearly: 'nearly enough light', 'too dark': 'too dark' } as const;

/** One place for the pot: what it does there in four figures, and what can be done about it. */
export function Spot({ pot, spot, chosen, onChoose }: Props) {
  const into = plan.value.options?.find(({ id }) => id === shownOptions.value[0])?.id;
  const title = spot.stay ? `${spot.rank}. Stay where it is` : `${spot.rank}. ${formatLength(spot.metres, units.value)} away`;
  return (
    <li class={chosen ? 'pot-spot chosen' : 'pot-spot'}>
      <button type="button" class="spot-head" aria-expanded={chosen} onClick={onChoose}>
        <strong>{title}</strong> <span>{spot.verdict}, {STANDING[spot.standing]}</span>
      </button>
      <dl class="spot-figures">
        <div><dt>Harmful sun</dt><dd>{spot.harm.toFixed(1)} K·h a hot day</dd></div>
        <div><dt>Light</dt><dd>{spot.light.dailyLight.toFixed(0)} mol/m², {spot.light.sunHours.toFixed(1)} h of sun</dd></div>
        <div><dt>Winter</dt><dd>{spot.winterSunHours.toFixed(1)} h of sun</dd></div>
        <div><dt>To carry</dt><dd>{formatLength(spot.metres, units.value)}</dd></div>
      </dl>
      {chosen && (
        <>
          <p>{spot.sentence}</p>
          {!spot.stay && (
            <p class="paper-buttons">
              <button type="button" class="main" onClick={() => putInOption(pot, spot.at)}>Put it there in {into === undefined ? 'a new option' : `option ${into}`}</button>{' '}
              <button type="button" onClick={() => haveMoved(pot, spot.at)}>I have moved it</button>
            </p>
          )}
          <p><button type="button" onClick={() => showOnMap(spot.at)}>Show place {spot.rank} on the drawing</button></p>
          {spot.hardening && <HardeningDates spot={spot} />}
        </>
      )}
    </li>
  );
}

function HardeningDates({ spot: { hardening } }: { readonly spot: PlaceSpot }) {
  const start = Date.parse(siteClock(plan.value.site.timeZone).slice(0, 10));
  const date = (day: number): string => new Date(start + (day - 1) * 86_400_000).toLocaleDateString(undefined, { day: 'numeric', month: 'short', timeZone: 'UTC' });
  return (
    <>
      <h3>Get it used to more sun, if it moves today</h3>
      <table class="hardening">
        <caption class="unseen">Sun and cloth day by day</caption>
        <thead><tr><th scope="col">Day</th><th scope="col">Sun, the morning’s first</th><th scope="col">Or cloth all day</th></tr></thead>
        <tbody>
          {hardening?.days.map(({ day, sunHours, cloth }) => (
            <tr key={day}><th scope="row">{day}, {date(day)}</th><td>{sunHours.toFixed(1)} h</td><td>{cloth === 0 ? 'none' : `stops ${cloth} %`}</td></tr>
          ))}
        </tbody>
      </table>
      <ul>{hardening?.notes.map((note) => <li key={note}>{note}</li>)}</ul>
    </>
  );
}
