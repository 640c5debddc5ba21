import { type LivingScreen, formatShare } from '../../../engine/index.ts';
import { putIntoOption } from '../parts/option-edits.ts';
import { more } from './search.ts';

/** Answers that are no single cloth: a pot moved and another plant covered, and what can be let grow. */
export function MoreForms() {
  const { together = null, living = null } = more.value ?? {};
  return (
    <>
      {together && (
        <section class="more-form">
          <h3>Move and cover</h3>
          <p>{together.sentence}</p>
          <button
            type="button"
            onClick={() =>
              putIntoOption(together.option.features, 'a small cloth and moved pots', true, together.moves)
            }
          >
            Put both into a new option
          </button>
        </section>
      )}
      {living && <Living living={living} />}
    </>
  );
}

function Living({ living: { feature, sentence, climbers, price, notes, sources } }: { readonly living: LivingScreen }) {
  return (
    <details class="more-form">
      <summary>A trellis with a climber instead</summary>
      <p>{sentence}</p>
      {price && (
        <p>
          Roughly {price.from} to {price.to} {price.currency} for trellis, posts and plants.
        </p>
      )}
      <table>
        <caption>Light stopped, and heat damage taken off, by summers</caption>
        <thead>
          <tr>
            <th scope="col">Climber</th>
            {[1, 2, 3, 4].map((summer) => (
              <th key={summer} scope="col">
                {summer}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {climbers.map(({ name, summers }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {summers.map(({ stops, effect }, k) => (
                <td key={k}>
                  {formatShare(stops)}, −{formatShare(effect)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <ul class="sentences">
        {climbers.map(({ name, leaves, water }) => (
          <li key={name}>
            {name}: {leaves}; {water} litres a week for each plant.
          </li>
        ))}
        {notes.map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
      <p class="quiet">{sources}</p>
      <button type="button" onClick={() => putIntoOption([feature], 'a grown trellis', true)}>
        Put it, grown, into a new option
      </button>
    </details>
  );
}
