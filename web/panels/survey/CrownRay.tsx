import type { CrownShape } from '../../../engine/index.ts';

interface Props {
  /** `null`: a post, an edge. */
  readonly crown: { readonly shape: CrownShape; readonly width: number; readonly base: number } | null;
  /** [m] */
  readonly height: number;
  /** From the foot to the shadow's tip. [m] */
  readonly tip: number;
  readonly tangent: number;
}

/** The thing from the side, with the ray that makes the tip of its shadow, and the one that people think of. */
export function CrownRay({ crown, height, tip, tangent }: Props) {
  const left = crown ? -crown.width / 2 : -0.1 * height;
  const across = tip - left;
  const scale = Math.min(300 / across, 190 / height);
  const x = (metres: number): number => 14 + (metres - left) * scale;
  const y = (metres: number): number => 14 + (height - metres) * scale;
  const { touchX, touchY } = touchOf(crown, height, tip, tangent);
  const topLands = height / tangent;
  const differs = crown !== null && Math.abs(tip - topLands) > 0.05;
  const words = differs
    ? `The ray to the shadow's tip, ${tip.toFixed(2)} m off, touches the crown ${touchY.toFixed(2)} m up, not at ` +
      `its top; the top's own shadow lies at ${topLands.toFixed(2)} m, inside the crown's.`
    : `The ray to the shadow's tip, ${tip.toFixed(2)} m off, passes the top.`;
  return (
    <figure class="crown-ray">
      <svg viewBox={`0 0 ${28 + across * scale} ${32 + height * scale}`} role="img" aria-label={words}>
        <line class="ray-ground" x1="4" x2={24 + across * scale} y1={y(0)} y2={y(0)} />
        {crown ? (
          <CrownOutline {...crown} height={height} x={x} y={y} />
        ) : (
          <line class="ray-post" x1={x(0)} x2={x(0)} y1={y(0)} y2={y(height)} />
        )}
        {crown && <line class="ray-post" x1={x(0)} x2={x(0)} y1={y(0)} y2={y(crown.base)} />}
        {differs && <line class="ray-thought" x1={x(0)} y1={y(height)} x2={x(topLands)} y2={y(0)} />}
        <line class="ray" x1={x(touchX)} y1={y(touchY)} x2={x(tip)} y2={y(0)} />
        <circle class="ray-touch" cx={x(touchX)} cy={y(touchY)} r="4" />
        <text x={x(tip)} y={y(0) + 14} text-anchor="end">
          {tip.toFixed(2)} m
        </text>
      </svg>
      <figcaption class="quiet">
        {words}
        {differs && ' Dashed: the top.'}
      </figcaption>
    </figure>
  );
}

interface OutlineProps {
  readonly shape: CrownShape;
  readonly width: number;
  readonly base: number;
  readonly height: number;
  readonly x: (metres: number) => number;
  readonly y: (metres: number) => number;
}

function CrownOutline({ shape, width, base, height, x, y }: OutlineProps) {
  const r = width / 2;
  if (shape === 'round')
    return (
      <ellipse
        class="ray-crown"
        cx={x(0)}
        cy={y((height + base) / 2)}
        rx={x(r) - x(0)}
        ry={(y(base) - y(height)) / 2}
      />
    );
  const points =
    shape === 'cone'
      ? [
          [-r, base],
          [0, height],
          [r, base],
        ]
      : [
          [-r, base],
          [-r, height],
          [r, height],
          [r, base],
        ];
  return <polygon class="ray-crown" points={points.map(([px, py]) => `${x(px)},${y(py)}`).join(' ')} />;
}

/** Where the ray that makes the tip touches the crown. [m] */
function touchOf(
  crown: Props['crown'],
  height: number,
  tip: number,
  tangent: number,
): { touchX: number; touchY: number } {
  if (crown === null || crown.shape === 'cone') return { touchX: 0, touchY: height };
  if (crown.shape === 'column') return { touchX: crown.width / 2, touchY: height };
  // The nearest point of the ray to the middle, in coordinates in which the ellipsoid is a circle of radius 1.
  const r = crown.width / 2;
  const b = (height - crown.base) / 2;
  const middle = (height + crown.base) / 2;
  const [px, py] = [tip / r, -middle / b];
  const [dx, dy] = [-1 / r, tangent / b];
  const along = -(px * dx + py * dy) / (dx * dx + dy * dy);
  return { touchX: tip - along, touchY: along * tangent };
}
