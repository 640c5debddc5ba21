import { formatLength } from '../../../engine/index.ts';
import type { SightCut } from '../../../engine/index.ts';
import { calledById } from '../../map/drawing/feature-edits.ts';
import { units } from '../../state/yard.ts';

/** Drawing units for a metre. */
const PER_METRE = 20;
const ROOM = 18;

/**
 * One line of sight as a cut: the onlooker, what stands between, the frame, and the line over the top of what hides
 * most. Same scale across and up.
 */
export function SightPicture({ cut }: { readonly cut: SightCut }) {
  const { eye, eyeHeight, far, top, lineAt, between } = cut;
  const tallest = Math.max(eyeHeight, top, lineAt ?? 0, ...between.map((each) => each.top));
  const x = (along: number): number => along * PER_METRE;
  const y = (height: number): number => -height * PER_METRE;
  return (
    <svg
      class="sight-cut"
      viewBox={`${-ROOM} ${y(tallest) - ROOM} ${x(far) + 5 * ROOM} ${-y(tallest) + 2.6 * ROOM}`}
      role="img"
      aria-label={`Line of sight from ${calledById(eye)} to the frame`}
    >
      <line class="ground" x1={-ROOM} x2={x(far) + 3 * ROOM} y1="0" y2="0" />
      <circle cx="0" cy={y(eyeHeight)} r="3" />
      <line x1="0" x2="0" y1="0" y2={y(eyeHeight)} />
      {between.map((each, index) => (
        <line key={index} class="wall" x1={x(each.along)} x2={x(each.along)} y1="0" y2={y(each.top)} />
      ))}
      <line class="frame-post" x1={x(far)} x2={x(far)} y1="0" y2={y(top)} />
      {lineAt !== null && <line class="sight" x1="0" y1={y(eyeHeight)} x2={x(far)} y2={y(lineAt)} />}
      <text x="0" y={1.2 * ROOM} text-anchor="middle">
        {formatLength(eyeHeight, units.value)}
      </text>
      {between.slice(0, 1).map((each) => (
        <text key="wall" x={x(each.along)} y={1.2 * ROOM} text-anchor="middle">
          {formatLength(each.top, units.value)}
        </text>
      ))}
      <text x={x(far) + 4} y={y(top) + 4}>
        {formatLength(top, units.value)}
      </text>
    </svg>
  );
}
