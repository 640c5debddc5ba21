import type { FeatureOf, PlaceSpot, PlanPoint } from '../../../engine/index.ts';
import { distanceToPath, formatLength } from '../../../engine/index.ts';
import { centreLine } from '../../map/outline.ts';
import { siteClock } from '../../map/site-clock.ts';
import { showOnMap } from '../../map/overlays.ts';
import { plan, units } from '../../state/yard.ts';
import { HardeningDates } from './HardeningDates.tsx';
import { haveMoved, openOptionId, putInOption } from './place-edits.ts';

interface Props {
  readonly pot: FeatureOf<'plant'>;
  readonly spot: PlaceSpot;
  readonly chosen: boolean;
  readonly onChoose: () => void;
}

const STANDING = { enough: 'enough light', nearly: 'nearly enough light', 'too dark': 'too dark' } as const;

/** A named thing is near within this. [m] */
const BESIDE = 1.5;

/** "Beside Herbs along the south wall, " or nothing: what a place is known by. */
function besideWords(at: PlanPoint, except: string): string {
  const near = plan.value.features.flatMap((feature) => {
    const { id, name, kind } = feature;
    if (name === undefined || id === except || kind === 'eye' || kind === 'reading') return [];
    return [{ name, away: distanceToPath(at, centreLine(feature)) }];
  });
  const nearest = near.toSorted((a, b) => a.away - b.away)[0];
  return nearest && nearest.away <= BESIDE ? `Beside ${nearest.name}, ` : '';
}

/** One place for the pot: what it does there in summer and in winter, and what can be done about it. */
export function Spot({ pot, spot, chosen, onChoose }: Props) {
  const into = openOptionId.value;
  const title = spot.stay ? `${spot.rank}. Stay where it is` : `${spot.rank}. ${besideWords(spot.at, pot.id)}${formatLength(spot.metres, units.value)} away`;
  return (
    <li class={chosen ? 'pot-spot chosen' : 'pot-spot'}>
      <button type="button" class="spot-head" aria-expanded={chosen} onClick={onChoose}>
        <strong>{title}</strong> <span>{spot.verdict}, {STANDING[spot.standing]}</span>
      </button>
      <dl class="spot-figures">
        <div><dt>Harmful sun in summer</dt><dd>{spot.harm.toFixed(1)} K·h a hot day</dd></div>
        <div><dt>Light in summer</dt><dd>{spot.light.dailyLight.toFixed(0)} mol/m², {spot.light.sunHours.toFixed(1)} h of sun</dd></div>
        <div><dt>Sun in mid-winter</dt><dd>{spot.winterSunHours.toFixed(1)} h a day</dd></div>
        <div><dt>To carry</dt><dd>{spot.stay ? 'nothing' : formatLength(spot.metres, units.value)}</dd></div>
      </dl>
      {chosen && (
        <>
          <p>{spot.sentence}</p>
          {!spot.stay && (
            <p class="paper-buttons">
              <button type="button" class="main" onClick={() => putInOption([[pot, spot.at]])}>Put it there in {into === null ? 'a new option' : `option ${into}`}</button>{' '}
              <button type="button" onClick={() => haveMoved(pot, spot.at, spot.hardening)}>I have moved it</button>
            </p>
          )}
          <p><button type="button" onClick={() => showOnMap(spot.at)}>Show place {spot.rank} on the drawing</button></p>
          {spot.hardening && <HardeningDates hardening={spot.hardening} from={siteClock(plan.value.site.timeZone).slice(0, 10)} title="Get it used to more sun, if it moves today" />}
        </>
      )}
    </li>
  );
}
