import { useSignal, useSignalEffect } from '@preact/signals';
import type { Signal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { featureOf } from '../../../engine/index.ts';
import type { FeatureOf, PlaceResult, PlaceSpot, PotSwap } from '../../../engine/index.ts';
import { numberedMarks, showOnMap } from '../../map/laid-on/overlays.ts';
import { plan } from '../../state/yard.ts';
import { Fold } from '../parts/answer/Fold.tsx';
import { openOptionId, putInOption } from './place-edits.ts';
import { places, pot } from './placed.ts';
import { Spot } from './Spot.tsx';

/** The best places, numbered as on the drawing; cards to leaf through on a phone. */
export function Places({ pot: chosen }: { readonly pot: FeatureOf<'plant'> }) {
  const open = useSignal(1);
  useSignalEffect(() => {
    const result = places.value.shown?.value;
    numberedMarks.value = result && result.plant === pot.value?.id ? marksOf(result, open.value) : [];
  });
  const { shown, working, problems } = places.value;
  const result = shown?.value.plant === chosen.id ? shown.value : null;
  if (problems.length > 0)
    return (
      <>
        {problems.map(({ message }) => (
          <p key={message} class="said problem" role="alert">
            {message}
          </p>
        ))}
      </>
    );
  if (!result)
    return working ? (
      <p class="quiet" role="status">
        Trying every place on the ground…
      </p>
    ) : null;
  return (
    <section aria-label="Best places" aria-busy={working !== null}>
      <h2 class="unseen">Best places</h2>
      <SpotCards pot={chosen} spots={result.spots} open={open} />
      <Fold title="What else">
        {result.notes.map((note) => (
          <p key={note}>{note}</p>
        ))}
        {result.winterBest && (
          <p>
            <button type="button" onClick={() => showOnMap(result.winterBest!.at)}>
              Show the winter place
            </button>
          </p>
        )}
        {result.swaps.length > 0 && <Swaps pot={chosen} swaps={result.swaps} />}
      </Fold>
    </section>
  );
}

interface SpotCardsProps {
  readonly pot: FeatureOf<'plant'>;
  readonly spots: PlaceResult['spots'];
  /** Rank of the one that is open; 0 is none. */
  readonly open: Signal<number>;
}

/** A card a place; the drawing goes where the open one is. */
function SpotCards({ pot: chosen, spots, open }: SpotCardsProps) {
  const cards = useRef<HTMLOListElement>(null);
  const stay = spots.find((spot) => spot.stay) ?? spots[0];

  function turnTo(spot: PlaceSpot): void {
    open.value = spot.rank;
    showOnMap(spot.at);
  }

  /** A card that has come to rest is the chosen one. */
  function onRest(): void {
    const list = cards.current;
    if (!list || list.scrollWidth <= list.clientWidth) return;
    const spot = spots[Math.round((list.scrollLeft / (list.scrollWidth - list.clientWidth)) * (spots.length - 1))];
    if (spot && spot.rank !== open.value) turnTo(spot);
  }

  function leaf(by: 1 | -1): void {
    const rank = Math.min(spots.length, Math.max(1, open.value + by));
    turnTo(spots[rank - 1]);
    const card = cards.current?.children[rank - 1];
    if (card instanceof HTMLElement) cards.current?.scrollTo({ left: card.offsetLeft - cards.current.offsetLeft });
  }

  return (
    <>
      <nav class="spot-pages" aria-label="Places, a card each">
        <button type="button" disabled={open.value <= 1} onClick={() => leaf(-1)}>
          ‹ Better
        </button>
        <span>
          {open.value} of {spots.length}
        </span>
        <button type="button" disabled={open.value >= spots.length} onClick={() => leaf(1)}>
          Next ›
        </button>
      </nav>
      <ol ref={cards} class="pot-spots" onScrollEnd={onRest}>
        {spots.map((spot) => (
          <Spot
            key={spot.rank}
            pot={chosen}
            spot={spot}
            stay={stay}
            isNamesake={spots.some((other) => other !== spot && !other.stay && other.where === spot.where)}
            chosen={open.value === spot.rank}
            onChoose={() => (open.value === spot.rank ? void (open.value = 0) : turnTo(spot))}
          />
        ))}
      </ol>
    </>
  );
}

function marksOf({ spots, winterBest }: PlaceResult, open: number): typeof numberedMarks.value {
  const best = spots.map(({ at, rank }) => ({
    at,
    label: String(rank),
    chosen: rank === open,
  }));
  return winterBest ? [...best, { at: winterBest.at, label: '❄' }] : best;
}

function Swaps({ pot: chosen, swaps }: { readonly pot: FeatureOf<'plant'>; readonly swaps: readonly PotSwap[] }) {
  const into = openOptionId.value === null ? 'a new option' : `option ${openOptionId.value}`;
  const swap = (id: string): void => {
    const other = featureOf(plan.value, id);
    if (other?.kind === 'plant')
      putInOption([
        [chosen, other.at],
        [other, chosen.at],
      ]);
  };
  return (
    <>
      <ul class="swaps">
        {swaps.map(({ with: other, sentence }) => (
          <li key={other}>
            {sentence}{' '}
            <button type="button" onClick={() => swap(other)}>
              Change them in {into}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
