import type { FeatureOf, PlaceSpot } from '../../../engine/index.ts';
import { formatDistance, lessDamage, rootsBriefly, capital, wayWords, dateOfMoment } from '../../../engine/index.ts';
import { siteClock } from '../../common/site-clock.ts';
import { plan, units } from '../../state/yard.ts';
import { ShareBar } from '../parts/answer/ShareBar.tsx';
import { HardeningDates } from './HardeningDates.tsx';
import { haveMoved, openOptionId, putInOption } from './place-edits.ts';

interface Props {
  readonly pot: FeatureOf<'plant'>;
  readonly spot: PlaceSpot;
  /** Where it stands now. */
  readonly stay: PlaceSpot;
  readonly chosen: boolean;
  /** Another of the places is called the same. */
  readonly isNamesake: boolean;
  readonly onChoose: () => void;
}

const STANDING = { enough: '', short: ', a little short of light', 'too dark': ', too dark' } as const;

/** One place for the pot: what is left of its heat damage there, what else it gets, and what can be done about it. */
export function Spot({ pot, spot, stay, chosen, isNamesake, onChoose }: Props) {
  const into = openOptionId.value;
  // An open one tells its way below.
  const far = isNamesake && !chosen ? `, ${formatDistance(spot.metres, units.value)} away` : '';
  const title = spot.stay ? `${spot.rank}. Stay` : `${spot.rank}. ${capital(spot.where)}${far}`;
  const left = stay.harm > 0 ? spot.harm / stay.harm : 0;
  return (
    <li class={chosen ? 'pot-spot chosen' : 'pot-spot'}>
      <button type="button" class="spot-head" aria-expanded={chosen} onClick={onChoose}>
        <strong>{title}</strong>{' '}
        <span>
          {spot.verdict}
          {spot.verdict === 'too dark' ? '' : STANDING[spot.standing]}
        </span>
        <ShareBar spared={stay.harm > 0 ? 1 - left : 0} />
      </button>
      {chosen && (
        <>
          <ul class="spot-figures">
            {!spot.stay && spot.rank > 1 && (
              <li>
                {wayWords(plan.value, spot, units.value)}
                {stay.harm > 0 && `, ${damageWords(left)}`}
              </li>
            )}
            <li>
              Sun: {spot.light.sunHours.toFixed(0)} h a day
              {spot.winterSunHours === null ? '' : `, ${winterWords(spot.winterSunHours)}`}
            </li>
            {spot.pot.roots.verdict !== 'fine' && <li>Roots: {rootsBriefly(spot.pot.roots, units.value)}</li>}
          </ul>
          {!spot.stay && (
            <p class="paper-buttons">
              <button type="button" class="main" onClick={() => putInOption([[pot, spot.at]])}>
                Try it there{into === null ? '' : ` in option ${into}`}
              </button>{' '}
              <button type="button" onClick={() => haveMoved(pot, spot.at, spot.hardening)}>
                I have moved it
              </button>
            </p>
          )}
          {spot.hardening && (
            <details>
              <summary>Get it used to more sun first</summary>
              <HardeningDates
                hardening={spot.hardening}
                from={dateOfMoment(siteClock(plan.value.site.timeZone))}
                title="If it moves today"
              />
            </details>
          )}
        </>
      )}
    </li>
  );
}

/** @param left of today's */
function damageWords(left: number): string {
  return left <= 1 ? lessDamage(1 - left) : 'more heat damage';
}

function winterWords(hours: number): string {
  return hours < 0.5 ? 'none in winter' : `${hours.toFixed(0)} h in winter`;
}
