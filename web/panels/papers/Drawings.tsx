import { useState } from 'preact/hooks';
import { planPicture, withOutlines, yardDxf } from '../../../engine/index.ts';
import type { OutlineKind } from '../../../engine/index.ts';
import { commitEdit } from '../../state/edit.ts';
import { fileNameOf } from '../../state/files.ts';
import { say } from '../../state/speech.ts';
import { plan, units } from '../../state/yard.ts';
import { ChoiceBox } from '../parts/boxes/ChoiceBox.tsx';
import { SaveDrawing } from '../parts/paper/SaveDrawing.tsx';

const KINDS: Readonly<Record<OutlineKind, string>> = { building: 'buildings', wall: 'walls', bed: 'beds' };

/** The yard's drawing for other programs, and outlines out of theirs. */
export function Drawings() {
  const [kind, setKind] = useState<OutlineKind>('building');

  async function take(file: File): Promise<void> {
    const result = withOutlines(plan.value, await file.text(), kind);
    if (!result.ok) return say(`${file.name}: ${result.problems[0].message}`, 'problem');
    const count = result.ids.length;
    const what = count === 1 ? `1 ${kind}` : `${count} ${KINDS[kind]}`;
    if (commitEdit(`Put in ${what} of ${file.name}`, result.plan)) say(`${what} put in. ${result.notes.join(' ')}`);
  }

  return (
    <>
      <h2>Drawings</h2>
      <SaveDrawing
        name={fileNameOf(plan.value, '')}
        svg={() => planPicture(plan.value, null, units.value)}
        dxf={() => yardDxf(plan.value)}
      />
      <div class="files-row">
        <ChoiceBox label="Outlines become" value={kind} choices={KINDS} onChange={(one) => one && setKind(one)} />
        <label class="button files-open">
          Put in outlines…
          <input
            type="file"
            class="unseen"
            accept=".dxf,.geojson,.json"
            onChange={(event) => {
              const file = event.currentTarget.files?.[0];
              event.currentTarget.value = '';
              if (file) void take(file);
            }}
          />
        </label>
      </div>
    </>
  );
}
