import type { Underlay } from '../../../../engine/index.ts';
import { ENDS, pixelsOf, typed } from './ends.ts';
import type { End, Typed } from './ends.ts';
import type { Size } from './picture-points.ts';

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
export function MarkedPicture({ underlay, size, onSize, nextEnd, change }: MarkedProps) {
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
