import type { Seen } from '../../../../engine/index.ts';
import type { SunEye } from '../../../../engine/index.ts';
import { HEAT_RAMP } from '../../../charts/ramp.ts';
import { heat } from '../../../state/results.ts';
import { selection } from '../../../state/view.ts';
import { shapeName } from '../../parts/quantity-words.ts';

/** Lit less than this, a plant counts as unseen. */
const SEEN = 0.1;
/** Round the picture. [m] */
const MARGIN = 0.5;

export function isSeen({ share }: SunEye['lit'][number]): boolean {
  return share >= SEEN;
}

/** The textures that every view of the page shares. */
export function EyePatterns() {
  return (
    <svg class="eye-patterns" width="0" height="0" aria-hidden="true">
      <pattern id="eye-weave" width="0.24" height="0.24" patternUnits="userSpaceOnUse">
        <path d="M0 0.12H0.24M0.12 0V0.24" class="thread" />
      </pattern>
      <pattern id="eye-leaves" width="0.3" height="0.3" patternUnits="userSpaceOnUse">
        <circle cx="0.08" cy="0.08" r="0.07" class="leaf" />
        <circle cx="0.23" cy="0.23" r="0.07" class="leaf" />
      </pattern>
      <pattern id="eye-hatch" width="0.3" height="0.3" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path d="M0 0V0.3" class="thread" />
      </pattern>
    </svg>
  );
}

/** A yard along the beam. @param harm how harmful the sun is, 0 to 1 @param finding what it shows, in one sentence */
export function EyeView({
  seen,
  harm,
  finding,
}: {
  readonly seen: SunEye;
  readonly harm: number;
  readonly finding: string;
}) {
  const points = [...seen.ground, ...seen.painted.flatMap(({ faces }) => faces.flatMap(({ ring }) => ring))];
  const right = points.map(([x]) => x);
  const up = points.map(([, y]) => y);
  const box = [
    Math.min(...right) - MARGIN,
    -Math.max(...up) - MARGIN,
    Math.max(...right) - Math.min(...right) + 2 * MARGIN,
    Math.max(...up) - Math.min(...up) + 2 * MARGIN,
  ];
  const harmed = new Set(
    (heat.value.shown?.value.plants ?? [])
      .filter(({ verdict }) => harm >= 0.5 && (verdict === 'will burn' || verdict === 'at risk'))
      .map(({ id }) => id),
  );
  const lit = new Set(seen.lit.filter(isSeen).map(({ id }) => id));
  return (
    <svg class="sun-eye" viewBox={box.map((value) => value.toFixed(2)).join(' ')} role="img" aria-label={finding}>
      <polygon
        class="eye-ground"
        points={polygonPoints(seen.ground)}
        style={{ fill: HEAT_RAMP[Math.min(15, Math.floor(harm * 16))] }}
      />
      {seen.painted.map(({ id, kind, faces, transmittance }, k) => (
        <g
          key={k}
          class={
            `eye-${kind}${kind === 'plant' && harmed.has(id) && lit.has(id) ? ' harmed' : ''}` +
            `${selection.value.includes(id) ? ' chosen' : ''}`
          }
        >
          {faces.map(({ ring, level }, face) => (
            <g key={face}>
              <polygon
                class={level ? 'eye-face level' : 'eye-face'}
                points={polygonPoints(ring)}
                style={{ fillOpacity: kind === 'cloth' || kind === 'tree' ? 1 - transmittance : 1 }}
              />
              <polygon class="eye-texture" points={polygonPoints(ring)} />
            </g>
          ))}
          <title>{shapeName(id)}</title>
        </g>
      ))}
    </svg>
  );
}

function polygonPoints(ring: readonly Seen[]): string {
  return ring.map(([x, y]) => `${x.toFixed(3)},${(-y).toFixed(3)}`).join(' ');
}
