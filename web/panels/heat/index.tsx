import './style.css';
import { nameOf, worthOf } from '../../../engine/index.ts';
import type { PlantLoad } from '../../../engine/index.ts';
import { crossHair, typingWanted } from '../../map/drawing/in-hand.ts';
import { askedPoint } from '../../map/laid-on/overlays.ts';
import { isStale } from '../../state/live.ts';
import { heat } from '../../state/results.ts';
import { findOut, goToStage, pin, selection, slipHeight } from '../../state/view.ts';
import { plan, shownPlan } from '../../state/yard.ts';
import { EmptyNotes } from './EmptyNotes.tsx';
import { MapChoice } from './on-map/MapChoice.tsx';
import { PlantRow } from './PlantRow.tsx';
import { worstFirst } from '../parts/quantity-words.ts';
import { mapFindings, shadowClock, spotCard, sunEyePicture } from './slots.ts';

/**
 * The card of the second stage: what the map shows, the plants worst first, and the hours of a chosen plant or spot.
 */
export function HeatCard() {
  const live = heat.value;
  const result = live.shown?.value;
  const stale = isStale(live);
  return (
    <div class="heat-card">
      <p class="heat-state" role="status">
        {result && stale && live.problems.length === 0 && 'Out of date: being worked out again.'}
      </p>
      {live.problems.map(({ message, pointer }) => (
        <p key={pointer + message} class="heat-problem" role="alert">
          {message}{' '}
          {pointer.startsWith('/climate') ? (
            <button type="button" onClick={() => findOut('climate')}>
              Give the climate
            </button>
          ) : (
            <button type="button" onClick={() => goToStage('draw')}>
              Mend it in Draw the yard
            </button>
          )}
        </p>
      ))}
      <MapChoice plants={result?.plants ?? []} />
      {result && <EmptyNotes />}
      {result && (
        <p>
          <button type="button" onClick={askAboutSpot}>
            Ask about a spot
          </button>
        </p>
      )}
      {result && pin.value && <spotCard.Part />}
      {result ? <Plants plants={result.plants} stale={stale} /> : live.working && <p>Casting the first shadows…</p>}
      {result && <sunEyePicture.Part />}
      {result && <shadowClock.Part />}
      {result && <mapFindings.Part />}
    </div>
  );
}

/**
 * By tap, under the cross, or typed: the map takes any, and says meanwhile what it shows there. On a phone the drawing
 * gets the room.
 */
function askAboutSpot(): void {
  const { value: height } = slipHeight;
  typingWanted.value = !crossHair.value;
  slipHeight.value = 'line';
  askedPoint.value = {
    hint: 'Tap the spot you want to ask about, or type where it is.',
    take(at) {
      slipHeight.value = height === 'line' ? 'half' : height;
      pin.value = at;
    },
  };
}

function Plants({ plants, stale }: { readonly plants: readonly PlantLoad[]; readonly stale: boolean }) {
  const features = new Map(shownPlan.value.features.map((feature) => [feature.id, feature]));
  const known = plants.filter(({ id }) => features.has(id));
  const worth = (id: string): number => {
    const feature = features.get(id);
    return feature ? worthOf(feature) : 1;
  };
  const [chosen] = selection.value;
  return (
    <section aria-label="Plants, worst first" class={stale ? 'out-of-date' : undefined}>
      <h2>Plants, worst first</h2>
      {known.length === 0 ? (
        <p>
          No plants yet. Tap anywhere on the drawing to ask about a spot, or{' '}
          <button type="button" onClick={() => goToStage('draw')}>
            put a plant on the plan
          </button>
          .
        </p>
      ) : (
        <>
          <ol class="plants-worst-first">
            {worstFirst(known, worth).map((plant) => (
              <PlantRow key={plant.id} plant={plant} name={nameOf(plan.value, plant.id)} open={plant.id === chosen} />
            ))}
          </ol>
          <p class="quiet">
            Judged on the heatwave day, on the worst of eight sides and the top. Within one verdict: by heat over the
            limit times what the plant is worth to you.
          </p>
        </>
      )}
    </section>
  );
}
