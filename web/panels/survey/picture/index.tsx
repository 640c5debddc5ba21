import { useState } from 'preact/hooks';
import type { Plan } from '../../../../engine/index.ts';
import { Fault } from '../../../common/Fault.tsx';
import { say } from '../../../state/speech.ts';
import { plan } from '../../../state/yard.ts';
import { NOTHING, typed } from './ends.ts';
import { Lie } from './Lie.tsx';
import { cleanPicture } from './picture-file.ts';
import { Scale } from './Scale.tsx';
import { setUnderlay } from './underlay.ts';

/** A picture to trace over: cleaned, scaled by a known length, and held against a second one. */
export function Picture() {
  const { underlay } = plan.value.site;
  const [fault, setFault] = useState<string | null>(null);

  async function take(file: File): Promise<void> {
    const picture = await cleanPicture(file);
    setFault(typeof picture === 'string' ? picture : null);
    if (typeof picture === 'string') return;
    const [left, right, foot] = edgesOf(plan.value);
    typed.value = NOTHING;
    setUnderlay({ image: picture.image, at: [left, foot], width: right - left, turn: 0, opacity: 0.6 });
    say(
      `The picture lies under the drawing, ${picture.width} by ${picture.height} pixels, without what the camera ` +
        `wrote beside it.`,
    );
  }

  return (
    <>
      <p>
        A picture from above, or a photographed plan, to trace over. It is drawn anew here, so that what the camera
        noted beside it, such as the place, is gone; nothing is sent anywhere.
      </p>
      <label class="button files-open">
        {underlay ? 'Take another picture…' : 'Choose a picture…'}
        <input
          type="file"
          class="unseen"
          accept="image/*"
          onChange={(event) => {
            const file = event.currentTarget.files?.[0];
            event.currentTarget.value = '';
            if (file) void take(file);
          }}
        />
      </label>
      <Fault>{fault}</Fault>
      {underlay && <Scale underlay={underlay} />}
      {underlay && <Lie underlay={underlay} />}
    </>
  );
}

function edgesOf({ site: { boundary } }: Plan): readonly [left: number, right: number, foot: number] {
  const x = boundary.map((point) => point[0]);
  return [Math.min(...x), Math.max(...x), Math.min(...boundary.map((point) => point[1]))];
}
