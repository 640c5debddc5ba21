import { useEffect, useRef } from 'preact/hooks';
import { plan } from '../../state/yard.ts';
import { openPack, packChange, readPack, takePack } from './pack.ts';

/** An adviser's pack: read first, then taken in one step. */
export function PackPreview() {
  const change = packChange(plan.value);
  const preview = useRef<HTMLElement>(null);
  const opened = openPack.value;
  // A pack dropped on the page opens far down the card.
  useEffect(() => preview.current?.scrollIntoView({ block: 'nearest' }), [opened]);
  const close = (): void => void (openPack.value = null);
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
      {change && (
        <section ref={preview} class="handed" aria-label="What the pack changes">
          <h3>
            <bdi>{opened?.name}</bdi>
          </h3>
          {change.ok ? (
            <>
              <p>
                {change.changes.length === 0 ? 'It changes nothing here.' : 'It will change this, and nothing else:'}
              </p>
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
            <button type="button" onClick={close}>
              Leave it
            </button>
          </div>
        </section>
      )}
    </>
  );
}
