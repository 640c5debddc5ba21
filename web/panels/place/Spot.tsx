import type { FeatureOf, PlaceSpot } from '../../../engine/index.ts';
import { formatDistance, formatTemperature, sentenceCase } from '../../../engine/index.ts';
import { siteClock } from '../../common/site-clock.ts';
import { showOnMap } from '../../map/laid-on/overlays.ts';
import { plan, units } from '../../state/yard.ts';
import { HardeningDates } from './HardeningDates.tsx';
import { haveMoved, openOptionId, putInOption } from './place-edits.ts';

interface Props {
  readonly pot: FeatureOf<'plant'>;
  readonly spot: PlaceSpot;
  readonly chosen: boolean;
  readonly onChoose: () => void;
}

const STANDING = { enough: 'enough light', short: 'a little short of light', 'too dark': 'too dark' } as const;

/** One place for the pot: what it does there in summer and in winter, and what can be done about it. */
export function Spot({ pot, spot, chosen, onChoose }: Props) {
  const into = openOptionId.value;
  const title = spot.stay
    ? `${spot.rank}. Stay where it is`
    : `${spot.rank}. ${sentenceCase(spot.where)}, ${formatDistance(spot.metres, units.value)} away`;
  return (
    <li class={chosen ? 'pot-spot chosen' : 'pot-spot'}>
      <button type="button" class="spot-head" aria-expanded={chosen} onClick={onChoose}>
        <strong>{title}</strong>{' '}
        <span>
          {spot.verdict}, {STANDING[spot.standing]}
        </span>
      </button>
      <dl class="spot-figures">
        <div>
          <dt>Harmful sun in summer</dt>
          <dd>{spot.harm.toFixed(1)} K·h a hot day</dd>
        </div>
        <div>
          <dt>Light in summer</dt>
          <dd>
            {spot.light.dailyLight.toFixed(0)} mol/m², {spot.light.sunHours.toFixed(1)} h of sun
          </dd>
        </div>
        <div>
          <dt>Sun in mid-winter</dt>
          <dd>{spot.winterSunHours.toFixed(1)} h a day</dd>
        </div>
        <div>
          <dt>Roots on the heatwave day</dt>
          <dd>
            {formatTemperature(spot.pot.roots.warmest, units.value)}, {spot.pot.roots.verdict}
          </dd>
        </div>
        <div>
          <dt>To carry</dt>
          <dd>{spot.stay ? 'nothing' : formatDistance(spot.metres, units.value)}</dd>
        </div>
      </dl>
      {chosen && (
        <>
          <p>{spot.sentence}</p>
          {!spot.stay && (
            <p class="paper-buttons">
              <button type="button" class="main" onClick={() => putInOption([[pot, spot.at]])}>
                Put it there in {into === null ? 'a new option' : `option ${into}`}
              </button>{' '}
              <button type="button" onClick={() => haveMoved(pot, spot.at, spot.hardening)}>
                I have moved it
              </button>
            </p>
          )}
          <p>
            <button type="button" onClick={() => showOnMap(spot.at)}>
              Show place {spot.rank} on the drawing
            </button>
          </p>
          {spot.hardening && (
            <HardeningDates
              hardening={spot.hardening}
              from={siteClock(plan.value.site.timeZone).slice(0, 10)}
              title="Get it used to more sun, if it moves today"
            />
          )}
        </>
      )}
    </li>
  );
}
