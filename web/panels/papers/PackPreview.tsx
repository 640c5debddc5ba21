import { useEffect, useRef } from 'preact/hooks';
import type { PackChange } from '../../../engine/index.ts';
import { plan } from '../../state/yard.ts';
import { openPack, packChange, readPack, takePack } from './pack.ts';

/** An adviser's pack: read first, then taken in one step. */
export function PackPreview() {
  const change = packChange(plan.value);
  return (
    <>
      <h2>An adviser’s pack</h2>
      <p>
        Climate, plants, prices and cautions of your place, prepared by somebody who knows it. You see what it changes
        before it does.
      </p>
      <label class="button files-open">
        Open a pack…
        <input
          type="file"
          class="unseen"
          accept=".json,application/json"
          onChange={(event) => {
            const file = event.currentTarget.files?.[0];
            event.currentTarget.value = '';
            if (file) void readPack(file);
          }}
        />
      </label>
      {change && <OpenedPack change={change} />}
    </>
  );
}

function OpenedPack({ change }: { readonly change: PackChange }) {
  const section = useRef<HTMLElement>(null);
  const opened = openPack.value;
  // A pack dropped on the page opens far down the card.
  useEffect(() => section.current?.scrollIntoView({ block: 'nearest' }), [opened]);
  return (
    <section ref={section} class="handed" aria-label="What the pack changes">
      <h3>
        <bdi>{opened?.name}</bdi>
      </h3>
      {change.ok ? (
        <>
          <p>{change.changes.length === 0 ? 'It changes nothing here.' : 'It will change this, and nothing else:'}</p>
          <ul>
            {change.changes.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </>
      ) : (
        <div role="alert">
          <p>It cannot be taken:</p>
          <ul>
            {change.problems.map(({ pointer, message }) => (
              <li key={pointer + message}>{message}</li>
            ))}
          </ul>
        </div>
      )}
      <div class="files-row">
        {change.ok && change.changes.length > 0 && (
          <button type="button" class="main" onClick={() => takePack(change)}>
            Take it
          </button>
        )}
        <button type="button" onClick={() => (openPack.value = null)}>
          Leave it
        </button>
      </div>
    </section>
  );
}
