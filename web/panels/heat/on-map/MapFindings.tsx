import { useEffect } from 'preact/hooks';
import { heat } from '../../../state/results.ts';
import { pin } from '../../../state/view.ts';
import { timesIn } from '../../parts/times.ts';
import { layHeatOverlays } from './on-map.ts';

/**
 * The map's findings in words, for whoever does not see it; while it stands, the map carries contours, plant marks and
 * shadows.
 */
export function MapFindings() {
  useEffect(() => layHeatOverlays(), []);
  const spots = heat.value.shown?.value.hotSpots ?? [];
  return (
    <details class="map-findings">
      <summary>
        The map in words:{' '}
        {spots.length === 0 ? 'no hot spot' : spots.length === 1 ? 'one hot spot' : `${spots.length} hot spots`}
      </summary>
      {spots.length === 0 ? (
        <p>No ground is harsh or scorching at this height.</p>
      ) : (
        <ol>
          {spots.map(({ center, sentence }, index) => (
            <li key={sentence}>
              {timesIn(sentence)}{' '}
              <button type="button" class="in-words" onClick={() => (pin.value = center)}>
                Ask about spot {index + 1}
              </button>
            </li>
          ))}
        </ol>
      )}
    </details>
  );
}
