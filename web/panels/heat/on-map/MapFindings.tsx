import { useEffect } from 'preact/hooks';
import { formatArea, GRADE_WORDS } from '../../../../engine/index.ts';
import { heat } from '../../../state/results.ts';
import { pin } from '../../../state/view.ts';
import { units } from '../../../state/yard.ts';
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
        <table>
          <thead>
            <tr>
              <th scope="col">Hot spot</th>
              <th scope="col">Area</th>
              <th scope="col">Grade</th>
              <th scope="col">Worst</th>
            </tr>
          </thead>
          <tbody>
            {spots.map(({ center, area, grade, when, sentence }, index) => (
              <tr key={sentence}>
                <th scope="row">
                  <button type="button" title={sentence} onClick={() => (pin.value = center)}>
                    Ask about spot {index + 1}
                  </button>
                </th>
                <td>{formatArea(area, units.value)}</td>
                <td>{GRADE_WORDS[grade - 1]}</td>
                <td>
                  {when.from} to {when.to}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {spots.map(({ sentence }) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </details>
  );
}
