import { useState } from 'preact/hooks';
import { planText, shareCopy } from '../../../engine/index.ts';
import { offerFile } from '../../state/files.ts';
import { say } from '../../state/speech.ts';
import { plan } from '../../state/yard.ts';

/** A copy to give away: read what leaves, then save it. */
export function SharePreview() {
  const [open, setOpen] = useState(false);
  const copy = open ? shareCopy(plan.value) : null;

  function save(): void {
    if (!copy) return;
    offerFile('shared-yard.plan.json', planText(copy.plan), 'application/json');
    setOpen(false);
    say('The copy to share was handed to your downloads. Nothing was sent anywhere.');
  }

  return (
    <>
      <h2>A copy to share</h2>
      <p>For an adviser or a forum: the yard without what says whose it is.</p>
      {!copy && (
        <button type="button" onClick={() => setOpen(true)}>
          Look at what would leave…
        </button>
      )}
      {copy && (
        <section class="handed" aria-label="What leaves with the copy">
          <h3>In the copy</h3>
          <ul>
            {copy.leaves.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          <h3>Taken out</h3>
          <ul>
            {copy.removed.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          <div class="files-row">
            <button type="button" class="main" onClick={save}>
              Save this copy
            </button>
            <button type="button" onClick={() => setOpen(false)}>
              Leave it
            </button>
          </div>
        </section>
      )}
    </>
  );
}
