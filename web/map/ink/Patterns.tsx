import { GRADE_HATCH } from '../../../engine/index.ts';
import { gradeHatchId } from '../../charts/ramp.ts';

/** Cloth is drawn in five weaves: the denser it is, the closer its threads. */
const WEAVES = [0.2, 0.4, 0.6, 0.8, 1] as const;

/** Id of the weave for a cloth that stops this share of the light. */
export function weaveId(density: number): string {
  const step = WEAVES.findIndex((most) => density <= most + 1e-9);
  return `weave-${step === -1 ? WEAVES.length : step + 1}`;
}

/** The hatches of the plan, each a small tile in screen pixels: lines as a pen would space them, at every zoom. */
export function Patterns() {
  return (
    <svg class="map-patterns" width="0" height="0" aria-hidden="true">
      <defs>
        <pattern id="hatch-wall" width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line class="hatch strong" x1="0" y1="0" x2="0" y2="4" />
        </pattern>
        <pattern id="hatch-open" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line class="hatch" x1="0" y1="0" x2="0" y2="7" />
        </pattern>
        <pattern id="hatch-building" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
          <line class="hatch" x1="0" y1="0" x2="0" y2="9" />
          <line class="hatch faint" x1="3" y1="0" x2="3" y2="9" />
        </pattern>
        <pattern id="leaves" width="11" height="9" patternUnits="userSpaceOnUse">
          <path class="hatch" d="M1 3q2-2.4 4 0M6.5 7.5q2-2.4 4 0M7 2.2q1.2-1.4 2.4 0M1.6 7.8q1.2-1.4 2.4 0" />
        </pattern>
        <pattern id="rows" width="16" height="14" patternUnits="userSpaceOnUse">
          <path class="hatch" d="M4 10v-4M4 8l-2.2-2M4 8l2.2-2" />
          <path class="hatch faint" d="M0 12h16" />
        </pattern>
        <pattern id="crosses" width="16" height="16" patternUnits="userSpaceOnUse">
          <path class="hatch faint" d="M6 6l4 4M10 6l-4 4" />
        </pattern>
        <pattern id="surface" width="12" height="12" patternUnits="userSpaceOnUse">
          <path class="hatch faint" d="M2 3h.01M8 6h.01M4 10h.01" />
        </pattern>
        <pattern id="shade" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(25)">
          <rect class="shade-wash" width="6" height="6" />
          <line class="shade-line" x1="3" y1="0" x2="3" y2="6" />
        </pattern>
        <GradeHatches />
        <pattern id="barred" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect class="barred-wash" width="6" height="6" />
          <line class="hatch" x1="0" y1="0" x2="0" y2="6" />
        </pattern>
        <Weaves />
      </defs>
    </svg>
  );
}

function GradeHatches() {
  return (
    <>
      {GRADE_HATCH.map(({ gap, stroke }, index) => (
        <pattern
          key={gap}
          id={gradeHatchId(index + 1)}
          width={gap}
          height={gap}
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <line class="hatch" style={{ strokeWidth: stroke }} x1={gap / 2} y1="0" x2={gap / 2} y2={gap} />
        </pattern>
      ))}
    </>
  );
}

function Weaves() {
  return (
    <>
      {WEAVES.map((density, step) => {
        const tile = 14 - 1.9 * step;
        const half = tile / 2;
        return (
          <pattern key={density} id={`weave-${step + 1}`} width={tile} height={tile} patternUnits="userSpaceOnUse">
            <rect class="cloth-wash" width={tile} height={tile} style={{ opacity: 0.04 + 0.06 * step }} />
            <path
              class="hatch thread-line"
              d={
                `M0 ${half / 2}H${half * 0.8}M${half * 1.1} ${half * 1.5}H${tile}M${half * 1.5} ` +
                `0V${half * 0.9}M${half / 2} ${half}V${tile}`
              }
            />
          </pattern>
        );
      })}
    </>
  );
}
