import { type AllNorth, radiansOf } from '../../../engine/index.ts';

/** Pixels that a shadow of one pole's length has in the picture; longer than four are cut off. */
const PX = 26;
const LONGEST = 4;

/** A day's shadows of a 1 m pole, true north at the top: those that tell north are drawn full. */
export function ShadowRose({ shadows }: { readonly shadows: AllNorth['shadows'] }) {
  const tell = shadows.filter(({ tells }) => tells);
  const finding =
    tell.length === 0 ? 'None of them tells north this day.' : `${tell.length} of ${shadows.length} tell north.`;
  return (
    <figure class="shadow-rose">
      <svg
        viewBox="-118 -118 236 236"
        role="img"
        aria-label={`Shadows of a 1 m pole through the day, north at the top. ${finding}`}
      >
        <circle r={PX} class="rose-ring" />
        <circle r={2 * PX} class="rose-ring" />
        {shadows.map(({ clock, bearing, length, tells }) => {
          const reach = Math.min(length, LONGEST) * PX;
          const x = Math.sin(radiansOf(bearing));
          const y = -Math.cos(radiansOf(bearing));
          return (
            <g key={clock} class={tells ? 'tells' : 'tells-not'}>
              <line x2={x * reach} y2={y * reach} />
              {clock.endsWith(':00') && length < LONGEST && (
                <text x={x * (reach + 11)} y={y * (reach + 11) + 4}>
                  {Number(clock.slice(0, 2))}
                </text>
              )}
            </g>
          );
        })}
        <circle r="3" class="rose-pole" />
        <text y={-106} class="rose-north">
          N
        </text>
      </svg>
      <figcaption class="quiet">
        Shadows of a 1 m pole by the hour. {finding} Rings: one and two pole lengths.
      </figcaption>
      <ShadowTable shadows={shadows} />
    </figure>
  );
}

function ShadowTable({ shadows }: { readonly shadows: AllNorth['shadows'] }) {
  return (
    <details>
      <summary>The same as a table</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">Time</th>
            <th scope="col">Points to</th>
            <th scope="col">Length</th>
            <th scope="col">Tells north</th>
          </tr>
        </thead>
        <tbody>
          {shadows.map(({ clock, bearing, length, tells }) => (
            <tr key={clock}>
              <th scope="row">{clock}</th>
              <td>{bearing.toFixed(0)}°</td>
              <td>{length.toFixed(2)} m</td>
              <td>{tells ? 'yes' : 'no'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
