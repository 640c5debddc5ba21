import { useState } from 'preact/hooks';
import { pictureScale } from '../../../../engine/index.ts';
import type { PlanPoint, Underlay } from '../../../../engine/index.ts';
import { askForPoint } from '../../../map/laid-on/ask-point.ts';
import { say } from '../../../state/speech.ts';
import { plan } from '../../../state/yard.ts';
import { Field } from '../../parts/boxes/Field.tsx';
import { ENDS, LABELS, lengthOf, NOTHING, pixelsOf, typed } from './ends.ts';
import type { End, Typed } from './ends.ts';
import { MarkedPicture } from './MarkedPicture.tsx';
import { pixelAt } from './picture-points.ts';
import type { Size } from './picture-points.ts';
import { setUnderlay } from './underlay.ts';

/** How large the picture is: by a known length, held against a second one. */
export function Scale({ underlay }: { readonly underlay: Underlay }) {
  const [size, setSize] = useState<Size | null>(null);
  const given = typed.value;
  const change = (next: Partial<Typed>): void => {
    typed.value = { ...given, ...next };
  };
  const pixels = (end: End): readonly [number, number] | null => pixelsOf(given[end]);
  const known = lengthOf(pixels('first'), pixels('second'), given.length);
  const check = lengthOf(pixels('checkFirst'), pixels('checkSecond'), given.checkLength);
  const finding = size && known && pictureScale(known, size.width, check ?? undefined);
  const nextEnd = ENDS.find((end) => given[end].trim() === '');
  return (
    <>
      <h3>Scale</h3>
      <p>
        Two points a known length apart, as long as you can find: a fence, a wall, a parking bay.{' '}
        {nextEnd
          ? `Tap the ${LABELS[nextEnd].toLowerCase()} in the picture, or type its pixels from the upper left.`
          : ''}
      </p>
      <MarkedPicture underlay={underlay} size={size} onSize={setSize} nextEnd={nextEnd} change={change} />
      {size && nextEnd && (
        <button type="button" onClick={() => askOnDrawing(nextEnd, size)}>
          Tap it on the drawing
        </button>
      )}
      <KnownLengths change={change} />
      <button type="button" onClick={() => (typed.value = NOTHING)}>
        Clear the points
      </button>
      {finding && <ScaleFound finding={finding} underlay={underlay} />}
    </>
  );
}

/** Takes an end, then the other end of its length, where the picture is seen large: under the drawing. */
function askOnDrawing(end: End, size: Size): void {
  const take = (at: PlanPoint): void => {
    const { underlay } = plan.peek().site;
    const pixel = underlay && pixelAt(underlay, size, at);
    if (!pixel) return say('That is beside the picture.', 'problem');
    typed.value = { ...typed.value, [end]: pixel.join(' ') };
    const place = ENDS.indexOf(end);
    const other = ENDS[place + 1];
    if (place % 2 === 0 && typed.value[other] === '') askOnDrawing(other, size);
  };
  askForPoint(`Tap the ${LABELS[end].toLowerCase()} in the picture under the drawing.`, take, true);
}

function KnownLengths({ change }: { readonly change: (next: Partial<Typed>) => void }) {
  const given = typed.value;
  return (
    <>
      <fieldset class="scale-length">
        <legend>A known length</legend>
        {(['first', 'second'] as const).map((end) => (
          <Field
            key={end}
            label={LABELS[end]}
            value={given[end]}
            usual="120 340"
            onInput={(text) => change({ [end]: text })}
          />
        ))}
        <Field label="Length on the ground" value={given.length} onInput={(length) => change({ length })} />
      </fieldset>
      <fieldset class="scale-length">
        <legend>A second one, to check</legend>
        {(['checkFirst', 'checkSecond'] as const).map((end) => (
          <Field key={end} label={LABELS[end]} value={given[end]} onInput={(text) => change({ [end]: text })} />
        ))}
        <Field
          label="Its length on the ground"
          value={given.checkLength}
          onInput={(checkLength) => change({ checkLength })}
        />
      </fieldset>
    </>
  );
}

interface ScaleFoundProps {
  readonly finding: ReturnType<typeof pictureScale>;
  readonly underlay: Underlay;
}

function ScaleFound({ finding, underlay }: ScaleFoundProps) {
  return (
    <section aria-label="Scale found" class="found" aria-live="polite">
      {finding.ok ? (
        <>
          <p class="found-number">
            {`${(finding.value.metresPerPixel * 1000).toFixed(1)} mm a pixel, `}
            {`the picture ${finding.value.width.toFixed(2)} m wide`}
          </p>
          {finding.notes.map((note) => (
            <p key={note}>{note}</p>
          ))}
          <button type="button" class="main" onClick={() => setUnderlay({ ...underlay, width: finding.value.width })}>
            Scale the picture
          </button>
        </>
      ) : (
        <p class="fault">{finding.reason}</p>
      )}
    </section>
  );
}
