import './style.css';
import { heatHeadline, nameOf, worstFirst, worthOf } from '../../../engine/index.ts';
import type { PlantLoad } from '../../../engine/index.ts';
import { crossHair, typingWanted } from '../../map/drawing/in-hand.ts';
import { askForPoint } from '../../map/laid-on/ask-point.ts';
import { OF_THE_PROGRAM } from '../../state/ask.ts';
import { isStale } from '../../state/live.ts';
import { headline } from '../../state/next.ts';
import { heat, sunUp } from '../../state/results.ts';
import { findOut, goToStage, pin, selection } from '../../state/view.ts';
import { plan, preview, shownPlan } from '../../state/yard.ts';
import { Fold } from '../parts/answer/Fold.tsx';
import { StageAnswer } from '../parts/answer/StageAnswer.tsx';
import { EmptyNotes } from './EmptyNotes.tsx';
import { PlantRow } from './PlantRow.tsx';
import { mapChoice, mapFindings, shadowClock, spotCard, sunEyePicture } from './slots.ts';

/** The card of the second stage: what the sun does in one sentence, the plants worst first, and the hours of each. */
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
          {message} <Mending pointer={pointer} />
        </p>
      ))}
      {result ? <Plants plants={result.plants} stale={stale} /> : live.working && <p>Casting the first shadows…</p>}
      {result && pin.value && <spotCard.Part />}
      {result && <EmptyNotes />}
      {result && (
        <Fold title="The map">
          <mapChoice.Part plants={result.plants} />
          <button type="button" onClick={askAboutSpot}>
            Ask about a spot
          </button>
        </Fold>
      )}
      {result && (
        <Fold title="For the curious">
          {result.plants.length > 0 && (
            <>
              <p class="quiet">
                Judged on the heatwave day, on the worst of eight sides and the top. Within one verdict: by heat over
                the limit times what the plant is worth to you.
              </p>
              <sunEyePicture.Part />
            </>
          )}
          <shadowClock.Part />
          <mapFindings.Part />
        </Fold>
      )}
    </div>
  );
}

/** Where what is wrong can be put right. */
function Mending({ pointer }: { readonly pointer: string }) {
  if (pointer === OF_THE_PROGRAM)
    return (
      <button type="button" onClick={() => location.reload()}>
        Load the page again, the yard is kept
      </button>
    );
  const [words, mend]: readonly [string, () => void] = pointer.startsWith('/climate')
    ? ['Give the climate', () => findOut('climate')]
    : ['Mend it in Draw the yard', () => goToStage('draw')];
  return (
    <button type="button" onClick={mend}>
      {words}
    </button>
  );
}

/** By tap, under the cross, or typed: the map takes any, and says meanwhile what it shows there. */
function askAboutSpot(): void {
  typingWanted.value = !crossHair.value;
  askForPoint('Tap the spot you want to ask about, or type where it is.', (at) => void (pin.value = at));
}

/** While something is dragged the sentence before it stands; else an old one is not told on. */
function saidNow(stale: boolean, sentence: () => string): string | null {
  if (!stale) return sentence();
  return preview.value === null ? 'What the sun does here is being worked out.' : headline.peek();
}

function Plants({ plants, stale }: { readonly plants: readonly PlantLoad[]; readonly stale: boolean }) {
  const features = new Map(shownPlan.value.features.map((feature) => [feature.id, feature]));
  const worth = (id: string): number => {
    const feature = features.get(id);
    return feature ? worthOf(feature) : 1;
  };
  const ranked = worstFirst(
    plants.filter(({ id }) => features.has(id)),
    worth,
  );
  const [chosen] = selection.value;
  return (
    <StageAnswer says={saidNow(stale, () => heatHeadline(shownPlan.value, ranked, sunUp.value))}>
      <section aria-label="Plants, worst first" class={stale ? 'out-of-date' : undefined}>
        <h2 class="unseen">Plants, worst first</h2>
        <ol class="plants-worst-first">
          {ranked.map((plant) => (
            <PlantRow key={plant.id} plant={plant} name={nameOf(plan.value, plant.id)} open={plant.id === chosen} />
          ))}
        </ol>
      </section>
    </StageAnswer>
  );
}
