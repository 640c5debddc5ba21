import { useState } from 'preact/hooks';
import { lieOf, parseNumber, pictureScale, setSite } from '../../../engine/index.ts';
import type { PictureLength, Plan, PlanPoint, Underlay } from '../../../engine/index.ts';
import { commitBeside } from '../../state/edit.ts';
import { keptForYard } from '../../state/kept.ts';
import { say } from '../../state/speech.ts';
import { findOut } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';
import { askForPoint } from '../../map/laid-on/ask-point.ts';
import { Field } from '../parts/boxes/Field.tsx';
import { pixelAt } from './picture-points.ts';
import type { Size } from './picture-points.ts';
import { cleanPicture } from './picture-file.ts';
import { taped } from './measuring.ts';
import { pointOf, pointText } from '../parts/typed.ts';
import { Fault } from '../../common/Fault.tsx';

const ENDS = ['first', 'second', 'checkFirst', 'checkSecond'] as const;
type End = (typeof ENDS)[number];
type Typed = Readonly<Record<End | 'length' | 'checkLength', string>>;

const NOTHING: Typed = { first: '', second: '', length: '', checkFirst: '', checkSecond: '', checkLength: '' };
const LABELS: Readonly<Record<End, string>> = {
  first: 'First point',
  second: 'Second point',
  checkFirst: 'First point of the check',
  checkSecond: 'Second point of the check',
};

const typed = keptForYard('picture', NOTHING);

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
    </>
  );
}

function Scale({ underlay }: { readonly underlay: Underlay }) {
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
      <Lie underlay={underlay} />
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

interface MarkedProps {
  readonly underlay: Underlay;
  /** In its own pixels; `null` until it is decoded. */
  readonly size: Size | null;
  readonly onSize: (size: Size) => void;
  /** The end that a tap marks. */
  readonly nextEnd: End | undefined;
  readonly change: (next: Partial<Typed>) => void;
}

/** The picture with the ends of both lengths on it. */
function MarkedPicture({ underlay, size, onSize, nextEnd, change }: MarkedProps) {
  const pixels = (end: End): readonly [number, number] | null => pixelsOf(typed.value[end]);
  return (
    <div class="scale-picture">
      <img
        src={underlay.image}
        alt="The picture under the drawing"
        onLoad={({ currentTarget: { naturalWidth, naturalHeight } }) =>
          onSize({ width: naturalWidth, height: naturalHeight })
        }
        onClick={(event) => {
          const image = event.currentTarget;
          const scale = image.naturalWidth / image.clientWidth;
          if (nextEnd)
            change({ [nextEnd]: `${Math.round(event.offsetX * scale)} ${Math.round(event.offsetY * scale)}` });
        }}
      />
      {size && (
        <svg viewBox={`0 0 ${size.width} ${size.height}`} aria-hidden="true">
          {(
            [
              ['first', 'second'],
              ['checkFirst', 'checkSecond'],
            ] as const
          ).map(([from, to]) => {
            const [a, b] = [pixels(from), pixels(to)];
            return a && b && <line key={from} class={`scale-${from}`} x1={a[0]} y1={a[1]} x2={b[0]} y2={b[1]} />;
          })}
          {ENDS.map((end) => {
            const at = pixels(end);
            return at && <circle key={end} cx={at[0]} cy={at[1]} r={size.width / 90} />;
          })}
        </svg>
      )}
    </div>
  );
}

function KnownLengths({ change }: Pick<MarkedProps, 'change'>) {
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

/** Where the picture lies, how it is turned, and how strong it shows. */
function Lie({ underlay }: { readonly underlay: Underlay }) {
  const [at, setAt] = useState(pointText(underlay.at));
  const [turn, setTurn] = useState(String(lieOf(underlay).turn));
  return (
    <>
      <h3>Where it lies</h3>
      <Field
        label="Its lower left corner"
        value={at}
        onInput={(text) => {
          setAt(text);
          const point = pointOf(text);
          if (point) setUnderlay({ ...underlay, at: point });
        }}
      />
      <Field
        label="Turned clockwise by, in degrees"
        value={turn}
        onInput={(text) => {
          setTurn(text);
          const degrees = parseNumber(text);
          if (degrees !== null && Math.abs(degrees) <= 360) setUnderlay({ ...underlay, turn: degrees });
        }}
      />
      <p class="asked-field">
        <label for="picture-strength">How strong it shows</label>
        <input
          id="picture-strength"
          type="range"
          min="0"
          max="100"
          value={Math.round(lieOf(underlay).opacity * 100)}
          aria-valuetext={`${Math.round(lieOf(underlay).opacity * 100)} %`}
          onChange={(event) => setUnderlay({ ...underlay, opacity: Number(event.currentTarget.value) / 100 })}
        />
      </p>
      <div class="asked-buttons">
        <button type="button" onClick={() => findOut('north')}>
          It is north-up: take north from it
        </button>
        <button type="button" onClick={() => takeAway(underlay)}>
          Take the picture away
        </button>
      </div>
    </>
  );
}

/** No step of the history: what was drawn over the picture is undone without it. */
function setUnderlay(underlay: Underlay | undefined): void {
  commitBeside((then) => setSite(then, { underlay }));
}

function takeAway(underlay: Underlay): void {
  setUnderlay(undefined);
  say('The picture is gone from under the drawing.', 'done', {
    label: 'Put it back',
    run: () => setUnderlay(underlay),
  });
}

function edgesOf({ site: { boundary } }: Plan): readonly [left: number, right: number, foot: number] {
  const x = boundary.map((point) => point[0]);
  return [Math.min(...x), Math.max(...x), Math.min(...boundary.map((point) => point[1]))];
}

function pixelsOf(text: string): readonly [number, number] | null {
  const parts = text
    .trim()
    .split(/[\s,;]+/)
    .map(Number);
  return parts.length === 2 && parts.every((part) => Number.isFinite(part) && part >= 0) && text.trim() !== ''
    ? [parts[0], parts[1]]
    : null;
}

function lengthOf(
  fromPx: readonly [number, number] | null,
  toPx: readonly [number, number] | null,
  text: string,
): PictureLength | null {
  const length = taped(text);
  return fromPx && toPx && length ? { fromPx, toPx, length: length.value } : null;
}
